// SPDX-License-Identifier: GPL-3.0-or-later
// What can be looked at and judged, and what can be wrong with it.
//
// An item shows the condition that was hidden in it (scenario, instructor), or else one that
// follows from the world as it is: a control out of its place, a level too low, a number of the
// machine that is not what it is in a sound one (a belt that is gone, whoever took it). Conditions
// with a physical side have an effect, written as the actions that bring it about.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "plant/parameters.h"
#include "unit/frame.h"
#include "unit/instruments.h"
#include "unit/item_list.h"
#include "unit/places.h"
#include "unit/unit_parameters.h"

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

/// A figure between two limits: the condition is there when it holds.
struct LiveTest {
  enum class Of : std::uint8_t {
    kSignal,      ///< of the Frame
    kNumber,      ///< of plant or unit, as it is now
    kShare,       ///< the same over what it is in this vehicle when sound
    kAdded,       ///< the same less that
    kInstrument,  ///< a gauge or lamp is in this condition; no limits
  };
  Of of = Of::kSignal;
  double low = 0, high = 0;
  Signal signal{};
  const plant::ParameterInfo* of_plant = nullptr;
  const UnitParameterInfo* of_unit = nullptr;
  Instrument instrument{};
  InstrumentCondition condition{};

  [[nodiscard]] bool contains(double value) const { return value > low && value < high; }
};

/// By what a thing shows what is wrong with it.
enum class SeenBy : std::uint8_t {
  kEye,           ///< whoever looks
  kWhiteLamps,    ///< only while the white lamps of this end are switched on and have current
  kRedLamps,      ///< likewise the red ones
  kSaloonLights,  ///< likewise the saloon's
  kLampTest,      ///< only under the lamp test of this desk, with current in it
};

/// What a look at a thing tells.
struct Sight {
  std::string seen;  ///< its condition in words, with what it shows; "dark"
  std::string why;   ///< why nothing is to be made out; empty: it is, or nobody helps
  bool operator==(const Sight&) const = default;
};

struct ItemCondition {
  std::string name;  ///< "hanging", "split" ...
  DefectClass rank;
  std::string seen;                  ///< what somebody sees who looks
  std::vector<std::string> effects;  ///< actions that bring it about; empty: only to be seen
  std::optional<LiveTest> live;      ///< it is there by itself when this holds
  SeenBy by = SeenBy::kEye;
  std::size_t test = 0;  ///< number of that test among all of them
};

struct ItemInfo {
  Item id;
  std::string_view name;
  Place place;
  std::string_view text;
  std::string good;  ///< what somebody sees who looks and it is sound
  std::vector<ItemCondition> conditions;
  bool dip = false;          ///< can be read only with the engine stopped (dipstick)
  SeenBy by = SeenBy::kEye;  ///< without that there is nothing to be made out at all
  double look_s = 1.0;       ///< how long one has to look at it to have seen it
  bool bookable = true;      ///< a defect belongs in the repair book (not: people, flags, levers)
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
