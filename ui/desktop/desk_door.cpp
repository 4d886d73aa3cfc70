// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/desk_door.h"

#include "desktop/situations.h"

namespace cabwright::desktop {
namespace {

const QString& placeKey() {
  static const QString key = QStringLiteral("desk/geometry");
  return key;
}

}  // namespace

DeskDoor::DeskDoor(QSettings& settings, QObject* parent) : QObject(parent), settings_(settings) {}

DeskDoor::~DeskDoor() { keepPlace(); }

void DeskDoor::open(const std::filesystem::path& scenarios, const QString& trainee) {
  if (!window_) {
    window_ = std::make_unique<desk::DeskWindow>(desk_);
    window_->setTheme(theme_);
    window_->restoreGeometry(settings_.value(placeKey()).toByteArray());
    window_->situation()->setChoices(loadChoices(scenarios));
    window_->situation()->setTrainee(trainee);
    connect(window_->situation(), &desk::SituationPage::beginAsked, this, &DeskDoor::beginAsked);
    connect(window_.get(), &desk::DeskWindow::closed, this, &DeskDoor::keepPlace);
  }
  window_->show();
  window_->raise();
  window_->activateWindow();
}

void DeskDoor::close() {
  if (window_) window_->close();
}

void DeskDoor::setTheme(drawing::Theme theme) {
  theme_ = theme;
  if (window_) window_->setTheme(theme);
}

void DeskDoor::keepPlace() {
  if (window_) settings_.setValue(placeKey(), window_->saveGeometry());
}

}  // namespace cabwright::desktop
