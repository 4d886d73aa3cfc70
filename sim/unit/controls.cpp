// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/controls.h"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "plant/named_numbers.h"

namespace cabwright::unit {

namespace {

template <class... P>
constexpr PlaceSet placeSet(P... places) {
  return (PlaceSet{0} | ... | placeBit(places));
}

std::optional<double> readNumber(std::string_view text) {
  double value = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value)) {
    return std::nullopt;
  }
  return value;
}

// The table's own positions are written by us and tested; a part that cannot be read is left out.
void readPositions(std::string_view text, ControlInfo& info) {
  while (!text.empty()) {
    const std::size_t bar = std::min(text.find('|'), text.size());
    std::string_view part = text.substr(0, bar);
    text = bar < text.size() ? text.substr(bar + 1) : std::string_view();
    if (const std::size_t dots = part.find(".."); dots != std::string_view::npos) {
      info.continuous = true;
      if (part.back() == '#') {
        info.whole = true;
        part.remove_suffix(1);
      }
      info.lowest = readNumber(part.substr(0, dots)).value_or(0.0);
      info.highest = readNumber(part.substr(dots + 2)).value_or(1.0);
      continue;
    }
    const std::size_t equals = std::min(part.find('='), part.size());
    const auto value = equals < part.size() ? readNumber(part.substr(equals + 1)) : std::nullopt;
    if (!value) continue;
    info.positions.push_back({part.substr(0, equals), *value});
    if (info.continuous) continue;
    info.lowest = std::min(info.lowest, *value);
    info.highest = std::max(info.highest, *value);
  }
}

ControlInfo makeControl(Control id, std::string_view name, ControlKind kind,
                        std::string_view positions, double standard, PlaceSet places,
                        ControlSpring spring, std::string_view text, Signal signal) {
  ControlInfo info{id,  name,     kind,   {},     false, false, 0.0,
                   0.0, standard, places, spring, text,  signal};
  readPositions(positions, info);
  return info;
}

std::vector<ControlInfo> makeTable() {
  using enum ControlKind;
  using enum ControlSpring;
  using enum Place;
  std::vector<ControlInfo> table;
#define CABWRIGHT_CONTROL(Y, id, name, kind, positions, standard, places, spring, text)         \
  table.push_back(makeControl(Control::k##id, name, kind, positions, standard, placeSet places, \
                              spring, text, Signal::k##id));
  CABWRIGHT_CONTROLS(CABWRIGHT_CONTROL, )
#undef CABWRIGHT_CONTROL
  return table;
}

}  // namespace

const std::vector<ControlInfo>& controlTable() {
  static const std::vector<ControlInfo> table = makeTable();
  return table;
}

const ControlInfo& controlInfo(Control c) { return controlTable()[indexOf(c)]; }

std::optional<Control> findControl(std::string_view name) {
  for (const ControlInfo& info : controlTable()) {
    if (info.name == name) return info.id;
  }
  return std::nullopt;
}

std::optional<double> findPosition(const ControlInfo& info, std::string_view written) {
  for (const ControlPosition& p : info.positions) {
    if (p.name == written) return p.value;
  }
  const std::optional<double> number = readNumber(written);
  if (!number) return std::nullopt;
  if (info.continuous) {
    const bool inside = *number >= info.lowest && *number <= info.highest;
    const bool fits = !info.whole || std::floor(*number) == *number;
    return inside && fits ? number : std::nullopt;
  }
  for (const ControlPosition& p : info.positions) {
    if (p.value == *number) return number;
  }
  return std::nullopt;
}

std::string positionsInWords(const ControlInfo& info) {
  std::string names;
  for (const ControlPosition& p : info.positions) {
    if (!names.empty()) names += ", ";
    names += p.name;
  }
  if (!info.continuous) return names;
  return plant::shortNumber(info.lowest) + " to " + plant::shortNumber(info.highest) + " (" +
         names + ")";
}

std::string positionName(const ControlInfo& info, double value) {
  for (const ControlPosition& p : info.positions) {
    if (p.value == value) return std::string(p.name);
  }
  return plant::shortNumber(value);
}

ControlValues::ControlValues() {
  const std::vector<ControlInfo>& table = controlTable();
  for (std::size_t k = 0; k < kControlCount; ++k) value[k] = table[k].standard;
}

}  // namespace cabwright::unit
