// SPDX-License-Identifier: GPL-3.0-or-later
// What a hand can move: the table of controls, and their ids by cab, by engine, and of the unit.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "unit/control_list.h"
#include "unit/frame.h"
#include "unit/places.h"

namespace cabwright::unit {

#define CABWRIGHT_CONTROL(Y, id, name, kind, positions, standard, places, spring, text) k##id,
enum class Control : std::uint8_t { CABWRIGHT_CONTROLS(CABWRIGHT_CONTROL, ) kCount };
#undef CABWRIGHT_CONTROL
inline constexpr std::size_t kControlCount = static_cast<std::size_t>(Control::kCount);
[[nodiscard]] constexpr std::size_t indexOf(Control c) { return static_cast<std::size_t>(c); }

/// The same control of the other cab or engine: of cab 1 (engine 1) to that of cab `n` (engine
/// `n`), n = 0 or 1.
[[nodiscard]] constexpr Control ofCab(Control of_cab1, int cab) {
  const auto stride = indexOf(Control::kCab2Key) - indexOf(Control::kCab1Key);
  return static_cast<Control>(indexOf(of_cab1) + static_cast<std::size_t>(cab) * stride);
}
[[nodiscard]] constexpr Control ofEngine(Control of_engine1, int line) {
  const auto stride = indexOf(Control::kEngine2Start) - indexOf(Control::kEngine1Start);
  return static_cast<Control>(indexOf(of_engine1) + static_cast<std::size_t>(line) * stride);
}

enum class ControlKind : std::uint8_t { kLever, kButton, kSwitch, kCock, kWheel };
enum class ControlSpring : std::uint8_t { kStays, kSprings };

struct ControlPosition {
  std::string_view name;
  double value;
};

struct ControlInfo {
  Control id;
  std::string_view name;
  ControlKind kind;
  std::vector<ControlPosition> positions;
  bool continuous;         ///< anything between lowest and highest, not only the named positions
  bool whole;              ///< but whole numbers only
  double lowest, highest;  ///< over all positions
  double standard;         ///< where it stands unless the scenario says otherwise
  PlaceSet places;         ///< from where it can be reached; of the hand lamp: none, it is carried
  ControlSpring spring;
  std::string_view text;
  Signal signal;  ///< the signal that says where it stands
};

[[nodiscard]] const std::vector<ControlInfo>& controlTable();
[[nodiscard]] const ControlInfo& controlInfo(Control c);
[[nodiscard]] std::optional<Control> findControl(std::string_view name);

/// The value of a written position: a named one, or a number the control can take.
[[nodiscard]] std::optional<double> findPosition(const ControlInfo& info, std::string_view written);
/// "off, forward, reverse" or "0 to 1 (off, on)".
[[nodiscard]] std::string positionsInWords(const ControlInfo& info);
/// The name of a position, or the number when it has none.
[[nodiscard]] std::string positionName(const ControlInfo& info, double value);

/// Where all controls stand.
struct ControlValues {
  std::array<double, kControlCount> value{};
  ControlValues();  ///< the standard positions
  [[nodiscard]] double operator[](Control c) const { return value[indexOf(c)]; }
  double& operator[](Control c) { return value[indexOf(c)]; }
  /// From half way up: in, on, open, pulled ...
  [[nodiscard]] bool on(Control c) const { return value[indexOf(c)] > 0.5; }
};

}  // namespace cabwright::unit
