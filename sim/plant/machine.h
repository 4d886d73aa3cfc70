// SPDX-License-Identifier: GPL-3.0-or-later
// What holds still during a step: parameters and what follows from them, inputs, discrete states.
#pragma once

#include <array>

#include "plant/drive.h"
#include "plant/engine.h"
#include "plant/gas.h"
#include "plant/inputs.h"
#include "plant/layout.h"
#include "plant/parameters.h"
#include "plant/readings.h"
#include "plant/route.h"

namespace cabwright::plant {

/// A friction row: v_rel = ca q[a] + cb q[b].
struct RowShape {
  std::size_t a = 0, b = 0;
  double ca = 0, cb = 0;
};

/// Numbers that follow from the parameters; made anew when one of them changes.
struct Derived {
  double gas_k = 293.15;  ///< one gas temperature: the ambient
  double rt = 0;          ///< R T of that gas
  FlowLaw air, vacuum;
  // choked factors, kg/(s Pa)
  std::array<std::array<double, kGears>, kLines> gear_fill{}, gear_vent{}, gear_leak{};
  std::array<double, kLines> throttle_fill{}, throttle_vent{}, throttle_leak{};
  std::array<double, kLines> shift{}, shift_leak{}, exhauster_back{};
  double check = 0, check_back = 0, main_leak = 0, control_leak = 0, drain = 0, horn = 0,
         horn_valve = 0, relief = 0;
  std::array<double, kCabs> device_charge{}, device_choke{}, device_vent{};
  std::array<double, kCabs> valve_release{}, valve_full{}, lap_air{}, lap_release{};
  double release_leak = 0, train_leak = 0, hose = 0, guards = 0, guards_leak = 0, alarm = 0;
  std::array<double, kCylinders> ball{}, ball_leak{}, chamber_leak{}, cord{}, piston_area{};
  std::array<std::array<SpringCylinder, kGears>, kLines> gear_cylinder{};
  // drive
  std::array<std::array<DrumMix, kBands>, kLines> drum{};
  std::array<std::array<BandGain, kBands>, kLines> band{};
  std::array<double, kLines> dryness{};  ///< of the gearboxes, 0..1
  std::array<TorqueCurve, kLines> torque{};
  std::array<EngineLogs, kLines> engine_logs{};
  std::array<double, kLines> coupling_k{};  ///< fill a rho D^5
  std::array<double, kLines> pitch{}, window{}, dog_limit{}, contact_m{};
  std::array<double, kSpeeds> w_diagonal{};  ///< of the inverse mass matrix
  std::array<double, kLines> w_box{};        ///< its one off-diagonal, input with output
  std::array<std::array<double, 3>, kSpeeds> m_blocks{};  ///< mass: diagonal, off-diagonal
  std::array<RowShape, kRows> shape{};                    ///< dog rows: of the forward side
};

[[nodiscard]] Derived calcDerived(const Parameters& p, double ambient_k);

struct LineFlags {
  bool latch_tripped = true;
  bool protection_tripped = false;
  bool pinion_in = false;
  bool compressor_loaded = true;
  bool running = false;
  DogState dog = DogState::kMiddle;
  int dog_side = 0;  ///< +1 forward, -1 reverse
};

struct Machine {
  Parameters p;
  Derived d;
  GradeProfile grade;
  PlantInputs u;
  std::array<LineFlags, kLines> flags;

  /// Row shape with the dog rows on the side their sleeve is on.
  [[nodiscard]] RowShape shapeOf(std::size_t row) const {
    RowShape s = d.shape[row];
    if (row >= kDogRow && row < kDogRow + kLines && flags[row - kDogRow].dog_side < 0) {
      s.cb = -s.cb;
    }
    return s;
  }
};

/// What each friction row can give: held within the bounds, sliding at one of them (lo <= 0 <= hi).
struct Bounds {
  RowVector lo{}, hi{};
};

/// Forces and side results at one state.
struct Forces {
  SpeedVector f{};  ///< generalised forces without the friction rows
  Bounds bounds;
  // side results, kept for readings
  std::array<double, kGears * kLines> gear_pa{};
  std::array<double, kLines> coupling_nm{}, indicated_nm{}, friction_nm{}, delivery{}, fired{},
      unburnt{}, aux_nm{}, starter_a{}, generator_a{}, shift_forward_pa{}, shift_reverse_pa{},
      throttle_pa{};
  std::array<double, kCabs> device_pa{}, device_vent{}, horn_pa{};
  double main_pa = 0, control_pa = 0, train_pa = 0, release_pa = 0;
  std::array<double, kCylinders> chamber_pa{}, block_n{};
  double bus_v = 0, battery_a = 0;
};

enum class RowMode : unsigned char {
  kLocked,
  kPositive,
  kNegative
};  ///< sign of v_rel when sliding

/// Which ends of a line's shift cylinder are fed: those of the direction valves that are open, or
/// the other ones where their pipes are crossed; none with the air cock shut.
struct FedEnds {
  bool forward = false, reverse = false;
};
[[nodiscard]] inline FedEnds calcFedEnds(const Machine& m, std::size_t line) {
  const LineInputs& u = m.u.line[line];
  if (!u.shift_air_cock_open) return {};
  if (m.p.final_drive[line].pipes_crossed > 0.5) return {u.shift_reverse, u.shift_forward};
  return {u.shift_forward, u.shift_reverse};
}

/// Which rows are locked, and the matrices that follow.
struct Modes {
  std::array<RowMode, kRows> row{};
  std::array<std::array<double, kSpeeds>, kSpeeds> accelerate{};  ///< P: forces to accelerations
  std::array<std::array<double, kSpeeds>, kRows> hold{};          ///< G: forces to -lambda
  std::array<std::size_t, kRows> locked{};
  std::size_t locked_count = 0;
  std::array<std::size_t, kRows> sliding{};
  std::array<RowShape, kRows> sliding_shape{};
  std::size_t sliding_count = 0;
};

/// Forces, bounds and the rates of every state but the speeds; the ledger rates too.
/// Pure: nothing outside dx and out changes.
void calcForces(const Machine& m, const State& x, State& dx, Forces& out);
void calcAirRates(const Machine& m, const State& x, State& dx, Forces& out);
void calcVacuumRates(const Machine& m, const State& x, State& dx, Forces& out);
void calcEngineRates(const Machine& m, const State& x, std::size_t line, State& dx, Forces& out);
void calcElectricRates(const Machine& m, const State& x, State& dx, Forces& out);
void calcDriveRates(const Machine& m, const State& x, std::size_t line, State& dx, Forces& out);
void calcRunningRates(const Machine& m, const State& x, State& dx, Forces& out);

/// What goes through each opening to the atmosphere at the state these forces are of.
[[nodiscard]] Escapes calcEscapes(const Machine& m, const Forces& forces);

/// Forces with those of the sliding rows added.
[[nodiscard]] SpeedVector calcLoads(const Modes& modes, const Forces& forces);

/// The full right-hand side in a mode: dx/dt = rhs(x).
void calcRates(const Machine& m, const Modes& modes, const State& x, State& dx, Forces& out);

/// Speed of a row, J q.
[[nodiscard]] inline double rowSpeed(const RowShape& s, const State& x) {
  return s.ca * x[s.a] + s.cb * x[s.b];
}

/// Sliding force of a row in its mode.
[[nodiscard]] inline double slideForce(const Bounds& b, std::size_t row, RowMode mode) {
  return mode == RowMode::kPositive ? b.lo[row] : b.hi[row];
}

}  // namespace cabwright::plant
