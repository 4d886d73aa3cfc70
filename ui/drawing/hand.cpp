// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/hand.h"

#include <vector>

#include "drawing/hand_held.h"
#include "drawing/outline.h"

namespace cabwright::drawing {
namespace {

constexpr double kOutline = 2;

const char* const kPalm =
    "M-25 4 C-29 18 -27 34 -19 46 L-17 74 L17 74 L18 46 C25 36 27 20 27 6 C14 -6 -12 -7 -25 4 Z";
// Covers where curled fingers meet the back of the hand.
const char* const kKnuckles =
    "M-26 6 C-28 14 -27 22 -25 27 L26 27 C27 20 27 12 26 7 L20 12 L-20 12 Z";

using Shapes = std::vector<QPainterPath>;

// One outline around all of them: the lines go down first and the fills cover what lies inside.
void paintUnion(Pen& pen, const Shapes& shapes, double k, Tone fill) {
  for (const QPainterPath& shape : shapes)
    pen.path(shape, {2 * kOutline / k, Tone::kHand}, Tone::kHand);
  for (const QPainterPath& shape : shapes) pen.path(shape, kNoLine, fill);
}

void paintCreases(Pen& pen, double k, std::string_view notation) {
  pen.path(outlineOf(notation), {1.1 / k, Tone::kHand});
}

Shapes openFingers() {
  return {capsuleShape({-19, 8}, {-25, -36}, 7.6), capsuleShape({-6, 4}, {-8, -48}, 8),
          capsuleShape({8, 4}, {9, -43}, 7.6),     capsuleShape({20.5, 9}, {25.5, -26}, 6.6),
          capsuleShape({-17, 36}, {-43, 2}, 8),    outlineOf(kPalm)};
}

void paintFree(Pen& pen, double k) {
  paintUnion(pen, openFingers(), k, Tone::kPaper);
  paintCreases(pen, k,
               "M-26.5 -13 q5 -3 10 0 M-12.4 -20 q5.4 -3 10.8 0 M3.6 -17 q5 -3 10 0 "
               "M18.8 -7 q4.2 -3 8.4 0");
  paintCreases(pen, k, "M-19 6 q4 -4 7 -1 M-4 3 q4 -4 8 0 M10 4 q5 -3 8 2 M-26 30 q6 3 8 10");
}

// Four fingers closed around something across the hand.
void paintClosed(Pen& pen, double k, const Shapes& fingers, std::string_view creases) {
  paintUnion(pen, fingers, k, Tone::kWash);
  pen.path(outlineOf(kKnuckles), kNoLine, Tone::kWash);
  paintCreases(pen, k, creases);
}

void paintAcross(Pen& pen, double k, Grip grip) {
  paintUnion(pen, {outlineOf(kPalm), capsuleShape({-20, 34}, {-36, -1}, 8.2)}, k, Tone::kWash);
  paintHeld(pen, grip, k);
  paintClosed(
      pen, k,
      {capsuleShape({-20, 8}, {-20.5, -25}, 8), capsuleShape({-6.4, 3}, {-6.6, -30}, 8.2),
       capsuleShape({7.6, 4}, {7.8, -28}, 8), capsuleShape({20.5, 9}, {21, -21}, 7)},
      "M-28 -12 q7.5 -3 15 0 M-14 -17 q7.5 -3 15 0 M0.5 -15 q7.5 -3 15 0 M14.5 -9 q6.5 -3 13 0 "
      "M-20 34 q8 -2 11 -9");
  pen.path(outlineOf("M-13.2 5 V-24 M0.6 2 V-27 M14.4 5 V-22"), {1.8 / k, Tone::kHand});
}

// The palm lies on the knob, the fingers bend over it and the thumb holds it from the side.
void paintOverKnob(Pen& pen, double k, Grip grip) {
  const double down = grip == Grip::kKnobPressed ? 5 : 0;
  paintHeld(pen, grip, k);
  paintUnion(pen, {outlineOf(kPalm), capsuleShape({-18, 34}, {-31, -6 + down}, 8)}, k, Tone::kWash);
  paintClosed(pen, k,
              {capsuleShape({-19, 8}, {-15, -19 + down}, 7.6),
               capsuleShape({-6.4, 3}, {-5.2, -26 + down}, 7.8),
               capsuleShape({7.6, 4}, {5.8, -24.5 + down}, 7.6),
               capsuleShape({20, 9}, {16, -15 + down}, 6.8)},
              "M-20 34 q8 -2 11 -9");
  pen.push({0, down}, 0);
  paintCreases(pen, k,
               "M-23 -9 q7 -3.4 14 -0.6 M-12 -14.5 q6.6 -3 13 0 M-0.4 -13.5 q6.6 -3 13 0.4 "
               "M11.4 -6 q5.6 -2.6 11 0.6");
  pen.path(outlineOf("M-12.6 4 L-10.2 -17 M0.6 2 L0.2 -22 M13.8 4 L11.2 -16"),
           {1.8 / k, Tone::kHand});
  pen.pop();
}

// The forefinger is stretched out, the others are closed, the thumb lies across them.
void paintFinger(Pen& pen, double k, Grip grip) {
  paintHeld(pen, grip, k);
  paintUnion(pen,
             {outlineOf(kPalm), capsuleShape({-18, 8}, {-18, -38}, 7.8),
              capsuleShape({-4, 4}, {-3.4, -7}, 8), capsuleShape({10, 5}, {10, -5}, 7.8),
              capsuleShape({21, 9}, {21.2, 0}, 6.6)},
             k, Tone::kWash);
  paintCreases(pen, k,
               "M-22.5 -40 q4.5 -6 9 0 M-23.4 -16 q5.4 -3 10.8 0 M-22.6 -13 q4.6 -2.4 9.2 0");
  pen.path(outlineOf("M-10.2 6 V-6 M3.2 8 V-5 M15.8 10 V-2"), {1.8 / k, Tone::kHand});
  paintUnion(pen, {capsuleShape({-17, 36}, {-10, 15}, 7)}, k, Tone::kWash);
  // The thumb's root runs into the palm.
  pen.circle({-12.6, 37.4}, 9.6, kNoLine, Tone::kWash);
  paintCreases(pen, k, "M-12.4 10 q5 0 7 4");
}

// Forefinger and thumb pinch something thin that stands up between them.
void paintPinch(Pen& pen, double k, Grip grip) {
  paintUnion(pen,
             {outlineOf(kPalm), capsuleShape({-5, 4}, {-3.6, -12}, 8),
              capsuleShape({9, 5}, {9.6, -9}, 7.8), capsuleShape({20.5, 9}, {21.2, -3}, 6.6)},
             k, Tone::kWash);
  pen.path(outlineOf("M-10.6 4 V-8 M2.9 6 V-10 M15.6 8 V-6"), {1.8 / k, Tone::kHand});
  paintCreases(pen, k, "M-9.4 -5 q6 -2.6 11.6 0 M4.2 -3 q6 -2.6 11 0");
  paintHeld(pen, grip, k);
  paintUnion(pen,
             {outlineOf(kPalm), capsuleShape({-15, 8}, {-13.5, -14}, 7.4),
              capsuleShape({-13.5, -14}, {-20, -21}, 6.8)},
             k, Tone::kWash);
  pen.path(outlineOf("M-21 10 H24 V20 H-21 Z"), kNoLine, Tone::kWash);
  paintUnion(pen, {capsuleShape({-16, 35}, {-33, 6}, 7.6), capsuleShape({-33, 6}, {-30, -13}, 7)},
             k, Tone::kWash);
  pen.circle({-13, 37}, 8.4, kNoLine, Tone::kWash);
  paintCreases(pen, k, "M-20.4 -8 q5 -3.4 11.4 -1 M-38.6 -4 q4.4 -3 9 -0.4");
}

}  // namespace

void paintHand(Pen& pen, QPointF knuckles, bool right, Grip grip, double k) {
  pen.push(knuckles, 0, right ? k : -k, k);
  switch (grip) {
    case Grip::kFree:
      paintFree(pen, k);
      break;
    case Grip::kBar:
    case Grip::kLamp:
    case Grip::kWheel:
    case Grip::kCock:
      paintAcross(pen, k, grip);
      break;
    case Grip::kKnob:
    case Grip::kKnobPressed:
      paintOverKnob(pen, k, grip);
      break;
    case Grip::kFinger:
    case Grip::kBell:
      paintFinger(pen, k, grip);
      break;
    case Grip::kDipstick:
    case Grip::kKey:
      paintPinch(pen, k, grip);
      break;
  }
  paintCreases(pen, k, "M-18 62 q18 5 36 0");
  pen.pop();
  // Beside a thumb that lies on the palm the letter makes room.
  const bool thumb_inside =
      grip == Grip::kFinger || grip == Grip::kBell || grip == Grip::kDipstick || grip == Grip::kKey;
  const double aside = (thumb_inside ? 4 : 0) * (right ? k : -k);
  pen.text(knuckles + QPointF(aside, 45 * k + 0.36 * kText),
           right ? QStringLiteral("R") : QStringLiteral("L"),
           {.anchor = Anchor::kMiddle,
            .bold = true,
            .tone = Tone::kHand,
            .on = grip == Grip::kFree ? Tone::kPaper : Tone::kWash});
}

QRectF handBounds(QPointF knuckles, double k) {
  return {knuckles.x() - 64 * k, knuckles.y() - 78 * k, 128 * k, 155 * k};
}

}  // namespace cabwright::drawing
