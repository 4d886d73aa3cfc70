// SPDX-License-Identifier: GPL-3.0-or-later
// The chosen fault: what it does, what is right to do, how large, when, how fast it grows; and the
// button that puts it in.
#pragma once

#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "desk/desk.h"
#include "desk/fault_moment.h"
#include "fault/fault.h"

namespace cabwright::desk {

class FaultForm : public QWidget {
  Q_OBJECT
 public:
  explicit FaultForm(Desk& desk, QWidget* parent = nullptr);

  /// nullptr: none is chosen.
  void showFault(const fault::FaultSpec* spec);
  [[nodiscard]] const fault::FaultSpec* shown() const { return spec_; }
  /// The keys go to what is to be said first of it.
  void takeFocus();
  /// What is chosen, as an action; the spec must be there.
  [[nodiscard]] unit::Action makeAction() const;

  [[nodiscard]] QDoubleSpinBox* size() const { return size_; }
  [[nodiscard]] QDoubleSpinBox* ramp() const { return ramp_; }
  [[nodiscard]] FaultMoment* moment() const { return moment_; }
  [[nodiscard]] QPushButton* putIn() const { return put_in_; }

 private:
  void put();
  void showUsable();
  Desk& desk_;
  const fault::FaultSpec* spec_ = nullptr;
  QLabel *title_, *symptom_, *decision_, *size_word_, *range_, *moment_word_, *ramp_word_;
  QDoubleSpinBox *size_, *ramp_;
  FaultMoment* moment_;
  QPushButton* put_in_;
};

}  // namespace cabwright::desk
