// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/why_guide.h"

#include <QEvent>
#include <algorithm>

#include "cab/lever_part.h"
#include "cab/show_parts.h"

namespace cabwright::cab {
namespace {

using unit::Control;

constexpr int kRestMs = 450;      // the mouse rests so long before anything is shown
constexpr int kRefusedMs = 4000;  // what shows by itself stays so long
// What a u away, a u of thread over a part, and a square u of a covered part cost.
constexpr double kFar = 45, kCrossing = 90, kCovering = 4;
constexpr double kNarrowest = 260, kWidest = 400;  // u
constexpr double kGrid = 12, kBeside = 14, kEdge = 6;
constexpr double kCardEdge = 10;  // of the card that the circle stands on, u

QString nameOf(std::string_view name) {
  return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

QString nameOf(const unit::WhyPoint& point) {
  return std::visit(
      [](auto id) {
        using T = decltype(id);
        if constexpr (std::is_same_v<T, Control>) return nameOf(unit::controlInfo(id).name);
        if constexpr (std::is_same_v<T, unit::Item>) return nameOf(unit::itemInfo(id).name);
        if constexpr (std::is_same_v<T, unit::Signal>) return nameOf(unit::signalInfo(id).name);
      },
      point);
}

// What warns is dark when all is well.
bool shouldBeLit(unit::Signal lamp) {
  const auto of = unit::findWhyOf(lamp);
  return of && of->outcome != unit::Outcome::kLampFire && of->outcome != unit::Outcome::kLampCharge;
}

// The way with one corner that crosses less of what it must not.
QPolygonF bestWay(QPointF from, QPointF to, const std::vector<QRectF>& avoid, double* crossed) {
  const QPolygonF ways[] = {cornered(from, to, true), cornered(from, to, false)};
  double least = 1e18;
  const QPolygonF* best = &ways[0];
  for (const QPolygonF& way : ways) {
    double sum = 0;
    for (const QRectF& box : avoid) sum += lengthWithin(way, box);
    if (sum >= least) continue;
    least = sum;
    best = &way;
  }
  if (crossed != nullptr) *crossed = least;
  return *best;
}

}  // namespace

WhyGuide::WhyGuide(Seat& seat, const SheetStyle& style, const PlanPart& plan,
                   const std::vector<CarriedPart*>& things, QWidget* sheet)
    : QObject(sheet),
      seat_(seat),
      style_(style),
      plan_(plan),
      things_(things),
      sheet_(sheet),
      thread_(new WhyThread(style, sheet)) {
  rest_.setParent(this);
  rest_.setObjectName(QStringLiteral("rest"));
  rest_.setInterval(kRestMs);
  rest_.setSingleShot(true);
  leave_.setSingleShot(true);
  connect(&rest_, &QTimer::timeout, this, [this] {
    if (hovered_ && wantsHover(hovered_)) showPassing(hovered_);
  });
  connect(&leave_, &QTimer::timeout, this, &WhyGuide::hidePassing);
}

std::optional<WhyAsked> WhyGuide::askedOf(const Part* part) {
  std::optional<WhyAsked> asked;
  if (const auto* lamp = qobject_cast<const LampPart*>(part)) asked = lamp->lamp();
  if (const auto* control = qobject_cast<const ControlPart*>(part)) asked = control->control();
  return asked && hasWhy(*asked) ? asked : std::nullopt;
}

void WhyGuide::watch(Plate* plate) {
  clear();
  refused_.reset();
  plate_ = plate;
  if (seat_.inAssessment() || plate == nullptr) return;
  for (Part* part : plate->parts())
    if (askedOf(part)) part->installEventFilter(this);
}

// Of a lever only when it was refused: else every lever would have something to say for itself.
bool WhyGuide::wantsHover(const Part* part) const {
  const auto asked = askedOf(part);
  if (!asked || panel_) return false;
  const auto* control = std::get_if<Control>(&*asked);
  return control == nullptr ? seat_.value(std::get<unit::Signal>(*asked)) < 0.5
                            : !seat_.refusalOf(*control).isEmpty();
}

bool WhyGuide::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Enter) {
    hovered_ = qobject_cast<Part*>(watched);
    rest_.start();
  } else if (event->type() == QEvent::Leave) {
    hovered_ = nullptr;
    rest_.stop();
    if (passing_ && part_ == watched) hidePassing();
  }
  return QObject::eventFilter(watched, event);
}

