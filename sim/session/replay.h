// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done with a recorded session: mark it again from what was recorded, or run it again
// from its scenario and actions and compare.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>

#include "marking/sheet.h"
#include "session/comparer.h"
#include "session/situation.h"
#include "session/store.h"

namespace cabwright::session {

/// The situation kept in a session, in the mode it was run in. Throws SessionError if it cannot be
/// read any more (a recording of another version of the program).
[[nodiscard]] Situation readSituation(const Store& store);

struct Remarked {
  marking::MarkSheet sheet;
  bool complete = false;  ///< false: the session was cut off, and is marked as far as it goes
  /// The sheet that was recorded at the end says what this one says; what only a later version of
  /// the program writes must have nothing in it. Empty without one.
  std::optional<bool> as_recorded;
};
/// Whether a recorded sheet says what this one says (both as JSON, see as_recorded).
[[nodiscard]] bool isSameSheet(const std::string& recorded, const std::string& now);
/// Throws SessionError, as Store::show and as readSituation.
[[nodiscard]] Remarked markAgain(const Store& store);

struct Replayed {
  std::optional<Difference> difference;  ///< empty: identical
  std::int64_t last_tick = 0;
  std::int64_t frames = 0, hashes = 0, actions = 0;
};
/// Asked now and then with the tick under way; false stops the replay there.
using Progress = std::function<bool(std::int64_t tick)>;
/// Throws SessionError, as above.
[[nodiscard]] Replayed replay(const Store& store, const Progress& progress = {});

}  // namespace cabwright::session
