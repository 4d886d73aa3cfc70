// SPDX-License-Identifier: GPL-3.0-or-later
// How quick any moment of two hours is there, whole: from the click on the strip of the assessor's
// window until plate and strips are drawn; and the report on paper. Two hours of a shipped exercise
// are recorded here for it.
#pragma once

#include <filesystem>
#include <nlohmann/json.hpp>

namespace cabwright::bench {

/// Puts into `found`: moment_ms and moment_worst_ms (the world alone), rerun_times_real,
/// rerun_mb_per_hour; and, in a program with windows, seek_ms and seek_worst_ms (1280 x 720; with
/// _1080: 1920 x 1080), report_s.
void timeMoments(const std::filesystem::path& folder, nlohmann::json& found);

}  // namespace cabwright::bench
