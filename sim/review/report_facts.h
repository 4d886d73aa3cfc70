// SPDX-License-Identifier: GPL-3.0-or-later
// What a report says of a session that does not stand on its sheet: which attempt it was, and what
// machine it was run on.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "review/shelf.h"
#include "session/record.h"

namespace cabwright::review {

struct AttemptPlace {
  int number = 0;  ///< from 1
  int of = 0;      ///< how many there are
};

/// Which of the trainee's attempts at this version of the exercise a session is, by the time they
/// began, among those in the folder of its file. Empty when no number or name tells the trainee
/// apart, or the file cannot be read.
[[nodiscard]] std::optional<AttemptPlace> findAttempt(const std::filesystem::path& file,
                                                      ShelfOptions options = {});

/// The machine of a session: the vehicle's file and the hash of its text as it was recorded, so
/// that two reports of one machine can be told from two of different ones: "railbus
/// [0123456789abcdef]". Empty when no vehicle was recorded.
[[nodiscard]] std::string describePlant(const session::SessionHeader& header);

}  // namespace cabwright::review
