// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/dog.h"

#include <algorithm>
#include <cmath>

#include "quantity/units.h"

namespace cabwright::plant {

namespace {

// Above the speed limit by this share it rattles, below it by this share it tries again.
constexpr double kRattleAbove = 1.05, kRattleBelow = 0.95;
constexpr double kFar = 1.0;

double relativeSpeed(const Machine& m, const State& x, std::size_t n) {
  return rowSpeed(m.shapeOf(kDogRow + n), x);
}

// Distance from the window, positive outside; continuous, a triangle over the phase.
double windowDistance(const Machine& m, const State& x, std::size_t n) {
  const double pitch = m.d.pitch[n], window = m.d.window[n];
  const double phase = calcToothPhase(m, x, n, m.flags[n].dog_side);
  double from_middle = phase - 0.5 * window;
  if (from_middle > 0.5 * pitch) from_middle -= pitch;
  return std::abs(from_middle) - 0.5 * window;
}

// Which way the air pushes the sleeve hard enough to move it: +1 forward, -1 reverse, 0 not.
int calcPushSide(const Machine& m, const State& x, std::size_t n) {
  const FinalDriveParameters& f = m.p.final_drive[n];
  const auto [forward_m3, reverse_m3] = calcShiftVolumes(f, x[stateOf(n, kSleeve)]);
  const double psi = (x[stateOf(n, kShiftForwardMass)] / forward_m3 -
                      x[stateOf(n, kShiftReverseMass)] / reverse_m3) *
                     m.d.rt / quantity::kPaPerPsi;
  return psi > f.move_psi ? 1 : psi < -f.move_psi ? -1 : 0;
}

double calcDogTorque(const Machine& m, const Modes& modes, const State& x, std::size_t n) {
  State dx;
  Forces forces;
  calcForces(m, x, dx, forces);
  return calcRowForces(modes, forces)[kDogRow + n];
}

const char* meetTeeth(Machine& m, State& x, std::size_t n, int side) {
  LineFlags& flag = m.flags[n];
  flag.dog_side = side;
  x[stateOf(n, kSleeve)] = side * m.d.contact_m[n];
  if (std::abs(relativeSpeed(m, x, n)) > m.d.dog_limit[n]) {
    flag.dog = DogState::kRattling;
    return "dog rattles";
  }
  if (windowDistance(m, x, n) <= 0.0) {
    flag.dog = DogState::kEntering;
    return "dog finds a gap";
  }
  flag.dog = DogState::kOnTooth;
  return "dog stands tooth on tooth";
}

}  // namespace

double calcToothPhase(const Machine& m, const State& x, std::size_t n, int side) {
  const double pitch = m.d.pitch[n];
  const double axle = side < 0 ? -x[stateOf(n, kWheelAngle)] : x[stateOf(n, kWheelAngle)];
  const double angle = x[stateOf(n, kShaftAngle)] / m.p.final_drive[n].ratio - axle;
  const double turns = angle / pitch;
  return (turns - std::floor(turns)) * pitch;
}

double calcDogGuard(const Machine& m, const State& x, std::size_t n, const RowVector& row_forces) {
  const double sleeve = x[stateOf(n, kSleeve)];
  const FinalDriveParameters& f = m.p.final_drive[n];
  switch (m.flags[n].dog) {
    case DogState::kMiddle:
    case DogState::kMoving:
      return m.d.contact_m[n] - std::abs(sleeve);
    case DogState::kOnTooth:
      return std::min(windowDistance(m, x, n),
                      kRattleAbove * m.d.dog_limit[n] - std::abs(relativeSpeed(m, x, n)));
    case DogState::kEntering:
      return std::min(f.travel_m - 1e-7 - std::abs(sleeve), 1e-9 - windowDistance(m, x, n));
    case DogState::kRattling:
      return std::abs(relativeSpeed(m, x, n)) - kRattleBelow * m.d.dog_limit[n];
    case DogState::kMeshed:
      return f.hold_nm - std::abs(row_forces[kDogRow + n]);
    case DogState::kPinned:
      break;
  }
  return kFar;
}

const char* advanceDog(Machine& m, State& x, std::size_t n, const RowVector& row_forces) {
  if (calcDogGuard(m, x, n, row_forces) > 0.0) return nullptr;
  LineFlags& flag = m.flags[n];
  const double sleeve = x[stateOf(n, kSleeve)];
  const FinalDriveParameters& f = m.p.final_drive[n];
  switch (flag.dog) {
    case DogState::kMiddle:
    case DogState::kMoving:
      return meetTeeth(m, x, n, sleeve > 0.0 ? 1 : -1);
    case DogState::kOnTooth:
      if (windowDistance(m, x, n) <= 0.0) {
        flag.dog = DogState::kEntering;
        return "dog finds a gap";
      }
      flag.dog = DogState::kRattling;
      return "dog rattles";
    case DogState::kEntering:
      if (std::abs(sleeve) >= f.travel_m - 1e-7) {
        x[stateOf(n, kSleeve)] = flag.dog_side * f.travel_m;
        flag.dog = DogState::kMeshed;
        return "dog drops in";
      }
      // The gap has passed before the sleeve was through.
      x[stateOf(n, kSleeve)] = flag.dog_side * m.d.contact_m[n];
      flag.dog = DogState::kOnTooth;
      return "dog thrown back";
    case DogState::kRattling:
      return meetTeeth(m, x, n, flag.dog_side);
    case DogState::kMeshed:
      x[stateOf(n, kSleeve)] = flag.dog_side * m.d.contact_m[n];
      flag.dog = DogState::kRattling;
      return "dog jumps out";
    case DogState::kPinned:
      break;
  }
  return nullptr;
}

bool decideDog(Machine& m, const Modes& modes, State& x, std::size_t n) {
  LineFlags& flag = m.flags[n];
  const LineInputs& u = m.u.line[n];
  const FinalDriveParameters& f = m.p.final_drive[n];
  double& sleeve = x[stateOf(n, kSleeve)];
  if (flag.dog == DogState::kPinned) {
    if (u.sleeve_pinned) return false;
    flag.dog = DogState::kMiddle;
    return true;
  }
  const int push = calcPushSide(m, x, n);
  const bool touching = flag.dog != DogState::kMiddle && flag.dog != DogState::kMoving;
  if (touching) {
    const bool away = u.sleeve_to_middle || (push != 0 && push != flag.dog_side);
    if (!away || f.stick > 0.5) return false;
    if (flag.dog == DogState::kMeshed && std::abs(calcDogTorque(m, modes, x, n)) > f.unload_nm) {
      return false;  // loaded teeth hold each other
    }
    // Drawn clear of the teeth it had reached.
    sleeve = std::clamp(sleeve, -0.999 * m.d.contact_m[n], 0.999 * m.d.contact_m[n]);
    flag.dog = DogState::kMoving;
    flag.dog_side = 0;
    return true;
  }
  if (u.sleeve_pinned && std::abs(sleeve) < 0.1 * f.travel_m) {
    sleeve = 0.0;
    flag.dog = DogState::kPinned;
    flag.dog_side = 0;
    return true;
  }
  const DogState now = push != 0 || u.sleeve_to_middle ? DogState::kMoving : DogState::kMiddle;
  const bool changed = now != flag.dog;
  flag.dog = now;
  return changed;
}

}  // namespace cabwright::plant
