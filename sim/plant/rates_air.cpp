// SPDX-License-Identifier: GPL-3.0-or-later
// Control air and the two-pipe vacuum brake: masses of gas and what moves them.
#include <algorithm>

#include "plant/air_machines.h"
#include "plant/brake_piston.h"
#include "plant/machine.h"
#include "quantity/elementary.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {

constexpr double kAtmosphere = q::kStandardAtmospherePa;

// Air that leaves a vessel for the atmosphere (never drawn in: air pressures stay above it but for
// rounding, and then it comes back through the same hole).
double toAtmosphere(double factor, const FlowLaw& law, double pa) {
  return calcFlow(factor, law, pa, kAtmosphere);
}

// How far the safety devices' valves stand open, 0..1: the one that is farther.
double calcDeviceOpening(const Forces& out) {
  return std::max(out.device_vent[0], out.device_vent[1]);
}

struct AirBooks {
  double control_out = 0;  ///< drawn from the control reservoir
  double lost = 0;         ///< to atmosphere
};

// One cylinder behind its valve: filled from the control reservoir or vented.
double calcUserRate(const FlowLaw& law, bool open, double fill, double vent, double leak,
                    double supply_pa, double pa, AirBooks& books) {
  double rate = 0.0;
  if (open) {
    rate = calcFlow(fill, law, supply_pa, pa);
    books.control_out += rate;
  } else {
    const double out = toAtmosphere(vent, law, pa);
    rate = -out;
    books.lost += out;
  }
  if (leak > 0.0) {
    const double out = toAtmosphere(leak, law, pa);
    rate -= out;
    books.lost += out;
  }
  return rate;
}

// The motors' supply comes through the safety devices' valves: one that trips shuts it off and
// opens it to atmosphere, and a motor empties back through its own valve if that stands open.
void calcThrottleAir(const Machine& m, const State& x, std::size_t n, State& dx, Forces& out,
                     AirBooks& books) {
  const Derived& d = m.d;
  const double pa = x[stateOf(n, kThrottleMass)] * d.rt / m.p.throttle_motor[n].volume_m3;
  out.throttle_pa[n] = pa;
  const bool open = m.u.line[n].throttle_notch > 0;
  const double tripped = calcDeviceOpening(out);
  double rate = calcUserRate(d.air, open, d.throttle_fill[n] * (1.0 - tripped), d.throttle_vent[n],
                             d.throttle_leak[n], out.control_pa, pa, books);
  if (open && tripped > 0.0) {
    const double back = toAtmosphere(d.throttle_vent[n] * tripped, d.air, pa);
    rate -= back;
    books.lost += back;
  }
  dx[stateOf(n, kThrottleMass)] = rate;
}

void calcLineAir(const Machine& m, const State& x, std::size_t n, State& dx, Forces& out,
                 AirBooks& books) {
  const Derived& d = m.d;
  const LineInputs& u = m.u.line[n];
  const double supply = out.control_pa;
  for (std::size_t g = 0; g < kGears; ++g) {
    const std::size_t at = stateOf(n, kGearMass + g);
    const double pa = calcCylinderPressure(d.gear_cylinder[n][g], x[at], d.gas_k);
    out.gear_pa[n * kGears + g] = pa;
    dx[at] = calcUserRate(d.air, u.gear_valve[g], d.gear_fill[n][g], d.gear_vent[n][g],
                          d.gear_leak[n][g], supply, pa, books);
  }
  calcThrottleAir(m, x, n, dx, out, books);

  // The sleeve divides the shift cylinder: each end's volume follows it.
  const FinalDriveParameters& f = m.p.final_drive[n];
  const auto [forward_m3, reverse_m3] = calcShiftVolumes(f, x[stateOf(n, kSleeve)]);
  const FedEnds fed = calcFedEnds(m, n);
  out.shift_forward_pa[n] = x[stateOf(n, kShiftForwardMass)] * d.rt / forward_m3;
  out.shift_reverse_pa[n] = x[stateOf(n, kShiftReverseMass)] * d.rt / reverse_m3;
  dx[stateOf(n, kShiftForwardMass)] =
      calcUserRate(d.air, fed.forward, d.shift[n], d.shift[n], d.shift_leak[n], supply,
                   out.shift_forward_pa[n], books);
  dx[stateOf(n, kShiftReverseMass)] =
      calcUserRate(d.air, fed.reverse, d.shift[n], d.shift[n], d.shift_leak[n], supply,
                   out.shift_reverse_pa[n], books);
}

