// SPDX-License-Identifier: GPL-3.0-or-later
// The file as it would be saved, what is other than on the disk marked, and what is wrong in it.
#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QWidget>
#include <string>
#include <vector>

#include "scenario/file_fault.h"

namespace cabwright::desk {

/// The numbers (from 0) of the lines of `now` that `was` does not have in their order.
[[nodiscard]] std::vector<int> findNewLines(const std::string& was, const std::string& now);

class WritingText : public QWidget {
  Q_OBJECT
 public:
  explicit WritingText(QWidget* parent = nullptr);
  void showText(const std::string& now, const std::string& saved);
  /// `head` says what they are: of this text, or of a file that was refused.
  void showFaults(const scenario::FileFaults& faults, const QString& head);
  [[nodiscard]] QPlainTextEdit* text() const { return text_; }
  [[nodiscard]] QListWidget* faults() const { return faults_; }
  [[nodiscard]] QString head() const { return head_->text(); }

 private:
  void jump(int row);
  QPlainTextEdit* text_;
  QLabel* head_;
  QListWidget* faults_;
  scenario::FileFaults shown_;
};

}  // namespace cabwright::desk
