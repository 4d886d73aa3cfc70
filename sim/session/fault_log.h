// SPDX-License-Identifier: GPL-3.0-or-later
// What has become of the faults of a run, and who brought it about: for the desk.
#pragma once

#include <cstdint>
#include <string>

#include "fault/active_faults.h"
#include "unit/action.h"

namespace cabwright::session {

/// A fault that changed its stage.
struct FaultEvent {
  std::int64_t tick = 0;
  std::string id;
  const fault::FaultSpec* spec = nullptr;  ///< of the catalogue
  double size = 0;                         ///< in its unit
  fault::FaultStage stage = fault::FaultStage::kArmed;
  /// Of armed, growing and there: who armed it (kScenario: its file or its seed). Of cleared: who
  /// cleared it (kScenario: it was to end then).
  unit::Actor by = unit::Actor::kScenario;
  bool operator==(const FaultEvent&) const = default;
};

/// A fault as it stands.
struct FaultNow {
  std::string id;
  const fault::FaultSpec* spec = nullptr;
  double size = 0;
  fault::FaultStage stage = fault::FaultStage::kArmed;
  double share = 0;                         ///< how much of its size is there, 0 to 1
  unit::Actor by = unit::Actor::kScenario;  ///< who armed it
};

}  // namespace cabwright::session
