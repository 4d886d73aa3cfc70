// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/outside_part.h"

#include <cmath>

#include "drawing/furniture.h"
#include "unit/people.h"

namespace cabwright::cab {

using unit::Signal;

namespace {

constexpr double kHearing = 420, kGutter = 24, kGap = 12;
constexpr double kSide = 80, kBehind = 104;
constexpr double kMphToMps = 0.44704;
// What moves less than this on the sheet is not drawn anew.
constexpr double kLeastMoveM = 0.004, kLeastDistanceM = 0.5;
constexpr double kWiperS = 1.4;  // there and back

bool isSame(const OutsideScene& a, const OutsideScene& b) {
  return std::abs(a.front_m - b.front_m) < kLeastMoveM && a.signal == b.signal &&
         std::abs(a.signal_m - b.signal_m) < kLeastDistanceM && a.limit_mph == b.limit_mph &&
         std::abs(a.mark_m - b.mark_m) < kLeastDistanceM && a.dark == b.dark &&
         a.headlit == b.headlit && a.wiper == b.wiper && a.person == b.person;
}

bool isSame(const BehindScene& a, const BehindScene& b) {
  return describeBehind(a) == describeBehind(b) && a.stands == b.stands &&
         a.answered == b.answered && a.ringing == b.ringing && a.guard == b.guard;
}

// Along either car or at the engine that lies there.
bool isPersonAtSide(const unit::World& w, int side) {
  using unit::Place;
  const auto at = [&](Place p) { return unit::isPersonAt(w, p); };
  return side == 1 ? at(Place::kSide1) || at(Place::kTrailer1) || at(Place::kEngine1)
                   : at(Place::kSide2) || at(Place::kTrailer2) || at(Place::kEngine2);
}

}  // namespace

OutsidePart::OutsidePart(Seat& seat, const SheetStyle& style, const QRectF& band, QWidget* parent)
    : Part(seat, style, parent),
      profile_(seat.run().situation().loaded.route.route.profile()),
      band_(band) {
  setFocusPolicy(Qt::TabFocus);
  setAccessibleName(tr("Outside"));
  setObjectName(QStringLiteral("outside"));
  scene_ = makeScene();
  behind_ = makeBehind();
  const QRectF free = hearingArea(band);
  setArea(QRectF(band.left() - 2, band.top(), free.left() - kGutter - band.left() + 4,
                 band.height() + 2));
}

QRectF OutsidePart::hearingArea(const QRectF& band) {
  return {band.right() - kHearing, band.top(), kHearing, band.height()};
}

OutsidePart::Windows OutsidePart::windows() const {
  const double top = band_.top() + 2, height = band_.height() - 4;
  const double end = hearingArea(band_).left() - kGutter;
  const double behind = end - kBehind, right = behind - kGap - kSide;
  const double ahead = band_.left() + kSide + kGap;
  return {{band_.left(), top, kSide, height},
          {ahead, top, right - kGap - ahead, height},
          {right, top, kSide, height},
          {behind, top, kBehind, height}};
}

OutsideScene OutsidePart::makeScene() const {
  OutsideScene s;
  const unit::World& w = seat().unit().world();
  const auto& loaded = seat().run().situation().loaded;
  s.line = &loaded.route;
  s.profile = &profile_;
  s.cab = seat().place() == unit::Place::kCab2 ? 1 : 0;
  const bool first = s.cab == 0;
  s.front_m = seat().value(Signal::kTruePosition) + facingOf(s.cab) * 0.5 * unit::kUnitLengthM;
  s.speed_mps = seat().value(Signal::kTrueAbsSpeed) * kMphToMps;
  s.signal = seat().value(first ? Signal::kCab1Signal : Signal::kCab2Signal);
  s.signal_m = seat().value(first ? Signal::kCab1SignalDistance : Signal::kCab2SignalDistance);
  s.limit_mph = seat().value(first ? Signal::kCab1Limit : Signal::kCab2Limit);
  s.mark_m = seat().value(first ? Signal::kCab1Mark : Signal::kCab2Mark);
  s.dark = w.dark;
  s.headlit = seat().value(first ? Signal::kEnd1White : Signal::kEnd2White) > 0.5;
  s.weather = weatherOf(loaded.scenario.weather);
  if (seat().value(first ? Signal::kCab1Swept : Signal::kCab2Swept) > 0.5) {
    const double turn =
        std::fmod(static_cast<double>(seat().run().tick()) * 0.01, kWiperS) / kWiperS;
    s.wiper = style().reduced_motion ? 0 : 1 - std::abs(2 * turn - 1);
  }
  const bool looked =
      seat().value(Signal::kAnsweredLookAlong) == static_cast<double>(unit::Reply::kPersonSeen);
  for (int side : {1, 2}) s.person[side == 1 ? 0 : 1] = looked && isPersonAtSide(w, side);
  return s;
}

BehindScene OutsidePart::makeBehind() const {
  BehindScene b;
  const bool first = seat().place() != unit::Place::kCab2;
  b.guard = seat().unit().world().guard_present;
  b.code = static_cast<int>(seat().value(Signal::kHeardBell));
  b.age_s = seat().value(Signal::kHeardBellAge);
  b.stands = seat().value(Signal::kGuardValid) > 0.5 &&
             seat().value(Signal::kGuardCode) == seat().value(Signal::kHeardBell);
  b.answered = b.stands && seat().value(Signal::kGuardAnswered) > 0.5;
  b.ringing = seat().value(first ? Signal::kCab1BellRings : Signal::kCab2BellRings) > 0.5;
  return b;
}

void OutsidePart::setTurned(bool turned) {
  turned_ = turned;
  update();
}

void OutsidePart::refresh() {
  if (seat().isWalking()) return;
  const OutsideScene scene = makeScene();
  const BehindScene behind = makeBehind();
  if (isSame(scene, scene_) && isSame(behind, behind_)) return;
  const bool news = (scene.signal != scene_.signal && !turned_) || behind.code != behind_.code;
  scene_ = scene;
  behind_ = behind;
  update();
  if (news) announceValue();
}

PartRole OutsidePart::role() const {
  PartRole r;
  r.kind = PartRole::Kind::kPicture;
  r.name = tr("Outside");
  const int left = rightSign(scene_.cab) > 0 ? 2 : 1;
  QStringList words = turned_ ? QStringList(tr("behind your back")) : describeAhead(scene_);
  if (turned_) {
    // Nothing is seen of either side.
  } else if (!scene_.dark || scene_.person[0] || scene_.person[1]) {
    words << tr("left: %1").arg(describeBeside(scene_, left));
    words << tr("right: %1").arg(describeBeside(scene_, 3 - left));
  }
  words << tr("guard: %1").arg(describeBehind(behind_));
  r.value = words.join(QLatin1String("; "));
  return r;
}

void OutsidePart::focusInEvent(QFocusEvent* event) {
  Part::focusInEvent(event);
  update();
}

void OutsidePart::focusOutEvent(QFocusEvent* event) {
  Part::focusOutEvent(event);
  update();
}

void OutsidePart::paint(drawing::Pen& pen) const {
  const Windows w = windows();
  const int left = rightSign(scene_.cab) > 0 ? 2 : 1;
  if (turned_) {
    for (const QRectF& window : {w.left, w.ahead, w.right})
      pen.rect(window, {drawing::kThin, drawing::Tone::kRule, {}, false}, drawing::Tone::kNone, 2);
    pen.text(w.ahead.center() + QPointF(0, 6.5), tr("behind your back"),
             {.anchor = drawing::Anchor::kMiddle, .tone = drawing::Tone::kInk2});
  } else {
    paintBeside(pen, w.left, scene_, left, tr("left"));
    paintAhead(pen, w.ahead, scene_);
    paintBeside(pen, w.right, scene_, 3 - left, tr("right"));
  }
  paintBehind(pen, w.behind, behind_);
  if (hasFocus()) drawing::paintFocusRing(pen, w.ahead.adjusted(6, 6, -6, -6), 4);
}

}  // namespace cabwright::cab
