// SPDX-License-Identifier: GPL-3.0-or-later
// The room is headers only; this file lets the build check that each stands on its own.
#include "quantity/curve.h"
#include "quantity/elementary.h"
#include "quantity/hash.h"
#include "quantity/random.h"
#include "quantity/units.h"
