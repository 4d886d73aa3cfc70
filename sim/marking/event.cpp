// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/event.h"

#include <array>
#include <charconv>
#include <utility>

#include "unit/frame.h"
#include "unit/nearest_name.h"

namespace cabwright::marking {
namespace {

bool isBlank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

// A stretch of the text that remembers where it stands.
struct Slice {
  std::string_view text;
  std::size_t at = 0;

  void trim() {
    while (!text.empty() && isBlank(text.front())) {
      text.remove_prefix(1);
      ++at;
    }
    while (!text.empty() && isBlank(text.back())) text.remove_suffix(1);
  }
  Slice takeWord() {
    trim();
    std::size_t end = 0;
    while (end < text.size() && !isBlank(text[end])) ++end;
    const Slice word{text.substr(0, end), at};
    text.remove_prefix(end);
    at += end;
    trim();
    return word;
  }
  [[nodiscard]] Slice part(std::size_t from, std::size_t to) const {
    return {text.substr(from, to - from), at + from};
  }
};

// The words of a text with their places; what is in double quotes is one.
std::vector<Slice> splitWords(const Slice& whole) {
  std::vector<Slice> words;
  std::size_t k = 0;
  while (k < whole.text.size()) {
    if (isBlank(whole.text[k])) {
      ++k;
      continue;
    }
    const std::size_t from = k;
    bool quoted = false;
    while (k < whole.text.size() && (quoted || !isBlank(whole.text[k]))) {
      if (whole.text[k] == '"') quoted = !quoted;
      ++k;
    }
    if (quoted) throw EventFault{whole.at + from, "a double quote that is not closed"};
    words.push_back(whole.part(from, k));
  }
  return words;
}

// Cut at every "or" that is followed by "did" or "when".
std::vector<Slice> splitWays(const Slice& whole) {
  const std::vector<Slice> words = splitWords(whole);
  std::vector<Slice> ways;
  std::size_t from = 0;
  for (std::size_t k = 0; k + 1 < words.size(); ++k) {
    if (words[k].text != "or") continue;
    if (words[k + 1].text != "did" && words[k + 1].text != "when") continue;
    ways.push_back(whole.part(from, words[k].at - whole.at));
    from = words[k + 1].at - whole.at;
  }
  ways.push_back(whole.part(from, whole.text.size()));
  for (Slice& way : ways) way.trim();
  return ways;
}

unit::Condition readCondition(Slice text) {
  text.trim();
  auto parsed = unit::Condition::parse(text.text);
  if (const auto* fault = std::get_if<unit::ConditionFault>(&parsed)) {
    throw EventFault{text.at + fault->at, fault->what};
  }
  return std::get<unit::Condition>(std::move(parsed));
}

struct ActorWord {
  std::string_view word;
  std::optional<unit::Actor> actor;
};
constexpr std::array<ActorWord, 7> kActors{{{"trainee", unit::Actor::kTrainee},
                                            {"instructor", unit::Actor::kInstructor},
                                            {"guard", unit::Actor::kGuard},
                                            {"signaller", unit::Actor::kSignaller},
                                            {"helper", unit::Actor::kHelper},
                                            {"scenario", unit::Actor::kScenario},
                                            {"anyone", std::nullopt}}};

std::optional<unit::Actor> readActor(const Slice& word) {
  const std::string_view name = word.text.substr(0, word.text.size() - 1);
  std::vector<std::string_view> names;
  for (const ActorWord& a : kActors) {
    if (a.word == name) return a.actor;
    names.push_back(a.word);
  }
  throw EventFault{word.at, unit::unknownWord("actor", name, names)};
}

ActionPattern readPattern(Slice text) {
  ActionPattern pattern;
  const std::size_t start = text.at;
  Slice word = text.takeWord();
  if (!word.text.empty() && word.text.back() == ':') {
    pattern.actor = readActor(word);
    word = text.takeWord();
  }
  if (word.text.empty()) throw EventFault{start, "'did' without a verb"};
  pattern.verb = word.text;
  word = text.takeWord();
  if (word.text.empty()) throw EventFault{start, "an act without an object; * fits any"};
  pattern.object = word.text;
  if (text.text.empty()) return pattern;
  if (text.text.size() >= 2 && text.text.front() == '"' && text.text.back() == '"') {
    text.text = text.text.substr(1, text.text.size() - 2);
  }
  pattern.argument = std::string(text.text);
  return pattern;
}

EventWay readWay(Slice whole, const WordCheck& check) {
  EventWay way;
  way.text = whole.text;
  Slice main = whole;
  for (const Slice& word : splitWords(whole)) {
    if (word.text != "if") continue;
    const std::size_t cut = word.at - whole.at;
    main = whole.part(0, cut);
    way.guard = readCondition(whole.part(cut + 2, whole.text.size()));
    break;
  }
  const Slice first = main.takeWord();
  if (first.text == "did") {
    const Slice words = main;
    way.act = readPattern(main);
    if (check) {
      if (const auto what = check(way.act)) throw EventFault{words.at, *what};
    }
    return way;
  }
  if (first.text != "when") {
    throw EventFault{first.at, "an event begins with 'did' or 'when'"};
  }
  way.trigger = EventWay::Trigger::kBegins;
  Slice rest = main;
  if (rest.takeWord().text == "no" && rest.takeWord().text == "longer") {
    way.trigger = EventWay::Trigger::kEnds;
    main = rest;
  }
  way.condition = readCondition(main);
  return way;
}

std::optional<double> findPosition(std::string_view object, std::string_view word) {
  double number = 0;
  const char* end = word.data() + word.size();
  const auto read = std::from_chars(word.data(), end, number);
  if (read.ec == std::errc{} && read.ptr == end) return number;
  const auto signal = unit::findSignal(object);
  std::vector<std::string_view> allowed;
  return signal ? unit::findSignalWord(*signal, word, allowed) : std::nullopt;
}

bool isSamePosition(const unit::Action& action, std::string_view wanted) {
  if (action.verb != "set" && action.verb != "hold") return false;
  const auto a = findPosition(action.object, action.argument);
  const auto b = findPosition(action.object, wanted);
  return a && b && static_cast<float>(*a) == static_cast<float>(*b);
}

}  // namespace

bool fitsPattern(std::string_view pattern, std::string_view text) {
  std::size_t p = 0, t = 0, star = std::string_view::npos, kept = 0;
  while (t < text.size()) {
    if (p < pattern.size() && pattern[p] == '*') {
      star = p++;
      kept = t;
    } else if (p < pattern.size() && pattern[p] == text[t]) {
      ++p;
      ++t;
    } else if (star != std::string_view::npos) {
      p = star + 1;  // let the last star take one letter more
      t = ++kept;
    } else {
      return false;
    }
  }
  while (p < pattern.size() && pattern[p] == '*') ++p;
  return p == pattern.size();
}

bool ActionPattern::fits(const unit::Action& action) const {
  if (actor && *actor != action.actor) return false;
  if (!fitsPattern(verb, action.verb) || !fitsPattern(object, action.object)) return false;
  if (!argument || fitsPattern(*argument, action.argument)) return true;
  return isSamePosition(action, *argument);
}

std::variant<Event, EventFault> Event::parse(std::string_view text, const WordCheck& check) {
  try {
    Event event;
    event.text = text;
    Slice whole{text, 0};
    whole.trim();
    if (whole.text.empty()) throw EventFault{0, "an empty event; it begins with 'did' or 'when'"};
    for (const Slice& way : splitWays(whole)) event.ways.push_back(readWay(way, check));
    return event;
  } catch (const EventFault& fault) {
    return fault;
  }
}

}  // namespace cabwright::marking
