// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <array>

#include "cab/names.h"
#include "cab/plate_lineside.h"
#include "drawing/furniture.h"
#include "drawing/lamp.h"
#include "drawing/outline.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::kHairline;
using drawing::kThin;
using drawing::Pen;
using drawing::Stroke;
using drawing::Tone;

namespace {

class Lineside {
  Q_DECLARE_TR_FUNCTIONS(Lineside)
};

const Stroke kFine{kThin, Tone::kInk, {}, false};
const Stroke kFaint{kThin, Tone::kRule, {}, false};
constexpr double kEyeM = 1.6, kFocal = 420;
constexpr double kTrackM = 3.1, kOtherM = kTrackM + 4.75, kHalfBody = 1.35, kRoofM = 3.75;
constexpr double kNearM = 7.5, kUnitM = 40;
constexpr double kFloorM = 1.15, kFar = 400;

/// One looks back along the siding; x to the right of the path's middle.
struct View {
  QRectF window;
  [[nodiscard]] QPointF at(double x, double z, double up = 0) const {
    const QPointF vanish(window.left() + 0.30 * window.width(),
                         window.top() + 0.45 * window.height());
    return vanish + QPointF(x, kEyeM - up) * (kFocal / z) * (window.height() / 306);
  }
};

void paintTrack(Pen& pen, const View& view, double middle, double from, Tone tone) {
  for (double z = from; z < 90; z *= 1.11)
    pen.line(view.at(middle - 1.25, z), view.at(middle + 1.25, z),
             {std::max(0.8, 14 / z), tone == Tone::kInk ? Tone::kInk2 : Tone::kRule, {}, false});
  for (double side : {-0.72, 0.72})
    pen.polygon({{view.at(middle + side - 0.05, from), view.at(middle + side + 0.05, from),
                  view.at(middle + side, kFar)}},
                {0.8, tone, {}, false}, tone);
}

void paintPath(Pen& pen, const View& view) {
  for (double x : {-1.0, 1.0})
    pen.line(view.at(x, 3.2), view.at(x, kFar), {drawing::kNorm, Tone::kInk, {}, false});
  for (double z = 4.9; z < 70; z *= 1.2)
    pen.line(view.at(-1, z), view.at(1, z), {kHairline, Tone::kRule, {}, false});
  // A low fence with lamp standards beyond it.
  pen.line(view.at(-2.4, 4, 1.0), view.at(-2.4, kFar, 1.0), kFaint);
  for (double z = 4.4; z < 80; z *= 1.35)
    pen.line(view.at(-2.4, z), view.at(-2.4, z, 1.05), kFaint);
  for (double z : {9.0, 22.0, 50.0}) {
    pen.line(view.at(-2.9, z), view.at(-2.9, z, 4.4),
             {std::max(1.0, 20 / z), Tone::kInk2, {}, false});
    pen.line(view.at(-2.9, z, 4.4), view.at(-1.9, z, 4.5),
             {std::max(1.0, 20 / z), Tone::kInk2, {}, false});
  }
}

void paintBodySide(Pen& pen, const View& view) {
  const double x = kTrackM - kHalfBody, far = kNearM + kUnitM;
  const auto wall = [&](double z0, double z1, double low, double high) {
    return QPolygonF{
        {view.at(x, z0, low), view.at(x, z0, high), view.at(x, z1, high), view.at(x, z1, low)}};
  };
  for (double z : {26.0, 23.0, 11.8, 9.6})
    pen.ellipse(view.at(x + 0.3, z, 0.45), 0.15 * kFocal / z, 0.45 * kFocal / z, {}, Tone::kPaper);
  pen.polygon(wall(kNearM, far, kFloorM, kRoofM - 0.25), {}, Tone::kFace);
  pen.polygon(wall(kNearM + 0.6, far, 0.62, kFloorM), kFine, Tone::kPaper);
  for (double z : {9.6, 12.4, 15.8, 20.0, 25.5, 30.5, 37.0})
    pen.polygon(wall(z, z * 1.13, 1.95, 2.75), kFine, Tone::kPaper);
  for (double z : {8.2, 18.6, 34.5})
    pen.polygon(wall(z, z * 1.07, kFloorM, 3.0), kFine, Tone::kPaper);
  pen.line(view.at(x, kNearM + 20, 0.4), view.at(x, kNearM + 20, kRoofM - 0.25),
           {drawing::kBold, Tone::kInk, {}, false});
}

void paintEndFace(Pen& pen, const View& view, const LinesideState& state) {
  const double l = kTrackM - kHalfBody, r = kTrackM + kHalfBody;
  const auto at = [&](double x, double up) { return view.at(x, kNearM, up); };
  QPainterPath face(at(l, 0.55));
  face.lineTo(at(l, kRoofM - 0.45));
  face.cubicTo(at(l, kRoofM - 0.1), at(l + 0.6, kRoofM), at(kTrackM, kRoofM));
  face.cubicTo(at(r - 0.6, kRoofM), at(r, kRoofM - 0.1), at(r, kRoofM - 0.45));
  face.lineTo(at(r, 0.55));
  face.closeSubpath();
  pen.path(face, {drawing::kRing, Tone::kInk, {}, false}, Tone::kFace);
  pen.line(at(l, 1.95), at(r, 1.95), kFaint);
  for (const auto& [a, b] : {std::pair{l + 0.14, kTrackM - 0.08}, {kTrackM + 0.08, r - 0.14}})
    pen.rect(QRectF(at(a, 3.05), at(b, 2.1)), {}, state.dark ? Tone::kBezel : Tone::kPaper, 7);
  pen.rect(QRectF(at(kTrackM - 0.5, 3.55), at(kTrackM + 0.5, 3.2)), kFine, Tone::kPaper, 3);
  // Buffer beam with coupling and hoses; wheels under it.
  pen.rect(QRectF(at(l, 1.2), at(r, 0.8)), {}, Tone::kPaper, 3);
  for (double x : {kTrackM - 0.85, kTrackM + 0.85}) pen.circle(at(x, 1.02), 15, {}, Tone::kFace);
  pen.path(drawing::capsuleShape(at(kTrackM, 1.0), at(kTrackM, 0.62), 5), {}, Tone::kFace);
  for (double x : {kTrackM - 0.4, kTrackM + 0.4}) {
    QPainterPath hose(at(x, 0.98));
    hose.cubicTo(at(x - 0.1, 0.3), at(x + 0.3, 0.3), at(x + 0.22, 0.85));
    pen.path(hose, {4.6, Tone::kInk, {}, true});
  }
  for (double x : {kTrackM - 0.75, kTrackM + 0.75})
    pen.rect(QRectF(at(x - 0.09, 0.7), at(x + 0.09, 0.02)), kFine, Tone::kPaper, 2);
  for (double x : {l + 0.3, r - 0.3}) {
    const drawing::LampLook white{.color = drawing::LampColor::kWhite, .lit = state.white_lit};
    const drawing::LampLook red{.color = drawing::LampColor::kRed, .lit = state.red_lit};
    drawing::paintLamp(pen, at(x, 1.72), white, {}, 9);
    drawing::paintLamp(pen, at(x, 1.38), red, {}, 9);
  }
  if (!state.board_hangs) return;
  const QRectF board(at(kTrackM - 0.32, 1.85), at(kTrackM + 0.32, 1.3));
  pen.rect(board, {drawing::kBold, Tone::kInk, {}, false}, Tone::kPaper, 2);
  pen.hatch(drawing::rectShape(board), Tone::kBad, 6, -45, 2.4);
}

void paintDark(Pen& pen, const QRectF& window, const View& view, const LinesideState& state) {
  pen.rect(window, drawing::kNoLine, Tone::kBezel);
  const auto lamp = [&](double x, double up, Tone tone) {
    const QPointF c = view.at(x, kNearM, up);
    pen.circle(c, 8, drawing::kNoLine, tone);
    for (int k = 0; k < 8; ++k)
      pen.line(drawing::pointAt(c, 13, k * 45.0), drawing::pointAt(c, 19, k * 45.0),
               {drawing::kNorm, tone, {}, false});
  };
  for (double x : {kTrackM - kHalfBody + 0.3, kTrackM + kHalfBody - 0.3}) {
    if (state.white_lit) lamp(x, 1.72, Tone::kWhite);
    if (state.red_lit) lamp(x, 1.38, Tone::kRed);
  }
  if (!state.light_in_hand) return;
  for (double x : {-1.0, 1.0})
    pen.line(view.at(x, 3.2), view.at(x, 9), {drawing::kNorm, Tone::kRule, {}, false});
  for (double z = 3.6; z < 9; z *= 1.2)
    pen.line(view.at(-1, z), view.at(1, z), {kHairline, Tone::kRule, {}, false});
}

/// The plan: car 1 on the right, as in the plan of the unit; metres to u.
struct Plan {
  QRectF box;
  double scale, right, y;
  [[nodiscard]] double x(double metres_from_end1) const { return right - metres_from_end1 * scale; }
};

void paintUnitPlan(Pen& pen, const Plan& plan) {
  const double half = 1.35 * plan.scale;
  for (double dy : {-0.72, 0.72})
    pen.line({plan.box.left(), plan.y + dy * plan.scale},
             {plan.box.right(), plan.y + dy * plan.scale}, {kHairline, Tone::kRule, {}, false});
  for (int car = 0; car < 2; ++car) {
    const QRectF body(QPointF(plan.x(car == 0 ? 19.6 : 40), plan.y - half),
                      QPointF(plan.x(car == 0 ? 0 : 20.4), plan.y + half));
    pen.rect(body, {}, Tone::kFace, 10);
    const double cab = car == 0 ? body.right() - 2.4 * plan.scale : body.left() + 2.4 * plan.scale;
    pen.line({cab, body.top()}, {cab, body.bottom()}, kFine);
    pen.text(body.center() + QPointF(0, 6.5),
             car == 0 ? Lineside::tr("motor car") : Lineside::tr("trailer"),
             {.anchor = Anchor::kMiddle, .tone = Tone::kInk2, .on = Tone::kFace});
  }
}

// Where the line is crossed: the way in dashes, with a sign that asks to look both ways.
void paintCrossing(Pen& pen, double x, double from_y, double to_y, double track_y) {
  pen.line({x, from_y}, {x, to_y}, {drawing::kBold, Tone::kInk, {9, 6}, false});
  const QPointF c(x, track_y);
  pen.polygon({{c + QPointF(0, -19), c + QPointF(20, 15), c + QPointF(-20, 15)}},
              {drawing::kRing, Tone::kInk, {}, false}, Tone::kPaper);
  pen.line(c + QPointF(-8, 6), c + QPointF(8, 6), {});
  for (double s : {-1.0, 1.0})
    pen.polygon({{c + QPointF(s * 12, 6), c + QPointF(s * 5, 2), c + QPointF(s * 5, 10)}},
                drawing::kNoLine, Tone::kInk);
}

void paintPlaceName(Pen& pen, QPointF at, unit::Place place, Anchor anchor = Anchor::kMiddle) {
  const unit::Walk way = unit::calcWalk(unit::Place::kLineside, place);
  pen.text(at, nameOf(place), {.anchor = anchor, .bold = true, .halo = 4});
  const QString length = Lineside::tr("%1 m").arg(way.metres, 0, 'f', 0);
  pen.text(at + QPointF(0, 23),
           way.crossings > 0 ? Lineside::tr("%1, over the line").arg(length) : length,
           {.anchor = anchor, .tone = Tone::kInk2, .halo = 4});
}

}  // namespace

