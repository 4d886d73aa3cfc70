// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/thing_part.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <algorithm>

#include "cab/names.h"
#include "drawing/furniture.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Tone;

namespace {

constexpr double kLead = 22;
constexpr double kThingWidth = 56, kRowGap = 26;

std::string wordOf(unit::Object o) { return std::string(unit::objectInfo(o).name); }

bool isEnter(int key) {
  return key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter;
}

}  // namespace

drawing::LooseThing drawingOf(unit::Object object) {
  using drawing::LooseThing;
  switch (object) {
    case unit::Object::kBrakeHandle:
      return LooseThing::kBrakeHandle;
    case unit::Object::kReversingLever:
      return LooseThing::kReversingLever;
    case unit::Object::kControlKey:
    case unit::Object::kSpareKey:
      return LooseThing::kControlKey;
    case unit::Object::kDoorKey:
      return LooseThing::kDoorKey;
    case unit::Object::kLamp:
      return LooseThing::kHandLamp;
    case unit::Object::kVest:
      return LooseThing::kVest;
    case unit::Object::kNotebook:
      return LooseThing::kNotebook;
    case unit::Object::kRuleBook:
      return LooseThing::kRuleBook;
    case unit::Object::kPadlock:
    case unit::Object::kCount:
      break;
  }
  return LooseThing::kPadlock;
}

ThingPart::ThingPart(Seat& seat, const SheetStyle& style, unit::Object object, QPointF centre,
                     double width, QWidget* parent)
    : Part(seat, style, parent), object_(object), centre_(centre), width_(width) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setAccessibleName(nameOf(object));
  setObjectName(QLatin1String("thing.") + QString::fromStdString(wordOf(object)));
  const auto lines = static_cast<double>(drawing::wrapText(nameOf(object), width).size());
  setArea({centre.x() - width / 2 - 4, centre.y() - 32, width + 8, 66 + kLead * lines});
  shown_ = where();
}

ThingPart::Where ThingPart::where() const {
  if (seat().isCarried(object_)) return Where::kCarried;
  return seat().isHere(object_) ? Where::kHere : Where::kElsewhere;
}

void ThingPart::refresh() {
  if (where() == shown_) return;
  shown_ = where();
  update();
  announceValue();
}

PartRole ThingPart::role() const {
  PartRole r;
  r.kind = PartRole::Kind::kThing;
  r.name = nameOf(object_);
  r.value = shown_ == Where::kHere      ? tr("hangs here")
            : shown_ == Where::kCarried ? tr("with you")
                                        : tr("not here");
  r.description = shown_ == Where::kCarried ? tr("Enter hangs it back") : tr("Enter takes it");
  return r;
}

bool ThingPart::activate() {
  if (where() == Where::kElsewhere) return false;
  return seat().act(where() == Where::kHere ? "take" : "put", wordOf(object_)).accepted;
}

void ThingPart::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) activate();
}

void ThingPart::keyPressEvent(QKeyEvent* event) {
  if (isEnter(event->key()) && !event->isAutoRepeat()) {
    activate();
  } else {
    event->ignore();
  }
}

void ThingPart::focusInEvent(QFocusEvent* event) {
  Part::focusInEvent(event);
  update();
}

void ThingPart::focusOutEvent(QFocusEvent* event) {
  Part::focusOutEvent(event);
  update();
}

void ThingPart::paint(drawing::Pen& pen) const {
  const bool here = shown_ == Where::kHere;
  drawing::paintLooseThing(pen, centre_, drawingOf(object_), here);
  double y = centre_.y() + 46;
  for (const QString& line : drawing::wrapText(nameOf(object_), width_)) {
    pen.text({centre_.x(), y}, line,
             {.anchor = Anchor::kMiddle, .tone = here ? Tone::kInk : Tone::kInk2});
    y += kLead;
  }
  if (hasFocus())
    drawing::paintFocusRing(pen, drawing::looseThingBounds(centre_).adjusted(1, 1, -1, -1));
}

ThingRow::ThingRow(Seat& seat, const SheetStyle& style, const QRectF& row,
                   std::vector<unit::Object> pegged, QWidget* parent)
    : Part(seat, style, parent), row_(row), pegged_(std::move(pegged)) {
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Lying here"));
  setObjectName(QStringLiteral("things"));
  setArea(row_);
  lying_ = findLying();
  setVisible(!lying_.empty());
}

