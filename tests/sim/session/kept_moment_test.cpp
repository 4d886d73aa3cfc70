// SPDX-License-Identifier: GPL-3.0-or-later
// A moment kept as a file and begun again goes on as the run did from which it was taken.
#include "session/kept_moment.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "scenario/draft_text.h"
#include "scenario/scenario_writer.h"
#include "session/rule_reader.h"
#include "shipped_run.h"
#include "unit/unit_start_of.h"

namespace cabwright::session {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using S = scenario::DraftSection;

scenario::LoadedScenario parsed(const std::string& text) {
  const scenario::FolderLibrary library(shippedFolder());
  auto read = scenario::parseScenario({"scenario.toml", text}, library, findRuleFaults);
  if (const auto* faults = std::get_if<scenario::FileFaults>(&read)) {
    for (const auto& fault : *faults) ADD_FAILURE() << scenario::toText(fault);
    return {};
  }
  return std::get<scenario::LoadedScenario>(std::move(read));
}

Run runOf(const scenario::LoadedScenario& loaded) {
  return Run(scenario::makeSetup(loaded, loaded.scenario.seed));
}

/// Plays good.txt of an exercise and hands out a copy of the run at each of these shares of it.
std::vector<Run> momentsOf(const Situation& situation, const std::string& name,
                           const std::vector<double>& shares) {
  std::vector<Run> all;
  std::int64_t end = 0;
  for (const bool keep : {false, true}) {
    LiveOptions options;
    options.mode = scenario::Mode::kPractice;
    LiveRun live(situation, options);
    scenario::ScriptRunner runner(goodScript(name, live.unit()));
    std::size_t next = 0;
    playGood(live, runner, [&] {
      if (keep && next < shares.size() &&
          static_cast<double>(live.tick()) >= shares[next] * static_cast<double>(end)) {
        all.push_back(live.run().copyAlone());
        ++next;
      }
      return true;
    });
    end = live.tick();
  }
  return all;
}

struct Gauge {
  const char* name;
  double most;  ///< allowed difference
};
constexpr Gauge kGauges[] = {{"cab1.air", 0.02},          {"cab1.train_pipe", 0.02},
                             {"cab1.release_pipe", 0.02}, {"cab1.speed", 0.02},
                             {"cab1.rpm1", 1.0},          {"cab1.rpm2", 1.0},
                             {"engine1.oil_gauge", 0.1},  {"true.engine1.coolant_c", 0.01},
                             {"cupboard.volts", 0.01},    {"true.engine1.fuel_kg", 0.001}};

TEST(KeptMoment, GoesOnAsTheRunDid) {
  for (const std::string name : {"cold-preparation", "hill-start"}) {
    const Situation situation = shippedSituation(name);
    for (session::Run& run :
         momentsOf(situation, name, {0.0, 0.2, 0.4, 0.6, 0.75, 0.85, 0.9, 0.95, 1.0})) {
      const KeptMoment kept = calcDraftFrom(run, situation.loaded, "Kept");
      session::Run again = runOf(parsed(scenario::writeDraft(kept.draft)));
      const double at_s = static_cast<double>(run.tick()) / 100.0;
      const double mph = run.frame()[unit::Signal::kCab1Speed];
      for (int k = 0; k < 6000; ++k) {
        run.advance();
        again.advance();
      }
      std::string line = fmt::format("{} at {:.0f} s, {:.1f} mph:", name, at_s, mph);
      for (const Gauge& gauge : kGauges) {
        const auto signal = unit::findSignal(gauge.name);
        ASSERT_TRUE(signal.has_value()) << gauge.name;
        const double was = run.frame()[*signal], is = again.frame()[*signal];
        line += fmt::format(" {} {:.4g} ({:+.2g})", gauge.name, was, is - was);
        EXPECT_NEAR(is, was, gauge.most) << line;
      }
      fmt::print("{}\n", line);
    }
  }
}

// What is a start condition is kept whole: the start of a unit that begins so is the same one.
TEST(KeptMoment, TheStartOfAStartIsTheSame) {
  const Situation situation = shippedSituation("cold-preparation");
  double worst = 0;
  for (const session::Run& run :
       momentsOf(situation, "cold-preparation", {0.0, 0.3, 0.6, 0.8, 0.9, 0.97})) {
    const unit::UnitStart start = unit::calcStartOf(run.unit());
    const unit::Unit again(run.unit().plant().parameters(), run.unit().route(), start);
    const unit::UnitStart once_more = unit::calcStartOf(again);
    for (const plant::StartInfo& info : plant::startTable()) {
      const double a = info.of(start.plant), b = info.of(once_more.plant);
      const double scale = std::max({std::abs(a), std::abs(b), 1.0});
      // Not said and said as it would be anyhow is the same.
      if (a == plant::kUsual || b == plant::kUsual) continue;
      worst = std::max(worst, std::abs(a - b) / scale);
      EXPECT_NEAR(a, b, 1e-9 * scale) << info.name << " at " << run.tick();
    }
    const auto words = [](const std::vector<unit::Setting>& all) {
      std::string text;
      for (const unit::Setting& s : all) text += s.name + "=" + s.value + " ";
      return text;
    };
    EXPECT_EQ(words(once_more.controls), words(start.controls));
    EXPECT_EQ(words(once_more.objects), words(start.objects));
    EXPECT_EQ(once_more.place, start.place);
  }
  fmt::print("start of a start: {:.1e} apart at most\n", worst);
}

const std::string kBase = R"(title = "T"
purpose = "P"
summary = "S"
vehicle = "two-engine-unit"
route = "quavelow-branch"
seed = 3
[conditions]
weather = "rain"
temperature = "8 C"
rail = "wet"
dark = true
[start]
place = "cab1"
main_psi = 60
[start.parameters]
vacuum.train_leak_c = 0.2
[people]
guard = false
[[hidden]]
item = "end2.hoses"
condition = "hanging"
[[hidden]]
instrument = "cab1.air"
condition = "offset 4"
[[draw]]
name = "lamp"
from = [{ item = "end2.tail_lamp", condition = "dead" }]
[[fault]]
fault = "vacuum.train_pipe_leak"
size = "2 mm"
[[fault]]
fault = "air.main_leak"
at = "3 min"
ramp = "20 s"
until = "10 min"
[[fault]]
fault = "battery.load_left_on"
until = "30 s"
[[event]]
who = "signaller"
at = "20 s"
do = ["set signal.QS1 clear"]
[[event]]
who = "signaller"
at = "5 min"
do = ["set signal.QS1 danger"]
[[event]]
who = "scenario"
when = "cab1.handbrake < 0.5"
after = "4 s"
do = ["condition engine1.people passing"]
)";

