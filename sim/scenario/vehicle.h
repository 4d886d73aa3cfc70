// SPDX-License-Identifier: GPL-3.0-or-later
// Vehicle files: another generic vehicle without C++.
//
//   title = "..."            text = "..."
//   [engine]                 # both engines
//   displacement_m3 = 9.8e-3
//   [engine1]                # this one only; wins over [engine]
//   [gearbox.band3]          # third-gear band of both boxes
//   [relay]                  # switch settings of the unit
//
// Names are those of plant::parameterTable() and unit::unitParameterTable(); a value is a number in
// the unit of its table, or a text with that unit: "95 psi".
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "plant/parameters.h"
#include "scenario/file_fault.h"
#include "unit/unit_parameters.h"
#include "unit/unit_start.h"

namespace cabwright::scenario {

struct Vehicle {
  std::string title;
  std::string text;
  plant::Parameters plant;
  unit::UnitParameters unit;
};

/// All faults of the file at once, sorted by place; also what only shows in combination
/// (plant::findParameterFaults).
[[nodiscard]] std::variant<Vehicle, FileFaults> parseVehicle(const SourceFile& file);

/// A vehicle file that says every number, with its meaning beside it: parseVehicle of it gives the
/// same vehicle to the bit. Instances that are alike are written once.
[[nodiscard]] std::string vehicleText(const Vehicle& vehicle);

/// What of the unit's numbers differs from the standard, for UnitStart::parameters.
[[nodiscard]] std::vector<unit::NumberSetting> unitSettings(const unit::UnitParameters& unit);

}  // namespace cabwright::scenario