std::vector<unit::Object> ThingRow::findLying() const {
  std::vector<unit::Object> lying;
  const unit::World& w = seat().unit().world();
  for (const unit::ObjectInfo& info : unit::objectTable()) {
    const bool own_peg = std::ranges::find(pegged_, info.id) != pegged_.end();
    const bool loose = w.object[unit::indexOf(info.id)].state == unit::ObjectState::kLying;
    if (!own_peg && loose && seat().isHere(info.id)) lying.push_back(info.id);
  }
  return lying;
}

void ThingRow::refresh() {
  std::vector<unit::Object> lying = findLying();
  if (lying == lying_) return;
  lying_ = std::move(lying);
  chosen_ = std::min(chosen_, lying_.empty() ? 0 : lying_.size() - 1);
  setVisible(!lying_.empty());
  update();
  announceValue();
}

double ThingRow::captionWidth() const { return drawing::textWidth(tr("Lying here")) + 18; }

QRectF ThingRow::boxOf(std::size_t which) const {
  double x = row_.left() + captionWidth();
  for (std::size_t k = 0; k < which; ++k)
    x += kThingWidth + 8 + drawing::textWidth(nameOf(lying_[k])) + kRowGap;
  const double width = kThingWidth + 8 + drawing::textWidth(nameOf(lying_[which]));
  return {x, row_.center().y() - 23, width, 46};
}

PartRole ThingRow::role() const {
  PartRole r;
  r.kind = PartRole::Kind::kThing;
  r.name = tr("Lying here");
  QStringList names;
  for (unit::Object o : lying_) names << nameOf(o);
  r.value = names.isEmpty() ? tr("nothing") : names.join(QLatin1String(", "));
  if (lying_.size() > 1) r.value += tr("; chosen: %1").arg(nameOf(lying_[chosen_]));
  r.description = tr("Arrows choose, Enter takes it");
  return r;
}

bool ThingRow::step(int by) {
  if (lying_.empty()) return false;
  const auto last = static_cast<int>(lying_.size()) - 1;
  const int next = std::clamp(static_cast<int>(chosen_) + by, 0, last);
  if (next == static_cast<int>(chosen_)) return false;
  chosen_ = static_cast<std::size_t>(next);
  update();
  announceValue();
  return true;
}

void ThingRow::take(std::size_t which) { seat().act("take", wordOf(lying_[which])); }

bool ThingRow::activate() {
  if (lying_.empty()) return false;
  take(chosen_);
  return true;
}

void ThingRow::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  const QPointF at = toSheet(event->position());
  for (std::size_t k = 0; k < lying_.size(); ++k) {
    if (!boxOf(k).adjusted(-6, -6, 6, 6).contains(at)) continue;
    take(k);
    return;
  }
}

void ThingRow::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (isEnter(key) && !event->isAutoRepeat()) {
    activate();
  } else if (key == Qt::Key_Right || key == Qt::Key_Down) {
    step(1);
  } else if (key == Qt::Key_Left || key == Qt::Key_Up) {
    step(-1);
  } else {
    event->ignore();
  }
}

void ThingRow::focusInEvent(QFocusEvent* event) {
  Part::focusInEvent(event);
  update();
}

void ThingRow::focusOutEvent(QFocusEvent* event) {
  Part::focusOutEvent(event);
  update();
}

void ThingRow::paint(drawing::Pen& pen) const {
  if (lying_.empty()) return;
  const double baseline = row_.center().y() + 0.36 * drawing::kText;
  pen.text({row_.left(), baseline}, tr("Lying here"), {.tone = Tone::kInk2});
  for (std::size_t k = 0; k < lying_.size(); ++k) {
    const QRectF box = boxOf(k);
    const QPointF centre(box.left() + kThingWidth / 2, box.center().y());
    drawing::paintLooseThing(pen, centre, drawingOf(lying_[k]));
    pen.text({box.left() + kThingWidth + 8, baseline}, nameOf(lying_[k]));
    if (hasFocus() && k == chosen_)
      drawing::paintFocusRing(pen, drawing::looseThingBounds(centre).adjusted(1, 1, -1, -1));
  }
}

}  // namespace cabwright::cab
