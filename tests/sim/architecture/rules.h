// SPDX-License-Identifier: GPL-3.0-or-later
// The rules of the house that a compiler does not see. Each takes files and names every offence;
// the tests hold the tree to them, and hold them to made-up files that offend.
#pragma once

#include <vector>

#include "source_tree.h"

namespace cabwright::architecture {

using Sources = std::vector<SourceFile>;

/// A room of sim/ includes only rooms below it, and nothing of app/ and ui/.
[[nodiscard]] Offences findArrowsUp(const Sources& files);

/// sim/CMakeLists.txt gives a room only what lies below it.
[[nodiscard]] Offences findLinksUp(const Sources& files);

/// No Qt below ui/ and app/: neither included nor linked.
[[nodiscard]] Offences findQtInSim(const Sources& files);

/// Nothing in sim/ whose bits depend on the processor or the library: the C library's exp, sin and
/// their kind, random distributions and devices, hashed containers, loosened
/// floating point.
[[nodiscard]] Offences findUnsteadyArithmetic(const Sources& files);

/// plant/ and unit/ never look at the clock on the wall.
[[nodiscard]] Offences findWallClocks(const Sources& files);

/// Every source file says its licence near its top.
[[nodiscard]] Offences findMissingLicences(const Sources& files);

/// Headers are guarded, and small files stay small.
[[nodiscard]] Offences findUnguardedHeaders(const Sources& files);
[[nodiscard]] Offences findLongFiles(const Sources& files);

/// Nothing is left for later with a mark in the code.
[[nodiscard]] Offences findLeftOpen(const Sources& files);

}  // namespace cabwright::architecture
