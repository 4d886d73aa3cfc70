// SPDX-License-Identifier: GPL-3.0-or-later
// Acting for others: the guard, the signaller, people and flags at the unit, and a third person
// who moves any control. What is done is recorded in the name of whoever is meant to have done it.
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "desk/desk.h"

namespace cabwright::desk {

class PeoplePage : public QWidget {
  Q_OBJECT
 public:
  explicit PeoplePage(Desk& desk, QWidget* parent = nullptr);

  [[nodiscard]] QComboBox* where() const { return where_; }
  [[nodiscard]] QComboBox* what() const { return what_; }
  [[nodiscard]] QLineEdit* search() const { return search_; }
  [[nodiscard]] QListWidget* controls() const { return controls_; }
  [[nodiscard]] QComboBox* speaker() const { return speaker_; }
  [[nodiscard]] QComboBox* words() const { return words_; }
  [[nodiscard]] QComboBox* positions() const { return positions_; }

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* makeGuard();
  QWidget* makeSignaller();
  QWidget* makeBystanders();
  QWidget* makeThird();
  /// What anybody but the trainee can say of their own accord.
  void addSpeech(QVBoxLayout* column);
  /// Words, then a button for each way it can stand.
  void addDeeds(QVBoxLayout* column, const QString& words, const std::string& control,
                const std::vector<std::pair<QString, std::string>>& ways);
  void makeSignals();
  void fillControls();
  void fillPositions();
  void showItem();
  void refresh();
  void refreshValues();
  [[nodiscard]] std::optional<unit::Item> chosenItem() const;
  [[nodiscard]] std::optional<unit::Control> chosenControl() const;

  Desk& desk_;
  QVBoxLayout* signal_column_ = nullptr;
  QWidget* signals_ = nullptr;
  std::vector<QLabel*> aspects_;
  QComboBox *where_ = nullptr, *what_ = nullptr, *positions_ = nullptr, *speaker_ = nullptr,
            *words_ = nullptr;
  QLabel *now_there_ = nullptr, *stands_ = nullptr;
  QLineEdit* search_ = nullptr;
  QListWidget* controls_ = nullptr;
  QPushButton *put_there_ = nullptr, *take_away_ = nullptr, *set_ = nullptr;
};

}  // namespace cabwright::desk