Part* WhyGuide::findAsked(QWidget* focus) const {
  auto* focused = qobject_cast<Part*>(focus);
  if (!plate_) return nullptr;
  if (focused != nullptr && askedOf(focused)) return focused;
  Part* dark = nullptr;
  for (Part* part : plate_->parts()) {
    const auto asked = askedOf(part);
    if (!asked) continue;
    if (const auto* lamp = std::get_if<unit::Signal>(&*asked)) {
      const std::vector<unit::WhyFact> facts = unit::calcWhyOfLamp(seat_.unit(), *lamp);
      if (dark == nullptr && shouldBeLit(*lamp) &&
          std::ranges::any_of(facts, [](const auto& f) { return !f.there; }))
        dark = part;
    } else if (refused_ == std::get<Control>(*asked)) {
      return part;
    }
  }
  return dark;
}

void WhyGuide::noteRefusal(Control control) {
  if (seat_.inAssessment() || !plate_) return;
  refused_ = control;
  if (seat_.mode() != scenario::Mode::kGuided || panel_) return;
  for (Part* part : plate_->parts()) {
    const auto asked = askedOf(part);
    if (!asked || *asked != WhyAsked(control)) continue;
    showPassing(part);
    leave_.start(kRefusedMs);
    return;
  }
}

void WhyGuide::showPassing(Part* part) {
  const auto asked = askedOf(part);
  if (!asked || panel_) return;
  hidePassing();
  passing_ = new WhyPanel(seat_, style_, *asked, sheet_);
  if (passing_->missing() == nullptr) {
    hidePassing();
    return;
  }
  passing_->setFocusPolicy(Qt::NoFocus);
  passing_->setAttribute(Qt::WA_TransparentForMouseEvents);
  part_ = part;
  layOut();
  passing_->show();
}

void WhyGuide::hidePassing() {
  leave_.stop();
  if (!passing_) return;
  passing_->hide();
  passing_->deleteLater();
  passing_ = nullptr;
  if (!panel_) thread_->show({});
}

void WhyGuide::place(WhyPanel* panel, Part* part) {
  hidePassing();
  panel_ = panel;
  part_ = part;
  put_ = false;
  connect(panel, &WhyPanel::moved, this, [this] {
    put_ = true;
    layOut();
  });
  layOut();
}

void WhyGuide::clear() {
  hidePassing();
  panel_ = nullptr;
  part_ = nullptr;
  thread_->show({});
}

void WhyGuide::refresh() {
  WhyPanel* shown = panel_ ? panel_ : passing_;
  if (shown == nullptr || !shown->refresh()) return;
  if (shown == passing_ && shown->missing() == nullptr)
    hidePassing();
  else
    layOut();
}

QPointF WhyGuide::startOf(const Part* part) {
  if (const auto* lever = qobject_cast<const LeverPart*>(part)) return lever->pivot();
  if (const auto* lamp = qobject_cast<const LampPart*>(part)) return lamp->centre();
  return part->area().center();
}

// What the thread and the words had better leave free.
std::vector<QRectF> WhyGuide::areas() const {
  std::vector<QRectF> all;
  for (const Part* part : plate_->parts())
    if (part->isVisible() && part != part_) all.push_back(part->area());
  return all;
}

// A place on the plate that covers as little as can be of what is on it, near to what is asked.
QRectF WhyGuide::findRoom(QSizeF size, const std::vector<QRectF>& free) const {
  const QRectF& world = style_.frame.world;
  const double top = world.top() + Plate::bandHeight(seat_.place());
  const QRectF plate(world.left(), top, world.width(), 836 + style_.frame.spare - top);
  const std::vector<QRectF> taken = areas();
  const QPointF start = startOf(part_);
  QRectF best;
  double least = 1e18;
  for (double y = plate.top(); y + size.height() <= plate.bottom(); y += kGrid) {
    for (double x = plate.left(); x + size.width() <= plate.right(); x += kGrid) {
      const QRectF box(QPointF(x, y), size);
      const QRectF wide = box.adjusted(-kEdge, -kEdge, kEdge, kEdge);
      if (std::ranges::any_of(free, [&](const QRectF& f) { return wide.intersects(f); })) continue;
      double cost = kFar * QLineF(box.center(), start).length();
      for (const QRectF& other : taken) {
        const QRectF both = other.intersected(box);
        if (both.isValid()) cost += kCovering * both.width() * both.height();
      }
      if (cost >= least) continue;
      double crossed = 0;
      (void)bestWay(start, {box.right() - kWhyCircle, box.center().y()}, taken, &crossed);
      cost += kCrossing * crossed;
      if (cost >= least) continue;
      least = cost;
      best = box;
    }
  }
  return best.isNull() ? QRectF(plate.topLeft(), size) : best;
}

