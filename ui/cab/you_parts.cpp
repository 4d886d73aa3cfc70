// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/you_parts.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "cab/names.h"
#include "cab/thing_part.h"
#include "drawing/furniture.h"
#include "drawing/objects.h"

namespace cabwright::cab {

using drawing::Tone;
using unit::Place;
using unit::Signal;

namespace {

QString commandOf(Place place) {
  const std::string_view name = unit::placeInfo(place).name;
  return QLatin1String("go.") + QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

bool isPress(const QKeyEvent* event) {
  return event->key() == Qt::Key_Space || event->key() == Qt::Key_Return ||
         event->key() == Qt::Key_Enter;
}

}  // namespace

QString modeText(scenario::Mode mode) {
  switch (mode) {
    case scenario::Mode::kGuided:
      return PlanPart::tr("guided");
    case scenario::Mode::kPractice:
      return PlanPart::tr("practice");
    case scenario::Mode::kAssessment:
      return PlanPart::tr("assessment");
  }
  return {};
}

QString clockText(std::int64_t tick) {
  const std::int64_t s = tick / session::kTicksPerSecond;
  return QStringLiteral("%1:%2:%3")
      .arg(s / 3600)
      .arg(s / 60 % 60, 2, 10, QLatin1Char('0'))
      .arg(s % 60, 2, 10, QLatin1Char('0'));
}

PlanPart::PlanPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, QWidget* parent)
    : Part(seat, style, parent), shortcuts_(shortcuts) {
  connect(&shortcuts, &Shortcuts::changed, this, [this] { update(); });
}

void PlanPart::setPointed(std::optional<Place> place) {
  if (place == pointed_) return;
  pointed_ = place;
  update();
}

// What anybody sees or hears of the unit from where he stands.
QString PlanPart::whatItDoes() const {
  if (seat().isWalking()) {
    const auto& t = seat().unit().world().trainee;
    const double left = seat().value(Signal::kWalkLeft);
    return tr("walking to %1, %2 s").arg(nameOf(t.heading)).arg(std::ceil(left), 0, 'f', 0);
  }
  QStringList words;
  words << (seat().value(Signal::kSeenMoving) > 0.5 ? tr("moving") : tr("standing"));
  return words.join(QLatin1String(", "));
}

void PlanPart::refresh() {
  Shown now{seat().place(), seat().isWalking(), seat().value(Signal::kSeenMoving) > 0.5,
            whatItDoes()};
  if (now == shown_) return;
  shown_ = std::move(now);
  update();
}

PartRole PlanPart::role() const {
  return {PartRole::Kind::kText, nameOf(seat().place()), whatItDoes(), textOf(seat().place())};
}

void PlanPart::paint(drawing::Pen& pen) const {
  const double x = area().left();
  const QString title = seat().isWalking() ? tr("On the way") : nameOf(seat().place());
  pen.text({x, area().top() + 26}, drawing::elideText(title, area().width(), drawing::kTitle),
           {.size = drawing::kTitle});
  const bool in_cab = unit::cabOf(seat().place()) >= 0;
  const bool on_ground = !seat().isWalking() && !in_cab;
  QString under = on_ground ? textOf(seat().place()) : whatItDoes();
  if (on_ground && under.contains(title, Qt::CaseInsensitive)) under.clear();  // says nothing new
  QStringList lines = drawing::wrapText(under, area().width());
  if (lines.size() > 2)
    lines[1] = drawing::elideText(lines[1] + QLatin1String(" …"), area().width());
  for (qsizetype k = 0; k < std::min<qsizetype>(2, lines.size()); ++k)
    pen.text({x, area().top() + 54 + 23.0 * static_cast<double>(k)}, lines[k],
             {.tone = Tone::kInk2});
  std::vector<drawing::PlanPlace> places;
  for (int k = 0; k < drawing::kPlanPlaces; ++k) {
    const auto place = static_cast<Place>(k);
    const std::string_view name = unit::placeInfo(place).name;
    places.push_back({QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())),
                      shortcuts_.text(commandOf(place)), drawing::planPosition(plan_, k),
                      place == seat().place() && !seat().isWalking(), !seat().isWalking(),
                      pointed_ == place});
  }
  drawing::PlanLook look;
  look.moving = shown_.moving;
  look.forward_is_right = seat().value(Signal::kTrueControlledBy) != 2;
  drawing::paintPlan(pen, plan_, look, places);
}

BalloonPart::BalloonPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts,
                         Place place, QWidget* parent)
    : Part(seat, style, parent), shortcuts_(shortcuts), place_(place) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setObjectName(commandOf(place));
  setAccessibleName(nameOf(place));
}

PartRole BalloonPart::role() const {
  PartRole r;
  r.kind = PartRole::Kind::kButton;
  r.name = tr("Walk to %1").arg(nameOf(place_));
  r.value = seat().place() == place_ ? tr("you are here") : QString();
  r.description = textOf(place_);
  const QString key = shortcuts_.text(commandOf(place_));
  if (!key.isEmpty()) r.description += tr(". Key: %1").arg(key);
  return r;
}

bool BalloonPart::activate() {
  seat().walk(place_);
  return true;
}

void BalloonPart::paint(drawing::Pen& pen) const {
  if (hasFocus())
    pen.circle(area().center(), area().width() / 2 - 2, {drawing::kFocus, Tone::kHand, {}, false});
}

