// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/comparer.h"

#include <fmt/format.h>

#include <algorithm>
#include <bit>

namespace cabwright::session {
namespace {

std::string describe(const unit::Frame&) { return "a frame"; }
std::string describe(const TimedAction& timed) {
  return fmt::format("\"{}\" at tick {}", unit::toText(timed.action), timed.tick);
}
std::string describe(const StateHash& state) { return fmt::format("{:016x}", state.hash); }

std::string describe(const std::optional<RecordedEvent>& event) {
  if (!event) return "nothing";
  return std::visit([](const auto& e) { return describe(e); }, *event);
}

std::int64_t tickOf(const RecordedEvent& event) {
  return std::visit([](const auto& e) { return e.tick; }, event);
}

// Enough digits to tell any two values of single precision apart.
std::string toDigits(float value) { return fmt::format("{:.9g}", value); }

}  // namespace

Comparer::Comparer(const Store& store) : reader_(store.read()) {
  compared_.fill(true);
  for (const unit::Signal signal : store.missingSignals())
    compared_[static_cast<std::size_t>(signal)] = false;
}

// Empty when there is nothing left to compare: the recording ended, or a difference was found.
std::optional<RecordedEvent> Comparer::nextRecorded() {
  if (ended_ || difference_) return std::nullopt;
  auto event = reader_.next();
  ended_ = !event.has_value();
  return event;
}

void Comparer::note(Difference difference) {
  if (!difference_) difference_ = std::move(difference);
}

void Comparer::seeFrame(const unit::Frame& frame) {
  const auto event = nextRecorded();
  if (!event) return;
  const auto* recorded = std::get_if<unit::Frame>(&*event);
  if (recorded == nullptr || recorded->tick != frame.tick) {
    note({std::min(frame.tick, tickOf(*event)), "sequence", describe(event), describe(frame), 0});
    return;
  }
  ++frames_;
  Difference difference{frame.tick, {}, {}, {}, 0};
  for (std::size_t i = 0; i < unit::kSignalCount; ++i) {
    const float was = recorded->value[i];
    const float is = frame.value[i];
    const bool same = std::bit_cast<std::uint32_t>(was) == std::bit_cast<std::uint32_t>(is);
    if (same || !compared_[i]) continue;
    if (!difference.quantity.empty()) {
      ++difference.others;
      continue;
    }
    difference.quantity = unit::signalInfo(static_cast<unit::Signal>(i)).name;
    difference.recorded = toDigits(was);
    difference.replayed = toDigits(is);
  }
  if (!difference.quantity.empty()) note(std::move(difference));
}

void Comparer::seeAction(const TimedAction& action) {
  const auto event = nextRecorded();
  if (!event) return;
  const auto* recorded = std::get_if<TimedAction>(&*event);
  if (recorded != nullptr && *recorded == action) {
    ++actions_;
    return;
  }
  note({std::min(action.tick, tickOf(*event)), fmt::format("action {}", action.number),
        describe(event), describe(action), 0});
}

void Comparer::seeHash(const StateHash& hash) {
  const auto event = nextRecorded();
  if (!event) return;
  const auto* recorded = std::get_if<StateHash>(&*event);
  if (recorded != nullptr && *recorded == hash) {
    ++hashes_;
    return;
  }
  note({std::min(hash.tick, tickOf(*event)), "state", describe(event), describe(hash), 0});
}

void Comparer::finish() {
  const auto event = nextRecorded();
  if (event) note({tickOf(*event), "length", describe(event), "nothing", 0});
}

}  // namespace cabwright::session
