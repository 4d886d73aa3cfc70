// SPDX-License-Identifier: GPL-3.0-or-later
// The mark sheet: head, lines with evidence, totals, and the decision last.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "marking/aim.h"
#include "marking/judgement.h"
#include "marking/rule_set.h"
#include "marking/verdict.h"

namespace cabwright::marking {

/// Something worth a line in the head: a fault put in, a freeze, a prompt, a remark. The words are
/// of the session: an action as it was done, or what somebody said.
struct SheetNote {
  std::int64_t tick = 0;
  std::string text;
};

/// Who, what, under which conditions. Empty fields are left out in print.
struct SheetHead {
  std::string title, purpose;
  std::string trainee, instructor, assessor, attempt;
  std::string mode;  ///< "guided", "practice", "assessment"
  std::string scenario, scenario_hash;
  std::string vehicle, route, conditions_told;
  std::string session_id, session_hash, started_utc;
  std::string plant_version, program_version;
  std::optional<std::uint64_t> seed;
  std::int64_t last_tick = 0;  ///< length of the run
  std::optional<double> time_allowed_s;
  std::vector<SheetNote> faults, freezes, prompts;
  std::vector<SheetNote> paces;          ///< the time of the run was made to pass at "0.5" ...
  std::vector<SheetNote> interventions;  ///< the instructor stepped in, with the reason
  std::vector<SheetNote> remarks;        ///< made by the instructor, not said to the trainee
  std::vector<SheetNote> taken_again;    ///< the run began as a repetition, up to here
  /// When the instructor first stepped in: what came later was not done unaided.
  std::optional<std::int64_t> unaided_until;
  std::vector<SheetNote> limits_met;  ///< where the machine left the range of the model
};

struct PassRule {
  double pass_percent = 80;
  std::vector<std::string> phases;  ///< order of the headings; others come after, as they appear
};

/// What had been ruled when the instructor first stepped in. It is this that the lines say and
/// count; what they came to with help stands beside it.
struct UnaidedPart {
  std::int64_t until = 0;         ///< tick
  std::vector<Verdict> verdicts;  ///< as Marker::verdicts gave them then
};

/// Recorded later by a person, each with a reason; the automatic verdict stays beside it.
struct Override {
  std::string who, when_utc, reason;
  std::optional<Outcome> outcome;  ///< what it shall count as
};

struct SheetLine {
  int number = 0;
  std::size_t rule = 0;
  std::string id, phase, title, why, advice, tolerance;
  RuleClass rule_class = RuleClass::kSerious;
  Reads reads = Reads::kShown;
  double weight = 0;
  Verdict verdict;
  /// What the whole run came to, where that is something else than its unaided part.
  std::optional<Outcome> aided_outcome;
  /// Broken, but dragged along by another line: shown, and counted there.
  std::optional<int> follows_line;
  std::optional<std::int64_t> prompted_at;       ///< met, prompted: earns nothing
  std::optional<double> self_corrected_after_s;  ///< as the assessor recorded it
  std::string void_reason;                       ///< not empty: does not count at all
  std::optional<Override> override_record;
  double possible = 0, earned = 0;
  bool fails_run = false;

  /// What the line counts as, after an override.
  [[nodiscard]] Outcome outcome() const;
  /// "met", "met, prompted", "self-corrected after 3.0 s", "broken", "follows from line 4",
  /// "not exercised", "void (reason)", "pending good" ...
  [[nodiscard]] std::string verdictText() const;
};

struct SheetTotals {
  double possible = 0, earned = 0;
  double percent = 0;  ///< 0 if nothing could be earned
  int met = 0, broken = 0, following = 0, not_exercised = 0, pending = 0, voided = 0, prompted = 0;
};

struct Decision {
  bool complete = false;  ///< the run has ended
  bool in_time = true;    ///< the aim reached, or the run ended, in the time allowed
  bool passed = false;
  std::vector<int> failed_by;  ///< lines of broken criticals
  std::string text;            ///< one sentence
};

struct MarkSheet {
  SheetHead head;
  PassRule pass;
  std::vector<SheetLine> lines;  ///< criticals first, then by phase, inside a phase by time
  std::optional<AimResult> aim;
  std::optional<JudgementTable> judgements;
  JudgementPolicy judgement_policy;
  SheetTotals totals;
  Decision decision;
};

/// `verdicts` as Marker::verdicts gives them, at the end of a run or before.
[[nodiscard]] MarkSheet makeSheet(const SheetHead& head, const PassRule& pass, const RuleSet& rules,
                                  const std::vector<Verdict>& verdicts,
                                  std::optional<JudgementTable> judgements = std::nullopt,
                                  const JudgementPolicy& policy = {},
                                  std::optional<AimResult> aim = std::nullopt,
                                  const std::optional<UnaidedPart>& unaided = std::nullopt);

/// Works out points, following lines, totals and decision anew, after prompts, voids or overrides
/// have been put into the lines.
void settleSheet(MarkSheet& sheet, const RuleSet& rules);

/// "4.9 s in hand", "missed by 0.5 inHg"; empty where there is no "by how much", as of a switch.
[[nodiscard]] std::string describeMargin(const Verdict& verdict);
/// "14.64 inHg", "1", or the word for that position: "release".
[[nodiscard]] std::string describeValue(unit::Signal signal, float value);
/// "miss", "hit, revised", "right, not looked".
[[nodiscard]] std::string describeResult(const JudgementRow& row);
/// Whole percent, never more than was reached: 79.9 is not the 80 that were asked for.
[[nodiscard]] std::string describePercent(double percent);

/// Calm plain text, 79 columns.
[[nodiscard]] std::string printSheet(const MarkSheet& sheet);
[[nodiscard]] nlohmann::json sheetToJson(const MarkSheet& sheet);
/// The same as text, indented; bytes that are no UTF-8 are replaced.
[[nodiscard]] std::string printSheetJson(const MarkSheet& sheet);

}  // namespace cabwright::marking