void BalloonPart::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) activate();
}

void BalloonPart::keyPressEvent(QKeyEvent* event) {
  if (isPress(event)) {
    activate();
  } else {
    event->ignore();
  }
}

void BalloonPart::focusInEvent(QFocusEvent* event) {
  Part::focusInEvent(event);
  update();
}

void BalloonPart::focusOutEvent(QFocusEvent* event) {
  Part::focusOutEvent(event);
  update();
}

bool BalloonPart::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), nameOf(place_), this);
    return true;
  }
  return Part::event(event);
}

CarriedPart::CarriedPart(Seat& seat, const SheetStyle& style, unit::Object object, QWidget* parent)
    : Part(seat, style, parent), object_(object) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  const std::string_view name = unit::objectInfo(object).name;
  setObjectName(QLatin1String("thing.") +
                QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
  setAccessibleName(nameOf(object));
  setToolTip(nameOf(object));
}

CarriedPart::Where CarriedPart::where() const {
  const unit::World& w = seat().unit().world();
  if (!w.object_exists[unit::indexOf(object_)]) return Where::kElsewhere;
  const unit::ObjectPlace& at = w.object[unit::indexOf(object_)];
  if (at.state == unit::ObjectState::kCarried) return Where::kCarried;
  if (at.place != seat().place() || seat().isWalking()) return Where::kElsewhere;
  return at.state == unit::ObjectState::kInserted ? Where::kInserted : Where::kLying;
}

void CarriedPart::refresh() {
  const Where now = where();
  if (now == shown_) return;
  shown_ = now;
  update();
}

PartRole CarriedPart::role() const {
  PartRole r;
  r.kind = PartRole::Kind::kButton;
  r.name = nameOf(object_);
  switch (where()) {
    case Where::kCarried:
      r.value = tr("with you");
      break;
    case Where::kInserted:
      r.value = tr("in its place here");
      break;
    case Where::kLying:
      r.value = tr("lies here");
      break;
    case Where::kElsewhere:
      r.value = tr("not here");
      break;
  }
  r.description = textOf(object_);
  return r;
}

bool CarriedPart::activate() {
  Q_EMIT asked(object_);
  return true;
}

void CarriedPart::paint(drawing::Pen& pen) const {
  const QPointF centre(area().center().x(), area().top() + 24);
  drawing::paintLooseThing(pen, centre, drawingOf(object_), where() == Where::kCarried);
  if (where() == Where::kInserted || where() == Where::kLying)
    pen.circle({area().right() - 8, area().top() + 7}, 4, {drawing::kThin, Tone::kInk, {}, false},
               Tone::kInk);
  if (hasFocus()) drawing::paintFocusRing(pen, area().adjusted(3, 3, -3, -3), 5);
}

void CarriedPart::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) activate();
}

void CarriedPart::keyPressEvent(QKeyEvent* event) {
  if (isPress(event)) {
    activate();
  } else {
    event->ignore();
  }
}

void CarriedPart::focusInEvent(QFocusEvent* event) {
  Part::focusInEvent(event);
  update();
}

void CarriedPart::focusOutEvent(QFocusEvent* event) {
  Part::focusOutEvent(event);
  update();
}

TitlePart::TitlePart(Seat& seat, const SheetStyle& style, QWidget* parent)
    : Part(seat, style, parent) {}

QString TitlePart::clock() const { return clockText(seat().run().tick()); }

QString TitlePart::pace() const {
  if (seat().isToLookAt()) return tr("recorded");
  if (seat().isFinished()) return tr("ended");
  if (seat().isPassing())
    return tr("passing, %1")
        .arg(clockText(static_cast<std::int64_t>(seat().passedSeconds() *
                                                 static_cast<double>(session::kTicksPerSecond))));
  if (seat().isFrozen()) return tr("stopped");
  const unit::Pace& pace = seat().run().pace();
  const bool over = seat().isOverTime();
  if (pace == unit::kStandardPace) return over ? tr("over the time allowed") : tr("real time");
  const QString runs =
      tr("time runs %1 times")
          .arg(QString::fromLatin1(pace.word.data(), static_cast<int>(pace.word.size())));
  return over ? tr("%1, over time").arg(runs) : runs;
}

void TitlePart::refresh() {
  const QString clock_now = clock(), pace_now = pace();
  if (clock_now == shown_clock_ && pace_now == shown_pace_) return;
  shown_clock_ = clock_now;
  shown_pace_ = pace_now;
  update();
}

PartRole TitlePart::role() const {
  return {PartRole::Kind::kText, tr("Run"), clock() + QLatin1String(", ") + pace(),
          exerciseWords(seat().run().situation().loaded.scenario.title)};
}

void TitlePart::paint(drawing::Pen& pen) const {
  const auto& scenario = seat().run().situation().loaded.scenario;
  const QString title =
      drawing::elideText(exerciseWords(scenario.title), area().width() - 30, drawing::kText, true);
  drawing::paintTitleBlock(pen, area(),
                           {{{1, title, true}},
                            {{0.5, clock(), true}, {0.5, modeText(seat().mode()), false}},
                            {{1, pace(), false}}});
}

}  // namespace cabwright::cab
