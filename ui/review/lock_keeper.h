// SPDX-License-Identifier: GPL-3.0-or-later
// Whether desk and review stand open to whoever sits at the machine. Without a passphrase they do.
// Once opened they stay so until they are locked again or the program ends.
#pragma once

#include <QObject>
#include <QString>
#include <cstdint>
#include <functional>

#include "session/passphrase.h"

namespace cabwright::review_room {

/// Seconds since 1970.
using LockClock = std::function<std::int64_t()>;
[[nodiscard]] std::int64_t wallSeconds();

class LockKeeper : public QObject {
  Q_OBJECT
 public:
  /// The file is kept for its owner alone, and need not be there.
  explicit LockKeeper(std::filesystem::path file, QObject* parent = nullptr,
                      session::HashCost cost = session::HashCost::kUsual);
  /// For tests another one.
  void setClock(LockClock clock) { clock_ = std::move(clock); }

  [[nodiscard]] bool isSet() const { return passphrase_.isSet(); }
  [[nodiscard]] const std::filesystem::path& file() const { return passphrase_.file(); }
  /// Nobody needs to be asked.
  [[nodiscard]] bool isOpen() const { return open_ || !isSet(); }
  /// For so many seconds nobody is listened to.
  [[nodiscard]] int waitSeconds() const;

  /// True: it is open now. Else faultText() says why not.
  bool open(const QString& typed);
  void lock();
  /// `fresh` empty: takes it away. Without a passphrase `old` is not looked at.
  bool change(const QString& old, const QString& fresh);
  [[nodiscard]] const QString& faultText() const { return fault_; }

 Q_SIGNALS:
  /// Open or locked, set or not.
  void changed();

 private:
  [[nodiscard]] bool settle(session::Tried tried);
  session::Passphrase passphrase_;
  LockClock clock_ = wallSeconds;
  QString fault_;
  bool open_ = false;
};

}  // namespace cabwright::review_room
