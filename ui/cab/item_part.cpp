// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/item_part.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "cab/names.h"
#include "drawing/furniture.h"
#include "drawing/verdict.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Tone;

namespace {

constexpr double kSignWidth = 26;  // room for the verdict before the name
// A part draws on its own area only. Round the thing there is first the look, then the focus.
constexpr double kArea = 9, kClear = 3.5, kFocusAt = kArea - 0.5 - drawing::kFocus / 2;
constexpr double kLargestRing = 46, kRingCorner = 6;

drawing::VerdictSign signOf(unit::Verdict verdict, bool looked) {
  switch (verdict) {
    case unit::Verdict::kGood:
      return drawing::VerdictSign::kGood;
    case unit::Verdict::kDefect:
      return drawing::VerdictSign::kDefect;
    case unit::Verdict::kUnsure:
      return drawing::VerdictSign::kUnsure;
    case unit::Verdict::kNone:
      break;
  }
  return looked ? drawing::VerdictSign::kSeen : drawing::VerdictSign::kNone;
}

QString judgementText(unit::Verdict verdict) {
  switch (verdict) {
    case unit::Verdict::kGood:
      return ItemPart::tr("judged good");
    case unit::Verdict::kDefect:
      return ItemPart::tr("judged defect");
    case unit::Verdict::kUnsure:
      return ItemPart::tr("judged not sure");
    case unit::Verdict::kNone:
      break;
  }
  return ItemPart::tr("not judged");
}

}  // namespace

ItemPart::ItemPart(Seat& seat, const SheetStyle& style, unit::Item item, ItemShape shape,
                   QWidget* parent)
    : Part(seat, style, parent), item_(item), shape_(shape) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setAccessibleName(nameOf(item));
  const std::string_view name = unit::itemInfo(item).name;
  setObjectName(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
  setArea(shape_.thing.united(labelBox()).adjusted(-kArea, -kArea, kArea, kArea),
          {shape_.thing.adjusted(-kArea, -kArea, kArea, kArea), labelBox().adjusted(-6, -4, 6, 4)});
}

QString ItemPart::label() const { return nameOf(item_); }

QRectF ItemPart::labelBox() const {
  const double w = drawing::textWidth(label(), drawing::kText, true) + kSignWidth;
  const double left = shape_.label_ends ? shape_.label.x() - w : shape_.label.x();
  return {left, shape_.label.y() - 20, w, 27};
}

void ItemPart::refresh() {
  const unit::World& w = seat().unit().world();
  Shown now;
  now.looking = w.trainee.looking == item_ && !seat().isWalking();
  now.looked = w.item[unit::indexOf(item_)].looked;
  now.verdict = w.item[unit::indexOf(item_)].verdict;
  if (now.looking) {
    const double needed = seat().value(unit::Signal::kLookNeeded);
    const double share = needed > 0 ? seat().value(unit::Signal::kLookSeconds) / needed : 1;
    now.share = static_cast<int>(std::clamp(share, 0.0, 1.0) * 20);
  }
  if (now == shown_) return;
  const bool judged = now.verdict != shown_.verdict;
  shown_ = now;
  update();
  if (judged) announceValue();
}

PartRole ItemPart::role() const {
  PartRole r;
  r.kind = PartRole::Kind::kThing;
  r.name = label();
  r.value = judgementText(shown_.verdict);
  const unit::Judgement* judged = seat().findJudgement(item_);
  if (judged != nullptr && judged->said_class != unit::DefectClass::kNone)
    r.value += QLatin1String(", ") + nameOf(judged->said_class);
  if (shown_.looking) r.value += tr(", being looked at");
  r.description =
      tr("Enter looks at it; then G good, D defect, U not sure; after D the class: C critical, S "
         "serious, T technical");
  return r;
}

bool ItemPart::activate() {
  asked_from_ = seat().unit().world().judgements.size();
  seat().look(item_);
  return true;
}

void ItemPart::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) activate();
}

bool ItemPart::isToBeJudged() const {
  const auto& all = seat().unit().world().judgements;
  for (std::size_t k = all.size(); k > asked_from_; --k) {
    const unit::Judgement& j = all[k - 1];
    if (j.item != item_ || j.empty) continue;
    return j.verdict == unit::Verdict::kDefect && j.said_class == unit::DefectClass::kNone;
  }
  return true;
}

// G, D and U judge what is being looked at, and C, S and T say the class of what was judged a
// defect. Once that is said, they are the levers' and buttons' beside which they stand, as they are
// everywhere else; looking again asks again.
std::optional<ItemPart::Said> ItemPart::findSaid(int key) const {
  if (!shown_.looking || !isToBeJudged()) return std::nullopt;
  switch (key) {
    case Qt::Key_G:
      return Said{unit::Verdict::kGood, unit::DefectClass::kNone};
    case Qt::Key_D:
      return Said{unit::Verdict::kDefect, unit::DefectClass::kNone};
    case Qt::Key_U:
      return Said{unit::Verdict::kUnsure, unit::DefectClass::kNone};
    default:
      break;
  }
  if (shown_.verdict != unit::Verdict::kDefect || key < Qt::Key_A || key > Qt::Key_Z)
    return std::nullopt;
  const char letter = static_cast<char>('A' + (key - Qt::Key_A));
  const auto rank = unit::findDefectClass(std::string_view(&letter, 1));
  if (!rank) return std::nullopt;
  return Said{unit::Verdict::kDefect, *rank};
}

