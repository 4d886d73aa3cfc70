// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/lock_form.h"

#include <QHBoxLayout>
#include <QPointer>
#include <QVBoxLayout>

namespace cabwright::review_room {
namespace {

QLineEdit* makeBox(const QString& name, const QString& object_name, QWidget* parent) {
  auto* box = new QLineEdit(parent);
  box->setEchoMode(QLineEdit::Password);
  box->setInputMethodHints(Qt::ImhSensitiveData | Qt::ImhNoPredictiveText);
  box->setMaxLength(200);
  box->setAccessibleName(name);
  box->setPlaceholderText(name);
  box->setObjectName(object_name);
  return box;
}

QPushButton* makeButton(const QString& words, const QString& object_name, QWidget* parent) {
  auto* button = new QPushButton(words, parent);
  button->setObjectName(object_name);
  button->setAutoDefault(true);
  return button;
}

}  // namespace

LockForm::LockForm(LockKeeper& keeper, QWidget* parent)
    : QWidget(parent),
      keeper_(keeper),
      stands_(new QLabel(this)),
      said_(new QLabel(this)),
      old_(makeBox(tr("Passphrase as it is"), QStringLiteral("lock-old"), this)),
      fresh_(makeBox(tr("New passphrase"), QStringLiteral("lock-new"), this)),
      again_(makeBox(tr("The new one again"), QStringLiteral("lock-again"), this)),
      set_(makeButton({}, QStringLiteral("lock-set"), this)),
      remove_(makeButton(tr("Take it away"), QStringLiteral("lock-remove"), this)),
      lock_(makeButton(tr("Lock now"), QStringLiteral("lock-now"), this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  stands_->setWordWrap(true);
  said_->setObjectName(QStringLiteral("second"));
  said_->setWordWrap(true);
  auto* boxes = new QHBoxLayout;
  for (QLineEdit* box : {old_, fresh_, again_}) boxes->addWidget(box);
  auto* buttons = new QHBoxLayout;
  for (QPushButton* button : {set_, remove_, lock_}) buttons->addWidget(button);
  buttons->addStretch(1);
  column->addWidget(stands_);
  column->addLayout(boxes);
  column->addLayout(buttons);
  column->addWidget(said_);
  connect(set_, &QPushButton::clicked, this, &LockForm::set);
  connect(again_, &QLineEdit::returnPressed, this, &LockForm::set);
  connect(remove_, &QPushButton::clicked, this, &LockForm::remove);
  connect(lock_, &QPushButton::clicked, &keeper_, &LockKeeper::lock);
  connect(&keeper_, &LockKeeper::changed, this, &LockForm::refresh);
  refresh();
}

void LockForm::refresh() {
  const bool set = keeper_.isSet();
  for (QLineEdit* box : {old_, fresh_, again_}) box->clear();
  old_->setVisible(set);
  remove_->setVisible(set);
  lock_->setVisible(set);
  lock_->setEnabled(keeper_.isOpen());
  set_->setText(set ? tr("Change it") : tr("Set it"));
  stands_->setText(!set               ? tr("Desk and review stand open to everybody.")
                   : keeper_.isOpen() ? tr("Desk and review are open until they are locked or the "
                                           "program ends.")
                                      : tr("Desk and review are locked."));
  said_->setText(
      tr("It keeps a trainee out of the instructor's desk and the review in this program. It does "
         "not keep anybody out of the files: who can read the sessions, or delete the lock, can do "
         "so without it. Whoever forgets it has to delete the file %1.")
          .arg(QString::fromStdString(keeper_.file().string())));
}

void LockForm::ask(const QString& fresh, const QString& words) {
  if (keeper_.isBusy()) return;
  const QPointer<LockForm> self(this);
  keeper_.change(old_->text(), fresh, [self, words](bool done) {
    if (self) self->take(done, words);
  });
  enable(false);
  said_->setText(tr("It is being looked at."));
}

void LockForm::take(bool done, const QString& words) {
  enable(true);
  if (done) refresh();
  said_->setText(done ? words : keeper_.faultText());
}

void LockForm::enable(bool enabled) {
  for (QWidget* widget : std::initializer_list<QWidget*>{old_, fresh_, again_, set_, remove_})
    widget->setEnabled(enabled);
}

void LockForm::set() {
  if (fresh_->text() != again_->text()) {
    said_->setText(tr("The two new ones are not the same."));
    again_->clear();
    again_->setFocus();
    return;
  }
  if (fresh_->text().toUtf8().size() < static_cast<int>(session::kLeastPassphraseBytes)) {
    said_->setText(tr("A passphrase has at least %1 letters.").arg(session::kLeastPassphraseBytes));
    fresh_->setFocus();
    return;
  }
  const bool was_set = keeper_.isSet();
  ask(fresh_->text(),
      was_set ? tr("The passphrase is another one now.") : tr("The passphrase is set."));
}

void LockForm::remove() { ask({}, tr("There is no passphrase any more.")); }

}  // namespace cabwright::review_room
