// SPDX-License-Identifier: GPL-3.0-or-later
// Engines and the electric bus: fuel, firing, heat, starting and charging.
#include <algorithm>
#include <cmath>

#include "plant/electrics.h"
#include "plant/machine.h"
#include "quantity/elementary.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {

constexpr double kLastCoolant = 0.03;    // share of full; far below where the protection trips
constexpr double kBreakawayFades = 1.0;  // rad/s: above it only running friction is left

double mix(double light, double full, double share) { return light + (full - light) * share; }

// Throttle motor: the piston follows the notch as far as its air reaches against the spring.
void calcThrottle(const Machine& m, const State& x, std::size_t n, State& dx, const Forces& out) {
  const ThrottleMotorParameters& t = m.p.throttle_motor[n];
  const double openings[5] = {0.0, t.opening_1, t.opening_2, t.opening_3, t.opening_4};
  const double psi = q::paToPsiGauge(out.throttle_pa[n]);
  const double reach =
      std::clamp((psi - t.spring_start_psi) / (t.spring_end_psi - t.spring_start_psi), 0.0, 1.0);
  const int notch = std::clamp(m.u.line[n].throttle_notch, 0, 4);
  dx[stateOf(n, kLever)] = (openings[notch] * reach - x[stateOf(n, kLever)]) / t.lag_s;
}

double calcRackTarget(const Machine& m, const State& x, std::size_t n) {
  const LineFlags& flag = m.flags[n];
  if (flag.latch_tripped || flag.protection_tripped || m.u.line[n].stop_solenoid) return 0.0;
  const double lever = std::max(x[stateOf(n, kLever)], m.u.line[n].hand_throttle);
  return calcGovernorRack(m.p.engine[n], m.p.throttle_motor[n], lever, x[speedOf(n, kCrank)]);
}

struct Burn {
  double indicated_nm = 0, fuel_w = 0, wall_w = 0, exhaust_w = 0;
};

Burn calcBurn(const Machine& m, const State& x, std::size_t n, Forces& out) {
  const EngineParameters& p = m.p.engine[n];
  const double speed = x[speedOf(n, kCrank)];
  Burn burn;
  double delivery = calcDelivery(p, x[stateOf(n, kRack)], speed);
  delivery *= 1.0 - std::clamp(x[stateOf(n, kTrapped)], 0.0, 1.0);
  delivery *= std::clamp(x[stateOf(n, kFuelKg)] / 0.2, 0.0, 1.0);
  if (!m.u.line[n].fuel_cock_open || speed <= 0.0) delivery = 0.0;
  out.delivery[n] = delivery;
  if (delivery <= 0.0) {
    out.fired[n] = 0.0;
    out.unburnt[n] = 0.0;
    return burn;
  }
  const Compression end =
      calcCompression(p, m.d.engine_logs[n], speed, m.d.gas_k, x[stateOf(n, kWallK)]);
  const double fired = calcFiredFraction(p, m.d.engine_logs[n], end, speed) * p.cylinders_firing;
  out.fired[n] = fired;
  out.unburnt[n] = delivery * (1.0 - fired);
  const double full_nm = m.d.torque[n].calcIndicated(speed) * delivery;
  const double efficiency = mix(p.efficiency_light, p.efficiency_full, delivery);
  burn.indicated_nm = full_nm * fired;
  burn.fuel_w = full_nm * speed / efficiency;
  const double burnt_w = burn.fuel_w * fired;
  burn.wall_w = burnt_w * mix(p.wall_share_light, p.wall_share_full, delivery);
  burn.exhaust_w = burn.fuel_w - burn.indicated_nm * speed - burn.wall_w;
  return burn;
}