bool ItemPart::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride &&
      findSaid(static_cast<QKeyEvent*>(event)->key())) {
    event->accept();
    return true;
  }
  return Part::event(event);
}

void ItemPart::keyPressEvent(QKeyEvent* event) {
  if (const auto said = findSaid(event->key())) {
    seat().judge(item_, said->verdict, said->rank);
    return;
  }
  switch (event->key()) {
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
      activate();
      break;
    case Qt::Key_Right:
    case Qt::Key_Down:
      focusNextChild();
      break;
    case Qt::Key_Left:
    case Qt::Key_Up:
      focusPreviousChild();
      break;
    default:
      event->ignore();
  }
}

void ItemPart::focusInEvent(QFocusEvent* event) {
  Part::focusInEvent(event);
  update();
}

void ItemPart::focusOutEvent(QFocusEvent* event) {
  Part::focusOutEvent(event);
  update();
}

void ItemPart::enterEvent(QEnterEvent* event) {
  Part::enterEvent(event);
  hovered_ = true;
  update();
}

void ItemPart::leaveEvent(QEvent* event) {
  Part::leaveEvent(event);
  hovered_ = false;
  update();
}

void ItemPart::paintLeader(drawing::Pen& pen) const {
  if (!shape_.leader) return;
  const QRectF words = labelBox();
  const QPointF thing = shape_.thing.center();
  const bool above = words.center().y() < thing.y();
  const double x = std::clamp(thing.x(), words.left() + 8, words.right() - 8);
  const QPointF from(x, above ? words.bottom() : words.top() - 2);
  const QPointF bend = shape_.bend.isNull() ? from : shape_.bend;
  drawing::paintLeader(pen, thing, bend, from);
}

void ItemPart::paint(drawing::Pen& pen) const {
  const QRectF words = labelBox();
  const bool strong = shown_.looking || hovered_ || hasFocus();
  const drawing::VerdictSign sign = signOf(shown_.verdict, shown_.looked);
  drawing::paintVerdict(pen, {words.left() + 10, words.center().y() - 0.5}, sign, 8.5,
                        Tone::kPaper);
  const bool blank = sign == drawing::VerdictSign::kNone;
  const double x = shape_.label_ends ? words.right() : words.left() + (blank ? 0 : kSignWidth);
  pen.text({x, shape_.label.y()}, label(),
           {.anchor = shape_.label_ends ? Anchor::kEnd : Anchor::kStart,
            .bold = strong,
            .tone = isPointed() ? Tone::kInfo
                    : strong    ? Tone::kInk
                                : Tone::kInk2,
            .halo = 3});
  const QRectF around = shape_.thing.adjusted(-kClear, -kClear, kClear, kClear);
  if (hasFocus())
    pen.rect(shape_.thing.adjusted(-kFocusAt, -kFocusAt, kFocusAt, kFocusAt),
             {drawing::kFocus, Tone::kHand}, Tone::kNone, kRingCorner);
  if (shown_.looking) paintLook(pen, around);
}

// A ring that closes: dotted until the look counts. Round where the thing is, else along its frame,
// since a part draws on its own area only.
void ItemPart::paintLook(drawing::Pen& pen, const QRectF& around) const {
  const QPointF c = around.center();
  const double share = shown_.share / 20.0, room = std::min(around.width(), around.height()) / 2;
  const double r = std::min(std::max(around.width(), around.height()) / 2, kLargestRing);
  const drawing::Stroke dotted{drawing::kThin, Tone::kHand, {2, 4}, false};
  const drawing::Stroke full{drawing::kBold, Tone::kHand, {}, false};
  if (r <= room + kClear - 1) {
    if (!hasFocus()) pen.circle(c, r, dotted);
    if (share > 0) pen.arc(c, r, 0, 359.9 * share, full);
    return;
  }
  if (!hasFocus()) pen.rect(around, dotted, Tone::kNone, kRingCorner);
  if (share <= 0) return;
  QPainterPath frame;
  frame.addRoundedRect(around, kRingCorner, kRingCorner);
  QPolygonF drawn;
  constexpr int kSteps = 80;
  for (int k = 0; k <= static_cast<int>(std::lround(kSteps * share)); ++k)
    drawn << frame.pointAtPercent(static_cast<double>(k) / kSteps);
  pen.polyline(drawn, full);
}

void ItemPart::paintPointer(drawing::Pen& pen) const {
  if (shown_.looking || hasFocus()) return;
  pen.rect(shape_.thing.adjusted(-kClear, -kClear, kClear, kClear),
           {drawing::kThin, Tone::kInfo, {5, 3}, false}, Tone::kNone, 6);
}

}  // namespace cabwright::cab
