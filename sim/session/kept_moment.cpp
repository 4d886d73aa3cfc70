// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/kept_moment.h"

#include <fmt/format.h>

#include <algorithm>
#include <variant>

#include "plant/start_conditions.h"
#include "scenario/draft_text.h"
#include "scenario/quantity_text.h"
#include "unit/unit_start_of.h"

namespace cabwright::session {

namespace {

using scenario::Draft;
using scenario::DraftTable;
using scenario::DraftValue;
using S = scenario::DraftSection;

// A number a file has to say: it is not what the reader would take without it.
bool isSaid(const plant::StartInfo& info, double value, double ambient_c) {
  double usual = info.standard;
  for (const std::string_view warm : {".coolant_c", ".oil_c", ".box_oil_c", ".coupling_c"}) {
    if (info.name.ends_with(warm)) usual = ambient_c;
  }
  return value != usual && info.name != "ambient_c";
}

// Twelve figures: nobody reads more, and no gauge shows a difference.
double rounded(double value) {
  return scenario::readNumber(fmt::format("{:.12g}", value)).value_or(value);
}

// Where one of the old list says the same, it stays in its place, with its comments.
template <class Same>
void keepOrigins(const std::vector<DraftTable>& was, std::vector<DraftTable>& now, Same same) {
  std::vector<bool> taken(was.size(), false);
  for (DraftTable& table : now) {
    table.origin = 0;
    for (std::size_t k = 0; k < was.size() && table.origin == 0; ++k) {
      if (taken[k] || was[k].origin == 0 || !same(was[k], table)) continue;
      taken[k] = true;
      table.origin = was[k].origin;
    }
  }
  std::stable_sort(now.begin(), now.end(), [](const DraftTable& a, const DraftTable& b) {
    return a.origin != 0 && (b.origin == 0 || a.origin < b.origin);
  });
}
bool isSameThing(const DraftTable& a, const DraftTable& b) {
  return a.text("item") == b.text("item") && a.text("instrument") == b.text("instrument") &&
         a.text("fault") == b.text("fault") && a.text("who") == b.text("who") &&
         a.text("when") == b.text("when") && a.texts("do") == b.texts("do");
}

void putNumbers(DraftTable& start, const plant::StartConditions& plant) {
  // Both lines and both cabs by one name, where they are alike.
  for (const plant::StartInfo& info : plant::startTable()) {
    const double value = info.of(plant);
    const std::size_t dot = info.name.find('.');
    if (dot != std::string::npos) {
      std::string both = info.name;
      both.erase(dot - 1, 1);
      const auto pair = plant::findStartConditions(both);
      if (pair.size() == 2 && pair[0]->of(plant) == pair[1]->of(plant)) {
        if (isSaid(info, value, plant.ambient_c)) start.set(both, rounded(value));
        continue;
      }
    }
    if (isSaid(info, value, plant.ambient_c)) start.set(info.name, rounded(value));
  }
}

class MomentWriter {
 public:
  MomentWriter(Draft& draft, const Run& run, const scenario::LoadedScenario& loaded)
      : draft_(draft), run_(run), loaded_(loaded), start_(unit::calcStartOf(run.unit())) {
    auto read = scenario::readDraft({"", loaded.sources.empty() ? "" : loaded.sources[0].text});
    if (auto* source = std::get_if<Draft>(&read)) source_ = std::move(*source);
  }

  std::vector<std::string> write() {
    putConditions();
    putStart();
    putPeople();
    for (const S section : {S::kFault, S::kHidden, S::kEvent}) {
      const std::vector<DraftTable> was = std::move(draft_.list(section));
      draft_.list(section).clear();
      if (section == S::kFault) putFaults();
      if (section == S::kHidden) {
        putHidden();
        putHiddenControls();
      }
      if (section == S::kEvent) putEvents();
      keepOrigins(was, draft_.list(section), isSameThing);
    }
    draft_.list(S::kDraw).clear();
    noteUnkept();
    return std::move(not_kept_);
  }

 private:
  void putConditions() {
    DraftTable& table = draft_.table(S::kConditions);
    const DraftTable& was = source_.table(S::kConditions);
    for (const std::string_view key : {"weather", "rail"}) {
      if (const DraftValue* value = was.find(key)) {
        table.set(key, *value);
      } else {
        table.remove(key);
      }
    }
    table.set("temperature", scenario::quantityValue(start_.plant.ambient_c, "C"));
    table.remove("stood_hours");
    table.remove("dark");
    if (start_.dark) table.set("dark", true);
  }

