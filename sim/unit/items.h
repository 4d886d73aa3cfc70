// SPDX-License-Identifier: GPL-3.0-or-later
// What can be looked at and judged, and what can be wrong with it.
//
// An item shows the condition that was hidden in it (scenario, instructor), or else one that
// follows from the world as it is: a control out of its place, a level too low. Conditions with a
// physical side have an effect, written as the actions that bring it about.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "unit/frame.h"
#include "unit/item_list.h"
#include "unit/places.h"

namespace cabwright::unit {

#define CABWRIGHT_ITEM(Y, id, name, place, text) k##id,
enum class Item : std::uint8_t { CABWRIGHT_ITEMS(CABWRIGHT_ITEM, ) kCount };
#undef CABWRIGHT_ITEM
inline constexpr std::size_t kItemCount = static_cast<std::size_t>(Item::kCount);
[[nodiscard]] constexpr std::size_t indexOf(Item i) { return static_cast<std::size_t>(i); }

/// How much a defect matters. kNone: looks odd and is sound.
enum class DefectClass : std::uint8_t { kNone, kTechnical, kSerious, kCritical };
[[nodiscard]] std::string_view letterOf(DefectClass c);  ///< "", "T", "S", "C"
[[nodiscard]] std::optional<DefectClass> findDefectClass(std::string_view letter);

/// A signal between two limits: the condition is there when it holds.
struct LiveTest {
  Signal signal;
  double low, high;
  [[nodiscard]] bool holds(const Frame& frame) const {
    return frame[signal] > low && frame[signal] < high;
  }
};

struct ItemCondition {
  std::string name;  ///< "hanging", "split" ...
  DefectClass rank;
  std::string seen;                  ///< what somebody sees who looks
  std::vector<std::string> effects;  ///< actions that bring it about; empty: only to be seen
  std::optional<LiveTest> live;      ///< it is there by itself when this holds
};

struct ItemInfo {
  Item id;
  std::string_view name;
  Place place;
  std::string_view text;
  std::string good;  ///< what somebody sees who looks and it is sound
  std::vector<ItemCondition> conditions;
  bool dip = false;      ///< can be read only with the engine stopped (dipstick)
  double look_s = 1.0;   ///< how long one has to look at it to have seen it
  bool bookable = true;  ///< a defect belongs in the repair book (not: people, flags, levers)
};

[[nodiscard]] const std::vector<ItemInfo>& itemTable();
[[nodiscard]] const ItemInfo& itemInfo(Item i);
[[nodiscard]] std::optional<Item> findItem(std::string_view name);
/// Number of a condition by name: 0 "good", n the nth of the item's list.
[[nodiscard]] std::optional<int> findItemCondition(const ItemInfo& item, std::string_view name);

enum class Verdict : std::uint8_t { kNone, kGood, kDefect, kUnsure };
[[nodiscard]] std::string_view wordOf(Verdict v);
[[nodiscard]] std::optional<Verdict> findVerdict(std::string_view word);

}  // namespace cabwright::unit
