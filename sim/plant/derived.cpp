// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "plant/machine.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {

void deriveConductances(const Parameters& p, Derived& d) {
  const auto k = [&](double c) { return calcChokedFactor(c, d.gas_k); };
  for (std::size_t n = 0; n < kLines; ++n) {
    const GearboxParameters& g = p.gearbox[n];
    for (std::size_t b = 0; b < kGears; ++b) {
      const bool band = b < kBands;
      d.gear_fill[n][b] = k(band ? g.band[b].fill_c : g.clutch.fill_c);
      d.gear_vent[n][b] = k(band ? g.band[b].vent_c : g.clutch.vent_c);
      d.gear_leak[n][b] = k(band ? g.band[b].leak_c : g.clutch.leak_c);
    }
    d.throttle_fill[n] = k(p.throttle_motor[n].fill_c);
    d.throttle_vent[n] = k(p.throttle_motor[n].vent_c);
    d.throttle_leak[n] = k(p.throttle_motor[n].leak_c);
    d.shift[n] = k(p.final_drive[n].shift_c);
    d.shift_leak[n] = k(p.final_drive[n].leak_c);
    d.exhauster_back[n] = k(p.exhauster[n].backflow_c);
  }
  d.check = k(p.air.check_c);
  d.check_back = k(p.air.check_back_c);
  d.main_leak = k(calcMainLeakC(p.air));
  d.control_leak = k(p.air.control_leak_c);
  d.drain = k(p.air.drain_c);
  d.horn = k(p.air.horn_c);
  d.horn_valve = k(p.air.horn_valve_c);
  d.relief = k(p.air.relief_c);
  for (std::size_t c = 0; c < kCabs; ++c) {
    d.device_charge[c] = k(p.safety_device[c].charge_c);
    d.device_choke[c] = k(p.safety_device[c].choke_c);
    d.device_vent[c] = k(p.safety_device[c].vent_c);
    d.valve_release[c] = k(p.drivers_valve[c].release_c);
    d.valve_full[c] = k(p.drivers_valve[c].full_c);
    d.lap_air[c] = k(p.drivers_valve[c].lap_to_air_c);
    d.lap_release[c] = k(p.drivers_valve[c].lap_to_release_c);
  }
  d.release_leak = k(p.vacuum.release_leak_c);
  d.train_leak = k(calcTrainLeakC(p.vacuum));
  d.hose = k(p.vacuum.hose_c);
  d.guards = k(p.vacuum.guards_c);
  d.guards_leak = k(p.vacuum.guards_leak_c);
  d.alarm = k(p.vacuum.alarm_c);
  for (std::size_t c = 0; c < kCylinders; ++c) {
    const CylinderParameters& y = p.brake_cylinder[c];
    d.ball[c] = k(y.ball_c);
    d.ball_leak[c] = k(y.ball_leak_c);
    d.chamber_leak[c] = k(y.leak_c);
    d.cord[c] = k(y.cord_c);
    d.piston_area[c] = 0.25 * q::kPi * y.bore_m * y.bore_m;
  }
}

void deriveGearbox(const Parameters& p, std::size_t n, Derived& d) {
  const GearboxParameters& g = p.gearbox[n];
  d.drum[n] = calcDrumMixes(g);
  d.dryness[n] = calcDryness(g);
  for (std::size_t b = 0; b < kBands; ++b) {
    const BandParameters& band = g.band[b];
    d.band[n][b] = calcBandGain(band.friction, band.wrap_rad, band.drum_radius_m);
    d.gear_cylinder[n][b] = {band.dead_m3, band.piston_m2 * band.stroke_m,
                             q::psiGaugeToPa(band.spring_start_psi),
                             q::psiGaugeToPa(band.spring_end_psi)};
  }
  d.gear_cylinder[n][kBands] = {g.clutch.dead_m3, g.clutch.piston_m2 * g.clutch.stroke_m,
                                q::psiGaugeToPa(g.clutch.spring_start_psi),
                                q::psiGaugeToPa(g.clutch.spring_end_psi)};
}

