// SPDX-License-Identifier: GPL-3.0-or-later
// A unit with faults in it, driven tick by tick the way a session drives it.
#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "fault/active_faults.h"
#include "unit/unit.h"

namespace cabwright::testing {

inline fault::ArmedFault armed(std::string_view name, double size = 0, std::int64_t at = 0) {
  fault::ArmedFault f;
  f.id = name;
  f.spec = fault::findFault(name);
  f.size = size != 0 || !f.spec ? size : (f.spec->size.exists() ? f.spec->size.usual : 0.0);
  f.from.ticks = at;
  return f;
}

/// Both handles in cab 1, key on, forward, air and vacuum up, engines standing, brake in lap.
inline unit::UnitStart readyStart() {
  unit::UnitStart s;
  s.plant.main_psi = s.plant.control_psi = 90;
  s.plant.train_pipe_inhg = s.plant.chamber_inhg = 21;
  s.plant.release_pipe_inhg = 25;
  s.plant.cab[0].device_psi = 60;
  s.place = "cab1";
  s.objects = {{"brake_handle", "cab1"}, {"reversing_lever", "cab1"}, {"control_key", "cab1"}};
  s.controls = {{"cab1.key", "on"}};
  return s;
}

struct FaultRig {
  unit::Unit unit;
  fault::ActiveFaults faults;

  explicit FaultRig(const unit::UnitStart& start = readyStart())
      : unit(plant::Parameters(), unit::Route(), start) {}

  void run(double seconds) {
    const auto ticks = static_cast<std::int64_t>(seconds * 100.0 + 0.5);
    for (std::int64_t k = 0; k < ticks; ++k) {
      faults.advance(unit);
      unit.advance();
    }
  }
  unit::ActionOutcome act(const std::string& text) {
    return unit.apply(std::get<unit::Action>(unit::parseAction(text)));
  }
  [[nodiscard]] double value(std::string_view signal) const {
    return static_cast<double>(unit.frame()[*unit::findSignal(signal)]);
  }
  /// All numbers of plant and unit, in order.
  [[nodiscard]] std::vector<double> numbers() const {
    std::vector<double> all;
    for (const auto& info : plant::parameterTable()) {
      all.push_back(info.of(unit.plant().parameters()));
    }
    for (const auto& info : unit::unitParameterTable()) all.push_back(info.of(unit.parameters()));
    return all;
  }
};

}  // namespace cabwright::testing
