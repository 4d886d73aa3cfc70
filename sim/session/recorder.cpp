// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/recorder.h"

#include <condition_variable>
#include <mutex>
#include <optional>
#include <thread>
#include <variant>
#include <vector>

#include "session/seal.h"
#include "session/session_error.h"
#include "session/session_writer.h"

namespace cabwright::session {
namespace {

constexpr std::int64_t kCommitTicks = 40;   // this much waiting wakes the writer
constexpr std::int64_t kAheadTicks = 90;    // further ahead of the last commit the run must wait
constexpr std::size_t kMostWaiting = 4096;  // however many events one tick may hold

using Event = std::variant<unit::Frame, TimedAction, StateHash>;

std::int64_t tickOf(const Event& event) {
  return std::visit([](const auto& e) { return e.tick; }, event);
}

std::optional<SigningKey> makeKey(const SessionHeader& header, const RecorderOptions& options) {
  if (!options.seals && header.run_mode != scenario::Mode::kAssessment) return std::nullopt;
  return SigningKey::loadOrMake(options.key_folder.empty() ? userDataFolder() : options.key_folder);
}

}  // namespace

struct Recorder::Impl {
  Impl(const std::filesystem::path& place, const SessionHeader& header,
       const RecorderOptions& given)
      : file(place),
        options(given),
        key(makeKey(header, given)),
        writer(place, header, given.size_limit_bytes) {
    thread = std::thread([this] { writeUntilStopped(); });
  }

  // Called by the run's thread.
  void put(Event event) {
    std::unique_lock lock(mutex);
    const std::int64_t tick = tickOf(event);
    room.wait(lock, [&] { return !fault.empty() || hasRoom(tick); });
    if (!fault.empty()) return;
    if (waiting.empty()) oldest_waiting = tick;
    waiting.push_back(std::move(event));
    if (tick - oldest_waiting >= kCommitTicks || waiting.size() >= kMostWaiting / 2)
      work.notify_one();
  }

  bool hasRoom(std::int64_t tick) const {
    if (waiting.empty() && !writing) return true;
    return tick - committed <= kAheadTicks && waiting.size() < kMostWaiting;
  }

  bool shouldCommit() const {
    return stopping || waiting.size() >= kMostWaiting / 2 ||
           (!waiting.empty() && tickOf(waiting.back()) - oldest_waiting >= kCommitTicks);
  }

  void writeUntilStopped() {
    std::unique_lock lock(mutex);
    while (true) {
      work.wait_for(lock, options.commit_every, [&] { return shouldCommit(); });
      if (!waiting.empty() && fault.empty()) commit(lock);
      if (stopping && (waiting.empty() || !fault.empty())) return;
    }
  }

  // The lock is open while the disk is busy.
  void commit(std::unique_lock<std::mutex>& lock) {
    batch.clear();
    std::swap(batch, waiting);
    writing = true;
    lock.unlock();
    std::string failure;
    try {
      writer.begin();
      for (const Event& event : batch) std::visit([&](const auto& e) { writer.write(e); }, event);
      writer.commit();
    } catch (const std::exception& error) {
      failure = error.what();
      writer.rollBack();
    }
    lock.lock();
    writing = false;
    if (failure.empty())
      committed = tickOf(batch.back());
    else
      fault = failure;
    room.notify_one();
  }

  void stop() {
    {
      const std::scoped_lock lock(mutex);
      stopping = true;
    }
    work.notify_one();
    if (thread.joinable()) thread.join();
  }

  std::filesystem::path file;
  RecorderOptions options;
  std::optional<SigningKey>
      key;               // when it is to be sealed; before the file, which is not made without
  SessionWriter writer;  // the writer thread's alone while it runs
  mutable std::mutex mutex;
  std::condition_variable work, room;
  std::vector<Event> waiting, batch;
  std::int64_t oldest_waiting = 0;
  std::int64_t committed = -1;
  bool writing = false, stopping = false;
  std::string fault;
  std::thread thread;
};

Recorder::Recorder(const std::filesystem::path& file, const SessionHeader& header,
                   const RecorderOptions& options)
    : impl_(std::make_unique<Impl>(file, header, options)) {}

Recorder::~Recorder() { impl_->stop(); }

void Recorder::seeFrame(const unit::Frame& frame) { impl_->put(frame); }
void Recorder::seeAction(const TimedAction& action) { impl_->put(action); }
void Recorder::seeHash(const StateHash& hash) { impl_->put(hash); }

void Recorder::close(const Closing& closing) {
  impl_->stop();
  if (!impl_->fault.empty()) throw SessionError(impl_->fault);
  try {
    impl_->writer.finish(closing);
    if (impl_->key) sealSession(impl_->file, *impl_->key, SealHow::kWhenItEnded);
  } catch (const SessionError& error) {
    impl_->fault = error.what();
    throw;
  }
}

std::optional<std::string> Recorder::findFault() const {
  const std::scoped_lock lock(impl_->mutex);
  if (impl_->fault.empty()) return std::nullopt;
  return impl_->fault;
}

std::int64_t Recorder::committedTick() const {
  const std::scoped_lock lock(impl_->mutex);
  return impl_->committed;
}

}  // namespace cabwright::session
