// SPDX-License-Identifier: GPL-3.0-or-later
// A small scenario as texts, and something to do in it: enough to be run, marked and run again.
#pragma once

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "sample_session.h"
#include "session/marking_witness.h"
#include "session/run.h"
#include "session/situation.h"

namespace cabwright::session {

inline const std::string kSampleScenario = R"(title = "Handbrake"
purpose = "To try the session"
summary = "She stands."
vehicle = "plain"
route = "line"
seed = 7
[conditions]
temperature = "8 C"
stood_hours = 10
[start]
place = "cab1"
[[hidden]]
item = "end2.hoses"
condition = "hanging"
[[event]]
who = "guard"
at = "1 s"
do = ["ring bell 2"]
[[fault]]
fault = "vacuum.train_pipe_leak"
size = "2 mm"
at = "3 s"
[marking]
pass_mark = "50 %"
phases = ["cab"]
[[rule]]
id = "pawl"
phase = "cab"
title = "Lift the pawl before turning the wheel"
reason = "It does not turn back with the pawl in."
kind = "precedence"
a = "did set cab1.pawl out"
b = "did set cab1.handbrake off"
class = "T"
weight = 2
[[rule]]
id = "gear"
phase = "cab"
title = "Leave the gear alone"
reason = "She may drive off."
kind = "absence"
a = "did set cab1.gear *"
class = "C"
weight = 1
tolerance = "none: it is touched or it is not"
)";

inline std::vector<SourceText> sampleSources() {
  return {{"scenario", "sample/scenario.toml", kSampleScenario},
          {"vehicle", "plain", "title = \"Plain\"\n"},
          {"route", "line", "title = \"Test line\"\n[[grade]]\nfrom = 0\nslope = \"level\"\n"}};
}

inline Situation sampleSituation() {
  auto read = readSituation(sampleSources());
  if (const auto* faults = std::get_if<scenario::FileFaults>(&read))
    for (const auto& fault : *faults) ADD_FAILURE() << scenario::toText(fault);
  return std::get<Situation>(read);
}

struct Deed {
  std::int64_t tick;
  std::string text;
};

/// Goes the whole way and stops before `last_tick` has passed; nothing is finished or closed.
inline void perform(Run& run, const std::vector<Deed>& deeds, std::int64_t last_tick) {
  std::size_t next = 0;
  while (true) {
    for (; next < deeds.size() && deeds[next].tick == run.tick(); ++next) {
      const auto action = std::get<unit::Action>(unit::parseAction(deeds[next].text));
      const Taken taken = run.take(action);
      if (taken.fault) ADD_FAILURE() << *taken.fault;
    }
    if (run.tick() == last_tick) return;
    run.advance();
  }
}

inline const std::vector<Deed> kGoodDeeds{{120, "set cab1.pawl out"},
                                          {253, "set cab1.handbrake off"},
                                          {253, "say call_warning"},
                                          {600, "set cab1.handbrake on"}};

/// Records a whole run and gives the sheet that was printed at its end.
inline marking::MarkSheet record(const std::filesystem::path& file, const std::vector<Deed>& deeds,
                                 std::int64_t last_tick = 915, bool closes = true,
                                 const std::string& trainee_number = {}) {
  const Situation situation = sampleSituation();
  const scenario::Setup setup = scenario::makeSetup(situation.loaded, 7);
  SessionHeader header = makeHeader(situation, 7, "0.1.0");
  header.people = {{"trainee", "P. Example"}};
  header.trainee_number = trainee_number;
  Recorder recorder(file, header);
  MarkingWitness marking(makeTerms(situation, setup));
  Run run(setup);
  run.addWitness(marking);
  run.addWitness(recorder);
  run.begin();
  perform(run, deeds, last_tick);
  marking.finish(run.tick());
  marking::SheetHead head = makeHead(situation, header);
  head.last_tick = run.tick();
  marking::MarkSheet sheet = marking.makeSheet(head);
  if (closes) recorder.close(makeClosing(run.tick(), "finished", sheet));
  return sheet;
}

}  // namespace cabwright::session