TEST(KeptMoment, SaysWhatIsThereAndWhatIsStillToCome) {
  const scenario::LoadedScenario loaded = parsed(kBase);
  session::Run run = runOf(loaded);
  for (int k = 0; k < 6000; ++k) run.advance();
  const KeptMoment kept = calcDraftFrom(run, loaded, "After a minute");
  const std::string text = scenario::writeDraft(kept.draft);
  for (const char* said :
       {"title = \"After a minute\"\n", "weather = \"rain\"\n", "temperature = \"8 C\"\n",
        "rail = \"wet\"\n", "dark = true\n", "place = \"cab1\"\n", "vacuum.train_leak_c = 0.2\n",
        "guard = false\n", "item = \"end2.hoses\"\ncondition = \"hanging\"\n",
        "instrument = \"cab1.air\"\ncondition = \"offset 4\"\n",
        "item = \"end2.tail_lamp\"\ncondition = \"dead\"\n",
        "fault = \"vacuum.train_pipe_leak\"\nsize = \"2 mm\"\n",
        "at = \"2 min\"\nramp = \"20 s\"\nuntil = \"9 min\"\n",
        "at = \"0 s\"\ndo = [\"set signal.QS1 clear\"]\n",
        "at = \"4 min\"\ndo = [\"set signal.QS1 danger\"]\n",
        "when = \"cab1.handbrake < 0.5\"\nafter = \"4 s\"\n"}) {
    EXPECT_THAT(text, HasSubstr(said)) << text;
  }
  for (const char* gone : {"[[draw]]", "load_left_on", "stood_hours", "end2.hose ="}) {
    EXPECT_EQ(text.find(gone), std::string::npos) << text;
  }
  EXPECT_TRUE(kept.not_kept.empty()) << kept.not_kept.front();
  session::Run again = runOf(parsed(text));
  run.advance();
  again.advance();
  for (const unit::ItemInfo& info : unit::itemTable())
    EXPECT_EQ(again.unit().presentCondition(info.id), run.unit().presentCondition(info.id))
        << info.name;
}

