// SPDX-License-Identifier: GPL-3.0-or-later
// What a scenario is marked by: its rules, its aim, what is enough.
#include <algorithm>
#include <map>
#include <set>

#include "scenario/quantity_text.h"
#include "scenario/scenario_parts.h"
#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

// "80" and "80 %" are percent of what could be earned, "45 points" a number of them.
void readPassMark(TableReader& table, ScenarioDraft& draft) {
  const toml::node* node = table.find("pass_mark");
  if (!node) return;
  draft.pass_mark_at = placeOf(table.sink(), node->source());
  const auto* text = node->as_string();
  if (text && std::string_view(text->get()).ends_with("points")) {
    const auto read = readQuantity(text->get(), "points", false);
    if (const auto* wrong = std::get_if<std::string>(&read)) {
      table.sink().add(draft.pass_mark_at, "'pass_mark': " + *wrong);
    } else if (!(std::get<double>(read) >= 0.0)) {
      table.sink().add(draft.pass_mark_at, "'pass_mark' is below 0 points");
    } else {
      draft.pass_points = std::get<double>(read);
    }
    return;
  }
  const auto percent = readNumberNode(*node, "pass_mark", "%", {0.0, 100.0}, table.sink());
  draft.scenario.pass_percent = percent.value_or(draft.scenario.pass_percent);
}

std::vector<std::string_view> idsOf(const std::vector<RuleText>& rules) {
  std::vector<std::string_view> ids;
  std::set<std::string_view> seen;
  for (const RuleText& rule : rules) {
    if (!rule.id.empty() && seen.insert(rule.id).second) ids.push_back(rule.id);
  }
  return ids;
}

RuleText* findRule(std::vector<RuleText>& rules, std::string_view id) {
  for (RuleText& rule : rules) {
    if (rule.id == id) return &rule;
  }
  return nullptr;
}

// The rules of one shared file that a [[marking.use]] asks for.
class SharedRules {
 public:
  SharedRules(const Library& library, std::vector<LoadedScenario::Source>& sources,
              FileFaults& others)
      : library_(library), sources_(sources), others_(others) {}

  void choose(TableReader& table, std::vector<RuleText>& rules) {
    const auto file = table.text("file", Need::kMust);
    const auto chosen = table.texts("rules");
    const auto except = table.texts("except");
    if (table.has("rules") && table.has("except")) {
      table.sink().add(table.placeOfKey("except"),
                       "both 'rules' and 'except'; allowed: one of them (neither: all rules)");
    }
    table.finish();
    const RuleFile* shared = file ? load(*file, table) : nullptr;
    if (!shared) return;
    const std::vector<std::string_view> ids = idsOf(shared->rules);
    const auto check = [&](const TableReader::Text& id) {
      // In a file with faults it may be there and not readable.
      if (!shared->faults.empty()) return;
      if (std::find(ids.begin(), ids.end(), id.text) != ids.end()) return;
      table.sink().add(id.at, unit::unknownWord("rule", id.text, ids) + " in '" + *file + "'");
    };
    for (const auto& id : chosen) check(id);
    for (const auto& id : except) check(id);
    for (const RuleText& rule : shared->rules) {
      const auto is = [&](const TableReader::Text& id) { return id.text == rule.id; };
      if (table.has("rules") && std::none_of(chosen.begin(), chosen.end(), is)) continue;
      if (std::any_of(except.begin(), except.end(), is)) continue;
      if (findRule(rules, rule.id)) {
        table.sink().add(table.placeOfValue("file"),
                         "the rule '" + rule.id + "' is there already; choose it once");
        continue;
      }
      rules.push_back(rule);
    }
  }

 private:
  const RuleFile* load(const std::string& name, TableReader& table) {
    if (const auto at = files_.find(name); at != files_.end()) {
      return at->second ? &*at->second : nullptr;
    }
    auto& kept = files_[name];
    auto found = library_.find(Shelf::kRules, name);
    const std::vector<std::string> names = library_.names(Shelf::kRules);
    if (const auto* why = std::get_if<std::string>(&found)) {
      const std::vector<std::string_view> views(names.begin(), names.end());
      const bool known = std::find(names.begin(), names.end(), name) != names.end();
      table.sink().add(table.placeOfValue("file"),
                       known ? *why : unit::unknownWord("file of rules", name, views));
      return nullptr;
    }
    const SourceFile& file = std::get<SourceFile>(found);
    sources_.push_back({std::string(wordOf(Shelf::kRules)), name, file.text});
    kept = readRuleFile(file);
    others_.insert(others_.end(), kept->faults.begin(), kept->faults.end());
    return &*kept;
  }

