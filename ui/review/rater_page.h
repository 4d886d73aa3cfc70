// SPDX-License-Identifier: GPL-3.0-or-later
// The page on which two assessors are compared.
#pragma once

#include <QButtonGroup>
#include <QTextBrowser>
#include <QWidget>

#include "review_room/marks_button.h"
#include "review_room/marks_style.h"
#include "review_room/rater_model.h"

namespace cabwright::review_room {

class RaterPage : public QWidget {
  Q_OBJECT
 public:
  RaterPage(const after::SheetLook& look, Opened& opened, QWidget* parent);
  void refresh();
  [[nodiscard]] const RaterView& view() const { return view_; }

 Q_SIGNALS:
  void jumpAsked(qint64 tick);
  /// Somebody wants to mark the session a second time.
  void secondAsked();

 private:
  void choose(int which);
  const after::SheetLook& look_;
  Opened& opened_;
  RaterView view_;
  std::vector<Rater> raters_;
  int chosen_ = 0;
  QLabel* none_;
  QWidget* names_;
  QButtonGroup* name_;
  QTextBrowser* text_;
  MarkButton* ask_;
};

}  // namespace cabwright::review_room
