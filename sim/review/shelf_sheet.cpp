// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/shelf_sheet.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <nlohmann/json.hpp>

#include "review/entry.h"

namespace cabwright::review {
namespace {

using marking::Outcome;
using nlohmann::json;

constexpr std::size_t kMostLines = 1000, kMostNameBytes = 1000;

std::string textOf(const json& object, const char* key) {
  const auto found = object.find(key);
  if (found == object.end() || !found->is_string()) return {};
  return found->get<std::string>().substr(0, kMostNameBytes);
}

double numberOf(const json& object, const char* key) {
  const auto found = object.find(key);
  if (found == object.end() || !found->is_number()) return 0;
  const auto number = found->get<double>();
  return std::isfinite(number) ? number : 0;
}

bool has(const json& object, const char* key) {
  const auto found = object.find(key);
  return found != object.end() && !found->is_null();
}

bool isTrue(const json& object, const char* key) {
  const auto found = object.find(key);
  return found != object.end() && found->is_boolean() && found->get<bool>();
}

char letterOf(Outcome outcome) {
  switch (outcome) {
    case Outcome::kMet:
      return kLineMet;
    case Outcome::kBroken:
      return kLineBroken;
    case Outcome::kPendingGood:
    case Outcome::kPendingBad:
      return kLinePending;
    case Outcome::kNotExercised:
      break;
  }
  return kLineNotExercised;
}

char letterOf(const json& line) {
  if (!textOf(line, "void_reason").empty()) return kLineVoid;
  if (isTrue(line, "fails_run")) return kLineFails;
  if (has(line, "follows_line")) return kLineFollows;
  const std::string word = textOf(line, "verdict");
  for (const Outcome outcome : {Outcome::kMet, Outcome::kBroken, Outcome::kPendingGood})
    if (word == wordOf(outcome)) return letterOf(outcome);
  return word == wordOf(Outcome::kPendingBad) ? kLinePending : kLineNotExercised;
}

// Of a hundred kilobytes some are wanted: what is beside them is passed over and not built.
json readWanted(std::string_view sheet_json) {
  static constexpr std::array<std::string_view, 2> kOfSheet{"totals", "lines"};
  static constexpr std::array<std::string_view, 7> kOfLine{
      "id", "title", "class", "verdict", "void_reason", "fails_run", "follows_line"};
  const auto isIn = [](const auto& wanted, const json& key) {
    return std::ranges::find(wanted, key.get_ref<const std::string&>()) != wanted.end();
  };
  const auto wants = [&isIn](int depth, json::parse_event_t event, json& parsed) {
    if (event != json::parse_event_t::key) return true;
    if (depth == 1) return isIn(kOfSheet, parsed);
    return depth != 3 || isIn(kOfLine, parsed);
  };
  return json::parse(sheet_json, wants, false);
}

}  // namespace

bool SheetGlance::operator==(const SheetGlance& other) const {
  const bool same_names = names == other.names || (names && other.names && *names == *other.names);
  return same_names && earned == other.earned && possible == other.possible &&
         percent == other.percent && letters == other.letters;
}

SheetGlance readGlance(std::string_view sheet_json) {
  SheetGlance glance;
  const json sheet = readWanted(sheet_json);
  if (!sheet.is_object()) return glance;
  if (const auto totals = sheet.find("totals"); totals != sheet.end() && totals->is_object()) {
    glance.earned = numberOf(*totals, "earned");
    glance.possible = numberOf(*totals, "possible");
    glance.percent = std::clamp(numberOf(*totals, "percent"), 0.0, 100.0);
  }
  const auto lines = sheet.find("lines");
  if (lines == sheet.end() || !lines->is_array() || lines->empty()) return glance;
  std::vector<std::pair<LineName, char>> read;
  for (const json& line : *lines) {
    if (!line.is_object() || read.size() == kMostLines) break;
    const bool critical = textOf(line, "class") == wordOf(marking::RuleClass::kCritical);
    read.emplace_back(LineName{textOf(line, "id"), textOf(line, "title"), critical},
                      letterOf(line));
  }
  std::ranges::sort(read);  // on the sheet they stand as they fell
  auto names = std::make_shared<LineNames>();
  for (auto& [name, letter] : read) {
    names->push_back(std::move(name));
    glance.letters += letter;
  }
  glance.names = std::move(names);
  return glance;
}

void NameLists::share(SheetGlance& sheet) {
  if (sheet.names) sheet.names = *lists_.insert(sheet.names).first;
}

void overrideLine(SheetGlance& sheet, const Override& given) {
  for (std::size_t k = 0; sheet.names && k < sheet.names->size(); ++k) {
    const LineName& name = (*sheet.names)[k];
    if (name.id != given.rule) continue;
    sheet.letters[k] = given.outcome ? letterOf(*given.outcome) : kLineVoid;
    if (name.critical && sheet.letters[k] == kLineBroken) sheet.letters[k] = kLineFails;
  }
}

int countBrokenCriticals(const SheetGlance& sheet) {
  return static_cast<int>(std::ranges::count(sheet.letters, kLineFails));
}

}  // namespace cabwright::review
