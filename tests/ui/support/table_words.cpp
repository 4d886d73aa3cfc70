// SPDX-License-Identifier: GPL-3.0-or-later
#include "table_words.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <string_view>

#include "fault/fault.h"
#include "marking/judgement.h"
#include "marking/rule.h"
#include "marking/verdict.h"
#include "session/desk_actions.h"
#include "unit/condition.h"
#include "unit/controls.h"
#include "unit/interlocks.h"
#include "unit/items.h"
#include "unit/objects.h"
#include "unit/perception.h"
#include "unit/places.h"

namespace cabwright::testing_ui {
namespace {

std::string spaced(std::string_view name) {
  std::string words(name);
  std::ranges::replace(words, '_', ' ');
  return words;
}

std::string capital(std::string words) {
  if (!words.empty() && words[0] >= 'a' && words[0] <= 'z')
    words[0] = static_cast<char>(words[0] - 'a' + 'A');
  return words;
}

// As the sheet afterwards writes it: "cab1" is "cab 1".
std::string numbered(std::string_view name) {
  std::string words = spaced(name);
  const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
  const auto isLetter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
  if (words.size() > 1 && isDigit(words.back()) && isLetter(words[words.size() - 2]))
    words.insert(words.size() - 1, " ");
  return words;
}

std::string_view afterDot(std::string_view name) {
  const std::size_t dot = name.find('.');
  return dot == std::string_view::npos ? name : name.substr(dot + 1);
}

class Collector {
 public:
  void add(const char* context, std::string_view words) {
    if (std::ranges::any_of(words, [](char c) { return (c | 0x20) >= 'a' && (c | 0x20) <= 'z'; }))
      found_.emplace(context, words);
  }
  TableWords take() { return std::move(found_); }

