// SPDX-License-Identifier: GPL-3.0-or-later
// A line of the sheet in sentences, for whatever shows one.
#pragma once

#include <QString>
#include <QStringList>

#include "after/finished_run.h"

namespace cabwright::after {

/// "0:15:12.0, cab 1"; or that it never came up.
[[nodiscard]] QString whenAndWhere(const FinishedRun& run, const marking::SheetLine& line);

/// What was seen, done and measured, one sentence each; last an assessor's decision on it.
[[nodiscard]] QStringList doneWords(const marking::SheetLine& line);

/// "serious", or of a critical that was broken "critical, decides the run".
[[nodiscard]] QString rankWords(const marking::SheetLine& line);

/// Over what was shown when it fell, and what was so; of a line that never came up, at the end.
[[nodiscard]] QString evidenceTitle(const marking::SheetLine& line, int cab);

}  // namespace cabwright::after