// The safety device: charged through the reducing valve while held, else bled through its choke.
void calcDeviceAir(const Machine& m, const State& x, std::size_t c, State& dx, Forces& out,
                   AirBooks& books) {
  const SafetyDeviceParameters& s = m.p.safety_device[c];
  const Derived& d = m.d;
  const double pa = x[kDeviceMass + c] * d.rt / s.volume_m3;
  out.device_pa[c] = pa;
  if (m.u.cab[c].device_held) {
    // The reducing valve closes over its last 2 psi, and lets nothing back.
    const double below = q::psiGaugeToPa(s.reduced_psi) - pa;
    const double opening = std::clamp(below / (2.0 * q::kPaPerPsi), 0.0, 1.0);
    const double rate = calcOneWayFlow(d.device_charge[c] * opening, d.air, out.control_pa, pa);
    dx[kDeviceMass + c] = rate;
    books.control_out += rate;
  } else {
    const double rate = toAtmosphere(d.device_choke[c], d.air, pa);
    dx[kDeviceMass + c] = -rate;
    books.lost += rate;
  }
  const CabInputs& u = m.u.cab[c];
  const double low =
      (q::psiGaugeToPa(s.threshold_psi) - pa) / (s.threshold_span_psi * q::kPaPerPsi);
  const bool acts = u.device_in_circuit && u.device_cock_open && s.valve_stuck <= 0.5;
  out.device_vent[c] = acts ? std::clamp(low, 0.0, 1.0) : 0.0;
}

// Horn and pipe fill through the valve and blow off through the horn: its note swells and dies.
void calcHornAir(const Machine& m, const State& x, std::size_t c, State& dx, Forces& out,
                 AirBooks& books) {
  const Derived& d = m.d;
  const double pa = x[kHornMass + c] * d.rt / m.p.air.horn_m3;
  out.horn_pa[c] = pa;
  const double in = m.u.cab[c].horn ? calcFlow(d.horn_valve, d.air, out.control_pa, pa) : 0.0;
  const double blown = toAtmosphere(d.horn, d.air, pa);
  dx[kHornMass + c] = in - blown;
  books.control_out += in;
  books.lost += blown;
}

}  // namespace

void calcAirRates(const Machine& m, const State& x, State& dx, Forces& out) {
  const Derived& d = m.d;
  out.main_pa = x[kMainMass] * d.rt / m.p.air.main_m3;
  out.control_pa = x[kControlMass] * d.rt / m.p.air.control_m3;
  AirBooks books;
  for (std::size_t c = 0; c < kCabs; ++c) calcDeviceAir(m, x, c, dx, out, books);
  double compressed = 0.0;
  CompressionPowers powers;
  double powers_for = 0.0;  // the exponent they were made for: both compressors share it in health
  for (std::size_t n = 0; n < kLines; ++n) {
    calcLineAir(m, x, n, dx, out, books);
    const CompressorParameters& c = m.p.compressor[n];
    if (m.flags[n].compressor_loaded && powers_for != c.polytropic) {
      powers = calcCompressionPowers(c.polytropic, kAtmosphere, out.main_pa);
      powers_for = c.polytropic;
    }
    const AirMachineFlow flow = calcCompressor(
        c, x[speedOf(n, kCrank)], m.flags[n].compressor_loaded, kAtmosphere, powers, d.gas_k);
    compressed += flow.mass_kg_s;
    out.aux_nm[n] = flow.torque_nm;
  }
  for (std::size_t c = 0; c < kCabs; ++c) {
    calcHornAir(m, x, c, dx, out, books);
  }
  const double across = calcOneWayFlow(d.check, d.air, out.main_pa, out.control_pa) -
                        calcOneWayFlow(d.check_back, d.air, out.control_pa, out.main_pa);
  double main_out = toAtmosphere(d.main_leak, d.air, out.main_pa);
  double control_lost = toAtmosphere(d.control_leak, d.air, out.control_pa);
  if (m.u.reservoir_drain[0]) main_out += toAtmosphere(d.drain, d.air, out.main_pa);
  if (m.u.reservoir_drain[1]) control_lost += toAtmosphere(d.drain, d.air, out.control_pa);
  const double lifted = (out.main_pa - q::psiGaugeToPa(m.p.air.relief_psi)) /
                        (m.p.air.relief_span_psi * q::kPaPerPsi);
  if (lifted > 0.0) {
    main_out += toAtmosphere(d.relief * std::min(lifted, 1.0), d.air, out.main_pa);
  }
  dx[kMainMass] = compressed - across - main_out;
  dx[kControlMass] = across - control_lost - books.control_out;
  dx[kAirInKg] = compressed;
  dx[kAirOutKg] = books.lost + main_out + control_lost;
}

