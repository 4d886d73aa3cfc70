// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/review_door.h"

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
  if (!window_) {
    window_ = std::make_unique<review_room::ReviewWindow>();
    window_->setTheme(theme_);
    window_->restoreGeometry(settings_.value(placeKey()).toByteArray());
    window_->setGuard([this](const std::filesystem::path&) {
      return shut_ ? tr("While an assessment goes on no session is looked into.") : QString();
    });
    connect(window_.get(), &review_room::ReviewWindow::closed, this, &ReviewDoor::keepPlace);
  }
  window_->show();
  window_->raise();
  window_->activateWindow();
  if (!file.empty()) window_->open(file);
  return true;
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
}

void ReviewDoor::keepPlace() {
  if (window_) settings_.setValue(placeKey(), window_->saveGeometry());
}

}  // namespace cabwright::desktop
