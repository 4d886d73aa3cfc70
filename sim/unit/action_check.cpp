// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the words of an action mean anything here, and what was probably meant.
#include <array>

#include "plant/named_numbers.h"
#include "unit/actions.h"
#include "unit/condition.h"
#include "unit/nearest_name.h"
#include "unit/pace.h"
#include "unit/people.h"

namespace cabwright::unit {

namespace {

using Fault = std::optional<std::string>;
using Names = std::vector<std::string_view>;

constexpr std::array<std::string_view, 25> kVerbs{
    "set",   "hold",  "release", "press", "ring",   "go",   "take",     "insert",    "put",
    "look",  "judge", "book",    "note",  "decide", "say",  "do",       "condition", "fault",
    "tooth", "place", "arm",     "clear", "pace",   "mark", "intervene"};
constexpr std::size_t kLongestText = 2000;
constexpr std::size_t kLongestName = 80;

bool isOutsider(Actor a) { return a == Actor::kInstructor || a == Actor::kScenario; }

template <class Table>
Names namesOf(const Table& table) {
  Names names;
  for (const auto& info : table) names.push_back(info.name);
  return names;
}

Names namesOfPaces() {
  Names names;
  for (const Pace& pace : kPaces) names.push_back(pace.word);
  return names;
}

Fault noArgument(const Action& a) {
  if (a.argument.empty()) return std::nullopt;
  return "'" + a.verb + " " + a.object + "' takes nothing behind it, found '" + a.argument + "'";
}

Fault needsNumber(const Action& a) {
  if (readFinite(a.argument)) return std::nullopt;
  return "'" + a.verb + " " + a.object + "' needs a number, found '" + a.argument + "'";
}

Fault checkRearControl(const Action& a, Control c) {
  if (a.actor != Actor::kGuard && a.actor != Actor::kHelper) return std::nullopt;
  const Control first = asOfFirst(c);
  if (first == Control::kCab1GuardsValve || c == Control::kDoor1 || c == Control::kDoor2 ||
      c == Control::kAlarm) {
    return std::nullopt;
  }
  return "guard and second person move guard's valves, doors and the passenger alarm, not '" +
         a.object + "'";
}

Fault checkSignal(const Action& a, const Route& route) {
  if (!isOutsider(a.actor) && a.actor != Actor::kSignaller) {
    return "signals are set by signaller, instructor or scenario";
  }
  const std::string_view name = std::string_view(a.object).substr(7);
  Names names = namesOf(route.signals);
  bool known = false;
  for (std::string_view n : names) known = known || n == name;
  if (!known) return unknownWord("signal", name, names);
  if (a.argument == "clear" || a.argument == "danger") return std::nullopt;
  return unknownWord("aspect", a.argument, std::array<std::string_view, 2>{"clear", "danger"});
}

Fault checkControl(const Action& a, bool position_needed) {
  const auto c = findControl(a.object);
  if (!c) return unknownWord("control", a.object, namesOf(controlTable()));
  if (a.actor == Actor::kSignaller) return std::string("the signaller moves signals only");
  if (auto fault = checkRearControl(a, *c)) return fault;
  if (a.argument.empty() && !position_needed) return std::nullopt;
  const ControlInfo& info = controlInfo(*c);
  if (findPosition(info, a.argument)) return std::nullopt;
  return "'" + a.object + "' cannot be '" + a.argument + "'; allowed: " + positionsInWords(info);
}

Fault checkSet(const Action& a, const Route& route) {
  if (a.object.starts_with("signal.")) return checkSignal(a, route);
  return checkControl(a, true);
}

Fault checkRelease(const Action& a) {
  if (!findControl(a.object)) return unknownWord("control", a.object, namesOf(controlTable()));
  return noArgument(a);
}

Fault checkPress(const Action& a) {
  if (auto fault = checkRelease(a)) return fault;
  if (auto fault = checkControl(a, false)) return fault;
  if (controlInfo(*findControl(a.object)).spring == ControlSpring::kSprings) return std::nullopt;
  return "'" + a.object + "' stays where it is put: set it";
}

Fault checkRing(const Action& a) {
  const bool trainee = a.actor == Actor::kTrainee;
  const Names bells = trainee ? Names{"cab1.bell", "cab2.bell"} : Names{"bell"};
  bool known = false;
  for (std::string_view b : bells) known = known || b == a.object;
  if (!known) return unknownWord("bell", a.object, bells);
  if (!readBellCode(a.argument).empty()) return std::nullopt;
  return "no bell code '" + a.argument + "': strokes by groups, as 2 or 3-3";
}

Fault checkPlaceWord(std::string_view word) {
  if (findPlace(word)) return std::nullopt;
  return unknownWord("place", word, namesOf(placeTable()));
}

Fault checkGo(const Action& a) {
  if (auto fault = checkPlaceWord(a.object)) return fault;
  std::string_view words = a.argument;
  while (!words.empty()) {
    const std::string_view word = firstWord(words);
    if (word != "skip" && word != "under") {
      return unknownWord("way to go", word, std::array<std::string_view, 2>{"skip", "under"});
    }
  }
  return std::nullopt;
}

Fault checkObject(const Action& a) {
  if (findObject(a.object)) return std::nullopt;
  return unknownWord("thing", a.object, namesOf(objectTable()));
}

Fault checkInsert(const Action& a) {
  if (auto fault = checkObject(a)) return fault;
  const Object o = *findObject(a.object);
  if (findPlace(a.argument) && !findObjectWordFault(o, a.argument)) return std::nullopt;
  return "'" + a.object + "' does not go into '" + a.argument + "'";
}

Fault checkItem(const Action& a) {
  if (findItem(a.object)) return std::nullopt;
  return unknownWord("thing to look at", a.object, namesOf(itemTable()));
}

Fault checkJudge(const Action& a) {
  if (auto fault = checkItem(a)) return fault;
  std::string_view words = a.argument;
  const std::string_view verdict = firstWord(words);
  if (!findVerdict(verdict)) {
    return unknownWord("verdict", verdict,
                       std::array<std::string_view, 3>{"good", "defect", "unsure"});
  }
  if (words.empty() || findDefectClass(words)) return std::nullopt;
  return unknownWord("class", words, std::array<std::string_view, 3>{"C", "S", "T"});
}

Fault checkBook(const Action& a) {
  if (a.argument.empty()) return "an entry about '" + a.object + "' needs its words";
  return a.object == "general" ? std::nullopt : checkItem(a);
}

Fault checkDecide(const Action& a) {
  constexpr std::array<std::string_view, 3> kWords{"go_on", "restricted", "fail"};
  for (std::string_view w : kWords) {
    if (a.object == w) return std::nullopt;
  }
  return unknownWord("decision", a.object, kWords);
}

// What others say of their own accord is one of the answers.
Fault checkSpeech(const Action& a) {
  Names allowed;
  if (findSignalWord(Signal::kHeardWords, a.object, allowed)) return noArgument(a);
  return unknownWord("answer", a.object, allowed);
}

Fault checkPhrase(const Action& a) {
  if (a.actor != Actor::kTrainee) return checkSpeech(a);
  const PhraseVerb verb = a.verb == "say" ? PhraseVerb::kSay : PhraseVerb::kDo;
  if (findPhrase(a.object, verb)) return noArgument(a);
  Names names;
  for (const PhraseInfo& p : phraseTable()) {
    if (p.verb == verb) names.push_back(p.name);
  }
  return unknownWord(verb == PhraseVerb::kSay ? "phrase" : "act", a.object, names);
}

Fault checkCondition(const Action& a) {
  const std::vector<std::string> faults = findConditionFaults({a.object, a.argument});
  return faults.empty() ? std::nullopt : Fault(faults.front());
}

Fault checkFault(const Action& a) {
  const auto of_unit = findUnitParameters(a.object);
  const auto of_plant = plant::findParameters(a.object);
  if (of_unit.empty() && of_plant.empty()) {
    Names names;
    for (const auto& info : unitParameterTable()) names.push_back(info.name);
    for (const auto& info : plant::parameterTable()) names.push_back(info.name);
    return unknownWord("parameter", a.object, names);
  }
  if (auto fault = needsNumber(a)) return fault;
  const double value = *readFinite(a.argument);
  const double lowest = of_unit.empty() ? of_plant.front()->lowest : of_unit.front()->lowest;
  const double highest = of_unit.empty() ? of_plant.front()->highest : of_unit.front()->highest;
  if (value >= lowest && value <= highest) return std::nullopt;
  return "'" + a.object + "' cannot be " + plant::shortNumber(value) +
         "; allowed: " + plant::shortNumber(lowest) + " to " + plant::shortNumber(highest);
}

Fault checkTooth(const Action& a) {
  if (a.object != "1" && a.object != "2") {
    return unknownWord("drive", a.object, std::array<std::string_view, 2>{"1", "2"});
  }
  return needsNumber(a);
}

Fault checkPlaceObject(const Action& a) {
  if (auto fault = checkObject(a)) return fault;
  return findObjectWordFault(*findObject(a.object), a.argument);
}

Fault checkPace(const Action& a) {
  if (!findPace(a.object)) return unknownWord("pace", a.object, namesOfPaces());
  return noArgument(a);
}

Fault checkMark(const Action& a) {
  if (a.object.size() + a.argument.size() < kLongestName) return std::nullopt;
  return std::string("a name of more than 80 letters for a mark");
}

Fault checkActor(const Action& a) {
  const bool desk = a.verb == "pace" || a.verb == "mark" || a.verb == "intervene";
  if (desk) {
    if (a.actor == Actor::kInstructor) return std::nullopt;
    return "'" + a.verb + "' is for the instructor";
  }
  const bool outside = a.verb == "condition" || a.verb == "fault" || a.verb == "tooth" ||
                       a.verb == "place" || a.verb == "arm" || a.verb == "clear";
  if (outside && !isOutsider(a.actor)) {
    return "'" + a.verb + "' is for the instructor and the scenario";
  }
  const bool shared =
      a.verb == "set" || a.verb == "ring" || a.verb == "say" || a.verb == "remark" || outside;
  if (shared || a.actor == Actor::kTrainee) return std::nullopt;
  return "only the trainee can '" + a.verb + "'";
}

}  // namespace

std::optional<std::string> Unit::findActionFault(const Action& a) const {
  bool known = a.verb == "remark";
  for (std::string_view verb : kVerbs) known = known || verb == a.verb;
  if (!known) return unknownWord("verb", a.verb, kVerbs);
  if (a.object.size() + a.argument.size() > kLongestText) return std::string("too long a text");
  if (auto fault = checkActor(a)) return fault;
  if (a.object.empty()) return "'" + a.verb + "' what? An object is missing";
  if (a.verb == "set") return checkSet(a, route_);
  if (a.verb == "hold") return checkControl(a, false);
  if (a.verb == "release") return checkRelease(a);
  if (a.verb == "press") return checkPress(a);
  if (a.verb == "ring") return checkRing(a);
  if (a.verb == "go") return checkGo(a);
  if (a.verb == "take" || a.verb == "put") {
    const Fault fault = checkObject(a);
    return fault ? fault : noArgument(a);
  }
  if (a.verb == "insert") return checkInsert(a);
  if (a.verb == "look") {
    const Fault fault = checkItem(a);
    return fault ? fault : noArgument(a);
  }
  if (a.verb == "judge") return checkJudge(a);
  if (a.verb == "book") return checkBook(a);
  if (a.verb == "note") return needsNumber(a);
  if (a.verb == "decide") return checkDecide(a);
  if (a.verb == "say" || a.verb == "do") return checkPhrase(a);
  if (a.verb == "condition") return checkCondition(a);
  if (a.verb == "fault") return checkFault(a);
  if (a.verb == "tooth") return checkTooth(a);
  if (a.verb == "place") return checkPlaceObject(a);
  if (a.verb == "pace") return checkPace(a);
  if (a.verb == "mark") return checkMark(a);
  return std::nullopt;  // what faults there are is not known in here
}

}  // namespace cabwright::unit
