// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/choice_card.h"

#include <QEvent>
#include <QFontInfo>
#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>

#include "drawing/furniture.h"
#include "drawing/verdict.h"

namespace cabwright::desktop {

using drawing::Anchor;
using drawing::Tone;

namespace {

constexpr double kPadding = 18, kLead = 25.5;

}  // namespace

ChoiceCard::ChoiceCard(CardWords words, QWidget* parent)
    : QAbstractButton(parent), words_(std::move(words)) {
  setCheckable(true);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setText(words_.title);
  setAccessibleName(words_.title);
  setAccessibleDescription(words_.text + QLatin1Char('\n') + words_.foot);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void ChoiceCard::setTheme(drawing::Theme theme) {
  theme_ = theme;
  update();
}

double ChoiceCard::scale() const {
  return std::max(0.72, QFontInfo(font()).pixelSize() / drawing::kText * 1.05);
}

QSize ChoiceCard::sizeHint() const {
  const int width = static_cast<int>(420 * scale());
  return {width, heightForWidth(width)};
}

int ChoiceCard::heightForWidth(int width) const {
  return static_cast<int>(std::ceil(paintWords(nullptr, width / scale()) * scale()));
}

void ChoiceCard::changeEvent(QEvent* event) {
  QAbstractButton::changeEvent(event);
  if (event->type() == QEvent::FontChange) updateGeometry();
}

void ChoiceCard::resizeEvent(QResizeEvent* event) {
  QAbstractButton::resizeEvent(event);
  const int wanted = heightForWidth(width());
  if (wanted != height()) setFixedHeight(wanted);
}

QString ChoiceCard::levelText() const {
  const std::array<QString, 5> words{tr("very easy"), tr("easy"), tr("middling"), tr("hard"),
                                     tr("very hard")};
  return words[static_cast<std::size_t>(std::clamp(words_.level, 1, 5) - 1)];
}

// Sets the words when there is a pen; gives the height they take.
double ChoiceCard::paintWords(drawing::Pen* pen, double width) const {
  const double room = width - 2 * kPadding;
  const Tone on = isChecked() ? Tone::kWash : Tone::kFace;
  double y = 38;
  const double level_room = words_.level > 0 ? drawing::textWidth(levelText()) + 16 : 0;
  if (pen != nullptr) {
    pen->text({kPadding, y},
              drawing::elideText(words_.title, room - level_room, drawing::kName, true),
              {.size = drawing::kName, .bold = true, .on = on});
    if (words_.level > 0)
      pen->text({width - kPadding, y}, levelText(),
                {.anchor = drawing::Anchor::kEnd, .tone = Tone::kInk2, .on = on});
  }
  for (const QString& line : drawing::wrapText(words_.text, room)) {
    y += kLead;
    if (pen != nullptr) pen->text({kPadding, y + 3}, line, {.tone = Tone::kInk, .on = on});
  }
  if (!words_.foot.isEmpty()) {
    double x = kPadding;
    if (words_.done && words_.good) {
      if (pen != nullptr)
        drawing::paintVerdict(*pen, {x + 9, y + kLead + 1}, drawing::VerdictSign::kGood, 8.5, on);
      x += 28;
    }
    for (const QString& line : drawing::wrapText(words_.foot, room - (x - kPadding))) {
      y += kLead;
      if (pen != nullptr) pen->text({x, y + 7}, line, {.tone = Tone::kInk2, .on = on});
    }
  }
  return y + 26;
}

void ChoiceCard::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.scale(scale(), scale());
  drawing::Pen pen(painter, theme_);
  const QRectF box(3, 3, width() / scale() - 6, height() / scale() - 6);
  const Tone edge = isChecked() ? Tone::kHand : underMouse() ? Tone::kInk : Tone::kRule;
  pen.rect(box, {isChecked() ? drawing::kBold : drawing::kThin, edge, {}, false},
           isChecked() ? Tone::kWash : Tone::kFace, 4);
  paintWords(&pen, width() / scale());
  if (hasFocus()) drawing::paintFocusRing(pen, box.adjusted(11, 11, -11, -11), 3);  // inside
}

}  // namespace cabwright::desktop
