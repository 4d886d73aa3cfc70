// SPDX-License-Identifier: GPL-3.0-or-later
// A run in a seat, led tick by tick by a script and by what an instructor does meanwhile: for the
// tests and pictures of the desk.
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <stdexcept>
#include <string>

#include "cab/seat.h"
#include "scenario/script.h"
#include "session/situation.h"

namespace cabwright::tests {

inline std::string exerciseFolder(const std::string& exercise) {
  return std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios/" + exercise + "/";
}

inline std::unique_ptr<cab::Seat> sitDown(const std::string& exercise,
                                          scenario::Mode mode = scenario::Mode::kPractice) {
  const auto loaded = session::loadSituation(exerciseFolder(exercise) + "scenario.toml");
  if (!std::holds_alternative<session::Situation>(loaded)) throw std::runtime_error(exercise);
  session::LiveOptions options;
  options.mode = mode;
  options.trainee_number = "07";
  return std::make_unique<cab::Seat>(
      std::make_unique<session::LiveRun>(std::get<session::Situation>(loaded), options));
}

/// Does the words of an action, "instructor: mark first start". Throws when they mean nothing.
inline void doWords(cab::Seat& seat, const std::string& words) {
  const auto action = unit::parseAction(words);
  if (const auto* fault = std::get_if<std::string>(&action)) throw std::runtime_error(*fault);
  const session::Taken taken = seat.takeFor(std::get<unit::Action>(action));
  if (taken.fault) throw std::runtime_error(words + ": " + *taken.fault);
}

inline void passSeconds(cab::Seat& seat, double seconds) {
  const auto end = seat.run().tick() + static_cast<std::int64_t>(seconds * 100 + 0.5);
  while (seat.run().tick() < end && !seat.run().failed()) seat.passRealTime(0.0101);
}

/// Plays a script of the exercise up to a second; `notes`: what else is done, by second.
inline void playScript(cab::Seat& seat, const std::string& exercise, const std::string& script,
                       double last_s, const std::multimap<double, std::string>& notes = {}) {
  const std::string path = exerciseFolder(exercise) + script + ".txt";
  const auto file = scenario::loadText(path);
  auto parsed =
      scenario::parseScript(std::get<scenario::SourceFile>(file), {}, scenario::neighboursOf(path));
  scenario::ScriptRunner runner(std::get<scenario::Script>(std::move(parsed)));
  auto note = notes.begin();
  const auto end = static_cast<std::int64_t>(last_s * 100);
  std::int64_t seen = -1;
  while (seat.run().tick() < end && !seat.run().failed()) {
    if (seat.run().tick() != seen) {
      seen = seat.run().tick();
      for (const auto& due : runner.advance(seat.frame())) seat.takeFor(due.action);
      if (runner.fault()) throw std::runtime_error(scenario::toText(*runner.fault()));
      for (; note != notes.end() && note->first * 100 <= static_cast<double>(seen); ++note)
        doWords(seat, note->second);
    }
    seat.passRealTime(0.01);
  }
}

}  // namespace cabwright::tests
