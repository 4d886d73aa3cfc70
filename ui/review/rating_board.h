// SPDX-License-Identifier: GPL-3.0-or-later
// All scales with a comment each, and the form that records what was rated.
#pragma once

#include "review_room/marks_form.h"
#include "review_room/rating_row.h"

namespace cabwright::review_room {

class RatingBoard : public QWidget {
  Q_OBJECT
 public:
  RatingBoard(const after::SheetLook& look, const QString& object_name, QWidget* parent);
  /// What is rated so far, in the order of the scales.
  [[nodiscard]] std::vector<review::Content> ratings() const;
  void clear();

 private:
  struct Part {
    RatingRow* row;
    QLineEdit* comment;
  };
  std::vector<Part> parts_;
};

class RatingForm : public MarkForm {
  Q_OBJECT
 public:
  RatingForm(const after::SheetLook& look, Opened& opened, QWidget* parent);
  /// Shows what has been given already.
  void refresh();

 protected:
  QString tryIt() override;

 private:
  QLabel* given_;
  RatingBoard* board_;
};

}  // namespace cabwright::review_room