TEST(KeptMoment, TellsWhatAFileCannotSay) {
  const scenario::LoadedScenario loaded = parsed(kBase);
  session::Run run = runOf(loaded);
  for (int k = 0; k < 19000; ++k) run.advance();  // ten seconds into the ramp
  (void)run.take({unit::Actor::kTrainee, "go", "side1", ""});
  run.advance();
  const KeptMoment kept = calcDraftFrom(run, loaded, "Half way");
  EXPECT_THAT(kept.not_kept, Contains(HasSubstr("'air.main_leak' was growing")));
  EXPECT_THAT(kept.not_kept, Contains(HasSubstr("on the way")));
}

TEST(KeptMoment, IsPutIntoADraftAndLeavesItsHeadAndMarking) {
  const Situation situation = shippedSituation("defect-found");
  auto read = scenario::readDraft({"", situation.loaded.sources[0].text});
  auto draft = std::get<scenario::Draft>(read);
  const scenario::Draft before = draft;
  session::Run run = runOf(situation.loaded);
  for (int k = 0; k < 1000; ++k) run.advance();
  (void)putMoment(draft, run, situation.loaded);
  for (const S kept : {S::kHead, S::kMarking, S::kGuide})
    EXPECT_EQ(draft.table(kept), before.table(kept));
  EXPECT_EQ(draft.list(S::kRule), before.list(S::kRule));
  EXPECT_EQ(draft.list(S::kHidden), before.list(S::kHidden));
  const std::string text = scenario::writeDraft(draft);
  for (const char* comment : {"# A defect that stops the unit, found on the last walk",
                              "# A drip and a dent go with the unit", "# They would let it go"})
    EXPECT_THAT(text, HasSubstr(comment));
  session::Run again = runOf(parsed(text));
  for (int k = 0; k < 1000; ++k) {
    run.advance();
    again.advance();
  }
  EXPECT_NEAR(again.frame()[unit::Signal::kCab1Air], run.frame()[unit::Signal::kCab1Air], 1e-3);
}

// A scenario changed as a value, and the same changes in its draft, written and read: one world.
TEST(KeptMoment, SavedAndInMemoryRunTheSame) {
  const Situation situation = shippedSituation("cold-preparation");
  scenario::LoadedScenario in_memory = situation.loaded;
  auto read = scenario::readDraft({"", situation.loaded.sources[0].text});
  auto draft = std::get<scenario::Draft>(read);

  in_memory.scenario.start.controls.push_back({"cab2.pawl", "out"});
  draft.table(S::kControls).set("cab2.pawl", "out");
  in_memory.scenario.start.plant.main_psi = 31.25;
  draft.table(S::kStart).set("main_psi", 31.25);
  in_memory.scenario.hidden.push_back({unit::Setting{"end2.hoses", "hanging"}, std::nullopt});
  scenario::DraftTable hidden;
  hidden.set("item", "end2.hoses");
  hidden.set("condition", "hanging");
  draft.list(S::kHidden).push_back(hidden);
  fault::ArmedFault armed;
  armed.id = "air.main_leak";
  armed.spec = fault::findFault("air.main_leak");
  armed.size = armed.spec->size.usual;
  armed.from.ticks = 9000;
  armed.ramp_ticks = 2000;
  in_memory.scenario.faults.push_back(armed);
  scenario::DraftTable leak;
  leak.set("fault", armed.spec->name);
  leak.set("at", scenario::timeText(armed.from.ticks));
  leak.set("ramp", scenario::timeText(armed.ramp_ticks));
  draft.list(S::kFault).push_back(leak);
  scenario::Happening bell;
  bell.at.ticks = 6000;
  bell.actions = {{unit::Actor::kGuard, "ring", "bell", "2"}};
  in_memory.scenario.happenings.push_back(bell);
  scenario::DraftTable event;
  event.set("who", "guard");
  event.set("at", "1 min");
  event.set("do", std::vector<std::string>{"ring bell 2"});
  draft.list(S::kEvent).push_back(event);

  session::Run memory = runOf(in_memory), saved = runOf(parsed(scenario::writeDraft(draft)));
  scenario::ScriptRunner script(goodScript("cold-preparation", memory.unit()));
  int compared = 0;
  for (int k = 0; k < 30000; ++k) {
    for (const auto& due : script.advance(memory.frame())) {
      ASSERT_FALSE(memory.take(due.action).fault);
      ASSERT_FALSE(saved.take(due.action).fault);
    }
    memory.advance();
    saved.advance();
    if (k % 100 != 99) continue;
    ASSERT_EQ(saved.hash(), memory.hash()) << "at second " << (k + 1) / 100;
    ++compared;
  }
  EXPECT_EQ(compared, 300);
  EXPECT_NE(runOf(situation.loaded).hash(), runOf(in_memory).hash());
}

}  // namespace
}  // namespace cabwright::session
