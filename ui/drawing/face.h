// SPDX-License-Identifier: GPL-3.0-or-later
// The face the sheets are set in.
#pragma once

#include <QString>

namespace cabwright::drawing {

/// Name to ask for: B612 (drawn for cockpit screens) where it is installed, else the system's face.
/// Needs the application object; looks once and remembers.
[[nodiscard]] QString faceName();

}  // namespace cabwright::drawing
