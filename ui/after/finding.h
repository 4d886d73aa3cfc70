// SPDX-License-Identifier: GPL-3.0-or-later
// The result of a run in one sentence, and what belongs beside it.
#pragma once

#include <QString>
#include <QStringList>

#include "marking/sheet.h"

namespace cabwright::after {

struct Finding {
  bool passed = false;
  bool critical = false;  ///< something critical decided it
  QString sentence;       ///< "Not yet: ..." or "Passed: ..."
  QString seen;           ///< what was seen at the line that decided; may be empty
  QStringList facts;      ///< exercise, who, how long, points, in this order
  QString told;           ///< what was told beforehand; may be empty
};

[[nodiscard]] Finding makeFinding(const marking::MarkSheet& sheet);

/// "98 of 99 points, 80 % needed".
[[nodiscard]] QString pointsSentence(const marking::MarkSheet& sheet);

}  // namespace cabwright::after
