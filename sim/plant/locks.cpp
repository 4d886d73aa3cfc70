// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/locks.h"

#include <algorithm>
#include <cmath>

namespace cabwright::plant {

namespace {

constexpr double kUsable = 1e-12;  // a row with less than this to give cannot lock
constexpr double kHardNm = 1e5;    // a row that can give this much closes with an impulse

SpeedVector applyInverseMass(const Machine& m, const SpeedVector& f) {
  SpeedVector v{};
  for (std::size_t k = 0; k < kSpeeds; ++k) v[k] = m.d.w_diagonal[k] * f[k];
  for (std::size_t n = 0; n < kLines; ++n) {
    const std::size_t i = speedOf(n, kBoxIn), o = speedOf(n, kBoxOut);
    v[i] += m.d.w_box[n] * f[o];
    v[o] += m.d.w_box[n] * f[i];
  }
  return v;
}

SpeedVector rowVector(const RowShape& s) {
  SpeedVector j{};
  j[s.a] += s.ca;
  j[s.b] += s.cb;
  return j;
}

double dotRow(const RowShape& s, const SpeedVector& v) { return s.ca * v[s.a] + s.cb * v[s.b]; }

struct RowSystem {
  std::array<std::size_t, kRows> row{};
  std::array<RowShape, kRows> shape{};
  std::array<SpeedVector, kRows> wj{};  ///< W J^T
  std::size_t size = 0;

