// SPDX-License-Identifier: GPL-3.0-or-later
// What has been ruled on one rule so far, and which of it decides the line.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "marking/scene.h"
#include "marking/verdict.h"

namespace cabwright::marking {

/// One occasion judged.
struct Ruling {
  bool met = true;
  bool inside = false;  ///< a breach inside the tolerance
  std::int64_t tick = 0;
  std::optional<double> margin;
  std::string_view unit;
  std::string reason;
  std::string act;  ///< if it is not the act that arrives
  std::string way;
};

/// The room in the rule's window (calcRoom) as the margin of a ruling; none: no margin.
void setRoom(std::optional<std::int64_t> room, Ruling& ruling);

class Ledger {
 public:
  /// The evidence is taken from the scene.
  void add(const CompiledRule& rule, const Scene& scene, Ruling ruling);
  void exercise() { exercised_ = true; }
  /// Nothing that comes can change it any more.
  void settle() { settled_ = true; }
  [[nodiscard]] bool isExercised() const { return exercised_; }
  [[nodiscard]] bool isBroken() const { return rank_ == kFull; }
  /// Rulings not yet taken for the time strip.
  [[nodiscard]] std::vector<Mark> takeMarks();
  /// `pending_bad`: it would be broken if the run ended now.
  [[nodiscard]] Verdict makeVerdict(const CompiledRule& rule, bool finished,
                                    bool pending_bad) const;
  /// Readings to show while nothing has been ruled.
  void setReadings(const CompiledRule& rule, const unit::Frame& frame, std::int64_t tick);

 private:
  enum Rank : std::uint8_t { kNothing, kKept, kForgiven, kFallen, kFull };
  [[nodiscard]] static Rank rankOf(const CompiledRule& rule, const Ruling& ruling);
  [[nodiscard]] bool decides(Rank rank, const Ruling& ruling) const;
  void fillOutcome(const CompiledRule& rule, bool finished, bool pending_bad, Verdict& v) const;

  bool exercised_ = false, settled_ = false;
  int rulings_ = 0, broken_ = 0;
  Rank rank_ = kNothing;
  Ruling deciding_;
  std::vector<Reading> readings_;
  std::vector<Mark> new_marks_;
};

/// Of every signal the rule reads.
[[nodiscard]] std::vector<Reading> makeReadings(const CompiledRule& rule, const unit::Frame& frame);

[[nodiscard]] constexpr double toSeconds(std::int64_t ticks) {
  return static_cast<double>(ticks) / 100.0;
}
/// "3.2 s" of ticks.
[[nodiscard]] std::string secondsText(std::int64_t ticks);
/// The name of an event with the first letter large.
[[nodiscard]] std::string startOf(const CompiledEvent& event);
/// A number of seconds allowed between two events: "at least 2 s", "3 s to 5 s".
[[nodiscard]] std::string allowedText(const CompiledRule& rule);
/// The condition, and that of `during`, as they are called in sentences.
[[nodiscard]] std::string conditionWords(const CompiledRule& rule);
[[nodiscard]] std::string duringWords(const CompiledRule& rule);
/// The way taken, if there were several.
[[nodiscard]] std::string wayText(const CompiledEvent& event, std::size_t way);

}  // namespace cabwright::marking