void calcHeat(const Machine& m, const State& x, std::size_t n, const Burn& burn, double friction_w,
              State& dx) {
  const EngineParameters& p = m.p.engine[n];
  const double speed = std::abs(x[speedOf(n, kCrank)]);
  const double wall = x[stateOf(n, kWallK)], coolant = x[stateOf(n, kCoolantK)],
               oil = x[stateOf(n, kOilK)];
  const double level = x[stateOf(n, kCoolantLevel)];
  const double wet = std::clamp(level / p.trip_level, 0.05, 1.0);
  const double wall_w =
      (p.wall_coolant_w_k + p.wall_coolant_speed_w_k * speed) * wet * (wall - coolant);
  const double oil_w = p.oil_coolant_w_k * (oil - coolant);
  const double c = q::kelvinToCelsius(coolant);
  const double open =
      p.thermostat_factor *
      std::clamp((c - p.thermostat_open_c) / (p.thermostat_full_c - p.thermostat_open_c), 0.0, 1.0);
  const double governed = q::rpmToRadPerSec(p.governor_rpm_4);
  const double fan =
      p.radiator_still + (1.0 - p.radiator_still) * p.fan_factor * std::min(1.0, speed / governed);
  const double radiator_w = open * fan * wet * p.radiator_w_k * (coolant - m.d.gas_k);
  const double block_w = p.coolant_ambient_w_k * (coolant - m.d.gas_k);
  const double sump_w = p.oil_ambient_w_k * (oil - m.d.gas_k);
  dx[stateOf(n, kWallK)] = (burn.wall_w - wall_w) / p.wall_capacity_j_k;
  // The block is half of the capacity, the water the rest; the mass lost takes its heat along.
  const double capacity = p.coolant_capacity_j_k * (0.5 + 0.5 * std::clamp(level, 0.0, 1.0));
  dx[stateOf(n, kCoolantK)] =
      (wall_w + oil_w - radiator_w - block_w + (1.0 - p.friction_to_oil) * friction_w) / capacity;
  dx[stateOf(n, kOilK)] = (p.friction_to_oil * friction_w - oil_w - sump_w) / p.oil_capacity_j_k;
  // The last of it runs out more slowly, so that level and heat come to their end together.
  const double leak = p.coolant_leak_per_s * std::clamp(level / kLastCoolant, 0.0, 1.0);
  dx[stateOf(n, kCoolantLevel)] = -leak;
  // Coolant that leaks carries its heat out: booked against the ambient temperature.
  const double carried_w = 0.5 * p.coolant_capacity_j_k * leak * (coolant - m.d.gas_k);
  dx[kAmbientJ] += radiator_w + block_w + sump_w + carried_w;
}

}  // namespace

void calcEngineRates(const Machine& m, const State& x, std::size_t n, State& dx, Forces& out) {
  const EngineParameters& p = m.p.engine[n];
  const double speed = x[speedOf(n, kCrank)];
  calcThrottle(m, x, n, dx, out);
  dx[stateOf(n, kRack)] =
      (calcRackTarget(m, x, n) - x[stateOf(n, kRack)]) / p.rack_lag_s * (1.0 - p.rack_stick);
  const Burn burn = calcBurn(m, x, n, out);
  const double rev_s = std::abs(speed) / (2.0 * q::kPi);
  const double trapped = x[stateOf(n, kTrapped)];
  const double dry = x[stateOf(n, kFuelKg)] < 0.2 ? 1.0 : 0.0;
  dx[stateOf(n, kTrapped)] =
      -trapped * rev_s / p.purge_revs + (p.air_ingress_per_s + dry * rev_s) * (1.0 - trapped);
  // What leaks runs slower as the last litre of it goes: a tank is empty and never less.
  const double left = std::clamp(x[stateOf(n, kFuelKg)], 0.0, 1.0);
  dx[stateOf(n, kFuelKg)] = -burn.fuel_w / p.fuel_lhv_j_kg - p.fuel_leak_kg_s * left;

  // Friction stands as a row of its own, so that a stopped engine stays stopped.
  const double thick = q::detExp(
      p.viscosity_exponent * calcLogViscosityRatio(p, q::kelvinToCelsius(x[stateOf(n, kOilK)])));
  const double mep = calcFrictionMep(p, thick, calcPeakPressure(out.delivery[n]),
                                     calcPistonSpeed(p, std::abs(speed)));
  const double friction = calcMepTorque(mep, p.displacement_m3) +
                          p.cranking_loss_nm * q::detExp(-std::abs(speed) / p.cranking_loss_decay);
  out.friction_nm[n] = friction;
  out.indicated_nm[n] = burn.indicated_nm;
  Bounds& b = out.bounds;
  const std::size_t row = kCrankRow + n;
  const double held =
      friction + p.breakaway_nm * std::max(0.0, 1.0 - std::abs(speed) / kBreakawayFades);
  b.lo[row] = -held;
  b.hi[row] = held;

  const double aux = out.aux_nm[n] + p.fan_nm_s2 * speed * speed;
  // Auxiliaries load a turning engine either way round.
  const double aux_nm = aux * speed / (std::abs(speed) + 0.5);
  out.f[speedOf(n, kCrank)] += burn.indicated_nm - aux_nm;
  out.aux_nm[n] = aux_nm;
  dx[kAuxiliaryJ] += aux_nm * speed;
  dx[kFuelJ] += burn.fuel_w;
  dx[kExhaustJ] += burn.exhaust_w;
  calcHeat(m, x, n, burn, held * std::abs(speed), dx);
}

