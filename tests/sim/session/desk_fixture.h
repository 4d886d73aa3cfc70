// SPDX-License-Identifier: GPL-3.0-or-later
// The sample scenario as a run with an instructor beside it.
#pragma once

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "sample_scenario.h"
#include "session/live_run.h"

namespace cabwright::session {

inline unit::Action actionOf(const std::string& text) {
  auto read = unit::parseAction(text);
  if (const auto* wrong = std::get_if<std::string>(&read)) ADD_FAILURE() << text << ": " << *wrong;
  return std::get<unit::Action>(std::move(read));
}

inline std::string faultOf(LiveRun& live, const std::string& text) {
  return live.take(actionOf(text)).fault.value_or("");
}

/// The sample could be an assessment with an aim: the handbrake off (reached when that is done).
inline Situation deskSituation() {
  auto sources = sampleSources();
  std::string& text = sources.front().text;
  text.replace(text.find("pass_mark"), 0, "complete = \"cab1.handbrake < 0.5\"\n");
  return std::get<Situation>(readSituation(sources));
}

inline LiveOptions inMode(scenario::Mode mode) {
  LiveOptions options;
  options.mode = mode;
  return options;
}

/// Hash of the world now and after each second that follows.
inline std::vector<std::uint64_t> hashesOf(LiveRun& live, int seconds) {
  std::vector<std::uint64_t> hashes{live.run().hash()};
  for (int s = 0; s < seconds; ++s) {
    live.advance(kTicksPerSecond);
    hashes.push_back(live.run().hash());
  }
  return hashes;
}

}  // namespace cabwright::session
