// SPDX-License-Identifier: GPL-3.0-or-later
// Exercises as the instructor's desk chooses from them, and as they begin under other conditions.
#pragma once

#include <filesystem>
#include <variant>
#include <vector>

#include "desk/situation_page.h"
#include "session/situation.h"

namespace cabwright::desktop {

/// All that can be taken, by level, then by title.
[[nodiscard]] std::vector<desk::SituationChoice> loadChoices(
    const std::filesystem::path& scenarios);

/// The exercise of that name. Where conditions are other ones its text is changed before it is
/// read, so that the record carries what was run and a replay needs nothing else.
[[nodiscard]] std::variant<session::Situation, scenario::FileFaults> loadExercise(
    const std::filesystem::path& scenarios, const std::string& name,
    const desk::OtherConditions& conditions = {});

}  // namespace cabwright::desktop
