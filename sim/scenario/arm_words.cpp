// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/arm_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <stdexcept>
#include <utility>

#include "scenario/fault_sink.h"
#include "scenario/quantity_text.h"
#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

constexpr std::array<std::string_view, 5> kParts{"size", "ramp", "after", "when", "as"};
constexpr std::size_t kLongestId = 80;
constexpr std::string_view kForm =
    "arm FAULT [size N] [ramp 30 s] [after 5 s] [when CONDITION] [as ID]";

struct Part {
  std::string_view word;  ///< one of kParts
  std::string_view text;  ///< what follows, up to the next part
};

std::string_view takeFirst(std::string_view& text) {
  text = trimmed(text);
  const std::size_t end = std::min(text.find_first_of(" \t"), text.size());
  const std::string_view word = text.substr(0, end);
  text.remove_prefix(end);
  return word;
}

bool isPart(std::string_view word) {
  return std::find(kParts.begin(), kParts.end(), word) != kParts.end();
}

// No signal and no word of a condition is called like a part, so a part ends where the next begins.
std::variant<std::vector<Part>, std::string> splitParts(std::string_view text) {
  std::vector<Part> parts;
  std::string_view rest = text;
  while (!trimmed(rest).empty()) {
    const std::string_view word = takeFirst(rest);
    if (!isPart(word)) {
      if (parts.empty())
        return unit::unknownWord("part of an arm", printable(word), kParts) +
               "; allowed: " + std::string(kForm);
      Part& part = parts.back();
      const char* from = part.text.empty() ? word.data() : part.text.data();
      part.text = {from, static_cast<std::size_t>(word.data() + word.size() - from)};
      continue;
    }
    for (const Part& other : parts) {
      if (other.word == word) return "'" + std::string(word) + "' twice; allowed: once";
    }
    parts.push_back({word, {}});
  }
  return parts;
}

class ArmReader {
 public:
  std::variant<ArmWords, std::string> read(const unit::Action& action) {
    words_.spec = fault::findFault(action.object);
    if (!words_.spec) return fault::unknownFault(action.object);
    if (words_.spec->size.exists()) words_.size = words_.spec->size.usual;
    auto split = splitParts(action.argument);
    if (auto* wrong = std::get_if<std::string>(&split)) return std::move(*wrong);
    for (const Part& part : std::get<std::vector<Part>>(split)) {
      if (part.text.empty())
        return "'" + std::string(part.word) + "' what? Allowed: " + std::string(kForm);
      if (auto wrong = readPart(part)) return std::move(*wrong);
    }
    return words_;
  }

 private:
  std::optional<std::string> readPart(const Part& part) {
    if (part.word == "size") return readSize(part.text);
    if (part.word == "ramp") return readRamp(part.text);
    if (part.word == "after") return readTime(part.text, "after", words_.after_ticks);
    if (part.word == "when") return readWhen(part.text);
    return readId(part.text);
  }

  std::optional<std::string> readSize(std::string_view text) {
    const fault::SizeRange& range = words_.spec->size;
    if (!range.exists()) return fault::findSizeFault(*words_.spec, 1.0);
    const auto size = readQuantity(text, range.unit, true);
    if (const auto* wrong = std::get_if<std::string>(&size)) return "size: " + *wrong;
    words_.size = std::get<double>(size);
    return fault::findSizeFault(*words_.spec, words_.size);
  }

  std::optional<std::string> readRamp(std::string_view text) {
    if (!words_.spec->gradual)
      return "'" + words_.spec->name + "' comes at once; it cannot have a ramp";
    return readTime(text, "ramp", words_.ramp_ticks);
  }

  static std::optional<std::string> readTime(std::string_view text, std::string_view what,
                                             std::int64_t& ticks) {
    const auto read = readTicks(text);
    if (const auto* wrong = std::get_if<std::string>(&read))
      return std::string(what) + ": " + *wrong;
    ticks = std::get<std::int64_t>(read);
    return std::nullopt;
  }

  std::optional<std::string> readWhen(std::string_view text) {
    auto parsed = unit::Condition::parse(text);
    if (const auto* wrong = std::get_if<unit::ConditionFault>(&parsed)) return wrong->what;
    words_.when = std::get<unit::Condition>(std::move(parsed));
    if (words_.when->signals().empty())
      return "'" + printable(text) + "' is a condition without any signal";
    return std::nullopt;
  }

  std::optional<std::string> readId(std::string_view text) {
    if (text.size() > kLongestId) return std::string("an id of more than 80 letters");
    words_.id = text;
    return std::nullopt;
  }

  ArmWords words_;
};

std::string secondsOf(std::int64_t ticks) {
  return fmt::format("{} s", static_cast<double>(ticks) / 100.0);
}

}  // namespace

unit::Action makeArm(const ArmWords& words, unit::Actor actor) {
  if (!words.spec) throw std::invalid_argument("a fault that is in no catalogue");
  std::vector<std::string> parts;
  const fault::SizeRange& range = words.spec->size;
  if (range.exists() && words.size != range.usual)
    parts.push_back(fmt::format("size {}", words.size));
  if (words.ramp_ticks > 0) parts.push_back("ramp " + secondsOf(words.ramp_ticks));
  if (words.after_ticks > 0) parts.push_back("after " + secondsOf(words.after_ticks));
  if (words.when) parts.push_back("when " + words.when->text());
  if (!words.id.empty()) parts.push_back("as " + words.id);
  return {actor, "arm", words.spec->name, fmt::format("{}", fmt::join(parts, " "))};
}

std::variant<ArmWords, std::string> readArm(const unit::Action& action) {
  return ArmReader().read(action);
}

unit::Action makeClear(std::string_view id, unit::Actor actor) {
  const std::size_t space = id.find(' ');
  if (space == std::string_view::npos) return {actor, "clear", std::string(id), ""};
  return {actor, "clear", std::string(id.substr(0, space)), std::string(trimmed(id.substr(space)))};
}

std::string idOfClear(const unit::Action& action) {
  return action.argument.empty() ? action.object : action.object + " " + action.argument;
}

std::optional<std::string> findActionFault(const unit::Unit& unit, const unit::Action& action) {
  if (auto wrong = unit.findActionFault(action)) return wrong;
  if (action.verb != "arm") return std::nullopt;
  auto read = readArm(action);
  if (auto* wrong = std::get_if<std::string>(&read)) return std::move(*wrong);
  return std::nullopt;
}

}  // namespace cabwright::scenario
