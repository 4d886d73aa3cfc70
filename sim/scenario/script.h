// SPDX-License-Identifier: GPL-3.0-or-later
// Action scripts: who does what and when, one thing on a line.
//
//   # breaks: hb-on               at the head of a script that is to fail: the rule it breaks
//   # anything                    a comment
//   at 12.5 s: set cab1.key on    at this time of the run
//   after 3 s: set cab1.gear 1    so long after the line above was due
//   then: set cab1.throttle 1     as soon as the last one is done: who walks has to arrive first
//   set cab1.throttle 2           the same without the word
//   wait 5 s                      nothing for so long
//   wait until cab1.air >= 75 psi at most 90 s
//   guard: ring bell 2            somebody else does it ("at 3 min: guard: ring bell 2")
//
// Times: "2.5 s", "3 min", "1 min 30 s", "1 h"; whole hundredths of a second.
//
// A script may be another one but for a few lines. Then its first line that is no comment names the
// script beside it, and nothing but edits follow:
//
//   as good                       the steps of good.txt, which must be whole itself
//   without "LINE"                not this one
//   without "LINE" to "LINE"      none of these, from one line to the other; neither between them
//   instead of "LINE":            these steps in its place (also: "LINE" to "LINE"), up to "end"
//     STEPS
//   end
//   before "LINE":                and before "end" likewise what is done besides; or after "LINE":
//
// LINE is a step of that script letter by letter, without blanks at its ends; a quotation mark in
// it is written twice. It (or the stretch from one to the other) must be there once, or be counted:
// 2nd "LINE", last "LINE"; behind "to" from the first line on. Comments are no steps. All edits
// speak of the script as it stands, whatever other edits do to it; no two may speak of a line that
// one of them takes away.
#pragma once

#include <cstdint>
#include <filesystem>
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
  std::size_t file = 0;  ///< which of the script's files it stands in
  std::size_t line = 0;
};

struct Script {
  std::string name;                   ///< of its file
  std::vector<SourceFile> files;      ///< its own, and the one it stands on if there is one
  std::optional<std::string> breaks;  ///< the rule a failing script is to break
  std::vector<ScriptStep> steps;
  [[nodiscard]] FilePlace placeOf(const ScriptStep& step) const;
};

/// Says what is wrong with the words of an action (Unit::findActionFault); may be empty.
using ActionCheck = std::function<std::optional<std::string>(const unit::Action&)>;

/// The scripts that one may stand on, by name without ".txt".
struct Neighbours {
  /// The text, what is wrong with its file, or nothing: there is none.
  std::function<std::optional<std::variant<SourceFile, FileFault>>(const std::string&)> find;
  std::function<std::vector<std::string>()> names;  ///< all there are, for who mistypes
};
/// Those in the folder of a script.
[[nodiscard]] Neighbours neighboursOf(const std::filesystem::path& script);

/// All faults at once, those of the script it stands on included.
[[nodiscard]] std::variant<Script, FileFaults> parseScript(const SourceFile& file,
                                                           const ActionCheck& check = {},
                                                           const Neighbours& neighbours = {});

/// Plays a script. A value: a copy is a mark to return to.
class ScriptRunner {
 public:
  struct Due {
    unit::Action action;
    FilePlace at;
  };
  explicit ScriptRunner(Script script);

  /// What is due at this Frame, in order; to be applied before the next tick. Every tick, from the
  /// Frame before the first tick on. Nothing more after the end or a fault.
  std::vector<Due> advance(const unit::Frame& frame);

  [[nodiscard]] bool isDone() const;
  /// A wait that ran out (with the values of its signals) or a time that had passed already.
  [[nodiscard]] const std::optional<FileFault>& fault() const { return fault_; }
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
