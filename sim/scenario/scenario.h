// SPDX-License-Identifier: GPL-3.0-or-later
// Scenario files: the situation, what is hidden in it, who does what, and what is marked.
// scenarios/README.txt teaches the format by example.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "fault/active_faults.h"
#include "plant/parameters.h"
#include "scenario/file_fault.h"
#include "scenario/guide.h"
#include "scenario/library.h"
#include "scenario/route_file.h"
#include "scenario/rule_text.h"
#include "scenario/timeline.h"
#include "scenario/vehicle.h"
#include "unit/condition.h"
#include "unit/unit_start.h"

namespace cabwright::scenario {

enum class Mode : std::uint8_t { kGuided, kPractice, kAssessment };
[[nodiscard]] std::string_view wordOf(Mode mode);
[[nodiscard]] std::optional<Mode> findMode(std::string_view word);

/// Something the trainee is not told: a condition of an item or instrument, a fault, or nothing.
struct Hidden {
  std::optional<unit::Setting> condition;
  std::optional<fault::ArmedFault> fault;
};
/// One of a list drawn by the seed, `count` different ones.
struct Draw {
  std::string name;
  int count = 1;
  std::vector<Hidden> choices;
  std::vector<double> weights;  ///< one for each choice, 0 or more, not all 0
};

/// What the exercise is for, reached: over what is shown and done.
struct Aim {
  unit::Condition condition;
  std::string says;  ///< in plain words, for the sheet; may be empty
};

struct JudgementText {
  std::optional<double> hit_points, false_alarm_cost, empty_cost;
  std::optional<bool> missed_critical_fails;
};

struct Scenario {
  std::string title, purpose, summary;
  std::string vehicle, route;  ///< names on their shelves
  std::string weather;         ///< as told: "clear", "rain" ...
  Mode mode = Mode::kPractice;
  std::uint64_t seed = 0;
  std::optional<int> level;          ///< how hard, 1 to 5; empty: not said
  std::vector<std::string> teaches;  ///< a few words each, for whoever chooses
  std::optional<double> stood_hours;
  std::optional<double> time_allowed_s;
  double pass_percent = 80;         ///< of the points that could be earned
  std::vector<std::string> phases;  ///< order of the headings of the sheet; all there are, if any
  std::optional<Aim> aim;           ///< [marking] complete; every assessment has one
  unit::UnitStart start;            ///< without what is drawn
  bool random_teeth = false;        ///< the seed puts the dog teeth of both drives
  std::vector<unit::NumberSetting> plant_parameters;  ///< of the plant, changed for this scenario
  std::vector<Hidden> hidden;
  std::vector<Draw> draws;
  std::vector<fault::ArmedFault> faults;
  std::vector<Happening> happenings;
  std::vector<RuleText> rules;  ///< its own and the chosen shared ones
  JudgementText judgements;
  Guide guide;  ///< without steps: there is none
};

/// A scenario with all it stands on.
struct LoadedScenario {
  Scenario scenario;
  Vehicle vehicle;
  RouteFile route;
  /// Every text that was read, in the words of a session file.
  struct Source {
    std::string role;  ///< "scenario", "vehicle", "route", "rules", "guide"
    std::string name;  ///< as the scenario calls it; of the scenario: its file
    std::string text;
  };
  std::vector<Source> sources;
};

/// All faults of the scenario and of the files it names, at once; with those that `check` finds in
/// its rules, whatever else is wrong.
[[nodiscard]] std::variant<LoadedScenario, FileFaults> parseScenario(const SourceFile& file,
                                                                     const Library& library,
                                                                     const RuleCheck& check = {});
/// From a path, with the library of its folder; what that lacks comes from the scenarios/ folder
/// `shipped`, unless it is empty.
[[nodiscard]] std::variant<LoadedScenario, FileFaults> loadScenario(
    const std::string& path, const std::filesystem::path& shipped = {},
    const RuleCheck& check = {});

/// Why an exercise cannot be run in this mode, in words: an assessment needs rules, an aim and a
/// pass mark. Empty when it can.
[[nodiscard]] std::optional<std::string> findModeFault(const Scenario& scenario, Mode mode);
/// Runs it in this mode, whatever its file says.
void chooseMode(Scenario& scenario, Mode mode);

/// What a run is made of, once the seed has drawn.
struct Setup {
  plant::Parameters parameters;
  unit::Route route;
  unit::UnitStart start;
  fault::ActiveFaults faults;
  Timeline timeline;
  std::uint64_t seed = 0;
  std::vector<std::string> drawn;  ///< what the seed chose, in words, for the instructor
};
/// Pure: the same scenario and seed give the same setup everywhere.
[[nodiscard]] Setup makeSetup(const LoadedScenario& loaded, std::uint64_t seed);

}  // namespace cabwright::scenario
