// SPDX-License-Identifier: GPL-3.0-or-later
// A small exercise on disk, with its own shelves: short to run, and known in every detail.
#pragma once

#include <string>

#include "program.h"

namespace cabwright::console_test {

/// FOLDER/scenarios/{vehicles/plain.toml, routes/line.toml, handbrake/scenario.toml and scripts}.
class ExerciseFolder : public Folder {
 public:
  ExerciseFolder() {
    spill(scenarios() / "vehicles/plain.toml", "title = \"Plain\"\n");
    spill(scenarios() / "routes/line.toml",
          "title = \"Test line\"\n[[grade]]\nfrom = 0\nslope = \"level\"\n");
    spill(exercise() / "scenario.toml", kScenario);
    spill(exercise() / "good.txt",
          "wait 1.2 s\nset cab1.pawl out\nset cab1.handbrake off\nwait 6 s\n"
          "set cab1.handbrake on\nset cab1.pawl in\nwait 9 s\n");
    spill(exercise() / "bad-gear.txt",
          "# breaks: gear\nset cab1.pawl out\nset cab1.handbrake off\nset cab1.gear 1\n");
    spill(exercise() / "stuck.txt",
          "set cab1.pawl out\nwait until cab1.air >= 75 psi at most 5 s\n");
    spill(exercise() / "long.txt", "set cab1.pawl out\nset cab1.handbrake off\nwait 20 h\n");
  }
  [[nodiscard]] std::filesystem::path scenarios() const { return path() / "scenarios"; }
  [[nodiscard]] std::filesystem::path exercise() const { return scenarios() / "handbrake"; }
  [[nodiscard]] std::string data() const { return path().string(); }
  [[nodiscard]] std::string script(const std::string& name) const {
    return (exercise() / name).string();
  }

 private:
  static inline const std::string kScenario = R"(title = "Handbrake"
purpose = "To try the program"
summary = "She stands."
vehicle = "plain"
route = "line"
seed = 7
[conditions]
temperature = "8 C"
stood_hours = 10
[start]
place = "cab1"
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
[[rule]]
id = "gear"
phase = "cab"
title = "Leave the gear alone"
reason = "She may drive off."
kind = "absence"
a = "did set cab1.gear *"
class = "C"
tolerance = "none: it is touched or it is not"
)";
};

}  // namespace cabwright::console_test