  void putStart() {
    DraftTable& start = draft_.table(S::kStart);
    start.entries.clear();
    start.set("place", start_.place);
    putNumbers(start, start_.plant);
    putSettings(draft_.table(S::kControls), start_.controls);
    putSettings(draft_.table(S::kObjects), start_.objects);
    draft_.table(S::kParameters).entries = source_.table(S::kParameters).entries;
  }

  static void putSettings(DraftTable& table, const std::vector<unit::Setting>& settings) {
    table.entries.clear();
    for (const unit::Setting& s : settings) table.set(s.name, s.value);
  }

  void putPeople() {
    DraftTable& people = draft_.table(S::kPeople);
    people.entries.clear();
    if (!start_.guard_present) people.set("guard", false);
    if (!start_.second_person) people.set("second_person", false);
  }

  void putMomentOf(DraftTable& table, const fault::Moment& moment, std::string_view at,
                   std::string_view when, std::string_view after) const {
    if (moment.when) {
      table.set(when, moment.when->text());
      if (moment.ticks > 0) table.set(after, scenario::timeText(moment.ticks));
    } else if (moment.ticks > run_.tick()) {
      table.set(at, scenario::timeText(moment.ticks - run_.tick()));
    }
  }

  void putFaults() {
    std::vector<DraftTable>& list = draft_.list(S::kFault);
    const fault::ActiveFaults& faults = run_.faults();
    for (std::size_t k = 0; k < faults.armed().size(); ++k) {
      if (faults.stage(k) != fault::FaultStage::kCleared) list.push_back(faultTable(k));
    }
  }

  DraftTable faultTable(std::size_t k) {
    const fault::ArmedFault& armed = run_.faults().armed()[k];
    const fault::FaultStage stage = run_.faults().stage(k);
    DraftTable table;
    table.set("fault", armed.spec->name);
    double size = armed.size;
    if (stage == fault::FaultStage::kArmed) {
      putMomentOf(table, armed.from, "at", "when", "after");
      if (armed.ramp_ticks > 0) table.set("ramp", scenario::timeText(armed.ramp_ticks));
    } else if (stage == fault::FaultStage::kGrowing) {
      size = std::clamp(size * run_.faults().share(k), armed.spec->size.lowest, size);
      not_kept_.push_back("'" + armed.spec->name + "' was growing; it stays at the size it has");
    }
    if (armed.spec->size.exists()) {
      table.set("size", scenario::quantityValue(size, armed.spec->size.unit));
    }
    if (armed.until) putMomentOf(table, *armed.until, "until", "until_when", "until_after");
    if (!armed.id.starts_with(armed.spec->name)) table.set("id", armed.id);
    return table;
  }

  // What a fault has brought about it brings about again; it is not hidden a second time.
  void putHidden() {
    std::vector<DraftTable>& list = draft_.list(S::kHidden);
    unit::UnitStart bare = start_;
    bare.conditions.clear();
    unit::Unit probe(loaded_.vehicle.plant, loaded_.route.route, bare);
    fault::ActiveFaults faults;
    for (std::size_t k = 0; k < run_.faults().armed().size(); ++k) {
      const fault::FaultStage stage = run_.faults().stage(k);
      if (stage != fault::FaultStage::kGrowing && stage != fault::FaultStage::kThere) continue;
      fault::ArmedFault armed = run_.faults().armed()[k];
      armed.from = {};
      armed.until.reset();
      faults.arm(armed);
    }
    faults.advance(probe);
    const std::vector<unit::Setting> brought = unit::calcStartOf(probe).conditions;
    for (const unit::Setting& s : start_.conditions) {
      const bool again = std::any_of(brought.begin(), brought.end(), [&](const unit::Setting& b) {
        return b.name == s.name && b.value == s.value;
      });
      if (again) continue;
      DraftTable table;
      table.set(unit::findInstrument(s.name) ? "instrument" : "item", s.name);
      table.set("condition", s.value);
      list.push_back(std::move(table));
    }
  }

