// SPDX-License-Identifier: GPL-3.0-or-later
// A shipped exercise as somebody sits in it, and its good.txt as the hands.
#pragma once

#include <gtest/gtest.h>

#include <functional>
#include <string>

#include "scenario/arm_words.h"
#include "scenario/script.h"
#include "session/live_run.h"

namespace cabwright::session {

inline std::filesystem::path shippedFolder() {
  return std::filesystem::path(CABWRIGHT_SOURCE_DIR) / "scenarios";
}

inline Situation shippedSituation(const std::string& name) {
  auto loaded = loadSituation((shippedFolder() / name / "scenario.toml").string());
  if (const auto* faults = std::get_if<scenario::FileFaults>(&loaded))
    for (const auto& fault : *faults) ADD_FAILURE() << scenario::toText(fault);
  return std::get<Situation>(std::move(loaded));
}

inline scenario::Script goodScript(const std::string& name, const unit::Unit& unit) {
  const std::string path = (shippedFolder() / name / "good.txt").string();
  auto parsed = scenario::parseScript(
      std::get<scenario::SourceFile>(scenario::loadText(path)),
      [&unit](const unit::Action& action) { return scenario::findActionFault(unit, action); });
  return std::get<scenario::Script>(std::move(parsed));
}

/// Plays until the script is done or `each_tick`, asked before what is due at the tick, says false.
/// `each_act` is told of each act before it is done.
inline void playGood(LiveRun& live, scenario::ScriptRunner& runner,
                     const std::function<bool()>& each_tick,
                     const std::function<void(const unit::Action&)>& each_act = {}) {
  while (!runner.isDone() && !runner.fault()) {
    if (!each_tick()) return;
    for (const auto& due : runner.advance(live.frame())) {
      if (each_act) each_act(due.action);
      const Taken taken = live.take(due.action);
      if (taken.fault) ADD_FAILURE() << *taken.fault;
    }
    live.advance(1);
  }
  if (runner.fault()) ADD_FAILURE() << scenario::toText(*runner.fault());
}

}  // namespace cabwright::session
