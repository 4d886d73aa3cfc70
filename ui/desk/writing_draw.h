// SPDX-License-Identifier: GPL-3.0-or-later
// What the seed draws of ([[draw]]): the draws, and of each what can be drawn, one in a line:
//   end2.tail_lamp dead; weight 2
//   cab1.air offset 4
//   gearbox2.band3_worn; size 40 %; ramp 20 s
//   nothing
#pragma once

#include <QString>
#include <QWidget>
#include <optional>

#include "desk/writing.h"

namespace cabwright::desk {

/// The lines of a `from`, and a `from` of lines. A line means a fault when the catalogue has its
/// name, else a gauge or a lamp, else a thing; what is wrong in it the reader of scenarios says.
[[nodiscard]] QString candidateLines(const scenario::DraftValue& from);
[[nodiscard]] std::optional<scenario::DraftValue> readCandidates(const QString& lines);

/// The page's part: which draws there are, and the fields of the chosen one.
[[nodiscard]] QWidget* makeDraws(Writing& writing, QWidget* parent);

}  // namespace cabwright::desk
