// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/review_door.h"

#include "review_room/recency_form.h"

namespace cabwright::desktop {
namespace {

const QString& placeKey() {
  static const QString key = QStringLiteral("review/geometry");
  return key;
}

}  // namespace

ReviewDoor::ReviewDoor(QSettings& settings, QObject* parent)
    : QObject(parent), settings_(settings) {}

ReviewDoor::~ReviewDoor() { keepPlace(); }

bool ReviewDoor::open(const std::filesystem::path& file) {
  if (shut_) return false;
  if (!window_) makeWindow();
  window_->show();
  window_->raise();
  window_->activateWindow();
  if (!file.empty()) window_->open(file);
  return true;
}

void ReviewDoor::makeWindow() {
  window_ = std::make_unique<review_room::ReviewWindow>();
  shelf_ = new review_room::ShelfPage(window_.get());
  shelf_->setSettings(settings_);
  shelf_->setOwnFolder(QString::fromStdString(own_folder_.string()));
  shelf_->setRunning(QString::fromStdString(running_.string()));
  shelf_->setTheme(theme_);
  connect(shelf_, &review_room::ShelfPage::openAsked, this,
          [this](const QString& file) { window_->open(file.toStdString()); });
  window_->setShelf(shelf_);
  window_->setTheme(theme_);
  window_->restoreGeometry(settings_.value(placeKey()).toByteArray());
  window_->setGuard([this](const std::filesystem::path& file) { return findRefusal(file); });
  window_->setRecency([this] { return review_room::loadRecency(settings_); });
  connect(window_.get(), &review_room::ReviewWindow::closed, this, &ReviewDoor::keepPlace);
}

QString ReviewDoor::findRefusal(const std::filesystem::path& file) const {
  if (shut_) return tr("While an assessment goes on no session is looked into.");
  std::error_code unknown;
  if (!running_.empty() && std::filesystem::equivalent(file, running_, unknown))
    return tr("This session is being recorded. It can be looked at when it has ended.");
  return {};
}

void ReviewDoor::setOwnFolder(const std::filesystem::path& folder) {
  own_folder_ = folder;
  if (shelf_ != nullptr) shelf_->setOwnFolder(QString::fromStdString(folder.string()));
}

void ReviewDoor::setRunning(const std::filesystem::path& file) {
  running_ = file;
  if (shelf_ != nullptr) shelf_->setRunning(QString::fromStdString(file.string()));
}

void ReviewDoor::close() {
  if (window_) window_->close();
}

void ReviewDoor::setShut(bool shut) {
  shut_ = shut;
  if (shut) close();
}

void ReviewDoor::setTheme(drawing::Theme theme) {
  theme_ = theme;
  if (window_) window_->setTheme(theme);
  if (shelf_ != nullptr) shelf_->setTheme(theme);
}

void ReviewDoor::keepPlace() {
  if (window_) settings_.setValue(placeKey(), window_->saveGeometry());
}

}  // namespace cabwright::desktop
