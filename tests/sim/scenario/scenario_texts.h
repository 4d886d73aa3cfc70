// SPDX-License-Identifier: GPL-3.0-or-later
// Texts to read, and what is expected to be said about bad ones.
#pragma once

#include <gtest/gtest.h>

#include <filesystem>
#include <string>
#include <variant>
#include <vector>

#include "scenario/scenario.h"
#include "scenario/script.h"

namespace cabwright::testing {

using scenario::FileFaults;

/// Every fault as a line of text.
inline std::vector<std::string> lines(const FileFaults& faults) {
  std::vector<std::string> all;
  for (const scenario::FileFault& f : faults) all.push_back(scenario::toText(f));
  return all;
}
template <class T>
std::vector<std::string> faultsOf(const std::variant<T, FileFaults>& read) {
  if (const auto* faults = std::get_if<FileFaults>(&read)) return lines(*faults);
  return {};
}
template <class T>
T good(std::variant<T, FileFaults> read) {
  for (const std::string& line : faultsOf(read)) ADD_FAILURE() << line;
  return std::holds_alternative<T>(read) ? std::get<T>(std::move(read)) : T{};
}

inline const std::string kRouteText = R"(title = "Test line"
[[grade]]
from = -1000
slope = "level"
[[grade]]
from = 0
slope = "rise 1 in 80"
[[signal]]
name = "S1"
at = 100
faces = "up"
[[berth]]
name = "bay"
at = -250
)";

inline scenario::TextLibrary testLibrary() {
  scenario::TextLibrary library;
  library.add(scenario::Shelf::kVehicles, "plain", "title = \"Plain\"\n");
  library.add(scenario::Shelf::kRoutes, "line", kRouteText);
  library.add(scenario::Shelf::kRules, "common", R"([[rule]]
id = "hb-off"
title = "Handbrake last"
reason = "she rolls"
kind = "precedence"
class = "C"
tolerance = "none: it is so or not"
a = "did set cab1.handbrake on"
b = "did set cab1.handbrake off"
weight = 4
follows = ["brake-test"]
[[rule]]
id = "brake-test"
title = "Brake tried"
reason = "only proof"
kind = "existence"
a = "did set cab1.brake full"
weight = 3
)");
  return library;
}

/// The least a scenario needs; lines 1 to 5.
inline const std::string kHead =
    "title = \"T\"\npurpose = \"P\"\nsummary = \"S\"\nvehicle = \"plain\"\nroute = \"line\"\n";

inline auto parseScenarioText(const std::string& text) {
  return scenario::parseScenario({"x.toml", text}, testLibrary());
}
/// With the head in front: the rest begins in line 6.
inline auto parseAfterHead(const std::string& rest) { return parseScenarioText(kHead + rest); }

inline std::filesystem::path shippedScenarios() {
  return std::filesystem::path(CABWRIGHT_SOURCE_DIR) / "scenarios";
}

}  // namespace cabwright::testing
