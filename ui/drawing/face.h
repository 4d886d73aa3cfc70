// SPDX-License-Identifier: GPL-3.0-or-later
// The face the sheets are set in.
#pragma once

#include <QString>

namespace cabwright::drawing {

/// To be called once, before the application object is made. The monospaced sister of B612 carries
/// the same family name for old programs and would be taken for it; here it is left out of what
/// this process sees of the system's fonts. Without the call sheets are drawn all the same, perhaps
/// in that face.
void prepareFaces();

/// B612 where it is installed, else the system's own. Needs the application object; looks once and
/// remembers.
[[nodiscard]] QString faceName();

}  // namespace cabwright::drawing
