// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/lock_keeper.h"

#include <QCoreApplication>
#include <QDateTime>
#include <memory>
#include <utility>

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

LockKeeper::~LockKeeper() {
  if (isBusy()) thread_.join();
}

// All that is kept stands in the file, and the thread has a passphrase of its own over it.
void LockKeeper::start(Look look, bool opens, Told told) {
  if (isBusy()) return;
  opens_ = opens;
  told_ = std::move(told);
  thread_ = std::thread([this, look = std::move(look), passphrase = passphrase_]() mutable {
    Looked looked;
    looked.tried = look(passphrase);
    looked.fault = passphrase.fault();
    QMetaObject::invokeMethod(
        this, [this, looked] { settle(looked); }, Qt::QueuedConnection);
  });
}

void LockKeeper::settle(const Looked& looked) {
  thread_.join();
  const Told told = std::exchange(told_, {});
  if (!told) return;
  const bool done = looked.tried == Tried::kRight || looked.tried == Tried::kUnset;
  fault_.clear();
  if (looked.tried == Tried::kWrong) fault_ = tr("That is not the passphrase.");
  if (looked.tried == Tried::kTooSoon) fault_ = tr("Too many wrong tries.");
  if (looked.tried == Tried::kFault) fault_ = QString::fromStdString(looked.fault);
  if (done) {
    open_ = opens_;
    Q_EMIT changed();
  }
  told(done);
}

void LockKeeper::open(const QString& typed, Told told) {
  start([secret = std::make_shared<SecretText>(secretOf(typed)), now = clock_()](
            session::Passphrase& passphrase) { return passphrase.tryWith(*secret, now); },
        true, std::move(told));
}

// Whoever has just shown that they know it need not say it again.
void LockKeeper::change(const QString& old, const QString& fresh, Told told) {
  start(
      [before = std::make_shared<SecretText>(secretOf(old)),
       after = std::make_shared<SecretText>(secretOf(fresh)),
       now = clock_()](session::Passphrase& passphrase) {
        return after->empty() ? passphrase.remove(*before, now)
                              : passphrase.change(*before, *after, now);
      },
      !fresh.isEmpty(), std::move(told));
}

void LockKeeper::drop() { told_ = {}; }

void LockKeeper::wait() {
  while (isBusy()) {
    QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);
    std::this_thread::yield();
  }
}

void LockKeeper::lock() {
  opens_ = false;
  if (!open_) return;
  open_ = false;
  Q_EMIT changed();
}

}  // namespace cabwright::review_room
