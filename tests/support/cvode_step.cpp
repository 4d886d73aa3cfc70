// SPDX-License-Identifier: GPL-3.0-or-later
#include "cvode_step.h"

#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <vector>

namespace cabwright::testing {

namespace {

using plant::kStates;
using plant::State;

void check(int flag, const char* call) {
  if (flag < 0) throw std::runtime_error(std::string(call) + " failed: " + std::to_string(flag));
}

// What takes no part in the choice of step still needs a scale: coarse, but finite.
double absoluteOf(std::size_t k, double tolerance) {
  const double given = plant::standardWeights().absolute[k];
  if (given > 0.0) return given * tolerance;
  if (k == plant::kPosition) return 1e-2 * tolerance;
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    // Which tooth meets which gap hangs on these.
    if (k == plant::stateOf(n, plant::kShaftAngle)) return 1e-2 * tolerance;
    if (k == plant::stateOf(n, plant::kWheelAngle)) return 1e-2 * tolerance;
  }
  return k < plant::kFuelJ ? 1.0 : 1e6;
}

struct Library {
  SUNContext context = nullptr;
  N_Vector x = nullptr, absolute = nullptr, out = nullptr;
  SUNMatrix matrix = nullptr;
  SUNLinearSolver solver = nullptr;
  void* memory = nullptr;

  Library() {
    check(SUNContext_Create(nullptr, &context), "SUNContext_Create");
    const auto n = static_cast<sunindextype>(kStates);
    x = N_VNew_Serial(n, context);
    absolute = N_VNew_Serial(n, context);
    out = N_VNew_Serial(n, context);
    matrix = SUNDenseMatrix(n, n, context);
    solver = SUNLinSol_Dense(x, matrix, context);
    memory = CVodeCreate(CV_BDF, context);
  }
  Library(const Library&) = delete;
  Library& operator=(const Library&) = delete;
  ~Library() {
    CVodeFree(&memory);
    SUNLinSolFree(solver);
    SUNMatDestroy(matrix);
    N_VDestroy(x);
    N_VDestroy(absolute);
    N_VDestroy(out);
    SUNContext_Free(&context);
  }
};

class CvodeStep final : public plant::StepMethod {
 public:
  explicit CvodeStep(double tolerance) : tolerance_(tolerance) {
    check(CVodeInit(lib_.memory, &CvodeStep::callRhs, 0.0, lib_.x), "CVodeInit");
    for (std::size_t k = 0; k < kStates; ++k) {
      N_VGetArrayPointer(lib_.absolute)[k] = absoluteOf(k, tolerance);
    }
    const double relative = plant::standardWeights().relative * tolerance;
    check(CVodeSVtolerances(lib_.memory, relative, lib_.absolute), "CVodeSVtolerances");
    check(CVodeSetLinearSolver(lib_.memory, lib_.solver, lib_.matrix), "CVodeSetLinearSolver");
    check(CVodeSetUserData(lib_.memory, this), "CVodeSetUserData");
    check(CVodeSetMaxNumSteps(lib_.memory, 100000), "CVodeSetMaxNumSteps");
    check(CVodeSetErrHandlerFn(lib_.memory, &CvodeStep::ignoreMessage, nullptr),
          "CVodeSetErrHandlerFn");
  }

  void start(const plant::Rhs& rhs, const State& x) override {
    rhs_ = &rhs;
    frozen_.clear();
    x1_ = x;
    length_ = 0.0;
    std::copy(x.begin(), x.end(), N_VGetArrayPointer(lib_.x));
    check(CVodeReInit(lib_.memory, 0.0, lib_.x), "CVodeReInit");
    begin_ = reached_ = 0.0;
  }

  double step(const plant::Rhs& rhs, double h_most) override {
    if (!frozen_.empty()) start(rhs, State(x1_));
    rhs_ = &rhs;
    begin_ += length_;
    // The library goes its own length; the plant is given it in slices.
    if (reached_ - begin_ < 1e-12) {
      begin_ = reached_;
      const int flag = CVode(lib_.memory, reached_ + 1e9, lib_.x, &reached_, CV_ONE_STEP);
      if (flag < 0) {
        length_ = 0.0;
        return -1.0;
      }
    }
    length_ = std::min(h_most, reached_ - begin_);
    check(CVodeGetDky(lib_.memory, begin_ + length_, 0, lib_.out), "CVodeGetDky");
    std::copy_n(N_VGetArrayPointer(lib_.out), kStates, x1_.begin());
    return length_;
  }

  void calcAt(double since, State& x) const override {
    if (since >= length_) {
      x = x1_;
      return;
    }
    if (!frozen_.empty()) {
      const double t = since - length_;
      x = frozen_.back();
      for (std::size_t q = frozen_.size() - 1; q-- > 0;) {
        for (std::size_t k = 0; k < kStates; ++k) {
          x[k] = frozen_[q][k] + x[k] * t / static_cast<double>(q + 1);
        }
      }
      return;
    }
    check(CVodeGetDky(lib_.memory, begin_ + since, 0, lib_.out), "CVodeGetDky");
    std::copy_n(N_VGetArrayPointer(lib_.out), kStates, x.begin());
  }

  [[nodiscard]] const State& end() const override { return x1_; }

  // The library's memory cannot be copied: the copy keeps the last slice as a polynomial (the
  // derivatives at its end) and starts the next one anew.
  [[nodiscard]] std::unique_ptr<plant::StepMethod> clone() const override {
    auto copy = std::make_unique<CvodeStep>(tolerance_);
    copy->x1_ = x1_;
    copy->length_ = length_;
    copy->frozen_ = frozen_;
    if (frozen_.empty() && length_ > 0.0) {
      int order = 0;
      check(CVodeGetLastOrder(lib_.memory, &order), "CVodeGetLastOrder");
      for (int q = 0; q <= order; ++q) {
        check(CVodeGetDky(lib_.memory, begin_ + length_, q, lib_.out), "CVodeGetDky");
        State d;
        std::copy_n(N_VGetArrayPointer(lib_.out), kStates, d.begin());
        copy->frozen_.push_back(d);
      }
    } else if (frozen_.empty()) {
      copy->frozen_.push_back(x1_);
    }
    return copy;
  }

 private:
  static int callRhs(double, N_Vector x, N_Vector dx, void* self) {
    State at, rate{};
    std::copy_n(N_VGetArrayPointer(x), kStates, at.begin());
    (*static_cast<CvodeStep*>(self)->rhs_)(at, rate);
    bool finite = true;
    for (double r : rate) finite = finite && std::isfinite(r);
    std::copy(rate.begin(), rate.end(), N_VGetArrayPointer(dx));
    return finite ? 0 : 1;  // 1: try a shorter step
  }
  static void ignoreMessage(int, const char*, const char*, char*, void*) {}

  Library lib_;
  const plant::Rhs* rhs_ = nullptr;
  double tolerance_ = 1.0, begin_ = 0.0, length_ = 0.0, reached_ = 0.0;
  State x1_{};
  std::vector<State> frozen_;
};

}  // namespace

std::unique_ptr<plant::StepMethod> makeCvode(double tolerance) {
  return std::make_unique<CvodeStep>(tolerance);
}

}  // namespace cabwright::testing
