// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/objects.h"

#include <string_view>

#include "drawing/outline.h"

namespace cabwright::drawing {
namespace {

struct Icon {
  std::string_view body;   ///< filled
  std::string_view lines;  ///< drawn on it
};

// Around the middle, in u.
Icon iconOf(LooseThing thing) {
  switch (thing) {
    case LooseThing::kBrakeHandle:
      return {"M-24 -13 H20 a6.5 0 1 0 13 H-10 V14 H-24 Z", "M-24 7 H-10 M-14 -13 V0"};
    case LooseThing::kReversingLever:
      return {"M-4.5 -5.2 a9.5 1 1 9 0 L4 20 H-4 Z", "M-4.2 12 H4.2"};
    case LooseThing::kControlKey:
      return {"M-3 -2.6 a10 1 1 6 0 V20 H-3 V15 H-9 V10 H-3 Z", "M-3.5 -12 h7"};
    case LooseThing::kDoorKey:
      return {"M-4.6 -3.5 H23 V12 H16 V5 H8 V3.5 H-4.6 a10 1 1 0 -7 Z", "M-17 0 h6"};
    case LooseThing::kHandLamp:
      return {"M-17 -7 H0 L8 -13 V13 L0 7 H-17 a7 0 1 0 -14 Z",
              "M0 -7 V7 M13 -7 l8 -4 M13 0 h10 M13 7 l8 4"};
    case LooseThing::kVest:
      return {"M-16 20 V-2 Q-10 -8 -11 -20 H-4.5 L0 -10 L4.5 -20 H11 Q10 -8 16 -2 V20 Z",
              "M0 -10 V20 M-16 5 H16 M-16 12 H16"};
    case LooseThing::kNotebook:
      return {"M-14 -19 H14 V19 H-14 Z",
              "M-14 -12 H14 M-10 -15.5 h4 M-2 -15.5 h4 M6 -15.5 h4 "
              "M-9 -4 H9 M-9 3 H9 M-9 10 H3"};
    case LooseThing::kRuleBook:
      return {"M-15 -17 Q-15 -20 -12 -20 H15 V14 H-12 Q-15 14 -15 17 Z",
              "M-15 17 Q-15 20 -12 20 H15 V14 M-7 -11 H8 M-7 -5 H8 M-10 -20 V14"};
    case LooseThing::kPadlock:
      return {"M-14 -3 H14 V19 H-14 Z", "M-9 -3 V-10 a9 0 1 18 0 V-3 M0 5 V11 M-2.4 5 h4.8"};
    case LooseThing::kDipstick:
      return {"M-10 -1.8 H24 V1.8 H-10 a6.5 1 1 0 -3.6 Z",
              "M-19 0 a3 0 1 6 0 a3 0 1 -6 0 M10 -5 V5 M17 -5 V5"};
  }
  return {};
}

}  // namespace

void paintLooseThing(Pen& pen, QPointF centre, LooseThing thing, bool here) {
  const Icon icon = iconOf(thing);
  pen.push(centre, 0);
  if (here) {
    pen.path(outlineOf(icon.body), {}, Tone::kFace);
    pen.path(outlineOf(icon.lines), {kThin});
  } else {
    pen.path(outlineOf(icon.body), {kNorm, Tone::kRule, {4, 3}, false});
  }
  pen.pop();
}

QRectF looseThingBounds(QPointF centre) { return {centre.x() - 28, centre.y() - 25, 56, 50}; }

}  // namespace cabwright::drawing
