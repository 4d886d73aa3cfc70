// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/box_solver.h"

#include <algorithm>
#include <cmath>

namespace cabwright::plant {

namespace {

using Matrix = std::array<std::array<double, kRows>, kRows>;

// LDL^T without pivoting: the shifted matrix is positive definite.
void solveSymmetric(Matrix& m, RowVector& x, std::size_t n) {
  for (std::size_t j = 0; j < n; ++j) {
    for (std::size_t k = 0; k < j; ++k) m[j][j] -= m[j][k] * m[j][k] * m[k][k];
    for (std::size_t i = j + 1; i < n; ++i) {
      double s = m[i][j];
      for (std::size_t k = 0; k < j; ++k) s -= m[i][k] * m[j][k] * m[k][k];
      m[i][j] = s / m[j][j];
    }
  }
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t k = 0; k < i; ++k) x[i] -= m[i][k] * x[k];
  }
  for (std::size_t i = 0; i < n; ++i) x[i] /= m[i][i];
  for (std::size_t i = n; i-- > 0;) {
    for (std::size_t k = i + 1; k < n; ++k) x[i] -= m[k][i] * x[k];
  }
}

void solveFreeRows(const BoxProblem& p, BoxSolution& s) {
  std::array<std::size_t, kRows> free{};
  std::size_t n = 0;
  for (std::size_t i = 0; i < p.size; ++i) {
    if (s.place[i] == BoxPlace::kInside) {
      free[n++] = i;
    } else {
      s.lambda[i] = s.place[i] == BoxPlace::kLow ? p.lo[i] : p.hi[i];
    }
  }
  Matrix m{};
  RowVector x{};
  for (std::size_t r = 0; r < n; ++r) {
    const std::size_t i = free[r];
    x[r] = -p.b[i];
    for (std::size_t j = 0; j < p.size; ++j) {
      if (s.place[j] != BoxPlace::kInside) x[r] -= p.a[i][j] * s.lambda[j];
    }
    for (std::size_t c = 0; c <= r; ++c) m[r][c] = p.a[i][free[c]];
    m[r][r] *= 1.0 + kRowSoftness;
  }
  solveSymmetric(m, x, n);
  for (std::size_t r = 0; r < n; ++r) s.lambda[free[r]] = x[r];
}

struct Violation {
  double size = 0;  // relative
  BoxPlace to = BoxPlace::kInside;
};

Violation calcViolation(const BoxProblem& p, const BoxSolution& s, std::size_t i) {
  if (s.place[i] == BoxPlace::kInside) {
    const double scale = 1e-9 + std::abs(s.lambda[i]);
    if (s.lambda[i] > p.hi[i]) return {(s.lambda[i] - p.hi[i]) / scale, BoxPlace::kHigh};
    if (s.lambda[i] < p.lo[i]) return {(p.lo[i] - s.lambda[i]) / scale, BoxPlace::kLow};
    return {};
  }
  // The softness belongs to the problem at the bounds too: without it two redundant rows could each
  // find the other's place wrong, without end.
  double w = p.b[i] + kRowSoftness * p.a[i][i] * s.lambda[i], scale = std::abs(p.b[i]);
  for (std::size_t j = 0; j < p.size; ++j) {
    const double part = p.a[i][j] * s.lambda[j];
    w += part;
    scale += std::abs(part);
  }
  const double wrong = s.place[i] == BoxPlace::kLow ? -w : w;
  // Rounding of the sum is no violation.
  if (wrong > 1e-13 * scale + 1e-14) return {wrong / (scale + 1e-300), BoxPlace::kInside};
  return {};
}

}  // namespace

BoxSolution solveBox(const BoxProblem& p, const BoxSolution& start) {
  BoxSolution s = start;
  constexpr int kWorstFirst = 64, kMostPasses = 400;
  for (s.passes = 1; s.passes <= kMostPasses; ++s.passes) {
    solveFreeRows(p, s);
    std::size_t worst = p.size;
    Violation found;
    for (std::size_t i = 0; i < p.size; ++i) {
      const Violation v = calcViolation(p, s, i);
      if (v.size > found.size) {
        found = v;
        worst = i;
        if (s.passes > kWorstFirst) break;  // Bland: lowest index, so that it cannot cycle
      }
    }
    if (worst == p.size) {
      s.solved = true;
      return s;
    }
    s.place[worst] = found.to;
  }
  for (std::size_t i = 0; i < p.size; ++i) s.lambda[i] = std::clamp(s.lambda[i], p.lo[i], p.hi[i]);
  return s;
}

}  // namespace cabwright::plant
