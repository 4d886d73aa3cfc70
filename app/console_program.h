// SPDX-License-Identifier: GPL-3.0-or-later
// The command line of the console program: its commands, their options and the help that teaches.
#pragma once

#include "console_output.h"

namespace cabwright::console {

/// Reads the command line, does what it says and gives the exit code.
[[nodiscard]] int runConsole(Output& output, int count, char** words);

}  // namespace cabwright::console
