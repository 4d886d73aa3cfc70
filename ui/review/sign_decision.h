// SPDX-License-Identifier: GPL-3.0-or-later
// What the assessor decides, and the signature under all of it.
#pragma once

#include <filesystem>

#include "review_room/marks_form.h"

namespace cabwright::review_room {

class DecisionForm : public MarkForm {
  Q_OBJECT
 public:
  DecisionForm(const after::SheetLook& look, Opened& opened, QWidget* parent);
  void refresh();
  void takeFocus() { result_->button(0)->setFocus(Qt::ShortcutFocusReason); }

 protected:
  QString tryIt() override;

 private:
  void showNeeds();
  QLabel *totals_, *needs_;
  QButtonGroup* result_;
  QPlainTextEdit *reason_, *next_;
};

class SignForm : public MarkForm {
  Q_OBJECT
 public:
  SignForm(const after::SheetLook& look, Opened& opened, QWidget* parent);
  void setKeyFolder(std::filesystem::path folder) { key_folder_ = std::move(folder); }
  void refresh();

 protected:
  QString tryIt() override;

 private:
  void signAsTrainee();
  std::filesystem::path key_folder_;
  QLabel *state_, *who_;
  QPlainTextEdit* statement_;
  MarkButton* seen_;
};

/// What the signatures say and what may still be added, by whom, in some sentences.
[[nodiscard]] QString signatureState(const std::vector<review::Entry>& entries);

}  // namespace cabwright::review_room
