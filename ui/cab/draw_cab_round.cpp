// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/draw_cab_round.h"

#include <algorithm>

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

void paintTread(Pen& pen, const QRectF& plates) {
  pen.rect(plates, kFaint, Tone::kNone, 2);
  int row = 0;
  for (double y = plates.top() + 12; y < plates.bottom() - 6; y += 15, ++row) {
    const double first = plates.left() + (row % 2 == 0 ? 14 : 26);
    for (double x = first; x < plates.right() - 10; x += 24) {
      const double s = row % 2 == 0 ? 1 : -1;
      pen.line({x - 5, y - 2.5 * s}, {x + 5, y + 2.5 * s}, {kThin, Tone::kRule, {}, true});
    }
  }
}

void paintRivets(Pen& pen, const QRectF& box, double in) {
  for (double x : {box.left() + in, box.right() - in}) {
    for (double y : {box.top() + in, box.bottom() - in})
      pen.circle({x, y}, 1.8, {kHairline, Tone::kInk, {}, false});
  }
}

}  // namespace

void paintPipe(Pen& pen, const QPolygonF& middle, double half) {
  QPainterPath path;
  path.addPolygon(middle);
  QPainterPathStroker outer;
  outer.setWidth(2 * half);
  outer.setJoinStyle(Qt::RoundJoin);
  outer.setCapStyle(Qt::FlatCap);
  pen.path(outer.createStroke(path).simplified(), {}, Tone::kFace);
}

void paintShelf(Pen& pen, double left, double right, double y) {
  pen.rect({left, y, right - left, 7}, {}, Tone::kFace);
  for (double x : {left + 24, right - 24}) {
    const QPolygonF bracket{
        {{x, y + 7}, {x, y + 32}, {x + (x < (left + right) / 2 ? 20 : -20), y + 7}}};
    pen.polygon(bracket, kFine, Tone::kFace);
  }
}

void paintCanister(Pen& pen, const QRectF& box) {
  const double x = box.left(), y = box.top(), w = box.width(), h = box.height();
  pen.rect({x + 3, y + 16, w - 6, h - 16}, {}, Tone::kFace, 3);
  pen.rect({x, y + 6, w, 18}, {}, Tone::kFace, 4);
  pen.rect({x + w / 2 - 16, y, 32, 6}, kFine, Tone::kFace, 2);
  for (double s : {0.46, 0.52, 0.84}) pen.line({x + 3, y + s * h}, {x + w - 3, y + s * h}, kFaint);
  // Strap from lid to body, with its wire and seal.
  pen.rect({x + w - 26, y + 10, 10, 40}, kFine, Tone::kPaper, 2);
  pen.circle({x + w - 21, y + 34}, 2.4, kFine);
  QPainterPath wire({x + w - 21, y + 37});
  wire.cubicTo(x + w - 12, y + 44, x + w - 30, y + 50, x + w - 22, y + 58);
  pen.path(wire, {kHairline, Tone::kInk, {}, false});
  pen.circle({x + w - 22, y + 62}, 5, kFine, Tone::kFace);
  pen.circle({x + w - 22, y + 62}, 1.4, drawing::kNoLine, Tone::kInk);
}

void paintRolledFlags(Pen& pen, const QRectF& box) {
  for (int k = 0; k < 2; ++k) {
    const double x = box.left() + box.width() * (k == 0 ? 0.28 : 0.72);
    const double top = box.top() + 30, foot = box.bottom();
    pen.rect({x - 2.2, box.top(), 4.4, box.height()}, {}, Tone::kFace);
    QPainterPath roll({x - 8, top});
    roll.cubicTo(x - 14, top + 20, x - 12, foot - 40, x - 9, foot - 22);
    roll.lineTo(x + 9, foot - 22);
    roll.cubicTo(x + 12, foot - 40, x + 14, top + 20, x + 8, top);
    roll.closeSubpath();
    pen.path(roll, {}, Tone::kFace);
    pen.path(drawing::outlineOf("M-5 6 Q-8 26 -4 46 M2 4 Q6 24 1 48 M6 10 Q9 30 6 44")
                 .translated(x, top + 2),
             kFaint);
    pen.rect({x - 12, top + 10, 24, 5}, kFine, Tone::kPaper, 1);
    pen.rect({x - 11, foot - 38, 22, 5}, kFine, Tone::kPaper, 1);
  }
}

