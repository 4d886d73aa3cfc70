// SPDX-License-Identifier: GPL-3.0-or-later
#include "telling_moment.h"

#include <algorithm>
#include <array>
#include <limits>
#include <stdexcept>

#include "scenario/script.h"
#include "session/situation.h"

namespace cabwright::screens {
namespace {

namespace fs = std::filesystem;

session::Situation loadExercise(const fs::path& exercise) {
  auto loaded =
      session::loadSituation((exercise / "scenario.toml").string(), exercise.parent_path());
  if (const auto* faults = std::get_if<scenario::FileFaults>(&loaded))
    throw std::runtime_error(scenario::toText(faults->front()));
  return std::get<session::Situation>(std::move(loaded));
}

scenario::Script loadGoodScript(const fs::path& exercise) {
  const std::string path = (exercise / "good.txt").string();
  auto file = scenario::loadText(path);
  if (!std::holds_alternative<scenario::SourceFile>(file))
    throw std::runtime_error(path + " cannot be read");
  auto script =
      scenario::parseScript(std::get<scenario::SourceFile>(file), {}, scenario::neighboursOf(path));
  if (const auto* faults = std::get_if<scenario::FileFaults>(&script))
    throw std::runtime_error(scenario::toText(faults->front()));
  return std::get<scenario::Script>(std::move(script));
}

std::unique_ptr<session::LiveRun> begin(const session::Situation& situation) {
  session::LiveOptions options;
  options.mode = scenario::Mode::kPractice;
  return std::make_unique<session::LiveRun>(situation, options);
}

// How telling an act is; 0: not at all.
int calcWeight(const unit::Action& action) {
  if (action.actor != unit::Actor::kTrainee) return 0;
  if (action.verb == "judge") return action.argument.starts_with("defect") ? 3 : 0;
  constexpr std::array<const char*, 3> kSaid{"book", "decide", "say"};
  return std::ranges::find(kSaid, action.verb) != kSaid.end() ? 2 : 1;
}

struct Moment {
  int weight = 0;
  std::size_t act = 0;  ///< counted from 0 among all of the script
};

// Plays until so many acts are done, and finds the first of the greatest weight among them; of the
// least weight the last.
Moment play(session::LiveRun& run, const scenario::Script& script, std::size_t acts) {
  scenario::ScriptRunner runner(script);
  Moment best;
  for (std::size_t done = 0; done < acts && !runner.isDone();) {
    for (const auto& due : runner.advance(run.frame())) {
      if (const auto taken = run.take(due.action); taken.fault)
        throw std::runtime_error(*taken.fault);
      const int weight = calcWeight(due.action);
      if (weight > best.weight || (weight == 1 && best.weight == 1)) best = {weight, done};
      if (++done == acts) break;
    }
    if (runner.fault()) throw std::runtime_error(scenario::toText(*runner.fault()));
    run.advance(1);
  }
  return best;
}

}  // namespace

std::vector<std::string> findExercises(const fs::path& scenarios) {
  std::vector<std::string> names;
  for (const fs::directory_entry& entry : fs::directory_iterator(scenarios)) {
    if (fs::exists(entry.path() / "scenario.toml") && fs::exists(entry.path() / "good.txt"))
      names.push_back(entry.path().filename().string());
  }
  std::ranges::sort(names);
  return names;
}

std::unique_ptr<session::LiveRun> playToTellingMoment(const fs::path& exercise) {
  const session::Situation situation = loadExercise(exercise);
  const scenario::Script script = loadGoodScript(exercise);
  const Moment telling = play(*begin(situation), script, std::numeric_limits<std::size_t>::max());
  auto run = begin(situation);
  play(*run, script, telling.act + 1);
  return run;
}

}  // namespace cabwright::screens
