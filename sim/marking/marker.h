// SPDX-License-Identifier: GPL-3.0-or-later
// Marks a run: Frames and Actions go in in the order they happened, verdicts come out. Live and
// afterwards it is the same code on the same input, so it gives the same marks.
#pragma once

#include <cstdint>
#include <memory>
#include <vector>

#include "marking/outlook.h"
#include "marking/rule_set.h"
#include "marking/verdict.h"
#include "unit/action.h"
#include "unit/frame.h"

namespace cabwright::marking {

/// Wants Frames at least ten times a second and one right before each action (what a session file
/// holds). Between two Frames the earlier one counts. Things of the same tick come in the order
/// they are told. A value: a copy is a mark to return to.
class Marker {
 public:
  explicit Marker(std::shared_ptr<const RuleSet> rules);
  Marker(const Marker&);
  Marker(Marker&&) noexcept;
  Marker& operator=(const Marker&);
  Marker& operator=(Marker&&) noexcept;
  ~Marker();

  void seeFrame(const unit::Frame& frame);
  void seeAction(std::int64_t tick, const unit::Action& action);
  /// The run is over: what is pending becomes final. Nothing counts afterwards.
  void finish(std::int64_t tick);

  [[nodiscard]] bool isFinished() const;
  [[nodiscard]] const RuleSet& rules() const;
  /// One for each rule, in the order of the rules; at any time.
  [[nodiscard]] std::vector<Verdict> verdicts() const;
  /// What each rule that is not decided yet waits for, what would break next first. Of rules that
  /// are done with there is none; none at all before the first Frame and after the end.
  [[nodiscard]] std::vector<Outlook> outlook() const;
  /// What fell so far, in order of time; the first ten thousand.
  [[nodiscard]] const std::vector<Mark>& marks() const;

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace cabwright::marking
