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

/// The sheet on the screen has a colour; paper has its own.
void whiten(QImage& image);

void setDecision(Paper& paper, const ReportMatter& matter);
/// Who and what, then the whole run as a strip and what the record is worth, in the order in which
/// they fill the page.
void setFacts(Paper& paper, const ReportMatter& matter);
void setBrokenLines(Paper& paper, const ReportMatter& matter);
void setOtherLines(Paper& paper, const ReportMatter& matter);
void setEntries(Paper& paper, const ReportMatter& matter);
void setCautions(Paper& paper, const ReportMatter& matter);

/// "trainee 07", or that the name was erased.
[[nodiscard]] QString personWords(const session::Person& person);

}  // namespace cabwright::review_room
