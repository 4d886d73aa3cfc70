// SPDX-License-Identifier: GPL-3.0-or-later
#include "random_machine.h"

#include <algorithm>
#include <cmath>

namespace cabwright::testing {

using quantity::Random;

plant::Parameters makeSensibleParameters(Random& r) {
  plant::Parameters p;
  for (const plant::ParameterInfo& info : plant::parameterTable()) {
    const double standard = info.of(p);
    const double factor = drawBetween(r, 0.8, 1.25);
    const bool only_by_fault = standard == 0.0 || standard == 1.0;
    const bool whole = standard == std::floor(standard) && info.unit == "teeth";
    if (only_by_fault || whole || info.name.find("planets") != std::string::npos) continue;
    info.of(p) = std::clamp(standard * factor, info.lowest, info.highest);
    if (!plant::findParameterFaults(p).empty()) info.of(p) = standard;
  }
  return p;
}

void drawTeeth(Random& r, plant::GearboxParameters& box) {
  const auto draw = [&](double& sun, double& annulus) {
    do {
      sun = 20.0 + static_cast<double>(r.uniformBelow(30));
      annulus = sun + 16.0 + 2.0 * static_cast<double>(r.uniformBelow(24));
    } while (std::fmod(sun + annulus, box.planets) != 0.0);
  };
  draw(box.sun_1, box.annulus_1);
  draw(box.sun_2, box.annulus_2);
  draw(box.sun_3, box.annulus_3);
}

plant::StartConditions makeRandomStart(Random& r) {
  plant::StartConditions s;
  for (const plant::StartInfo& info : plant::startTable()) {
    // What follows from others stays so: speeds and pressures drawn each for itself would be no
    // machine.
    if (info.standard == plant::kUsual) continue;
    info.of(s) = drawBetween(r, info.lowest, info.highest);
  }
  s.speed_mph = r.uniformBelow(2) == 0 ? 0.0 : drawBetween(r, -40.0, 40.0);
  s.position_m = 0.0;
  // A pump can draw no more than the pipe had: the pressures of a vacuum stay above its ultimate.
  for (plant::LineStart& line : s.line) {
    line.crank_rpm = r.uniformBelow(2) == 0 ? 0.0 : drawBetween(r, 0.0, 1900.0);
    line.dog_side = static_cast<double>(r.uniformBelow(3)) - 1.0;
    line.latch_tripped = static_cast<double>(r.uniformBelow(2));
    line.trapped_air = r.uniformBelow(2) == 0 ? 0.0 : r.uniform01();
    line.coolant_c = std::max(line.coolant_c, s.ambient_c);
    line.oil_c = std::max(line.oil_c, s.ambient_c);
  }
  return s;
}

plant::GradeProfile makeRandomLine(Random& r) {
  std::vector<plant::GradePoint> points;
  for (double at = -2000.0; at < 2000.0; at += drawBetween(r, 60.0, 600.0)) {
    points.push_back({at, drawBetween(r, -0.03, 0.03), drawBetween(r, 0.0, 20.0)});
  }
  return plant::GradeProfile(points);
}

void actOn(plant::PlantInputs& u, std::uint64_t handle, std::uint64_t which, double level) {
  const bool on = level > 0.5;
  plant::LineInputs& line = u.line[which % 2];
  plant::CabInputs& cab = u.cab[which % 2];
  switch (handle) {
    case 0:
      line.starter_contactor = on;
      break;
    case 1:
      line.stop_solenoid = on;
      break;
    case 2:
      line.fuel_cock_open = on;
      break;
    case 3:
      line.hand_throttle = level;
      break;
    case 4:
      line.throttle_notch = static_cast<int>(level * 4.999);
      break;
    case 5:
      line.gear_valve[which % 4] = on;
      break;
    case 6:
      line.shift_forward = on;
      break;
    case 7:
      line.shift_reverse = on;
      break;
    case 8:
      line.shift_air_cock_open = on;
      break;
    case 9:
      line.sleeve_pinned = on;
      break;
    case 10:
      line.sleeve_to_middle = on;
      break;
    case 11:
      cab.drivers_valve = 2.0 * level - 1.0;
      break;
    case 12:
      cab.device_held = on;
      break;
    case 13:
      cab.device_in_circuit = on;
      break;
    case 14:
      cab.device_cock_open = on;
      break;
    case 15:
      cab.guards_valve = level;
      break;
    case 16:
      cab.handbrake = level;
      break;
    case 17:
      cab.horn = on;
      break;
    case 18:
      u.battery_switch_closed = on;
      break;
    case 19:
      u.load_conductance_s = 5.0 * level;
      break;
    case 20:
      u.passenger_alarm = on;
      break;
    case 21:
      u.release_cord[which % 4] = on;
      break;
    case 22:
      u.reservoir_drain[which % 2] = on;
      break;
    case 23:
      u.hose_on_dummy[which % 2] = on;
      break;
    case 24:
      u.scotch[which % 2] = on;
      break;
    case 25:  // a gear as the lever gives it, on both
      for (plant::LineInputs& both : u.line) {
        both.gear_valve.fill(false);
        const auto gear = static_cast<std::size_t>(level * 4.999);
        if (gear > 0) both.gear_valve[gear - 1] = true;
      }
      break;
    case 26:  // a notch on both
      for (plant::LineInputs& both : u.line) both.throttle_notch = static_cast<int>(level * 4.999);
      break;
    default:
      break;
  }
}

void actAtRandom(Random& r, plant::PlantInputs& u) {
  const std::uint64_t handle = r.uniformBelow(kHandles), which = r.uniformBelow(4);
  actOn(u, handle, which, r.uniform01());
}

}  // namespace cabwright::testing
