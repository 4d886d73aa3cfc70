// SPDX-License-Identifier: GPL-3.0-or-later
// A session of the shelf in the reader's words, and which of them are asked for.
#pragma once

#include <QDateTime>
#include <QString>
#include <optional>
#include <vector>

#include "drawing/verdict.h"
#include "review/shelf.h"

namespace cabwright::review_room {

enum class ShelfColumn {
  kTrainee,
  kExercise,
  kStarted,
  kMode,
  kLength,
  kOutcome,
  kDecision,
  kSeal,
  kFile,
};
inline constexpr int kShelfColumns = 9;

struct ShelfRow {
  review::ShelfItem item;
  QDateTime started;  ///< local time; not valid where none is known
  /// One text for each column.
  QStringList cells;
  drawing::VerdictSign sign = drawing::VerdictSign::kNone;  ///< of the outcome
  QString searched;  ///< all that free text is looked for in, in small letters
  [[nodiscard]] const QString& cell(ShelfColumn column) const {
    return cells[static_cast<qsizetype>(column)];
  }
};

/// In the order they are in. Exercises are translated once for all sessions of one.
[[nodiscard]] std::vector<ShelfRow> makeRows(std::vector<review::ShelfItem> items);

[[nodiscard]] QString outcomeName(review::ShelfOutcome outcome);
/// Of the word an assessor's decision has in a file; empty: none.
[[nodiscard]] QString decisionName(const std::string& word);
/// "0:14:05".
[[nodiscard]] QString lengthText(std::int64_t ticks);
/// "15 Mar 2031, 09:12", as the reader's language has it.
[[nodiscard]] QString momentText(const QDateTime& local);

/// Which sessions are shown. What is empty asks for nothing.
struct ShelfFilter {
  QString trainee;   ///< as traineeKey() has it
  QString exercise;  ///< the scenario's title in a file
  QString mode;      ///< the word in a file
  std::optional<review::ShelfOutcome> outcome;
  QDate from, to;  ///< both days are in; not valid: no bound
  QString text;    ///< every word of it somewhere in the row
  bool operator==(const ShelfFilter&) const = default;
};
[[nodiscard]] bool passes(const ShelfRow& row, const ShelfFilter& filter);

}  // namespace cabwright::review_room
