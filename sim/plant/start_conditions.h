// SPDX-License-Identifier: GPL-3.0-or-later
// How the machine stands when a run begins: every number can be set by name from a scenario file.
// X(field, default, lowest, highest, unit, meaning); those of a line or cab exist twice. The ones
// whose default is kUsual follow from others unless they are said: they carry a machine that is
// under way on from where it was.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "plant/inputs.h"
#include "plant/parameters.h"

namespace cabwright::plant {

/// The value of a start condition that nobody has said and that follows from others; no value that
/// can be said.
inline constexpr double kUsual = -1e9;
[[nodiscard]] constexpr double orUsual(double said, double usual) {
  return said == kUsual ? usual : said;
}

// clang-format off
#define CABWRIGHT_START_LINE(X) \
  X(crank_rpm, 0.0, 0.0, 2500.0, "rpm", "engine speed (0: stopped)") \
  X(coolant_c, 15.0, -30.0, 120.0, "C", "coolant and block") \
  X(oil_c, 15.0, -30.0, 140.0, "C", "engine oil") \
  X(box_oil_c, 15.0, -30.0, 140.0, "C", "gearbox oil") \
  X(coupling_c, 15.0, -30.0, 200.0, "C", "coupling oil") \
  X(coolant_level, 1.0, 0.0, 1.0, "", "coolant, share of full") \
  X(fuel_kg, 250.0, 0.0, 1000.0, "kg", "fuel in the tank") \
  X(trapped_air, 0.0, 0.0, 1.0, "", "air in the fuel system: 1 after a night") \
  X(latch_tripped, 1.0, 0.0, 1.0, "", "fuel latch: 1 tripped by the last stop") \
  X(dog_side, 0.0, -1.0, 1.0, "", "dogs: 1 meshed forward (car 1 leads), -1 reverse, 0 middle") \
  X(tooth_phase_deg, 15.0, 0.0, 360.0, "deg", "angle from the start of a gap to where the dog stands; a gap is 0..window") \
  X(gear_psi, 0.0, 0.0, 120.0, "psi", "air in all gear cylinders") \
  X(gear1_psi, kUsual, 0.0, 120.0, "psi", "air in one gear cylinder, if it is not as in all") \
  X(gear2_psi, kUsual, 0.0, 120.0, "psi", "the same, gear 2") \
  X(gear3_psi, kUsual, 0.0, 120.0, "psi", "the same, gear 3") \
  X(gear4_psi, kUsual, 0.0, 120.0, "psi", "the same, gear 4") \
  X(throttle_psi, kUsual, 0.0, 120.0, "psi", "air in the throttle motor; none unless said") \
  X(shift_forward_psi, kUsual, 0.0, 120.0, "psi", "air in the forward shift cylinder; none unless said") \
  X(shift_reverse_psi, kUsual, 0.0, 120.0, "psi", "air in the reverse shift cylinder; none unless said") \
  X(turbine_rpm, kUsual, -3000.0, 3000.0, "rpm", "turbine of the coupling; with the crank unless said") \
  X(box_in_rpm, kUsual, -3000.0, 3000.0, "rpm", "gearbox input; with the crank unless said") \
  X(box_out_rpm, kUsual, -6000.0, 6000.0, "rpm", "gearbox output; with the wheels unless said") \
  X(lever, kUsual, 0.0, 1.0, "", "throttle at the engine; shut unless said") \
  X(rack, kUsual, 0.0, 1.0, "", "fuel rack; as at idle, or shut, unless said") \
  X(wall_c, kUsual, -30.0, 300.0, "C", "cylinder walls; as the coolant unless said") \
  X(starter_c, kUsual, -30.0, 400.0, "C", "starter's winding; as the air unless said") \
  X(drum1_c, kUsual, -30.0, 900.0, "C", "brake drum of gear 1; as the box's oil unless said") \
  X(drum2_c, kUsual, -30.0, 900.0, "C", "the same, gear 2") \
  X(drum3_c, kUsual, -30.0, 900.0, "C", "the same, gear 3") \
  X(clutch_c, kUsual, -30.0, 900.0, "C", "clutch of gear 4; likewise") \
  X(protection_tripped, kUsual, 0.0, 1.0, "", "1: the engine's protection has shut it down") \
  X(compressor_loaded, kUsual, 0.0, 1.0, "", "0: the compressor runs unloaded")
#define CABWRIGHT_START_CAB(X) \
  X(device_psi, 0.0, 0.0, 100.0, "psi", "safety device timing volume")
#define CABWRIGHT_START_UNIT(X) \
  X(ambient_c, 15.0, -30.0, 45.0, "C", "air temperature") \
  X(main_psi, 0.0, 0.0, 120.0, "psi", "main reservoir") \
  X(control_psi, 0.0, 0.0, 120.0, "psi", "control reservoir") \
  X(train_pipe_inhg, 0.0, 0.0, 29.0, "inHg", "train pipe") \
  X(release_pipe_inhg, 0.0, 0.0, 29.0, "inHg", "release pipe and its reservoir") \
  X(chamber_inhg, 0.0, 0.0, 29.0, "inHg", "chambers above the brake pistons") \
  X(battery_charge, 1.0, 0.0, 1.0, "", "battery, share of full") \
  X(position_m, 0.0, -1e6, 1e6, "m", "where the middle of the unit stands") \
  X(speed_mph, 0.0, -80.0, 80.0, "mph", "speed, positive: car 1 leads") \
  X(chamber1_inhg, kUsual, 0.0, 29.9, "inHg", "one chamber, if it is not as the others") \
  X(chamber2_inhg, kUsual, 0.0, 29.9, "inHg", "the same, cylinder 2") \
  X(chamber3_inhg, kUsual, 0.0, 29.9, "inHg", "the same, cylinder 3") \
  X(chamber4_inhg, kUsual, 0.0, 29.9, "inHg", "the same, cylinder 4") \
  X(piston1_mm, kUsual, 0.0, 500.0, "mm", "brake piston; where its pressures put it unless said") \
  X(piston2_mm, kUsual, 0.0, 500.0, "mm", "the same, cylinder 2") \
  X(piston3_mm, kUsual, 0.0, 500.0, "mm", "the same, cylinder 3") \
  X(piston4_mm, kUsual, 0.0, 500.0, "mm", "the same, cylinder 4") \
  X(polarisation_v, kUsual, -30.0, 30.0, "V", "what the battery's voltage still lacks; none unless said")
// clang-format on

#define CABWRIGHT_FIELD(name, value, lo, hi, unit, text) double name = value;
struct LineStart {
  CABWRIGHT_START_LINE(CABWRIGHT_FIELD)
};
struct CabStart {
  CABWRIGHT_START_CAB(CABWRIGHT_FIELD)
};
/// What stayed switched on while a unit stood.
struct LeftOn {
  bool battery_switch_closed = true;
  double load_s = 0.0;  ///< on the bus behind that switch, siemens
};

struct StartConditions {
  CABWRIGHT_START_UNIT(CABWRIGHT_FIELD)
  std::array<LineStart, kLines> line;
  std::array<CabStart, kCabs> cab;

