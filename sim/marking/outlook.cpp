// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/outlook.h"

#include <algorithm>
#include <limits>
#include <tuple>

namespace cabwright::marking {

std::string_view wordOf(Waiting waiting) {
  switch (waiting) {
    case Waiting::kEnding:
      return "ending";
    case Waiting::kComing:
      return "coming";
    case Waiting::kKeeping:
      return "keeping";
    case Waiting::kMissing:
      return "missing";
    case Waiting::kAvoiding:
      return "avoiding";
    case Waiting::kReady:
      return "ready";
    case Waiting::kResting:
      break;
  }
  return "resting";
}

void sortByNearness(std::vector<Outlook>& outlooks) {
  const auto keyOf = [](const Outlook& o) {
    return std::tuple(o.breaks_at.value_or(std::numeric_limits<std::int64_t>::max()), o.waiting,
                      -static_cast<int>(o.rule_class), o.rule);
  };
  std::sort(outlooks.begin(), outlooks.end(),
            [&](const Outlook& a, const Outlook& b) { return keyOf(a) < keyOf(b); });
}

}  // namespace cabwright::marking
