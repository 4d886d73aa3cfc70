// SPDX-License-Identifier: GPL-3.0-or-later
// Before the marks of an assessment are shown for the first time: the trainee says how the run
// went and where it was not sure. Nothing of the marks is to be seen until then.
//
// When it is asked for: only for a session that was run in assessment, is sealed and whole, and to
// which nobody has added a self-rating, a decision, a signature, or that the score was shown. It
// can be left out by an assessor; that the trainee knows the score from then on is recorded either
// way. A session that cannot be written to, or was altered, is shown at once: nothing could be
// recorded there.
#pragma once

#include <filesystem>

#include "review_room/marks_form.h"
#include "review_room/rating_row.h"

namespace cabwright::review_room {

[[nodiscard]] bool isSelfRatingDue(const Opened& opened);

class SelfRatingForm : public MarkForm {
  Q_OBJECT
 public:
  SelfRatingForm(const after::SheetLook& look, Opened& opened, QWidget* parent);
  /// Where the station's key lies: a trainee has none, and while nobody has signed on the station
  /// stands for what was said at it.
  void setKeyFolder(std::filesystem::path folder) { key_folder_ = std::move(folder); }
  void begin();

 Q_SIGNALS:
  /// An assessor wants it left out.
  void leftOut();
  void secondAsked();

 protected:
  QString tryIt() override;

 private:
  std::filesystem::path key_folder_;
  RatingRow* rating_;
  QPlainTextEdit* unsure_;
  QLabel* name_asks_;
  QLineEdit* name_;
};

}  // namespace cabwright::review_room
