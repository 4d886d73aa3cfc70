// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/rerun.h"

#include <exception>
#include <utility>

namespace cabwright::review_room {
namespace {

// So much at a time that giving up is heard soon.
constexpr std::int64_t kStepTicks = 10 * session::kTicksPerSecond;

}  // namespace

Rerun::Rerun(std::filesystem::path file, QObject* parent) : QObject(parent) {
  thread_.reset(QThread::create([this, file = std::move(file)] { run(file); }));
  thread_->start(QThread::LowPriority);
}

Rerun::~Rerun() {
  stop_ = true;
  thread_->wait();
}

void Rerun::wait() {
  thread_->wait();
  Q_EMIT progressed();
}

void Rerun::run(const std::filesystem::path& file) {
  try {
    auto playback = std::make_shared<review::Playback>(file);
    {
      const std::lock_guard lock(mutex_);
      playback_ = playback;
    }
    while (!stop_ && playback->build(kStepTicks)) tell();
  } catch (const std::exception& error) {
    const std::lock_guard lock(mutex_);
    fault_ = QString::fromUtf8(error.what());
  }
  over_ = true;
  told_ = false;
  tell();
}

// One at a time: a window that is busy is not flooded.
void Rerun::tell() {
  if (told_.exchange(true)) return;
  QMetaObject::invokeMethod(
      this,
      [this] {
        told_ = false;
        Q_EMIT progressed();
      },
      Qt::QueuedConnection);
}

std::shared_ptr<const review::Playback> Rerun::playback() const {
  const std::lock_guard lock(mutex_);
  return playback_;
}

QString Rerun::fault() const {
  const std::lock_guard lock(mutex_);
  return fault_;
}

}  // namespace cabwright::review_room
