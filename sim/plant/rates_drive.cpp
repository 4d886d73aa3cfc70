// SPDX-License-Identifier: GPL-3.0-or-later
// Coupling, gearbox, final drive, wheels and train: forces, friction bounds and their heat.
#include <algorithm>
#include <cmath>

#include "plant/machine.h"
#include "plant/running.h"
#include "quantity/elementary.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

namespace {

void setBounds(Bounds& b, std::size_t row, double lo, double hi) {
  b.lo[row] = lo;
  b.hi[row] = hi;
}

double abovePsi(double pa, double closed_pa) { return std::max(0.0, pa - closed_pa); }

constexpr std::size_t kCylindersPerCar = kCylinders / kCabs;
constexpr double kStictionFades = 0.02;  // m/s

// How far the bands in use carry the load, 0..1 each: the loaded sets lose in their meshes.
constexpr double kLoadedNm = 50.0;

void calcBands(const Machine& m, const State& x, std::size_t n, double thick, Forces& out) {
  const GearboxParameters& g = m.p.gearbox[n];
  const double drag = g.drum_drag_nm * thick * g.oil_level + g.dry_drag_nm * m.d.dryness[n];
  for (std::size_t b = 0; b < kBands; ++b) {
    const BandParameters& band = g.band[b];
    const SpringCylinder& cylinder = m.d.gear_cylinder[n][b];
    const double fade =
        calcFade(q::kelvinToCelsius(x[stateOf(n, kDrumK + b)]), band.fade_c, band.fade_span_k);
    const double end_n = band.leverage * band.piston_m2 * fade *
                         abovePsi(out.gear_pa[n * kGears + b], cylinder.end_pa);
    const std::size_t row = kBandRow + n * kBands + b;
    // A drum that tends backward pulls its band on; held forward it pushes it off.
    setBounds(out.bounds, row, -end_n * m.d.band[n][b].opposing - drag,
              end_n * m.d.band[n][b].energising + drag);
    if (band.seized > 0.5) setBounds(out.bounds, row, -1e6, 1e6);
  }
}

void calcClutch(const Machine& m, const State& x, std::size_t n, double thick, Forces& out) {
  const GearboxParameters& g = m.p.gearbox[n];
  const ClutchParameters& c = g.clutch;
  const double fade =
      calcFade(q::kelvinToCelsius(x[stateOf(n, kClutchK)]), c.fade_c, c.fade_span_k);
  const double closed = m.d.gear_cylinder[n][kBands].end_pa;
  const double cap =
      c.capacity_nm_psi / q::kPaPerPsi * fade * abovePsi(out.gear_pa[n * kGears + kBands], closed) +
      g.drag_nm * thick * g.oil_level + g.dry_drag_nm * m.d.dryness[n];
  setBounds(out.bounds, kClutchRow + n, -cap, cap);
}

// Losses in the meshes of the loaded ratio, as drag on input and output that follows the torque
// the coupling brings in.
void calcMeshLoss(const Machine& m, const State& x, std::size_t n, State& dx, Forces& out) {
  const double torque = std::abs(out.coupling_nm[n]);
  double loaded = 0.0, ratio = 0.0;
  for (std::size_t b = 0; b < kBands; ++b) {
    const double share = std::min(1.0, out.bounds.hi[kBandRow + n * kBands + b] / kLoadedNm);
    loaded = std::max(loaded, share);
    ratio += share * m.d.drum[n][b].calcRatio();
  }
  const double direct = std::min(1.0, out.bounds.hi[kClutchRow + n] / kLoadedNm);
  const double in = x[speedOf(n, kBoxIn)], shaft = x[speedOf(n, kBoxOut)];
  const double lost = m.p.gearbox[n].mesh_loss + m.p.gearbox[n].dry_mesh_loss * m.d.dryness[n];
  const double in_nm = lost * torque * loaded * in / (std::abs(in) + 2.0);
  const bool meshed = m.flags[n].dog == DogState::kMeshed;
  const double out_nm = meshed ? (1.0 - m.p.final_drive[n].efficiency) * torque *
                                     std::min(ratio + direct, 5.0) * shaft / (std::abs(shaft) + 2.0)
                               : 0.0;
  out.f[speedOf(n, kBoxIn)] -= in_nm;
  out.f[speedOf(n, kBoxOut)] -= out_nm;
  dx[stateOf(n, kBoxOilK)] += (in_nm * in + out_nm * shaft) / m.p.gearbox[n].heat_j_k;
}

void calcDog(const Machine& m, std::size_t n, Forces& out) {
  const std::size_t row = kDogRow + n;
  const FinalDriveParameters& f = m.p.final_drive[n];
  switch (m.flags[n].dog) {
    case DogState::kMeshed:
      setBounds(out.bounds, row, -1e9, 1e9);
      return;
    case DogState::kOnTooth:
    case DogState::kEntering:
    case DogState::kRattling: {
      const double rub = f.tooth_friction * f.push_n * f.tooth_radius_m;
      setBounds(out.bounds, row, -rub, rub);
      return;
    }
    default:
      setBounds(out.bounds, row, 0.0, 0.0);
  }
}

double calcSleeveRate(const Machine& m, const State& x, std::size_t n, const Forces& out) {
  const FinalDriveParameters& f = m.p.final_drive[n];
  const DogState dog = m.flags[n].dog;
  const bool moves =
      dog == DogState::kMiddle || dog == DogState::kMoving || dog == DogState::kEntering;
  if (!moves || f.stick > 0.5) return 0.0;
  const double sleeve = x[stateOf(n, kSleeve)];
  if (m.u.line[n].sleeve_to_middle) {
    return std::clamp(-sleeve * 4.0, -f.sleeve_mps, f.sleeve_mps);
  }
  const double psi = (out.shift_forward_pa[n] - out.shift_reverse_pa[n]) / q::kPaPerPsi;
  const double push =
      std::clamp((std::abs(psi) - f.move_psi) / (f.full_psi - f.move_psi), 0.0, 1.0);
  const double rate = push * f.sleeve_mps * (psi > 0.0 ? 1.0 : -1.0);
  const bool at_end = std::abs(sleeve) >= f.travel_m && rate * sleeve > 0.0;
  return at_end ? 0.0 : rate;
}

}  // namespace

