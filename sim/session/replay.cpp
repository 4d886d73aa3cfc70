// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/replay.h"

#include <nlohmann/json.hpp>
#include <stdexcept>

#include "session/run.h"
#include "session/session_error.h"

namespace cabwright::session {
namespace {

// What people did; what the scenario does by itself it does again by itself.
std::vector<TimedAction> readPeoplesActions(const Store& store) {
  std::vector<TimedAction> actions = store.readActions();
  std::erase_if(actions, [](const TimedAction& action) { return action.scheduled; });
  return actions;
}

Run makeRun(const Store& store, const Situation& situation) {
  try {
    return Run(scenario::makeSetup(situation.loaded, store.header().seed));
  } catch (const std::invalid_argument& error) {
    throw SessionError(store.name() + ": its scenario makes no unit here: " + error.what());
  }
}

// A difference of words: the recording says something this program does not know.
std::optional<Difference> takeAll(Run& run, const std::vector<TimedAction>& actions,
                                  std::size_t& next) {
  for (; next < actions.size() && actions[next].tick == run.tick(); ++next)
    if (const Taken taken = run.take(actions[next].action); taken.fault)
      return Difference{run.tick(), "action " + std::to_string(actions[next].number),
                        unit::toText(actions[next].action), *taken.fault, 0};
  return std::nullopt;
}

// As it is recorded; format 1 kept the names on it.
std::string sheetToKeep(const Store& store, const marking::MarkSheet& sheet) {
  return store.formatVersion() < 2 ? sheetText(sheet) : makeClosing(0, "", sheet).sheet_json;
}

// A recorded sheet has the keys of its time.
bool saysTheSame(const nlohmann::json& recorded, const nlohmann::json& now) {
  if (recorded.is_object() && now.is_object()) {
    for (const auto& [key, value] : now.items())
      if (!recorded.contains(key) && !(value.is_null() || value.empty())) return false;
    for (const auto& [key, value] : recorded.items())
      if (!now.contains(key) || !saysTheSame(value, now[key])) return false;
    return true;
  }
  if (!recorded.is_array() || !now.is_array() || recorded.size() != now.size())
    return recorded == now;
  for (std::size_t k = 0; k < recorded.size(); ++k)
    if (!saysTheSame(recorded[k], now[k])) return false;
  return true;
}

}  // namespace

bool isSameSheet(const std::string& recorded, const std::string& now) {
  if (recorded == now) return true;
  if (recorded.size() > 8 * now.size() + 100'000) return false;  // not worth taking apart
  const auto before = nlohmann::json::parse(recorded, nullptr, false);
  return !before.is_discarded() && saysTheSame(before, nlohmann::json::parse(now));
}

Situation readSituation(const Store& store) {
  auto read = readSituation(store.header().sources);
  if (const auto* faults = std::get_if<scenario::FileFaults>(&read))
    throw SessionError(store.name() +
                       ": its scenario cannot be read: " + scenario::toText(faults->front()));
  Situation situation = std::get<Situation>(std::move(read));
  if (const auto mode = store.header().mode) scenario::chooseMode(situation.loaded.scenario, *mode);
  return situation;
}

Remarked markAgain(const Store& store) {
  const Situation situation = readSituation(store);
  MarkingWitness witness(
      makeTerms(situation, scenario::makeSetup(situation.loaded, store.header().seed)));
  store.show(witness);
  Remarked marked;
  marked.complete = store.closing().has_value();
  if (marked.complete) witness.finish(store.closing()->tick);
  marking::SheetHead head = makeHead(situation, store.header());
  head.last_tick = store.lastTick();
  marked.sheet = witness.makeSheet(head);
  if (const auto& closing = store.closing())
    marked.as_recorded = isSameSheet(closing->sheet_json, sheetToKeep(store, marked.sheet));
  return marked;
}

Replayed replay(const Store& store, const Progress& progress) {
  const Situation situation = readSituation(store);
  const std::vector<TimedAction> actions = readPeoplesActions(store);
  Run run = makeRun(store, situation);
  Comparer comparer(store);
  run.addWitness(comparer);
  run.begin();
  Replayed result;
  result.last_tick = store.lastTick();
  bool goes_on = true;
  for (std::size_t next = 0; goes_on && !comparer.difference();) {
    if ((result.difference = takeAll(run, actions, next))) break;
    if (run.tick() >= result.last_tick) break;
    run.advance();
    if (progress && run.tick() % kTicksPerSecond == 0) goes_on = progress(run.tick());
  }
  if (goes_on && !result.difference) comparer.finish();
  if (comparer.difference()) result.difference = comparer.difference();
  result.frames = comparer.frames();
  result.hashes = comparer.hashes();
  result.actions = comparer.actions();
  return result;
}

}  // namespace cabwright::session
