// SPDX-License-Identifier: GPL-3.0-or-later
#include "rk4_step.h"

#include <algorithm>
#include <boost/numeric/odeint/stepper/runge_kutta4.hpp>
#include <cmath>
#include <utility>

namespace cabwright::testing {

namespace {

using plant::kStates;
using plant::Rhs;
using plant::State;

class Rk4Step final : public plant::StepMethod {
 public:
  explicit Rk4Step(double step_s) : step_s_(step_s) {}

  void start(const Rhs& rhs, const State& x) override {
    x1_ = x;
    dx1_.fill(0.0);
    rhs(x1_, dx1_);
    length_ = 0.0;
  }

  double step(const Rhs& rhs, double h_most) override {
    x0_ = x1_;
    dx0_ = dx1_;
    length_ = std::min(step_s_, h_most);
    const auto system = [&rhs](const State& x, State& dx, double) { rhs(x, dx); };
    stepper_.do_step(system, x0_, dx0_, 0.0, x1_, length_);
    rhs(x1_, dx1_);
    for (double v : x1_) {
      if (!std::isfinite(v)) return -1.0;
    }
    return length_;
  }

  void calcAt(double since, State& x) const override {
    if (since >= length_) {
      x = x1_;
      return;
    }
    const double s = since / length_, r = 1.0 - s;
    const double a = (1.0 + 2.0 * s) * r * r, b = s * r * r * length_;
    const double c = s * s * (3.0 - 2.0 * s), d = -s * s * r * length_;
    for (std::size_t k = 0; k < kStates; ++k) {
      x[k] = a * x0_[k] + b * dx0_[k] + c * x1_[k] + d * dx1_[k];
    }
  }

  [[nodiscard]] const State& end() const override { return x1_; }
  [[nodiscard]] std::unique_ptr<plant::StepMethod> clone() const override {
    return std::make_unique<Rk4Step>(*this);
  }

 private:
  boost::numeric::odeint::runge_kutta4<State> stepper_;
  State x0_{}, x1_{}, dx0_{}, dx1_{};
  double step_s_, length_ = 0.0;
};

class Shortened final : public plant::StepMethod {
 public:
  Shortened(std::unique_ptr<plant::StepMethod> inner, double longest_s)
      : inner_(std::move(inner)), longest_s_(longest_s) {}
  void start(const Rhs& rhs, const State& x) override { inner_->start(rhs, x); }
  double step(const Rhs& rhs, double h_most) override {
    return inner_->step(rhs, std::min(h_most, longest_s_));
  }
  void calcAt(double since, State& x) const override { inner_->calcAt(since, x); }
  [[nodiscard]] const State& end() const override { return inner_->end(); }
  [[nodiscard]] std::unique_ptr<plant::StepMethod> clone() const override {
    return std::make_unique<Shortened>(inner_->clone(), longest_s_);
  }

 private:
  std::unique_ptr<plant::StepMethod> inner_;
  double longest_s_;
};

}  // namespace

std::unique_ptr<plant::StepMethod> makeRk4(double step_s) {
  return std::make_unique<Rk4Step>(step_s);
}

std::unique_ptr<plant::StepMethod> makeShortened(std::unique_ptr<plant::StepMethod> method,
                                                 double longest_s) {
  return std::make_unique<Shortened>(std::move(method), longest_s);
}

}  // namespace cabwright::testing