// The box has two degrees of freedom; the drums' inertia comes in through the Willis mixes.
void deriveInertia(const Parameters& p, Derived& d) {
  for (std::size_t n = 0; n < kLines; ++n) {
    const GearboxParameters& g = p.gearbox[n];
    double ii = g.input_kg_m2, io = 0.0, oo = g.output_kg_m2;
    for (std::size_t b = 0; b < kBands; ++b) {
      const DrumMix& mix = d.drum[n][b];
      const double j = g.band[b].drum_kg_m2;
      ii += j * mix.in * mix.in;
      io += j * mix.in * mix.out;
      oo += j * mix.out * mix.out;
    }
    const double det = ii * oo - io * io;
    d.w_diagonal[speedOf(n, kCrank)] = 1.0 / p.engine[n].inertia_kg_m2;
    d.w_diagonal[speedOf(n, kTurbine)] = 1.0 / p.coupling[n].turbine_kg_m2;
    d.w_diagonal[speedOf(n, kBoxIn)] = oo / det;
    d.w_diagonal[speedOf(n, kBoxOut)] = ii / det;
    d.w_box[n] = -io / det;
    d.w_diagonal[speedOf(n, kWheel)] = 1.0 / p.final_drive[n].wheelset_kg_m2;
    d.m_blocks[speedOf(n, kCrank)] = {p.engine[n].inertia_kg_m2, 0.0, 0.0};
    d.m_blocks[speedOf(n, kTurbine)] = {p.coupling[n].turbine_kg_m2, 0.0, 0.0};
    d.m_blocks[speedOf(n, kBoxIn)] = {ii, io, 0.0};
    d.m_blocks[speedOf(n, kBoxOut)] = {oo, io, 0.0};
    d.m_blocks[speedOf(n, kWheel)] = {p.final_drive[n].wheelset_kg_m2, 0.0, 0.0};
  }
  d.w_diagonal[kTrailingWheel] = 1.0 / p.train.trailing_wheelsets_kg_m2;
  d.w_diagonal[kTrain] = 1.0 / p.train.mass_kg;
  d.m_blocks[kTrailingWheel] = {p.train.trailing_wheelsets_kg_m2, 0.0, 0.0};
  d.m_blocks[kTrain] = {p.train.mass_kg, 0.0, 0.0};
}

void deriveRows(const Parameters& p, Derived& d) {
  const double r = p.train.wheel_radius_m;
  for (std::size_t n = 0; n < kLines; ++n) {
    const std::size_t in = speedOf(n, kBoxIn), out = speedOf(n, kBoxOut);
    d.shape[kFreewheelRow + n] = {in, speedOf(n, kTurbine), 1.0, -1.0};
    for (std::size_t b = 0; b < kBands; ++b) {
      d.shape[kBandRow + n * kBands + b] = {in, out, d.drum[n][b].in, d.drum[n][b].out};
    }
    d.shape[kClutchRow + n] = {in, out, 1.0, -1.0};
    d.shape[kDogRow + n] = {out, speedOf(n, kWheel), 1.0 / p.final_drive[n].ratio, -1.0};
    d.shape[kRailRow + n] = {speedOf(n, kWheel), kTrain, r, -1.0};
    d.shape[kBlockRow + n] = {speedOf(n, kWheel), speedOf(n, kWheel), 1.0, 0.0};
    d.shape[kCrankRow + n] = {speedOf(n, kCrank), speedOf(n, kCrank), 1.0, 0.0};
    d.shape[kShaftRow + n] = {out, out, 1.0, 0.0};
  }
  d.shape[kRailRow + 2] = {kTrailingWheel, kTrain, r, -1.0};
  d.shape[kBlockRow + 2] = {kTrailingWheel, kTrailingWheel, 1.0, 0.0};
  d.shape[kBreakawayRow] = {kTrain, kTrain, 1.0, 0.0};
}

}  // namespace

Derived calcDerived(const Parameters& p, double ambient_k) {
  Derived d;
  d.gas_k = ambient_k;
  d.rt = q::kAirGasConstant * ambient_k;
  d.air = FlowLaw(p.air.critical_ratio);
  d.vacuum = FlowLaw(p.vacuum.critical_ratio);
  deriveConductances(p, d);
  for (std::size_t n = 0; n < kLines; ++n) {
    deriveGearbox(p, n, d);
    d.torque[n] = TorqueCurve(p.engine[n]);
    d.engine_logs[n] = EngineLogs(p.engine[n]);
    const CouplingParameters& c = p.coupling[n];
    const double d2 = c.diameter_m * c.diameter_m;
    d.coupling_k[n] = c.fill * c.lambda_flat * c.density_kg_m3 * d2 * d2 * c.diameter_m;
    const FinalDriveParameters& f = p.final_drive[n];
    d.pitch[n] = 2.0 * q::kPi / f.teeth;
    d.window[n] = q::degToRad(f.window_deg);
    d.dog_limit[n] = calcDogSpeedLimit(f);
    d.contact_m[n] = f.travel_m - f.overlap_m;
  }
  deriveInertia(p, d);
  deriveRows(p, d);
  return d;
}

}  // namespace cabwright::plant
