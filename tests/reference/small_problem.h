// SPDX-License-Identifier: GPL-3.0-or-later
// A problem of a few equations carried by the step method of the machine itself: its unknowns stand
// in the first places of the machine's state, each scaled so that the standard error weights mean
// the tolerances asked for. What is tested is the method as the machine uses it, weights included.
#pragma once

#include <cmath>
#include <functional>
#include <memory>
#include <stdexcept>
#include <utility>
#include <vector>

#include "plant/step_method.h"

namespace cabwright::reference {

using Values = std::vector<double>;
/// dy/dt = f(y); time, where it occurs, is an unknown of its own with the rate 1.
using Equations = std::function<void(const Values& y, Values& dy)>;

class SmallProblem {
 public:
  /// At most plant::kSpeeds unknowns; relative and absolute tolerance per step.
  SmallProblem(Equations f, const Values& start, double relative, const Values& absolute)
      : f_(std::move(f)), y_(start), dy_(start.size()), size_(start.size()) {
    const plant::ErrorWeights& w = plant::standardWeights();
    if (size_ > plant::kSpeeds || absolute.size() != size_) {
      throw std::invalid_argument("small problem: size");
    }
    const double tolerance = relative / w.relative;
    plant::State x{};
    for (std::size_t k = 0; k < size_; ++k) {
      scale_.push_back(w.absolute[k] * tolerance / absolute[k]);
      x[k] = start[k] * scale_[k];
    }
    rhs_ = [this](const plant::State& at, plant::State& rate) { calcRates(at, rate); };
    method_ = plant::makeDopri5(tolerance);
    method_->start(rhs_, x);
  }
  SmallProblem(const SmallProblem&) = delete;
  SmallProblem& operator=(const SmallProblem&) = delete;

  [[nodiscard]] double time() const { return time_; }
  [[nodiscard]] int steps() const { return steps_; }
  [[nodiscard]] Values values() const { return unscaled(method_->end()); }

  /// Carries the problem to time t.
  Values advanceTo(double t) {
    while (t - time_ > 1e-14 * (1.0 + t)) step(t - time_);
    return values();
  }
  /// The time at which g falls through zero, located in the dense output.
  double findTime(const std::function<double(const Values&)>& g, double limit) {
    while (g(values()) > 0.0) {
      if (time_ > limit) throw std::runtime_error("small problem: never reached");
      step(limit);
    }
    double good = 0.0, bad = length_;
    for (int k = 0; k < 60; ++k) {
      const double middle = 0.5 * (good + bad);
      plant::State at{};
      method_->calcAt(middle, at);
      (g(unscaled(at)) > 0.0 ? good : bad) = middle;
    }
    return time_ - length_ + bad;
  }

 private:
  void step(double most) {
    length_ = method_->step(rhs_, most);
    if (length_ < 0.0) throw std::runtime_error("small problem: the step method gave up");
    time_ += length_;
    ++steps_;
  }
  void calcRates(const plant::State& at, plant::State& rate) {
    for (std::size_t k = 0; k < size_; ++k) y_[k] = at[k] / scale_[k];
    f_(y_, dy_);
    rate.fill(0.0);
    for (std::size_t k = 0; k < size_; ++k) rate[k] = dy_[k] * scale_[k];
  }
  [[nodiscard]] Values unscaled(const plant::State& at) const {
    Values y(size_);
    for (std::size_t k = 0; k < size_; ++k) y[k] = at[k] / scale_[k];
    return y;
  }

  Equations f_;
  Values y_, dy_, scale_;
  std::size_t size_;
  plant::Rhs rhs_;
  std::unique_ptr<plant::StepMethod> method_;
  double time_ = 0.0, length_ = 0.0;
  int steps_ = 0;
};

}  // namespace cabwright::reference
