// SPDX-License-Identifier: GPL-3.0-or-later
// What can be wrong with the things of each place, as plain tables. In effects and tests '#' is the
// number of the place, '@' that of the brake cylinder there, '%' main or control by the number,
// '&' the name of the place.
#pragma once

#include <string_view>
#include <vector>

#include "unit/items.h"

namespace cabwright::unit {

inline constexpr DefectClass kOdd = DefectClass::kNone;  ///< looks odd, is sound
inline constexpr DefectClass kT = DefectClass::kTechnical;
inline constexpr DefectClass kS = DefectClass::kSerious;
inline constexpr DefectClass kC = DefectClass::kCritical;

// How long a look takes that has seen it all (house values; a second at the least is common
// practice).
inline constexpr double kGlanceS = 1.0;  ///< one thing in front of the eyes
inline constexpr double kAlongS = 2.0;   ///< several of them along a car
inline constexpr double kReadS = 3.0;    ///< something written
inline constexpr double kDipS = 5.0;     ///< dipstick out, wiped, in, out, read

struct ConditionRow {
  std::string_view name;
  DefectClass rank;
  std::string_view seen;
  std::string_view effect = "";  ///< actions, "; " between them
  /// "SIGNAL > 1", "SIGNAL < 1", "1 < SIGNAL < 2"; "number NAME > 1" and so on of a parameter,
  /// "share ..." of what it is when sound, "added ..." to that; "instrument NAME CONDITION"
  std::string_view live = "";
  SeenBy by = SeenBy::kEye;
};

enum class Trait : unsigned char { kPlain, kDip, kNotBooked };

struct ItemRow {
  std::string_view name;  ///< what stands behind the place and the dot
  std::string_view good;
  std::vector<ConditionRow> conditions;
  Trait trait = Trait::kPlain;
  double look_s = kGlanceS;
  SeenBy by = SeenBy::kEye;
};

[[nodiscard]] std::vector<ItemRow> endItems();
[[nodiscard]] std::vector<ItemRow> carItems();       ///< of both cars, each side
[[nodiscard]] std::vector<ItemRow> motorCarItems();  ///< of car 1 alone
[[nodiscard]] std::vector<ItemRow> trailerItems();   ///< of car 2 alone
[[nodiscard]] std::vector<ItemRow> engineItems();
[[nodiscard]] std::vector<ItemRow> betweenItems();
[[nodiscard]] std::vector<ItemRow> cabItems();
[[nodiscard]] std::vector<ItemRow>
otherItems();  ///< booking-on point, cupboard, saloon: full names

}  // namespace cabwright::unit
