// SPDX-License-Identifier: GPL-3.0-or-later
// Pages that are looked at while something else goes on, and ending what goes on.
#include <utility>

#include "desktop/caution_view.h"
#include "desktop/main_window.h"
#include "desktop/settings_view.h"

namespace cabwright::desktop {
namespace {

constexpr qint64 kAskedTicks = 1000;  // ten seconds

}  // namespace

void MainWindow::showSettings() {
  settings_view_->show(preferences_);
  goOnAside(settings_view_);
}

void MainWindow::showCautions() { goOnAside(caution_); }

void MainWindow::goOnAside(QWidget* page) {
  if (seat_ && !seat_->isFinished() && !seat_->isFrozen()) {
    seat_->setFrozen(true);
    stopped_aside_ = seat_->isFrozen();  // an assessment goes on
  }
  pages_->setCurrentWidget(page);
  page->setFocus();
}

void MainWindow::leaveAside() {
  const bool stopped = std::exchange(stopped_aside_, false);
  if (after_view_ != nullptr) {
    pages_->setCurrentWidget(after_view_);
    after_view_->setFocus();
  } else if (seat_ && !seat_->isFinished()) {
    if (stopped) seat_->setFrozen(false);
    showSeat();
  } else if (!preferences_.caution_read) {
    pages_->setCurrentWidget(caution_);
  } else {
    showChoose();
  }
}

bool MainWindow::mayEnd() {
  if (!isAssessing()) return true;
  const qint64 now = seat_->run().tick();
  if (end_asked_ && now - *end_asked_ <= kAskedTicks) return true;
  end_asked_ = now;
  say(tr("This ends the assessment, and it is sealed as it stands. The same once more ends it."));
  return false;
}

}  // namespace cabwright::desktop
