// SPDX-License-Identifier: GPL-3.0-or-later
// The classical fourth-order method with a fixed step, from Boost.Odeint, in the place of the
// plant's own: no error control at all, cubic Hermite between the ends of a step.
#pragma once

#include <memory>

#include "plant/step_method.h"

namespace cabwright::testing {

[[nodiscard]] std::unique_ptr<plant::StepMethod> makeRk4(double step_s);

/// The given method, never taking a longer step than this.
[[nodiscard]] std::unique_ptr<plant::StepMethod> makeShortened(
    std::unique_ptr<plant::StepMethod> method, double longest_s);

}  // namespace cabwright::testing
