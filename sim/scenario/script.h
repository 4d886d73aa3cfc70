// SPDX-License-Identifier: GPL-3.0-or-later
// Action scripts: who does what and when, one thing on a line.
//
//   # breaks: hb-off              on the first line, of a script that is to fail: the rule it
//   breaks # anything                    a comment at 12.5 s: set cab1.key on    at this time of
//   the run after 3 s: set cab1.gear 1    so long after the line above was due then: set
//   cab1.throttle 1     as soon as the last one is done: who walks has to arrive first set
//   cab1.throttle 2           the same without the word wait 5 s                      nothing for
//   so long wait until cab1.air >= 75 psi at most 90 s guard: ring bell 2            somebody else
//   does it ("at 3 min: guard: ring bell 2")
//
// Times: "2.5 s", "3 min", "1 min 30 s", "1 h"; whole hundredths of a second.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "scenario/file_fault.h"
#include "unit/action.h"
#include "unit/condition.h"
#include "unit/frame.h"

namespace cabwright::scenario {

struct ScriptStep {
  enum class Kind : std::uint8_t {
    kAt,         ///< `ticks` from the start of the run
    kAfter,      ///< `ticks` after the step before
    kThen,       ///< when the step before is done
    kWait,       ///< no action: `ticks` pass
    kWaitUntil,  ///< no action: until `condition` holds, `ticks` at most
  };
  Kind kind = Kind::kThen;
  std::int64_t ticks = 0;
  unit::Action action;
  unit::Condition condition;
  std::size_t line = 0;
};

struct Script {
  std::string name;                   ///< of its file
  std::optional<std::string> breaks;  ///< the rule a failing script is to break
  std::vector<ScriptStep> steps;
};

/// Says what is wrong with the words of an action (Unit::findActionFault); may be empty.
using ActionCheck = std::function<std::optional<std::string>(const unit::Action&)>;

/// All faults at once.
[[nodiscard]] std::variant<Script, FileFaults> parseScript(const SourceFile& file,
                                                           const ActionCheck& check = {});

/// Plays a script. A value: a copy is a mark to return to.
class ScriptRunner {
 public:
  struct Due {
    unit::Action action;
    std::size_t line = 0;
  };
  explicit ScriptRunner(Script script);

  /// What is due at this Frame, in order; to be applied before the next tick. Every tick, from the
  /// Frame before the first tick on. Nothing more after the end or a fault.
  std::vector<Due> advance(const unit::Frame& frame);

  [[nodiscard]] bool isDone() const;
  /// A wait that ran out (with the values of its signals) or a time that had passed already.
  [[nodiscard]] const std::optional<FileFault>& fault() const { return fault_; }
  /// Line of the step that is being waited for, of the last one when done.
  [[nodiscard]] std::size_t line() const;
  [[nodiscard]] const Script& script() const { return script_; }

 private:
  enum class Progress : std::uint8_t { kWaits, kDone };
  Progress advanceStep(const ScriptStep& step, const unit::Frame& frame, std::vector<Due>& due);
  void fail(const ScriptStep& step, std::string what);

  Script script_;
  std::size_t next_ = 0;
  std::int64_t since_ = 0;            ///< tick at which the step before was due
  std::optional<unit::Action> last_;  ///< acted at `since_`
  std::int64_t acted_at_ = -1;
  std::optional<FileFault> fault_;
};

}  // namespace cabwright::scenario
