// SPDX-License-Identifier: GPL-3.0-or-later
// The words an empty field shows: quieter than what is written there, and still to be read.
#pragma once

namespace cabwright::drawing {

/// From now on all fields of the application keep them at a contrast of 4.5 to 1 and more; a style
/// sheet alone would make them half transparent. Needs a QApplication, once.
void keepHintsReadable();

}  // namespace cabwright::drawing
