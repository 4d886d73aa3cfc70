// SPDX-License-Identifier: GPL-3.0-or-later
// check: reads files strictly and lists all their faults.
#include <algorithm>
#include <filesystem>
#include <memory>
#include <set>
#include <sstream>

#include "console_exercise.h"
#include "scenario/arm_words.h"
#include "scenario/route_file.h"
#include "scenario/vehicle.h"
#include "session/rule_reader.h"

namespace cabwright::console {
namespace fs = std::filesystem;
namespace {

using scenario::FileFaults;
using scenario::SourceFile;

enum class Kind { kScenario, kVehicle, kRoute, kRules, kGuide, kScript, kUnknown };

// Whether a line of the text begins with one of these, spaces left out.
// "air", "engine" ...: the first words of the numbers' names, without the figure.
std::set<std::string> vehicleGroups() {
  std::set<std::string> groups;
  const auto add = [&](const std::string& name) {
    std::string group = name.substr(0, name.find('.'));
    while (!group.empty() && group.back() >= '0' && group.back() <= '9') group.pop_back();
    groups.insert(group);
  };
  for (const auto& info : plant::parameterTable()) add(std::string(info.name));
  for (const auto& info : unit::unitParameterTable()) add(std::string(info.name));
  return groups;
}

bool hasLine(const std::string& text, std::initializer_list<std::string_view> beginnings) {
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    std::erase_if(line, [](char c) { return c == ' ' || c == '\t'; });
    if (std::ranges::any_of(beginnings, [&](auto begins) { return line.starts_with(begins); }))
      return true;
  }
  return false;
}

// By folder and name where these are the shelf's own, else by what is in it: a file that is broken
// must be recognised as well, so nothing is parsed for this.
// A group of the numbers a vehicle has, at the beginning of a line: [air], [engine2], air.horn_c.
bool hasNumberOfVehicle(const std::string& text) {
  const std::set<std::string> groups = vehicleGroups();
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    std::erase_if(line, [](char c) { return c == ' ' || c == '\t'; });
    const std::size_t from = line.starts_with('[') ? 1 : 0;
    const std::size_t end = line.find_first_of(".]", from);
    if (end == std::string::npos) continue;
    std::string group = line.substr(from, end - from);
    while (!group.empty() && group.back() >= '0' && group.back() <= '9') group.pop_back();
    if (groups.contains(group)) return true;
  }
  return false;
}

Kind findKind(const fs::path& path, const std::string& text) {
  if (path.extension() != ".toml") return Kind::kScript;
  const std::string folder = path.parent_path().filename().string();
  if (path.filename() == "scenario.toml") return Kind::kScenario;
  if (folder == "vehicles") return Kind::kVehicle;
  if (folder == "routes") return Kind::kRoute;
  if (folder == "rules") return Kind::kRules;
  if (folder == "guides") return Kind::kGuide;
  if (hasLine(text, {"vehicle=", "route=", "[start", "[conditions", "[marking", "[[marking",
                     "[people", "[guide", "[[guide", "[[event", "[[hidden", "[[draw", "[[fault"})) {
    return Kind::kScenario;
  }
  if (hasLine(text, {"[[grade]]", "[[signal]]", "[[platform]]", "[[limit]]", "[[berth]]"}))
    return Kind::kRoute;
  if (hasLine(text, {"[[rule]]"})) return Kind::kRules;
  if (hasLine(text, {"[[step]]"})) return Kind::kGuide;
  return hasNumberOfVehicle(text) ? Kind::kVehicle : Kind::kUnknown;
}

template <class Parsed>
FileFaults faultsOf(const Parsed& parsed) {
  const auto* faults = std::get_if<FileFaults>(&parsed);
  return faults != nullptr ? *faults : FileFaults();
}

FileFaults checkRules(const SourceFile& file) {
  return faultsOf(scenario::parseRules(file, session::findRuleFaults));
}

// What is wrong with the words of an action: asked of the unit of the scenario beside the script.
// Without a scenario nobody knows the names of the line's signals.
scenario::ActionCheck makeActionCheck(const std::optional<session::Situation>& situation) {
  if (situation) {
    const scenario::Setup setup =
        scenario::makeSetup(situation->loaded, situation->loaded.scenario.seed);
    const auto unit =
        std::make_shared<const unit::Unit>(setup.parameters, setup.route, setup.start);
    return [unit](const unit::Action& action) { return scenario::findActionFault(*unit, action); };
  }
  const auto unit =
      std::make_shared<const unit::Unit>(plant::Parameters(), unit::Route(), unit::UnitStart());
  return [unit](const unit::Action& action) -> std::optional<std::string> {
    if (action.object.starts_with("signal.")) return std::nullopt;
    return scenario::findActionFault(*unit, action);
  };
}

