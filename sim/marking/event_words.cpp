// SPDX-License-Identifier: GPL-3.0-or-later
// The words an act can be made of, so that a misspelt one is a fault and not a rule that never
// speaks.
#include <algorithm>
#include <charconv>
#include <string>

#include "marking/event.h"
#include "unit/condition.h"
#include "unit/control_list.h"
#include "unit/frame.h"
#include "unit/item_list.h"
#include "unit/nearest_name.h"
#include "unit/object_list.h"
#include "unit/phrase_list.h"
#include "unit/place_list.h"

namespace cabwright::marking {
namespace {

using Names = std::vector<std::string_view>;

#define CABWRIGHT_NAME5(Y, id, name, a, b) name,
#define CABWRIGHT_NAME4(Y, id, name, a) name,
#define CABWRIGHT_CONTROL_NAME(Y, id, name, a, b, c, d, e, f) name,
#define CABWRIGHT_VERB_NAME(Y, id, name, verb, text) {#verb, name},

struct Phrase {
  std::string_view verb, name;
};

Names controls() { return {CABWRIGHT_CONTROLS(CABWRIGHT_CONTROL_NAME, )}; }
Names places() { return {CABWRIGHT_PLACES(CABWRIGHT_NAME5, )}; }
Names items() { return {CABWRIGHT_ITEMS(CABWRIGHT_NAME5, )}; }
Names objects() { return {CABWRIGHT_OBJECTS(CABWRIGHT_NAME4, )}; }
Names phrases(std::string_view verb) {
  static constexpr Phrase kAll[] = {CABWRIGHT_PHRASES(CABWRIGHT_VERB_NAME, )};
  Names names;
  for (const Phrase& phrase : kAll) {
    if (phrase.verb == verb) names.push_back(phrase.name);
  }
  return names;
}
#undef CABWRIGHT_NAME5
#undef CABWRIGHT_NAME4
#undef CABWRIGHT_CONTROL_NAME
#undef CABWRIGHT_VERB_NAME

struct Verb {
  std::string_view word;
  std::string_view object;  ///< what it takes, in a word; empty: anything
};
constexpr Verb kVerbs[] = {
    {"set", "control"}, {"hold", "control"}, {"release", "control"}, {"press", "control"},
    {"go", "place"},    {"take", "object"},  {"insert", "object"},   {"put", "object"},
    {"look", "item"},   {"judge", "item"},   {"book", "item"},       {"note", ""},
    {"decide", ""},     {"say", "phrase"},   {"do", "act"},          {"ring", ""},
    {"condition", ""},  {"fault", ""},       {"tooth", ""},          {"place", ""},
    {"remark", ""},     {"arm", ""},         {"clear", ""},          {"pace", ""},
    {"mark", ""},       {"intervene", ""},
};

Names namesOf(const Verb& verb) {
  if (verb.object == "control") return controls();
  if (verb.object == "place") return places();
  if (verb.object == "object") return objects();
  if (verb.object == "phrase") return phrases("said");
  if (verb.object == "act") return phrases("did");
  Names names = items();
  if (verb.word == "book") names.push_back("general");
  return names;
}

std::optional<std::string> findObjectFault(const Verb& verb, const ActionPattern& pattern) {
  if (verb.object.empty() || pattern.object == "*") return std::nullopt;
  if (verb.word == "set" && pattern.object.rfind("signal.", 0) == 0) return std::nullopt;
  const Names names = namesOf(verb);
  const auto fits = [&](std::string_view name) { return fitsPattern(pattern.object, name); };
  if (std::any_of(names.begin(), names.end(), fits)) return std::nullopt;
  if (pattern.object.find('*') != std::string::npos) {
    return "'" + pattern.object + "' fits no " + std::string(verb.object) + " there is";
  }
  return unit::unknownWord(verb.object, pattern.object, names);
}

bool isNumber(std::string_view text) {
  double number = 0;
  const char* end = text.data() + text.size();
  const auto read = std::from_chars(text.data(), end, number);
  return read.ec == std::errc{} && read.ptr == end;
}

// A position has to be one of some control that fits.
std::optional<std::string> findPositionFault(const ActionPattern& pattern) {
  const std::string& word = *pattern.argument;
  if (word.find('*') != std::string::npos || isNumber(word)) return std::nullopt;
  Names all;
  for (std::string_view name : controls()) {
    if (!fitsPattern(pattern.object, name)) continue;
    Names allowed;
    if (unit::findSignalWord(*unit::findSignal(name), word, allowed)) return std::nullopt;
    for (std::string_view a : allowed) {
      if (std::find(all.begin(), all.end(), a) == all.end()) all.push_back(a);
    }
  }
  if (all.empty()) return std::nullopt;  // a signal on the line
  return unit::unknownWord("position", word, all);
}

bool takesNothingBehind(std::string_view verb) {
  return verb == "press" || verb == "release" || verb == "take" || verb == "put" ||
         verb == "look" || verb == "say" || verb == "do";
}

std::optional<std::string> findJudgementFault(const ActionPattern& pattern) {
  const std::string_view argument = *pattern.argument;
  const std::string_view word = argument.substr(0, argument.find(' '));
  const Names allowed{"good", "defect", "unsure"};
  const auto fits = [&](std::string_view name) { return fitsPattern(word, name); };
  if (std::any_of(allowed.begin(), allowed.end(), fits)) return std::nullopt;
  return unit::unknownWord("judgement", word, allowed);
}

}  // namespace

std::optional<std::string> findWordFault(const ActionPattern& pattern) {
  if (pattern.verb.find('*') != std::string::npos) return std::nullopt;
  Names words;
  for (const Verb& verb : kVerbs) {
    words.push_back(verb.word);
    if (verb.word != pattern.verb) continue;
    if (auto fault = findObjectFault(verb, pattern)) return fault;
    if (!pattern.argument) return std::nullopt;
    if (verb.word == "set" || verb.word == "hold") return findPositionFault(pattern);
    if (verb.word == "judge") return findJudgementFault(pattern);
    if (takesNothingBehind(verb.word) && pattern.argument->find('*') == std::string::npos) {
      return "'" + pattern.verb + "' takes nothing behind its object, found '" + *pattern.argument +
             "'";
    }
    return std::nullopt;
  }
  return unit::unknownWord("verb", pattern.verb, words);
}

}  // namespace cabwright::marking
