// SPDX-License-Identifier: GPL-3.0-or-later
// Vehicles as their authors write them: the tests change a file's text, not the program's numbers.
#pragma once

#include <filesystem>
#include <stdexcept>
#include <string>
#include <variant>

#include "scenario/vehicle.h"

namespace cabwright::testing {

inline plant::Parameters readVehicle(const scenario::SourceFile& file) {
  auto read = scenario::parseVehicle(file);
  if (const auto* faults = std::get_if<scenario::FileFaults>(&read)) {
    throw std::invalid_argument(scenario::toText(faults->front()));
  }
  return std::get<scenario::Vehicle>(std::move(read)).plant;
}

/// The standard vehicle but for what this TOML says: "[air]\nmain_m3 = 0.64\n".
inline plant::Parameters vehicleWith(const std::string& toml) {
  return readVehicle({"vehicle.toml", "title = \"x\"\n" + toml});
}

/// One that ships: "long-gear-unit".
inline plant::Parameters shippedVehicle(const std::string& name) {
  const auto path =
      std::filesystem::path(CABWRIGHT_SOURCE_DIR) / "scenarios" / "vehicles" / (name + ".toml");
  const auto text = scenario::loadText(path.string());
  if (std::holds_alternative<scenario::FileFault>(text)) {
    throw std::invalid_argument("cannot read " + path.string());
  }
  return readVehicle(std::get<scenario::SourceFile>(text));
}

/// A shipped vehicle and the weather in which the golden script starts both of its engines: the
/// long-gear unit has a tired one.
struct GoldenVehicle {
  const char* name;
  double ambient_c;
};
inline constexpr GoldenVehicle kGoldenVehicles[] = {{"two-engine-unit", 2.0},
                                                    {"long-gear-unit", 14.0}};
/// For the names of parameterised tests.
inline std::string shortName(const GoldenVehicle& vehicle) {
  return std::string(vehicle.name).substr(0, 3);
}

}  // namespace cabwright::testing