void paintSidings(Pen& pen, const QRectF& window, const LinesideState& state) {
  const View view{window};
  pen.push();
  pen.painter().setClipRect(window, Qt::IntersectClip);
  if (state.dark) {
    paintDark(pen, window, view, state);
  } else {
    pen.rect(window, drawing::kNoLine, Tone::kFace);
    const double y = view.at(0, 1e6).y();
    QPainterPath hills({window.left(), y - 14});
    hills.cubicTo(window.left() + 160, y - 60, window.left() + 260, y - 30, window.left() + 380,
                  y - 18);
    hills.cubicTo(window.left() + 640, y - 4, window.right() - 300, y - 70, window.right(), y - 34);
    pen.path(hills, kFaint);
    pen.line({window.left(), y}, {window.right(), y}, {kHairline, Tone::kRule, {}, false});
    paintTrack(pen, view, kOtherM, 4, Tone::kInk2);
    paintTrack(pen, view, kTrackM, 4, Tone::kInk);
    paintPath(pen, view);
    paintBodySide(pen, view);
    paintEndFace(pen, view, state);
  }
  const Tone words = state.dark ? Tone::kWhite : Tone::kInk2;
  const Tone on = state.dark ? Tone::kBezel : Tone::kFace;
  const double foot = window.bottom() - 14;
  pen.text({view.at(0, 4.2).x(), foot}, Lineside::tr("path, side 1"),
           {.anchor = Anchor::kMiddle, .tone = words, .on = on, .halo = 4});
  pen.text({window.right() - 14, window.top() + 30}, Lineside::tr("other line: trains at any time"),
           {.anchor = Anchor::kEnd, .bold = true, .tone = words, .on = on, .halo = 4});
  pen.pop();
  pen.rect(window, {}, Tone::kNone, 2);
}

