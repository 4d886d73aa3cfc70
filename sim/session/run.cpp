// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/run.h"

#include <fmt/format.h>

#include <stdexcept>
#include <utility>
#include <variant>

#include "fault/fault.h"
#include "quantity/hash.h"
#include "scenario/arm_words.h"
#include "unit/nearest_name.h"

namespace cabwright::session {

namespace {

// So that the record says when a fault came and went; it changes nothing by itself.
unit::Action remarkOf(const fault::FaultChange& change, bool by_id) {
  const std::string size = change.spec->size.exists()
                               ? fmt::format(" ({:g} {})", change.size, change.spec->size.unit)
                               : std::string();
  return {unit::Actor::kScenario, "remark", "fault",
          fmt::format("{}{}{} {}", change.spec->name, size, by_id ? " '" + change.id + "'" : "",
                      fault::wordOf(change.stage))};
}

std::string findFreeId(const fault::ActiveFaults& faults, const std::string& name) {
  std::string id = name;
  for (int n = 2; faults.find(id); ++n) id = fmt::format("{}#{}", name, n);
  return id;
}

std::string unknownId(const fault::ActiveFaults& faults, std::string_view id) {
  std::vector<std::string_view> known;
  for (const fault::ArmedFault& fault : faults.armed()) known.push_back(fault.id);
  if (known.empty()) return fmt::format("there is no fault '{}': none has been armed", id);
  return unit::unknownWord("fault of this run", id, known);
}

}  // namespace

Run::Run(const scenario::Setup& setup)
    : unit_(setup.parameters, setup.route, setup.start),
      faults_(setup.faults),
      timeline_(setup.timeline) {}

void Run::addWitness(Witness& witness) { witnesses_.push_back(&witness); }

void Run::showFrame() {
  if (shown_tick_ == tick()) return;
  shown_tick_ = tick();
  for (Witness* witness : witnesses_) witness->seeFrame(unit_.frame());
}

void Run::begin() {
  showFrame();
  showHash();
}

Run Run::copyAlone() const {
  Run copy = *this;
  copy.witnesses_.clear();
  return copy;
}

std::uint64_t Run::hash() const {
  quantity::Fnv1a64 hash;
  hash.addInt(unit_.hash());
  faults_.addTo(hash);
  timeline_.addTo(hash);
  return hash.value();
}

void Run::showHash() {
  if (witnesses_.empty()) return;
  const StateHash state{tick(), hash()};
  for (Witness* witness : witnesses_) witness->seeHash(state);
}

Taken Run::take(const unit::Action& action) {
  fault_events_.clear();
  return take(action, false);
}

Taken Run::take(const unit::Action& action, bool scheduled) {
  Taken taken;
  // What is done is what its text says, since the text is what is recorded.
  auto written = unit::parseAction(unit::toText(action));
  if (auto* fault = std::get_if<std::string>(&written)) {
    taken.fault = std::move(*fault);
    return taken;
  }
  TimedAction timed{tick(), number_ + 1, scheduled, std::get<unit::Action>(std::move(written))};
  taken.fault = scenario::findActionFault(unit_, timed.action);
  if (taken.fault) return taken;
  // What the scenario does it does in every run, whatever people have done to its faults before.
  const auto wrong = findFaultFault(timed.action);
  if (wrong && !scheduled) {
    taken.fault = wrong;
    return taken;
  }
  showFrame();
  taken.number = ++number_;
  for (Witness* witness : witnesses_) witness->seeAction(timed);
  taken.outcome = wrong ? unit::ActionOutcome{false, *wrong, ""} : apply(timed.action);
  if (scheduled) last_scheduled_.push_back(std::move(timed));
  return taken;
}

std::optional<std::string> Run::findFaultFault(const unit::Action& action) const {
  if (action.verb == "arm") {
    const auto words = std::get<scenario::ArmWords>(scenario::readArm(action));
    if (words.id.empty() || !faults_.find(words.id)) return std::nullopt;
    return "the id '" + words.id + "' is taken by another fault";
  }
  if (action.verb != "clear") return std::nullopt;
  const std::string id = scenario::idOfClear(action);
  const auto at = faults_.find(id);
  if (!at) return unknownId(faults_, id);
  if (faults_.stage(*at) != fault::FaultStage::kCleared) return std::nullopt;
  return "'" + id + "' is put right already";
}

unit::ActionOutcome Run::apply(const unit::Action& action) {
  if (action.verb == "arm") arm(action);
  if (action.verb == "clear") clear(action);
  return unit_.apply(action);
}

void Run::arm(const unit::Action& action) {
  const auto words = std::get<scenario::ArmWords>(scenario::readArm(action));
  fault::ArmedFault fault;
  fault.id = words.id.empty() ? findFreeId(faults_, words.spec->name) : words.id;
  fault.spec = words.spec;
  fault.size = words.size;
  fault.ramp_ticks = words.ramp_ticks;
  fault.from.when = words.when;
  fault.from.ticks = words.when ? words.after_ticks : tick() + words.after_ticks;
  armed_by_[fault.id] = action.actor;
  note({tick(), fault.id, fault.spec, fault.size, fault::FaultStage::kArmed});
  faults_.arm(std::move(fault));
}

void Run::clear(const unit::Action& action) {
  const std::string id = scenario::idOfClear(action);
  cleared_by_[id] = action.actor;
  faults_.clear(id);
}

unit::Actor Run::armerOf(const std::string& id) const {
  const auto found = armed_by_.find(id);
  return found == armed_by_.end() ? unit::Actor::kScenario : found->second;
}

void Run::note(const fault::FaultChange& change) {
  unit::Actor by = armerOf(change.id);
  if (change.stage == fault::FaultStage::kCleared) {
    const auto found = cleared_by_.find(change.id);
    by = found == cleared_by_.end() ? unit::Actor::kScenario : found->second;
  }
  fault_events_.push_back({change.tick, change.id, change.spec, change.size, change.stage, by});
}

// The words of a scenario are checked when it is read.
void Run::takeScheduled(const unit::Action& action) {
  if (const Taken taken = take(action, true); taken.fault)
    throw std::logic_error("an action of the scenario: " + *taken.fault);
}

void Run::advance() {
  last_scheduled_.clear();
  fault_events_.clear();
  for (const unit::Action& action : timeline_.advance(unit_.frame())) takeScheduled(action);
  for (const fault::FaultChange& change : faults_.advance(unit_)) {
    // A fault of the file is called by its name alone, as recordings have it since the first.
    takeScheduled(
        remarkOf(change, armed_by_.contains(change.id) && change.id != change.spec->name));
    note(change);
  }
  unit_.advance();
  if (tick() % kFrameTicks == 0) showFrame();
  if (tick() % kHashTicks == 0) showHash();
}

}  // namespace cabwright::session
