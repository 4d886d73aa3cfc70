// SPDX-License-Identifier: GPL-3.0-or-later
// While a run is taken again, which needs a second or two, the windows are drawn, and nothing can
// be done in them but leaving it off.
#pragma once

#include <QObject>
#include <QTimer>

#include "desk/desk.h"

namespace cabwright::desktop {

class GoingBack : public QObject {
  Q_OBJECT
 public:
  /// `clock` stands meanwhile: the run that is left does not go on.
  GoingBack(desk::Desk& desk, QTimer& clock);
  ~GoingBack() override;
  GoingBack(const GoingBack&) = delete;
  GoingBack& operator=(const GoingBack&) = delete;

  /// Says how far it is and lets what happened be seen; false: it was left off.
  bool goOn(std::int64_t tick, std::int64_t wanted);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  desk::Desk& desk_;
  QTimer& clock_;
  bool clock_ran_;
};

}  // namespace cabwright::desktop
