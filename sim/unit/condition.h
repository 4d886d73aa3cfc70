// SPDX-License-Identifier: GPL-3.0-or-later
// Conditions over a Frame as people write them in scenarios, scripts and rules:
//   cab1.air >= 75 psi and not cab1.lamp_air
// Signals by name, numbers with or without their unit (a wrong unit is a fault), + - * /, < <= > >=
// == !=, `near X by Y`, and / or / not, parentheses, abs( ). A bare signal is true from 0.5 up.
#pragma once

#include <memory>
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

class Condition {
 public:
  Condition();  ///< always true
  [[nodiscard]] static std::variant<Condition, ConditionFault> parse(std::string_view text);
  /// The truth, kept apart from the margin: x > c at x = c is false though its margin is 0.
  [[nodiscard]] bool holds(const Frame& frame) const;
  /// Robustness (signal temporal logic): positive by how much it holds, negative by how much it
  /// does not; min over and, max over or; in the unit of the term that decides. Of a switch: +-1.
  [[nodiscard]] double margin(const Frame& frame) const;
  /// Unit of the term that decides the margin at this frame, "" if it has none.
  [[nodiscard]] std::string_view marginUnit(const Frame& frame) const;
  /// The signals it reads, each once, in order of appearance.
  [[nodiscard]] const std::vector<Signal>& signals() const;
  [[nodiscard]] const std::string& text() const;

  struct Node;

 private:
  std::shared_ptr<const Node> root_;  // immutable, so copies may share it
  std::vector<Signal> signals_;
  std::string text_;
};

}  // namespace cabwright::unit