  void add(const Machine& m, std::size_t k) {
    row[size] = k;
    shape[size] = m.shapeOf(k);
    wj[size] = applyInverseMass(m, rowVector(shape[size]));
    ++size;
  }
  [[nodiscard]] double a(std::size_t r, std::size_t c) const { return dotRow(shape[r], wj[c]); }
};

void fillProblem(const RowSystem& rows, BoxProblem& p) {
  p.size = rows.size;
  for (std::size_t r = 0; r < rows.size; ++r) {
    for (std::size_t c = 0; c <= r; ++c) p.a[r][c] = p.a[c][r] = rows.a(r, c);
  }
}

bool isUsable(const Bounds& b, std::size_t k) { return b.hi[k] - b.lo[k] > kUsable; }

// Only what is toothed, one-way or seized closes with a jump; wheels, blocks and bearings slide on
// however much friction they can give.
bool closesHard(const Bounds& b, std::size_t k, double v_rel) {
  if (k >= kRailRow) return false;
  return (v_rel < -kSpeedTolerance * 2.0 && b.hi[k] >= kHardNm) ||
         (v_rel > kSpeedTolerance * 2.0 && b.lo[k] <= -kHardNm);
}

double applyImpulse(const Machine& m, State& x, const Bounds& bounds) {
  RowSystem rows;
  for (std::size_t k = 0; k < kRows; ++k) {
    if (isUsable(bounds, k)) rows.add(m, k);
  }
  BoxProblem p;
  fillProblem(rows, p);
  BoxSolution start;
  for (std::size_t r = 0; r < rows.size; ++r) {
    p.b[r] = rowSpeed(rows.shape[r], x);
    p.lo[r] = bounds.lo[rows.row[r]] * kShockSeconds;
    p.hi[r] = bounds.hi[rows.row[r]] * kShockSeconds;
  }
  const BoxSolution s = solveBox(p, start);
  const double before = calcKineticEnergy(m, x);
  for (std::size_t r = 0; r < rows.size; ++r) {
    for (std::size_t k = 0; k < kSpeeds; ++k) x[k] += rows.wj[r][k] * s.lambda[r];
  }
  return before - calcKineticEnergy(m, x);
}

// LDL^T of the locked rows that leaves out those which follow from the others.
struct Independent {
  std::array<std::size_t, kRows> pick{};
  std::size_t size = 0;
  std::array<std::array<double, kRows>, kRows> l{};
};

Independent findIndependent(const RowSystem& rows) {
  Independent f;
  for (std::size_t r = 0; r < rows.size; ++r) {
    std::array<double, kRows> line{};
    double pivot = rows.a(r, r);
    const double whole = pivot;
    for (std::size_t c = 0; c < f.size; ++c) {
      double s = rows.a(r, f.pick[c]);
      for (std::size_t k = 0; k < c; ++k) s -= line[k] * f.l[c][k];
      line[c] = s / f.l[c][c];
      pivot -= line[c] * line[c];
    }
    if (pivot <= 1e-9 * whole) continue;
    line[f.size] = std::sqrt(pivot);
    f.l[f.size] = line;
    f.pick[f.size++] = r;
  }
  return f;
}

void solveIndependent(const Independent& f, RowVector& y) {
  for (std::size_t r = 0; r < f.size; ++r) {
    for (std::size_t k = 0; k < r; ++k) y[r] -= f.l[r][k] * y[k];
    y[r] /= f.l[r][r];
  }
  for (std::size_t r = f.size; r-- > 0;) {
    for (std::size_t k = r + 1; k < f.size; ++k) y[r] -= f.l[k][r] * y[k];
    y[r] /= f.l[r][r];
  }
}

RowSystem lockedRows(const Machine& m, const Modes& modes) {
  RowSystem rows;
  for (std::size_t k = 0; k < kRows; ++k) {
    if (modes.row[k] == RowMode::kLocked) rows.add(m, k);
  }
  return rows;
}

// Puts the speeds of these rows exactly to zero with the least change in kinetic energy.
void projectToRest(const RowSystem& rows, State& x) {
  const Independent f = findIndependent(rows);
  for (int pass = 0; pass < 2; ++pass) {  // twice, to the last bits
    RowVector y{};
    for (std::size_t r = 0; r < f.size; ++r) y[r] = rowSpeed(rows.shape[f.pick[r]], x);
    solveIndependent(f, y);
    for (std::size_t r = 0; r < f.size; ++r) {
      for (std::size_t k = 0; k < kSpeeds; ++k) x[k] -= rows.wj[f.pick[r]][k] * y[r];
    }
  }
}

void calcHolding(const RowSystem& rows, Modes& modes) {
  // (A + eps) G = J W, by Gauss-Jordan on a positive definite matrix: no pivoting needed.
  const std::size_t n = rows.size;
  std::array<std::array<double, kRows>, kRows> a{};
  for (std::size_t r = 0; r < n; ++r) {
    for (std::size_t c = 0; c < n; ++c) a[r][c] = rows.a(r, c);
    a[r][r] *= 1.0 + kRowSoftness;
    modes.hold[r] = rows.wj[r];
  }
  for (std::size_t p = 0; p < n; ++p) {
    const double inverse = 1.0 / a[p][p];
    for (std::size_t c = p; c < n; ++c) a[p][c] *= inverse;
    for (std::size_t c = 0; c < kSpeeds; ++c) modes.hold[p][c] *= inverse;
    for (std::size_t r = 0; r < n; ++r) {
      if (r == p || a[r][p] == 0.0) continue;
      const double factor = a[r][p];
      for (std::size_t c = p; c < n; ++c) a[r][c] -= factor * a[p][c];
      for (std::size_t c = 0; c < kSpeeds; ++c) modes.hold[r][c] -= factor * modes.hold[p][c];
    }
  }
}

}  // namespace

double calcKineticEnergy(const Machine& m, const State& x) {
  double energy = 0.0;
  for (std::size_t k = 0; k < kSpeeds; ++k) energy += 0.5 * m.d.m_blocks[k][0] * x[k] * x[k];
  for (std::size_t n = 0; n < kLines; ++n) {
    const std::size_t i = speedOf(n, kBoxIn), o = speedOf(n, kBoxOut);
    energy += m.d.m_blocks[i][1] * x[i] * x[o];
  }
  return energy;
}

void calcModeMatrices(const Machine& m, Modes& modes) {
  const RowSystem rows = lockedRows(m, modes);
  modes.locked = rows.row;
  modes.locked_count = rows.size;
  modes.sliding_count = 0;
  for (std::size_t k = 0; k < kRows; ++k) {
    if (modes.row[k] == RowMode::kLocked) continue;
    modes.sliding[modes.sliding_count] = k;
    modes.sliding_shape[modes.sliding_count++] = m.shapeOf(k);
  }
  const Independent f = findIndependent(rows);
  for (std::size_t c = 0; c < kSpeeds; ++c) {
    SpeedVector unit{};
    unit[c] = 1.0;
    SpeedVector column = applyInverseMass(m, unit);
    RowVector y{};
    for (std::size_t r = 0; r < f.size; ++r) y[r] = dotRow(rows.shape[f.pick[r]], column);
    solveIndependent(f, y);
    for (std::size_t r = 0; r < f.size; ++r) {
      for (std::size_t k = 0; k < kSpeeds; ++k) column[k] -= rows.wj[f.pick[r]][k] * y[r];
    }
    for (std::size_t r = 0; r < kSpeeds; ++r) modes.accelerate[r][c] = column[r];
  }
  calcHolding(rows, modes);
}

double resolveModes(const Machine& m, State& x, Modes& modes) {
  State dx{};
  Forces forces;
  calcForces(m, x, dx, forces);
  const Bounds& bounds = forces.bounds;
  double lost = 0.0;
  for (std::size_t k = 0; k < kRows; ++k) {
    if (closesHard(bounds, k, rowSpeed(m.shapeOf(k), x))) {
      lost = applyImpulse(m, x, bounds);
      calcForces(m, x, dx, forces);
      break;
    }
  }

  RowSystem resting;
  SpeedVector load = forces.f;
  BoxSolution start;
  for (std::size_t k = 0; k < kRows; ++k) {
    const RowShape shape = m.shapeOf(k);
    const double v_rel = rowSpeed(shape, x);
    if (isUsable(bounds, k) && std::abs(v_rel) <= 2.0 * kSpeedTolerance) {
      start.place[resting.size] = modes.row[k] == RowMode::kLocked     ? BoxPlace::kInside
                                  : modes.row[k] == RowMode::kPositive ? BoxPlace::kLow
                                                                       : BoxPlace::kHigh;
      resting.add(m, k);
      continue;
    }
    modes.row[k] = v_rel >= 0.0 ? RowMode::kPositive : RowMode::kNegative;
    const double force = slideForce(bounds, k, modes.row[k]);
    load[shape.a] += shape.ca * force;
    load[shape.b] += shape.cb * force;
  }
  BoxProblem p;
  fillProblem(resting, p);
  const SpeedVector free = applyInverseMass(m, load);
  for (std::size_t r = 0; r < resting.size; ++r) {
    p.b[r] = dotRow(resting.shape[r], free);
    p.lo[r] = bounds.lo[resting.row[r]];
    p.hi[r] = bounds.hi[resting.row[r]];
  }
  const BoxSolution s = solveBox(p, start);
  for (std::size_t r = 0; r < resting.size; ++r) {
    modes.row[resting.row[r]] = s.place[r] == BoxPlace::kInside ? RowMode::kLocked
                                : s.place[r] == BoxPlace::kLow  ? RowMode::kPositive
                                                                : RowMode::kNegative;
  }
  // Rows that begin to slide start from rest too: else one caught a hair on the wrong side of zero
  // would meet its guard again at once.
  projectToRest(resting, x);
  calcModeMatrices(m, modes);
  return lost;
}

RowVector calcRowForces(const Modes& modes, const Forces& forces) {
  RowVector lambda{};
  for (std::size_t r = 0; r < modes.sliding_count; ++r) {
    const std::size_t k = modes.sliding[r];
    lambda[k] = slideForce(forces.bounds, k, modes.row[k]);
  }
  const SpeedVector load = calcLoads(modes, forces);
  for (std::size_t r = 0; r < modes.locked_count; ++r) {
    double sum = 0.0;
    for (std::size_t c = 0; c < kSpeeds; ++c) sum -= modes.hold[r][c] * load[c];
    lambda[modes.locked[r]] = sum;
  }
  return lambda;
}

RowVector calcRowGuards(const Modes& modes, const State& x, const Bounds& bounds,
                        const RowVector& row_forces) {
  RowVector guard{};
  for (std::size_t r = 0; r < modes.locked_count; ++r) {
    const std::size_t k = modes.locked[r];
    const double lo = bounds.lo[k], hi = bounds.hi[k], force = row_forces[k];
    guard[k] = std::min(force - lo, hi - force) + 1e-7 * (hi - lo) + 1e-9;
  }
  for (std::size_t r = 0; r < modes.sliding_count; ++r) {
    const std::size_t k = modes.sliding[r];
    if (!isUsable(bounds, k)) {
      guard[k] = 1.0;  // has nothing to give: its direction does not matter
      continue;
    }
    const double v_rel = rowSpeed(modes.sliding_shape[r], x);
    guard[k] = (modes.row[k] == RowMode::kPositive ? v_rel : -v_rel) + kSpeedTolerance;
  }
  return guard;
}

void advanceVelocityLevel(const Machine& m, State& x, Modes& modes, double h) {
  State dx{};
  Forces forces;
  calcRates(m, modes, x, dx, forces);
  RowSystem rows;
  for (std::size_t k = 0; k < kRows; ++k) {
    if (isUsable(forces.bounds, k)) rows.add(m, k);
  }
  const SpeedVector pushed = applyInverseMass(m, forces.f);
  for (std::size_t k = 0; k < kStates; ++k) x[k] += h * (k < kSpeeds ? pushed[k] : dx[k]);
  BoxProblem p;
  fillProblem(rows, p);
  BoxSolution start;
  for (std::size_t r = 0; r < rows.size; ++r) {
    p.b[r] = rowSpeed(rows.shape[r], x);
    p.lo[r] = forces.bounds.lo[rows.row[r]] * h;
    p.hi[r] = forces.bounds.hi[rows.row[r]] * h;
  }
  const BoxSolution s = solveBox(p, start);
  for (std::size_t r = 0; r < rows.size; ++r) {
    for (std::size_t k = 0; k < kSpeeds; ++k) x[k] += rows.wj[r][k] * s.lambda[r];
  }
  resolveModes(m, x, modes);
}

}  // namespace cabwright::plant
