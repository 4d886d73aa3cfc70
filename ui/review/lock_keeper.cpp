// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/lock_keeper.h"

#include <QDateTime>

namespace cabwright::review_room {

using session::SecretText;
using session::Tried;

namespace {

// What the box on the screen held is Qt's and is not wiped; what is made of it here is.
SecretText secretOf(const QString& typed) {
  QByteArray bytes = typed.normalized(QString::NormalizationForm_C).toUtf8();
  std::string text = bytes.toStdString();
  bytes.fill('\0');
  return SecretText(text);
}

}  // namespace

std::int64_t wallSeconds() { return QDateTime::currentSecsSinceEpoch(); }

LockKeeper::LockKeeper(std::filesystem::path file, QObject* parent, session::HashCost cost)
    : QObject(parent), passphrase_(std::move(file), cost) {}

int LockKeeper::waitSeconds() const { return static_cast<int>(passphrase_.waitSeconds(clock_())); }

bool LockKeeper::settle(Tried tried) {
  fault_.clear();
  switch (tried) {
    case Tried::kRight:
    case Tried::kUnset:
      return true;
    case Tried::kWrong:
      fault_ = tr("That is not the passphrase.");
      break;
    case Tried::kTooSoon:
      fault_ = tr("Too many wrong tries.");
      break;
    case Tried::kFault:
      fault_ = QString::fromStdString(passphrase_.fault());
      break;
  }
  return false;
}

bool LockKeeper::open(const QString& typed) {
  const bool right = settle(passphrase_.tryWith(secretOf(typed), clock_()));
  if (right && !open_) {
    open_ = true;
    Q_EMIT changed();
  }
  return right;
}

void LockKeeper::lock() {
  if (!open_) return;
  open_ = false;
  Q_EMIT changed();
}

bool LockKeeper::change(const QString& old, const QString& fresh) {
  const Tried tried = fresh.isEmpty()
                          ? passphrase_.remove(secretOf(old), clock_())
                          : passphrase_.change(secretOf(old), secretOf(fresh), clock_());
  if (!settle(tried)) return false;
  // Whoever has just shown that they know it need not say it again.
  open_ = !fresh.isEmpty();
  Q_EMIT changed();
  return true;
}

}  // namespace cabwright::review_room
