// SPDX-License-Identifier: GPL-3.0-or-later
// Verdicts of a run that goes on, as plain rows: those that have fallen, and what is still open.
#pragma once

#include <QString>
#include <cstdint>
#include <optional>
#include <vector>

#include "drawing/verdict.h"
#include "session/live_run.h"

namespace cabwright::desk {

enum class VerdictPart : std::uint8_t {
  kHeading,   ///< only words
  kCritical,  ///< a broken critical rule: it fails the run
  kFallen,
  kOpen,
};

struct VerdictRow {
  VerdictPart part = VerdictPart::kFallen;
  std::int64_t tick = -1;  ///< when it fell, or by when something has to be; -1: no moment
  QString title;
  QString verdict;  ///< the word: "met", "broken", "inside tolerance"; of open ones what is open
  QString margin;   ///< "0.9 s too short"; empty: none
  QString reason;   ///< one sentence
  QString moment;   ///< as it is written at the edge: "0:12:05", "in 4 s"
  drawing::VerdictSign sign = drawing::VerdictSign::kNone;
  marking::RuleClass rule_class = marking::RuleClass::kSerious;
  bool operator==(const VerdictRow&) const = default;
};

/// Broken criticals first, then all in the order in which they fell, the latest first.
[[nodiscard]] std::vector<VerdictRow> findFallen(const session::LiveRun& run);

/// What is not decided yet, nearest first.
[[nodiscard]] std::vector<VerdictRow> findOpen(const session::LiveRun& run);

struct VerdictCounts {
  int met = 0, broken = 0, critical = 0, open = 0, not_exercised = 0;
  bool operator==(const VerdictCounts&) const = default;
};
[[nodiscard]] VerdictCounts countVerdicts(const session::LiveRun& run);

}  // namespace cabwright::desk
