// SPDX-License-Identifier: GPL-3.0-or-later
// Brings a window's run to where a picture is wanted.
#pragma once

#include <string>

#include "desktop/main_window.h"

namespace cabwright::screens {

/// One word of the command line; see window_shot.
void play(desktop::MainWindow& window, const std::string& exercise, const std::string& words);

/// Walks there, with the key of the doors in a pocket. Throws when it is not reached.
void reach(desktop::MainWindow& window, const unit::PlaceInfo& place);

}  // namespace cabwright::screens
