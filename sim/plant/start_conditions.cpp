// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/start_conditions.h"

#include "plant/named_numbers.h"

namespace cabwright::plant {

namespace {

template <class T>
std::size_t offsetIn(const StartConditions& whole, const T& part) {
  return static_cast<std::size_t>(reinterpret_cast<const char*>(&part) -
                                  reinterpret_cast<const char*>(&whole));
}

std::vector<StartInfo> makeTable() {
  static const StartConditions proto;
  std::vector<StartInfo> table;
  std::string prefix;
#define CABWRIGHT_ADD(name, value, lo, hi, unit, text) \
  table.push_back({prefix + #name, offsetIn(proto, part.name), value, lo, hi, unit, text});
  {
    const StartConditions& part = proto;
    CABWRIGHT_START_UNIT(CABWRIGHT_ADD)
  }
  for (std::size_t n = 0; n < kLines; ++n) {
    prefix = "line" + std::to_string(n + 1) + ".";
    const LineStart& part = proto.line[n];
    CABWRIGHT_START_LINE(CABWRIGHT_ADD)
  }
  for (std::size_t c = 0; c < kCabs; ++c) {
    prefix = "cab" + std::to_string(c + 1) + ".";
    const CabStart& part = proto.cab[c];
    CABWRIGHT_START_CAB(CABWRIGHT_ADD)
  }
#undef CABWRIGHT_ADD
  return table;
}

}  // namespace

double& StartInfo::of(StartConditions& s) const {
  return *reinterpret_cast<double*>(reinterpret_cast<char*>(&s) + offset);
}
double StartInfo::of(const StartConditions& s) const {
  return *reinterpret_cast<const double*>(reinterpret_cast<const char*>(&s) + offset);
}

const std::vector<StartInfo>& startTable() {
  static const std::vector<StartInfo> table = makeTable();
  return table;
}

std::vector<const StartInfo*> findStartConditions(std::string_view written) {
  return findNamed(startTable(), written);
}

}  // namespace cabwright::plant
