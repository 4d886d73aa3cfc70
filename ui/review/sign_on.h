// SPDX-License-Identifier: GPL-3.0-or-later
// Who sits at the review: an assessor, or a second one who marks without having seen the first
// marks. Signs on with a key of their own, made the first time.
#pragma once

#include <filesystem>
#include <set>
#include <string>

#include "review_room/marks_form.h"

namespace cabwright::review_room {

class SignOnForm : public MarkForm {
  Q_OBJECT
 public:
  SignOnForm(const after::SheetLook& look, Opened& opened, QWidget* parent);
  /// Where keys lie; the user's data folder unless another is given.
  void setKeyFolder(std::filesystem::path folder) { key_folder_ = std::move(folder); }
  [[nodiscard]] const std::filesystem::path& keyFolder() const { return key_folder_; }
  /// `why` says what it is needed for; may be empty. `second`: which of the two is offered.
  void begin(const QString& why, bool second);
  /// Whether who signed on last did so to mark blind.
  [[nodiscard]] bool isSecond() const { return second_; }
  /// That person has the marks in view, and cannot mark them blind from now on.
  void noteSeen(const std::string& name) { seen_.insert(name); }

 protected:
  QString tryIt() override;

 private:
  std::filesystem::path key_folder_;
  QLabel* why_;
  QLineEdit* name_;
  QButtonGroup* as_;
  std::set<std::string> seen_;
  bool second_ = false;
};

/// Somebody of that name has marked, rated, decided or signed here as an assessor and seen the
/// marks.
[[nodiscard]] bool hasSeenMarks(const std::vector<review::Entry>& entries, const std::string& name);
/// Has handed in blind marks.
[[nodiscard]] bool hasMarkedBlind(const std::vector<review::Entry>& entries,
                                  const std::string& name);

}  // namespace cabwright::review_room
