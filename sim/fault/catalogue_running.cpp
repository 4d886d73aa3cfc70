// SPDX-License-Identifier: GPL-3.0-or-later
// Faults of wheels, axles and shafts.
#include "fault/catalogue_rows.h"

namespace cabwright::fault {

namespace {

std::vector<FaultRow> axles() {
  return {
      {.name = "axlebox.hot",
       .where = "axlebox of car 2, side 1",
       .text = "an axlebox runs hot: its bearing is going",
       .symptom = "coasting she slows more than she should; at the stop the box is blue and hot, "
                  "hand held near",
       .decision = "stop at a fit place, do not run on with it: report, the unit fails",
       .size = {"N", 500.0, 12000.0, 4000.0},
       .gradual = true,
       .numbers = {{"train.resistance_a_n", How::kAdd, itself}},
       .acts = {{"condition trailer1.axleboxes blue", "condition trailer1.axleboxes good"}}},
      {.name = "wheels@.flat",
       .where = "wheels beside brake cylinder @",
       .text = "a wheel was dragged: a flat on its tread",
       .symptom = "seen on the walk along that side",
       .decision = "report; slow or not at all, by the local rule",
       .acts = {{"condition &.wheels flat", "condition &.wheels good"}}},
  };
}

std::vector<FaultRow> shafts() {
  return {
      {.name = "cardan#.bolt_gone",
       .where = "cardan shaft of engine #",
       .text = "a bolt of the shaft's flange is gone, the others are loose",
       .symptom = "seen on the walk along that side",
       .decision = "report; the unit does not go before the shaft is fast",
       .acts = {{"condition side#.cardan bolt_gone", "condition side#.cardan good"}}},
  };
}

}  // namespace

std::vector<FaultSystem> runningFaults() {
  return {{"wheels and shafts", 1, 4, axles()}, {"wheels and shafts", 2, 1, shafts()}};
}

}  // namespace cabwright::fault
