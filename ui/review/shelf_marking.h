// SPDX-License-Identifier: GPL-3.0-or-later
// What came of marking sessions again: how many are as they were recorded, and what differs.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QListWidget>

#include "review/mark_difference.h"

namespace cabwright::review_room {

class ShelfMarking : public QFrame {
  Q_OBJECT
 public:
  explicit ShelfMarking(QWidget* parent);

  void begin(int all);
  void add(const review::MarkDifference& found);
  /// No more will come; `given_up`: before all were marked.
  void end(bool given_up);

 Q_SIGNALS:
  void closed();
  void openAsked(const QString& file);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void refresh();
  void list(const std::filesystem::path& file, const QString& words);
  QLabel* heading_;
  QListWidget* list_;
  int all_ = 0, done_ = 0, same_ = 0, differ_ = 0, cut_off_ = 0, broken_ = 0;
  bool over_ = false, given_up_ = false;
};

/// What differs in one session, in words; empty where nothing does.
[[nodiscard]] QString differenceText(const review::MarkDifference& found);

}  // namespace cabwright::review_room
