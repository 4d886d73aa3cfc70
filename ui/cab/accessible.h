// SPDX-License-Identifier: GPL-3.0-or-later
// What screen readers are told of the drawn parts: name, value, description, and what can be done.
#pragma once

namespace cabwright::cab {

/// Parts made from now on are found by screen readers. Once for the program; more calls do nothing.
void installAccessibility();

}  // namespace cabwright::cab
