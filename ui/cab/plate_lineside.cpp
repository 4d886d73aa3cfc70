// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate_lineside.h"

#include "cab/thing_part.h"
#include "drawing/furniture.h"
#include "unit/perception.h"

namespace cabwright::cab {

using drawing::Pen;
using drawing::Tone;
using unit::Signal;

namespace {

constexpr double kThingsHeight = 62;

}  // namespace

LinesidePlate::LinesidePlate(const PlateContext& context, QWidget* parent)
    : RoomPlate(context, parent) {
  const QRectF& a = area();
  const double view = 306 + spare() * 0.5;
  view_ = {a.left(), a.top() + 32, a.width(), view};
  const double top = view_.bottom() + 42;
  ways_ = {a.left(), top, a.width(), a.bottom() - kThingsHeight - top};
  const QRectF row(a.left(), a.bottom() - kThingsHeight + 2, a.width(), kThingsHeight - 2);
  addShown<ThingRow>(row, row, std::vector<unit::Object>{});
}

LinesideState LinesidePlate::state() const {
  LinesideState s;
  s.white_lit = seat().value(Signal::kEnd1White) > 0.5;
  s.red_lit = seat().value(Signal::kEnd1RedLit) > 0.5;
  s.board_hangs = seat().value(Signal::kShowsEnd1Protection) > 0.5;
  s.dark = isDarkOutside();
  s.light_in_hand = unit::hasLight(seat().unit().world());
  return s;
}

std::vector<double> LinesidePlate::liveState() const {
  const LinesideState s = state();
  return {s.white_lit ? 1.0 : 0.0, s.red_lit ? 1.0 : 0.0, s.board_hangs ? 1.0 : 0.0};
}

QPointF LinesidePlate::darkWords() const { return view_.center(); }

void LinesidePlate::paintGround(Pen& pen) const {
  drawing::paintCaption(pen, area().topLeft() + QPointF(0, 18), area().width(),
                        tr("The walkway's end: the unit in its siding"));
  drawing::paintCaption(pen, {area().left(), ways_.top() - 8}, area().width(), tr("Ways on foot"));
  paintWays(pen, ways_);
}

void LinesidePlate::paintState(Pen& pen) const { paintSidings(pen, view_, state()); }

}  // namespace cabwright::cab
