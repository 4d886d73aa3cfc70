// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/rule_reader.h"

#include <array>
#include <optional>
#include <string>

#include "unit/nearest_name.h"

namespace cabwright::session {
namespace {

using scenario::FileFaults;
using scenario::RuleText;

constexpr std::array<std::string_view, 3> kClassWords{"critical", "serious", "technique"};
constexpr std::array<std::string_view, 2> kReadsWords{"shown", "true"};

// A word of a fixed list in a field that may be left out.
template <class Value, class Find, class Words>
std::optional<Value> readWord(const RuleText& rule, const char* key, Find find, const Words& known,
                              FileFaults& faults) {
  if (rule.find(key) == nullptr) return std::nullopt;
  const std::string word = rule.text(key);
  const std::optional<Value> value = find(word);
  if (!value) faults.push_back({rule.placeOf(key), unit::unknownWord(key, word, known)});
  return value;
}

std::optional<marking::RuleClass> readClass(const RuleText& rule, const char* key,
                                            FileFaults& faults) {
  return readWord<marking::RuleClass>(rule, key, marking::findRuleClass, kClassWords, faults);
}

void readWords(const RuleText& rule, marking::RuleSpec& spec) {
  spec.id = rule.id;
  spec.phase = rule.text("phase");
  spec.title = rule.text("title");
  spec.reason = rule.text("reason");
  spec.advice = rule.text("advice");
  spec.a = {rule.text("a"), rule.text("a_name")};
  spec.b = {rule.text("b"), rule.text("b_name")};
  spec.reset = {rule.text("reset"), rule.text("reset_name")};
  spec.condition = rule.text("condition");
  spec.condition_name = rule.text("condition_name");
  spec.during = rule.text("during");
  spec.during_name = rule.text("during_name");
  spec.measure = rule.text("measure");
  spec.follows = rule.texts("follows");
  spec.must_occur = rule.flag("must_occur");
  spec.first_only = rule.flag("first_only");
  const std::vector<std::string> steps = rule.texts("steps");
  const std::vector<std::string> names = rule.texts("step_names");
  for (std::size_t k = 0; k < steps.size(); ++k)
    spec.steps.push_back({steps[k], k < names.size() ? names[k] : std::string()});
}

void readNumbers(const RuleText& rule, marking::RuleSpec& spec) {
  spec.weight = rule.number("weight").value_or(1.0);
  spec.for_s = rule.number("for").value_or(0.0);
  spec.by = rule.number("by").value_or(0.0);
  if (const auto times = rule.number("times")) spec.times = static_cast<int>(*times);
  const std::vector<double> within = rule.numbers("within");
  if (!within.empty()) spec.from_s = within[0];
  if (within.size() > 1) spec.to_s = within[1];
}

marking::RuleSpec readRule(const RuleText& rule, FileFaults& faults) {
  marking::RuleSpec spec;
  readWords(rule, spec);
  readNumbers(rule, spec);
  spec.kind = readWord<marking::RuleKind>(rule, "kind", marking::findRuleKind,
                                          marking::ruleKindWords(), faults)
                  .value_or(marking::RuleKind::kExistence);
  spec.rule_class = readClass(rule, "class", faults).value_or(marking::RuleClass::kSerious);
  spec.reads = readWord<marking::Reads>(rule, "reads", marking::findReads, kReadsWords, faults)
                   .value_or(marking::Reads::kShown);
  spec.tolerance = {rule.text("tolerance"), rule.text("inside"), rule.number("slack").value_or(0.0),
                    readClass(rule, "falls_to", faults)};
  if (const auto times = rule.number("repeated"))
    spec.repeated = marking::Repeated{
        static_cast<int>(*times),
        readClass(rule, "repeated_class", faults).value_or(marking::RuleClass::kSerious)};
  return spec;
}

// Rules with something missing: not whole when they were read, or of no kind there is. What a rule
// of its kind needs cannot be said of them; their events and conditions are looked at by
// themselves.
bool isHalf(const RuleText& rule) {
  return !rule.is_whole || !marking::findRuleKind(rule.text("kind"));
}

void addEventFaults(const RuleText& rule, const char* key, FileFaults& faults) {
  std::vector<std::string> texts = rule.texts(key);
  if (const std::string one = rule.text(key); !one.empty()) texts = {one};
  for (std::size_t k = 0; k < texts.size(); ++k) {
    const auto parsed = marking::Event::parse(texts[k], marking::findWordFault);
    if (const auto* wrong = std::get_if<marking::EventFault>(&parsed))
      faults.push_back({rule.placeOf(key, k, wrong->at), wrong->what});
  }
}

void addWordFaults(const RuleText& rule, FileFaults& faults) {
  for (const char* key : {"a", "b", "steps"}) addEventFaults(rule, key, faults);
  for (const char* key : {"condition", "during", "inside"}) {
    const std::string text = rule.text(key);
    if (text.empty()) continue;
    const auto parsed = unit::Condition::parse(text);
    if (const auto* wrong = std::get_if<unit::ConditionFault>(&parsed))
      faults.push_back({rule.placeOf(key, 0, wrong->at), wrong->what});
  }
}

void addMeaningFaults(const std::vector<RuleText>& rules,
                      const std::vector<marking::RuleFault>& found, FileFaults& faults) {
  for (const marking::RuleFault& fault : found)
    if (const RuleText& rule = rules[fault.rule]; !isHalf(rule))
      faults.push_back({rule.placeOf(fault.field, fault.item, fault.at), fault.what});
  for (const RuleText& rule : rules)
    if (isHalf(rule)) addWordFaults(rule, faults);
}

}  // namespace

std::variant<std::shared_ptr<const marking::RuleSet>, FileFaults> readRules(
    const std::vector<RuleText>& rules) {
  FileFaults faults;
  std::vector<marking::RuleSpec> specs;
  specs.reserve(rules.size());
  for (const RuleText& rule : rules) specs.push_back(readRule(rule, faults));
  auto compiled = marking::compileRules(std::move(specs));
  if (const auto* found = std::get_if<std::vector<marking::RuleFault>>(&compiled))
    addMeaningFaults(rules, *found, faults);
  if (!faults.empty()) {
    scenario::sortFaults(faults);
    return faults;
  }
  if (auto* set = std::get_if<std::shared_ptr<const marking::RuleSet>>(&compiled))
    return std::move(*set);
  // Only rules that are not whole had faults, and those are told by who read them.
  return std::make_shared<const marking::RuleSet>();
}

FileFaults findRuleFaults(const std::vector<RuleText>& rules) {
  const auto read = readRules(rules);
  const auto* faults = std::get_if<FileFaults>(&read);
  return faults != nullptr ? *faults : FileFaults();
}

}  // namespace cabwright::session
