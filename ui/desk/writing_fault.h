// SPDX-License-Identifier: GPL-3.0-or-later
// The faults of a scenario: the catalogue with a field to search it, and size and moment of each
// that was taken.
#pragma once

#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QWidget>
#include <vector>

#include "desk/writing_list.h"
#include "fault/fault.h"

namespace cabwright::desk {

class WritingFaults : public QWidget {
  Q_OBJECT
 public:
  explicit WritingFaults(Writing& writing, QWidget* parent = nullptr);
  [[nodiscard]] QLineEdit* search() const { return search_; }
  [[nodiscard]] QListWidget* found() const { return found_; }

 private:
  void find(const QString& words);
  void takeFound();
  void showSize();

  Writing& writing_;
  QLineEdit* search_;
  QListWidget* found_;
  WritingList* list_;
  WritingForm* form_;
  QDoubleSpinBox* size_;
  QLabel* about_;
  std::vector<const fault::FaultSpec*> shown_;
};

}  // namespace cabwright::desk
