// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/session_opening.h"

#include <exception>
#include <utility>

namespace cabwright::review_room {
namespace {

constexpr std::int64_t kTellTicks = 60 * session::kTicksPerSecond;

}  // namespace

SessionOpening::SessionOpening(std::filesystem::path file, QObject* parent)
    : QObject(parent), file_(std::move(file)) {
  thread_.reset(QThread::create([this] { read(); }));
  thread_->start();
}

SessionOpening::~SessionOpening() {
  stop_ = true;
  thread_->wait();
}

void SessionOpening::cancel() { stop_ = true; }

void SessionOpening::read() {
  QString why;
  std::unique_ptr<Opened> read;
  try {
    read = std::make_unique<Opened>(file_, nullptr, [this](std::int64_t tick) {
      if (tick % kTellTicks == 0)
        QMetaObject::invokeMethod(
            this, [this, tick] { Q_EMIT progressed(tick); }, Qt::QueuedConnection);
      return !stop_;
    });
    read->moveToThread(thread());  // where this lives
  } catch (const std::exception& error) {
    why = QString::fromUtf8(error.what());
  }
  if (stop_) return;
  opened_ = std::move(read);
  QMetaObject::invokeMethod(
      this,
      [this, why] {
        if (stop_) return;
        if (opened_)
          Q_EMIT opened();
        else
          Q_EMIT failed(why);
      },
      Qt::QueuedConnection);
}

}  // namespace cabwright::review_room
