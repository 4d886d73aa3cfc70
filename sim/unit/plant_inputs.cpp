// SPDX-License-Identifier: GPL-3.0-or-later
// From the circuits and the hand controls to what the machine feels.
#include <algorithm>

#include "unit/interlocks.h"

namespace cabwright::unit {

namespace {

constexpr double kNominalV = 24.0;

bool valveOpen(double stuck, bool wanted) {
  return stuck > 0.5 ? true : stuck < -0.5 ? false : wanted;
}

void fillLine(const InterlockInputs& in, const InterlockResult& r, const UnitParameters& p,
              std::size_t n, plant::LineInputs& out) {
  const int line = static_cast<int>(n);
  const auto at = [&](Control of_engine1) { return in.control[ofEngine(of_engine1, line)]; };
  out.starter_contactor = r.starter[n];
  out.stop_solenoid = r.stop[n];
  out.fuel_cock_open = at(Control::kEngine1FuelCock) > 0.25;
  out.hand_throttle = at(Control::kEngine1HandThrottle);
  const int stuck_notch = static_cast<int>(p.throttle_valve[n].stuck_notch + 0.5);
  out.throttle_notch = std::max(r.notch[n], stuck_notch);
  const double gear_stuck[plant::kGears] = {
      p.gear_valve[n].gear1_stuck, p.gear_valve[n].gear2_stuck, p.gear_valve[n].gear3_stuck,
      p.gear_valve[n].gear4_stuck};
  for (int g = 0; g < plant::kGears; ++g) {
    out.gear_valve[static_cast<std::size_t>(g)] = valveOpen(gear_stuck[g], r.gear[n] == g + 1);
  }
  out.shift_forward = valveOpen(p.direction_valve[n].forward_stuck, r.direction > 0);
  out.shift_reverse = valveOpen(p.direction_valve[n].reverse_stuck, r.direction < 0);
  out.shift_air_cock_open = at(Control::kEngine1AirCock) > 0.5;
  out.sleeve_pinned = at(Control::kEngine1Pin) > 0.5;
  out.sleeve_to_middle = at(Control::kEngine1Sleeve) > 0.5;
}

void fillCab(const InterlockInputs& in, const InterlockResult& r, const UnitParameters& p,
             std::size_t c, plant::CabInputs& out) {
  const int cab = static_cast<int>(c);
  const auto at = [&](Control of_cab1) { return in.control[ofCab(of_cab1, cab)]; };
  out.drivers_valve = at(Control::kCab1Brake);
  out.device_held = at(Control::kCab1Device) > 0.5 || p.desk[c].device_valve_stuck > 0.5;
  out.device_in_circuit = r.device_in_circuit[c];
  out.device_cock_open = at(Control::kCab1DeviceCock) > 0.5;
  out.guards_valve = at(Control::kCab1GuardsValve);
  out.handbrake = at(Control::kCab1Handbrake);
  const double tone = at(Control::kCab1Horn);
  // A dead tone passes no air: its valve or its trumpet is shut.
  const double dead = p.desk[c].horn_dead;
  const bool low_dead = (dead > 0.5 && dead < 1.5) || dead > 2.5, high_dead = dead > 1.5;
  out.horn = (tone > 0.5 && tone < 1.5 && !low_dead) || (tone > 1.5 && !high_dead);
}

// Watts drawn at the nominal voltage by everything switched on.
double calcLoad(const InterlockInputs& in, const InterlockResult& r, const UnitParameters& p) {
  const LoadParameters& w = p.load;
  double watts = w.extra_w;
  double valves = 0.0;
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    valves += (r.starter[n] ? 1 : 0) + (r.stop[n] ? 1 : 0) + (r.notch[n] > 0 ? 1 : 0) +
              (r.gear[n] > 0 ? 1 : 0) + (r.direction != 0 ? 1 : 0);
  }
  watts += valves * w.valve_w;
  for (std::size_t c = 0; c < plant::kCabs; ++c) {
    const int cab = static_cast<int>(c);
    const int lamps = (r.lamp_air[c] ? 1 : 0) + (r.lamp_device[c] ? 1 : 0) +
                      (r.lamp_charge[c] ? 1 : 0) + (r.lamp_fire[c] ? 1 : 0) +
                      (r.lamp_engine[c][0] ? 1 : 0) + (r.lamp_engine[c][1] ? 1 : 0);
    watts += lamps * w.lamp_w;
    if (r.desk[c]) watts += w.desk_w;
    if (r.white[c]) watts += w.marker_w;
    if (r.red[c]) watts += w.tail_w;
    if (r.fire_bell[c]) watts += w.bell_w;
    if (!r.lights_fed) continue;
    if (in.control.on(ofCab(Control::kCab1CabLight, cab))) watts += w.cab_light_w;
    if (in.control.on(ofCab(Control::kCab1Display, cab))) watts += w.display_w;
    if (in.control.on(ofCab(Control::kCab1Wiper, cab))) watts += w.wiper_w;
  }
  if (r.lights_fed && in.control.on(Control::kSaloonLights)) watts += w.saloon_w;
  if (r.lights_fed && in.control.on(Control::kHeater)) watts += w.heater_w;
  return watts;
}

}  // namespace

plant::PlantInputs calcPlantInputs(const InterlockInputs& in, const InterlockResult& result,
                                   const UnitParameters& p) {
  plant::PlantInputs out;
  for (std::size_t n = 0; n < plant::kLines; ++n) fillLine(in, result, p, n, out.line[n]);
  for (std::size_t c = 0; c < plant::kCabs; ++c) fillCab(in, result, p, c, out.cab[c]);
  out.battery_switch_closed = in.control.on(Control::kBatterySwitch);
  out.load_conductance_s = calcLoad(in, result, p) / (kNominalV * kNominalV);
  out.passenger_alarm = in.control.on(Control::kAlarm);
  constexpr Control kCords[plant::kCylinders] = {Control::kCord1, Control::kCord2, Control::kCord3,
                                                 Control::kCord4};
  for (std::size_t k = 0; k < plant::kCylinders; ++k) {
    out.release_cord[k] = in.control.on(kCords[k]);
  }
  out.reservoir_drain = {in.control.on(Control::kDrainMain), in.control.on(Control::kDrainControl)};
  out.hose_on_dummy = {in.control.on(Control::kHose1), in.control.on(Control::kHose2)};
  out.scotch = {in.control.on(Control::kScotch1), in.control.on(Control::kScotch2)};
  return out;
}

}  // namespace cabwright::unit
