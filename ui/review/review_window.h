// SPDX-License-Identifier: GPL-3.0-or-later
// The assessor's window: the shelf of recorded sessions, and the session that was opened from it,
// from the menu, or by dropping its file here. Nothing modal; a session that is being read can be
// given up.
//
// Keys: Ctrl+O open a file, Ctrl+Shift+B the shelf, Ctrl+W close; those of the session are in
// review_view.h.
#pragma once

#include <QAction>
#include <QLabel>
#include <QMainWindow>
#include <QProgressBar>
#include <QPushButton>
#include <QStackedWidget>
#include <functional>

#include "review_room/marks_page.h"
#include "review_room/review_view.h"
#include "review_room/session_opening.h"
#include "review_room/take_out.h"

namespace cabwright::review_room {

class ReviewWindow : public QMainWindow {
  Q_OBJECT
 public:
  explicit ReviewWindow(QWidget* parent = nullptr);
  ~ReviewWindow() override;

  void setTheme(drawing::Theme theme);
  /// Says why a file must not be looked into now, or nothing: an assessment that goes on.
  using Guard = std::function<QString(const std::filesystem::path& file)>;
  void setGuard(Guard guard) { guard_ = std::move(guard); }
  /// Asked for when a report is written: for how long a pass is good here.
  using Recency = std::function<review::RecencyRules()>;
  void setRecency(Recency recency) { recency_ = std::move(recency); }

  /// Reads it and shows it when it is read; what was open is closed then, and not before.
  void open(const std::filesystem::path& file);
  void cancelOpening();
  /// The page that is shown without a session; the window owns it.
  void setShelf(QWidget* shelf);
  void showShelf();
  void showSession();

  /// Null: none is open.
  [[nodiscard]] ReviewView* view() const { return view_; }
  /// The mark sheet beside it; null without a session.
  [[nodiscard]] MarksPage* marks() const { return marks_; }
  [[nodiscard]] bool isOpening() const { return opening_ != nullptr; }
  [[nodiscard]] QWidget* page() const { return pages_->currentWidget(); }
  /// What was said last of a file: why it was not opened.
  [[nodiscard]] QString said() const { return said_->text(); }
  /// Takes something out of the open session into a file (a folder, for tables), and says in the
  /// line at the foot what came of it. False: it was not written.
  bool takeOutTo(TakeOut what, const QString& path);

 Q_SIGNALS:
  /// A session is open now: what stands beside it can be put there.
  void sessionOpened(cabwright::review_room::ReviewView* view);
  void closed();

 protected:
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void closeEvent(QCloseEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void makeMenus();
  void nameMenus();
  void makeWaiting();
  void askForFile();
  void askWhereTo(TakeOut what);
  void take();
  void addMarks();
  void say(const QString& words);
  void restyle();

  after::SheetLook look_;
  Guard guard_;
  Recency recency_;
  QStackedWidget* pages_;
  QWidget *empty_, *waiting_;
  QLabel *said_, *waiting_words_;
  QPushButton *open_button_, *cancel_button_;
  QProgressBar* progress_;
  QWidget* shelf_ = nullptr;
  ReviewView* view_ = nullptr;
  MarksPage* marks_ = nullptr;  ///< the view owns it
  QMenu *session_menu_ = nullptr, *view_menu_ = nullptr;
  QAction *open_action_ = nullptr, *shelf_action_ = nullptr, *session_action_ = nullptr,
          *close_action_ = nullptr;
  std::array<QAction*, 3> shares_{};
  std::array<QAction*, kTakeOuts.size()> take_outs_{};
  std::unique_ptr<SessionOpening> opening_;
  std::vector<std::unique_ptr<SessionOpening>> given_up_;  ///< until their threads have heard
};

}  // namespace cabwright::review_room
