// SPDX-License-Identifier: GPL-3.0-or-later
// What stands at the head of a review: whose session it is, and whether it is what was recorded.
#pragma once

#include <QString>

#include "review_room/opened.h"

namespace cabwright::review_room {

/// "P. Example · Cold morning · assessment · began 3 February 2031, 04:05 UTC · 0:26:12".
[[nodiscard]] QString makeHeadWords(const Opened& opened);

struct SealWords {
  QString words;  ///< one line
  QString all;    ///< every finding, one a line
  QString look;   ///< object name of its label: good, bad, doubt
};
/// Whether it is whole, and who has reviewed it.
[[nodiscard]] SealWords makeSealWords(const Opened& opened);

}  // namespace cabwright::review_room
