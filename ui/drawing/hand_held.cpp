// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/hand_held.h"

#include <string_view>

#include "drawing/outline.h"

namespace cabwright::drawing {
namespace {

void paintOutline(Pen& pen, double k, std::string_view notation, Tone fill = Tone::kFace) {
  pen.path(outlineOf(notation), {kNorm / k}, fill);
}

void paintKnob(Pen& pen, double k, bool pressed) {
  const double y = pressed ? -27 : -33;
  paintOutline(pen, k, "M-6 -30 L-4.4 -72 H4.4 L6 -30 Z");
  pen.circle({0, y}, 19, {kNorm / k}, Tone::kFace);
  pen.circle({0, y}, 14, {kHairline / k, Tone::kHair});
  if (!pressed) return;
  // Pressed down: a ring around it, and two strokes that point the way it went.
  pen.circle({0, y}, 25, {kBold / k, Tone::kHand});
  pen.path(outlineOf("M-24 -62 v11 m-5 -5.5 l5 5.5 l5 -5.5 M24 -62 v11 m-5 -5.5 l5 5.5 l5 -5.5"),
           {kNorm / k, Tone::kHand});
}

void paintLampInHand(Pen& pen, double k) {
  paintOutline(pen, k, "M-42 -25 H30 L44 -33 V1 L30 -7 H-42 a6 0 1 -6 -6 V-19 a6 0 1 6 -6 Z");
  pen.path(outlineOf("M30 -25 V-7 M-39 -25 V-7"), {kThin / k});
  pen.path(outlineOf("M49 -16 h11 M48 -26 l10 -5 M48 -6 l10 5"), {kNorm / k});
}

void paintDipstick(Pen& pen, double k) {
  pen.circle({-24, 2}, 8, {kNorm / k});
  paintOutline(pen, k, "M-27 -4 V-75 H-21 V-4 Z");
  pen.path(outlineOf("M-31 -66 h14 M-31 -46 h14"), {kNorm / k});
  pen.path(outlineOf("M-24 -74 V-54"), {3 / k});
}

void paintWheel(Pen& pen, double k) {
  const QPointF centre(0, -104);
  pen.sector(centre, 80, 96, 180 - 33, 180 + 33, {kNorm / k}, Tone::kFace);
  paintOutline(pen, k, "M-5 -24.6 V-72 H5 V-24.6 Z");
}

void paintKey(Pen& pen, double k) {
  paintOutline(pen, k, "M-28 -36 V-76 h6 v4 h8 v5 h-5 v4 h5 v6 h-8 V-36 Z");
  pen.circle({-25, -30}, 11.5, {kNorm / k}, Tone::kFace);
  pen.circle({-25, -34}, 3, {kThin / k}, Tone::kPaper);
}

void paintCockInHand(Pen& pen, double k) {
  pen.path(outlineOf("M39 -60 V28 M53 -60 V28"), {kNorm / k});
  pen.circle({46, -16}, 15, {kNorm / k}, Tone::kFace);
  paintOutline(pen, k, "M-36 -24 H46 a8 0 1 0 16 H-36 a8 0 1 0 -16 Z");
  pen.circle({46, -16}, 3, {kThin / k});
}

void paintButtonUnderFinger(Pen& pen, double k) {
  const QPointF centre(-18, -46);
  pen.circle(centre, 22, {kNorm / k}, Tone::kFace);
  pen.circle(centre, 17, kNoLine, Tone::kHand);
  pen.circle(centre, 27, {kBold / k, Tone::kHand});
}

void paintBellUnderFinger(Pen& pen, double k) {
  paintOutline(pen, k,
               "M-43 -38 H7 C-1 -44 -2 -52 -2 -56 a16 0 0 -32 0 C-34 -52 -35 -44 -43 -38 Z");
  pen.path(outlineOf("M-24 -38 a6 0 0 12 0"), {kNorm / k});
  pen.path(
      outlineOf("M4 -70 q7 8 7 17 M12 -75 q9 11 9 23 M-40 -70 q-7 8 -7 17 M-48 -75 q-9 11 -9 23"),
      {kThin / k});
}

}  // namespace

void paintHeld(Pen& pen, Grip grip, double k) {
  switch (grip) {
    case Grip::kFree:
      return;
    case Grip::kBar:
      return paintOutline(pen, k, "M-46 -24 H46 a8 0 1 0 16 H-46 a8 0 1 0 -16 Z");
    case Grip::kKnob:
      return paintKnob(pen, k, false);
    case Grip::kKnobPressed:
      return paintKnob(pen, k, true);
    case Grip::kFinger:
      return paintButtonUnderFinger(pen, k);
    case Grip::kLamp:
      return paintLampInHand(pen, k);
    case Grip::kDipstick:
      return paintDipstick(pen, k);
    case Grip::kWheel:
      return paintWheel(pen, k);
    case Grip::kKey:
      return paintKey(pen, k);
    case Grip::kCock:
      return paintCockInHand(pen, k);
    case Grip::kBell:
      return paintBellUnderFinger(pen, k);
  }
}

}  // namespace cabwright::drawing
