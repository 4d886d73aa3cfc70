// SPDX-License-Identifier: GPL-3.0-or-later
// A situation in under a minute: which exercise, how it is taken, by whom, in what weather; then it
// begins in the trainee's window.
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>
#include <optional>
#include <vector>

#include "desk/desk.h"
#include "scenario/scenario.h"

namespace cabwright::desk {

/// What of the exercise's own conditions is another; empty: as in the exercise.
struct OtherConditions {
  std::optional<std::string> weather;  ///< a word of scenario files: "frost"
  std::optional<double> temperature_c, stood_hours;
  std::optional<bool> dark;
  [[nodiscard]] bool isEmpty() const { return !weather && !temperature_c && !stood_hours && !dark; }
  bool operator==(const OtherConditions&) const = default;
};

/// An exercise that can be chosen, with its own conditions.
struct SituationChoice {
  std::string name;  ///< of its folder
  QString title, summary;
  bool can_be_assessed = false, has_guide = false;
  std::uint64_t seed = 0;
  std::string weather;
  double temperature_c = 15;
  std::optional<double> stood_hours;
  bool dark = false;
};

/// What is to begin.
struct SituationWish {
  std::string exercise;
  scenario::Mode mode = scenario::Mode::kPractice;
  std::optional<std::uint64_t> seed;  ///< the exercise's own if empty
  QString trainee;                    ///< what they signed on with
  QString trainee_name;               ///< may be empty
  OtherConditions conditions;
};

class SituationPage : public QWidget {
  Q_OBJECT
 public:
  explicit SituationPage(Desk& desk, QWidget* parent = nullptr);

  void setChoices(std::vector<SituationChoice> choices);
  void setTrainee(const QString& name) { trainee_->setText(name); }
  /// What is chosen now.
  [[nodiscard]] SituationWish wish() const;
  [[nodiscard]] QPushButton* begin() const { return begin_; }

 Q_SIGNALS:
  void beginAsked(const cabwright::desk::SituationWish& wish);

 private:
  void showChosen();
  [[nodiscard]] const SituationChoice* chosen() const;
  Desk& desk_;
  std::vector<SituationChoice> choices_;
  QComboBox *exercise_, *mode_, *weather_;
  QLabel* summary_;
  QDoubleSpinBox *temperature_, *hours_, *seed_;
  QCheckBox* dark_;
  QLineEdit* trainee_;
  QPushButton* begin_;
};

}  // namespace cabwright::desk
