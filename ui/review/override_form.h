// SPDX-License-Identifier: GPL-3.0-or-later
// Counting a line as something else, or not at all, with the reason.
#pragma once

#include "review_room/marks_form.h"

namespace cabwright::review_room {

class OverrideForm : public MarkForm {
  Q_OBJECT
 public:
  OverrideForm(const after::SheetLook& look, Opened& opened, QWidget* parent);
  /// Begins anew with this line of the sheet.
  void begin(const marking::SheetLine& line);
  [[nodiscard]] const std::string& rule() const { return rule_; }

 protected:
  QString tryIt() override;

 private:
  std::string rule_;
  QLabel *title_, *recorded_;
  QButtonGroup* outcome_;
  QPlainTextEdit* reason_;
};

}  // namespace cabwright::review_room
