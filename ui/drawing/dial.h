// SPDX-License-Identifier: GPL-3.0-or-later
// A round dial: ring, linear scale over 270 degrees with its gap at 6 o'clock, figures that no
// needle ever covers, one or two needles, the figures that matter outside the ring.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QString>
#include <cstdint>
#include <span>
#include <vector>

#include "drawing/pen.h"

namespace cabwright::drawing {

/// A figure that matters, marked outside the ring.
struct RimMark {
  double value = 0;
  QString figure = {};
};

/// A hatched band along the scale, in the unit of the scale.
struct DialZone {
  double from = 0, to = 0;
};

/// Values and steps are in the unit of the instrument, rising clockwise.
struct DialScale {
  double low = 0, high = 30;
  double major = 5, minor = 1;  ///< steps of the numbered and of the smallest marks
  double middle = 0;            ///< step of the marks between, 0: none
  QString unit = {};            ///< stands in the gap at 6 o'clock
  double figure_divisor = 1;    ///< figures are values divided by this ("x100")
  std::vector<RimMark> marks = {};
  std::vector<DialZone> zones = {};
};

enum class NeedleKind : std::uint8_t { kSolid, kHollow };

struct DialNeedle {
  double value = 0;
  NeedleKind kind = NeedleKind::kSolid;
};

struct DialLook {
  bool focus = false;         ///< the keys act here
  bool being_read = false;    ///< somebody looks at it
  bool out_of_reach = false;  ///< not seen from here: no needle, all pale
  bool dark = false;  ///< no light falls on it: ring and hub, scale and needle not to be read
};

/// `r` is the radius of the ring in u; 90 and more is a large dial with its larger type.
void paintDial(Pen& pen, QPointF centre, double r, const DialScale& scale,
               std::span<const DialNeedle> needles, const DialLook& look = {});

/// Clock angle of a value, -135 to 135; a value beyond the scale stands at its end.
[[nodiscard]] double dialAngle(const DialScale& scale, double value);

/// What is wrong with the graduation, in plain words; empty when nothing is. Steps must be 1, 2 or
/// 5 times a power of ten, whole in each other and in the range, with at most 9 marks between
/// figures, at most 3 sizes of marks, and a gap at 6 o'clock of at least one numbered interval.
[[nodiscard]] std::vector<QString> findScaleFaults(const DialScale& scale);

/// The small needle of a legend, 28 u long from `at` to the right, middle of its height at `at`.
void paintNeedleSign(Pen& pen, QPointF at, NeedleKind kind);

/// Where a numbered value's figure stands, with its box as wide as the type is; for tests and for
/// whoever draws over a dial.
[[nodiscard]] QRectF dialFigureBox(const DialScale& scale, QPointF centre, double r, double value);

/// All that a dial of this radius may paint on, rim figures and focus ring included.
[[nodiscard]] QRectF dialBounds(QPointF centre, double r, const DialScale& scale);

}  // namespace cabwright::drawing
