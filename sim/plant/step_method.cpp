// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/step_method.h"

#include <algorithm>
#include <boost/numeric/odeint/stepper/runge_kutta_dopri5.hpp>
#include <cmath>

#include "quantity/elementary.h"

namespace cabwright::plant {

namespace odeint = boost::numeric::odeint;

const ErrorWeights& standardWeights() {
  static const ErrorWeights weights = [] {
    ErrorWeights w;
    w.absolute.fill(0.0);
    for (std::size_t k = 0; k < kSpeeds; ++k) w.absolute[k] = 1e-3;
    w.absolute[kTrain] = 1e-4;
    for (std::size_t n = 0; n < kLines; ++n) {
      const auto set = [&](std::size_t which, double tolerance) {
        w.absolute[stateOf(n, which)] = tolerance;
      };
      // Angles take no part: they are sums of speeds, which do.
      set(kRack, 1e-4);
      set(kLever, 1e-4);
      for (std::size_t k : {std::size_t{kWallK}, std::size_t{kCoolantK}, std::size_t{kOilK},
                            std::size_t{kCouplingK}, std::size_t{kBoxOilK}, std::size_t{kStarterK},
                            std::size_t{kClutchK}}) {
        set(k, 1e-2);
      }
      for (std::size_t b = 0; b < kBands; ++b) set(kDrumK + b, 1e-2);
      set(kTrapped, 1e-5);
      set(kSleeve, 1e-5);
      for (std::size_t g = kThrottleMass; g <= kShiftReverseMass; ++g) set(g, 1e-7);
    }
    w.absolute[kMainMass] = w.absolute[kControlMass] = 1e-5;
    for (std::size_t c = 0; c < kCabs; ++c) {
      w.absolute[kDeviceMass + c] = w.absolute[kHornMass + c] = 1e-7;
    }
    w.absolute[kReleaseMass] = w.absolute[kTrainMass] = 1e-6;
    for (std::size_t c = 0; c < kCylinders; ++c) {
      w.absolute[kChamberMass + c] = 1e-6;
      w.absolute[kPiston + c] = 1e-5;
    }
    w.absolute[kCharge] = 1e-7;
    w.absolute[kPolarisationV] = 1e-3;
    return w;
  }();
  return weights;
}

namespace {

class Dopri5 final : public StepMethod {
 public:
  explicit Dopri5(double tolerance) : tolerance_(tolerance) {}

  void start(const Rhs& rhs, const State& x) override {
    x1_ = x;
    rhs(x1_, dx1_);
    h_next_ = std::min(h_next_, kFirstStep);
    length_ = 0.0;
  }

  double step(const Rhs& rhs, double h_most) override {
    x0_ = x1_;
    dx0_ = dx1_;
    const auto system = [&rhs](const State& x, State& dx, double) { rhs(x, dx); };
    double h = std::min(h_next_, h_most);
    for (int tries = 0; tries < 60; ++tries) {
      State error;
      stepper_.do_step(system, x0_, dx0_, 0.0, x1_, dx1_, h, error);
      const double worst = calcError(error);
      if (worst <= 1.0) {
        length_ = h;
        // A step cut short by its limit says little about the next.
        const double grown = h * std::min(4.0, 0.9 * quantity::detPow(std::max(worst, 1e-6), -0.2));
        h_next_ = std::max(grown, std::min(h_next_, kFirstStep));
        return h;
      }
      // Not finite compares false above and lands here: a much smaller step.
      h *= worst > 1.0 && worst < 1e12 ? std::max(0.2, 0.9 * quantity::detPow(worst, -0.2)) : 0.1;
      if (!(h > kShortest)) break;
    }
    x1_ = x0_;
    dx1_ = dx0_;
    return -1.0;
  }

  void calcAt(double since, State& x) const override {
    if (since >= length_) {
      x = x1_;
      return;
    }
    stepper_.calc_state(since, x, x0_, dx0_, 0.0, x1_, dx1_, length_);
  }

  [[nodiscard]] const State& end() const override { return x1_; }
  [[nodiscard]] bool endsOnEvaluation() const override { return true; }  // first same as last
  [[nodiscard]] std::unique_ptr<StepMethod> clone() const override {
    return std::make_unique<Dopri5>(*this);
  }

 private:
  static constexpr double kFirstStep = 2e-3, kShortest = 1e-10;

  [[nodiscard]] double calcError(const State& error) const {
    const ErrorWeights& w = standardWeights();
    double worst = 0.0;
    bool finite = true;
    for (std::size_t k = 0; k < kStates; ++k) {
      finite = finite && std::abs(x1_[k]) < 1e15;
      if (w.absolute[k] == 0.0) continue;
      const double scale = w.absolute[k] + w.relative * std::abs(x0_[k]);
      worst = std::max(worst, std::abs(error[k]) / scale);
    }
    return finite ? worst / tolerance_ : 1e300;
  }

  odeint::runge_kutta_dopri5<State> stepper_;
  State x0_{}, x1_{}, dx0_{}, dx1_{};
  double length_ = 0.0, h_next_ = kFirstStep, tolerance_ = 1.0;
};

}  // namespace

std::unique_ptr<StepMethod> makeDopri5(double tolerance) {
  return std::make_unique<Dopri5>(tolerance);
}

}  // namespace cabwright::plant
