// SPDX-License-Identifier: GPL-3.0-or-later
// A lever on its quadrant: dragged along it, turned by wheel and keys, with all its detents.
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "cab/control_part.h"
#include "drawing/lever.h"

namespace cabwright::cab {

struct LeverShape {
  QPointF pivot = {};
  double radius = 98;
  /// Value and clock angle of each position, in order of the angles; labels come from the control.
  std::vector<std::pair<double, double>> angles = {};
  std::optional<std::pair<double, double>> wedge = {};  ///< growing effect, from angle to angle
  /// Least distance from the last detent, in values, where anything between is allowed; see brake.
  double first_step = 0;
  double step = 0;  ///< of keys and wheel, in values; 0: from detent to detent
};

class LeverPart : public ControlPart {
  Q_OBJECT
 public:
  LeverPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, unit::Control control,
            QString command, LeverShape shape, QWidget* parent);

  /// The loose handle that makes it a lever; without it there is an empty socket.
  void setSocketOf(unit::Object handle, std::optional<unit::Object> or_else = {});
  /// A handle that is pressed down: the throttle's, which is the safety device.
  void setDevice(unit::Control device) { device_ = device; }

  /// Where its knob is when it stands there, u of the sheet.
  [[nodiscard]] QPointF knobAt(double value) const;
  [[nodiscard]] QPointF pivot() const { return shape_.pivot; }

  /// Hands take or let go, steps step; with a device the handle is pressed down as well.
  void useKey(bool down) override;
  void refresh() override;

 protected:
  void paint(drawing::Pen& pen) const override;
  void paintPointer(drawing::Pen& pen) const override;
  [[nodiscard]] double nextValue(int by) const override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;

 private:
  [[nodiscard]] bool hasHandle() const;
  [[nodiscard]] bool isPressedDown() const;
  [[nodiscard]] double angleOf(double value) const;
  [[nodiscard]] double valueAt(QPointF sheet_point) const;
  [[nodiscard]] std::vector<drawing::Detent> detents() const;

  LeverShape shape_;
  std::optional<unit::Object> handle_, other_handle_;
  std::optional<unit::Control> device_;
  std::optional<double> wanted_;  ///< while a hand drags it
  struct Drawn {
    bool handle = true, pressed = false;
    bool operator==(const Drawn&) const = default;
  } drawn_;
};

}  // namespace cabwright::cab
