// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a session is what was sealed: row by row, byte by byte, and what was added since.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "session/review_row.h"
#include "session/seal.h"

namespace cabwright::session {

enum class Standing : std::uint8_t {
  kWhole,      ///< sealed, and nothing was changed, cut off or added but what is signed
  kAltered,    ///< something does not fit; findings say what
  kNotSealed,  ///< a session whose rows fit, without a seal
  kNoSession,  ///< nothing this program reads; findings say why
};

struct Verification {
  Standing standing = Standing::kNoSession;
  /// What does not fit, the first of each kind, in words without the file's name.
  std::vector<std::string> findings;
  int format = 0;
  std::string session_id;
  std::optional<Seal> seal;
  std::int64_t rows = 0;          ///< that fit, up to the first that does not
  bool is_assessment = false;     ///< run in assessment, so it was to be sealed
  bool has_end = false;           ///< false: the session was cut off
  std::size_t erased_people = 0;  ///< of those who took part
  std::vector<ReviewRow> review;  ///< that was added after the seal
};

/// Reads all of the file and never throws for what is in it.
[[nodiscard]] Verification verifySession(const std::filesystem::path& file);

/// Throws SessionError, with this name in front, unless it is sealed and whole.
void requireWhole(const std::filesystem::path& file, const std::string& name);

}  // namespace cabwright::session