void paintTrackClips(Pen& pen, const QRectF& box) {
  const double y = box.top();
  pen.rect({box.left() + 6, y, box.width() - 12, 9}, {}, Tone::kFace, 2);
  paintRivets(pen, {box.left() + 6, y, box.width() - 12, 9}, 4.5);
  for (int k = 0; k < 2; ++k) {
    const double x = box.left() + (k == 0 ? 26 : box.width() - 26), s = k == 0 ? 1 : -1;
    pen.push({x, y}, 0, s, 1);
    pen.path(drawing::outlineOf("M-12 9 V36 Q-12 48 -1 48 H12 V40 H2 Q-4 40 -4 33 V9 Z"), {},
             Tone::kFace);
    pen.path(drawing::outlineOf("M12 40 l6 -5 v18 l-6 -5 Z"), kFine, Tone::kPaper);
    pen.line({-12, 22}, {-4, 22}, kFine);
    pen.pop();
  }
  QPainterPath cable({box.left() + 18, y + 44});
  cable.cubicTo(box.left() + 20, box.bottom() + 22, box.right() - 20, box.bottom() + 22,
                box.right() - 18, y + 44);
  pen.path(cable, {4.6, Tone::kInk, {}, true});
  pen.path(cable, {2.2, Tone::kFace, {}, true});
}

void paintExtinguisher(Pen& pen, const QRectF& box) {
  const double x = box.center().x(), w = box.width(), top = box.top(), foot = box.bottom();
  const double r = w * 0.36, shoulder = top + 56;
  // Wall plate behind.
  pen.rect({x - 14, top + 70, 28, foot - top - 84}, kFaint, Tone::kNone, 3);
  QPainterPath body({x - r, foot});
  body.lineTo(x - r, shoulder + 12);
  body.cubicTo(x - r, shoulder - 6, x - 8, shoulder - 8, x - 8, shoulder - 18);
  body.lineTo(x + 8, shoulder - 18);
  body.cubicTo(x + 8, shoulder - 8, x + r, shoulder - 6, x + r, shoulder + 12);
  body.lineTo(x + r, foot);
  body.closeSubpath();
  pen.path(body, {}, Tone::kFace);
  pen.line({x - r, foot - 6}, {x + r, foot - 6}, kFine);
  // Head with lever, pin and its ring, and the small gauge.
  pen.rect({x - 11, shoulder - 30, 22, 13}, {}, Tone::kFace, 2);
  pen.path(drawing::outlineOf("M-8 -30 L-34 -44 L-32 -48 L8 -38 V-30 Z").translated(x, shoulder),
           {}, Tone::kFace);
  pen.path(drawing::outlineOf("M-9 -19 L-32 -22 V-26 L-9 -25 Z").translated(x, shoulder), kFine,
           Tone::kFace);
  pen.line({x - 14, shoulder - 33}, {x + 13, shoulder - 33}, kFine);
  pen.circle({x + 18, shoulder - 33}, 5, kFine);
  pen.circle({x + 2, shoulder - 23}, 5.5, kFine, Tone::kPaper);
  pen.line({x + 2, shoulder - 23}, {x + 4.5, shoulder - 26.5}, kFine);
  // Hose with its nozzle, held at the side.
  QPainterPath hose({x + 11, shoulder - 24});
  hose.cubicTo(x + r + 22, shoulder - 26, x + r + 10, shoulder + 50, x + r + 9, foot - 62);
  pen.path(hose, {6.4, Tone::kInk, {}, true});
  pen.path(hose, {3.6, Tone::kFace, {}, true});
  pen.path(drawing::outlineOf("M-4 0 L-6 26 H6 L4 0 Z").translated(x + r + 9, foot - 62), kFine,
           Tone::kFace);
  // Label and strap.
  pen.rect({x - r + 6, shoulder + 34, 2 * r - 12, 34}, kFine, Tone::kPaper, 2);
  for (double y : {42.0, 50.0, 58.0})
    pen.line({x - r + 11, shoulder + y}, {x + r - 11, shoulder + y}, kFaint);
  pen.rect({x - r - 4, shoulder + 14, 2 * r + 8, 8}, kFine, Tone::kPaper, 2);
}

