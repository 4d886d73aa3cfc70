// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/quantity_text.h"

#include <array>
#include <charconv>
#include <cmath>

#include "plant/named_numbers.h"
#include "scenario/fault_sink.h"

namespace cabwright::scenario {

namespace {

constexpr double kTicksPerSecond = 100.0;
constexpr double kLongestSeconds = 1e6;

struct Scale {
  std::string_view from, to;
  double factor;
};
// What may be written for what; equal units need no row.
constexpr std::array<Scale, 10> kScales{{{"min", "s", 60.0},
                                         {"h", "s", 3600.0},
                                         {"ms", "s", 0.001},
                                         {"s", "min", 1.0 / 60.0},
                                         {"h", "min", 60.0},
                                         {"min", "h", 1.0 / 60.0},
                                         {"s", "h", 1.0 / 3600.0},
                                         {"km", "m", 1000.0},
                                         {"mm", "m", 0.001},
                                         {"m", "mm", 1000.0}}};

std::optional<double> findFactor(std::string_view from, std::string_view to) {
  if (from == to) return 1.0;
  for (const Scale& s : kScales) {
    if (s.from == from && s.to == to) return s.factor;
  }
  return std::nullopt;
}

bool isSpace(char c) { return c == ' ' || c == '\t'; }

struct Part {
  double number;
  std::string_view unit;
};

// Takes "NUMBER UNIT" off the front; nothing if there is no number there.
std::optional<Part> takePart(std::string_view& text) {
  text = trimmed(text);
  double number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || !std::isfinite(number)) return std::nullopt;
  text = trimmed(text.substr(static_cast<std::size_t>(end - text.data())));
  std::size_t length = 0;
  while (length < text.size() && !isSpace(text[length])) ++length;
  Part part{number, text.substr(0, length)};
  text = trimmed(text.substr(length));
  return part;
}

std::string quoted(std::string_view text) { return "'" + printable(text) + "'"; }

}  // namespace

std::string_view trimmed(std::string_view text) {
  const auto blank = [](char c) { return isSpace(c) || c == '\r' || c == '\n'; };
  while (!text.empty() && blank(text.front())) text.remove_prefix(1);
  while (!text.empty() && blank(text.back())) text.remove_suffix(1);
  return text;
}

std::optional<double> readNumber(std::string_view text) {
  double number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(number)) {
    return std::nullopt;
  }
  return number;
}

std::variant<double, std::string> readQuantity(std::string_view text, std::string_view unit,
                                               bool bare) {
  const std::string allowed = unit.empty() ? "a plain number" : "a number of " + std::string(unit);
  std::string_view rest = text;
  if (unit.empty() || unit.find(' ') != std::string_view::npos) {
    // A unit of several words ("N m") is compared as it stands.
    std::string_view number = trimmed(rest);
    if (!unit.empty() && number.ends_with(unit)) number.remove_suffix(unit.size());
    if (const auto value = readNumber(trimmed(number))) return *value;
    return quoted(text) + " found; allowed: " + allowed;
  }
  const auto part = takePart(rest);
  if (!part) return quoted(text) + " found; allowed: " + allowed;
  if (part->unit.empty() && bare) return part->number;
  const auto factor = findFactor(part->unit, unit);
  if (!factor) {
    const std::string found = part->unit.empty() ? "no unit" : "unit " + quoted(part->unit);
    return found + " found; allowed: " + allowed;
  }
  if (!rest.empty()) return quoted(rest) + " found behind the unit; allowed: " + allowed;
  return part->number * *factor;
}

std::variant<std::int64_t, std::string> secondsToTicks(double seconds) {
  if (!(seconds >= 0.0 && seconds <= kLongestSeconds)) {
    return plant::shortNumber(seconds) + " s found; allowed: 0 to 1000000 s";
  }
  const double ticks = seconds * kTicksPerSecond;
  const double whole = std::round(ticks);
  if (std::abs(ticks - whole) > 1e-6) {
    return plant::shortNumber(seconds) +
           " s found; allowed: whole hundredths of a second (one tick is 0.01 s)";
  }
  return static_cast<std::int64_t>(whole);
}

std::variant<std::int64_t, std::string> readTicks(std::string_view text) {
  const std::string wrong =
      quoted(trimmed(text)) + " found; allowed: a time such as 12.5 s, 3 min, 1 min 30 s";
  std::string_view rest = text;
  double seconds = 0;
  double last_factor = 1e9;
  do {
    const auto part = takePart(rest);
    if (!part) return wrong;
    const auto factor = findFactor(part->unit, "s");
    // Parts go from the large unit to the small one, each once.
    if (!factor || !(*factor < last_factor) || part->number < 0.0) return wrong;
    last_factor = *factor;
    seconds += part->number * *factor;
  } while (!rest.empty());
  return secondsToTicks(seconds);
}

}  // namespace cabwright::scenario
