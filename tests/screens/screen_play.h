// SPDX-License-Identifier: GPL-3.0-or-later
// Brings a window's run to where a picture is wanted.
#pragma once

#include <string>

#include "desktop/main_window.h"

namespace cabwright::screens {

/// One word of the command line; see window_shot.
void play(desktop::MainWindow& window, const std::string& exercise, const std::string& words);

}  // namespace cabwright::screens