void calcElectricRates(const Machine& m, const State& x, State& dx, Forces& out) {
  const BatteryParameters& b = m.p.battery;
  BusInputs in;
  const bool closed = m.u.battery_switch_closed;
  const double rest = calcSourceVoltage(b, x[kCharge]);
  const double polarisation = x[kPolarisationV];
  in.source_v = closed ? std::max(0.0, rest - polarisation) : 0.0;
  in.source_ohm = calcBatteryResistance(b, q::kelvinToCelsius(m.d.gas_k));
  in.charge_ohm = calcChargeResistance(b, q::kelvinToCelsius(m.d.gas_k), x[kCharge]);
  in.load_s = m.u.load_conductance_s + b.earth_s;
  for (std::size_t n = 0; n < kLines; ++n) {
    in.starter_on[n] = closed && m.u.line[n].starter_contactor && m.flags[n].pinion_in;
    in.motor_rad_per_s[n] = std::max(0.0, x[speedOf(n, kCrank)]) * m.p.starter[n].ratio;
    in.crank_rad_per_s[n] = closed ? x[speedOf(n, kCrank)] : 0.0;
  }
  const BusState bus = closed ? solveBus(m.p, in) : BusState{};
  out.bus_v = bus.bus_v;
  out.battery_a = bus.battery_a;
  double ohmic = 0.0;
  for (std::size_t n = 0; n < kLines; ++n) {
    const StarterParameters& s = m.p.starter[n];
    const double amps = bus.starter_a[n];
    out.starter_a[n] = amps;
    out.generator_a[n] = bus.generator_a[n];
    const double speed = x[speedOf(n, kCrank)];
    const double crank_nm = calcStarterTorque(s, amps) * s.ratio * s.efficiency;
    out.f[speedOf(n, kCrank)] += crank_nm;
    // What the motor draws and does not give to the crank heats its winding.
    const double heat = bus.bus_v * amps - crank_nm * std::max(0.0, speed);
    const double lost = s.cooling_w_k * (x[stateOf(n, kStarterK)] - m.d.gas_k);
    dx[stateOf(n, kStarterK)] = (heat - lost) / s.heat_j_k;
    dx[kAmbientJ] += lost;
    if (bus.generator_a[n] > 0.0) {
      const double electric = bus.bus_v * bus.generator_a[n];
      const double shaft = electric / m.p.generator[n].efficiency;
      out.f[speedOf(n, kCrank)] -= shaft / speed;
      out.aux_nm[n] += shaft / speed;
      dx[kAuxiliaryJ] += shaft - electric;
    }
    if (m.flags[n].pinion_in && !in.starter_on[n]) {
      const double lag_nm = calcDrivenArmatureTorque(s, speed);
      out.f[speedOf(n, kCrank)] -= lag_nm;
      dx[stateOf(n, kStarterK)] += lag_nm * speed / s.heat_j_k;
    }
    // Backwards the starter brakes the crank with its torque: the work comes out as winding heat.
    if (speed < 0.0) dx[stateOf(n, kStarterK)] -= crank_nm * speed / s.heat_j_k;
  }
  const double amps = bus.battery_a;
  // A full battery turns charging current into gas and heat instead of charge.
  const double kept = amps < 0.0 ? std::clamp((1.0 - x[kCharge]) * 50.0, 0.0, 1.0) : 1.0;
  const double coulombs = b.capacity_ah * 3600.0;
  const double self = x[kCharge] > 0.0 ? b.self_discharge_a : 0.0;
  dx[kCharge] = -(amps * kept + self) / coulombs;
  dx[kPolarisationV] = (amps * b.polarisation_ohm - polarisation) / b.polarisation_s;
  ohmic = closed ? amps * (rest - bus.bus_v) : 0.0;
  dx[kElectricJ] += in.load_s * bus.bus_v * bus.bus_v + ohmic;
  dx[kBatteryJ] += rest * amps;
}

}  // namespace cabwright::plant
