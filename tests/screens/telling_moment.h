// SPDX-License-Identifier: GPL-3.0-or-later
// The moment of an exercise that is worth a picture.
#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "session/live_run.h"

namespace cabwright::screens {

/// Names of the exercises in a folder of scenarios, in order: folders with a scenario and a script
/// that passes.
[[nodiscard]] std::vector<std::string> findExercises(const std::filesystem::path& scenarios);

/// A run of the exercise, played by its good script up to where the trainee first calls something a
/// defect; where nothing is one, up to the first entry in the repair book, decision or message, and
/// without any of these up to the last act. In practice, unrecorded. Throws
/// std::runtime_error for what cannot be read or played.
[[nodiscard]] std::unique_ptr<session::LiveRun> playToTellingMoment(
    const std::filesystem::path& exercise);

}  // namespace cabwright::screens