void paintFirstAidBox(Pen& pen, const QRectF& box) {
  pen.rect(box, {}, Tone::kFace, 5);
  pen.rect(box.adjusted(5, 5, -5, -5), kFaint, Tone::kNone, 3);
  const QPointF c = box.center();
  pen.path(drawing::outlineOf("M-7 -22 H7 V-7 H22 V7 H7 V22 H-7 V7 H-22 V-7 H-7 Z")
               .translated(c.x(), c.y() + 2),
           {}, Tone::kPaper);
  pen.rect({c.x() - 15, box.top() - 8, 30, 8}, kFine, Tone::kFace, 3);
  // Two catches, with the paper seal over one.
  for (double x : {box.left() + 16, box.right() - 26})
    pen.rect({x, box.top() + 8, 10, 8}, kFine, Tone::kPaper, 1);
  pen.rect({box.right() - 30, box.top() - 3, 18, 8}, {kHairline, Tone::kInk, {}, false},
           Tone::kPaper);
}

void paintBookAndPlates(Pen& pen, const QRectF& box) {
  const QRectF book(box.left() + 14, box.top(), box.width() - 36, 64);
  pen.rect(book.translated(6, 4), kFine, Tone::kPaper, 2);
  pen.rect(book, {}, Tone::kFace, 2);
  pen.line({book.left() + 9, book.top()}, {book.left() + 9, book.bottom()}, kFine);
  pen.rect({book.left() + 20, book.top() + 10, book.width() - 32, 16}, kFine, Tone::kPaper);
  const QRectF pocket(box.left(), box.top() + 36, box.width(), 44);
  pen.rect(pocket, {}, Tone::kFace, 4);
  pen.line(pocket.topLeft() + QPointF(4, 7), pocket.topRight() + QPointF(-4, 7), kFaint);
  const QRectF plate(box.left() + 4, pocket.bottom() + 12, box.width() - 8, 34);
  pen.ellipse(plate.center(), plate.width() / 2, plate.height() / 2, {}, Tone::kFace);
  pen.ellipse(plate.center(), plate.width() / 2 - 4, plate.height() / 2 - 4,
              {kHairline, Tone::kInk, {}, false});
  for (double y : {-5.0, 1.0, 7.0})
    pen.line(plate.center() + QPointF(-26, y), plate.center() + QPointF(26, y), kFaint);
  for (double s : {-1.0, 1.0})
    pen.circle(plate.center() + QPointF(s * (plate.width() / 2 - 9), 0), 1.8, kFine);
}

void paintCabDoor(Pen& pen, const QRectF& box, bool dark_outside) {
  pen.rect(box.adjusted(-9, -9, 9, 0), kFine, Tone::kNone, 3);
  pen.rect(box, {}, Tone::kFace, 2);
  const QRectF window(box.left() + 22, box.top() + 26, box.width() - 44, 108);
  pen.rect(window.adjusted(-6, -6, 6, 6), kFine, Tone::kNone, 14);
  pen.rect(window, {}, dark_outside ? Tone::kBezel : Tone::kPaper, 10);
  if (!dark_outside) {
    const double y = window.top() + 70;
    pen.line({window.left(), y}, {window.right(), y}, kFaint);
    QPainterPath hill({window.left(), y - 12});
    hill.cubicTo(window.left() + 30, y - 30, window.right() - 40, y - 6, window.right(), y - 16);
    pen.path(hill, kFaint);
  }
  const QRectF panel(box.left() + 22, box.bottom() - 118, box.width() - 44, 82);
  pen.rect(panel, kFaint, Tone::kNone, 4);
  pen.rect({box.left() + 4, box.bottom() - 26, box.width() - 8, 20}, kFine, Tone::kPaper, 2);
  for (double y : {box.top() + 50, box.center().y(), box.bottom() - 70}) {
    pen.rect({box.left() - 6, y - 17, 12, 34}, kFine, Tone::kFace, 3);
    pen.line({box.left() - 6, y - 5}, {box.left() + 6, y - 5}, {kHairline, Tone::kInk, {}, false});
    pen.line({box.left() - 6, y + 5}, {box.left() + 6, y + 5}, {kHairline, Tone::kInk, {}, false});
  }
}