// Line 0: the file as such.
void addFault(FileFaults& faults, const std::string& file, std::size_t line, std::string what) {
  scenario::FileFault fault;
  fault.at.file = file;
  fault.at.line = line;
  fault.at.column = line > 0 ? 1 : 0;
  fault.what = std::move(what);
  faults.push_back(std::move(fault));
}

// "# breaks: RULE" must name a rule of the scenario.
void checkBreaks(const scenario::Script& script, const session::Situation& situation,
                 FileFaults& faults) {
  if (!script.breaks) return;
  const auto& rules = situation.loaded.scenario.rules;
  if (std::ranges::any_of(rules, [&](const auto& rule) { return rule.id == *script.breaks; }))
    return;
  addFault(faults, script.name, 1,
           "the scenario beside this script has no rule '" + *script.breaks + "'");
}

// Good for looking at the machine alone, and hardly what was meant beside an exercise.
void remarkIfIdle(const scenario::Script& script, const Context& context) {
  const auto acts = [](const scenario::ScriptStep& step) { return !step.action.verb.empty(); };
  if (std::ranges::none_of(script.steps, acts))
    context.output.remark(script.name + ": nobody does anything in it, there are only waits");
}

FileFaults checkScript(const Context& context, const fs::path& path, const SourceFile& file,
                       const fs::path& shipped) {
  std::optional<session::Situation> situation;
  FileFaults faults;
  const fs::path beside = path.parent_path() / "scenario.toml";
  if (std::error_code ignored; fs::exists(beside, ignored)) {
    auto loaded = session::loadSituation(beside.string(), shipped);
    if (auto* good = std::get_if<session::Situation>(&loaded))
      situation = std::move(*good);
    else
      addFault(faults, file.name, 0, "the scenario beside this script has faults");
  }
  const auto parsed =
      scenario::parseScript(file, makeActionCheck(situation), scenario::neighboursOf(path));
  const FileFaults found = faultsOf(parsed);
  faults.insert(faults.end(), found.begin(), found.end());
  if (!faults.empty()) return faults;
  if (situation) checkBreaks(std::get<scenario::Script>(parsed), *situation, faults);
  remarkIfIdle(std::get<scenario::Script>(parsed), context);
  return faults;
}

FileFaults checkFile(const Context& context, const fs::path& path, const fs::path& shipped) {
  auto loaded = scenario::loadText(path.string());
  if (const auto* fault = std::get_if<scenario::FileFault>(&loaded)) return {*fault};
  const auto& file = std::get<SourceFile>(loaded);
  switch (findKind(path, file.text)) {
    case Kind::kScenario:
      return faultsOf(session::loadSituation(path.string(), shipped));
    case Kind::kVehicle:
      return faultsOf(scenario::parseVehicle(file));
    case Kind::kRoute:
      return faultsOf(scenario::parseRoute(path.stem().string(), file));
    case Kind::kRules:
      return checkRules(file);
    case Kind::kGuide:
      return faultsOf(scenario::parseGuide(file));
    case Kind::kUnknown: {
      FileFaults faults;
      addFault(
          faults, file.name, 0,
          "no telling what this is: nothing in it is of a scenario (vehicle, route, [start] "
          "...), a vehicle ([air], [engine1] ...), a route ([[grade]] ...), rules ([[rule]]) or a "
          "guide ([[step]])");
      return faults;
    }
    case Kind::kScript:
      return checkScript(context, path, file, shipped);
  }
  return {};
}

}  // namespace

int runCheck(const Context& context, const CheckOptions& options) {
  bool good = true;
  const fs::path shipped = context.places.findScenarios().value_or("");
  for (const std::string& word : options.files) {
    fs::path path = word;
    if (std::error_code ignored; fs::is_directory(path, ignored)) path /= "scenario.toml";
    const FileFaults faults = checkFile(context, path, shipped);
    sayFaults(context, faults);
    good = good && faults.empty();
    if (faults.empty()) context.output.putLine(path.string() + ": good");
  }
  return good ? kPassed : kBadInput;
}

}  // namespace cabwright::console
