// SPDX-License-Identifier: GPL-3.0-or-later
// Faults at work in a run: each waits for its moment, grows if it has a ramp, and goes again.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "fault/fault.h"
#include "fault/moment.h"
#include "unit/unit.h"

namespace cabwright::fault {

/// A fault with its size and moments. `id` tells it from others; of one spec there may be several.
struct ArmedFault {
  std::string id;
  const FaultSpec* spec = nullptr;  ///< of the catalogue
  double size = 0;
  Moment from;                  ///< {} : from the start
  std::int64_t ramp_ticks = 0;  ///< time to grow from nothing to its size
  std::optional<Moment> until;  ///< its condition is asked only once the fault is there; its ticks
                                ///< count from the start of the run, or after the condition
};

enum class FaultStage : std::uint8_t { kArmed, kGrowing, kThere, kCleared };
[[nodiscard]] std::string_view wordOf(FaultStage stage);

/// A change of stage, for the record and the instructor.
struct FaultChange {
  std::int64_t tick = 0;
  std::string id;
  const FaultSpec* spec = nullptr;
  double size = 0;
  FaultStage stage = FaultStage::kArmed;
};

/// Keeps to the numbers its faults touch and leaves all others alone. What somebody else does to
/// such a number meanwhile (a condition put in, a fault by hand) is kept beneath. When no fault is
/// left on a number it is back at what it would have been, to the bit.
/// A value: a copy goes on alike.
class ActiveFaults {
 public:
  ActiveFaults() = default;
  explicit ActiveFaults(std::vector<ArmedFault> armed);

  /// Puts one more in while the run goes on; its moment counts from the start of the run like the
  /// others', its condition is asked from now on. Throws std::invalid_argument if the id is taken,
  /// there is no spec, or the size is out of range.
  void arm(ArmedFault fault);
  /// Puts it right now (at the next advance). False if there is none of that id still at work.
  bool clear(std::string_view id);

  /// The place of a fault in armed(), whatever its stage.
  [[nodiscard]] std::optional<std::size_t> find(std::string_view id) const;

  /// To be called right before each Unit::advance(), with the Frame of the last tick in the unit.
  /// Returns what changed its stage.
  std::vector<FaultChange> advance(unit::Unit& unit);

  [[nodiscard]] const std::vector<ArmedFault>& armed() const { return armed_; }
  [[nodiscard]] FaultStage stage(std::size_t k) const { return states_[k].stage; }
  /// How much of its size is there: 0 to 1.
  [[nodiscard]] double share(std::size_t k) const { return states_[k].share; }

  /// Adds all that decides what comes next to a hash of the world.
  void addTo(quantity::Fnv1a64& hash) const;

 private:
  struct State {
    MomentWatch from, until;
    FaultStage stage = FaultStage::kArmed;
    bool clear_wanted = false;
    bool late = false;       ///< armed while the run went on, so that no file tells what it is
    std::int64_t since = 0;  ///< tick at which it came
    double share = 0;
  };
  struct Touched {
    ParameterRef parameter;
    double sound = 0;    ///< as it was when the first fault came to it
    double base = 0;     ///< as it would be without these faults
    double written = 0;  ///< as last put
  };
  void add(ArmedFault fault, bool late);
  bool advanceOne(std::size_t k, unit::Unit& unit, std::vector<FaultChange>& changes);
  void doActs(std::size_t k, unit::Unit& unit, bool come) const;
  void writeNumbers(unit::Unit& unit);
  [[nodiscard]] double combine(const Touched& t) const;
  Touched& touch(const ParameterRef& parameter, const unit::Unit& unit);

  std::vector<ArmedFault> armed_;
  std::vector<State> states_;
  std::vector<Touched> touched_;  // by name
};

}  // namespace cabwright::fault
