// SPDX-License-Identifier: GPL-3.0-or-later
// The shelf: all recorded sessions of some folders, to be found, opened, marked again and compared.
// Looks into the folders by itself when it is shown, and again on F5.
#pragma once

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSettings>
#include <QStackedWidget>
#include <QTabBar>
#include <QWidget>
#include <filesystem>

#include "after/sheet_look.h"
#include "review_room/progress_page.h"
#include "review_room/progress_weak.h"
#include "review_room/recency_page.h"
#include "review_room/shelf_filter_bar.h"
#include "review_room/shelf_folders.h"
#include "review_room/shelf_loader.h"
#include "review_room/shelf_model.h"
#include "review_room/shelf_sessions.h"

namespace cabwright::review_room {

class ShelfPage : public QWidget {
  Q_OBJECT
 public:
  explicit ShelfPage(QWidget* parent);
  ~ShelfPage() override;

  void setTheme(drawing::Theme theme);
  /// Where folders and choices are remembered; must outlive it. Without it they are not.
  void setSettings(QSettings& settings);
  /// Where this program records to; at first where it does so by itself.
  void setOwnFolder(const QString& folder);
  /// The session that is recorded just now: it is shown and not opened. Empty: none.
  void setRunning(const QString& file);

  void reload();
  [[nodiscard]] ShelfModel& model() { return model_; }
  [[nodiscard]] ShelfLoader& loader() { return loader_; }
  [[nodiscard]] ShelfSessions* sessions() const { return sessions_; }
  [[nodiscard]] ProgressPage* progressPage() const { return progress_page_; }
  [[nodiscard]] WeakPage* weakPage() const { return weak_page_; }
  [[nodiscard]] RecencyPage* recencyPage() const { return recency_page_; }
  [[nodiscard]] ShelfFilterBar* filterBar() const { return filter_; }
  [[nodiscard]] ShelfFolders* folders() const { return folders_; }
  [[nodiscard]] QTabBar* tabs() const { return tabs_; }
  [[nodiscard]] QPushButton* cancelButton() const { return cancel_; }

 Q_SIGNALS:
  /// Somebody wants to look into this session.
  void openAsked(QString file);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void makeHead();
  void makeProgress();
  void addPage(const QString& name, QWidget* page);
  void restyle();
  void openFile(const QString& file);
  void take(const review::Shelf& shelf);
  void refreshCount();
  void saveFolders();
  [[nodiscard]] std::vector<std::filesystem::path> allFolders() const;

  after::SheetLook look_;
  ShelfModel model_;
  ShelfLoader loader_;
  QSettings* settings_ = nullptr;
  QLabel *title_, *count_;
  QPushButton *folders_button_, *reload_button_, *cancel_;
  QProgressBar* progress_;
  QTabBar* tabs_;
  ShelfFilterBar* filter_;
  ShelfFolders* folders_;
  QStackedWidget* pages_;
  ShelfSessions* sessions_;
  ProgressPage* progress_page_;
  WeakPage* weak_page_;
  RecencyPage* recency_page_;
  QString kept_file_;  ///< chosen before the shelf was looked into again
  bool looked_ = false, gave_up_ = false;
};

}  // namespace cabwright::review_room
