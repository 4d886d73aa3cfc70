// SPDX-License-Identifier: GPL-3.0-or-later
// A lever on its quadrant: every position it has, the one it is in, who holds it, and where it is
// blocked.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QString>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "drawing/pen.h"

namespace cabwright::drawing {

/// A position of a lever or a switch, at its clock angle.
struct Detent {
  double angle = 0;
  QString label = {};
  bool plain = false;  ///< no notch is cut
};

/// An arc a lever may not enter, clock angles.
struct LeverBlock {
  double from = 0, to = 0;
};

struct LeverLook {
  using Blocked = LeverBlock;
  QString held = {};     ///< letter of the hand, "L" or "R"; empty: nobody holds it
  bool pressed = false;  ///< handle pressed down
  bool focus = false;
  bool empty = false;  ///< socket without its lever
  bool out_of_reach = false;
  std::vector<Blocked> blocked = {};
  std::optional<double> ghost = {};  ///< angle it was wanted at and did not go to
  std::optional<std::pair<double, double>> wedge =
      {};  ///< effect growing from the first angle to the second
};

/// `radius`: outer, of the rim, u. `at_angle` need not be a detent.
void paintLever(Pen& pen, QPointF pivot, double radius, std::span<const Detent> detents,
                double at_angle, const LeverLook& look);

/// All that it may paint on, with its labels in their bold form.
[[nodiscard]] QRectF leverBounds(QPointF pivot, double radius, std::span<const Detent> detents);

/// Centre of the knob, 17 u in radius: where hands and pointers take hold.
[[nodiscard]] QPointF leverKnob(QPointF pivot, double radius, double at_angle);

}  // namespace cabwright::drawing