void paintDoorLock(Pen& pen, QPointF c, const DrawnState& state) {
  const double out = state.isOn() ? 3 : 21;
  pen.rect({c.x() + 18, c.y() - 22, out, 14}, {kNorm, state.line(), {}, false}, state.fill(), 1);
  pen.rect({c.x() + 30, c.y() - 32, 15, 40}, {kNorm, Tone::kInk, {}, false}, Tone::kNone, 2);
  pen.rect({c.x() - 19, c.y() - 36, 38, 72}, {kNorm, state.line(), {}, false}, Tone::kFace, 4);
  pen.push(c + QPointF(0, -15), state.isOn() ? 0 : 90);
  pen.path(drawing::outlineOf("M-3 -3.2 a4.6 1 1 6 0 L4 10 H-4 Z"), drawing::kNoLine, state.line());
  pen.pop();
  // The handle, level.
  pen.circle(c + QPointF(0, 16), 9, {kNorm, Tone::kInk, {}, false}, Tone::kFace);
  pen.path(drawing::outlineOf("M3 -5 H-46 a5 1 0 0 10 H3 Z").translated(c.x(), c.y() + 16), {},
           Tone::kFace);
  if (state.focus)
    pen.rect({c.x() - 25, c.y() - 42, 76, 50}, {drawing::kFocus, Tone::kHand, {}, false},
             Tone::kNone, 6);
}

QRectF sealBox(QPointF cock) { return {cock.x() + 24, cock.y() + 18, 22, 30}; }

void paintCockPipe(Pen& pen, QPointF c) {
  paintPipe(pen, {{c + QPointF(-64, 0), c + QPointF(64, 0)}});
  for (double s : {-1.0, 1.0})
    pen.rect({c.x() + s * 30 - 7, c.y() - 11, 14, 22}, {}, Tone::kFace, 2);
  // Wire from the flange through the eye of the handle to the lead.
  const QRectF seal = sealBox(c);
  const QPointF lead(seal.center().x(), seal.bottom() - 7);
  QPainterPath wire(c + QPointF(29, 9));
  wire.cubicTo(c + QPointF(30, 18), lead + QPointF(-8, -14), lead + QPointF(-2, -4));
  wire.moveTo(c + QPointF(35, 9));
  wire.cubicTo(c + QPointF(46, 16), lead + QPointF(8, -14), lead + QPointF(2, -4));
  pen.path(wire, {kHairline, Tone::kInk, {}, false});
  pen.circle(lead, 7, kFine, Tone::kFace);
  pen.circle(lead, 3.6, {kHairline, Tone::kInk, {}, false});
}

void paintSealedCock(Pen& pen, QPointF c, const DrawnState& state) {
  pen.circle(c, 17, {kNorm, state.line(), {}, false}, Tone::kFace);
  pen.push(c, state.isOn() ? 90 : 0);
  pen.path(drawing::outlineOf("M-5 15 V-34 a5 0 1 10 0 V15 a5 0 1 -10 0 Z"),
           {state.held.isEmpty() ? kNorm : drawing::kBold, state.line(), {}, false}, state.fill());
  pen.circle({0, -29}, 2.2, kFine);
  pen.pop();
  pen.circle(c, 4, {kThin, state.line(), {}, false}, Tone::kFace);
  if (state.focus)
    pen.rect({c.x() - 39, c.y() - 40, 78, 58}, {drawing::kFocus, Tone::kHand, {}, false},
             Tone::kNone, 8);
}

QRectF strainerBox(QPointF valve) { return {valve.x() - 84, valve.y() - 20, 40, 40}; }

void paintValvePipe(Pen& pen, QPointF c, double reach) {
  const QRectF strainer = strainerBox(c);
  paintPipe(pen, {{strainer.center() + QPointF(16, 0), c + QPointF(reach - 4, 0)}}, 8);
  pen.path(drawing::outlineOf("M0 -11 L-34 -18 V18 L0 11 Z").translated(strainer.right(), c.y()),
           {}, Tone::kFace);
  for (double x : {8.0, 15.0, 22.0, 29.0}) {
    const double half = 11 + 0.2 * x;
    pen.line({strainer.right() - x, c.y() - half}, {strainer.right() - x, c.y() + half}, kFaint);
  }
}

