// SPDX-License-Identifier: GPL-3.0-or-later
// SUNDIALS CVODE in the place of the plant's own integration: backward differentiation of variable
// order with Newton's method and a dense Jacobian by differences, written by other people.
#pragma once

#include <memory>

#include "plant/step_method.h"

namespace cabwright::testing {

/// tolerance scales the plant's standard error weights, as in makeDopri5. The library chooses its
/// steps itself; longer ones than asked for are handed out in slices, because the plant looks for
/// events inside each.
[[nodiscard]] std::unique_ptr<plant::StepMethod> makeCvode(double tolerance);

}  // namespace cabwright::testing
