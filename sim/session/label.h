// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on a session at a glance: enough for a list of many. Rows are not read and not held
// against the chain; that is what verifySession() and Store do.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <vector>

#include "session/record.h"
#include "session/review_row.h"

namespace cabwright::session {

struct Label {
  SessionHeader header;  ///< without its texts
  /// Of the texts of the scenario, as SheetHead has it: sessions of one hash are of one exercise.
  std::string scenario_hash;
  std::string sheet_json;  ///< as it was closed, not looked into; empty when it was cut off
  std::optional<scenario::Mode> mode;
  std::optional<bool> passed;  ///< empty: it was cut off
  std::int64_t last_tick = 0;
  bool sealed = false;
  std::vector<ReviewRow> review;
};

/// Throws SessionError when the file cannot be a session of this program.
[[nodiscard]] Label readLabel(const std::filesystem::path& file);

}  // namespace cabwright::session
