// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/door_lock.h"

#include <utility>

namespace cabwright::desktop {

DoorLock::DoorLock(review_room::LockKeeper& keeper, QWidget* window)
    : QObject(window), keeper_(keeper), panel_(new review_room::LockPanel(keeper, window)) {
  connect(panel_, &review_room::LockPanel::opened, this, [this] {
    const std::function<void()> then = std::exchange(then_, {});
    Q_EMIT answered();
    if (then) then();
  });
  connect(panel_, &review_room::LockPanel::closed, this, [this] {
    then_ = {};
    Q_EMIT answered();
  });
}

void DoorLock::pass(const QString& what, bool assessment_runs, std::function<void()> then) {
  const bool asks = keeper_.isSet() && (assessment_runs || !keeper_.isOpen());
  if (!asks) {
    then_ = {};
    panel_->hide();
    then();
    return;
  }
  then_ = std::move(then);
  panel_->ask(what);
}

}  // namespace cabwright::desktop
