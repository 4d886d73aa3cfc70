// SPDX-License-Identifier: GPL-3.0-or-later
// Where the shipped scenarios, vehicles and routes are, and what a name on the command line means.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace cabwright::console {

/// Where this program lies; empty when the system does not tell.
[[nodiscard]] std::filesystem::path programFolder();

class Places {
 public:
  /// The folder that holds scenarios/, in this order: `given` (--data), the variable
  /// CABWRIGHT_DATA, beside the program (build tree), the installed place. One that was asked for
  /// and has no scenarios/ is a fault, see findFault().
  explicit Places(const std::optional<std::string>& given);

  [[nodiscard]] std::optional<std::string> findFault() const;

  /// The scenarios/ folder; empty when there is none.
  [[nodiscard]] std::optional<std::filesystem::path> findScenarios() const;

  /// A file is taken as it is, a folder stands for its scenario.toml, any other word is looked up
  /// among the shipped exercises. Empty when nothing fits.
  [[nodiscard]] std::optional<std::filesystem::path> findScenario(const std::string& word) const;

  /// A script: a file, or a name (with or without .txt) in the scenario's folder.
  [[nodiscard]] std::optional<std::filesystem::path> findScript(
      const std::string& word, const std::filesystem::path& scenario) const;

  /// Names of the shipped exercises, sorted.
  [[nodiscard]] std::vector<std::string> exercises() const;

 private:
  std::optional<std::filesystem::path> scenarios_;
  std::optional<std::string> fault_;
};

}  // namespace cabwright::console
