// SPDX-License-Identifier: GPL-3.0-or-later
// Where each quantity stands in the state vector, and the rows of friction and locks.
#pragma once

#include <array>
#include <cstddef>

#include "plant/inputs.h"

namespace cabwright::plant {

inline constexpr std::size_t kSpeeds = 12;  ///< generalised speeds: two lines of five, w3, v

/// Speeds of a drive line, in order from the crank to the wheel.
enum LineSpeed : std::size_t { kCrank, kTurbine, kBoxIn, kBoxOut, kWheel, kLineSpeeds };

[[nodiscard]] constexpr std::size_t speedOf(std::size_t line, LineSpeed which) {
  return line * kLineSpeeds + which;
}
inline constexpr std::size_t kTrailingWheel = 10;
inline constexpr std::size_t kTrain = 11;

/// Other states of one line, each behind the speeds.
enum LineState : std::size_t {
  kShaftAngle,
  kWheelAngle,
  kRack,
  kLever,
  kWallK,
  kCoolantK,
  kOilK,
  kTrapped,
  kFuelKg,
  kCoolantLevel,
  kCouplingK,
  kBoxOilK,
  kStarterK,
  kDrumK,                      // three drums ...
  kClutchK = kDrumK + kBands,  // ... and the clutch
  kSleeve,
  kThrottleMass,
  kGearMass,  // four gear cylinders
  kShiftForwardMass = kGearMass + kGears,
  kShiftReverseMass,
  kLineStates
};

enum UnitState : std::size_t {
  kPosition = kSpeeds + kLines * kLineStates,
  kMainMass,
  kControlMass,
  kDeviceMass,                      // two cabs
  kHornMass = kDeviceMass + kCabs,  // two cabs
  kReleaseMass = kHornMass + kCabs,
  kTrainMass,
  kChamberMass,  // four cylinders
  kPiston = kChamberMass + kCylinders,
  kCharge = kPiston + kCylinders,  ///< battery, share of full
  kPolarisationV,
  // Ledgers: energies in J, masses in kg, summed since the start; they act on nothing.
  kFuelJ,        ///< heat of the fuel injected
  kExhaustJ,     ///< with the exhaust, unburnt fuel included
  kAmbientJ,     ///< from coolant, oil, coupling, box and starter to the air
  kAuxiliaryJ,   ///< shaft work into compressors, exhausters, fan and the generator's loss
  kResistanceJ,  ///< rolling and air resistance
  kBlockJ,       ///< brake blocks
  kRailJ,        ///< wheel slip
  kBearingJ,     ///< shaft and bevel drag, tooth faces, freewheel
  kElectricJ,    ///< loads and ohmic losses outside the starter winding
  kBatteryJ,     ///< drawn from the battery's open-circuit voltage
  kAirInKg,      ///< compressed
  kAirOutKg,     ///< to atmosphere from the air system
  kVacuumOutKg,  ///< drawn off by the exhausters
  kVacuumInKg,   ///< let into the vacuum system
  kStates
};

[[nodiscard]] constexpr std::size_t stateOf(std::size_t line, std::size_t which) {
  return kSpeeds + line * kLineStates + which;
}

using State = std::array<double, kStates>;

/// Rows of the friction and lock problem: v_rel = J q, force J^T lambda, lo <= lambda <= hi.
enum Row : std::size_t {
  kFreewheelRow = 0,                        // 2: box input less turbine
  kBandRow = kFreewheelRow + kLines,        // 2 x 3: drum speed
  kClutchRow = kBandRow + kLines * kBands,  // 2: input less output
  kDogRow = kClutchRow + kLines,            // 2: crown wheel less (+-) axle
  kRailRow = kDogRow + kLines,              // 3: wheel surface less train
  kBlockRow = kRailRow + 3,                 // 3: wheel
  kBreakawayRow = kBlockRow + 3,            // train
  kCrankRow = kBreakawayRow + 1,            // 2: crank
  kShaftRow = kCrankRow + kLines,           // 2: shaft in its bearings
  kRows = kShaftRow + kLines
};

using SpeedVector = std::array<double, kSpeeds>;
using RowVector = std::array<double, kRows>;

}  // namespace cabwright::plant
