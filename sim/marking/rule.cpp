// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/rule.h"

#include <array>

namespace cabwright::marking {
namespace {

// In the order of RuleKind.
constexpr std::array<std::string_view, 22> kKinds{"precedence",
                                                  "alternate_precedence",
                                                  "chain_precedence",
                                                  "response",
                                                  "alternate_response",
                                                  "absence",
                                                  "existence",
                                                  "co_existence",
                                                  "not_co_existence",
                                                  "not_succession",
                                                  "order",
                                                  "sequence",
                                                  "all_before",
                                                  "never_while",
                                                  "limit",
                                                  "hold_for",
                                                  "once_within",
                                                  "held_since",
                                                  "hold_after",
                                                  "reach_within",
                                                  "hold_until",
                                                  "fall_told"};
static_assert(kKinds.size() == static_cast<std::size_t>(RuleKind::kFallTold) + 1);

constexpr std::array<std::string_view, 3> kClasses{"technique", "serious", "critical"};
constexpr std::array<std::string_view, 3> kLetters{"T", "S", "C"};

}  // namespace

std::optional<RuleKind> findRuleKind(std::string_view word) {
  for (std::size_t k = 0; k < kKinds.size(); ++k) {
    if (kKinds[k] == word) return static_cast<RuleKind>(k);
  }
  return std::nullopt;
}
std::string_view wordOf(RuleKind kind) { return kKinds[static_cast<std::size_t>(kind)]; }
std::span<const std::string_view> ruleKindWords() { return kKinds; }

std::optional<RuleClass> findRuleClass(std::string_view word) {
  for (std::size_t k = 0; k < kClasses.size(); ++k) {
    if (kClasses[k] == word || kLetters[k] == word) return static_cast<RuleClass>(k);
  }
  return std::nullopt;
}
std::string_view wordOf(RuleClass c) { return kClasses[static_cast<std::size_t>(c)]; }
std::string_view letterOf(RuleClass c) { return kLetters[static_cast<std::size_t>(c)]; }

std::optional<Reads> findReads(std::string_view word) {
  if (word == "shown") return Reads::kShown;
  if (word == "true") return Reads::kTrue;
  return std::nullopt;
}
std::string_view wordOf(Reads r) { return r == Reads::kShown ? "shown" : "true"; }

}  // namespace cabwright::marking
