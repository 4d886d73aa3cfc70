// SPDX-License-Identifier: GPL-3.0-or-later
// The report of a session on paper: what was decided and by whom, whether the record is what was
// sealed, who and what, how long it is good for, the whole run as a strip, every line that was not
// kept with its gauges, the cab at that moment, why and what to do instead, then the other lines,
// judgements, what assessors added, and the cautions.
#pragma once

#include <QImage>
#include <QString>
#include <functional>
#include <optional>

#include "review/recency.h"
#include "review/report_facts.h"
#include "review_room/opened.h"

namespace cabwright::review_room {

/// What was to be seen at a moment, as a picture; null when there is none.
using MomentPicture = std::function<QImage(std::int64_t tick)>;

struct ReportOptions {
  QString program;        ///< version of the program that writes it
  MomentPicture picture;  ///< of the deciding moments; empty: without pictures
  QString language;       ///< code of the language it is written in, for the file; may be empty
  /// Which of the trainee's attempts it was; empty: not known.
  std::optional<review::AttemptPlace> attempt = std::nullopt;
  review::RecencyRules recency = {};  ///< for how long a pass is good here
};

/// Of so many moments there are pictures: the criticals first, as the lines stand on the sheet.
inline constexpr int kMostPictures = 8;

/// Writes a PDF, complete under its name or not at all. Empty: done; else why not, in one line.
[[nodiscard]] std::optional<QString> writeReport(const Opened& session, const QString& file,
                                                 const ReportOptions& options);

}  // namespace cabwright::review_room
