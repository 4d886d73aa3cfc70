// SPDX-License-Identifier: GPL-3.0-or-later
// "Write a scenario": sections on the left, plain forms in the middle, the file as it would be
// saved on the right with what is wrong in it. Nothing opens over anything: paths are entered in a
// line, and what would be overwritten is asked about in the page.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <QWidget>
#include <filesystem>
#include <functional>

#include "desk/desk.h"
#include "desk/writing.h"
#include "desk/writing_text.h"

namespace cabwright::desk {

class WritingView : public QWidget {
  Q_OBJECT
 public:
  explicit WritingView(Desk& desk, QWidget* parent = nullptr);

  /// The instructor's own scenarios, and scenarios/ as shipped.
  void setFolders(const std::filesystem::path& own, const std::filesystem::path& shipped);
  [[nodiscard]] Writing& writing() { return writing_; }
  /// As the button would; false: it has faults and was refused, and they are shown.
  bool open(const QString& path);

 Q_SIGNALS:
  /// The scenario is whole and saved there: run it.
  void tryRequested(const QString& path);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  enum class Ask : std::uint8_t { kOpen, kSaveAs };
  QWidget* makeButtons();
  QWidget* makeAskLine();
  QWidget* makeMiddle();
  QPushButton* addButton(QLayout* row, const QString& words, const char* name,
                         const std::function<void()>& act);
  void takeMoment();
  void begin();
  void save();
  void saveTo(const QString& path);
  void tryIt();
  void ask(Ask what);
  void answer();
  void closeAsk();
  void listOwn();
  void refresh();
  void showFaults();
  void say(const QString& words);
  /// True if nothing unsaved would be lost, or the same was asked for twice.
  bool mayLose(const QString& what);
  [[nodiscard]] QString ownPath() const;

  Desk& desk_;
  Writing writing_;
  QListWidget* sections_;
  QStackedWidget* pages_;
  WritingText* text_;
  QLabel *file_, *said_;
  QFrame* ask_line_;
  QLabel* ask_words_;
  QLineEdit* ask_path_;
  QListWidget* own_;  ///< the instructor's scenarios, with what is wrong in the broken ones
  QPushButton* ask_do_;
  QPushButton* moment_;
  Ask asking_ = Ask::kOpen;
  QString overwrite_;  ///< asked about; the next time it is done
  QString losing_;
};

}  // namespace cabwright::desk
