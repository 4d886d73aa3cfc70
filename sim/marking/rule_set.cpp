// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/rule_set.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <utility>

#include "marking/verdict.h"
#include "unit/nearest_name.h"

namespace cabwright::marking {
namespace {

constexpr double kTicksPerSecond = 100.0;
constexpr double kLongestSeconds = 1e6;

enum class Need : std::uint8_t { kNo, kMay, kMust };

// What each kind is made of, in the order of RuleKind.
struct Needs {
  Need a, b, steps, condition, during, within, hold, times;
};
// Short, so that the table can be read as one.  NOLINTNEXTLINE(readability-identifier-naming)
constexpr Need no = Need::kNo, may = Need::kMay, must = Need::kMust;
constexpr std::array<Needs, 22> kNeeds{{
    {must, must, no, no, no, may, no, no},    // precedence
    {must, must, no, no, no, may, no, no},    // alternate_precedence
    {must, must, may, no, no, no, no, no},    // chain_precedence
    {must, must, no, no, no, may, no, no},    // response
    {must, must, no, no, no, may, no, no},    // alternate_response
    {must, no, no, no, may, no, no, may},     // absence
    {must, no, no, no, may, may, no, may},    // existence
    {must, must, no, no, no, no, no, no},     // co_existence
    {must, must, no, no, no, no, no, no},     // not_co_existence
    {must, must, no, no, no, may, no, no},    // not_succession
    {no, no, must, no, no, no, no, no},       // order
    {no, must, must, no, no, may, no, no},    // sequence
    {no, must, must, no, no, may, no, no},    // all_before
    {no, no, no, must, may, no, may, no},     // never_while
    {no, no, no, must, may, no, may, no},     // limit
    {no, must, no, must, no, no, may, no},    // hold_for
    {no, must, no, must, no, may, no, no},    // once_within
    {must, must, no, must, no, may, no, no},  // held_since
    {must, no, no, must, no, may, no, no},    // hold_after
    {must, no, no, must, no, may, no, no},    // reach_within
    {must, must, no, must, no, may, no, no},  // hold_until
    {no, must, no, must, no, no, no, no},     // fall_told
}};

// The kinds that are final at each b.
bool isJudgedAtB(RuleKind kind) {
  switch (kind) {
    case RuleKind::kPrecedence:
    case RuleKind::kAlternatePrecedence:
    case RuleKind::kChainPrecedence:
    case RuleKind::kSequence:
    case RuleKind::kAllBefore:
    case RuleKind::kHoldFor:
    case RuleKind::kOnceWithin:
    case RuleKind::kHeldSince:
    case RuleKind::kFallTold:
      return true;
    default:
      return false;
  }
}

}  // namespace

class RuleCompiler {
 public:
  RuleCompiler(std::vector<RuleSpec> specs, const WordCheck& check)
      : specs_(std::move(specs)), check_(check), set_(std::make_shared<RuleSet>()) {}

  std::variant<std::shared_ptr<const RuleSet>, std::vector<RuleFault>> compile() {
    for (here_ = 0; here_ < specs_.size(); ++here_) compileRule(specs_[here_]);
    for (here_ = 0; here_ < specs_.size(); ++here_) linkFollows();
    findCycles();
    std::stable_sort(faults_.begin(), faults_.end(),
                     [](const RuleFault& x, const RuleFault& y) { return x.rule < y.rule; });
    if (!faults_.empty()) return std::move(faults_);
    return std::shared_ptr<const RuleSet>(std::move(set_));
  }

 private:
  void fault(std::string_view field, std::string what, std::size_t item = 0, std::size_t at = 0) {
    faults_.push_back({here_, std::string(field), item, at, std::move(what)});
  }