namespace {

// Driver's valves of both cabs: release to the release pipe, application to atmosphere.
struct ValveFlows {
  double to_release = 0, from_air = 0;
};

ValveFlows calcDriversValves(const Machine& m, const Forces& out, double device_open) {
  ValveFlows flows;
  const Derived& d = m.d;
  for (std::size_t c = 0; c < kCabs; ++c) {
    const double handle = m.u.cab[c].drivers_valve;
    if (handle < -0.5) {
      const double opening = std::min(1.0, (-handle - 0.5) / 0.4);
      const DriversValveParameters& v = m.p.drivers_valve[c];
      const double below = v.feed_inhg - q::paToInHgVacuum(out.train_pa);
      const double feed = std::clamp(below / v.feed_span_inhg, 0.0, 1.0);
      // A tripped device shuts the feed as it vents; else the feed would hold the pipe up.
      const double factor = d.valve_release[c] * opening * feed * (1.0 - device_open);
      flows.to_release += calcFlow(factor, d.vacuum, out.train_pa, out.release_pa);
    } else if (handle > 0.05) {
      // The opening grows with the square of the angle: fine at first, all at the end.
      flows.from_air +=
          calcFlow(d.valve_full[c] * handle * handle, d.vacuum, kAtmosphere, out.train_pa);
    } else {
      flows.from_air += calcFlow(d.lap_air[c], d.vacuum, kAtmosphere, out.train_pa);
      flows.to_release += calcFlow(d.lap_release[c], d.vacuum, out.train_pa, out.release_pa);
    }
  }
  return flows;
}

double calcOpenings(const Machine& m, const Forces& out) {
  const Derived& d = m.d;
  double factor = d.train_leak + d.guards_leak;
  for (std::size_t c = 0; c < kCabs; ++c) {
    factor += d.device_vent[c] * out.device_vent[c] + d.guards * m.u.cab[c].guards_valve;
    if (!m.u.hose_on_dummy[c]) factor += d.hose;
  }
  if (m.u.passenger_alarm) factor += d.alarm;
  return factor;
}

// Chamber above one piston, and the piston. Returns what passes from the chamber to the pipe.
double calcCylinder(const Machine& m, const State& x, std::size_t c, State& dx, Forces& out,
                    double& drawn_in) {
  const CylinderParameters& y = m.p.brake_cylinder[c];
  const Derived& d = m.d;
  const double piston = x[kPiston + c];
  const double chamber = out.chamber_pa[c];
  const double to_pipe = calcOneWayFlow(d.ball[c], d.vacuum, chamber, out.train_pa) -
                         calcOneWayFlow(d.ball_leak[c], d.vacuum, out.train_pa, chamber);
  const double cord = m.u.release_cord[c] ? d.cord[c] : 0.0;
  const double in = calcFlow(d.chamber_leak[c] + cord, d.vacuum, kAtmosphere, chamber);
  drawn_in += in;
  dx[kChamberMass + c] = in - to_pipe;

  const double pressing = std::max(0.0, piston - y.take_up_m) * y.rigging_n_m;
  const double net =
      d.piston_area[c] * (out.train_pa - chamber) - y.spring_n + y.stick_n - pressing;
  // At the bottom the piston settles on its stop instead of going through it.
  dx[kPiston + c] = std::max(net / y.damping_n_s_m, -15.0 * piston);
  out.block_n[c] =
      pressing * y.rigging_ratio * y.rigging_efficiency * (1.0 - y.blocks_missing / y.blocks);
  return to_pipe;
}

}  // namespace

void calcVacuumRates(const Machine& m, const State& x, State& dx, Forces& out) {
  const Derived& d = m.d;
  double lower_m3 = m.p.vacuum.train_m3;
  for (std::size_t c = 0; c < kCylinders; ++c) {
    const CylinderParameters& y = m.p.brake_cylinder[c];
    const double lifted = d.piston_area[c] * x[kPiston + c];
    lower_m3 += y.lower_m3 + lifted;
    out.chamber_pa[c] =
        calcChamberPressure(y, d.piston_area[c], x[kPiston + c], x[kChamberMass + c] * d.rt);
  }
  out.train_pa = x[kTrainMass] * d.rt / lower_m3;
  out.release_pa = x[kReleaseMass] * d.rt / m.p.vacuum.release_m3;

  double drawn_off = 0.0, let_in = 0.0;
  const double log_ratio = q::detLog(kAtmosphere / out.release_pa);
  for (std::size_t n = 0; n < kLines; ++n) {
    const AirMachineFlow flow =
        calcExhauster(m.p.exhauster[n], x[speedOf(n, kCrank)], out.release_pa, log_ratio, d.gas_k);
    drawn_off += flow.mass_kg_s;
    out.aux_nm[n] += flow.torque_nm;
    let_in += calcFlow(d.exhauster_back[n], d.vacuum, kAtmosphere, out.release_pa);
  }
  const double release_in =
      let_in + calcFlow(d.release_leak, d.vacuum, kAtmosphere, out.release_pa);
  const ValveFlows valves = calcDriversValves(m, out, calcDeviceOpening(out));
  const double pipe_in =
      valves.from_air + calcFlow(calcOpenings(m, out), d.vacuum, kAtmosphere, out.train_pa);
  double from_chambers = 0.0, chamber_in = 0.0;
  for (std::size_t c = 0; c < kCylinders; ++c) {
    from_chambers += calcCylinder(m, x, c, dx, out, chamber_in);
  }
  dx[kReleaseMass] = release_in + valves.to_release - drawn_off;
  dx[kTrainMass] = pipe_in + from_chambers - valves.to_release;
  dx[kVacuumOutKg] = drawn_off;
  dx[kVacuumInKg] = release_in + pipe_in + chamber_in;
}

}  // namespace cabwright::plant