void calcDriveRates(const Machine& m, const State& x, std::size_t n, State& dx, Forces& out) {
  const GearboxParameters& g = m.p.gearbox[n];
  const double e = x[speedOf(n, kCrank)], t = x[speedOf(n, kTurbine)], i = x[speedOf(n, kBoxIn)],
               o = x[speedOf(n, kBoxOut)], w = x[speedOf(n, kWheel)];
  // T = K w^2 s/(|s| + b) with s = (e - t)/w, multiplied out so that nothing is divided by a
  // standing shaft.
  const double faster = std::max(std::abs(e), std::abs(t));
  const double slip = e - t;
  const double torque = faster > 0.0 ? m.d.coupling_k[n] * faster * faster * slip /
                                           (std::abs(slip) + m.p.coupling[n].lambda_knee * faster)
                                     : 0.0;
  out.coupling_nm[n] = torque;
  out.f[speedOf(n, kCrank)] -= torque;
  out.f[speedOf(n, kTurbine)] += torque;
  const double coupling_lost = m.p.coupling[n].loss_w_k * (x[stateOf(n, kCouplingK)] - m.d.gas_k);
  dx[stateOf(n, kCouplingK)] = (torque * slip - coupling_lost) / m.p.coupling[n].heat_j_k;

  const FreewheelParameters& fw = m.p.freewheel[n];
  setBounds(out.bounds, kFreewheelRow + n, fw.seized > 0.5 ? -1e6 : -fw.drag_nm, fw.slip_nm);
  const double box_c = q::kelvinToCelsius(x[stateOf(n, kBoxOilK)]);
  const double thick =
      std::min(g.viscosity_cap, q::detExp(calcLogViscosityRatio(m.p.engine[n], box_c)));
  const double box_lost = g.cooling_w_k * (x[stateOf(n, kBoxOilK)] - m.d.gas_k);
  double box_w = -box_lost;
  calcBands(m, x, n, thick, out);
  calcClutch(m, x, n, thick, out);
  const double viscous = g.drag_nm_s * thick * g.oil_level * (i - o);
  out.f[speedOf(n, kBoxIn)] -= viscous;
  out.f[speedOf(n, kBoxOut)] += viscous;
  box_w += viscous * (i - o);
  const double wet = 1.0 - (1.0 - g.dry_cooling) * m.d.dryness[n];
  for (std::size_t b = 0; b < kBands; ++b) {
    const double to_oil =
        wet * g.band[b].cooling_w_k * (x[stateOf(n, kDrumK + b)] - x[stateOf(n, kBoxOilK)]);
    dx[stateOf(n, kDrumK + b)] = -to_oil / g.band[b].heat_j_k;
    box_w += to_oil;
  }
  const double plates_w =
      wet * g.clutch.cooling_w_k * (x[stateOf(n, kClutchK)] - x[stateOf(n, kBoxOilK)]);
  dx[stateOf(n, kClutchK)] = -plates_w / g.clutch.heat_j_k;
  box_w += plates_w;
  dx[stateOf(n, kBoxOilK)] = box_w / g.heat_j_k;
  calcMeshLoss(m, x, n, dx, out);
  dx[kAmbientJ] += coupling_lost + box_lost;

  calcDog(m, n, out);
  const FinalDriveParameters& f = m.p.final_drive[n];
  const double rub = f.bearing_nm * thick;
  setBounds(out.bounds, kShaftRow + n, -rub, rub);
  const double bearing = f.bearing_nm_s * thick * o;
  out.f[speedOf(n, kBoxOut)] -= bearing;
  dx[kBearingJ] += bearing * o;
  dx[stateOf(n, kSleeve)] = calcSleeveRate(m, x, n, out);
  dx[stateOf(n, kShaftAngle)] = o;
  dx[stateOf(n, kWheelAngle)] = w;
}

