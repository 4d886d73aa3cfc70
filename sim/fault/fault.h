// SPDX-License-Identifier: GPL-3.0-or-later
// The catalogue of faults: what can go wrong, each named by the number it changes or the thing it
// moves. A fault is never a symptom; the symptom told here is what comes out of the machine. All
// sizes are house values, all symptoms and decisions common practice with no published source.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "plant/parameters.h"
#include "unit/unit_parameters.h"

namespace cabwright::fault {

/// How the effects of several faults on one number go together. First all factors, then all
/// additions; a value something is stuck at wins over both, and of several such values the one
/// farthest from the sound one. So the order in which faults come does not matter.
enum class How : std::uint8_t { kScale, kAdd, kTo };

/// A number of the plant or of the unit.
using ParameterRef = std::variant<const plant::ParameterInfo*, const unit::UnitParameterInfo*>;
[[nodiscard]] const std::string& nameOf(const ParameterRef& parameter);
[[nodiscard]] std::string_view unitOf(const ParameterRef& parameter);
[[nodiscard]] double lowestOf(const ParameterRef& parameter);
[[nodiscard]] double highestOf(const ParameterRef& parameter);
/// By exact name; none if there is no such number.
[[nodiscard]] std::optional<ParameterRef> findParameter(std::string_view name);

struct NumberEffect {
  ParameterRef parameter;
  How how = How::kTo;
  /// Factor, addition or value at a size (in the unit of the fault's size).
  double (*value)(double size) = nullptr;
};

/// What is done when the fault comes and when it is put right: actions of the scenario, as text.
/// "{size}" stands for the size, "{tooth}" for the angle in the middle of a tooth of that drive.
struct ActEffect {
  std::string act;
  std::string undo;  ///< empty: nothing, it is for somebody to put right
};

struct SizeRange {
  std::string_view unit;  ///< "mm", "%", "inHg" ...
  double lowest = 0, highest = 0;
  double usual = 0;  ///< when a file gives none
  bool whole = false;
  std::string_view of = {};  ///< what is counted or measured: "lost", "closed"; may be empty
  [[nodiscard]] bool exists() const { return lowest < highest; }
};

struct FaultSpec {
  std::string name;         ///< "gearbox2.band3_worn"
  std::string family;       ///< the same for all of its kind: "gearbox#.band@_worn"
  std::string_view system;  ///< "gearbox", "air" ...: groups of the catalogue
  std::string where;        ///< "gearbox 2, band of gear 3"
  std::string text;         ///< what is wrong
  std::string symptom;      ///< what a trainee should find, and where
  std::string decision;     ///< what is right to do
  SizeRange size;
  bool gradual = false;  ///< can come bit by bit (a ramp)
  std::vector<NumberEffect> numbers;
  std::vector<ActEffect> acts;
};

/// All of them, by system, in a fixed order.
[[nodiscard]] const std::vector<FaultSpec>& faultCatalogue();
[[nodiscard]] const FaultSpec* findFault(std::string_view name);
/// "unknown fault 'x'; did you mean 'y'?"
[[nodiscard]] std::string unknownFault(std::string_view name);
/// What is wrong with a size: nothing, or found and allowed in a sentence.
[[nodiscard]] std::optional<std::string> findSizeFault(const FaultSpec& spec, double size);

}  // namespace cabwright::fault
