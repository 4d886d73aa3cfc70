// SPDX-License-Identifier: GPL-3.0-or-later
// Conditions over a Frame as people write them in scenarios, scripts and rules:
//   cab1.air >= 75 psi and not cab1.lamp_air
// Signals by name, numbers with or without their unit (a wrong unit is a fault), + - * /, < <= > >=
// == !=, `near X by Y`, and / or / not, parentheses, abs( ). A bare signal is true from 0.5 up.
// Compared with ==, != and so on, a control may be given by the name of a position, a judgement and
// the decision by their word: cab1.reverser == forward, judged.end1.hoses == defect.
//
// Both sides of a comparison are rounded to single precision first, because that is how a Frame
// holds its values: a lever put to 0.7 is at 0.7. A quotient by zero holds in no comparison.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "unit/frame.h"

namespace cabwright::unit {

struct ConditionFault {
  std::size_t at = 0;  ///< offset into the text
  std::string what;    ///< what was found, what is allowed, the nearest known name
};

/// Truth, margin and the unit of the term that decides, all at once.
struct ConditionValue {
  bool holds = true;
  double margin = 0;
  std::string_view unit;
};

class Condition {
 public:
  Condition();  ///< always true
  [[nodiscard]] static std::variant<Condition, ConditionFault> parse(std::string_view text);
  [[nodiscard]] ConditionValue evaluate(const Frame& frame) const;
  /// The truth, kept apart from the margin: x > c at x = c is false though its margin is 0.
  [[nodiscard]] bool holds(const Frame& frame) const;
  /// Robustness (signal temporal logic): positive by how much it holds, negative by how much it
  /// does not; min over and, max over or; in the unit of the term that decides. Of a bare signal,
  /// and of == and != between numbers without unit: +-1. Always true: infinite.
  [[nodiscard]] double margin(const Frame& frame) const;
  /// Unit of the term that decides the margin at this frame, "" if it has none.
  [[nodiscard]] std::string_view marginUnit(const Frame& frame) const;
  /// The signals it reads, each once, in order of appearance.
  [[nodiscard]] const std::vector<Signal>& signals() const;
  [[nodiscard]] const std::string& text() const;
  /// What it asks for all of at once: what stands between its outermost "and"; itself if there is
  /// none. The text of each is that of the whole.
  [[nodiscard]] std::vector<Condition> terms() const;

  struct Node;

 private:
  std::shared_ptr<const Node> root_;  // immutable, so copies may share it
  std::vector<Signal> signals_;
  std::string text_;
};

/// The number behind a word for a signal: the position of a control, a judgement, the decision.
/// None if that signal has no such word; `allowed` then lists those it has.
[[nodiscard]] std::optional<double> findSignalWord(Signal signal, std::string_view word,
                                                   std::vector<std::string_view>& allowed);

/// The other way round: "forward" of 1. Empty if the value has no word.
[[nodiscard]] std::string_view findWordOfValue(Signal signal, float value);

}  // namespace cabwright::unit
