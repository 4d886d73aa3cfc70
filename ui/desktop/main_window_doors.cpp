// SPDX-License-Identifier: GPL-3.0-or-later
// The ways from the window to desk and review, and who may take them.
#include "desktop/main_window.h"

namespace cabwright::desktop {

bool MainWindow::isAssessing() const {
  return seat_ && !seat_->isFinished() && seat_->inAssessment();
}

std::filesystem::path MainWindow::runningFile() const {
  return seat_ && !seat_->isFinished() ? seat_->run().recordFile() : std::filesystem::path();
}

void MainWindow::openDesk() {
  door_lock_->pass(tr("The instructor's desk"), isAssessing(),
                   [this] { desk_door_.open(scenarios_, preferences_.trainee); });
}

void MainWindow::openReview() {
  if (review_door_.isShut()) return;
  door_lock_->pass(tr("The review"), isAssessing(), [this] {
    review_door_.setOwnFolder(findSessionsFolder(preferences_));
    review_door_.open();
  });
}

void MainWindow::closeDoors() {
  if (!lock_keeper_.isSet()) return;
  lock_keeper_.lock();
  desk_door_.close();
}

void MainWindow::shutReview(bool shut) {
  review_door_.setRunning(runningFile());
  review_door_.setShut(shut);
  review_action_->setEnabled(!shut);
}

}  // namespace cabwright::desktop