 private:
  TableWords found_;
};

void addControls(Collector& words) {
  for (const unit::ControlInfo& info : unit::controlTable()) {
    words.add("Control", capital(spaced(afterDot(info.name))));
    words.add("Control", capital(numbered(afterDot(info.name))));
    words.add("Control", info.text);
    for (const unit::ControlPosition& p : info.positions) {
      words.add("Position", spaced(p.name));
      words.add("Position", numbered(p.name));
    }
  }
}

void addItems(Collector& words) {
  for (const unit::ItemInfo& info : unit::itemTable()) {
    words.add("Item", capital(spaced(afterDot(info.name))));
    words.add("Item", numbered(afterDot(info.name)));
    words.add("Seen", info.good);
    for (const unit::ItemCondition& condition : info.conditions) words.add("Seen", condition.seen);
  }
  for (const char* live : {"white lit, red lit", "white lit, red dark", "white dark, red lit",
                           "white dark, red dark", "blank"})
    words.add("Seen", live);
}

void addPlacesAndThings(Collector& words) {
  for (const unit::PlaceInfo& info : unit::placeTable()) {
    words.add("Place", info.text);
    words.add("Place", numbered(info.name));
    words.add("Place", capital(numbered(info.name)));
  }
  for (const unit::ObjectInfo& info : unit::objectTable()) {
    words.add("Thing", capital(spaced(info.name)));
    words.add("Thing", spaced(info.name));
    words.add("Thing", info.text);
  }
  for (const unit::PhraseInfo& info : unit::phraseTable()) {
    words.add("Phrase", capital(spaced(info.name)));
    words.add("Phrase", spaced(info.name));
    words.add("Phrase", info.text);
  }
}

void addInterlocks(Collector& words) {
  for (std::size_t k = 0; k < unit::kFactCount; ++k) {
    words.add("Seen", unit::missingWords(static_cast<unit::Fact>(k)));
    words.add("Seen", unit::thereWords(static_cast<unit::Fact>(k)));
  }
  for (const unit::InterlockRow& row : unit::interlockTable()) words.add("Seen", row.refused);
  for (int k = 0; k < static_cast<int>(unit::Reply::kCount); ++k)
    words.add("Seen", unit::wordsOf(static_cast<unit::Reply>(k)));
}

bool isControl(unit::Signal signal) {
  return std::ranges::any_of(unit::controlTable(), [signal](const unit::ControlInfo& info) {
    return info.signal == signal;
  });
}

void addSignals(Collector& words) {
  constexpr int kMostWords = 40;  // more than any list of words for a signal has
  for (const unit::SignalInfo& info : unit::signalTable()) {
    for (int value = -1; value < kMostWords; ++value) {
      const auto word = unit::findWordOfValue(info.id, static_cast<float>(value));
      if (!word.empty()) words.add("Position", numbered(word));
    }
    // A description on the screen, and the beginning of it in lists.
    if (info.name.find(".lamp_") != std::string_view::npos) words.add("Signal", info.text);
    const bool of_item = std::ranges::any_of(
        std::initializer_list<std::string_view>{"judged.", "looked.", "booked."},
        [&](std::string_view act) { return info.name.starts_with(act); });
    if (of_item || isControl(info.id)) continue;
    words.add("Signal", info.text.substr(0, info.text.find_first_of(",:;")));
    // What the desk calls it; of things to look at it has the thing's name instead.
    const std::size_t first_dot = info.name.find('.');
    if (first_dot == std::string_view::npos || !unit::findItem(info.name.substr(first_dot + 1)))
      words.add("Signal", info.text);
    for (std::string_view name = info.name; !name.empty();) {
      const std::size_t dot = std::min(name.find('.'), name.size());
      const std::string_view part = name.substr(0, dot);
      name.remove_prefix(std::min(dot + 1, name.size()));
      if (!part.empty() && (part.back() == '1' || part.back() == '2'))
        words.add("Signal", numbered(part));
    }
  }
  for (const char* act : {"judged", "looked", "booked"}) words.add("Signal", act);
}

void addSheet(Collector& words) {
  using marking::JudgementResult;
  using marking::Outcome;
  using marking::RuleClass;
  for (const Outcome o : {Outcome::kNotExercised, Outcome::kPendingGood, Outcome::kPendingBad,
                          Outcome::kMet, Outcome::kBroken})
    words.add("Sheet", marking::wordOf(o));
  for (const RuleClass c : {RuleClass::kTechnique, RuleClass::kSerious, RuleClass::kCritical})
    words.add("Sheet", marking::wordOf(c));
  for (const JudgementResult r :
       {JudgementResult::kHit, JudgementResult::kMiss, JudgementResult::kNotJudged,
        JudgementResult::kFalseAlarm, JudgementResult::kRight, JudgementResult::kUnsure})
    words.add("Sheet", marking::wordOf(r));
  for (const unit::Verdict v :
       {unit::Verdict::kGood, unit::Verdict::kDefect, unit::Verdict::kUnsure})
    words.add("Sheet", unit::wordOf(v));
  for (const char* verb : {"set", "hold", "release", "press", "ring", "go", "take", "insert", "put",
                           "look", "judge", "book", "note", "decide", "say", "do"})
    words.add("Verb", verb);
  for (const char* how : {"skip", "under", "go on", "restricted", "fail", "general"})
    words.add("Position", how);
}

// Numbers of things are places of the entry: "gearbox %1, band of gear %2".
std::string withoutNumbers(std::string_view words) {
  std::string pattern;
  int count = 0;
  for (const char c : words) {
    if (c >= '0' && c <= '9')
      pattern += "%" + std::to_string(++count);
    else
      pattern += c;
  }
  return pattern;
}

void addFaults(Collector& words) {
  for (const fault::FaultSpec& spec : fault::faultCatalogue()) {
    if (spec.system != "instruments") {
      words.add("Fault", withoutNumbers(spec.where));
    } else {
      const std::string_view where = spec.where;
      const std::string_view place = where.substr(0, where.find('.'));
      words.add("Fault", spaced(afterDot(where)));
      words.add("Fault", place.substr(0, place.find_first_of("12")));
    }
    for (const std::string_view text : std::initializer_list<std::string_view>{
             spec.text, spec.symptom, spec.decision, spec.size.unit, spec.size.of})
      words.add("Fault", text);
  }
}

// The texts of one "refuse(...)", up to the end of the statement.
void addRefusal(std::string_view statement, Collector& words) {
  for (std::size_t at = statement.find('"'); at != std::string_view::npos;) {
    const std::size_t end = statement.find('"', at + 1);
    if (end == std::string_view::npos) return;
    words.add("Seen", statement.substr(at + 1, end - at - 1));
    at = statement.find('"', end + 1);
  }
}

}  // namespace

TableWords collectTableWords() {
  Collector words;
  addControls(words);
  addItems(words);
  addPlacesAndThings(words);
  addInterlocks(words);
  addSignals(words);
  addSheet(words);
  addFaults(words);
  words.add("Seen", "dark");
  words.add("Seen", "the run is over");
  // why a wish of the desk is refused in assessment
  session::DeskSituation assessment;
  assessment.mode = scenario::Mode::kAssessment;
  const unit::Action faster{unit::Actor::kInstructor, "pace", "2", ""};
  words.add("Seen", session::findDeskFault(assessment, faster).value_or(""));
  words.add("Seen", session::findGoBackFault(assessment.mode).value_or(""));
  words.add("Seen", "the lamp has its current and stays dark: it is the lamp itself");
  return words.take();
}

TableWords collectRefusals(const std::filesystem::path& source) {
  Collector words;
  for (const auto& entry : std::filesystem::directory_iterator(source / "sim/unit")) {
    if (!entry.path().filename().string().starts_with("actions")) continue;
    std::ifstream file(entry.path());
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    constexpr std::string_view kCall = "refuse(";
    for (std::size_t at = text.find(kCall); at != std::string::npos; at = text.find(kCall, at + 1))
      addRefusal(std::string_view(text).substr(at, text.find(';', at) - at), words);
  }
  return words.take();
}

TableWords collectAllWords(const std::filesystem::path& source) {
  TableWords all = collectTableWords();
  all.merge(collectRefusals(source));
  all.merge(collectScenarioWords(source / "scenarios"));
  return all;
}

}  // namespace cabwright::testing_ui
