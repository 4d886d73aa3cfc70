// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/scenario.h"

#include <algorithm>

#include "scenario/action_words.h"
#include "scenario/arm_words.h"
#include "scenario/scenario_parts.h"
#include "unit/nearest_name.h"
#include "unit/unit.h"

namespace cabwright::scenario {

namespace {

class ScenarioReader {
 public:
  ScenarioReader(const SourceFile& file, const Library& library, const RuleCheck& check)
      : sink_(file), library_(library), check_(check) {}

  std::variant<LoadedScenario, FileFaults> read() {
    const TomlFile toml = parseToml(sink_.file(), sink_);
    TableReader root(toml.root, sink_, "a scenario", toml.broken);
    result_.sources.push_back({"scenario", sink_.file().name, sink_.file().text});
    readHead(root, draft_);
    readVehicle();
    readRoute();
    const std::size_t before = sink_.count();
    readConditions(root, draft_);
    readStart(root, draft_);
    draft_.start_is_whole = sink_.count() == before && !toml.broken;
    readHiddenThings(root, draft_);
    readPeople(root, draft_);
    readMarking(root, draft_, library_, result_.sources, others_, check_);
    readGuide(root, draft_, library_, result_.sources, others_);
    root.finish();
    checkContradictions(draft_, sink_);
    checkTogether();
    if (!sink_.isEmpty() || !others_.empty()) return allFaults();
    result_.scenario = std::move(draft_.scenario);
    return std::move(result_);
  }

 private:
  FileFaults allFaults() {
    FileFaults all = sink_.take();
    sortFaults(others_);
    all.insert(all.end(), others_.begin(), others_.end());
    return all;
  }

  // The text of a name on a shelf; what hinders is said at the place of the name.
  std::optional<SourceFile> fetch(Shelf shelf, const std::string& name, const FilePlace& at) {
    if (name.empty()) return std::nullopt;
    auto found = library_.find(shelf, name);
    if (auto* file = std::get_if<SourceFile>(&found)) {
      result_.sources.push_back({std::string(wordOf(shelf)), name, file->text});
      return std::move(*file);
    }
    const std::vector<std::string> names = library_.names(shelf);
    const bool known = std::find(names.begin(), names.end(), name) != names.end();
    const std::vector<std::string_view> views(names.begin(), names.end());
    sink_.add(at,
              known ? std::get<std::string>(found) : unit::unknownWord(wordOf(shelf), name, views));
    return std::nullopt;
  }

  void readVehicle() {
    const auto file = fetch(Shelf::kVehicles, draft_.scenario.vehicle, draft_.vehicle_at);
    if (!file) return;
    auto parsed = parseVehicle(*file);
    if (auto* faults = std::get_if<FileFaults>(&parsed)) {
      others_.insert(others_.end(), faults->begin(), faults->end());
      return;
    }
    result_.vehicle = std::get<Vehicle>(std::move(parsed));
    has_vehicle_ = true;
  }

  void readRoute() {
    const auto file = fetch(Shelf::kRoutes, draft_.scenario.route, draft_.route_at);
    if (!file) return;
    auto parsed = parseRoute(draft_.scenario.route, *file);
    if (auto* faults = std::get_if<FileFaults>(&parsed)) {
      others_.insert(others_.end(), faults->begin(), faults->end());
      return;
    }
    result_.route = std::get<RouteFile>(std::move(parsed));
    has_route_ = true;
  }

  // What needs vehicle and route: numbers that fit each other, the start, the words of actions.
  void checkTogether() {
    checkActions();
    const bool is_placed = !has_route_ || placeAtBerth();
    if (!has_vehicle_ || !has_route_ || !changeVehicle()) return;
    makeStart();
    // What is left out of a start because it is wrong may make the rest look wrong.
    if (!draft_.start_is_whole || !is_placed) return;
    for (const std::string& what : unit::findStartFaults(draft_.scenario.start)) {
      sink_.add(draft_.start_at, what);
    }
  }

  // False if the berth is not there.
  bool placeAtBerth() {
    if (!draft_.berth) return true;
    std::vector<std::string_view> names;
    for (const Berth& berth : result_.route.berths) {
      if (berth.name == *draft_.berth) {
        berth_m_ = berth.at_m;
        return true;
      }
      names.push_back(berth.name);
    }
    sink_.add(draft_.berth_at, unit::unknownWord("berth", *draft_.berth, names));
    return false;
  }

