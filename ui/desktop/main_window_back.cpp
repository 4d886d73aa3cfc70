// SPDX-License-Identifier: GPL-3.0-or-later
// A run taken again from a moment of it: after its end, and from the instructor's desk.
#include "cab/names.h"
#include "cab/you_parts.h"
#include "desktop/going_back.h"
#include "desktop/main_window.h"

namespace cabwright::desktop {

void MainWindow::takeAgainFrom(qint64 tick) {
  if (!seat_) return;
  const scenario::Mode mode = seat_->mode();
  std::unique_ptr<session::LiveRun> run =
      seat_->run().takenAgainFrom(tick, makeOptions(mode, wish_));
  if (!run) {
    say(tr("That moment cannot be taken again."));
    return;
  }
  leaveRun();
  useRun(std::move(run));
}

// Asked for twice, the second time is still in the queue while the first is on its way.
void MainWindow::goBackTo(const session::TimeMark& mark) {
  desk::Desk& desk = desk_door_.desk();
  if (!seat_ || desk.isGoingBack()) return;
  session::GoneBack back;
  {
    GoingBack going(desk, timer_);
    back = seat_->run().goBackTo(mark, makeOptions(seat_->mode(), wish_),
                                 [&](std::int64_t tick) { return going.goOn(tick, mark.tick); });
  }
  if (back.fault && !desk.wasLeftOff()) {
    desk.refuse(QString::fromStdString(*back.fault));
    return;
  }
  goOnWith(std::move(back.run), tr("Back at the mark: %1").arg(QString::fromStdString(mark.name)));
}

void MainWindow::goBackToMoment(qint64 tick) {
  desk::Desk& desk = desk_door_.desk();
  if (!seat_ || desk.isGoingBack()) return;
  std::unique_ptr<session::LiveRun> run;
  {
    GoingBack going(desk, timer_);
    run = seat_->run().takenAgainFrom(
        tick, makeOptions(seat_->mode(), wish_),
        [&](std::int64_t reached) { return going.goOn(reached, tick); });
  }
  goOnWith(std::move(run), tr("Back at %1").arg(cab::clockText(tick)));
}

void MainWindow::goOnWith(std::unique_ptr<session::LiveRun> run, const QString& words) {
  if (!run) {
    Q_EMIT desk_door_.desk().told(tr("Left off: the run is where it was."));
    return;
  }
  leaveRun();
  useRun(std::move(run));
  Q_EMIT desk_door_.desk().told(words);
}

}  // namespace cabwright::desktop
