// SPDX-License-Identifier: GPL-3.0-or-later
// When a fault is to come: now, after so many seconds, or when something holds for the first time,
// chosen from what is often wanted or written as conditions are.
#pragma once

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <optional>

#include "unit/condition.h"

namespace cabwright::desk {

/// A condition that is often wanted, with its words.
struct ReadyCondition {
  const char* words;  ///< English, for translation
  const char* text;
};
[[nodiscard]] const std::vector<ReadyCondition>& readyConditions();

class FaultMoment : public QWidget {
  Q_OBJECT
 public:
  explicit FaultMoment(QWidget* parent = nullptr);

  /// 10 ms each; 0: at once.
  [[nodiscard]] std::int64_t afterTicks() const;
  [[nodiscard]] std::optional<unit::Condition> when() const;
  /// What is wrong with the condition, as its reader says it; empty: nothing.
  [[nodiscard]] QString fault() const;
  void reset();

  [[nodiscard]] QComboBox* choice() const { return choice_; }
  [[nodiscard]] QLineEdit* condition() const { return condition_; }
  [[nodiscard]] QDoubleSpinBox* seconds() const { return seconds_; }

 Q_SIGNALS:
  void changed();
  /// Enter in a field.
  void entered();

 private:
  void show();
  [[nodiscard]] bool isCondition() const { return choice_->currentIndex() >= 2; }
  QComboBox* choice_;
  QDoubleSpinBox* seconds_;
  QLineEdit* condition_;
  QLabel* fault_;
};

}  // namespace cabwright::desk
