// SPDX-License-Identifier: GPL-3.0-or-later
// A second assessor marks the lines and rates without having seen the first marks or those of the
// program. The lines stand in the order of the scenario, since the order of a sheet tells how they
// came out. What is marked stays here until it is handed in, all at once.
#pragma once

#include <QStackedWidget>

#include "review_room/marks_form.h"
#include "review_room/marks_list.h"
#include "review_room/rating_board.h"

namespace cabwright::review_room {

class BlindForm : public MarkForm {
  Q_OBJECT
 public:
  BlindForm(const after::SheetLook& look, Opened& opened, QWidget* parent);
  /// Begins with nothing marked.
  void begin();
  void restyle() override;
  [[nodiscard]] MarksList& list() { return *list_; }
  [[nodiscard]] const std::vector<BlindDraft>& marked() const { return marked_; }
  /// Marks the selected line and goes on to the next one that is not marked.
  void mark(marking::Outcome outcome);

 protected:
  QString tryIt() override;

 private:
  void makeLines(QWidget* page);
  void showLine();
  void showMarked();
  std::vector<BlindDraft> marked_;
  QLabel *progress_, *asks_;
  QButtonGroup *part_, *outcome_;
  QStackedWidget* stack_;
  MarksList* list_;
  RatingBoard* board_;
};

}  // namespace cabwright::review_room