Part* WhyGuide::findMissingPart(const unit::WhyFact& fact) const {
  Part* part = fact.points ? plate_->findPart(nameOf(*fact.points)) : nullptr;
  return part != part_ ? part : nullptr;
}

// The part itself if it is here, the thing in the row of what is carried, else the place on the
// plan.
std::optional<QPointF> WhyGuide::findEnd(const unit::WhyFact& fact) const {
  std::optional<unit::Place> place = fact.place;
  if (const auto thing = findMissingThing(seat_, fact)) {
    const unit::ObjectPlace& at = seat_.unit().world().object[unit::indexOf(*thing)];
    if (at.state == unit::ObjectState::kCarried) {
      for (const CarriedPart* part : things_)
        if (part->object() == *thing) return part->area().center();
    }
    place = at.place;
    if (place == seat_.place()) return std::nullopt;
  } else if (fact.points) {
    if (Part* here = plate_->findPart(nameOf(*fact.points)); here != nullptr)
      return here == part_ ? std::nullopt : std::optional(startOf(here));
  }
  if (!place || *place == seat_.place()) return std::nullopt;
  return drawing::planPosition(plan_.plan(), static_cast<int>(*place));
}

void WhyGuide::layOut() {
  WhyPanel* shown = panel_ ? panel_ : passing_;
  if (shown == nullptr || !part_ || !plate_) return;
  const double scale = style_.frame.scale;
  shown->setMinimumWidth(static_cast<int>(kNarrowest * scale));
  shown->setMaximumWidth(static_cast<int>(kWidest * scale));
  shown->adjustSize();
  const unit::WhyFact* fact = shown->missing();
  const double across = fact == nullptr ? 0 : 2 * kWhyCircle + kBeside;
  const double least_height = fact == nullptr ? 0 : 2 * (kWhyCircle + kCardEdge);
  shown->setMinimumHeight(static_cast<int>(least_height * scale));
  shown->adjustSize();
  const QSizeF size(shown->width() / scale + across, std::max(shown->height() / scale, across));
  std::vector<QRectF> free{part_->area()};
  if (const Part* missing = fact != nullptr ? findMissingPart(*fact) : nullptr)
    free.push_back(missing->area());
  const bool stays = put_ && shown == panel_ && sheet_->rect().contains(shown->geometry());
  const QRectF room = stays ? QRectF(QPointF(shown->pos()) / scale, size) : findRoom(size, free);
  if (!stays) shown->move((room.topLeft() * scale).toPoint());
  ThreadPath path;
  if (fact != nullptr) {
    const QRectF words(room.topLeft(), QSizeF(shown->width(), shown->height()) / scale);
    const QPointF centre(room.right() - kWhyCircle, room.center().y());
    std::vector<QRectF> avoid = areas();
    avoid.insert(avoid.end(), 4, words);  // never under the words, if it can be helped
    const auto way = [&](QPointF from, QPointF to) { return bestWay(from, to, avoid, nullptr); };
    path.circle = centre;
    path.card = QRectF(words.right() - 2, words.top(), room.right() + kCardEdge - words.right() + 2,
                       words.height());
    path.detail = calcWhyDetail(seat_, *fact);
    path.to_circle = shortened(way(startOf(part_), centre), kWhyCircle);
    path.end = findEnd(*fact);
    if (path.end) {
      const QPointF to = *path.end;
      QPolygonF onward;
      if (to.x() > style_.frame.world.right()) {  // up or down between the two blocks
        const double gutter = (style_.frame.world.right() + style_.frame.you.left()) / 2;
        onward = {{centre, QPointF(gutter, centre.y()), QPointF(gutter, to.y()), to}};
      } else {
        onward = way(centre, to);
      }
      std::reverse(onward.begin(), onward.end());
      onward = shortened(onward, kWhyCircle);
      std::reverse(onward.begin(), onward.end());
      path.onward = shortened(onward, 20);
    }
  }
  thread_->show(path);
  shown->raise();
}

}  // namespace cabwright::cab
