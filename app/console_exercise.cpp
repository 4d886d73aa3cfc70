// SPDX-License-Identifier: GPL-3.0-or-later
#include "console_exercise.h"

#include <fmt/format.h>

#include <chrono>

#include "console_stop.h"
#include "scenario/arm_words.h"
#include "unit/nearest_name.h"

namespace cabwright::console {
namespace {

constexpr std::int64_t kAfterglowTicks = session::kTicksPerSecond;
constexpr std::int64_t kLongestTicks = 24 * 3600 * session::kTicksPerSecond;
constexpr std::int64_t kTicksBetweenLooks = 256;  // at the clock and at the signals

double secondsNow() {
  const auto now = std::chrono::steady_clock::now().time_since_epoch();
  return std::chrono::duration<double>(now).count();
}

void sayUnknownScenario(const Context& context, const std::string& word) {
  const std::vector<std::string> names = context.places.exercises();
  const std::vector<std::string_view> known(names.begin(), names.end());
  std::string text = unit::unknownWord("exercise", word, known);
  // Nowhere else is there a list of them to look into, however many they are.
  if (!known.empty() && text.find("; ") == std::string::npos)
    text += fmt::format("; shipped: {}", fmt::join(known, ", "));
  context.output.fault("cabwright-console: no such file or folder, and " + text);
}

std::optional<scenario::Script> loadScript(const Context& context, const std::string& word,
                                           const std::string& scenario, const unit::Unit& unit) {
  const auto path = context.places.findScript(word, scenario);
  if (!path) {
    context.output.fault(word + ": there is no such script, here or beside the scenario");
    return std::nullopt;
  }
  auto file = scenario::loadText(path->string());
  if (const auto* fault = std::get_if<scenario::FileFault>(&file)) {
    sayFaults(context, {*fault});
    return std::nullopt;
  }
  auto script = scenario::parseScript(
      std::get<scenario::SourceFile>(file),
      [&unit](const auto& action) { return scenario::findActionFault(unit, action); },
      scenario::neighboursOf(*path));
  if (const auto* faults = std::get_if<scenario::FileFaults>(&script)) {
    sayFaults(context, *faults);
    return std::nullopt;
  }
  return std::get<scenario::Script>(std::move(script));
}

}  // namespace

void sayFaults(const Context& context, const scenario::FileFaults& faults) {
  for (const scenario::FileFault& fault : faults) context.output.fault(scenario::toText(fault));
}

std::optional<session::Situation> loadSituation(const Context& context,
                                                const std::string& scenario_word) {
  const auto path = context.places.findScenario(scenario_word);
  if (!path) {
    sayUnknownScenario(context, scenario_word);
    return std::nullopt;
  }
  auto loaded = session::loadSituation(path->string(), context.places.findScenarios().value_or(""));
  if (const auto* faults = std::get_if<scenario::FileFaults>(&loaded)) {
    sayFaults(context, *faults);
    return std::nullopt;
  }
  return std::get<session::Situation>(std::move(loaded));
}

std::optional<Exercise> loadExercise(const Context& context, const std::string& scenario_word,
                                     const std::string& script_word,
                                     std::optional<std::uint64_t> seed) {
  auto situation = loadSituation(context, scenario_word);
  if (!situation) return std::nullopt;
  auto setup =
      scenario::makeSetup(situation->loaded, seed.value_or(situation->loaded.scenario.seed));
  const unit::Unit unit(setup.parameters, setup.route, setup.start);
  const std::string scenario = context.places.findScenario(scenario_word)->string();
  auto script = loadScript(context, script_word, scenario, unit);
  if (!script) return std::nullopt;
  return Exercise{std::move(*situation), std::move(setup), std::move(*script)};
}

namespace {

// The fault of the first act whose words mean nothing here; the script's words are checked before,
// so there is none.
std::optional<scenario::FileFault> takeDue(session::Run& run, scenario::ScriptRunner& runner,
                                           const EachAct& each_act) {
  for (const auto& due : runner.advance(run.frame())) {
    const std::int64_t tick = run.tick();
    const session::Taken taken = run.take(due.action);
    if (taken.fault) {
      return scenario::FileFault{due.at, *taken.fault};
    }
    if (each_act) each_act(tick, due, taken);
  }
  return runner.fault();
}

}  // namespace

PlayEnd play(session::Run& run, scenario::Script script, const EachTick& each_tick,
             const EachAct& each_act) {
  scenario::ScriptRunner runner(std::move(script));
  std::int64_t last_tick = -1;  // known once the script is done
  while (true) {
    if (const auto fault = takeDue(run, runner, each_act))
      return {"stopped: the script cannot go on", 0, fault};
    if (run.failed()) return {"stopped: the machine could not be calculated", 0, std::nullopt};
    if (last_tick < 0 && runner.isDone()) last_tick = run.tick() + kAfterglowTicks;
    const bool wanted = each_tick(run);
    if (run.tick() == last_tick || !wanted) return {"finished", 0, std::nullopt};
    if (run.tick() >= kLongestTicks) return {"stopped after a day", 0, std::nullopt};
    if (run.tick() % kTicksBetweenLooks == 0 && findStopSignal() != 0)
      return {"stopped by a signal", findStopSignal(), std::nullopt};
    run.advance();
  }
}

void sayEnd(const Context& context, const PlayEnd& end, const session::Run& run) {
  if (end.fault) sayFaults(context, {*end.fault});
  if (run.failed())
    context.output.fault(
        fmt::format("cabwright-console: the machine could not be calculated any further at {}; "
                    "please report this with its scenario and script",
                    toClock(run.tick())));
  if (end.stop_signal != 0)
    context.output.remark(fmt::format("stopped by a signal at {}", toClock(run.tick())));
}

ProgressLine::ProgressLine(Output& output) : output_(output), started_s_(secondsNow()) {}

void ProgressLine::show(std::int64_t tick, std::int64_t last_tick) {
  if (!output_.showsProgress() || tick % kTicksBetweenLooks != 0) return;
  const double now_s = secondsNow() - started_s_;
  if (now_s - shown_s_ < 0.2) return;
  shown_s_ = now_s;
  const double speed = static_cast<double>(tick) / 100.0 / now_s;
  const std::string end = last_tick > 0 ? " of " + toClock(last_tick) : "";
  output_.progress(fmt::format("{}{}   {:.0f} times real time", toClock(tick), end, speed));
}

}  // namespace cabwright::console
