// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/going_back.h"

#include <QApplication>
#include <QKeyEvent>

#include "cab/names.h"
#include "cab/you_parts.h"

namespace cabwright::desktop {
namespace {

constexpr std::int64_t kToldTicks = 30 * session::kTicksPerSecond;

bool isInput(QEvent::Type type) {
  switch (type) {
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonRelease:
    case QEvent::MouseButtonDblClick:
    case QEvent::Wheel:
    case QEvent::KeyPress:
    case QEvent::KeyRelease:
    case QEvent::ContextMenu:
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
    case QEvent::Close:
      return true;
    default:
      return false;
  }
}

}  // namespace

GoingBack::GoingBack(desk::Desk& desk, QTimer& clock)
    : desk_(desk), clock_(clock), clock_ran_(clock.isActive()) {
  clock_.stop();
  desk_.setGoingBack(true);
  qApp->installEventFilter(this);
}

GoingBack::~GoingBack() {
  qApp->removeEventFilter(this);
  desk_.setGoingBack(false);
  if (clock_ran_) clock_.start();
}

bool GoingBack::goOn(std::int64_t tick, std::int64_t wanted) {
  if (tick % kToldTicks == 0)
    Q_EMIT desk_.told(tr("Going back: %1 of %2").arg(cab::clockText(tick), cab::clockText(wanted)));
  QCoreApplication::processEvents();
  return !desk_.wasLeftOff();
}

// Windows hand on to their widgets what they get: only at a widget is it known for whom it is.
bool GoingBack::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Shortcut) return true;
  if (!watched->isWidgetType() || !isInput(event->type())) return false;
  if (event->type() == QEvent::KeyPress &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    desk_.leaveOffGoingBack();
    return true;
  }
  if (watched->objectName() == QLatin1String("leave_off")) return false;
  event->ignore();
  return true;
}

}  // namespace cabwright::desktop
