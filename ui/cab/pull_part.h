// SPDX-License-Identifier: GPL-3.0-or-later
// A cord with a ring, pulled as long as a hand is on it.
#pragma once

#include "cab/control_part.h"

namespace cabwright::cab {

class PullPart : public ControlPart {
  Q_OBJECT
 public:
  /// `hook`: where the cord comes from; the ring hangs 30 u below it, pulled 12 u lower.
  PullPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, unit::Control control,
           QPointF hook, QWidget* parent);

 protected:
  void paint(drawing::Pen& pen) const override;

 private:
  QPointF hook_;
};

}  // namespace cabwright::cab
