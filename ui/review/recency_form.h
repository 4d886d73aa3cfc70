// SPDX-License-Identifier: GPL-3.0-or-later
// For how many months a pass is good: in general, and for an exercise of its own.
#pragma once

#include <QSettings>
#include <QSpinBox>
#include <QWidget>

#include "review/recency.h"
#include "review_room/shelf_look.h"

namespace cabwright::review_room {

[[nodiscard]] review::RecencyRules loadRecency(QSettings& settings);
void saveRecency(QSettings& settings, const review::RecencyRules& rules);

/// Months as words: "off", "12 months"; -1, where it may be, "as in general".
class MonthsBox : public QSpinBox {
  Q_OBJECT
 public:
  MonthsBox(bool can_follow, QWidget* parent);

 protected:
  [[nodiscard]] QString textFromValue(int value) const override;
  [[nodiscard]] int valueFromText(const QString& text) const override;
  QValidator::State validate(QString& text, int& at) const override;
};

class RecencyForm : public QWidget {
  Q_OBJECT
 public:
  explicit RecencyForm(QWidget* parent);
  void setRules(const review::RecencyRules& rules);
  [[nodiscard]] const review::RecencyRules& rules() const { return rules_; }
  /// Titles as files have them.
  void setExercises(const std::vector<std::string>& titles);

 Q_SIGNALS:
  void changed();

 private:
  void showExercise();
  void take();
  review::RecencyRules rules_;
  MonthsBox *general_, *own_;
  drawing::ChoiceBox* exercise_;
};

}  // namespace cabwright::review_room
