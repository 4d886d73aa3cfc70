// SPDX-License-Identifier: GPL-3.0-or-later
// The twenty-minute run against other people's integrators and against other steps: same signals,
// same events at the same moments.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

#include "cvode_step.h"
#include "golden_script.h"
#include "key_signals.h"
#include "rk4_step.h"
#include "vehicle_text.h"

namespace cabwright::testing {
namespace {

const GoldenRun& ownRun() {
  static const GoldenRun run = runGolden(plant::makeDopri5());
  return run;
}
const GoldenRun& tightRun() {
  static const GoldenRun run = runGolden(plant::makeDopri5(1e-4));
  return run;
}

std::string nameOf(const plant::PlantEvent& e) {
  return fmt::format("{} {} {}", e.what, e.line, e.index);
}

// Events of either run that have no partner of the same name within the allowance in the other.
struct EventMatch {
  std::size_t matched = 0, alone = 0;
  double latest_s = 0;  ///< largest distance of a pair
  std::vector<std::string> strangers;
};

EventMatch matchEvents(const std::vector<plant::PlantEvent>& a,
                       const std::vector<plant::PlantEvent>& b, double within_s) {
  std::map<std::string, std::vector<double>> open;
  for (const plant::PlantEvent& e : b) open[nameOf(e)].push_back(e.time_s);
  EventMatch m;
  for (const plant::PlantEvent& e : a) {
    std::vector<double>& times = open[nameOf(e)];
    const auto best = std::min_element(times.begin(), times.end(), [&](double p, double q) {
      return std::abs(p - e.time_s) < std::abs(q - e.time_s);
    });
    if (best == times.end() || std::abs(*best - e.time_s) > within_s) {
      ++m.alone;
      m.strangers.push_back(fmt::format("{:.4f} {} (first run)", e.time_s, nameOf(e)));
      continue;
    }
    ++m.matched;
    m.latest_s = std::max(m.latest_s, std::abs(*best - e.time_s));
    times.erase(best);
  }
  for (const auto& [name, times] : open) {
    for (double t : times) {
      ++m.alone;
      m.strangers.push_back(fmt::format("{:.4f} {} (second run)", t, name));
    }
  }
  return m;
}

// What two runs may differ by: every event of either has its partner within `event_s`, none is left
// over. Methods that step finely, whoever wrote them, agree far inside the millisecond asked for.
// The plant's own steps do so within two (1.5 are measured), but for one event at most within five
// (4 are measured): where a freewheel's torque creeps through zero as the engine settles, an error
// of 1e-4 of its range is milliseconds of time. The other limits are some three times what is
// measured.
struct Allowance {
  double p99 = 0, event_s = 0, late_s = 0;
};
constexpr Allowance kOwn{3e-4, 5e-3, 2e-3}, kFine{3e-5, 5e-4, 5e-4};
constexpr std::size_t kMostLate = 2;  // one event, counted in either run
// Whether teeth meet a gap after kilometres of running hangs on millimetres: a true decision, which
// no integration settles. The dogs must drop in all the same, within the time a shaft takes to
// turn.
constexpr double kDogsWithinS = 3.0;

std::vector<plant::PlantEvent> pick(const std::vector<plant::PlantEvent>& all, bool drops) {
  std::vector<plant::PlantEvent> some;
  for (const plant::PlantEvent& e : all) {
    const bool dog = e.what.substr(0, 3) == "dog";
    if (drops ? e.what == "dog drops in" : !dog) some.push_back(e);
  }
  return some;
}

void expectSame(const std::string& name, const GoldenRun& run, const GoldenRun& tight,
                const Allowance& allowed) {
  const SignalError e = compareRuns(run.rows, tight.rows);
  const EventMatch m =
      matchEvents(pick(run.events, false), pick(tight.events, false), allowed.event_s);
  const EventMatch dogs =
      matchEvents(pick(run.events, true), pick(tight.events, true), kDogsWithinS);
  std::printf(
      "ORACLE | %s | p99 %.1e (%s), most %.1e | %zu events alike, latest %.2f ms, %zu not\n",
      name.c_str(), e.worst_p99, std::string(keySignalNames()[e.worst_signal]).c_str(), e.worst,
      m.matched, m.latest_s * 1e3, m.alone);
  for (const std::string& s : m.strangers) std::printf("ORACLE |   %s\n", s.c_str());
  EXPECT_LT(e.worst_p99, allowed.p99);
  EXPECT_EQ(m.alone, 0u);
  const EventMatch late =
      matchEvents(pick(run.events, false), pick(tight.events, false), allowed.late_s);
  EXPECT_LE(late.alone, allowed.late_s < allowed.event_s ? kMostLate : 0u);
  EXPECT_EQ(dogs.alone, 0u);
  EXPECT_EQ(dogs.matched, 4u);
  EXPECT_GT(m.matched, 100u) << "the script must make things happen";
  EXPECT_EQ(run.counts.storms, 0);
}

TEST(Oracle, TheScriptUsesTheWholeMachine) {
  EXPECT_GE(countGoldenChanges(), 75u);
  std::map<std::string, int> seen;
  for (const plant::PlantEvent& e : ownRun().events) ++seen[std::string(e.what)];
  for (const char* what : {"freewheel locks", "freewheel over-runs", "drum stops", "drum turns",
                           "clutch grips", "clutch slips", "wheel held", "wheel turns",
                           "train stands", "train moves", "dog drops in", "engine at rest"}) {
    EXPECT_GT(seen[what], 0) << what;
  }
  double fastest = 0.0, lowest = 0.0;
  for (const KeyRow& row : ownRun().rows) {
    fastest = std::max(fastest, row[0]);
    lowest = std::min(lowest, row[0]);
  }
  EXPECT_GT(fastest, 15.0);
  EXPECT_LT(lowest, -3.0);
}

TEST(Oracle, OwnStepsAgreeWithTightOnes) {
  expectSame("own tolerance", ownRun(), tightRun(), kOwn);
}

TEST(Oracle, CvodeAtTightToleranceAgrees) {
  expectSame("CVODE, tolerance 1e-3 x", runGolden(makeCvode(1e-3)), tightRun(), kFine);
}

TEST(Oracle, HalvedStepsMakeTheSameEvents) {
  expectSame("steps of 10 ms at most", runGolden(makeShortened(plant::makeDopri5(), 0.010)),
             tightRun(), kFine);
  expectSame("steps of 5 ms at most", runGolden(makeShortened(plant::makeDopri5(), 0.005)),
             tightRun(), kFine);
}

TEST(Oracle, FixedFourthOrderStepsMakeTheSameEvents) {
  // Fixed steps do not shorten where the pistons of the small cylinders meet their stops.
  expectSame("rk4, 2 ms", runGolden(makeRk4(0.002)), tightRun(), {kFine.p99, 1e-3, 1e-3});
}

TEST(Oracle, AnotherVehicleAgreesToo) {
  const auto [name, ambient_c] = kGoldenVehicles[1];
  const plant::Parameters p = shippedVehicle(name);
  const GoldenRun tight = runGolden(plant::makeDopri5(1e-4), p, ambient_c);
  const GoldenRun own = runGolden(plant::makeDopri5(), p, ambient_c);
  expectSame(fmt::format("{}, own tolerance", name), own, tight, kOwn);
  expectSame(fmt::format("{}, CVODE", name), runGolden(makeCvode(1e-3), p, ambient_c), tight,
             kFine);
}

TEST(Oracle, LastBitsOfTheStartDecideNothing) {
  plant::World w(plant::Parameters(), goldenLine(), goldenStart(), plant::makeDopri5());
  for (std::size_t k = plant::kSpeeds; k < plant::kFuelJ; ++k) {
    if (w.x[k] != 0.0) w.x[k] = std::nextafter(w.x[k], 1e9);
  }
  w.restart = true;
  GoldenScript script;
  GoldenRun run;
  for (std::int64_t tick = 0; tick < kGoldenTicks; ++tick) {
    w.advance(script.advanceTo(tick));
    run.events.insert(run.events.end(), w.events.begin(), w.events.end());
    if (tick % 10 == 0) run.rows.push_back(calcKeyRow(w));
  }
  const SignalError e = compareRuns(run.rows, ownRun().rows);
  const EventMatch m = matchEvents(pick(run.events, false), pick(ownRun().events, false), 1e-3);
  std::printf("ORACLE | one ulp more everywhere | p99 %.1e, most %.1e, %zu events not alike\n",
              e.worst_p99, e.worst, m.alone);
  for (const std::string& s : m.strangers) std::printf("ORACLE |   %s\n", s.c_str());
  EXPECT_LT(e.worst_p99, 1e-4);
  EXPECT_EQ(m.alone, 0u);
}

}  // namespace
}  // namespace cabwright::testing
