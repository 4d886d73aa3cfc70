// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/run.h"

#include <fmt/format.h>

#include <stdexcept>
#include <utility>
#include <variant>

#include "fault/fault.h"
#include "quantity/hash.h"

namespace cabwright::session {

namespace {

// So that the record says when a fault came and went; it changes nothing by itself.
unit::Action remarkOf(const fault::FaultChange& change) {
  const std::string size = change.spec->size.exists()
                               ? fmt::format(" ({:g} {})", change.size, change.spec->size.unit)
                               : std::string();
  return {unit::Actor::kScenario, "remark", "fault",
          fmt::format("{}{} {}", change.spec->name, size, fault::wordOf(change.stage))};
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

Taken Run::take(const unit::Action& action) { return take(action, false); }

Taken Run::take(const unit::Action& action, bool scheduled) {
  Taken taken;
  // What is done is what its text says, since the text is what is recorded.
  auto written = unit::parseAction(unit::toText(action));
  if (auto* fault = std::get_if<std::string>(&written)) {
    taken.fault = std::move(*fault);
    return taken;
  }
  TimedAction timed{tick(), number_ + 1, scheduled, std::get<unit::Action>(std::move(written))};
  taken.fault = unit_.findActionFault(timed.action);
  if (taken.fault) return taken;
  showFrame();
  taken.number = ++number_;
  for (Witness* witness : witnesses_) witness->seeAction(timed);
  taken.outcome = unit_.apply(timed.action);
  if (scheduled) last_scheduled_.push_back(std::move(timed));
  return taken;
}

// The words of a scenario are checked when it is read.
void Run::takeScheduled(const unit::Action& action) {
  if (const Taken taken = take(action, true); taken.fault)
    throw std::logic_error("an action of the scenario: " + *taken.fault);
}

void Run::advance() {
  last_scheduled_.clear();
  for (const unit::Action& action : timeline_.advance(unit_.frame())) takeScheduled(action);
  for (const fault::FaultChange& change : faults_.advance(unit_)) takeScheduled(remarkOf(change));
  unit_.advance();
  if (tick() % kFrameTicks == 0) showFrame();
  if (tick() % kHashTicks == 0) showHash();
}

}  // namespace cabwright::session
