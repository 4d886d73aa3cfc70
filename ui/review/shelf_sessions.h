// SPDX-License-Identifier: GPL-3.0-or-later
// The page of the shelf with all sessions that are asked for, and what can be done with them.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "review_room/shelf_loader.h"
#include "review_room/shelf_marking.h"
#include "review_room/shelf_table.h"

namespace cabwright::review_room {

class ShelfSessions : public QWidget {
  Q_OBJECT
 public:
  /// All must outlive it.
  ShelfSessions(const after::SheetLook& look, ShelfModel& model, ShelfLoader& loader,
                QWidget* parent);
  void restyle();
  [[nodiscard]] ShelfTable* table() const { return table_; }
  [[nodiscard]] ShelfMarking* marking() const { return marking_; }
  /// The row of this file becomes the chosen one; false: it is not shown.
  bool choose(const QString& file);

 Q_SIGNALS:
  void openAsked(const QString& file);
  void progressAsked(const QString& trainee, const QString& exercise);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void openRow(int row);
  void copyPaths();
  void markChosen();
  void showProgressOf();
  void refresh();
  void say(const QString& words, bool bad);
  [[nodiscard]] QString aboutChosen(const std::vector<int>& rows, bool& bad) const;

  const after::SheetLook& look_;
  ShelfModel& model_;
  ShelfLoader& loader_;
  ShelfTable* table_;
  ShelfMarking* marking_;
  QPushButton *open_, *copy_, *mark_, *progress_;
  QLabel* said_;
  bool marks_ = false;
};

}  // namespace cabwright::review_room
