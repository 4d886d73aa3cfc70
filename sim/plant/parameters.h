// SPDX-License-Identifier: GPL-3.0-or-later
// Every number of the machine. One line each in parameter_list.h gives default, bounds, unit and
// meaning with its source; that line makes the field, the range check, the name a vehicle file or a
// fault uses, and the manual page. All values are house values of a generic vehicle unless the line
// names a source ("CP": common practice in the trade, no published source).
#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "plant/inputs.h"
#include "plant/parameter_list.h"

namespace cabwright::plant {

#define CABWRIGHT_FIELD(name, value, lo, hi, unit, text) double name = value;
struct EngineParameters {
  CABWRIGHT_ENGINE(CABWRIGHT_FIELD)
};
struct StarterParameters {
  CABWRIGHT_STARTER(CABWRIGHT_FIELD)
};
struct GeneratorParameters {
  CABWRIGHT_GENERATOR(CABWRIGHT_FIELD)
};
struct CouplingParameters {
  CABWRIGHT_COUPLING(CABWRIGHT_FIELD)
};
struct FreewheelParameters {
  CABWRIGHT_FREEWHEEL(CABWRIGHT_FIELD)
};
struct BandParameters {
  CABWRIGHT_BAND(CABWRIGHT_FIELD)
};
struct ClutchParameters {
  CABWRIGHT_CLUTCH(CABWRIGHT_FIELD)
};
struct GearboxParameters {
  CABWRIGHT_GEARBOX(CABWRIGHT_FIELD)
  std::array<BandParameters, kBands> band;
  ClutchParameters clutch;
};
struct FinalDriveParameters {
  CABWRIGHT_FINAL_DRIVE(CABWRIGHT_FIELD)
};
struct CompressorParameters {
  CABWRIGHT_COMPRESSOR(CABWRIGHT_FIELD)
};
struct ExhausterParameters {
  CABWRIGHT_EXHAUSTER(CABWRIGHT_FIELD)
};
struct ThrottleMotorParameters {
  CABWRIGHT_THROTTLE_MOTOR(CABWRIGHT_FIELD)
};
struct AirParameters {
  CABWRIGHT_AIR(CABWRIGHT_FIELD)
};
struct VacuumParameters {
  CABWRIGHT_VACUUM(CABWRIGHT_FIELD)
};
struct DriversValveParameters {
  CABWRIGHT_DRIVERS_VALVE(CABWRIGHT_FIELD)
};
struct SafetyDeviceParameters {
  CABWRIGHT_SAFETY_DEVICE(CABWRIGHT_FIELD)
};
struct CylinderParameters {
  CABWRIGHT_CYLINDER(CABWRIGHT_FIELD)
};
struct HandbrakeParameters {
  CABWRIGHT_HANDBRAKE(CABWRIGHT_FIELD)
};
struct BatteryParameters {
  CABWRIGHT_BATTERY(CABWRIGHT_FIELD)
};
struct TrainParameters {
  CABWRIGHT_TRAIN(CABWRIGHT_FIELD)
};
#undef CABWRIGHT_FIELD

struct Parameters {
  std::array<EngineParameters, kLines> engine;
  std::array<StarterParameters, kLines> starter;
  std::array<GeneratorParameters, kLines> generator;
  std::array<CouplingParameters, kLines> coupling;
  std::array<FreewheelParameters, kLines> freewheel;
  std::array<GearboxParameters, kLines> gearbox;
  std::array<FinalDriveParameters, kLines> final_drive;
  std::array<CompressorParameters, kLines> compressor;
  std::array<ExhausterParameters, kLines> exhauster;
  std::array<ThrottleMotorParameters, kLines> throttle_motor;
  AirParameters air;
  VacuumParameters vacuum;
  std::array<DriversValveParameters, kCabs> drivers_valve;
  std::array<SafetyDeviceParameters, kCabs> safety_device;
  std::array<CylinderParameters, kCylinders> brake_cylinder;
  std::array<HandbrakeParameters, kCabs> handbrake;
  BatteryParameters battery;
  TrainParameters train;

  /// The standard vehicle: the defaults of the list, and what differs between bands and cylinders.
  Parameters();
};

/// All that leaks into the train pipe but through open hoses and valves, dm3/(s bar): at these
/// places and along it.
[[nodiscard]] constexpr double calcTrainLeakC(const VacuumParameters& v) {
  return v.train_leak_c + v.end1_leak_c + v.end2_leak_c + v.between_leak_c + v.side1_leak_c +
         v.side2_leak_c + v.trailer1_leak_c + v.trailer2_leak_c;
}
/// All that the main reservoir and its pipes lose, dm3/(s bar).
[[nodiscard]] constexpr double calcMainLeakC(const AirParameters& a) {
  return a.main_leak_c + a.between_leak_c + a.trailer1_leak_c + a.trailer2_leak_c;
}

/// One number of the machine as people and files know it. The name is dotted, with the instance
/// number on the group: "engine1.displacement_m3", "gearbox2.band3.friction", "air.cut_out_psi".
/// A file may leave the number out to mean all instances: "gearbox.band3.friction".
struct ParameterInfo {
  std::string name;
  std::size_t offset;  ///< of the double inside Parameters
  double standard;     ///< value when no file says otherwise
  double lowest, highest;
  std::string_view unit;
  std::string_view text;

  [[nodiscard]] double& of(Parameters& p) const;
  [[nodiscard]] double of(const Parameters& p) const;
};

/// All parameters, in a fixed order.
[[nodiscard]] const std::vector<ParameterInfo>& parameterTable();

/// Those a written name speaks of: one for an exact name, several when the instance number is left
/// out ("engine.inertia_kg_m2"), none when unknown.
[[nodiscard]] std::vector<const ParameterInfo*> findParameters(std::string_view written);

/// Everything that is wrong with a set of values, one sentence each with name, value and bound;
/// also what only shows in combination (teeth that do not fit or cannot be assembled, a cut-in
/// above the cut-out). Empty when sound.
[[nodiscard]] std::vector<std::string> findParameterFaults(const Parameters& p);

}  // namespace cabwright::plant
