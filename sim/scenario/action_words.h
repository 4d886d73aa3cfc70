// SPDX-License-Identifier: GPL-3.0-or-later
// Which word of an action a message is about, to point at it. Used by the readers only.
#pragma once

#include <string>
#include <string_view>

#include "unit/action.h"

namespace cabwright::scenario {

/// The part of `words` (the text the action was read from) that begins with the word named in the
/// message; from the verb on when it names none.
[[nodiscard]] std::string_view findBlamedWord(std::string_view words, const unit::Action& action,
                                              const std::string& message);

}  // namespace cabwright::scenario
