// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/lock_panel.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPointer>
#include <QVBoxLayout>
#include <algorithm>

#include "review_room/shelf_look.h"

namespace cabwright::review_room {

LockPanel::LockPanel(LockKeeper& keeper, QWidget* parent)
    : QFrame(parent),
      keeper_(keeper),
      title_(new QLabel(this)),
      said_(makeSecondLabel({}, this)),
      box_(new QLineEdit(this)),
      go_(makeShelfButton(tr("Open"), QStringLiteral("lock-open"), this)),
      close_(makeShelfButton(tr("Not now"), QStringLiteral("lock-close"), this)) {
  setObjectName(QStringLiteral("panel"));
  setAccessibleName(tr("Passphrase"));
  title_->setObjectName(QStringLiteral("heading"));
  title_->setWordWrap(true);
  box_->setEchoMode(QLineEdit::Password);
  box_->setInputMethodHints(Qt::ImhSensitiveData | Qt::ImhNoPredictiveText);
  box_->setMaxLength(200);
  box_->setAccessibleName(tr("Passphrase"));
  box_->setPlaceholderText(tr("passphrase"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(18, 14, 18, 14);
  column->addWidget(title_);
  column->addWidget(box_);
  column->addWidget(said_);
  auto* row = new QHBoxLayout;
  row->addStretch(1);
  row->addWidget(close_);
  row->addWidget(go_);
  column->addLayout(row);
  second_.setInterval(500);
  connect(&second_, &QTimer::timeout, this, &LockPanel::tick);
  connect(box_, &QLineEdit::returnPressed, this, &LockPanel::tryIt);
  connect(go_, &QPushButton::clicked, this, &LockPanel::tryIt);
  connect(close_, &QPushButton::clicked, this, &LockPanel::leave);
  setTheme(drawing::Theme::kDay);
  hide();
}

void LockPanel::setTheme(drawing::Theme theme) {
  const after::SheetLook look{theme, 0.8};
  setStyleSheet(shelfStyle(look));
}

void LockPanel::ask(const QString& what) {
  title_->setText(tr("%1 is locked on this machine.").arg(what));
  said_->clear();
  box_->clear();
  waits_ = false;
  const QWidget* window = parentWidget();
  setFixedWidth(std::min(420, window->width() - 40));
  adjustSize();
  move((window->width() - width()) / 2, std::max(20, window->height() / 6));
  show();
  raise();
  box_->setFocus(Qt::OtherFocusReason);
  tick();
  second_.start();
}

void LockPanel::tick() {
  if (keeper_.isBusy()) {
    box_->setEnabled(false);
    go_->setEnabled(false);
    return;
  }
  const int wait = keeper_.waitSeconds();
  box_->setEnabled(wait == 0);
  go_->setEnabled(wait == 0);
  if (wait > 0) {
    said_->setText(tr("Too many wrong tries: wait %n second(s).", nullptr, wait));
    if (!waits_) close_->setFocus();
  } else if (waits_) {
    said_->clear();
    box_->setFocus();
  }
  waits_ = wait > 0;
}

void LockPanel::tryIt() {
  const QString typed = box_->text();
  box_->clear();
  if (typed.isEmpty()) return;
  if (keeper_.isBusy()) return;
  const QPointer<LockPanel> self(this);
  keeper_.open(typed, [self](bool right) {
    if (self) self->hear(right);
  });
  said_->setText(tr("It is being looked at."));
  close_->setFocus();  // Escape is heard meanwhile
  tick();
}

void LockPanel::hear(bool right) {
  if (right) {
    second_.stop();
    hide();
    Q_EMIT opened();
    return;
  }
  said_->setText(keeper_.faultText());
  tick();
  if (box_->isEnabled()) box_->setFocus();
}

void LockPanel::leave() {
  keeper_.drop();
  second_.stop();
  box_->clear();
  hide();
  Q_EMIT closed();
}

// Whatever is typed here is nobody else's: no key goes on to the cab.
void LockPanel::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) leave();
  event->accept();
}

}  // namespace cabwright::review_room