  void compileRule(const RuleSpec& spec) {
    CompiledRule rule;
    rule.spec = spec;
    checkWords(spec);
    checkClass(spec);
    const Needs& needs = kNeeds[static_cast<std::size_t>(spec.kind)];
    readEvent(needs.a, spec.a, "a", rule.a, rule);
    readEvent(needs.b, spec.b, "b", rule.b, rule);
    readSteps(needs.steps, spec, rule);
    const bool sequence = spec.kind == RuleKind::kSequence;
    readEvent(sequence ? Need::kMay : Need::kNo, spec.reset, "reset", rule.reset, rule);
    rule.condition = readCondition(needs.condition, spec.condition, "condition", rule);
    rule.during = readCondition(needs.during, spec.during, "during", rule);
    rule.inside = readCondition(Need::kMay, spec.tolerance.inside, "inside", rule);
    readTimes(needs, spec, rule);
    readMeasure(spec, rule);
    checkNames(spec);
    set_->rules_.push_back(std::move(rule));
  }

  void checkWords(const RuleSpec& spec) {
    if (spec.id.empty()) fault("id", "a rule without an id");
    for (char c : spec.id) {
      const bool good = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                        (c >= '0' && c <= '9') || c == '-' || c == '_' || c == '.';
      if (good) continue;
      fault("id", "an id is made of letters, digits, '-', '_' and '.'");
      break;
    }
    const auto [known, is_new] = ids_.try_emplace(spec.id, here_);
    if (!is_new && !spec.id.empty()) fault("id", "'" + spec.id + "' is the id of another rule");
    if (spec.title.empty()) fault("title", "a rule without a title: say what had to be done");
    if (spec.reason.empty()) fault("reason", "a rule without a reason: say why it matters");
    if (!std::isfinite(spec.weight) || spec.weight < 0 || spec.weight > kLongestSeconds) {
      fault("weight", "a weight is a number of points from 0 up");
    }
  }

  void checkClass(const RuleSpec& spec) {
    const Tolerance& t = spec.tolerance;
    const bool critical = spec.rule_class == RuleClass::kCritical;
    if (critical && t.text.empty()) {
      fault("tolerance", "a critical rule has to say its tolerance; 'none: ...' if there is none");
    }
    if (t.text.empty() && (!t.inside.empty() || t.slack_s > 0)) {
      fault("tolerance", "a tolerance without words for the sheet");
    }
    if (t.falls_to && *t.falls_to >= spec.rule_class) {
      fault("tolerance",
            fmt::format("inside its tolerance a {} rule falls to a lower class, not to {}",
                        wordOf(spec.rule_class), wordOf(*t.falls_to)));
    }
    const bool over_signals = spec.kind == RuleKind::kNeverWhile || spec.kind == RuleKind::kLimit;
    if (critical && over_signals && spec.for_s <= 0) {
      fault("for", "a critical rule over signals needs a time: one sample must not fail a run");
    }
    if (!spec.repeated) return;
    if (spec.repeated->times < 2) fault("repeated", "repeated is two times or more");
    if (spec.repeated->counts_as <= spec.rule_class) {
      fault("repeated", "a repeated breach counts as a higher class than a single one");
    }
  }

  void checkNames(const RuleSpec& spec) {
    if (spec.condition.empty() && !spec.condition_name.empty())
      fault("condition_name", "a name for a condition that is not there");
    if (spec.during.empty() && !spec.during_name.empty())
      fault("during_name", "a name for a condition that is not there");
    if (spec.first_only && !isJudgedAtB(spec.kind))
      fault("first_only", fmt::format("{} is not judged when b comes", wordOf(spec.kind)));
  }

  // True if the text is there and wanted.
  bool isWanted(Need need, bool given, std::string_view field) {
    const std::string_view kind = wordOf(specs_[here_].kind);
    if (need == Need::kNo && given)
      fault(field, fmt::format("'{}' has no part in {}", field, kind));
    if (need == Need::kMust && !given) fault(field, fmt::format("{} needs '{}'", kind, field));
    return need != Need::kNo && given;
  }

  void readEvent(Need need, const EventSpec& spec, std::string_view field, CompiledEvent& event,
                 CompiledRule& rule) {
    if (!isWanted(need, !spec.text.empty(), field)) return;
    event = makeEvent(spec, field, 0, rule);
  }

