// SPDX-License-Identifier: GPL-3.0-or-later
// The method that integrates between events: Dormand-Prince with dense output from Boost.Odeint in
// the product; tests put others in its place.
#pragma once

#include <functional>
#include <memory>

#include "plant/layout.h"

namespace cabwright::plant {

/// dx = f(x): between events the machine does not depend on time.
using Rhs = std::function<void(const State& x, State& dx)>;

class StepMethod {
 public:
  virtual ~StepMethod() = default;
  /// Begins anew at this state: after every change of mode, input or parameter.
  virtual void start(const Rhs& rhs, const State& x) = 0;
  /// One accepted step of at most h_most seconds from where the last one ended; returns its length,
  /// or a negative number when the state cannot be kept finite.
  virtual double step(const Rhs& rhs, double h_most) = 0;
  /// State at `since` seconds after the last step's beginning, within that step.
  virtual void calcAt(double since, State& x) const = 0;
  /// State at the end of the last step.
  [[nodiscard]] virtual const State& end() const = 0;
  /// True when the last evaluation of the right-hand side in step() was at end(): what it left
  /// behind then need not be worked out again.
  [[nodiscard]] virtual bool endsOnEvaluation() const { return false; }
  [[nodiscard]] virtual std::unique_ptr<StepMethod> clone() const = 0;
};

/// Weight of a state's error: |error| <= absolute + relative |x| counts as 1. Zero absolute: the
/// state takes no part in the choice of step (ledgers).
struct ErrorWeights {
  State absolute{};
  double relative = 1e-5;
};
[[nodiscard]] const ErrorWeights& standardWeights();

/// Boost.Odeint's runge_kutta_dopri5 (order 5, dense output of order 4) with a check per state.
/// tolerance scales the standard weights.
[[nodiscard]] std::unique_ptr<StepMethod> makeDopri5(double tolerance = 1.0);

}  // namespace cabwright::plant
