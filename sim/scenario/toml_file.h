// SPDX-License-Identifier: GPL-3.0-or-later
// From text to tables, with every error in the form of the file and not only the first. Used by the
// readers only.
#pragma once

#include <toml++/toml.h>

#include "scenario/fault_sink.h"

namespace cabwright::scenario {

struct TomlFile {
  toml::table root;
  /// Lines that could not be read were left out: what is missing now is not a fault of its own.
  bool broken = false;
};

/// Never throws; errors go to the sink.
[[nodiscard]] TomlFile parseToml(const SourceFile& file, FaultSink& sink);

}  // namespace cabwright::scenario
