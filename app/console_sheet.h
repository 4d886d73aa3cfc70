// SPDX-License-Identifier: GPL-3.0-or-later
// A mark sheet on standard output.
#pragma once

#include "console_commands.h"
#include "marking/sheet.h"

namespace cabwright::console {

void putSheet(const Context& context, const marking::MarkSheet& sheet, bool as_json);

}  // namespace cabwright::console
