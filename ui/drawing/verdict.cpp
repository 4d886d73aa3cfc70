// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/verdict.h"

namespace cabwright::drawing {

Tone toneOf(VerdictSign sign) {
  switch (sign) {
    case VerdictSign::kGood:
      return Tone::kGood;
    case VerdictSign::kDefect:
      return Tone::kBad;
    case VerdictSign::kUnsure:
      return Tone::kDoubt;
    case VerdictSign::kSeen:
    case VerdictSign::kNone:
      break;
  }
  return Tone::kInk2;
}

void paintVerdict(Pen& pen, QPointF centre, VerdictSign sign, double r, Tone on) {
  const Tone tone = toneOf(sign);
  const Stroke stroke{2.3, tone, {}, true};
  const auto at = [&](double x, double y) { return centre + QPointF(x, y); };
  switch (sign) {
    case VerdictSign::kGood:
      pen.circle(centre, r, {kNorm, tone}, on);
      pen.polyline({{at(-0.45 * r, 0.02 * r), at(-0.11 * r, 0.40 * r), at(0.51 * r, -0.40 * r)}},
                   stroke);
      return;
    case VerdictSign::kDefect: {
      const double k = 0.42 * r;
      pen.rect({centre.x() - r + 1, centre.y() - r + 1, 2 * r - 2, 2 * r - 2}, {kNorm, tone}, on,
               1);
      pen.line(at(-k, -k), at(k, k), stroke);
      pen.line(at(-k, k), at(k, -k), stroke);
      return;
    }
    case VerdictSign::kUnsure: {
      const double k = r / 9.5;
      pen.polygon({{at(0, -r - 1), at(r + 0.5, r - 1.5), at(-r - 0.5, r - 1.5)}}, {kNorm, tone},
                  on);
      pen.line(at(0, -r + 6 * k), at(0, 1.5 * k), {2.2, tone});
      pen.circle(at(0, 4.6 * k), 1.3, kNoLine, tone);
      return;
    }
    case VerdictSign::kSeen:
      pen.circle(centre, r, {kThin, Tone::kRule, {3, 3}, false}, on);
      return;
    case VerdictSign::kNone:
      return;
  }
}

}  // namespace cabwright::drawing
