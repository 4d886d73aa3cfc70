// SPDX-License-Identifier: GPL-3.0-or-later
// Where a trainee chooses an exercise and how to take it.
#pragma once

#include <QButtonGroup>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "desktop/choice_card.h"
#include "desktop/exercises.h"

namespace cabwright::desktop {

class ChooseView : public QWidget {
  Q_OBJECT
 public:
  explicit ChooseView(QWidget* parent = nullptr);

  void setExercises(std::vector<Exercise> exercises);
  [[nodiscard]] const std::vector<Exercise>& exercises() const { return exercises_; }
  void setTheme(drawing::Theme theme);
  /// Another number than the one there takes the name away: it was another one's.
  void setTrainee(const QString& number);
  /// Chooses by name of the folder; false: there is none.
  bool choose(const std::string& name, scenario::Mode mode);

 Q_SIGNALS:
  void startAsked(const std::string& exercise, cabwright::scenario::Mode mode,
                  const QString& number, const QString& name);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void makeWays();
  void makeSignOn(QVBoxLayout* column);
  void showChosen();
  void orderFocus();
  void start();
  [[nodiscard]] const Exercise* chosen() const;
  [[nodiscard]] static CardWords wordsOf(const Exercise& exercise);

  std::vector<Exercise> exercises_;
  drawing::Theme theme_ = drawing::Theme::kDay;
  QScrollArea *scroll_, *side_;
  QWidget* list_;
  QButtonGroup* cards_;
  QButtonGroup* ways_;
  QLabel *title_, *what_, *teaches_, *caution_;
  QLineEdit *trainee_, *name_;
  QPushButton* start_;
};

}  // namespace cabwright::desktop
