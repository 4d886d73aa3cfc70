// SPDX-License-Identifier: GPL-3.0-or-later
// How quick any moment of two hours is there, whole: the world run on from a copy, and the plate
// drawn. Two hours of a shipped exercise are recorded here for it.
#pragma once

#include <filesystem>
#include <nlohmann/json.hpp>

namespace cabwright::bench {

/// Puts into `found`: seek_ms and seek_worst_ms (in a program without windows without the plate),
/// moment_ms (the world alone), rerun_times_real, rerun_mb_per_hour.
void timeMoments(const std::filesystem::path& folder, nlohmann::json& found);

}  // namespace cabwright::bench