  void readSteps(Need need, const RuleSpec& spec, CompiledRule& rule) {
    if (!isWanted(need, !spec.steps.empty(), "steps")) return;
    if (need == Need::kMust && spec.steps.size() < 2)
      fault("steps", fmt::format("of a {} there are two steps at least", wordOf(spec.kind)));
    for (std::size_t k = 0; k < spec.steps.size(); ++k) {
      rule.steps.push_back(makeEvent(spec.steps[k], "steps", k, rule));
    }
  }

  CompiledEvent makeEvent(const EventSpec& spec, std::string_view field, std::size_t item,
                          CompiledRule& rule) {
    CompiledEvent event;
    event.name = spec.name.empty() ? "'" + spec.text + "'" : spec.name;
    auto parsed = Event::parse(spec.text, check_);
    if (const auto* bad = std::get_if<EventFault>(&parsed)) {
      fault(field, bad->what, item, bad->at);
      return event;
    }
    for (EventWay& way : std::get<Event>(parsed).ways) {
      CompiledWay compiled;
      if (way.trigger != EventWay::Trigger::kAct) {
        compiled.condition = keep(way.condition, field, item, rule);
        set_->edged_[*compiled.condition] = true;
      }
      if (way.guard) compiled.guard = keep(*way.guard, field, item, rule);
      compiled.way = std::move(way);
      event.ways.push_back(std::move(compiled));
    }
    return event;
  }

  std::optional<ConditionId> readCondition(Need need, const std::string& text,
                                           std::string_view field, CompiledRule& rule) {
    if (!isWanted(need, !text.empty(), field)) return std::nullopt;
    auto parsed = unit::Condition::parse(text);
    if (const auto* bad = std::get_if<unit::ConditionFault>(&parsed)) {
      fault(field, bad->what, 0, bad->at);
      return std::nullopt;
    }
    return keep(std::get<unit::Condition>(parsed), field, 0, rule);
  }

  ConditionId keep(const unit::Condition& condition, std::string_view field, std::size_t item,
                   CompiledRule& rule) {
    for (unit::Signal signal : condition.signals()) readSignal(signal, field, item, rule);
    const auto [found, is_new] = pool_.try_emplace(condition.text(), set_->conditions_.size());
    if (is_new) {
      set_->conditions_.push_back(condition);
      set_->edged_.push_back(false);
    }
    return found->second;
  }

  void readSignal(unit::Signal signal, std::string_view field, std::size_t item,
                  CompiledRule& rule) {
    checkLayer(signal, field, item);
    auto& all = rule.signals;
    if (std::find(all.begin(), all.end(), signal) == all.end()) all.push_back(signal);
  }

  void checkLayer(unit::Signal signal, std::string_view field, std::size_t item) {
    const unit::SignalInfo& info = unit::signalInfo(signal);
    if (specs_[here_].reads == Reads::kShown) {
      if (info.layer != unit::Layer::kTrue) return;
      fault(field, fmt::format("the rule reads what is shown, but {} is the truth", info.name),
            item);
      return;
    }
    const auto truth = findCounterpart(signal);
    if (!truth) return;
    fault(field,
          fmt::format("the rule reads what is true, but {} is what a gauge shows; write {}",
                      info.name, unit::signalInfo(*truth).name),
          item);
  }

  std::int64_t readTicks(double seconds, std::string_view field) {
    const double ticks = seconds * kTicksPerSecond;
    if (!std::isfinite(seconds) || seconds < 0 || seconds > kLongestSeconds) {
      fault(field, "a time is a number of seconds from 0 to a million");
      return 0;
    }
    const double whole = std::round(ticks);
    if (std::fabs(ticks - whole) > 1e-6) {
      fault(field, fmt::format("{} s is not a whole number of hundredths of a second", seconds));
    }
    return static_cast<std::int64_t>(whole);
  }

