// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/draft_text.h"

#include <fmt/format.h>

#include <array>

namespace cabwright::scenario {

namespace {

std::string listText(const DraftList& list, std::size_t used, std::string_view line_end) {
  if (list.items.empty()) return "[]";
  std::string one = "[";
  bool tables = false;
  for (const DraftValue& item : list.items) {
    if (one.size() > 1) one += ", ";
    one += valueText(item);
    tables = tables || std::holds_alternative<DraftInline>(item.value);
  }
  one += "]";
  if (used + one.size() <= kWidestLine && !(tables && list.items.size() > 1)) return one;
  std::string many = "[";
  std::string line;
  const auto flush = [&] {
    if (!line.empty()) many.append(line_end).append(line);
    line.clear();
  };
  for (const DraftValue& item : list.items) {
    const std::string text = valueText(item) + ",";
    if (tables || line.size() + 1 + text.size() > kWidestLine) flush();
    line += line.empty() ? "  " + text : " " + text;
  }
  flush();
  return many.append(line_end).append("]");
}

std::string inlineText(const DraftInline& table) {
  if (table.keys.empty()) return "{}";
  std::string text = "{ ";
  for (std::size_t k = 0; k < table.keys.size(); ++k) {
    if (k > 0) text += ", ";
    text += table.keys[k] + " = " + valueText(table.values[k]);
  }
  return text + " }";
}

}  // namespace

std::string quotedText(std::string_view text) {
  std::string out = "\"";
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
      out += '\\';
      out += c;
    } else if (c == '\n') {
      out += "\\n";
    } else if (c == '\t') {
      out += "\\t";
    } else if (byte < 0x20 || byte == 0x7F) {
      out += fmt::format("\\u{:04X}", byte);
    } else {
      out += c;
    }
  }
  return out + "\"";
}

std::string valueText(const DraftValue& value, std::size_t used, std::string_view line_end) {
  struct Text {
    std::size_t used;
    std::string_view line_end;
    std::string operator()(const std::string& text) const { return quotedText(text); }
    std::string operator()(bool flag) const { return flag ? "true" : "false"; }
    std::string operator()(std::int64_t whole) const { return fmt::format("{}", whole); }
    std::string operator()(double number) const {
      std::string text = fmt::format("{}", number);
      // A whole number that is not meant as one: 1e300, 0.0 of a file that says so.
      if (text.find_first_not_of("-0123456789") == std::string::npos) text += ".0";
      return text;
    }
    std::string operator()(const DraftList& list) const { return listText(list, used, line_end); }
    std::string operator()(const DraftInline& table) const { return inlineText(table); }
  };
  return std::visit(Text{used, line_end}, value.value);
}

std::string timeText(std::int64_t ticks) {
  struct Unit {
    std::int64_t ticks;
    std::string_view word;
  };
  constexpr std::array<Unit, 2> kLarge{{{360000, "h"}, {6000, "min"}}};
  std::string text;
  std::int64_t rest = ticks;
  const auto add = [&](const std::string& part) { text += (text.empty() ? "" : " ") + part; };
  for (const Unit& unit : kLarge) {
    // "90 min" and "90 s" are said so; "60 min" up to two hours as well.
    if (rest < unit.ticks || (unit.ticks == 360000 && (rest < 720000 || rest % 360000 != 0)))
      continue;
    add(fmt::format("{} {}", rest / unit.ticks, unit.word));
    rest %= unit.ticks;
  }
  if (rest > 0 || text.empty()) {
    add(rest % 100 == 0 ? fmt::format("{} s", rest / 100)
                        : fmt::format("{} s", static_cast<double>(rest) / 100.0));
  }
  return text;
}

DraftValue quantityValue(double value, std::string_view unit) {
  if (unit.empty()) return DraftValue(value);
  return DraftValue(fmt::format("{} {}", value, unit));
}

}  // namespace cabwright::scenario
