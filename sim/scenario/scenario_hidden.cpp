// SPDX-License-Identifier: GPL-3.0-or-later
// What is hidden in a scenario, drawn by its seed, and goes wrong in it.
#include <algorithm>
#include <set>

#include "scenario/scenario_parts.h"
#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

constexpr std::size_t kMostThings = 500;

bool tooMany(const std::vector<TableReader>& tables, TableReader& root, std::string_view key) {
  if (tables.size() <= kMostThings) return false;
  root.sink().add(root.placeOfKey(key), "more than 500 of [[" + std::string(key) + "]]");
  return true;
}

// "item" or "instrument" with its "condition".
std::optional<unit::Setting> readItemCondition(TableReader& table, std::string_view key) {
  const auto name = table.text(key, Need::kMust);
  const auto word = table.text("condition", Need::kMust);
  if (!name || !word) return std::nullopt;
  unit::Setting setting{*name, *word};
  const std::vector<std::string> faults = unit::findConditionFaults(setting);
  for (const std::string& what : faults) {
    table.sink().add(table.placeOfValue(what.starts_with("unknown") ? key : "condition"), what);
  }
  if (!faults.empty()) return std::nullopt;
  return setting;
}

std::optional<Hidden> readOne(TableReader& table, bool nothing_allowed) {
  const bool nothing = nothing_allowed && table.flag("nothing").value_or(false);
  std::vector<std::string_view> given;
  for (std::string_view key : {"item", "instrument", "fault"}) {
    if (table.has(key)) given.push_back(key);
  }
  if (given.size() + (nothing ? 1 : 0) != 1) {
    table.sink().add(table.at(), std::string("one of 'item', 'instrument', 'fault'") +
                                     (nothing_allowed ? ", 'nothing'" : "") +
                                     " is wanted here, exactly one");
    for (std::string_view key : {"item", "instrument", "fault", "condition", "size"}) {
      (void)table.find(key);
    }
    return std::nullopt;
  }
  Hidden hidden;
  if (nothing) return hidden;
  if (given.front() == "fault") {
    hidden.fault = readFault(table);
    return hidden.fault ? std::optional(hidden) : std::nullopt;
  }
  hidden.condition = readItemCondition(table, given.front());
  return hidden.condition ? std::optional(hidden) : std::nullopt;
}

void checkDraw(TableReader& table, const Draw& draw) {
  const auto can =
      std::count_if(draw.weights.begin(), draw.weights.end(), [](double w) { return w > 0.0; });
  if (draw.choices.empty()) return;
  if (can == 0) {
    table.sink().add(table.placeOfKey("from"), "nothing can be drawn: every weight is 0");
  } else if (draw.count > can) {
    table.sink().add(table.placeOfValue("count"),
                     "'count' is " + std::to_string(draw.count) + "; allowed: at most the " +
                         std::to_string(can) + " choices that can be drawn");
  }
}

void readDraw(TableReader& table, ScenarioDraft& draft) {
  Draw draw;
  draw.name = table.text("name", Need::kMust).value_or("");
  for (const Draw& other : draft.scenario.draws) {
    if (other.name != draw.name || draw.name.empty()) continue;
    table.sink().add(table.placeOfValue("name"),
                     "there is a draw '" + printable(draw.name) + "' already");
    break;
  }
  draw.count = static_cast<int>(table.whole("count", 1, 100).value_or(1));
  std::vector<FilePlace> places;
  std::vector<TableReader> choices = table.tables("from");
  if (!table.has("from") && !table.isLenient()) {
    table.sink().add(table.at(), "[[draw]] needs 'from', a list of what can be drawn");
  }
  if (!tooMany(choices, table, "from")) {
    for (TableReader& choice : choices) {
      const double weight = choice.number("weight", "", {0.0, 1e6}).value_or(1.0);
      const auto hidden = readOne(choice, true);
      choice.finish();
      if (!hidden) continue;
      draw.choices.push_back(*hidden);
      draw.weights.push_back(weight);
      places.push_back(choice.at());
    }
  }
  checkDraw(table, draw);
  table.finish();
  draft.scenario.draws.push_back(std::move(draw));
  draft.draw_at.push_back(std::move(places));
}

// Ids tell faults apart in a run; what the author did not name is named here.
class IdMaker {
 public:
  void take(fault::ArmedFault& fault) {
    if (fault.id.empty()) {
      fault.id = fault.spec->name;
      for (int n = 2; !taken_.insert(fault.id).second; ++n) {
        fault.id = fault.spec->name + "#" + std::to_string(n);
      }
    }
  }
  bool reserve(const std::string& id) { return taken_.insert(id).second; }

 private:
  std::set<std::string> taken_;
};

void nameAll(ScenarioDraft& draft, FaultSink& sink) {
  IdMaker ids;
  std::vector<std::pair<fault::ArmedFault*, FilePlace>> all;
  Scenario& s = draft.scenario;
  for (std::size_t k = 0; k < s.faults.size(); ++k)
    all.push_back({&s.faults[k], draft.fault_at[k]});
  for (std::size_t k = 0; k < s.hidden.size(); ++k) {
    if (s.hidden[k].fault) all.push_back({&*s.hidden[k].fault, draft.hidden_at[k]});
  }
  for (std::size_t d = 0; d < s.draws.size(); ++d) {
    for (std::size_t k = 0; k < s.draws[d].choices.size(); ++k) {
      auto& fault = s.draws[d].choices[k].fault;
      if (fault) all.push_back({&*fault, draft.draw_at[d][k]});
    }
  }
  for (auto& [fault, at] : all) {
    if (!fault->id.empty() && !ids.reserve(fault->id)) {
      sink.add(at, "the id '" + printable(fault->id) + "' is taken by another fault");
    }
  }
  for (auto& [fault, at] : all) ids.take(*fault);
}

