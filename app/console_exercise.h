// SPDX-License-Identifier: GPL-3.0-or-later
// What run and trace have in common: a scenario and a script from the words of the command line,
// and playing the one in the other.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>

#include "console_commands.h"
#include "scenario/script.h"
#include "session/run.h"
#include "session/situation.h"

namespace cabwright::console {

/// A scenario and a script, checked, with what the seed has drawn.
struct Exercise {
  session::Situation situation;
  scenario::Setup setup;
  scenario::Script script;
};

/// Empty when there are faults; they have been said then.
[[nodiscard]] std::optional<session::Situation> loadSituation(const Context& context,
                                                              const std::string& scenario_word);
[[nodiscard]] std::optional<Exercise> loadExercise(const Context& context,
                                                   const std::string& scenario_word,
                                                   const std::string& script_word,
                                                   std::optional<std::uint64_t> seed);

/// One line on standard error for each fault.
void sayFaults(const Context& context, const scenario::FileFaults& faults);

/// How a script came to its end.
struct PlayEnd {
  std::string reason;  ///< "finished", "stopped by a signal" ...
  int stop_signal = 0;
  std::optional<scenario::FileFault>
      fault;  ///< of the script: a wait that ran out, an unknown word
};

/// Called after the actions of each tick, before it passes; false ends the run.
using EachTick = std::function<bool(const session::Run& run)>;

/// Called with each act of the script and what came of it.
using EachAct = std::function<void(std::int64_t tick, const scenario::ScriptRunner::Due& due,
                                   const session::Taken& taken)>;

/// Plays the script in the run, which has begun, and one second more, so that the last act shows
/// what comes of it.
[[nodiscard]] PlayEnd play(session::Run& run, scenario::Script script, const EachTick& each_tick,
                           const EachAct& each_act = {});

/// Says what ended a run before its time, if anything did.
void sayEnd(const Context& context, const PlayEnd& end, const session::Run& run);

/// A progress line every fifth of a second of the clock, on a terminal.
class ProgressLine {
 public:
  explicit ProgressLine(Output& output);
  void show(std::int64_t tick, std::int64_t last_tick = 0);

 private:
  Output& output_;
  double started_s_;
  double shown_s_ = 0;
};

}  // namespace cabwright::console
