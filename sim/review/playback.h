// SPDX-License-Identifier: GPL-3.0-or-later
// A recorded session run again, so that any moment of it stands there whole: from its scenario, its
// seed and what people did. Copies of the run are kept on the way; a moment is the copy before it,
// run on for some seconds. Whatever is run is held against the record: from where they differ, or
// the record cannot be read, there are no moments.
//
// One thread builds (build()); any other may ask at the same time for what is built.
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

#include "session/comparer.h"
#include "session/run.h"
#include "session/situation.h"
#include "session/store.h"

namespace cabwright::review {

/// Something a person did, and what came of it then.
struct Deed {
  session::TimedAction timed;
  unit::ActionOutcome outcome;
};

class Playback {
 public:
  /// How far it has come; ticks of 10 ms.
  struct State {
    std::int64_t built_to = 0;   ///< moments up to here are there, and as recorded
    std::int64_t last_tick = 0;  ///< of the session, as far as it can be read
    bool done = false;           ///< nothing more is built
    /// Where the run first was not as recorded.
    std::optional<session::Difference> difference;
    /// Why it goes no further, in one line: the record cannot be read on. Empty while it goes well.
    std::string fault;
  };

  /// Reads what people did. Throws SessionError when the scenario cannot be read any more or makes
  /// no unit here.
  explicit Playback(const std::filesystem::path& file);
  ~Playback();
  Playback(const Playback&) = delete;
  Playback& operator=(const Playback&) = delete;

  /// Runs on for so many ticks at most. False: done.
  bool build(std::int64_t ticks);

  [[nodiscard]] State state() const;
  /// The world at a tick, before anything was done at it: its frame is the recorded one. Empty:
  /// not built (0 to built_to).
  [[nodiscard]] std::optional<session::Run> findMoment(std::int64_t tick) const;
  /// Brings a moment to another one, forward by itself where that is nearer. False: not built, and
  /// nothing is changed.
  bool moveTo(session::Run& moment, std::int64_t tick) const;

  /// What people did from one tick to another, both included, as far as it is built.
  [[nodiscard]] std::vector<Deed> deeds(std::int64_t from, std::int64_t to) const;
  /// Likewise what was said to the trainee.
  [[nodiscard]] std::vector<unit::Message> messages(std::int64_t from, std::int64_t to) const;

  /// Copies are so far apart: a moment is no more than this to be run.
  static constexpr std::int64_t kCopyTicks = 10 * session::kTicksPerSecond;

 private:
  class Builder;
  [[nodiscard]] std::shared_ptr<const session::Run> findCopy(std::int64_t tick) const;
  void runTo(session::Run& run, std::int64_t tick) const;

  std::vector<session::TimedAction> actions_;  ///< of people
  std::unique_ptr<Builder> builder_;
  mutable std::mutex mutex_;  ///< of all below
  State state_;
  std::map<std::int64_t, std::shared_ptr<const session::Run>> copies_;
  std::vector<Deed> deeds_;
  std::vector<unit::Message> messages_;
};

}  // namespace cabwright::review
