// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/draw_saloon.h"

#include "drawing/outline.h"

namespace cabwright::cab {

using drawing::kHairline;
using drawing::kNorm;
using drawing::kThin;
using drawing::Pen;
using drawing::Stroke;
using drawing::Tone;

namespace {

const Stroke kFine{kThin, Tone::kInk, {}, false};
const Stroke kFaint{kThin, Tone::kRule, {}, false};
constexpr double kFar = 4.2, kVanishAt = 0.44;
constexpr double kDoorFrom = 1.14, kDoorTo = 1.62, kDoorHigh = 0.66;
constexpr std::array<double, 5> kSeats{3.5, 2.9, 2.45, 2.1, 1.82};
constexpr std::array<double, 4> kLamps{3.2, 2.3, 1.72, 1.3};
constexpr double kLampUp = 1.0, kLampAcross = 0.34;

double sideOf(int side) { return side == 1 ? 1 : -1; }

void paintShell(Pen& pen, const SaloonView& view) {
  const QRectF far(view.at(-1, 1, kFar), view.at(1, -1, kFar));
  for (double across : {-1.0, 1.0}) {
    for (double up : {-1.0, 1.0}) pen.line(view.at(across, up, 1), view.at(across, up, kFar), {});
    pen.line(view.at(across, 0.74, 1), view.at(across, 0.74, kFar), kFaint);
    pen.line(view.at(across * 0.34, -1, 1), view.at(across * 0.34, -1, kFar), kFaint);
    // The luggage rack.
    pen.polygon({{view.at(across, 0.58, 1.7), view.at(across * 0.8, 0.56, 1.7),
                  view.at(across * 0.8, 0.56, kFar), view.at(across, 0.58, kFar)}},
                kFine, Tone::kFace);
  }
  pen.line(view.at(0, 1, 1), view.at(0, 1, kFar), kFaint);
  pen.rect(far, {}, Tone::kFace);
  const QRectF door(view.at(-0.34, 0.6, kFar), view.at(0.34, -1, kFar));
  pen.rect(door, kFine, Tone::kPaper, 2);
  pen.rect(door.adjusted(8, 10, -8, -door.height() * 0.5), kFine, Tone::kFace, 4);
  pen.circle({door.right() - 7, door.center().y() + 12}, 2.4, kFine);
}

void paintWindows(Pen& pen, const SaloonView& view, bool dark) {
  for (double side : {-1.0, 1.0}) {
    for (const auto& [from, to] : {std::pair{1.74, 2.2}, {2.32, 2.96}, {3.1, 3.95}}) {
      const QPolygonF glass = view.onWall(side, -0.1, 0.46, from, to);
      pen.polygon(glass, {}, dark ? Tone::kBezel : Tone::kPaper);
      if (dark) continue;
      pen.line(view.at(side, 0.06, from), view.at(side, 0.06, to), kFaint);
      pen.line(view.at(side, 0.3, from), view.at(side, 0.3, to),
               {kHairline, Tone::kRule, {}, false});
    }
  }
}

// Backs of the seats, the far ones first.
void paintSeats(Pen& pen, const SaloonView& view) {
  for (double z : kSeats) {
    for (double side : {-1.0, 1.0}) {
      const QPointF a = view.at(side * 0.44, -0.1, z), b = view.at(side * 0.99, -0.92, z);
      const QRectF back = QRectF(a, b).normalized();
      const double k = 1 / z;
      pen.rect(back, {}, Tone::kFace, 22 * k);
      pen.rect(back.adjusted(9 * k, 9 * k, -9 * k, -back.height() * 0.34), kFaint, Tone::kNone,
               15 * k);
      pen.line({back.center().x(), back.top() + 9 * k},
               {back.center().x(), back.top() + back.height() * 0.66}, kFaint);
      // Grip on the aisle's corner.
      const double x = side > 0 ? back.left() : back.right();
      pen.rect({x - 4 * k, back.top() - 5 * k, 20 * k * (side > 0 ? 1 : 0) + 4 * k, 18 * k},
               drawing::kNoLine);
    }
  }
}

void paintDoor(Pen& pen, const SaloonView& view, int side, bool open, bool dark) {
  const double s = sideOf(side);
  const QPolygonF opening = view.onWall(s, -1, kDoorHigh, kDoorFrom, kDoorTo);
  pen.polygon(opening, {}, open ? (dark ? Tone::kBezel : Tone::kPaper) : Tone::kFace);
  if (open) {
    if (!dark) {
      // What lies beyond: the path's edge or the rails of the other line.
      for (double up : {-0.5, -0.62, -0.1})
        pen.line(view.at(s, up, kDoorFrom), view.at(s, up, kDoorTo), kFaint);
    }
    // The leaves stand drawn back over the wall.
    for (const auto& [from, to] :
         {std::pair{kDoorFrom - 0.07, kDoorFrom + 0.05}, {kDoorTo - 0.05, kDoorTo + 0.16}})
      pen.polygon(view.onWall(s * 0.985, -0.99, kDoorHigh - 0.02, from, to), {}, Tone::kFace);
    return;
  }
  const double middle = 2 / (1 / kDoorFrom + 1 / kDoorTo);
  for (const auto& [from, to] : {std::pair{kDoorFrom, middle}, {middle, kDoorTo}}) {
    const double in = (to - from) * 0.16;
    pen.polygon(view.onWall(s, -1, kDoorHigh, from, to), kFine, Tone::kFace);
    pen.polygon(view.onWall(s, -0.06, 0.46, from + in, to - in), {},
                dark ? Tone::kBezel : Tone::kPaper);
    pen.polygon(view.onWall(s, -0.86, -0.2, from + in, to - in), kFaint);
  }
  pen.line(view.at(s, kDoorHigh, middle), view.at(s, -1, middle),
           {drawing::kBold, Tone::kInk, {}, false});
}

void paintSmallAlarm(Pen& pen, const SaloonView& view, int side, bool pulled) {
  const double s = sideOf(side);
  pen.polygon(view.onWall(s, 0.74, 0.92, 1.3, 1.44), {}, Tone::kPaper);
  const double low = pulled ? 0.66 : 0.8;
  pen.polygon(view.onWall(s, low, low + 0.06, 1.32, 1.42), {drawing::kBold, Tone::kInk, {}, false},
              Tone::kInk);
  if (!pulled) return;
  for (double z : {1.33, 1.41}) pen.line(view.at(s, 0.78, z), view.at(s, low + 0.06, z), kFine);
}

void paintLamps(Pen& pen, const SaloonView& view, bool lit) {
  for (double z : kLamps) {
    for (double side : {-1.0, 1.0}) {
      const QPointF c = view.at(side * kLampAcross, kLampUp, z);
      const double rx = 46 / z, ry = 13 / z;
      if (lit) {
        pen.ellipse(c, rx, ry, {kNorm, Tone::kInk, {}, false}, Tone::kWhite);
        for (double a : {-60.0, -30.0, 0.0, 30.0, 60.0}) {
          const QPointF d = drawing::pointAt({}, 1, 180 + a);
          pen.line(c + QPointF(d.x() * (rx + 5), d.y() * (ry + 6)),
                   c + QPointF(d.x() * (rx + 5 + 16 / z), d.y() * (ry + 6 + 16 / z)), {});
        }
      } else {
        pen.ellipse(c, rx, ry, {kNorm, Tone::kInk, {}, false}, Tone::kFace);
        QPainterPath lens;
        lens.addEllipse(c, rx, ry);
        pen.hatch(lens, Tone::kRule, 5);
      }
    }
  }
}

}  // namespace

QPointF SaloonView::at(double across, double up, double depth) const {
  const QPointF vanish(picture_.center().x(), picture_.top() + kVanishAt * picture_.height());
  const double high = up > 0 ? kVanishAt : 1 - kVanishAt;
  return vanish + QPointF(across * picture_.width() / 2, -up * high * picture_.height()) / depth;
}

QPolygonF SaloonView::onWall(double side, double low, double high, double from, double to) const {
  return {{at(side, low, from), at(side, high, from), at(side, high, to), at(side, low, to)}};
}

void paintSaloonGround(Pen& pen, const SaloonView& view, bool dark_outside) {
  pen.rect(view.picture(), drawing::kNoLine, Tone::kFace);
  paintShell(pen, view);
  paintWindows(pen, view, dark_outside);
  paintSeats(pen, view);
}

void paintSaloonState(Pen& pen, const SaloonView& view, const SaloonState& state) {
  for (int side : {1, 2}) {
    paintDoor(pen, view, side, state.door_open[side == 1 ? 0 : 1], state.dark_outside);
    paintSmallAlarm(pen, view, side, state.alarm_pulled);
  }
  paintLamps(pen, view, state.lamps_lit);
  pen.rect(view.picture(), {}, Tone::kNone, 2);
}

QRectF saloonDoorBox(const SaloonView& view, int side) {
  return view.onWall(sideOf(side), -0.8, 0.5, kDoorFrom + 0.04, kDoorTo - 0.04).boundingRect();
}

QRectF saloonAlarmBox(const SaloonView& view) {
  return view.onWall(1, 0.66, 0.92, 1.3, 1.44).boundingRect();
}

QRectF saloonLampBox(const SaloonView& view) {
  const QPointF c = view.at(-kLampAcross, kLampUp, kLamps.back());
  return {c.x() - 40, c.y() - 14, 80, 28};
}

void paintAlarmHandle(Pen& pen, QPointF c, const DrawnState& state) {
  const Stroke moving{state.held.isEmpty() ? kNorm : drawing::kBold, state.line(), {}, false};
  pen.rect({c.x() - 46, c.y() - 34, 92, 40}, {}, Tone::kPaper, 4);
  for (double x : {-38.0, 38.0}) pen.circle(c + QPointF(x, -26), 2.2, kFine);
  const double y = state.isOn() ? c.y() + 24 : c.y() - 18;
  if (state.isOn()) {
    for (double x : {-22.0, 22.0}) pen.line(c + QPointF(x, -10), {c.x() + x, y}, moving);
  }
  pen.rect({c.x() - 32, y - 7, 64, 14}, moving, state.held.isEmpty() ? Tone::kFace : Tone::kHand,
           7);
  if (!state.held.isEmpty())
    pen.text({c.x(), y + 6.5}, state.held,
             {.anchor = drawing::Anchor::kMiddle,
              .bold = true,
              .tone = Tone::kPaper,
              .on = Tone::kHand});
  if (!state.isOn()) {
    // The thread that breaks when it is pulled.
    QPainterPath thread(c + QPointF(-34, 2));
    thread.cubicTo(c + QPointF(-10, 10), c + QPointF(10, 10), c + QPointF(34, 2));
    pen.path(thread, {kHairline, Tone::kInk, {}, false});
    pen.circle(c + QPointF(0, 9), 4, kFine, Tone::kFace);
  }
  if (state.focus)
    pen.rect({c.x() - 53, c.y() - 41, 106, 80}, {drawing::kFocus, Tone::kHand, {}, false},
             Tone::kNone, 8);
}

}  // namespace cabwright::cab