void paintGuardsValve(Pen& pen, QPointF c, const DrawnState& state) {
  pen.rect({c.x() - 25, c.y() - 21, 50, 42}, {}, Tone::kFace, 8);
  pen.circle(c, 17, {kNorm, state.line(), {}, false}, Tone::kPaper);
  // Along the pipe it is open, across it shut.
  pen.push(c, 90 * std::clamp(state.value, 0.0, 1.0));
  pen.path(drawing::outlineOf("M-6 10 L-4 -50 a8 1 1 8 0 L6 10 a6 0 1 -12 0 Z"),
           {state.held.isEmpty() ? kNorm : drawing::kBold, state.line(), {}, false}, state.fill());
  pen.circle({0, -56}, 8, {kNorm, state.line(), {}, false},
             state.held.isEmpty() ? Tone::kFace : Tone::kHand);
  pen.pop();
  pen.circle(c, 4, {kThin, state.line(), {}, false}, Tone::kFace);
  if (state.focus)
    pen.rect({c.x() - 32, c.y() - 30, 64, 58}, {drawing::kFocus, Tone::kHand, {}, false},
             Tone::kNone, 8);
}

void paintNumberWheel(Pen& pen, QPointF c, const DrawnState& state, const QString& blank) {
  const QRectF window(c.x() - 22, c.y() - 26, 44, 52);
  pen.rect(window.adjusted(-7, -7, 7, 7), {kNorm, state.line(), {}, false}, state.fill(), 6);
  pen.rect(window, kFine, Tone::kFace, 3);
  const int at = static_cast<int>(state.value + 0.5);
  for (double y : {-15.0, 15.0})
    pen.line({window.left(), c.y() + y}, {window.right(), c.y() + y}, kFaint);
  const bool none = at == 0;
  pen.text(c + QPointF(0, none ? 6.5 : 9.5), none ? blank : QString::number(at),
           {.size = none ? drawing::kText : drawing::kResult,
            .anchor = drawing::Anchor::kMiddle,
            .bold = !none,
            .on = Tone::kFace});
  // Thumb grips above and below.
  for (double s : {-1.0, 1.0}) {
    pen.polygon({{c + QPointF(0, s * 24.5), c + QPointF(-6, s * 18.5), c + QPointF(6, s * 18.5)}},
                drawing::kNoLine, state.line());
  }
  if (state.focus)
    pen.rect(window.adjusted(-12, -12, 12, 12), {drawing::kFocus, Tone::kHand, {}, false},
             Tone::kNone, 8);
}

void paintTipUpSeat(Pen& pen, const QRectF& box) {
  pen.rect({box.left(), box.top(), box.width(), 26}, {}, Tone::kFace, 8);
  pen.rect({box.left() + 8, box.top() + 34, box.width() - 16, box.height() - 40}, {}, Tone::kFace,
           8);
  pen.line({box.left() + 16, box.top() + 48}, {box.right() - 16, box.top() + 48}, kFaint);
  for (double x : {box.left() + 22, box.right() - 34})
    pen.rect({x, box.bottom() - 12, 12, 14}, kFine, Tone::kPaper, 2);
}

void paintCabFloor(Pen& pen, const QRectF& box, double well_left, double well_right) {
  pen.rect(box, {}, Tone::kNone);
  // A smooth cover, screwed down, and the tread plates.
  const QRectF cover(box.left() + 8, box.top() + 8, 116, box.height() - 16);
  pen.rect(cover, kFaint, Tone::kNone, 2);
  paintRivets(pen, cover, 7);
  paintTread(pen, {cover.right() + 6, cover.top(), well_left - cover.right() - 20, cover.height()});
  paintTread(pen,
             {well_right + 14, box.top() + 8, box.right() - well_right - 22, box.height() - 16});
  // The well: each step lies lower and is drawn inside the one above.
  const QRectF well(well_left, box.top(), well_right - well_left, box.height());
  pen.rect(well, {}, Tone::kFace);
  for (int k = 1; k <= 2; ++k) {
    const double y = well.top() + k * well.height() / 3;
    pen.line({well.left(), y}, {well.right(), y}, {});
    pen.line({well.left(), y - 6}, {well.right(), y - 6}, kFaint);
  }
}

}  // namespace cabwright::cab
