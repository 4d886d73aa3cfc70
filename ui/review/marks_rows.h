// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of a mark sheet as plain rows of words, under their headings.
#pragma once

#include <QString>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "drawing/verdict.h"
#include "marking/sheet.h"
#include "review/entry.h"

namespace cabwright::review_room {

enum class MarkFilter : std::uint8_t { kAll, kBroken, kCritical, kOverridden };

struct MarkRow {
  std::string rule;  ///< id of the line; empty: a heading
  int number = 0;
  QString title;
  QString verdict;  ///< what it counts as: "broken", "follows from line 4", "void"
  QString was;      ///< what was recorded, where somebody said otherwise; empty: nobody did
  QString margin;   ///< "margin 0.6 s", "missed by 0.6 s"
  QString detail;   ///< what was seen, of lines that are not plainly kept
  QString points;   ///< "3 of 4"; of a heading what stands at its right
  QString moment;   ///< "0:15:12"
  std::optional<std::int64_t> tick;
  drawing::VerdictSign sign = drawing::VerdictSign::kNone;
  bool critical = false;
  bool commented = false;  ///< somebody has said something of it
  bool operator==(const MarkRow&) const = default;
};

/// Lines that the filter lets through, with a heading before each group.
[[nodiscard]] std::vector<MarkRow> makeMarkRows(const marking::MarkSheet& sheet,
                                                const std::vector<review::Entry>& entries,
                                                MarkFilter filter);
/// The same lines as somebody sees them who marks blind: in the order of the scenario, without
/// anything that says how they came out. `marked` has what that person said so far.
struct BlindDraft {
  std::string rule;
  marking::Outcome outcome = marking::Outcome::kNotExercised;
  bool operator==(const BlindDraft&) const = default;
};
[[nodiscard]] std::vector<MarkRow> makeBlindRows(const marking::MarkSheet& sheet,
                                                 const std::vector<BlindDraft>& marked);

struct MarkCounts {
  int all = 0, broken = 0, critical = 0, overridden = 0;
};
[[nodiscard]] MarkCounts countMarks(const marking::MarkSheet& sheet);

/// When the line fell; empty for one that never came up.
[[nodiscard]] std::optional<std::int64_t> findMoment(const marking::SheetLine& line);
/// The line that is before somebody at this moment: the last of these rows that had fallen by then.
/// Of several at one moment `kept` if it is among them. Empty: none had.
[[nodiscard]] std::string findRowAt(const std::vector<MarkRow>& rows, std::int64_t tick,
                                    const std::string& kept);

/// "met", "broken", "not exercised" ... in the reader's language.
[[nodiscard]] QString outcomeWord(marking::Outcome outcome);
/// What a line counts as: "broken", "met, prompted", "follows from line 4", "void".
[[nodiscard]] QString verdictWord(const marking::SheetLine& line);
/// "margin 0.6 s", "missed by 0.6 s"; empty without one, or where it is a mere yes or no.
[[nodiscard]] QString marginText(const marking::Verdict& verdict);
[[nodiscard]] drawing::VerdictSign signOf(const marking::SheetLine& line);

}  // namespace cabwright::review_room