  const Library& library_;
  std::vector<LoadedScenario::Source>& sources_;
  FileFaults& others_;
  std::map<std::string, std::optional<RuleFile>> files_;
};

void checkFollows(const std::vector<RuleText>& rules, FaultSink& sink, FileFaults& others) {
  const std::vector<std::string_view> ids = idsOf(rules);
  for (const RuleText& rule : rules) {
    const std::vector<std::string> follows = rule.texts("follows");
    for (std::size_t k = 0; k < follows.size(); ++k) {
      const FilePlace at = rule.find("follows")->items[k];
      std::string what;
      if (follows[k] == rule.id) {
        what = "the rule '" + rule.id + "' cannot follow from itself";
      } else if (std::find(ids.begin(), ids.end(), follows[k]) == ids.end()) {
        // A shared rule may name one that this exercise did not choose; that is no fault.
        if (at.file != sink.file().name) continue;
        what = unit::unknownWord("rule", follows[k], ids);
      }
      if (what.empty()) continue;
      if (at.file == sink.file().name) {
        sink.add(at, what);
      } else {
        others.push_back({at, what});
      }
    }
  }
}

// What a shared rule follows from and is not chosen here cannot drag it along; nor can what was
// found wrong.
void dropUnchosenFollows(std::vector<RuleText>& rules) {
  const std::vector<RuleText> all = rules;
  const std::vector<std::string_view> ids = idsOf(all);
  for (RuleText& rule : rules) {
    for (RuleField& field : rule.fields) {
      auto* follows = std::get_if<std::vector<std::string>>(&field.value);
      if (field.key != "follows" || !follows) continue;
      for (std::size_t k = follows->size(); k-- > 0;) {
        const bool is_known = std::find(ids.begin(), ids.end(), (*follows)[k]) != ids.end();
        if (is_known && (*follows)[k] != rule.id) continue;
        const auto offset = static_cast<std::ptrdiff_t>(k);
        follows->erase(follows->begin() + offset);
        if (k < field.items.size()) field.items.erase(field.items.begin() + offset);
        if (k < field.inside.size()) field.inside.erase(field.inside.begin() + offset);
      }
    }
  }
}

void readJudgements(TableReader& marking, JudgementText& judgements) {
  auto table = marking.table("judgements");
  if (!table) return;
  constexpr Bounds kPoints{0.0, 1e6};
  judgements.hit_points = table->number("hit_points", "", kPoints);
  judgements.false_alarm_cost = table->number("false_alarm_cost", "", kPoints);
  judgements.empty_cost = table->number("empty_cost", "", kPoints);
  judgements.missed_critical_fails = table->flag("missed_critical_fails");
  table->finish();
}

void checkPassMark(ScenarioDraft& draft, FaultSink& sink) {
  double total = 0;
  for (const RuleText& rule : draft.scenario.rules) total += rule.number("weight").value_or(1.0);
  if (!draft.pass_points) return;
  if (*draft.pass_points > total) {
    const std::string points = std::to_string(*draft.pass_points);
    sink.add(draft.pass_mark_at, "'pass_mark' is " + points.substr(0, points.find('.')) +
                                     " points; all rules together give " +
                                     std::to_string(static_cast<long long>(total)));
    return;
  }
  draft.scenario.pass_percent = total > 0 ? 100.0 * *draft.pass_points / total : 0.0;
}

// The aim is judged by what the trainee could see and did, as rules are unless they say otherwise.
void readAim(TableReader& marking, ScenarioDraft& draft) {
  const auto says = marking.text("complete_says");
  if (!marking.has("complete")) {
    (void)marking.find("complete");
    if (says) {
      marking.sink().add(marking.placeOfKey("complete_says"),
                         "'complete_says' without 'complete': there is nothing to say it of");
    }
    return;
  }
  const auto condition = readCondition(marking, "complete");
  if (says && trimmed(*says).empty()) {
    marking.sink().add(marking.placeOfValue("complete_says"), "'complete_says' is empty");
  }
  if (!condition) return;
  for (const unit::Signal signal : condition->signals()) {
    const unit::SignalInfo& info = unit::signalInfo(signal);
    if (info.layer != unit::Layer::kTrue) continue;
    marking.sink().add(
        marking.placeOfValue("complete"),
        "'complete' reads what is shown and done, but " + std::string(info.name) + " is the truth");
  }
  draft.scenario.aim = Aim{*condition, says.value_or("")};
}

