// SPDX-License-Identifier: GPL-3.0-or-later
// What the keys of the sheet do, and the panels they open.
#include <QApplication>
#include <algorithm>
#include <utility>

#include "cab/seat_view.h"

namespace cabwright::cab {

void SeatView::openPanel(Panel* panel) {
  closePanel();
  focused_before_ = isAncestorOf(QApplication::focusWidget()) ? QApplication::focusWidget() : this;
  panel_ = panel;
  const double scale = style_.frame.scale;
  const QRectF& world = style_.frame.world;
  panel_->setMaximumWidth(static_cast<int>(560 * scale));
  panel_->setMinimumWidth(static_cast<int>(420 * scale));
  panel_->setMaximumHeight(static_cast<int>(620 * scale));
  panel_->adjustSize();
  const int bottom = static_cast<int>((kPlateEnd + style_.frame.spare + 16) * scale);
  panel_->move(static_cast<int>(world.left() * scale), std::max(8, bottom - panel_->height()));
  connect(panel_, &Panel::closed, this, &SeatView::closePanel);
  panel_->show();
  panel_->raise();
  panel_->takeFocus();
}

void SeatView::closePanel() {
  if (panel_ == nullptr) return;
  Panel* panel = std::exchange(panel_, nullptr);
  const bool had_keys = panel->isAncestorOf(QApplication::focusWidget()) || panel->hasFocus();
  why_->clear();
  panel->hide();
  panel->deleteLater();
  if (!had_keys) return;
  QWidget* back = focused_before_ && focused_before_->isVisibleTo(this) ? focused_before_ : this;
  back->setFocus();
}

void SeatView::askWhy(Part* part) {
  const auto asked = WhyGuide::askedOf(part);
  if (seat_.inAssessment() || !asked) return;
  auto* why = new WhyPanel(seat_, style_, *asked, this);
  openPanel(why);
  why_->place(why, part);
}

void SeatView::useCommand(const QString& command, bool down) {
  const bool is_way = command.startsWith(QLatin1String("go.")) || command == QLatin1String("turn");
  if (seat_.isToLookAt() && !is_way) return;
  if (plate_) {
    if (ControlPart* part = plate_->findControl(command)) {
      part->useKey(down);
      return;
    }
  }
  if (!down) return;
  if (command.startsWith(QLatin1String("go."))) {
    const auto place = unit::findPlace(command.mid(3).toStdString());
    if (place) seat_.walk(*place);
  } else if (command == QLatin1String("turn")) {
    turnRound();
  } else if (command.startsWith(QLatin1String("hand."))) {
    hands_[command == QLatin1String("hand.left") ? 0 : 1]->activate();
  } else if (command == QLatin1String("say")) {
    openPanel(new SayPanel(seat_, style_, this));
  } else if (command == QLatin1String("note")) {
    openPanel(new ReadingPanel(seat_, style_, this));
  } else if (command == QLatin1String("book")) {
    openPanel(new BookPanel(seat_, style_, this));
  } else if (command == QLatin1String("decide")) {
    openPanel(new DecisionPanel(seat_, style_, this));
  } else if (command == QLatin1String("things")) {
    openPanel(new ThingPanel(seat_, style_, std::nullopt, this));
  } else if (command == QLatin1String("pass")) {
    seat_.isPassing() ? seat_.stopPassing() : seat_.passUntilChange();
    qApp->removeEventFilter(this);
    if (seat_.isPassing()) qApp->installEventFilter(this);
  } else if (command == QLatin1String("why")) {
    askWhy(why_->findAsked(QApplication::focusWidget()));
  } else if (command == QLatin1String("hint")) {
    if (seat_.guide() != nullptr && !seat_.inAssessment()) {
      notebook_->showHint(true);
      pointGuide();
    }
  } else if (command == QLatin1String("lamp")) {
    const double lit = seat_.value(unit::Control::kHandLamp);
    seat_.setControl(unit::Control::kHandLamp, lit > 0.5 ? 0 : 1);
  }
}

// While time passes any key stops it, wherever it would have gone.
bool SeatView::eventFilter(QObject* watched, QEvent* event) {
  if (!seat_.isPassing()) {
    qApp->removeEventFilter(this);
  } else if (event->type() == QEvent::KeyPress) {
    qApp->removeEventFilter(this);
    seat_.stopPassing();
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

void SeatView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    if (panel_ != nullptr) {
      closePanel();
    } else {
      setFocus();  // off the thing that was looked at: G, D and U are levers' keys again
    }
    return;
  }
  const QStringList commands =
      shortcuts_.findCommands(event->key(), event->modifiers(), event->nativeScanCode());
  if (commands.isEmpty()) {
    event->ignore();
    return;
  }
  if (event->isAutoRepeat()) return;
  if (seat_.isToLookAt()) {
    lookByKey(commands, *event);
    return;
  }
  const bool engine = plate_ && plate_->findControl(QStringLiteral("engine.start")) != nullptr;
  for (const QString& command : commands) {
    const bool of_engine = command.startsWith(QLatin1String("engine."));
    const bool of_cab = command.startsWith(QLatin1String("cab."));
    if ((of_engine && !engine) || (of_cab && unit::cabOf(seat_.place()) < 0)) continue;
    useCommand(command, true);
  }
}

// Of a recording: looking elsewhere; all other keys belong to who shows it.
void SeatView::lookByKey(const QStringList& commands, QKeyEvent& event) {
  for (const QString& command : commands) {
    if (!command.startsWith(QLatin1String("go.")) && command != QLatin1String("turn")) continue;
    useCommand(command);
    return;
  }
  event.ignore();
}

void SeatView::keyReleaseEvent(QKeyEvent* event) {
  if (event->isAutoRepeat()) return;
  for (const QString& command :
       shortcuts_.findCommands(event->key(), event->modifiers(), event->nativeScanCode())) {
    if (plate_ && plate_->findControl(command) != nullptr) useCommand(command, false);
  }
}

}  // namespace cabwright::cab