  /// What a unit left warm, charged and fully prepared to stand has become after so many hours:
  /// temperatures, air, vacuum and battery each follow their own decay, through the parameters that
  /// are given: what leaks or draws too much there has done so all the while. The chambers are
  /// those of brake cylinder 1. Air in the fuel system follows common practice, no published source
  /// (1 from eight hours on). hours >= 0.
  static StartConditions afterStanding(double hours, double ambient_c,
                                       const Parameters& p = Parameters(),
                                       const LeftOn& on = LeftOn());
};
#undef CABWRIGHT_FIELD

/// A start condition as files know it: "line1.coolant_c", "cab1.device_psi", "ambient_c"; "line."
/// and "cab." without a number mean both.
struct StartInfo {
  std::string name;
  std::size_t offset;
  double standard, lowest, highest;
  std::string_view unit, text;
  [[nodiscard]] double& of(StartConditions& s) const;
  [[nodiscard]] double of(const StartConditions& s) const;
  /// Inside the bounds, or not said where that is possible.
  [[nodiscard]] bool allows(double value) const {
    return (value >= lowest && value <= highest) || (standard == kUsual && value == kUsual);
  }
};
[[nodiscard]] const std::vector<StartInfo>& startTable();
[[nodiscard]] std::vector<const StartInfo*> findStartConditions(std::string_view written);

}  // namespace cabwright::plant
