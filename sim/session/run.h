// SPDX-License-Identifier: GPL-3.0-or-later
// A run: the unit, the clock, the faults at work, what the scenario makes happen, and who watches.
//
// Between tick t and t + 1, in this order: actions of people (take), what the scenario makes happen
// at t, faults that come, grow or go, the unit's own 10 ms (these three are advance). Then the
// witnesses see a frame every tenth tick and a hash every hundredth. Before an action they see the
// frame of its tick, if they have not yet.
//
// Everything is a consequence of scenario, seed and the actions taken, so running it again from
// those gives the same run to the last bit.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "fault/active_faults.h"
#include "scenario/scenario.h"
#include "scenario/timeline.h"
#include "session/fault_log.h"
#include "session/record.h"
#include "unit/unit.h"

namespace cabwright::session {

/// What became of an action.
struct Taken {
  /// The words mean nothing here: what was found, what is allowed; or a fault to be armed or
  /// cleared has an id that is taken, or not there. Nothing was done or recorded.
  std::optional<std::string> fault;
  std::int64_t number = 0;  ///< its order number
  unit::ActionOutcome outcome;
};

class Run {
 public:
  /// Throws std::invalid_argument if the setup does not make a unit (a checked scenario always
  /// does).
  explicit Run(const scenario::Setup& setup);

  /// The witness must outlive the run, or the run must not go on. All are added before begin().
  void addWitness(Witness& witness);
  /// Shows the world as it is before anything happens: frame and hash of tick 0.
  void begin();

  /// Does it now, between two ticks, after all actions taken before it.
  Taken take(const unit::Action& action);
  /// One tick of 10 ms.
  void advance();

  [[nodiscard]] std::int64_t tick() const { return unit_.tick(); }
  [[nodiscard]] const unit::Frame& frame() const { return unit_.frame(); }
  [[nodiscard]] const unit::Unit& unit() const { return unit_; }
  /// All actions so far, the scenario's own included.
  [[nodiscard]] std::int64_t actionCount() const { return number_; }
  /// The machine could not be calculated any further (never expected): the last good state stands.
  [[nodiscard]] bool failed() const { return unit_.plant().failed(); }

  /// What the scenario did and which faults changed during the last advance().
  [[nodiscard]] const std::vector<TimedAction>& lastScheduled() const { return last_scheduled_; }
  [[nodiscard]] const fault::ActiveFaults& faults() const { return faults_; }
  /// Faults that changed their stage during the last take() or advance(), with who did it.
  [[nodiscard]] const std::vector<FaultEvent>& lastFaultEvents() const { return fault_events_; }
  /// Who armed the fault of this id.
  [[nodiscard]] unit::Actor armerOf(const std::string& id) const;

  /// The world as it stands, to go on by itself: no witness sees the copy.
  [[nodiscard]] Run copyAlone() const;

  /// Hash of all that decides what comes next, to the bit (FNV-1a 64).
  [[nodiscard]] std::uint64_t hash() const;

 private:
  Taken take(const unit::Action& action, bool scheduled);
  void takeScheduled(const unit::Action& action);
  /// Why a fault cannot be armed or cleared here and now.
  [[nodiscard]] std::optional<std::string> findFaultFault(const unit::Action& action) const;
  unit::ActionOutcome apply(const unit::Action& action);
  void arm(const unit::Action& action);
  void clear(const unit::Action& action);
  void note(const fault::FaultChange& change);
  void showHash();
  void showFrame();
  unit::Unit unit_;
  fault::ActiveFaults faults_;
  scenario::Timeline timeline_;
  std::vector<Witness*> witnesses_;
  std::vector<TimedAction> last_scheduled_;
  std::vector<FaultEvent> fault_events_;
  /// Of those armed, and of those cleared, by an action.
  std::map<std::string, unit::Actor> armed_by_, cleared_by_;
  std::int64_t number_ = 0;
  std::int64_t shown_tick_ = -1;
};

}  // namespace cabwright::session
