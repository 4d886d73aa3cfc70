// SPDX-License-Identifier: GPL-3.0-or-later
// The parts a scenario is read in, with the places that later checks point back at. Used by the
// scenario reader only.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "scenario/parameter_entries.h"
#include "scenario/rule_reader.h"
#include "scenario/scenario.h"
#include "scenario/table_reader.h"

namespace cabwright::scenario {

/// A number of plant::startTable() as the file sets it.
struct StartEntry {
  std::string written;
  std::vector<const plant::StartInfo*> infos;
  double value = 0;
  FilePlace at;
};

/// Something hidden or faulty with its place; of a draw: which one.
struct PlacedHidden {
  const Hidden* hidden = nullptr;
  FilePlace at;
  std::optional<std::size_t> draw;
};

struct PlacedAction {
  std::string text;  ///< as written, without who does it
  unit::Action action;
  FilePlace at;
  std::vector<TextPlace> inside;
  bool knows_actor = true;  ///< false: 'who' is wrong, the actor anybody
};

struct ScenarioDraft {
  Scenario scenario;
  // [conditions]
  double ambient_c = 15.0;
  double rail_factor = 1.0;
  std::optional<FilePlace> temperature_at, rail_at;
  // [start]
  std::vector<StartEntry> numbers;
  std::vector<ParameterEntry> parameters;
  std::optional<std::string> berth;
  FilePlace berth_at, start_at;
  bool start_is_whole = false;  ///< nothing wrong in [conditions] and [start]
  // places of scenario.hidden, of scenario.faults, of each choice of each draw
  std::vector<FilePlace> hidden_at, fault_at;
  std::vector<std::vector<FilePlace>> draw_at;
  std::vector<PlacedAction> actions;  ///< of all happenings
  std::vector<FilePlace> happening_at;
  // [marking]
  bool has_aim = false;  ///< one is written, good or not
  FilePlace pass_mark_at, vehicle_at, route_at;
  std::optional<double> pass_points;
};

/// "at", "when", "after": the start of the run when none is given.
[[nodiscard]] std::optional<fault::Moment> readMoment(TableReader& table, std::string_view at,
                                                      std::string_view when,
                                                      std::string_view after);
[[nodiscard]] std::optional<unit::Condition> readCondition(TableReader& table,
                                                           std::string_view key);
/// One [[fault]], or the part of a [[hidden]] that is one; its id is made unique by the caller.
[[nodiscard]] std::optional<fault::ArmedFault> readFault(TableReader& table);

void readHead(TableReader& root, ScenarioDraft& draft);
void readConditions(TableReader& root, ScenarioDraft& draft);
void readStart(TableReader& root, ScenarioDraft& draft);
void readHiddenThings(TableReader& root, ScenarioDraft& draft);
void readPeople(TableReader& root, ScenarioDraft& draft);
/// One for each of draft.actions: an `arm` whose id is taken, a `clear` of what the file has not.
[[nodiscard]] std::vector<std::optional<std::string>> findArmFaults(const ScenarioDraft& draft);
/// Own rules and chosen ones; texts of shared files are added to the sources, their faults to
/// `others`, with what `check` finds in rules of theirs.
void readMarking(TableReader& root, ScenarioDraft& draft, const Library& library,
                 std::vector<LoadedScenario::Source>& sources, FileFaults& others,
                 const RuleCheck& check);

/// The shared guides it uses and its own steps, likewise.
void readGuide(TableReader& root, ScenarioDraft& draft, const Library& library,
               std::vector<LoadedScenario::Source>& sources, FileFaults& others);

/// What contradicts itself inside the file.
void checkContradictions(const ScenarioDraft& draft, FaultSink& sink);

}  // namespace cabwright::scenario
