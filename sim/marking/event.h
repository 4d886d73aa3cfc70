// SPDX-License-Identifier: GPL-3.0-or-later
// Events in rules, as text:
//
//   did VERB OBJECT [ARGUMENT] [if CONDITION]     something was done
//   did ACTOR: VERB OBJECT ...                    by somebody else; anyone: by whomever
//   when CONDITION [if CONDITION]                 it begins to hold (or holds at the first Frame)
//   when no longer CONDITION [if CONDITION]       it held and ceases to
//   EVENT or EVENT                                other ways that are as good; the first that fits
//                                                 is named on the sheet
//
// In verb, object and argument * stands for any letters, also for none. An argument that is not
// given fits any; a position fits by its number as well as by its name. An argument with "if", "or
// did" or "or when" in it is put in double quotes. Conditions are those of unit/condition.h, judged
// on the last Frame, which before an act is the one right before it.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "unit/action.h"
#include "unit/condition.h"

namespace cabwright::marking {

struct EventFault {
  std::size_t at = 0;  ///< offset into the text
  std::string what;
};

/// Fits actions. Of the words only * is special.
struct ActionPattern {
  std::optional<unit::Actor> actor = unit::Actor::kTrainee;  ///< none: anyone
  std::string verb, object;
  std::optional<std::string> argument;
  [[nodiscard]] bool fits(const unit::Action& action) const;
};

/// Says what is wrong with the words of a pattern.
using WordCheck = std::function<std::optional<std::string>(const ActionPattern&)>;

/// The usual check: a verb there is, an object of the kind that verb takes (with a *: one at least
/// that fits), a position that control has. Names the nearest known word.
[[nodiscard]] std::optional<std::string> findWordFault(const ActionPattern& pattern);

struct EventWay {
  enum class Trigger : std::uint8_t { kAct, kBegins, kEnds };
  Trigger trigger = Trigger::kAct;
  ActionPattern act;                     ///< of kAct
  unit::Condition condition;             ///< of kBegins and kEnds
  std::optional<unit::Condition> guard;  ///< what has to hold as well
  std::string text;
};

struct Event {
  std::vector<EventWay> ways;
  std::string text;
  [[nodiscard]] static std::variant<Event, EventFault> parse(
      std::string_view text, const WordCheck& check = findWordFault);
};

/// * fits any letters, also none.
[[nodiscard]] bool fitsPattern(std::string_view pattern, std::string_view text);

}  // namespace cabwright::marking
