// SPDX-License-Identifier: GPL-3.0-or-later
// A comment: on a line, on the moment of the cursor, or on the whole run.
#pragma once

#include "review_room/marks_form.h"

namespace cabwright::review_room {

class RemarkForm : public MarkForm {
  Q_OBJECT
 public:
  RemarkForm(const after::SheetLook& look, Opened& opened, QWidget* parent);
  /// Begins anew. `line`: the one that is before the reader; nullptr: none.
  void begin(const marking::SheetLine* line);

 protected:
  QString tryIt() override;

 private:
  void showOn();
  enum On { kLine, kMoment, kWhole };
  std::string rule_;
  QString title_of_line_;
  QButtonGroup* on_;
  QLabel* what_;
  QPlainTextEdit* text_;
};

}  // namespace cabwright::review_room
