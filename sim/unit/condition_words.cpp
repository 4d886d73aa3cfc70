// SPDX-License-Identifier: GPL-3.0-or-later
// Words that stand for numbers: "cab1.reverser == forward", "judged.end1.hoses == defect".
#include <array>
#include <charconv>
#include <string_view>

#include "unit/condition_program.h"
#include "unit/objects.h"

namespace cabwright::unit {
namespace {

struct WordList {
  Signal signal;
  std::string_view words;  ///< "name=value|name=value", perhaps with "lo..hi" in front
};

#define CABWRIGHT_WORDS(Y, id, name, kind, positions, standard, places, spring, text) \
  WordList{Signal::k##id, positions},
constexpr WordList kControlWords[] = {CABWRIGHT_CONTROLS(CABWRIGHT_WORDS, )};
#undef CABWRIGHT_WORDS
constexpr std::string_view kJudgementWords = "none=0|good=1|defect=2|unsure=3";
constexpr std::string_view kDecisionWords = "none=0|go_on=1|restricted=2|fail=3";
// Answers, in the order of the reply table.
constexpr std::string_view kReplyWords =
    "none=0|granted=1|nobody_works=2|still_working=3|nobody_knows=4|fitter_has_it=5|on_my_way=6|"
    "at_the_rear=7|nobody_there=8|rear_reading=9|valve_open=10|valve_shut=11|blocks_on=12|"
    "blocks_off=13|blocks_differ=14|understood=15|ready_for_bell=16|person_seen=17|"
    "nobody_seen=18|person_leaves=19|hurry=20|alarm_dealt=21|may_reseat=22|may_restricted=23";
static_assert(static_cast<int>(Reply::kPersonLeaves) == 19 &&
              static_cast<int>(Reply::kMayRestricted) == 23 &&
              static_cast<int>(Reply::kCount) == 24);

std::string_view findWords(Signal signal) {
  for (const WordList& list : kControlWords) {
    if (list.signal == signal) return list.words;
  }
  const std::string_view name = signalInfo(signal).name;
  if (name.substr(0, 7) == "judged.") return kJudgementWords;
  if (name.substr(0, 9) == "answered." || name == "heard.words") return kReplyWords;
  if (name == "decision") return kDecisionWords;
  return {};
}

struct WordAndValue {
  std::string_view word;
  double value = 0;
};

// Takes the next one off the front of a list; none at its end.
std::optional<WordAndValue> takeEntry(std::string_view& list) {
  while (!list.empty()) {
    const std::size_t bar = list.find('|');
    const std::string_view entry = list.substr(0, bar);
    list = bar == list.npos ? std::string_view() : list.substr(bar + 1);
    const std::size_t sign = entry.find('=');
    if (sign == entry.npos) continue;  // the range of a lever without steps
    const std::string_view digits = entry.substr(sign + 1);
    double value = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return WordAndValue{entry.substr(0, sign), value};
  }
  return std::nullopt;
}

}  // namespace

std::optional<double> findSignalWord(Signal signal, std::string_view word,
                                     std::vector<std::string_view>& allowed) {
  std::string_view rest = findWords(signal);
  while (const auto entry = takeEntry(rest)) {
    allowed.push_back(entry->word);
    if (entry->word == word) return entry->value;
  }
  return std::nullopt;
}

std::string_view findWordOfValue(Signal signal, float value) {
  std::string_view rest = findWords(signal);
  while (const auto entry = takeEntry(rest)) {
    if (static_cast<float>(entry->value) == value) return entry->word;
  }
  return {};
}

}  // namespace cabwright::unit