std::optional<fault::Moment> readUntil(TableReader& table) {
  const bool given = table.has("until") || table.has("until_when") || table.has("until_after");
  auto until = readMoment(table, "until", "until_when", "until_after");
  return given ? until : std::nullopt;
}

void readSize(TableReader& table, fault::ArmedFault& fault) {
  const fault::SizeRange& range = fault.spec->size;
  if (!range.exists()) {
    if (table.find("size")) {
      table.sink().add(table.placeOfKey("size"), *fault::findSizeFault(*fault.spec, 1.0));
    }
    return;
  }
  const auto size = table.number("size", range.unit, {range.lowest, range.highest});
  fault.size = size.value_or(range.usual);
  if (!size) return;
  if (const auto wrong = fault::findSizeFault(*fault.spec, *size)) {
    table.sink().add(table.placeOfValue("size"), *wrong);
  }
}

}  // namespace

std::optional<unit::Condition> readCondition(TableReader& table, std::string_view key) {
  const auto text = table.text(key);
  if (!text) return std::nullopt;
  auto parsed = unit::Condition::parse(*text);
  if (auto* good = std::get_if<unit::Condition>(&parsed)) {
    if (!good->signals().empty()) return std::move(*good);
    table.sink().add(table.placeOfValue(key),
                     "'" + std::string(key) + "' is a condition without any signal");
    return std::nullopt;
  }
  const auto& wrong = std::get<unit::ConditionFault>(parsed);
  const std::vector<TextPlace> places =
      findTextPlaces(table.sink(), table.placeOfValue(key), *text);
  if (wrong.at < places.size()) {
    table.sink().add(places[wrong.at].line, places[wrong.at].column, wrong.what);
  } else {
    table.sink().add(table.placeOfValue(key), wrong.what);
  }
  return std::nullopt;
}

std::optional<fault::Moment> readMoment(TableReader& table, std::string_view at,
                                        std::string_view when, std::string_view after) {
  fault::Moment moment;
  const auto time = table.ticks(at);
  moment.when = readCondition(table, when);
  const auto delay = table.ticks(after);
  if (table.has(at) && table.has(when)) {
    table.sink().add(table.placeOfKey(when), "both '" + std::string(at) + "' and '" +
                                                 std::string(when) + "'; allowed: one of them");
    return std::nullopt;
  }
  if (table.has(after) && !table.has(when)) {
    table.sink().add(table.placeOfKey(after), "'" + std::string(after) + "' without '" +
                                                  std::string(when) +
                                                  "': there is nothing to count from");
    return std::nullopt;
  }
  if ((table.has(at) && !time) || (table.has(when) && !moment.when) ||
      (table.has(after) && !delay)) {
    return std::nullopt;
  }
  moment.ticks = moment.when ? delay.value_or(0) : time.value_or(0);
  return moment;
}

std::optional<fault::ArmedFault> readFault(TableReader& table) {
  fault::ArmedFault fault;
  fault.id = table.text("id").value_or("");
  const auto name = table.text("fault", Need::kMust);
  fault.spec = name ? fault::findFault(*name) : nullptr;
  if (name && !fault.spec)
    table.sink().add(table.placeOfValue("fault"), fault::unknownFault(*name));
  const auto from = readMoment(table, "at", "when", "after");
  const auto ramp = table.ticks("ramp");
  fault.until = readUntil(table);
  fault.from = from.value_or(fault::Moment{});
  fault.ramp_ticks = ramp.value_or(0);
  if (!fault.spec) {
    (void)table.find("size");
    return std::nullopt;
  }
  readSize(table, fault);
  if (fault.ramp_ticks > 0 && !fault.spec->gradual) {
    table.sink().add(table.placeOfKey("ramp"),
                     "'" + fault.spec->name + "' comes at once; it cannot have a 'ramp'");
  }
  if (fault.until && !fault.until->when && !fault.from.when &&
      fault.until->ticks <= fault.from.ticks) {
    table.sink().add(table.placeOfValue("until"),
                     "the fault is over before it comes: 'until' is not after 'at'");
  }
  return fault;
}

void readHiddenThings(TableReader& root, ScenarioDraft& draft) {
  std::vector<TableReader> hidden = root.tables("hidden");
  if (!tooMany(hidden, root, "hidden")) {
    for (TableReader& table : hidden) {
      const auto one = readOne(table, false);
      table.finish();
      if (!one) continue;
      draft.scenario.hidden.push_back(*one);
      draft.hidden_at.push_back(table.at());
    }
  }
  std::vector<TableReader> draws = root.tables("draw");
  if (!tooMany(draws, root, "draw")) {
    for (TableReader& table : draws) readDraw(table, draft);
  }
  std::vector<TableReader> faults = root.tables("fault");
  if (!tooMany(faults, root, "fault")) {
    for (TableReader& table : faults) {
      const auto fault = readFault(table);
      table.finish();
      if (!fault) continue;
      draft.scenario.faults.push_back(*fault);
      draft.fault_at.push_back(table.at());
    }
  }
  nameAll(draft, root.sink());
}

}  // namespace cabwright::scenario
