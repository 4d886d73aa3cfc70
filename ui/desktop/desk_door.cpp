// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/desk_door.h"

#include <QStandardPaths>

#include "desk/writing_view.h"
#include "desktop/situations.h"

namespace cabwright::desktop {
namespace {

const QString& placeKey() {
  static const QString key = QStringLiteral("desk/geometry");
  return key;
}

// The instructor's own scenarios, beside the recorded sessions.
std::filesystem::path ownScenarios() {
  const QString data = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation);
  return (data + QStringLiteral("/cabwright/scenarios")).toStdString();
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
    addWriting(scenarios);
    connect(window_.get(), &desk::DeskWindow::closed, this, &DeskDoor::keepPlace);
  }
  window_->show();
  window_->raise();
  window_->activateWindow();
}

void DeskDoor::addWriting(const std::filesystem::path& scenarios) {
  auto* writing = new desk::WritingView(desk_);
  writing->setFolders(ownScenarios(), scenarios);
  connect(writing, &desk::WritingView::tryRequested, this, [this, writing](const QString& path) {
    desk::SituationWish wish;
    // A whole path, which is taken as it is.
    wish.exercise = std::filesystem::path(path.toStdString()).parent_path().string();
    const auto& head = writing->writing().draft().table(scenario::DraftSection::kHead);
    wish.mode = scenario::findMode(head.text("mode")).value_or(scenario::Mode::kPractice);
    Q_EMIT beginAsked(wish);
  });
  window_->addPage(tr("Write"), writing);
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
