// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/shelf_loader.h"

#include <QElapsedTimer>

namespace cabwright::review_room {
namespace {

constexpr qint64 kTellMs = 50;

}  // namespace

ShelfLoader::ShelfLoader(QObject* parent) : QObject(parent) {}

ShelfLoader::~ShelfLoader() { stop(); }

void ShelfLoader::stop() {
  if (job_) job_->given_up = true;
  if (thread_.joinable()) thread_.join();
  job_.reset();
}

void ShelfLoader::start(const std::function<void(Job& job)>& work) {
  stop();
  job_ = std::make_shared<Job>();
  job_->number = ++jobs_;
  setBusy(true);
  thread_ = std::thread([work, job = job_] { work(*job); });
}

void ShelfLoader::giveUp() {
  if (!busy_) return;
  stop();
  setBusy(false);
  Q_EMIT givenUp();
}

void ShelfLoader::setBusy(bool busy) {
  if (busy == busy_) return;
  busy_ = busy;
  Q_EMIT busyChanged(busy);
}

// The job may be over, and another one begun, when the window comes to it.
void ShelfLoader::tell(Job& job, std::function<void()> done) {
  QMetaObject::invokeMethod(
      this,
      [this, which = job.number, done = std::move(done)] {
        if (job_ && job_->number == which && !job_->given_up) done();
      },
      Qt::QueuedConnection);
}

std::function<bool(std::size_t, std::size_t)> ShelfLoader::makeProgress(Job& job) {
  auto clock = std::make_shared<QElapsedTimer>();
  clock->start();
  return [this, &job, clock](std::size_t done, std::size_t all) {
    if (clock->elapsed() >= kTellMs) {
      clock->restart();
      tell(job,
           [this, done, all] { Q_EMIT progressed(static_cast<int>(done), static_cast<int>(all)); });
    }
    return !job.given_up.load();
  };
}

void ShelfLoader::open(std::vector<std::filesystem::path> folders) {
  start([this, folders = std::move(folders), cache = cache_](Job& job) {
    review::ShelfOptions options;
    options.cache_folder = cache;
    options.progress = makeProgress(job);
    auto shelf = std::make_shared<review::Shelf>(review::openShelf(folders, options));
    if (!shelf->complete) return;
    tell(job, [this, shelf] {
      setBusy(false);
      Q_EMIT opened(*shelf);
    });
  });
}

void ShelfLoader::mark(std::vector<std::filesystem::path> files) {
  start([this, files = std::move(files)](Job& job) {
    std::size_t count = 0;
    review::markMany(files, [&](const review::MarkedSession& marked) {
      auto found = std::make_shared<review::MarkDifference>(review::findMarkDifference(marked));
      tell(job, [this, found, done = ++count, all = files.size()] {
        Q_EMIT progressed(static_cast<int>(done), static_cast<int>(all));
        Q_EMIT this->marked(*found);
      });
      return !job.given_up.load();
    });
    tell(job, [this] {
      setBusy(false);
      Q_EMIT allMarked();
    });
  });
}

}  // namespace cabwright::review_room
