// SPDX-License-Identifier: GPL-3.0-or-later
// A folder of scenarios, each FOLDER/NAME/scenario.toml: the instructor's own ones and the
// situations that were kept. A file that is broken is listed with what is wrong and spoils nothing.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "scenario/draft.h"
#include "scenario/file_fault.h"
#include "scenario/rule_text.h"

namespace cabwright::scenario {

struct ShelvedScenario {
  std::string name;   ///< of its folder
  std::string path;   ///< of its file
  std::string title;  ///< as far as it can be read; the name otherwise
  /// The first thing that is wrong with it; it can be run if there is none.
  std::optional<FileFault> fault;
};

/// All folders that hold a scenario.toml, by name. A folder that is not there is empty. Vehicles,
/// routes, rules and guides that are not beside it are those of `shipped`.
[[nodiscard]] std::vector<ShelvedScenario> listScenarios(const std::filesystem::path& folder,
                                                         const std::filesystem::path& shipped,
                                                         const RuleCheck& check = {});

/// A name for a folder made of a title: "Hill start, wet" is "hill-start-wet". Never empty; one
/// that is not there yet.
[[nodiscard]] std::string makeFolderName(const std::filesystem::path& folder,
                                         const std::string& title);

/// Writes FOLDER/NAME/scenario.toml, NAME made of the draft's title, and gives its path, or what
/// hinders. Overwrites nothing.
[[nodiscard]] std::variant<std::string, FileFault> saveScenario(
    const Draft& draft, const std::filesystem::path& folder);

}  // namespace cabwright::scenario
