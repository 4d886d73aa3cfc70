// SPDX-License-Identifier: GPL-3.0-or-later
// What is added to a session after its seal, and what each kind of entry means. Nothing recorded is
// ever altered: an override stands beside the verdict it overrides, and a later one beside both.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "marking/verdict.h"
#include "session/review_row.h"

namespace cabwright::review {

/// An assessor counts a line as something else, or not at all.
struct Override {
  std::string rule;         ///< id of the line
  std::string old_verdict;  ///< what the sheet said, as recorded ("broken")
  /// What it counts as from now on; empty: the line is void.
  std::optional<marking::Outcome> outcome;
  std::string reason;
  bool operator==(const Override&) const = default;
};

/// What no rule can see: "communication", "planning", "awareness" ... from 1 (poor) to 5 (very
/// good).
struct Rating {
  std::string scale;
  int value = 0;
  std::string comment;
  bool operator==(const Rating&) const = default;
};

/// A remark, on the whole, on a line or on a moment.
struct Comment {
  std::string rule;                  ///< empty: not of one line
  std::optional<std::int64_t> tick;  ///< empty: not of one moment
  std::string text;
  bool operator==(const Comment&) const = default;
};

/// What the trainee thinks of it before the score is seen, from 1 to 5, and where it was unsure.
struct SelfRating {
  int value = 0;
  std::string text;
  bool operator==(const SelfRating&) const = default;
};

/// From now on the trainee knows the score.
struct ScoreShown {
  bool operator==(const ScoreShown&) const = default;
};

/// A line as another assessor marks it, without having seen the first marks.
struct BlindMark {
  std::string rule;
  marking::Outcome outcome = marking::Outcome::kNotExercised;
  bool operator==(const BlindMark&) const = default;
};

enum class Result : std::uint8_t { kPassed, kNotYet, kFailed };
[[nodiscard]] std::string_view wordOf(Result result);

struct Decision {
  Result result = Result::kNotYet;
  std::string reason;  ///< needed when it is not what the marks say
  std::string next;    ///< next step agreed on; may be empty
  bool operator==(const Decision&) const = default;
};

/// Somebody stands behind all that was added before.
struct SignOff {
  std::string statement;
  bool operator==(const SignOff&) const = default;
};

/// Of a kind this program does not know: made by a newer one.
struct Unknown {
  std::string kind;
  bool operator==(const Unknown&) const = default;
};

using Content = std::variant<Override, Rating, Comment, SelfRating, ScoreShown, BlindMark, Decision,
                             SignOff, Unknown>;

struct Entry {
  std::int64_t seq = 0;
  std::string utc;
  session::Person by;       ///< name empty when it was erased
  std::int64_t person = 0;  ///< tells people apart even then
  session::PublicKey key{};
  Content content;
};

/// "override", "rating", "comment", "self-rating", "score-shown", "blind-mark", "decision",
/// "signature".
[[nodiscard]] std::string kindOf(const Content& content);
/// As JSON with sorted keys.
[[nodiscard]] std::string bodyOf(const Content& content);
/// Empty when the body is none of this kind; a kind that is not known gives Unknown.
[[nodiscard]] std::optional<Content> readContent(std::string_view kind, std::string_view body);
/// One line for people: "line pawl counts as met (recorded: broken): the pawl stuck".
[[nodiscard]] std::string describe(const Content& content);

/// The longest free text of an entry, bytes.
inline constexpr std::size_t kMostTextBytes = 10'000;

}  // namespace cabwright::review
