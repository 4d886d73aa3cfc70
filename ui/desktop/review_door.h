// SPDX-License-Identifier: GPL-3.0-or-later
// The way to the assessor's window: opens it beside, and remembers where it stood. Shut while an
// assessment goes on in this program: nobody looks things up in it.
#pragma once

#include <QObject>
#include <QSettings>
#include <filesystem>
#include <memory>

#include "review_room/review_window.h"
#include "review_room/shelf_page.h"

namespace cabwright::desktop {

class ReviewDoor : public QObject {
  Q_OBJECT
 public:
  explicit ReviewDoor(QSettings& settings, QObject* parent = nullptr);
  ~ReviewDoor() override;

  /// Shows the window; with a file, that session is read. False: it is shut.
  bool open(const std::filesystem::path& file = {});
  void close();
  /// An assessment goes on: what is open is closed, and stays so until it is over.
  void setShut(bool shut);
  /// Where this program records to: it stands on the shelf.
  void setOwnFolder(const std::filesystem::path& folder);
  /// What is recorded just now is never looked into; empty: nothing is.
  void setRunning(const std::filesystem::path& file);
  [[nodiscard]] bool isShut() const { return shut_; }
  void setTheme(drawing::Theme theme);
  /// Null until it was opened once.
  [[nodiscard]] review_room::ReviewWindow* window() const { return window_.get(); }

  /// Likewise.
  [[nodiscard]] review_room::ShelfPage* shelf() const { return shelf_; }

 private:
  void keepPlace();
  void makeWindow();
  [[nodiscard]] QString findRefusal(const std::filesystem::path& file) const;
  QSettings& settings_;
  drawing::Theme theme_ = drawing::Theme::kDay;
  bool shut_ = false;
  std::filesystem::path own_folder_, running_;
  std::unique_ptr<review_room::ReviewWindow> window_;
  review_room::ShelfPage* shelf_ = nullptr;  ///< the window owns it
};

}  // namespace cabwright::desktop