  // Numbers of the vehicle that this scenario has otherwise; false if they do not fit together.
  bool changeVehicle() {
    plant::Parameters changed = result_.vehicle.plant;
    unit::UnitParameters unit = result_.vehicle.unit;
    applyParameters(draft_.parameters, changed, unit);
    changed.train.adhesion_factor *= draft_.rail_at ? draft_.rail_factor : 1.0;
    for (const std::string& what : plant::findParameterFaults(changed)) {
      sink_.add(draft_.parameters.empty() ? draft_.rail_at.value_or(draft_.start_at)
                                          : draft_.parameters.front().at,
                what);
      return false;
    }
    for (const plant::ParameterInfo& info : plant::parameterTable()) {
      if (info.of(changed) != info.of(result_.vehicle.plant)) {
        draft_.scenario.plant_parameters.push_back({info.name, info.of(changed)});
      }
    }
    draft_.scenario.start.parameters = unitSettings(unit);
    plant_ = changed;
    return true;
  }

  void makeStart() {
    Scenario& s = draft_.scenario;
    if (s.stood_hours) {
      s.start.plant =
          plant::StartConditions::afterStanding(*s.stood_hours, draft_.ambient_c, plant_);
    } else {
      s.start.plant.ambient_c = draft_.ambient_c;
      for (plant::LineStart& line : s.start.plant.line) {
        line.coolant_c = line.oil_c = line.box_oil_c = line.coupling_c = draft_.ambient_c;
      }
    }
    if (berth_m_) s.start.plant.position_m = *berth_m_;
    s.start.assessment = s.mode == Mode::kAssessment;
    // Those of both lines or cabs first, then those of one.
    for (const bool exact : {false, true}) {
      for (const StartEntry& e : draft_.numbers) {
        if ((e.infos.size() == 1) != exact) continue;
        for (const plant::StartInfo* info : e.infos) info->of(s.start.plant) = e.value;
      }
    }
  }

  void checkActions() {
    const unit::Unit unit(plant::Parameters{}, result_.route.route, unit::UnitStart{});
    const std::vector<std::optional<std::string>> arms = findArmFaults(draft_);
    for (std::size_t k = 0; k < draft_.actions.size(); ++k) {
      const PlacedAction& a = draft_.actions[k];
      if (sink_.isFull()) return;
      // Which signals there are only a route can say.
      if (!has_route_ && a.action.object.starts_with("signal.")) continue;
      auto wrong = findActionFault(unit, a);
      if (!wrong) wrong = arms[k];
      if (!wrong) continue;
      const std::string_view word = findBlamedWord(a.text, a.action, *wrong);
      const auto offset = static_cast<std::size_t>(word.data() - a.text.data());
      if (offset < a.inside.size()) {
        sink_.add(a.inside[offset].line, a.inside[offset].column, *wrong);
      } else {
        sink_.add(a.at, *wrong);
      }
    }
  }

  // Of somebody unknown: what is wrong whoever it was.
  static std::optional<std::string> findActionFault(const unit::Unit& unit, const PlacedAction& a) {
    auto wrong = scenario::findActionFault(unit, a.action);
    if (!wrong) wrong = findEventFault(a.action);
    if (!wrong || a.knows_actor) return wrong;
    unit::Action by_another = a.action;
    for (const unit::Actor actor :
         {unit::Actor::kGuard, unit::Actor::kSignaller, unit::Actor::kInstructor}) {
      by_another.actor = actor;
      if (!scenario::findActionFault(unit, by_another)) return std::nullopt;
    }
    return wrong;
  }

  static std::optional<std::string> findEventFault(const unit::Action& action) {
    if (action.verb != "pace" && action.verb != "intervene") return std::nullopt;
    return "'" + action.verb + "' is for people, not for an event";
  }

  FaultSink sink_;
  const Library& library_;
  const RuleCheck& check_;
  ScenarioDraft draft_;
  LoadedScenario result_;
  FileFaults others_;
  plant::Parameters plant_;
  std::optional<double> berth_m_;
  bool has_vehicle_ = false, has_route_ = false;
};

}  // namespace

std::variant<LoadedScenario, FileFaults> parseScenario(const SourceFile& file,
                                                       const Library& library,
                                                       const RuleCheck& check) {
  return ScenarioReader(file, library, check).read();
}

std::variant<LoadedScenario, FileFaults> loadScenario(const std::string& path,
                                                      const std::filesystem::path& shipped,
                                                      const RuleCheck& check) {
  auto loaded = loadText(path);
  if (const auto* fault = std::get_if<FileFault>(&loaded)) return FileFaults{*fault};
  return parseScenario(std::get<SourceFile>(loaded),
                       FolderLibrary(findLibraryFolder(path), shipped), check);
}

}  // namespace cabwright::scenario