namespace {

// Friction of some alike blocks on one wheelset, N.
double calcBlockDrag(double blocks, double each_n, double surface_mps) {
  if (blocks <= 0.0 || each_n <= 0.0) return 0.0;
  return blocks * each_n * calcBlockFriction(each_n, surface_mps);
}

// A handbrake presses some of the blocks of its own car's vacuum cylinders, as many of each as it
// has of the car's: on those the two forces add up, and one friction law holds for the sum.
struct HandPull {
  double each_n = 0, share = 0;  ///< on a block it presses; share of a cylinder's blocks
};

HandPull calcHandPull(const Machine& m, std::size_t car) {
  const HandbrakeParameters& h = m.p.handbrake[car];
  double blocks = 0.0;
  for (std::size_t c = 0; c < kCylindersPerCar; ++c) {
    blocks += m.p.brake_cylinder[car * kCylindersPerCar + c].blocks;
  }
  return {h.block_force_n * h.linkage * m.u.cab[car].handbrake / h.blocks,
          std::min(1.0, h.blocks / blocks)};
}

// Torque of the blocks on each wheelset group: driven 1, driven 2, trailing.
void calcBlocks(const Machine& m, const State& x, Forces& out) {
  const double r = m.p.train.wheel_radius_m;
  const std::array<double, 3> surface{std::abs(x[speedOf(0, kWheel)]) * r,
                                      std::abs(x[speedOf(1, kWheel)]) * r,
                                      std::abs(x[kTrailingWheel]) * r};
  std::array<double, 3> drag{};
  for (std::size_t c = 0; c < kCylinders; ++c) {
    const CylinderParameters& y = m.p.brake_cylinder[c];
    const double there = y.blocks - y.blocks_missing;
    if (there <= 0.0) continue;
    const HandPull hand = calcHandPull(m, c / kCylindersPerCar);
    const double each_n = out.block_n[c] / there;
    const std::array<double, 3> share{y.driven_1, y.driven_2, 1.0 - y.driven_1 - y.driven_2};
    for (std::size_t k = 0; k < 3; ++k) {
      const double blocks = share[k] * there;
      drag[k] += calcBlockDrag(blocks * hand.share, each_n + hand.each_n, surface[k]) +
                 calcBlockDrag(blocks * (1.0 - hand.share), each_n, surface[k]);
    }
  }
  for (std::size_t k = 0; k < 3; ++k) {
    const double torque = drag[k] * r * m.p.train.block_friction_factor;
    setBounds(out.bounds, kBlockRow + k, -torque, torque);
  }
}

}  // namespace

void calcRunningRates(const Machine& m, const State& x, State& dx, Forces& out) {
  const TrainParameters& p = m.p.train;
  const double v = x[kTrain], s = x[kPosition];
  const double gradient = m.grade.calcGradient(s);
  out.f[kTrain] -= calcGradeForce(p.mass_kg, gradient);
  const double curve = m.grade.calcCurve(s) * p.mass_kg * 1e-3;
  const double rolling = calcRunningResistance(p, v) + curve;
  Bounds& b = out.bounds;
  // What is added at rest is gone within the first few centimetres a second.
  double stuck = p.stiction_n;
  for (std::size_t c = 0; c < kCabs; ++c) stuck += m.u.scotch[c] ? p.scotch_n : 0.0;
  const double held = rolling + stuck * std::max(0.0, 1.0 - std::abs(v) / kStictionFades);
  setBounds(b, kBreakawayRow, -held, held);
  const double adhesion = calcAdhesion(v) * p.adhesion_factor;
  const double g = q::kStandardGravity;
  const double driven = p.driven_axle_kg * g;
  const double trailing = std::max(0.0, p.mass_kg - 2.0 * p.driven_axle_kg) * g;
  setBounds(b, kRailRow, -adhesion * driven, adhesion * driven);
  setBounds(b, kRailRow + 1, -adhesion * driven, adhesion * driven);
  setBounds(b, kRailRow + 2, -adhesion * trailing, adhesion * trailing);
  calcBlocks(m, x, out);
  dx[kPosition] = v;
}

void calcForces(const Machine& m, const State& x, State& dx, Forces& out) {
  out.f.fill(0.0);
  for (std::size_t k = kAmbientJ; k < kAirInKg; ++k) dx[k] = 0.0;
  dx[kFuelJ] = dx[kExhaustJ] = 0.0;
  calcAirRates(m, x, dx, out);
  calcVacuumRates(m, x, dx, out);
  for (std::size_t n = 0; n < kLines; ++n) {
    calcEngineRates(m, x, n, dx, out);
    calcDriveRates(m, x, n, dx, out);
  }
  calcElectricRates(m, x, dx, out);
  calcRunningRates(m, x, dx, out);
}

}  // namespace cabwright::plant
