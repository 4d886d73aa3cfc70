// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a report, each set on the paper it is given.
#pragma once

#include <map>

#include "review_room/report.h"
#include "review_room/report_paper.h"

namespace cabwright::review_room {

/// A session with what is worked out only once, however often it is set.
struct ReportMatter {
  const Opened& session;
  const ReportOptions& options;
  after::FinishedRun run;  ///< its sheet with all overrides
  QString file_hash;       ///< SHA-256 of the file as it was read
  std::map<std::int64_t, QImage> pictures;
};

void setDecision(Paper& paper, const ReportMatter& matter);
void setFacts(Paper& paper, const ReportMatter& matter);
/// The whole run as a strip.
void setStrip(Paper& paper, const ReportMatter& matter);
void setBrokenLines(Paper& paper, const ReportMatter& matter);
void setOtherLines(Paper& paper, const ReportMatter& matter);
void setEntries(Paper& paper, const ReportMatter& matter);
void setCautions(Paper& paper, const ReportMatter& matter);

/// "trainee 07", or that the name was erased.
[[nodiscard]] QString personWords(const session::Person& person);

}  // namespace cabwright::review_room
