// SPDX-License-Identifier: GPL-3.0-or-later
// Every fault of the run as it stands: armed, growing, there, put right; since when and how large.
#pragma once

#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QWidget>
#include <string>
#include <vector>

#include "desk/desk.h"

namespace cabwright::desk {

/// "armed at 0:12:05; comes at 0:14:00", "growing since 0:12:05, 40 %", "there since 0:13:00".
[[nodiscard]] QString stateText(const session::LiveRun& run, const session::FaultNow& now);

class PresentFaults : public QWidget {
  Q_OBJECT
 public:
  explicit PresentFaults(Desk& desk, QWidget* parent = nullptr);
  /// Rows that are shown, the newest first.
  [[nodiscard]] std::size_t count() const { return shown_.size(); }
  void takeFocus();

 private:
  struct Row {
    std::string id;
    QString words, state;
    bool cleared = false;
    bool operator==(const Row&) const = default;
  };
  void refresh();
  void fill();
  void addRow(const Row& row);
  Desk& desk_;
  QLabel* head_;
  QScrollArea* scroll_;
  QWidget* body_ = nullptr;
  std::vector<Row> shown_;
  std::vector<QLabel*> states_;
};

}  // namespace cabwright::desk
