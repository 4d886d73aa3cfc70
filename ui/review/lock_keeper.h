// SPDX-License-Identifier: GPL-3.0-or-later
// Whether desk and review stand open to whoever sits at the machine. Without a passphrase they do.
// Once opened they stay so until they are locked again or the program ends.
//
// Looking at a passphrase is slow by intent: it is done in a thread of its own, and the window goes
// on meanwhile.
#pragma once

#include <QObject>
#include <QString>
#include <cstdint>
#include <functional>
#include <thread>

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
  /// Waits for what is being looked at; nobody is told of it any more.
  ~LockKeeper() override;
  /// For tests another one.
  void setClock(LockClock clock) { clock_ = std::move(clock); }

  [[nodiscard]] bool isSet() const { return passphrase_.isSet(); }
  [[nodiscard]] const std::filesystem::path& file() const { return passphrase_.file(); }
  /// Nobody needs to be asked.
  [[nodiscard]] bool isOpen() const { return open_ || !isSet(); }
  /// For so many seconds nobody is listened to.
  [[nodiscard]] int waitSeconds() const;

  /// Called in the thread of the window. True: it is done. Else faultText() says why not.
  using Told = std::function<void(bool done)>;
  /// Opens with the right one. While something is being looked at nothing else is taken, and nobody
  /// is told.
  void open(const QString& typed, Told told);
  /// `fresh` empty: takes it away. Without a passphrase `old` is not looked at.
  void change(const QString& old, const QString& fresh, Told told);
  [[nodiscard]] bool isBusy() const { return thread_.joinable(); }
  /// Whoever asked does not want it any more: it opens nothing and nobody is told. A wrong try
  /// counts all the same.
  void drop();
  /// Until it has been told: for tests and pictures.
  void wait();
  void lock();
  [[nodiscard]] const QString& faultText() const { return fault_; }

 Q_SIGNALS:
  /// Open or locked, set or not.
  void changed();

 private:
  struct Looked {
    session::Tried tried = session::Tried::kUnset;
    std::string fault;  ///< of the file
  };
  using Look = std::function<session::Tried(session::Passphrase& passphrase)>;
  void start(Look look, bool opens, Told told);
  void settle(const Looked& looked);
  session::Passphrase passphrase_;
  LockClock clock_ = wallSeconds;
  QString fault_;
  bool open_ = false;
  std::thread thread_;  ///< joined in the window's
  bool opens_ = false;  ///< what it is when this one is right
  Told told_;           ///< empty: dropped
};

}  // namespace cabwright::review_room
