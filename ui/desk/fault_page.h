// SPDX-License-Identifier: GPL-3.0-or-later
// Faults are put where they live: the unit with its spots, the faults of a spot, the chosen one,
// and all that are in.
#pragma once

#include <QWidget>

#include "desk/fault_form.h"
#include "desk/fault_picker.h"
#include "desk/present_faults.h"
#include "desk/unit_view.h"

namespace cabwright::desk {

class FaultPage : public QWidget {
  Q_OBJECT
 public:
  explicit FaultPage(Desk& desk, QWidget* parent = nullptr);

  [[nodiscard]] UnitView* unit() const { return unit_; }
  [[nodiscard]] FaultPicker* picker() const { return picker_; }
  [[nodiscard]] FaultForm* form() const { return form_; }
  [[nodiscard]] PresentFaults* present() const { return present_; }

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void arrange();
  Desk& desk_;
  UnitView* unit_;
  FaultPicker* picker_;
  FaultForm* form_;
  PresentFaults* present_;
};

}  // namespace cabwright::desk
