// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers with their unit as people write them: "95 psi", "1 min 30 s", "-12.5 m".
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace cabwright::scenario {

/// The value in `unit`, or what is wrong. A unit of the same kind is converted: s, min, h; m, km.
/// Without any unit the number is taken to be in `unit` if `bare` allows it.
[[nodiscard]] std::variant<double, std::string> readQuantity(std::string_view text,
                                                             std::string_view unit, bool bare);

/// The same for a length of time, which may be of several parts; in ticks of 10 ms. Not negative,
/// whole ticks, a million seconds at most.
[[nodiscard]] std::variant<std::int64_t, std::string> readTicks(std::string_view text);
[[nodiscard]] std::variant<std::int64_t, std::string> secondsToTicks(double seconds);

/// A finite number in full, nothing before or behind it.
[[nodiscard]] std::optional<double> readNumber(std::string_view text);
[[nodiscard]] std::string_view trimmed(std::string_view text);

}  // namespace cabwright::scenario
