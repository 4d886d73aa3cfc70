// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in front of desk and review on a shared machine: where a passphrase is set, it is
// asked for in a panel of the window, and what goes on in the window goes on.
//
// While an assessment runs it is asked for each time, whether or not it was opened before: whoever
// presses the key may be the one who is being assessed. An assessment that is begun from the cab
// locks both again and closes the desk; one that the instructor begins at the desk leaves it open.
#pragma once

#include <QObject>
#include <functional>

#include "drawing/ink.h"
#include "review_room/lock_panel.h"

namespace cabwright::desktop {

class DoorLock : public QObject {
  Q_OBJECT
 public:
  /// Keeper and window must outlive it; the panel stands in the window.
  DoorLock(review_room::LockKeeper& keeper, QWidget* window);

  /// Does it now where nobody needs to be asked, else when the passphrase was given. What was
  /// asked for before is forgotten. `what`: the name of the door, for the panel.
  void pass(const QString& what, bool assessment_runs, std::function<void()> then);
  [[nodiscard]] review_room::LockPanel* panel() const { return panel_; }
  void setTheme(drawing::Theme theme) { panel_->setTheme(theme); }

 Q_SIGNALS:
  /// Nobody is asked any more: the keys are the window's again.
  void answered();

 private:
  review_room::LockKeeper& keeper_;
  review_room::LockPanel* panel_;
  std::function<void()> then_;
};

}  // namespace cabwright::desktop
