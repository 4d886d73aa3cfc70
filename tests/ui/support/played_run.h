// SPDX-License-Identifier: GPL-3.0-or-later
// A shipped exercise played by one of its scripts to the end, as somebody would have sat in it.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "scenario/script.h"
#include "session/live_run.h"

namespace cabwright::tests {

/// `source` is the folder that holds scenarios/. Empty, with a word on the error stream, when
/// anything cannot be read or played. Stops at `last_tick` at the latest.
inline std::unique_ptr<session::LiveRun> playRun(const std::string& source,
                                                 const std::string& exercise,
                                                 const std::string& script,
                                                 std::optional<scenario::Mode> mode = {},
                                                 std::int64_t last_tick = 1'000'000) {
  const std::string folder = source + "/scenarios/" + exercise + "/";
  const auto say = [](const scenario::FileFaults& faults) {
    for (const scenario::FileFault& fault : faults)
      std::fprintf(stderr, "%s\n", scenario::toText(fault).c_str());
    return nullptr;
  };
  auto loaded = session::loadSituation(folder + "scenario.toml");
  if (const auto* faults = std::get_if<scenario::FileFaults>(&loaded)) return say(*faults);
  const std::string path = folder + script + ".txt";
  const auto file = scenario::loadText(path);
  if (const auto* fault = std::get_if<scenario::FileFault>(&file)) return say({*fault});
  auto parsed =
      scenario::parseScript(std::get<scenario::SourceFile>(file), {}, scenario::neighboursOf(path));
  if (const auto* faults = std::get_if<scenario::FileFaults>(&parsed)) return say(*faults);
  session::LiveOptions options;
  options.mode = mode;
  options.trainee_number = "07";
  auto live = std::make_unique<session::LiveRun>(std::get<session::Situation>(loaded), options);
  scenario::ScriptRunner runner(std::get<scenario::Script>(std::move(parsed)));
  std::int64_t rest = 100;  // after the script has ended, what it did may still fall
  while (live->tick() < last_tick && rest > 0 && !live->failed()) {
    for (const auto& due : runner.advance(live->frame())) live->take(due.action);
    if (runner.fault()) return say({*runner.fault()});
    if (runner.isDone()) --rest;
    live->advance(1);
  }
  live->finish("finished");
  return live;
}

}  // namespace cabwright::tests
