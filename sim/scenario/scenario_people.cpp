// SPDX-License-Identifier: GPL-3.0-or-later
// Guard, signaller and the world in a scenario file; and the rules it is marked by.
#include <algorithm>
#include <array>
#include <map>

#include "scenario/quantity_text.h"
#include "scenario/scenario_parts.h"
#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

constexpr std::size_t kMostEvents = 2000;
constexpr std::array<std::string_view, 4> kWho{"guard", "signaller", "instructor", "scenario"};
constexpr std::array<unit::Actor, 4> kActors{unit::Actor::kGuard, unit::Actor::kSignaller,
                                             unit::Actor::kInstructor, unit::Actor::kScenario};

void readEvent(TableReader& table, ScenarioDraft& draft) {
  const auto who = table.word("who", kWho, Need::kMust);
  const auto at = readMoment(table, "at", "when", "after");
  if (!table.has("at") && !table.has("when") && !table.isLenient()) {
    table.sink().add(table.at(), "[[event]] needs 'at' or 'when'");
  }
  Happening happening;
  happening.at = at.value_or(fault::Moment{});
  std::vector<PlacedAction> actions;
  for (const TableReader::Text& text : table.texts("do", Need::kMust)) {
    auto parsed = unit::parseAction(text.text);
    if (const auto* wrong = std::get_if<std::string>(&parsed)) {
      table.sink().add(text.at, *wrong);
      continue;
    }
    PlacedAction placed{text.text, std::get<unit::Action>(std::move(parsed)), text.at, {}};
    placed.inside = findTextPlaces(table.sink(), text.at, text.text);
    if (placed.action.actor != unit::Actor::kTrainee) {
      table.sink().add(text.at, "'who' says who does it; allowed here: VERB OBJECT ARGUMENT");
      continue;
    }
    placed.action.actor = kActors[who.value_or(3)];
    happening.actions.push_back(placed.action);
    actions.push_back(std::move(placed));
  }
  table.finish();
  draft.scenario.happenings.push_back(std::move(happening));
  draft.actions.push_back(std::move(actions));
  draft.happening_at.push_back(table.at());
}

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
  ids.reserve(rules.size());
  for (const RuleText& rule : rules) ids.push_back(rule.id);
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
    const std::vector<RuleText>* shared = file ? load(*file, table) : nullptr;
    if (!shared) return;
    const std::vector<std::string_view> ids = idsOf(*shared);
    const auto check = [&](const TableReader::Text& id) {
      if (std::find(ids.begin(), ids.end(), id.text) != ids.end()) return;
      table.sink().add(id.at, unit::unknownWord("rule", id.text, ids) + " in '" + *file + "'");
    };
    for (const auto& id : chosen) check(id);
    for (const auto& id : except) check(id);
    for (const RuleText& rule : *shared) {
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
  const std::vector<RuleText>* load(const std::string& name, TableReader& table) {
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
    auto parsed = parseRules(file);
    if (auto* faults = std::get_if<FileFaults>(&parsed)) {
      others_.insert(others_.end(), faults->begin(), faults->end());
      return nullptr;
    }
    kept = std::get<std::vector<RuleText>>(std::move(parsed));
    return &*kept;
  }

  const Library& library_;
  std::vector<LoadedScenario::Source>& sources_;
  FileFaults& others_;
  std::map<std::string, std::optional<std::vector<RuleText>>> files_;
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

// What a shared rule follows from and is not chosen here cannot drag it along.
void dropUnchosenFollows(std::vector<RuleText>& rules) {
  const std::vector<RuleText> all = rules;
  const std::vector<std::string_view> ids = idsOf(all);
  for (RuleText& rule : rules) {
    for (RuleField& field : rule.fields) {
      auto* follows = std::get_if<std::vector<std::string>>(&field.value);
      if (field.key != "follows" || !follows) continue;
      for (std::size_t k = follows->size(); k-- > 0;) {
        if (std::find(ids.begin(), ids.end(), (*follows)[k]) != ids.end()) continue;
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

}  // namespace

void readPeople(TableReader& root, ScenarioDraft& draft) {
  if (auto people = root.table("people")) {
    draft.scenario.start.guard_present = people->flag("guard").value_or(true);
    draft.scenario.start.second_person = people->flag("second_person").value_or(true);
    people->finish();
  }
  std::vector<TableReader> events = root.tables("event");
  if (events.size() > kMostEvents) {
    root.sink().add(root.placeOfKey("event"), "more than 2000 of [[event]]");
    return;
  }
  for (TableReader& table : events) readEvent(table, draft);
}

void readMarking(TableReader& root, ScenarioDraft& draft, const Library& library,
                 std::vector<LoadedScenario::Source>& sources, FileFaults& others) {
  std::vector<RuleText>& rules = draft.scenario.rules;
  rules = readRules(root);
  if (auto marking = root.table("marking")) {
    readPassMark(*marking, draft);
    for (TableReader::Text& phase : marking->texts("phases")) {
      draft.scenario.phases.push_back(std::move(phase.text));
    }
    readJudgements(*marking, draft.scenario.judgements);
    SharedRules shared(library, sources, others);
    for (TableReader& use : marking->tables("use")) shared.choose(use, rules);
    for (TableReader& table : marking->tables("change")) {
      const RuleText change = readRuleChange(table);
      if (RuleText* rule = findRule(rules, change.id)) {
        applyChange(change, *rule);
      } else if (!change.id.empty()) {
        root.sink().add(change.at, unit::unknownWord("rule", change.id, idsOf(rules)));
      }
    }
    marking->finish();
  }
  checkFollows(rules, root.sink(), others);
  dropUnchosenFollows(rules);
  if (others.empty()) checkPassMark(draft, root.sink());
}

}  // namespace cabwright::scenario
