// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/line_card.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <algorithm>

#include "after/flag_sign.h"
#include "after/line_words.h"
#include "after/words.h"
#include "drawing/furniture.h"

namespace cabwright::after {

using drawing::Anchor;
using drawing::Tone;

namespace {

constexpr double kPad = 18, kLead = 25, kButtonGap = 8;
constexpr Tone kOn = Tone::kFace;

}  // namespace

LineCard::LineCard(const SheetLook& look, const FinishedRun& run, const marking::SheetLine& line,
                   QWidget* parent)
    : SheetBlock(look, parent),
      run_(run),
      line_(line),
      following_(findFollowing(run.sheet, line.number)),
      leading_cab_(findLeadingCab(*run.history)) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setAccessibleName(tr("Line %1, %2: %3")
                        .arg(QString::number(line.number), className(line.verdict.judged_as),
                             sheetWords(line.title)));
  setAccessibleDescription(words());
  show_ = new SheetButton(look, tr("On the strip"), this);
  connect(show_, &QAbstractButton::clicked, this, [this] { Q_EMIT chosen(line_.number); });
  const auto tick = findTakeAgainTick(run, line);
  if (!tick) return;
  again_ = new SheetButton(look, tr("Take it again from here"), this);
  again_->setToolTip(tr("From %1, ten seconds before").arg(timeText(*tick)));
  connect(again_, &QAbstractButton::clicked, this,
          [this, at = *tick] { Q_EMIT takeAgain(static_cast<qint64>(at)); });
}

bool LineCard::speaksOf(int line) const {
  return line == line_.number ||
         std::ranges::any_of(following_, [line](const auto* f) { return f->number == line; });
}

void LineCard::setSelected(bool selected) {
  if (selected == selected_) return;
  selected_ = selected;
  update();
}

const Evidence& LineCard::evidence() {
  // Working out a moment takes some hundredths of a second: done when the card is first seen.
  if (!evidence_) evidence_ = gatherEvidence(line_.verdict, run_.frame_at(tick()), leading_cab_);
  return *evidence_;
}

QString LineCard::words() const {
  QStringList parts{sheetWords(line_.title), whenAndWhere(run_, line_)};
  parts << doneWords(line_);
  parts << tr("Why it matters") + QLatin1String(": ") + sheetWords(line_.why);
  if (!line_.advice.empty())
    parts << tr("Next time") + QLatin1String(": ") + sheetWords(line_.advice);
  for (const marking::SheetLine* f : following_)
    parts << tr("Line %1 follows from this: %2").arg(f->number).arg(sheetWords(f->title));
  return parts.join(QLatin1Char('\n'));
}

double LineCard::paintHead(drawing::Pen& pen, double y, double right) const {
  const marking::RuleClass c = line_.verdict.judged_as;
  const QString number = QString::number(line_.number);
  paintFlag(pen, {kPad, y}, {c, number, false});
  const double x = kPad + flagWidth(number) + 12;
  pen.text({x, y + 19}, rankWords(line_), {.bold = true, .tone = toneOf(c), .on = kOn});
  if (!line_.fails_run && line_.possible > 0)
    pen.text({right, y + 19},
             tr("%1 of %2").arg(pointsText(line_.earned), pointsText(line_.possible)),
             {.anchor = Anchor::kEnd, .tone = Tone::kInk2, .on = kOn});
  return y + kFlagHeight + 28;
}

double LineCard::paintFollowing(drawing::Pen& pen, double y, double width) const {
  if (following_.empty()) return y;
  pen.text({kPad, y}, tr("Follows from this line, and is not counted again"),
           {.tone = Tone::kInk2, .on = kOn});
  y += kLead + 2;
  for (const marking::SheetLine* f : following_) {
    const QString number = QString::number(f->number);
    paintFlag(pen, {kPad, y - 19}, {f->verdict.judged_as, number, false});
    const double x = kPad + flagWidth(number) + 10;
    y = pen.paragraph({x, y}, sheetWords(f->title), width + kPad - x, {.on = kOn}, 24) + 8;
  }
  return y + 4;
}

double LineCard::paint(drawing::Pen& pen, double full, bool measured) {
  const double width = full - 2 * kPad;
  if (!measured) {
    const double height = this->height() / look().scale;
    const QRectF box(2, 2, full - 4, height - 4);
    pen.rect(box,
             {selected_ ? drawing::kBold : drawing::kThin, selected_ ? Tone::kHand : Tone::kInk},
             kOn, 5);
    if (hasFocus() && !selected_) pen.rect(box, {drawing::kFocus, Tone::kHand}, Tone::kNone, 5);
  }
  double y = paintHead(pen, 18, full - kPad);
  y = pen.paragraph({kPad, y}, sheetWords(line_.title), width,
                    {.size = drawing::kName, .bold = true, .on = kOn}, 27);
  pen.text({kPad, y}, whenAndWhere(run_, line_), {.tone = Tone::kInk2, .on = kOn});
  y += kLead + 6;
  for (const QString& part : doneWords(line_))
    y = pen.paragraph({kPad, y}, part, width, {.on = kOn}, kLead) + 2;
  y += 10;
  // How high it is depends on what is shown, not on what it showed.
  const Evidence shown = measured ? gatherEvidence(line_.verdict, {}, leading_cab_) : evidence();
  pen.text({kPad, y}, evidenceTitle(line_, shown.cab), {.tone = Tone::kInk2, .on = kOn});
  y += paintEvidence(pen, {kPad, y + 8}, width, shown) + 36;
  pen.text({kPad, y}, tr("Why it matters"), {.tone = Tone::kInk2, .on = kOn});
  y = pen.paragraph({kPad, y + kLead}, sheetWords(line_.why), width, {.on = kOn}, kLead) + 8;
  if (!line_.advice.empty()) {
    pen.text({kPad, y}, tr("Next time"), {.bold = true, .tone = Tone::kInfo, .on = kOn});
    y = pen.paragraph({kPad, y + kLead}, sheetWords(line_.advice), width, {.on = kOn}, kLead) + 8;
  }
  y = paintFollowing(pen, y, width);
  buttons_y_ = y - 12;
  return buttons_y_ + 42 + 14;
}

void LineCard::placeButtons() {
  const double k = look().scale;
  double x = kPad - 3;
  for (SheetButton* button : {show_, again_}) {
    if (button == nullptr) continue;
    button->setGeometry(
        QRectF(QPointF(x, buttons_y_) * k, QSizeF(button->sizeHint())).toAlignedRect());
    x += button->sizeInSheet().width() + kButtonGap;
  }
}

void LineCard::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton && rect().contains(event->position().toPoint()))
    Q_EMIT chosen(line_.number);
}

void LineCard::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space || event->key() == Qt::Key_Return ||
      event->key() == Qt::Key_Enter) {
    Q_EMIT chosen(line_.number);
  } else {
    event->ignore();
  }
}

void LineCard::focusInEvent(QFocusEvent* event) {
  SheetBlock::focusInEvent(event);
  update();
}

void LineCard::focusOutEvent(QFocusEvent* event) {
  SheetBlock::focusOutEvent(event);
  update();
}

}  // namespace cabwright::after
