// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/verdict.h"

#include <fmt/format.h>

#include <array>

namespace cabwright::marking {
namespace {

struct Pair {
  std::string_view shown, truth;
};
// One number each. A lamp speaks of several things at once, so it has none.
constexpr std::array<Pair, 21> kPairs{{{"cab1.air", "true.air"},
                                       {"cab2.air", "true.air"},
                                       {"cab1.train_pipe", "true.train_pipe"},
                                       {"cab2.train_pipe", "true.train_pipe"},
                                       {"cab1.guards_gauge", "true.train_pipe"},
                                       {"cab2.guards_gauge", "true.train_pipe"},
                                       {"second.rear_reading", "true.train_pipe"},
                                       {"cab1.release_pipe", "true.release_pipe"},
                                       {"cab2.release_pipe", "true.release_pipe"},
                                       {"cab1.speed", "true.abs_speed"},
                                       {"cab2.speed", "true.abs_speed"},
                                       {"cab1.rpm1", "true.engine1.rpm"},
                                       {"cab2.rpm1", "true.engine1.rpm"},
                                       {"cab1.rpm2", "true.engine2.rpm"},
                                       {"cab2.rpm2", "true.engine2.rpm"},
                                       {"engine1.oil_gauge", "true.engine1.oil_pressure"},
                                       {"engine2.oil_gauge", "true.engine2.oil_pressure"},
                                       {"engine1.coolant_gauge", "true.engine1.coolant_c"},
                                       {"engine2.coolant_gauge", "true.engine2.coolant_c"},
                                       {"engine1.note", "true.engine1.rpm"},
                                       {"cupboard.volts", "true.volts"}}};

}  // namespace

std::string_view wordOf(Outcome o) {
  switch (o) {
    case Outcome::kNotExercised:
      return "not exercised";
    case Outcome::kPendingGood:
      return "pending good";
    case Outcome::kPendingBad:
      return "pending bad";
    case Outcome::kMet:
      return "met";
    case Outcome::kBroken:
      break;
  }
  return "broken";
}

std::string clockText(std::int64_t tick) {
  const std::int64_t hundredths = tick % 100;
  const std::int64_t seconds = tick / 100;
  return fmt::format("{}:{:02}:{:02}.{:02}", seconds / 3600, seconds / 60 % 60, seconds % 60,
                     hundredths);
}

std::optional<unit::Signal> findCounterpart(unit::Signal shown) {
  const unit::SignalInfo& info = unit::signalInfo(shown);
  if (info.layer != unit::Layer::kShown) return std::nullopt;
  for (const Pair& pair : kPairs) {
    if (pair.shown == info.name) return unit::findSignal(pair.truth);
  }
  return std::nullopt;
}

}  // namespace cabwright::marking
