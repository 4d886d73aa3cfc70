// SPDX-License-Identifier: GPL-3.0-or-later
// The integration methods on problems with a known answer: order, error control, dense output.
#include "plant/step_method.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "cvode_step.h"
#include "plant/layout.h"
#include "rk4_step.h"

namespace cabwright::testing {
namespace {

using plant::State;

// Speeds 0 and 1 swing, speed 2 decays, and the train falls freely: all with exact answers.
void rates(const State& x, State& dx) {
  dx.fill(0.0);
  dx[0] = 3.0 * x[1];
  dx[1] = -3.0 * x[0];
  dx[2] = -x[2];
  dx[plant::kTrain] = -9.0;
  dx[plant::kPosition] = x[plant::kTrain];
}

State startState() {
  State x{};
  x[0] = 0.0;
  x[1] = 1.0;
  x[2] = 2.0;
  x[plant::kTrain] = 4.0;
  return x;
}

State exact(double t) {
  State x{};
  x[0] = std::sin(3.0 * t);
  x[1] = std::cos(3.0 * t);
  x[2] = 2.0 * std::exp(-t);
  x[plant::kTrain] = 4.0 - 9.0 * t;
  x[plant::kPosition] = 4.0 * t - 4.5 * t * t;
  return x;
}

double worstOf(const State& a, const State& b) {
  double worst = 0.0;
  for (std::size_t k = 0; k < plant::kStates; ++k) worst = std::max(worst, std::abs(a[k] - b[k]));
  return worst;
}

struct Errors {
  double at_end = 0, inside = 0;
};

// Two seconds with steps of at most h: error at the ends of steps and in their middle.
Errors runExact(plant::StepMethod& method, double h) {
  const plant::Rhs rhs = rates;
  method.start(rhs, startState());
  Errors e;
  double t = 0.0;
  while (t < 2.0 - 1e-9) {
    const double done = method.step(rhs, std::min(h, 2.0 - t));
    EXPECT_GT(done, 0.0);
    EXPECT_LE(done, std::min(h, 2.0 - t) * (1.0 + 1e-12));
    if (!(done > 0.0)) return {1e9, 1e9};
    State at;
    for (double share : {0.25, 0.5, 0.75}) {
      method.calcAt(share * done, at);
      e.inside = std::max(e.inside, worstOf(at, exact(t + share * done)));
    }
    t += done;
    e.at_end = std::max(e.at_end, worstOf(method.end(), exact(t)));
    method.calcAt(done, at);
    EXPECT_EQ(at, method.end());
  }
  return e;
}

double orderOf(double coarse, double fine, double ratio) {
  return std::log(coarse / fine) / std::log(ratio);
}

TEST(StepMethod, DormandPrinceIsOfFifthOrderAndItsDenseOutputOfFourth) {
  // So loose that the limit, not the error, sets the step; long enough past the first short ones.
  const auto coarse = plant::makeDopri5(1e9), fine = plant::makeDopri5(1e9);
  const Errors a = runExact(*coarse, 0.08), b = runExact(*fine, 0.04);
  const double order = orderOf(a.at_end, b.at_end, 2.0);
  const double dense = orderOf(a.inside, b.inside, 2.0);
  std::printf("dopri5: order %.2f at the ends, %.2f inside\n", order, dense);
  EXPECT_GT(order, 4.6);
  EXPECT_LT(order, 5.8);
  EXPECT_GT(dense, 3.8);
}

TEST(StepMethod, TheOracleOfFixedStepsIsOfFourthOrder) {
  const auto coarse = makeRk4(0.02), fine = makeRk4(0.01);
  const Errors a = runExact(*coarse, 1.0), b = runExact(*fine, 1.0);
  EXPECT_NEAR(orderOf(a.at_end, b.at_end, 2.0), 4.0, 0.3);
  EXPECT_GT(orderOf(a.inside, b.inside, 2.0), 3.6);
}

TEST(StepMethod, ErrorFollowsTheToleranceDown) {
  double before = std::numeric_limits<double>::infinity();
  for (double tolerance : {1.0, 1e-2, 1e-4}) {
    const auto method = plant::makeDopri5(tolerance);
    const Errors e = runExact(*method, 1.0);
    std::printf("dopri5 at %g: %.2e at the ends, %.2e inside\n", tolerance, e.at_end, e.inside);
    EXPECT_LT(e.at_end, 10.0 * 1e-3 * tolerance);
    EXPECT_LT(e.at_end, 0.2 * before);
    before = e.at_end;
  }
}

TEST(StepMethod, CvodeMeetsTheSameAnswers) {
  const auto method = makeCvode(1e-6);
  const Errors e = runExact(*method, 1.0);
  EXPECT_LT(e.at_end, 1e-6);
  EXPECT_LT(e.inside, 1e-6);
}

TEST(StepMethod, CopiesGoOnAlike) {
  const plant::Rhs rhs = rates;
  for (int kind = 0; kind < 2; ++kind) {
    const auto method = kind == 0 ? plant::makeDopri5() : makeCvode(1e-4);
    method->start(rhs, startState());
    double length = 0.0;
    for (int k = 0; k < 5; ++k) length = method->step(rhs, 0.05);
    const auto copy = method->clone();
    State a, b;
    for (double share : {0.0, 0.3, 0.9, 1.0}) {
      method->calcAt(share * length, a);
      copy->calcAt(share * length, b);
      if (kind == 0) {
        EXPECT_EQ(a, b);
      }
      EXPECT_LT(worstOf(a, b), 1e-9);
    }
    EXPECT_GT(copy->step(rhs, 0.05), 0.0);
    if (kind == 0) {
      EXPECT_GT(method->step(rhs, 0.05), 0.0);
      EXPECT_EQ(copy->end(), method->end());
    }
  }
}

TEST(StepMethod, NotANumberIsNoSuccess) {
  const plant::Rhs rhs = [](const State& x, State& dx) {
    rates(x, dx);
    if (x[2] < 1.9) dx[2] = std::numeric_limits<double>::quiet_NaN();
  };
  const auto method = plant::makeDopri5();
  method->start(rhs, startState());
  double done = 0.0;
  for (int k = 0; k < 200 && done >= 0.0; ++k) done = method->step(rhs, 0.02);
  EXPECT_LT(done, 0.0);
  for (double v : method->end()) EXPECT_TRUE(std::isfinite(v));
}

TEST(StepMethod, AnInfiniteStateIsNoSuccess) {
  const plant::Rhs rhs = [](const State& x, State& dx) {
    dx.fill(0.0);
    dx[2] = x[2] * x[2];  // 1/(1/2 - t): gone at half a second
  };
  const auto method = plant::makeDopri5();
  method->start(rhs, startState());
  double done = 0.0, t = 0.0;
  for (int k = 0; k < 100000 && done >= 0.0; ++k) {
    done = method->step(rhs, 0.02);
    t += std::max(0.0, done);
  }
  EXPECT_LT(done, 0.0);
  EXPECT_NEAR(t, 0.5, 1e-3);
}

}  // namespace
}  // namespace cabwright::testing
