// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a session in a thread of its own, so that the window lives however long it takes and
// whatever is in the file.
#pragma once

#include <QObject>
#include <QThread>
#include <atomic>
#include <filesystem>
#include <memory>

#include "review_room/opened.h"

namespace cabwright::review_room {

class SessionOpening : public QObject {
  Q_OBJECT
 public:
  /// Begins at once; exactly one of opened() and failed() comes.
  explicit SessionOpening(std::filesystem::path file, QObject* parent = nullptr);
  /// Waits until the thread has heard that it is given up.
  ~SessionOpening() override;

  [[nodiscard]] const std::filesystem::path& file() const { return file_; }
  /// Nothing is wanted of it any more; failed() does not come.
  void cancel();
  [[nodiscard]] bool isOver() const { return thread_->isFinished(); }
  /// After opened(): what was read, once.
  [[nodiscard]] std::unique_ptr<Opened> takeOpened() { return std::move(opened_); }

 Q_SIGNALS:
  /// Read up to this tick.
  void progressed(qint64 tick);
  void opened();
  /// In one line.
  void failed(const QString& why);

 private:
  void read();
  std::filesystem::path file_;
  std::atomic<bool> stop_ = false;
  std::unique_ptr<Opened> opened_;
  std::unique_ptr<QThread> thread_;
};

}  // namespace cabwright::review_room
