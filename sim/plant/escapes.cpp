// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/escapes.h"

#include <algorithm>

#include "plant/machine.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {

constexpr double kAtmosphere = q::kStandardAtmospherePa;

class Openings {
 public:
  Openings(const Machine& m, const Forces& forces) : m_(m), forces_(forces) {}

  // Out of a vessel with air; choked factor, kg/(s Pa).
  [[nodiscard]] double out(double factor, double pa) const {
    return std::max(0.0, calcFlow(factor, m_.d.air, pa, kAtmosphere));
  }
  // Into a vessel with vacuum.
  [[nodiscard]] double in(double factor, double pa) const {
    return std::max(0.0, calcFlow(factor, m_.d.vacuum, kAtmosphere, pa));
  }
  // By the conductance of a parameter, dm3/(s bar).
  [[nodiscard]] double outOf(double c, double pa) const {
    return out(calcChokedFactor(c, m_.d.gas_k), pa);
  }
  [[nodiscard]] double intoPipe(double c) const {
    return in(calcChokedFactor(c, m_.d.gas_k), forces_.train_pa);
  }

 private:
  const Machine& m_;
  const Forces& forces_;
};

void fillCabs(const Machine& m, const Forces& f, const Openings& through, Escapes& e) {
  const Derived& d = m.d;
  for (std::size_t c = 0; c < kCabs; ++c) {
    const CabInputs& u = m.u.cab[c];
    const double handle = u.drivers_valve;
    const double applied = handle > 0.05   ? d.valve_full[c] * handle * handle
                           : handle < -0.5 ? 0.0
                                           : d.lap_air[c];
    e.drivers_valve[c] = through.in(applied, f.train_pa);
    e.guards_valve[c] = through.in(d.guards * u.guards_valve + 0.5 * d.guards_leak, f.train_pa);
    e.device_vent[c] = through.in(d.device_vent[c] * f.device_vent[c], f.train_pa);
    e.device_choke[c] = u.device_held ? 0.0 : through.out(d.device_choke[c], f.device_pa[c]);
    const double leak = c == 0 ? m.p.vacuum.end1_leak_c : m.p.vacuum.end2_leak_c;
    e.end[c] =
        through.intoPipe(leak) + (m.u.hose_on_dummy[c] ? 0.0 : through.in(d.hose, f.train_pa));
  }
}

void fillPipes(const Machine& m, const Forces& f, const Openings& through, Escapes& e) {
  const Derived& d = m.d;
  const VacuumParameters& v = m.p.vacuum;
  const AirParameters& a = m.p.air;
  // What leaks along the whole pipe leaks a quarter along each side of each car.
  const double quarter = 0.25 * v.train_leak_c;
  e.side = {through.intoPipe(quarter + v.side1_leak_c), through.intoPipe(quarter + v.side2_leak_c)};
  e.trailer = {
      through.intoPipe(quarter + v.trailer1_leak_c) + through.outOf(a.trailer1_leak_c, f.main_pa),
      through.intoPipe(quarter + v.trailer2_leak_c) + through.outOf(a.trailer2_leak_c, f.main_pa)};
  e.between = through.intoPipe(v.between_leak_c) + through.outOf(a.between_leak_c, f.main_pa);
  e.alarm = m.u.passenger_alarm ? through.in(d.alarm, f.train_pa) : 0.0;
  e.release_pipe = through.in(d.release_leak, f.release_pa);
  for (std::size_t c = 0; c < kCylinders; ++c) {
    const double cord = m.u.release_cord[c] ? d.cord[c] : 0.0;
    e.chamber[c] = through.in(d.chamber_leak[c] + cord, f.chamber_pa[c]);
  }
}

void fillLine(const Machine& m, const Forces& f, const Openings& through, std::size_t n,
              Escapes& e) {
  const Derived& d = m.d;
  const LineInputs& u = m.u.line[n];
  for (std::size_t g = 0; g < kGears; ++g) {
    const double vent = u.gear_valve[g] ? 0.0 : d.gear_vent[n][g];
    const double pa = f.gear_pa[n * kGears + g];
    e.gears[n] += through.out(vent, pa) + through.out(d.gear_leak[n][g], pa);
  }
  // Through its own valve when that is shut off, or back through that of a tripped device.
  const double tripped = std::max(f.device_vent[0], f.device_vent[1]);
  const double vent = d.throttle_vent[n] * (u.throttle_notch > 0 ? tripped : 1.0);
  e.throttle[n] =
      through.out(vent, f.throttle_pa[n]) + through.out(d.throttle_leak[n], f.throttle_pa[n]);
  const auto shiftEnd = [&](bool open, double pa) {
    return through.out(open ? 0.0 : d.shift[n], pa) + through.out(d.shift_leak[n], pa);
  };
  const FedEnds fed = calcFedEnds(m, n);
  e.shift[n] =
      shiftEnd(fed.forward, f.shift_forward_pa[n]) + shiftEnd(fed.reverse, f.shift_reverse_pa[n]);
  e.exhauster_back[n] = through.in(d.exhauster_back[n], f.release_pa);
}

}  // namespace

Escapes calcEscapes(const Machine& m, const Forces& f) {
  const Openings through(m, f);
  const Derived& d = m.d;
  const AirParameters& a = m.p.air;
  Escapes e;
  fillCabs(m, f, through, e);
  fillPipes(m, f, through, e);
  for (std::size_t n = 0; n < kLines; ++n) fillLine(m, f, through, n, e);
  e.main_reservoir = through.outOf(a.main_leak_c, f.main_pa);
  e.control_reservoir = through.out(d.control_leak, f.control_pa);
  if (m.u.reservoir_drain[0]) e.main_drain = through.out(d.drain, f.main_pa);
  if (m.u.reservoir_drain[1]) e.control_drain = through.out(d.drain, f.control_pa);
  const double lifted =
      (f.main_pa - q::psiGaugeToPa(a.relief_psi)) / (a.relief_span_psi * q::kPaPerPsi);
  e.safety_valve = through.out(d.relief * std::clamp(lifted, 0.0, 1.0), f.main_pa);
  return e;
}

}  // namespace cabwright::plant
