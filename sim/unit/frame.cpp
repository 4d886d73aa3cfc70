// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/frame.h"

#include <algorithm>
#include <numeric>

namespace cabwright::unit {
namespace {

#define CABWRIGHT_INFO(id, name, unit, layer, text) SignalInfo{Signal::id, name, unit, layer, text},
constexpr SignalInfo kTable[] = {CABWRIGHT_SIGNALS(CABWRIGHT_INFO)};
#undef CABWRIGHT_INFO
static_assert(std::size(kTable) == kSignalCount);

using Order = std::array<std::uint16_t, kSignalCount>;

// Positions of the table in order of name, for the search.
Order makeOrder() {
  Order order;
  std::iota(order.begin(), order.end(), std::uint16_t{0});
  std::stable_sort(order.begin(), order.end(), [](std::uint16_t a, std::uint16_t b) {
    return kTable[a].name < kTable[b].name;
  });
  return order;
}

}  // namespace

std::span<const SignalInfo> signalTable() { return kTable; }

std::optional<Signal> findSignal(std::string_view name) {
  static const Order order = makeOrder();
  const auto found =
      std::lower_bound(order.begin(), order.end(), name,
                       [](std::uint16_t a, std::string_view b) { return kTable[a].name < b; });
  if (found == order.end() || kTable[*found].name != name) return std::nullopt;
  return kTable[*found].id;
}

const SignalInfo& signalInfo(Signal s) { return kTable[static_cast<std::size_t>(s)]; }

}  // namespace cabwright::unit
