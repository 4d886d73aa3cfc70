// SPDX-License-Identifier: GPL-3.0-or-later
// A marking rule as a scenario file says it. Plain data: checked and made ready by compileRules.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace cabwright::marking {

/// What a breach is worth. A broken critical rule fails the run whatever the points.
enum class RuleClass : std::uint8_t { kTechnique, kSerious, kCritical };

/// What a rule looks at. Acts are judged by what could be perceived, harm by what happened.
enum class Reads : std::uint8_t { kShown, kTrue };

/// Kinds, by the word used in files. a and b are events, c is `condition`; [lo,hi] is `within`, in
/// seconds, closed at both ends; without it any time will do. Declare templates on finite traces
/// (Pesic; past forms where there are any, so that a verdict is final when it falls) and bounded
/// signal temporal logic (Maler and Nickovic 2004).
enum class RuleKind : std::uint8_t {
  kPrecedence,           ///< precedence: b only if a came before, lo to hi seconds before
  kAlternatePrecedence,  ///< alternate_precedence: each b needs an a of its own since the last b
  kChainPrecedence,    ///< chain_precedence: a came before b with no b and none of `steps` between
  kResponse,           ///< response: after each a comes b, lo to hi seconds after
  kAlternateResponse,  ///< alternate_response: and before the next a
  kAbsence,            ///< absence: a at most `times` times (none if not said), while `during`
  kExistence,          ///< existence: a at least `times` times (once); `within` from the start
  kCoExistence,        ///< co_existence: a and b both, or neither
  kNotCoExistence,     ///< not_co_existence: not both of a and b
  kNotSuccession,      ///< not_succession: no b after an a
  kOrder,              ///< order: each of `steps` only after all before it
  kSequence,    ///< sequence: b only after all of `steps`, one after the other; `reset` starts anew
  kAllBefore,   ///< all_before: b only after all of `steps`, in any order, lo to hi s before
  kNeverWhile,  ///< never_while: never c for as long as `for` seconds while `during`
  kLimit,       ///< limit: c holds while `during`; a lapse shorter than `for` is forgiven
  kHoldFor,     ///< hold_for: b only after c has held for `for` seconds without a break (0: holds)
  kOnceWithin,  ///< once_within: b only if c held at some time lo to hi seconds before
  kHeldSince,   ///< held_since: b only if c has held ever since an a, lo to hi s before
  kHoldAfter,   ///< hold_after: after each a, c holds from lo to hi seconds after
  kReachWithin,  ///< reach_within: after each a, c is reached lo to hi seconds after
  kHoldUntil,    ///< hold_until: from each a on c holds until b, which comes lo to hi s after
  kFallTold,  ///< fall_told: the number b tells is how much `measure` fell in a minute, as it did
              ///< while c held right up to b; no more than `by` off
};

/// An event with the words to call it by in sentences ("the warning"); by its text if none.
struct EventSpec {
  std::string text;  ///< see event.h
  std::string name;
};

/// How near a breach may be to the limit and still be forgiven or count for less, in words for the
/// sheet and as a test. Where a condition is judged, `inside` stands in its place; where a time is
/// judged, it may be missed by `slack_s`; for acts, the breach is inside if `inside` holds then.
struct Tolerance {
  std::string text;    ///< required of critical rules; "none: ..." says why there is none
  std::string inside;  ///< a condition; may be empty
  double slack_s = 0;  ///< seconds
  std::optional<RuleClass> falls_to;  ///< nothing: forgiven, the line is met and says so
};

/// From the n-th breach on the line counts as a higher class (no pause: technique; again: serious).
struct Repeated {
  int times = 0;
  RuleClass counts_as = RuleClass::kSerious;
};

struct RuleSpec {
  std::string id;
  std::string phase;   ///< heading on the sheet
  std::string title;   ///< what had to be done, to what limit
  std::string reason;  ///< why it matters, in plain words
  std::string advice;  ///< what to do instead
  RuleClass rule_class = RuleClass::kSerious;
  double weight = 1;  ///< points, 0 or more
  Reads reads = Reads::kShown;
  Tolerance tolerance;
  /// Ids of rules: if one of them is broken, a breach of this one follows from it.
  std::vector<std::string> follows;
  std::optional<Repeated> repeated;
  /// Not exercised by the end of the run counts as broken.
  bool must_occur = false;

  RuleKind kind = RuleKind::kExistence;
  EventSpec a, b;
  std::vector<EventSpec> steps;
  EventSpec reset;  ///< of a sequence that is not complete yet
  std::string condition, during;
  /// What to call them in sentences ("the air lamp lit"); by their texts if empty.
  std::string condition_name, during_name;
  /// Of kinds judged at b: the first b only.
  bool first_only = false;
  std::string measure;         ///< a signal
  double by = 0;               ///< in its unit
  double from_s = 0;           ///< lo
  std::optional<double> to_s;  ///< hi
  double for_s = 0;
  std::optional<int> times;
};

[[nodiscard]] std::optional<RuleKind> findRuleKind(std::string_view word);
[[nodiscard]] std::string_view wordOf(RuleKind kind);
[[nodiscard]] std::span<const std::string_view> ruleKindWords();

/// By letter or word: "C" "critical", "S" "serious", "T" "technique".
[[nodiscard]] std::optional<RuleClass> findRuleClass(std::string_view word);
[[nodiscard]] std::string_view wordOf(RuleClass c);                   ///< "critical" ...
[[nodiscard]] std::string_view letterOf(RuleClass c);                 ///< "C" ...
[[nodiscard]] std::optional<Reads> findReads(std::string_view word);  ///< "shown", "true"
[[nodiscard]] std::string_view wordOf(Reads r);

}  // namespace cabwright::marking
