// SPDX-License-Identifier: GPL-3.0-or-later
// The friction problem against a solver written the stupid way: every way of placing the rows is
// tried, and the one that fits is the answer.
#include "plant/box_solver.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

#include "quantity/random.h"

namespace cabwright::testing {
namespace {

using plant::BoxPlace;
using plant::BoxProblem;
using plant::BoxSolution;
using quantity::Random;

double between(Random& r, double lo, double hi) { return lo + (hi - lo) * r.uniform01(); }

// A = J J^T with J of fewer columns than rows where `rank` < size: some rows follow from others.
BoxProblem makeProblem(Random& r, std::size_t size, std::size_t rank) {
  std::vector<std::vector<double>> j(size, std::vector<double>(rank));
  for (auto& row : j) {
    for (double& v : row) v = between(r, -1.0, 1.0);
  }
  BoxProblem p;
  p.size = size;
  for (std::size_t a = 0; a < size; ++a) {
    for (std::size_t b = 0; b < size; ++b) {
      for (std::size_t k = 0; k < rank; ++k) p.a[a][b] += j[a][k] * j[b][k];
    }
    // Forces come through the same rows: b lies in the span of J.
  }
  std::vector<double> push(rank);
  for (double& v : push) v = between(r, -3.0, 3.0);
  for (std::size_t a = 0; a < size; ++a) {
    for (std::size_t k = 0; k < rank; ++k) p.b[a] += j[a][k] * push[k];
    p.lo[a] = r.uniformBelow(5) == 0 ? 0.0 : -between(r, 0.0, 3.0);
    p.hi[a] = r.uniformBelow(5) == 0 ? 1e6 : between(r, 0.0, 3.0);
  }
  return p;
}

double softA(const BoxProblem& p, std::size_t r, std::size_t c) {
  return p.a[r][c] * (r == c ? 1.0 + plant::kRowSoftness : 1.0);
}

// Gauss with full row pivoting; nothing in common with the solver under test.
std::vector<double> solveDense(std::vector<std::vector<double>> m, std::vector<double> y) {
  const std::size_t n = y.size();
  for (std::size_t c = 0; c < n; ++c) {
    std::size_t best = c;
    for (std::size_t r = c; r < n; ++r) {
      if (std::abs(m[r][c]) > std::abs(m[best][c])) best = r;
    }
    std::swap(m[c], m[best]);
    std::swap(y[c], y[best]);
    for (std::size_t r = c + 1; r < n; ++r) {
      const double f = m[r][c] / m[c][c];
      for (std::size_t k = c; k < n; ++k) m[r][k] -= f * m[c][k];
      y[r] -= f * y[c];
    }
  }
  for (std::size_t c = n; c-- > 0;) {
    for (std::size_t k = c + 1; k < n; ++k) y[c] -= m[c][k] * y[k];
    y[c] /= m[c][c];
  }
  return y;
}

// How far a placing is from fitting; its forces in `lambda`.
double calcMisfit(const BoxProblem& p, std::size_t code, std::vector<double>& lambda) {
  std::vector<std::size_t> free;
  std::vector<int> place(p.size);
  for (std::size_t i = 0; i < p.size; ++i, code /= 3) {
    place[i] = static_cast<int>(code % 3);
    if (place[i] == 0) free.push_back(i);
    lambda[i] = place[i] == 1 ? p.lo[i] : place[i] == 2 ? p.hi[i] : 0.0;
  }
  std::vector<std::vector<double>> m;
  std::vector<double> y;
  for (std::size_t i : free) {
    std::vector<double> line;
    for (std::size_t j : free) line.push_back(softA(p, i, j));
    m.push_back(line);
    double rest = -p.b[i];
    for (std::size_t j = 0; j < p.size; ++j) rest -= place[j] == 0 ? 0.0 : p.a[i][j] * lambda[j];
    y.push_back(rest);
  }
  const std::vector<double> x = solveDense(m, y);
  for (std::size_t k = 0; k < free.size(); ++k) lambda[free[k]] = x[k];
  double worst = 0.0;
  for (std::size_t i = 0; i < p.size; ++i) {
    double w = p.b[i];
    for (std::size_t j = 0; j < p.size; ++j) w += softA(p, i, j) * lambda[j];
    if (place[i] == 0) worst = std::max({worst, lambda[i] - p.hi[i], p.lo[i] - lambda[i]});
    if (place[i] == 1) worst = std::max(worst, -w);
    if (place[i] == 2) worst = std::max(worst, w);
  }
  return worst;
}

std::vector<double> solveByTryingAll(const BoxProblem& p) {
  std::size_t codes = 1;
  for (std::size_t i = 0; i < p.size; ++i) codes *= 3;
  std::vector<double> best, lambda(p.size);
  double least = 1e300;
  for (std::size_t code = 0; code < codes; ++code) {
    const double misfit = calcMisfit(p, code, lambda);
    if (misfit < least) {
      least = misfit;
      best = lambda;
    }
  }
  return best;
}

double calcW(const BoxProblem& p, const double* lambda, std::size_t i) {
  double w = p.b[i];
  for (std::size_t j = 0; j < p.size; ++j) w += p.a[i][j] * lambda[j];
  return w;
}

// Worst breach of the conditions: within bounds; no motion inside; motion only away from a bound.
double calcBreach(const BoxProblem& p, const BoxSolution& s) {
  double worst = 0.0;
  for (std::size_t i = 0; i < p.size; ++i) {
    const double w = calcW(p, s.lambda.data(), i);
    worst = std::max({worst, s.lambda[i] - p.hi[i], p.lo[i] - s.lambda[i]});
    if (s.lambda[i] > p.lo[i] && s.lambda[i] < p.hi[i]) worst = std::max(worst, std::abs(w));
    if (s.lambda[i] >= p.hi[i] && p.hi[i] > p.lo[i]) worst = std::max(worst, w);
    if (s.lambda[i] <= p.lo[i] && p.hi[i] > p.lo[i]) worst = std::max(worst, -w);
  }
  return worst;
}

TEST(BoxSolver, FindsWhatTryingEveryPlacingFinds) {
  EXPECT_TRUE(rc::check([](std::uint64_t seed) {
    Random r(seed);
    const std::size_t size = 1 + r.uniformBelow(6);
    const BoxProblem p = makeProblem(r, size, size);
    const BoxSolution s = plant::solveBox(p, {});
    RC_ASSERT(s.solved);
    const std::vector<double> wanted = solveByTryingAll(p);
    // Motion is unique even where forces are nearly not.
    for (std::size_t i = 0; i < size; ++i) {
      RC_ASSERT(std::abs(calcW(p, s.lambda.data(), i) - calcW(p, wanted.data(), i)) < 1e-6);
    }
  }));
}

TEST(BoxSolver, RedundantRowsShareOneWayWhateverTheStart) {
  EXPECT_TRUE(rc::check([](std::uint64_t seed) {
    Random r(seed);
    const std::size_t size = 3 + r.uniformBelow(4);
    const BoxProblem p = makeProblem(r, size, 2);
    const BoxSolution cold = plant::solveBox(p, {});
    RC_ASSERT(cold.solved);
    RC_ASSERT(calcBreach(p, cold) < 1e-5);
    const std::vector<double> wanted = solveByTryingAll(p);
    BoxSolution start;
    for (std::size_t i = 0; i < size; ++i)
      start.place[i] = static_cast<BoxPlace>(r.uniformBelow(3));
    const BoxSolution warm = plant::solveBox(p, start);
    RC_ASSERT(warm.solved);
    for (std::size_t i = 0; i < size; ++i) {
      RC_ASSERT(std::abs(cold.lambda[i] - warm.lambda[i]) < 1e-5);
      RC_ASSERT(std::abs(cold.lambda[i] - wanted[i]) < 1e-5);
    }
  }));
}

TEST(BoxSolver, SolvesTheWholeMachinesSizeWithinItsPasses) {
  int most = 0;
  for (std::uint64_t seed = 0; seed < 400; ++seed) {
    Random r(seed);
    const BoxProblem p = makeProblem(r, plant::kRows, 3 + r.uniformBelow(10));
    const BoxSolution s = plant::solveBox(p, {});
    ASSERT_TRUE(s.solved) << "seed " << seed;
    EXPECT_LT(calcBreach(p, s), 1e-4) << "seed " << seed;
    most = std::max(most, s.passes);
  }
  EXPECT_LT(most, 400);
}

TEST(BoxSolver, TwoEqualRowsCarryHalfEach) {
  BoxProblem p;
  p.size = 2;
  for (auto r : {0u, 1u}) {
    p.a[r][0] = p.a[r][1] = 2.0;
    p.b[r] = -6.0;
    p.lo[r] = -10.0;
    p.hi[r] = 10.0;
  }
  const BoxSolution s = plant::solveBox(p, {});
  ASSERT_TRUE(s.solved);
  EXPECT_NEAR(s.lambda[0], 1.5, 1e-6);
  EXPECT_NEAR(s.lambda[1], 1.5, 1e-6);
  // Once one can give only 1, the other carries the rest.
  p.hi[0] = 1.0;
  const BoxSolution t = plant::solveBox(p, {});
  ASSERT_TRUE(t.solved);
  EXPECT_EQ(t.place[0], BoxPlace::kHigh);
  EXPECT_NEAR(t.lambda[1], 2.0, 1e-6);
}

TEST(BoxSolver, HoldsExactlyUpToTheBoundAndSlidesBeyond) {
  BoxProblem p;
  p.size = 1;
  p.a[0][0] = 0.5;
  p.lo[0] = -4.0;
  p.hi[0] = 4.0;
  p.b[0] = 1.999999;
  EXPECT_EQ(plant::solveBox(p, {}).place[0], BoxPlace::kInside);
  p.b[0] = 2.00001;
  const BoxSolution slides = plant::solveBox(p, {});
  EXPECT_EQ(slides.place[0], BoxPlace::kLow)
      << "pushed forward, so friction gives its most backward";
  EXPECT_EQ(slides.lambda[0], -4.0);
}

TEST(BoxSolver, NothingToSolveIsSolved) {
  const BoxSolution s = plant::solveBox({}, {});
  EXPECT_TRUE(s.solved);
}

}  // namespace
}  // namespace cabwright::testing