void paintWays(Pen& pen, const QRectF& box) {
  Plan plan{box, 0, 0, 0};
  plan.scale = (box.width() - 470) / kUnitM;
  plan.right = box.right() - 290;
  plan.y = box.top() + 0.46 * box.height();
  const double path_y = plan.y + 62, other_y = plan.y - 66, end = 26;
  // The other line, hatched: nobody walks there.
  const QRectF danger(box.left(), other_y - 22, box.width(), 34);
  pen.hatch(drawing::rectShape(danger), Tone::kRule, 9, 45, 1);
  for (double dy : {-12.0, 2.0})
    pen.line({box.left(), other_y + dy}, {box.right(), other_y + dy}, {});
  pen.text({box.right() - 14, other_y + 34}, Lineside::tr("other line"),
           {.anchor = Anchor::kEnd, .tone = Tone::kInk2, .halo = 4});
  paintUnitPlan(pen, plan);
  // The path along side 1, and the way round each end.
  const double x1 = plan.x(0) + end, x2 = plan.x(kUnitM) - end, side2 = plan.y - 36;
  pen.line({x2, path_y}, {box.right() - 12, path_y}, {drawing::kBold, Tone::kInk, {}, false});
  pen.polygon({{{x2 - 3, path_y}, {x2 + 11, path_y - 6}, {x2 + 11, path_y + 6}}}, drawing::kNoLine,
              Tone::kInk);
  for (double x : {x1, x2}) paintCrossing(pen, x, path_y, side2, plan.y);
  pen.line({x1, side2}, {x2, side2}, {drawing::kNorm, Tone::kInk, {9, 6}, false});
  // Who stands here, and from where one came.
  const QPointF here(plan.x(0) + 92, path_y);
  pen.circle(here, 10, drawing::kNoLine, Tone::kHand);
  pen.circle(here, 15, {drawing::kNorm, Tone::kHand, {}, false});
  pen.text(here + QPointF(0, -24), Lineside::tr("you"),
           {.anchor = Anchor::kMiddle, .bold = true, .tone = Tone::kHand, .halo = 4});
  pen.text({box.right() - 12, path_y + 30}, Lineside::tr("booking-on"),
           {.anchor = Anchor::kEnd, .tone = Tone::kInk2, .halo = 4});
  using unit::Place;
  const double names = path_y + 32;
  paintPlaceName(pen, {x1, names}, Place::kEnd1);
  paintPlaceName(pen, {plan.x(10), names}, Place::kSide1);
  paintPlaceName(pen, {plan.x(30), names}, Place::kTrailer1);
  const auto beyond = [&](double metres, const QString& words) {
    pen.text({plan.x(metres), names + 46}, words,
             {.anchor = Anchor::kMiddle, .tone = Tone::kInk2, .halo = 4});
  };
  beyond(10, Lineside::tr("to engine 1, between the cars, up to cab 1"));
  beyond(30, Lineside::tr("up to the saloon and cab 2"));
  paintPlaceName(pen, {x2, names}, Place::kEnd2);
  paintPlaceName(pen, {plan.x(10), other_y - 58}, Place::kSide2);
  paintPlaceName(pen, {plan.x(30), other_y - 58}, Place::kTrailer2);
}

}  // namespace cabwright::cab
