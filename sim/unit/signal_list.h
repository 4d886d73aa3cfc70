// SPDX-License-Identifier: GPL-3.0-or-later
// X(identifier, name, unit, layer, meaning). The order is the order in session files: add at the
// end, never reorder. (A session names its signals, so an older file still opens.)
#pragma once

// clang-format off
#define CABWRIGHT_SIGNALS(X) \
  X(kCab1Air, "cab1.air", "psi", Layer::kShown, "control air gauge, cab 1") \
  X(kCab1TrainPipe, "cab1.train_pipe", "inHg", Layer::kShown, "vacuum gauge, train pipe needle, cab 1") \
  X(kTrueTrainPipe, "true.train_pipe", "inHg", Layer::kTrue, "vacuum in the train pipe") \
  X(kSpeed, "true.speed", "mph", Layer::kTrue, "speed of the unit, positive: car 1 leads")
// clang-format on