  // Some defects are a control out of its place and nothing else ("hanging" hoses): what the
  // scenario hid stays hidden, or nobody would count it as found.
  void putHiddenControls() {
    std::vector<scenario::Hidden> all = loaded_.scenario.hidden;
    for (const scenario::Draw& draw : loaded_.scenario.draws)
      all.insert(all.end(), draw.choices.begin(), draw.choices.end());
    for (const scenario::Hidden& hidden : all) {
      const auto item = hidden.condition ? unit::findItem(hidden.condition->name) : std::nullopt;
      if (!item) continue;
      const unit::ItemInfo& info = unit::itemInfo(*item);
      const auto n = unit::findItemCondition(info, hidden.condition->value);
      if (!n || *n == 0 || run_.unit().presentCondition(*item) != *n) continue;
      if (run_.unit().world().item[unit::indexOf(*item)].hidden != 0) continue;
      DraftTable table;
      table.set("item", hidden.condition->name);
      table.set("condition", hidden.condition->value);
      draft_.list(S::kHidden).push_back(std::move(table));
      for (const std::string& effect : info.conditions[static_cast<std::size_t>(*n - 1)].effects) {
        const auto act = unit::parseAction(effect);
        const auto* set = std::get_if<unit::Action>(&act);
        if (set && set->verb == "set") draft_.table(S::kControls).remove(set->object);
      }
    }
  }

  // Signals as they stand, and what has not happened yet.
  void putEvents() {
    std::vector<DraftTable>& list = draft_.list(S::kEvent);
    const auto& signals = run_.unit().route().signals;
    const auto& clear = run_.unit().world().signal_clear;
    std::vector<std::string> acts;
    for (std::size_t k = 0; k < signals.size(); ++k) {
      if (signals[k].clear == clear[k]) continue;
      acts.push_back("set signal." + signals[k].name + (clear[k] ? " clear" : " danger"));
    }
    if (!acts.empty()) {
      DraftTable table;
      table.set("who", "scenario");
      table.set("at", "0 s");
      table.set("do", acts);
      list.push_back(std::move(table));
    }
    const std::vector<DraftTable>& was = source_.list(S::kEvent);
    const auto& happenings = run_.timeline().happenings();
    for (std::size_t k = 0; k < happenings.size() && k < was.size(); ++k) {
      if (run_.timeline().hasCome(k)) continue;
      DraftTable table = was[k];
      const fault::Moment& at = happenings[k].at;
      if (!at.when) table.set("at", scenario::timeText(at.ticks - run_.tick()));
      list.push_back(std::move(table));
    }
  }

  void noteUnkept() {
    const unit::World& w = run_.unit().world();
    const auto note = [&](bool is_so, const char* what) {
      if (is_so) not_kept_.emplace_back(what);
    };
    note(w.trainee.walking, "somebody is on the way; he stands where the walk began");
    note(!w.people.pending.empty(), "an answer was on its way; it does not come");
    note(w.people.second_called || w.people.second_there, "the second person has to be called");
    note(!w.judgements.empty() || !w.book.empty() || !w.notes.empty(),
         "what was judged, noted and booked is not in the file");
    for (const unit::InstrumentState& state : w.instrument) {
      if (state.condition != unit::InstrumentCondition::kStuck) continue;
      note(true, "a stuck gauge stands where it should show at this moment");
      break;
    }
    for (const plant::LineReadings& line : run_.unit().readings().line) {
      note(line.pinion_in, "a starter was in; its button has to be pushed again");
    }
  }

  Draft& draft_;
  const Run& run_;
  const scenario::LoadedScenario& loaded_;
  unit::UnitStart start_;
  Draft source_;
  std::vector<std::string> not_kept_;
};

}  // namespace

std::vector<std::string> putMoment(Draft& draft, const Run& run,
                                   const scenario::LoadedScenario& loaded) {
  return MomentWriter(draft, run, loaded).write();
}

KeptMoment calcDraftFrom(const Run& run, const scenario::LoadedScenario& loaded,
                         const std::string& title) {
  KeptMoment kept;
  const scenario::Scenario& s = loaded.scenario;
  DraftTable& head = kept.draft.table(S::kHead);
  head.set("title", title);
  head.set("purpose", s.purpose);
  head.set("summary", s.summary);
  head.set("vehicle", s.vehicle);
  head.set("route", s.route);
  head.set("mode", std::string(wordOf(scenario::Mode::kPractice)));
  kept.not_kept = putMoment(kept.draft, run, loaded);
  return kept;
}

}  // namespace cabwright::session
