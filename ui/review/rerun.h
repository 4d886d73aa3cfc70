// SPDX-License-Identifier: GPL-3.0-or-later
// Runs a session again in a thread of its own, for its moments.
#pragma once

#include <QObject>
#include <QThread>
#include <atomic>
#include <filesystem>
#include <memory>
#include <mutex>

#include "review/playback.h"

namespace cabwright::review_room {

class Rerun : public QObject {
  Q_OBJECT
 public:
  /// Begins at once.
  explicit Rerun(std::filesystem::path file, QObject* parent = nullptr);
  /// Gives it up if it still goes on.
  ~Rerun() override;

  /// Null: it has not begun yet, or cannot be run.
  [[nodiscard]] std::shared_ptr<const review::Playback> playback() const;
  /// Why it cannot be run at all, in one line; empty: it can.
  [[nodiscard]] QString fault() const;
  [[nodiscard]] bool isOver() const { return over_; }
  /// Waits for its end: for tests and pictures.
  void wait();

 Q_SIGNALS:
  /// It has come further, or to its end.
  void progressed();

 private:
  void run(const std::filesystem::path& file);
  void tell();
  std::atomic<bool> stop_ = false, over_ = false, told_ = false;
  mutable std::mutex mutex_;
  std::shared_ptr<review::Playback> playback_;
  QString fault_;
  std::unique_ptr<QThread> thread_;
};

}  // namespace cabwright::review_room
