// SPDX-License-Identifier: GPL-3.0-or-later
// Actions and signals of a session as CSV (RFC 4180 but for plain line ends), for a spreadsheet or
// a program of one's own.
#pragma once

#include <cstdint>
#include <ostream>
#include <string>
#include <string_view>

#include "session/store.h"

namespace cabwright::review {

/// One field. Quoted where it must be. Text that a spreadsheet would run as a formula (it begins
/// with = + - @ and is no number) gets an apostrophe in front.
[[nodiscard]] std::string csvField(std::string_view text);

/// tick, time in seconds, number, by whom, whether the scenario did it, verb, object, argument.
/// Throws SessionError as Store::show.
void writeActionsCsv(const session::Store& store, std::ostream& out);

/// tick, time in seconds, and every signal with its unit, each `every_ticks` (10 at least: they are
/// recorded ten times a second). Throws SessionError as Store::show.
void writeSignalsCsv(const session::Store& store, std::ostream& out, std::int64_t every_ticks);

}  // namespace cabwright::review
