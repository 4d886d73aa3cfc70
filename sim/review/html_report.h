// SPDX-License-Identifier: GPL-3.0-or-later
// The report of a session as one HTML page that needs nothing else: decision, head, every line with
// its evidence (gauges as shown, the truth beside them, and how they moved there), judgements, what
// assessors added, cautions. For the screen and for paper; no script, no colour that means anything
// alone.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

#include "review/recency.h"
#include "review/report_facts.h"
#include "review/review.h"
#include "session/signal_history.h"
#include "session/verify.h"

namespace cabwright::review {

struct ReportInput {
  Reviewed reviewed;
  session::Verification verification;
  /// The signals that the evidence speaks of, over the whole session.
  session::SignalHistory history;
  std::string plant;                    ///< describePlant()
  ShelfItem label;                      ///< lookAt()
  std::string digest;                   ///< SHA-256 of the file as it was read, hexadecimal
  std::optional<AttemptPlace> attempt;  ///< findAttempt(), for who looks beside the file
  std::string program;                  ///< version that makes the report; empty: not said
  /// For how long a pass is good at this station, and which day it was there. Without them the
  /// day is that of UTC, and the time is left to the operator.
  std::optional<RecencyRules> recency;
  DayOf day_of;
};

/// Reads, marks and verifies the session. Throws SessionError.
[[nodiscard]] ReportInput loadReport(const std::filesystem::path& file);

[[nodiscard]] std::string makeHtmlReport(const ReportInput& input);

/// Text as it stands in HTML, in an element or a quoted attribute; control characters that HTML
/// does not take are replaced.
[[nodiscard]] std::string escapeHtml(std::string_view text);

/// A curve of what was shown and one of what was true (broken line), from so many ticks before a
/// moment to so many after, as SVG; empty when there is nothing to draw.
[[nodiscard]] std::string drawStrip(const session::SignalHistory& history,
                                    const marking::Reading& reading, std::int64_t tick);

}  // namespace cabwright::review
