// SPDX-License-Identifier: GPL-3.0-or-later
// Which fault: those of a spot, or, as soon as something is typed, those of the whole unit in which
// the words stand.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QWidget>

#include "desk/spots.h"

namespace cabwright::desk {

class FaultPicker : public QWidget {
  Q_OBJECT
 public:
  explicit FaultPicker(QWidget* parent = nullptr);

  /// The faults of that spot; what was typed is cleared. spotTable().size(): none.
  void showSpot(std::size_t spot);
  [[nodiscard]] QLineEdit* search() const { return search_; }
  [[nodiscard]] QListWidget* list() const { return list_; }
  [[nodiscard]] const fault::FaultSpec* chosen() const;

 Q_SIGNALS:
  void faultChosen(const cabwright::fault::FaultSpec* spec);
  /// Enter on a fault: on to its size.
  void faultTaken();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fill();
  QLineEdit* search_;
  QLabel* head_;
  QListWidget* list_;
  std::size_t spot_;
  std::vector<const fault::FaultSpec*> shown_;
};

}  // namespace cabwright::desk
