// SPDX-License-Identifier: GPL-3.0-or-later
// Words the trainee sees that stand in tables of the simulation and in files of exercises, where
// lupdate does not look, each with the context it is translated in.
#pragma once

#include <filesystem>
#include <set>
#include <string>
#include <utility>

namespace cabwright::testing_ui {

/// Context and English words.
using TableWords = std::set<std::pair<std::string, std::string>>;

/// Of controls, items, places, things, phrases, signals, refusals, interlocks.
[[nodiscard]] TableWords collectTableWords();
/// Of what is refused: the words stand where they are refused, so the sources are read.
/// `source` is the folder that holds sim/.
[[nodiscard]] TableWords collectRefusals(const std::filesystem::path& source);
/// Of every exercise of a folder scenarios/: its own texts, its guide, its rules. Throws
/// std::runtime_error when one cannot be read.
[[nodiscard]] TableWords collectScenarioWords(const std::filesystem::path& scenarios);

/// All of them. `source` is the folder that holds sim/ and scenarios/.
[[nodiscard]] TableWords collectAllWords(const std::filesystem::path& source);

}  // namespace cabwright::testing_ui
