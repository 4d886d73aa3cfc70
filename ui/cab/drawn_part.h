// SPDX-License-Identifier: GPL-3.0-or-later
// A control that is drawn as the thing it is on its plate: a breaker, a bolt, a number wheel. What
// a hand does to it is the same as to any other control; how it looks is told by a function.
#pragma once

#include <functional>

#include "cab/control_part.h"

namespace cabwright::cab {

/// All that the drawing of such a control depends on.
struct DrawnState {
  double value = 0;
  QString held = {};  ///< letter of the hand on it, empty: nobody
  bool focus = false;
  bool reachable = true;
  QString key = {};       ///< its key cap, empty: none
  QString position = {};  ///< how it stands, in words
  QString refusal = {};   ///< why it would not move, in words; empty: nothing
  [[nodiscard]] bool isOn() const { return value > 0.5; }
  /// Tones of what moves: of its lines, and of what they enclose.
  [[nodiscard]] drawing::Tone line() const;
  [[nodiscard]] drawing::Tone fill() const;
};
using DrawControl = std::function<void(drawing::Pen& pen, const DrawnState& state)>;

class DrawnPart : public ControlPart {
  Q_OBJECT
 public:
  DrawnPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, unit::Control control,
            QString command, DrawControl draw, QWidget* parent);

  /// Of controls with any value between two ends a click goes to the other end; of numbers to the
  /// next one, and round again.
  bool activate() override;

 protected:
  void paint(drawing::Pen& pen) const override;

 private:
  DrawControl draw_;
};

/// The name of a control with its key, or why it would not move, in the middle under it.
void paintControlName(drawing::Pen& pen, QPointF middle_baseline, const QString& name,
                      const DrawnState& state, double width);
/// How it stands, in bold, or why it would not move.
void paintControlWord(drawing::Pen& pen, QPointF baseline, drawing::Anchor anchor,
                      const DrawnState& state, double width);

}  // namespace cabwright::cab
