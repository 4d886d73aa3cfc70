// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/playback.h"

#include <algorithm>
#include <iterator>
#include <stdexcept>
#include <utility>

#include "session/replay.h"
#include "session/session_error.h"

namespace cabwright::review {
namespace {

session::Run makeRun(const session::Store& store) {
  const session::Situation situation = session::readSituation(store);
  try {
    return session::Run(scenario::makeSetup(situation.loaded, store.header().seed));
  } catch (const std::invalid_argument& error) {
    throw session::SessionError(store.name() +
                                ": its scenario makes no unit here: " + error.what());
  }
}

// Of those in order of their ticks, the ones from `from` to `to`.
template <class T, class Tick>
std::vector<T> between(const std::vector<T>& all, std::int64_t from, std::int64_t to, Tick tick) {
  const auto first = std::ranges::lower_bound(all, from, {}, tick);
  const auto last = std::ranges::upper_bound(all, to, {}, tick);
  return first < last ? std::vector<T>(first, last) : std::vector<T>();
}

std::int64_t tickOf(const Deed& deed) { return deed.timed.tick; }

}  // namespace

// The run that goes along the record; only the thread that builds knows it.
class Playback::Builder {
 public:
  explicit Builder(const std::filesystem::path& file)
      : store_(file), run_(makeRun(store_)), comparer_(store_) {
    run_.addWitness(comparer_);
    run_.begin();
  }

  /// What people did, as far as it can be read; why not further.
  std::string readActions(std::vector<session::TimedAction>& actions, std::int64_t& last_tick) {
    try {
      auto reader = store_.read();
      while (const auto event = reader.next()) {
        last_tick = std::visit([](const auto& e) { return e.tick; }, *event);
        const auto* timed = std::get_if<session::TimedAction>(&*event);
        if (timed != nullptr && !timed->scheduled) actions.push_back(*timed);
      }
      // The end may come after the last frame, but not without one being missing.
      if (store_.lastTick() >= last_tick + session::kFrameTicks)
        return "nothing was recorded up to its end";
      last_tick = std::max(last_tick, store_.lastTick());
    } catch (const session::SessionError& error) {
      return error.what();
    }
    return {};
  }

  /// What was done at this tick.
  void take(const std::vector<session::TimedAction>& actions, std::vector<Deed>& deeds) {
    for (; next_ < actions.size() && actions[next_].tick <= run_.tick(); ++next_) {
      const session::Taken taken = run_.take(actions[next_].action);
      if (taken.fault && !difference_)
        difference_ =
            session::Difference{run_.tick(), "action " + std::to_string(actions[next_].number),
                                unit::toText(actions[next_].action), *taken.fault, 0};
      if (difference()) return;
      deeds.push_back({actions[next_], taken.outcome});
    }
  }

  void advance(std::vector<unit::Message>& messages) {
    noteSame();
    run_.advance();
    noteSame();
    const auto said = run_.unit().lastMessages();
    messages.insert(messages.end(), said.begin(), said.end());
  }

  void finish() { comparer_.finish(); }

  [[nodiscard]] const session::Run& run() const { return run_; }
  /// The last tick that was found to be as recorded.
  [[nodiscard]] std::int64_t sameTo() const { return same_to_; }
  [[nodiscard]] const std::optional<session::Difference>& difference() const {
    return difference_ ? difference_ : comparer_.difference();
  }

 private:
  void noteSame() {
    const std::int64_t seen = comparer_.frames() + comparer_.hashes();
    if (seen == seen_ || comparer_.difference()) return;
    seen_ = seen;
    same_to_ = run_.tick();
  }

  session::Store store_;
  session::Run run_;
  session::Comparer comparer_;
  std::optional<session::Difference> difference_;
  std::size_t next_ = 0;
  std::int64_t seen_ = 0, same_to_ = -1;
};

Playback::Playback(const std::filesystem::path& file) : builder_(std::make_unique<Builder>(file)) {
  state_.fault = builder_->readActions(actions_, state_.last_tick);
  state_.built_to = -1;
}

Playback::~Playback() = default;

bool Playback::build(std::int64_t ticks) {
  const State before = state();
  if (before.done) return false;
  std::vector<Deed> deeds;
  std::vector<unit::Message> messages;
  std::map<std::int64_t, std::shared_ptr<const session::Run>> copies;
  const std::int64_t end = std::min(before.last_tick, builder_->run().tick() + ticks);
  std::string fault = before.fault;
  bool is_good = true;
  try {
    while (!builder_->difference()) {
      const session::Run& run = builder_->run();
      if (run.tick() % kCopyTicks == 0)
        copies.emplace(run.tick(), std::make_shared<const session::Run>(run.copyAlone()));
      const bool is_end = run.tick() >= end;
      if (is_end && end < before.last_tick) break;
      builder_->take(actions_, deeds);
      if (builder_->difference()) break;
      if (is_end) {
        if (before.fault.empty()) builder_->finish();
        break;
      }
      builder_->advance(messages);
    }
  } catch (const std::exception& error) {  // whatever is in the file, the thread lives
    is_good = false;
    if (fault.empty()) fault = error.what();
  }
  is_good = is_good && !builder_->difference();
  const std::lock_guard lock(mutex_);
  state_.difference = builder_->difference();
  state_.fault = std::move(fault);
  state_.built_to = is_good ? builder_->run().tick() : builder_->sameTo();
  state_.done = !is_good || end == before.last_tick;
  copies_.merge(copies);
  std::ranges::move(deeds, std::back_inserter(deeds_));
  std::ranges::move(messages, std::back_inserter(messages_));
  return !state_.done;
}

Playback::State Playback::state() const {
  const std::lock_guard lock(mutex_);
  return state_;
}

std::shared_ptr<const session::Run> Playback::findCopy(std::int64_t tick) const {
  const std::lock_guard lock(mutex_);
  if (tick < 0 || tick > state_.built_to || copies_.empty()) return nullptr;
  return std::prev(copies_.upper_bound(tick))->second;
}

// Actions are never changed once they are read, so this needs no lock.
void Playback::runTo(session::Run& run, std::int64_t tick) const {
  auto next = std::ranges::lower_bound(actions_, run.tick(), {}, &session::TimedAction::tick);
  while (run.tick() < tick) {
    for (; next != actions_.end() && next->tick <= run.tick(); ++next) run.take(next->action);
    run.advance();
  }
}

std::optional<session::Run> Playback::findMoment(std::int64_t tick) const {
  const auto copy = findCopy(tick);
  if (!copy) return std::nullopt;
  session::Run run = *copy;
  runTo(run, tick);
  return run;
}

bool Playback::moveTo(session::Run& moment, std::int64_t tick) const {
  const auto copy = findCopy(tick);
  if (!copy) return false;
  if (moment.tick() > tick || moment.tick() < copy->tick()) moment = *copy;
  runTo(moment, tick);
  return true;
}

std::vector<Deed> Playback::deeds(std::int64_t from, std::int64_t to) const {
  const std::lock_guard lock(mutex_);
  return between(deeds_, from, to, tickOf);
}

std::vector<unit::Message> Playback::messages(std::int64_t from, std::int64_t to) const {
  const std::lock_guard lock(mutex_);
  return between(messages_, from, to, &unit::Message::tick);
}

}  // namespace cabwright::review
