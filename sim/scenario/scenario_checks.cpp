// SPDX-License-Identifier: GPL-3.0-or-later
// What in a scenario contradicts something else in it.
#include <algorithm>
#include <limits>
#include <map>
#include <set>

#include "plant/named_numbers.h"
#include "scenario/scenario_parts.h"
#include "unit/items.h"

namespace cabwright::scenario {

namespace {

constexpr std::int64_t kNever = std::numeric_limits<std::int64_t>::max();

/// When something may be there, as far as the file tells: a condition may come at any time.
struct Span {
  std::int64_t from = 0, to = kNever;
  [[nodiscard]] bool meets(const Span& other) const { return from < other.to && other.from < to; }
};

/// One number held at a value by something hidden or faulty.
struct Hold {
  std::string parameter;
  std::string by;  ///< in words
  Span span;
  const PlacedHidden* source;
};

Span spanOf(const fault::ArmedFault& fault) {
  Span span;
  if (!fault.from.when) span.from = fault.from.ticks;
  if (fault.until && !fault.until->when) span.to = fault.until->ticks;
  return span;
}

std::string conditionWords(const unit::Setting& s) { return s.name + " " + s.value; }

void addHolds(const PlacedHidden& placed, std::vector<Hold>& holds) {
  const Hidden& hidden = *placed.hidden;
  if (hidden.fault) {
    for (const fault::NumberEffect& n : hidden.fault->spec->numbers) {
      if (n.how != fault::How::kTo) continue;
      holds.push_back(
          {fault::nameOf(n.parameter), hidden.fault->spec->name, spanOf(*hidden.fault), &placed});
    }
    return;
  }
  if (!hidden.condition) return;
  const auto item = unit::findItem(hidden.condition->name);
  if (!item) return;
  const unit::ItemInfo& info = unit::itemInfo(*item);
  const auto k = unit::findItemCondition(info, hidden.condition->value);
  if (!k || *k == 0) return;
  for (const std::string& effect : info.conditions[static_cast<std::size_t>(*k - 1)].effects) {
    if (!effect.starts_with("fault ")) continue;
    const std::size_t end = effect.find(' ', 6);
    holds.push_back({effect.substr(6, end - 6), conditionWords(*hidden.condition), {}, &placed});
  }
}

// Of one draw of a single thing only one can be there.
bool excludeEachOther(const ScenarioDraft& draft, const PlacedHidden& a, const PlacedHidden& b) {
  return a.draw && b.draw && *a.draw == *b.draw && draft.scenario.draws[*a.draw].count == 1;
}

std::vector<PlacedHidden> gather(const ScenarioDraft& draft, std::vector<Hidden>& faults) {
  std::vector<PlacedHidden> all;
  const Scenario& s = draft.scenario;
  for (std::size_t k = 0; k < s.hidden.size(); ++k) {
    all.push_back({&s.hidden[k], draft.hidden_at[k], std::nullopt});
  }
  for (std::size_t k = 0; k < s.faults.size(); ++k) {
    Hidden hidden;
    hidden.fault = s.faults[k];
    faults.push_back(std::move(hidden));
  }
  for (std::size_t k = 0; k < faults.size(); ++k) {
    all.push_back({&faults[k], draft.fault_at[k], std::nullopt});
  }
  for (std::size_t d = 0; d < s.draws.size(); ++d) {
    for (std::size_t k = 0; k < s.draws[d].choices.size(); ++k) {
      all.push_back({&s.draws[d].choices[k], draft.draw_at[d][k], d});
    }
  }
  return all;
}

void checkHolds(const ScenarioDraft& draft, const std::vector<PlacedHidden>& all, FaultSink& sink) {
  std::vector<Hold> holds;
  for (const PlacedHidden& placed : all) addHolds(placed, holds);
  std::set<std::pair<const PlacedHidden*, const PlacedHidden*>> told;
  for (std::size_t k = 0; k < holds.size(); ++k) {
    for (std::size_t j = 0; j < k; ++j) {
      const Hold &a = holds[j], &b = holds[k];
      if (a.parameter != b.parameter || a.source == b.source || !a.span.meets(b.span)) continue;
      if (excludeEachOther(draft, *a.source, *b.source)) continue;
      if (!told.insert({a.source, b.source}).second) continue;
      sink.add(b.source->at, "'" + b.by + "' holds " + b.parameter + ", which '" + a.by +
                                 "' of line " + std::to_string(a.source->at.line) +
                                 " holds at the same time");
    }
  }
}

void checkSameTwice(const ScenarioDraft& draft, const std::vector<PlacedHidden>& all,
                    FaultSink& sink) {
  for (std::size_t k = 0; k < all.size(); ++k) {
    for (std::size_t j = 0; j < k; ++j) {
      const Hidden &a = *all[j].hidden, &b = *all[k].hidden;
      if (excludeEachOther(draft, all[j], all[k])) continue;
      const std::string line = std::to_string(all[j].at.line);
      if (a.condition && b.condition && a.condition->name == b.condition->name) {
        sink.add(all[k].at,
                 "'" + b.condition->name + "' is given a condition by line " + line + " already");
      }
      if (a.fault && b.fault && a.fault->spec == b.fault->spec &&
          spanOf(*a.fault).meets(spanOf(*b.fault)) && all[j].draw == all[k].draw) {
        const auto holds = [](const fault::NumberEffect& n) { return n.how == fault::How::kTo; };
        const auto& numbers = b.fault->spec->numbers;
        // checkHolds speaks of those that hold a number.
        if (std::any_of(numbers.begin(), numbers.end(), holds)) continue;
        sink.add(all[k].at, "'" + b.fault->spec->name + "' is there by line " + line +
                                " already at the same time");
      }
    }
  }
}

void checkTimes(const ScenarioDraft& draft, const std::vector<PlacedHidden>& all, FaultSink& sink) {
  const Scenario& s = draft.scenario;
  if (!s.time_allowed_s) return;
  const double allowed = *s.time_allowed_s * 100.0;
  const auto check = [&](const fault::Moment& moment, const FilePlace& at) {
    if (moment.when || static_cast<double>(moment.ticks) <= allowed) return;
    sink.add(at, "this is to come at " +
                     plant::shortNumber(static_cast<double>(moment.ticks) / 100.0) +
                     " s, but 'time_allowed' is " + plant::shortNumber(*s.time_allowed_s) + " s");
  };
  for (const PlacedHidden& placed : all) {
    if (placed.hidden->fault) check(placed.hidden->fault->from, placed.at);
  }
  for (std::size_t k = 0; k < s.happenings.size(); ++k) {
    check(s.happenings[k].at, draft.happening_at[k]);
  }
}

}  // namespace

void checkContradictions(const ScenarioDraft& draft, FaultSink& sink) {
  std::vector<Hidden> faults;
  const std::vector<PlacedHidden> all = gather(draft, faults);
  checkHolds(draft, all, sink);
  checkSameTwice(draft, all, sink);
  checkTimes(draft, all, sink);
  const bool positioned =
      std::any_of(draft.numbers.begin(), draft.numbers.end(),
                  [](const StartEntry& e) { return e.written == "position_m"; });
  if (draft.berth && positioned) {
    sink.add(draft.berth_at, "both 'berth' and 'position_m'; allowed: one of them");
  }
  const bool turned = std::any_of(draft.numbers.begin(), draft.numbers.end(), [](const auto& e) {
    return e.written.find("tooth_phase_deg") != std::string::npos;
  });
  if (draft.scenario.random_teeth && turned) {
    sink.add(draft.start_at, "both random 'teeth' and 'tooth_phase_deg'; allowed: one of them");
  }
  for (const ParameterEntry& e : draft.parameters) {
    if (draft.rail_at && e.written == "train.adhesion_factor") {
      sink.add(e.at, "both 'rail' of [conditions] and 'train.adhesion_factor'; one is enough");
    }
  }
}

}  // namespace cabwright::scenario