  void readTimes(const Needs& needs, const RuleSpec& spec, CompiledRule& rule) {
    if (isWanted(needs.within, spec.from_s != 0 || spec.to_s.has_value(), "within")) {
      rule.lo = readTicks(spec.from_s, "within");
      if (spec.to_s) rule.hi = readTicks(*spec.to_s, "within");
      if (rule.hi && *rule.hi < rule.lo) fault("within", "the window ends before it begins");
    }
    if (isWanted(needs.hold, spec.for_s != 0, "for")) rule.hold = readTicks(spec.for_s, "for");
    if (isWanted(needs.times, spec.times.has_value(), "times")) {
      const int least = spec.kind == RuleKind::kExistence ? 1 : 0;
      if (*spec.times < least || *spec.times > 1'000'000) {
        fault("times", fmt::format("a number of times from {} up", least));
      }
    }
    if (spec.tolerance.slack_s == 0) return;
    rule.slack = readTicks(spec.tolerance.slack_s, "slack");
    if (needs.within == Need::kNo && needs.hold == Need::kNo) {
      fault("slack", fmt::format("{} judges no time that could be missed", wordOf(spec.kind)));
    }
  }

  void readMeasure(const RuleSpec& spec, CompiledRule& rule) {
    const bool tells = spec.kind == RuleKind::kFallTold;
    const Need need = tells ? Need::kMust : Need::kNo;
    isWanted(need, spec.by != 0, "by");
    if (spec.by < 0 || !std::isfinite(spec.by)) fault("by", "a number from 0 up");
    if (!isWanted(need, !spec.measure.empty(), "measure")) return;
    rule.measure = unit::findSignal(spec.measure);
    if (!rule.measure) {
      std::vector<std::string_view> names;
      for (const unit::SignalInfo& info : unit::signalTable()) names.push_back(info.name);
      fault("measure", unit::unknownWord("signal", spec.measure, names));
    } else {
      readSignal(*rule.measure, "measure", 0, rule);
    }
    for (const CompiledWay& way : rule.b.ways) {
      if (way.way.trigger != EventWay::Trigger::kAct) fault("b", "a figure is told by an act");
    }
  }

  void linkFollows() {
    const RuleSpec& spec = specs_[here_];
    for (std::size_t k = 0; k < spec.follows.size(); ++k) {
      const auto found = ids_.find(spec.follows[k]);
      if (found == ids_.end()) {
        std::vector<std::string_view> names;
        for (const RuleSpec& other : specs_) names.push_back(other.id);
        fault("follows", unit::unknownWord("rule", spec.follows[k], names), k);
      } else if (found->second == here_) {
        fault("follows", "a rule cannot follow from itself", k);
      } else {
        set_->rules_[here_].follows.push_back(found->second);
      }
    }
  }

  // Rules that follow from each other would all be excused.
  void findCycles() {
    std::vector<int> mark(specs_.size(), 0);
    for (std::size_t k = 0; k < specs_.size(); ++k) visit(k, mark);
  }
  void visit(std::size_t start, std::vector<int>& mark) {
    struct Stop {
      std::size_t rule, next;
    };
    std::vector<Stop> path;
    if (mark[start] == 0) path.push_back({start, 0});
    while (!path.empty()) {
      Stop& stop = path.back();
      mark[stop.rule] = 1;
      const auto& follows = set_->rules_[stop.rule].follows;
      if (stop.next == follows.size()) {
        mark[stop.rule] = 2;
        path.pop_back();
        continue;
      }
      const std::size_t next = follows[stop.next++];
      if (mark[next] == 1) {
        here_ = stop.rule;
        fault("follows", "'" + specs_[next].id + "' follows from this rule in turn");
      } else if (mark[next] == 0) {
        path.push_back({next, 0});
      }
    }
  }

  std::vector<RuleSpec> specs_;
  const WordCheck& check_;
  std::shared_ptr<RuleSet> set_;
  std::vector<RuleFault> faults_;
  std::map<std::string, std::size_t> ids_;
  std::map<std::string, ConditionId> pool_;
  std::size_t here_ = 0;
};

std::variant<std::shared_ptr<const RuleSet>, std::vector<RuleFault>> compileRules(
    std::vector<RuleSpec> rules, const WordCheck& check) {
  return RuleCompiler(std::move(rules), check).compile();
}

}  // namespace cabwright::marking