// A mark that somebody is to stand behind needs something to be marked by.
void checkAssessment(TableReader& root, const ScenarioDraft& draft, bool rules_are_read) {
  const Scenario& s = draft.scenario;
  if (s.mode != Mode::kAssessment || root.isLenient()) return;
  const FilePlace at = root.placeOfValue("mode");
  FaultSink& sink = root.sink();
  if (rules_are_read && s.rules.empty()) sink.add(at, "an assessment without any rule");
  if (!draft.has_aim) {
    sink.add(at, "an assessment without an aim; wanted: complete = \"CONDITION\" in [marking]");
  }
  if (!(draft.pass_points.value_or(s.pass_percent) > 0.0)) {
    sink.add(draft.pass_mark_at, "an assessment with a pass mark of 0");
  }
}

void readPhases(TableReader& marking, std::vector<std::string>& phases) {
  for (TableReader::Text& phase : marking.texts("phases")) {
    if (trimmed(phase.text).empty()) {
      marking.sink().add(phase.at, "a phase without a name");
    } else if (std::find(phases.begin(), phases.end(), phase.text) != phases.end()) {
      marking.sink().add(phase.at, "the phase '" + printable(phase.text) + "' is there already");
    }
    phases.push_back(std::move(phase.text));
  }
}

// A list of phases is all of them: one that is not in it is a slip of the pen.
void checkPhases(const Scenario& s, FaultSink& sink, FileFaults& others) {
  if (s.phases.empty()) return;
  const std::vector<std::string_view> known(s.phases.begin(), s.phases.end());
  for (const RuleText& rule : s.rules) {
    const std::string phase = rule.text("phase");
    if (phase.empty() || std::find(known.begin(), known.end(), phase) != known.end()) continue;
    const FilePlace at = rule.placeOf("phase");
    const std::string what =
        sink.isFull() ? std::string("unknown phase") : unit::unknownWord("phase", phase, known);
    if (at.file == sink.file().name) {
      sink.add(at, what);
    } else if (others.size() < kMostFaults) {
      others.push_back({at, what + " (the 'phases' of " + sink.file().name + ")"});
    }
  }
}

void addFaults(const FileFaults& found, FaultSink& sink, FileFaults& others) {
  for (const FileFault& fault : found) {
    if (fault.at.file == sink.file().name) {
      sink.add(fault.at, fault.what);
    } else {
      others.push_back(fault);
    }
  }
}

void changeRules(TableReader& marking, std::vector<RuleText>& rules) {
  for (TableReader& table : marking.tables("change")) {
    const RuleText change = readRuleChange(table);
    if (RuleText* rule = findRule(rules, change.id)) {
      applyChange(change, *rule);
    } else if (!change.id.empty()) {
      marking.sink().add(change.at, unit::unknownWord("rule", change.id, idsOf(rules)));
    }
  }
}

}  // namespace

void readMarking(TableReader& root, ScenarioDraft& draft, const Library& library,
                 std::vector<LoadedScenario::Source>& sources, FileFaults& others,
                 const RuleCheck& check) {
  std::vector<RuleText>& rules = draft.scenario.rules;
  rules = readRules(root);
  FileFaults rule_faults;  // in files of rules
  bool asks_for_rules = root.has("rule");
  if (auto marking = root.table("marking")) {
    readPassMark(*marking, draft);
    readPhases(*marking, draft.scenario.phases);
    readJudgements(*marking, draft.scenario.judgements);
    readAim(*marking, draft);
    draft.has_aim = marking->has("complete");
    asks_for_rules = asks_for_rules || marking->has("use");
    SharedRules shared(library, sources, rule_faults);
    for (TableReader& use : marking->tables("use")) shared.choose(use, rules);
    changeRules(*marking, rules);
    marking->finish();
  }
  // Rules that could not be read are not there, though they are meant.
  const bool all_read = root.sink().isEmpty() && rule_faults.empty();
  checkAssessment(root, draft, !asks_for_rules || all_read);
  checkFollows(rules, root.sink(), rule_faults);
  checkPhases(draft.scenario, root.sink(), rule_faults);
  dropUnchosenFollows(rules);
  if (rule_faults.empty()) checkPassMark(draft, root.sink());
  if (check) addFaults(check(rules), root.sink(), rule_faults);
  others.insert(others.end(), rule_faults.begin(), rule_faults.end());
}

}  // namespace cabwright::scenario
