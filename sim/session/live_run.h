// SPDX-License-Identifier: GPL-3.0-or-later
// A run somebody sits in: the world, its marking, its recording and what the charts afterwards
// need, started, led and ended together. Knows no clock: who keeps real time calls advance() by it.
//
// In assessment the world itself says no causes and skips no way (unit::World::assessment); that
// nothing is prompted, and that time passes only as fast as the clock, is up to who leads the run.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "marking/sheet.h"
#include "session/desk_actions.h"
#include "session/fault_log.h"
#include "session/guide_walk.h"
#include "session/marking_witness.h"
#include "session/recorder.h"
#include "session/run.h"
#include "session/signal_history.h"
#include "session/situation.h"

namespace cabwright::session {

struct LiveOptions {
  std::optional<scenario::Mode> mode;           ///< the scenario's own if empty
  std::optional<std::uint64_t> seed;            ///< likewise
  std::optional<std::filesystem::path> record;  ///< a file that does not exist yet
  /// What the trainee signed on with; stays in the file when names are erased. May be empty.
  std::string trainee_number;
  std::string trainee_name;  ///< may be empty; can be erased
  std::string program_version;
};

/// A moment of the run that somebody gave a name, to come back to.
struct TimeMark {
  std::int64_t tick = 0;
  std::int64_t number = 0;  ///< of the `mark` among all actions of the run
  std::string name;
  bool operator==(const TimeMark&) const = default;
};

/// Asked now and then while a run is brought to a moment; false gives it up.
using BringProgress = std::function<bool(std::int64_t tick)>;

class LiveRun;
/// A run brought back to a mark, or why there is none, in words.
struct GoneBack {
  std::unique_ptr<LiveRun> run;
  std::optional<std::string> fault;
};

class LiveRun {
 public:
  /// Throws std::invalid_argument when the situation cannot be run in that mode
  /// (scenario::findModeFault) or its setup makes no unit. Trouble with the file to record to does
  /// not throw: the run goes on unrecorded, see recordFault().
  LiveRun(const Situation& situation, const LiveOptions& options);
  /// A run that can only be looked at: it has ended, nothing can be done in it and nothing is kept
  /// of it; which moment of it is seen is said by showMoment(). `situation` is that of a recorded
  /// session, in the mode it was run in, and `header` its own. Throws as above.
  [[nodiscard]] static std::unique_ptr<LiveRun> toLookAt(const Situation& situation,
                                                         const SessionHeader& header);
  LiveRun(const LiveRun&) = delete;
  LiveRun& operator=(const LiveRun&) = delete;

  /// Does it now; after the end nothing is done and the fault says so, and likewise when an
  /// assessment refuses it (findDeskFault).
  Taken take(const unit::Action& action);
  /// So many ticks of 10 ms; less if the machine fails, none after the end. Gives how many.
  std::int64_t advance(std::int64_t ticks);

  [[nodiscard]] std::int64_t tick() const { return run_.tick(); }
  [[nodiscard]] const unit::Frame& frame() const { return run_.frame(); }
  [[nodiscard]] const unit::Unit& unit() const { return run_.unit(); }
  [[nodiscard]] const Run& run() const { return run_; }
  [[nodiscard]] bool failed() const { return run_.failed(); }
  [[nodiscard]] scenario::Mode mode() const { return situation_.loaded.scenario.mode; }
  [[nodiscard]] const Situation& situation() const { return situation_; }
  [[nodiscard]] const SessionHeader& header() const { return header_; }
  [[nodiscard]] const marking::Marker& marker() const { return marking_.marker(); }

  /// What people did, in order; what the scenario does by itself is not among it.
  [[nodiscard]] const std::vector<TimedAction>& actions() const { return actions_; }

  /// The sheet as it stands, head and all.
  [[nodiscard]] marking::MarkSheet sheet() const;

  /// Ends the run: marks what is pending, writes the end of the recording and closes it. Called
  /// again it gives the same sheet and does nothing.
  marking::MarkSheet finish(const std::string& reason);
  [[nodiscard]] bool isFinished() const { return finished_; }

  /// Why this run is not recorded, or not to its end, in one line; empty while all is well or
  /// nothing was to be recorded.
  [[nodiscard]] std::optional<std::string> recordFault() const;
  /// The file it is recorded to; empty: it is not.
  [[nodiscard]] const std::filesystem::path& recordFile() const { return record_file_; }

  /// A new run of the same seed brought to that tick (0 to tick()) by doing the same again up to
  /// it; what was done at that tick itself is not done. The new run says in its record, and so on
  /// its sheet, that it was taken again. Mode and trainee are this run's where the options leave
  /// them empty. Costs what the machine needs: some thousand times real time, so a second or two
  /// for half an hour. Empty in assessment, from it and into it, and when `progress` gives it up.
  [[nodiscard]] std::unique_ptr<LiveRun> takenAgainFrom(std::int64_t tick, LiveOptions options,
                                                        const BringProgress& progress = {}) const;

  // The instructor's desk.

  /// Why this must not be done here and now (session::findDeskFault); nothing where it may.
  [[nodiscard]] std::optional<std::string> findDeskFault(const unit::Action& action) const;
  /// The pace last asked for, 1 at the beginning. Who leads the run by the clock keeps to it.
  [[nodiscard]] const unit::Pace& pace() const { return desk_.pace; }
  /// The last intervention; the first one ended the unaided part.
  [[nodiscard]] std::optional<std::int64_t> intervenedAt() const { return desk_.intervened_at; }
  /// Every change of every fault so far, in order; those of the scenario's file are armed at 0.
  [[nodiscard]] const std::vector<FaultEvent>& faultLog() const { return desk_.fault_log; }
  /// All faults as they stand, those put right included, in the order they were armed.
  [[nodiscard]] std::vector<FaultNow> faultsNow() const;
  /// In order of time; of the same name there may be several.
  [[nodiscard]] const std::vector<TimeMark>& marks() const { return desk_.marks; }
  /// A new run brought to where this one stood right after the mark was set, to go on differently
  /// or alike: doing the same again from there gives the same to the last bit. The new run says in
  /// its record, and so on its sheet, that it was taken again and from which mark; marks set later
  /// are not among its own. Options and progress as for takenAgainFrom. Unrecorded it costs a copy;
  /// to be recorded it does the same again from the start, so that the file is whole. Refused in
  /// assessment, into it, and for a mark that this run does not have.
  [[nodiscard]] GoneBack goBackTo(const TimeMark& mark, LiveOptions options,
                                  const BringProgress& progress = {}) const;

  // A run to look at.

  [[nodiscard]] bool isToLookAt() const { return to_look_at_; }
  /// This moment from now on; only of a run to look at.
  void showMoment(Run moment);

  /// The scenario's guide, as far as it has been walked. Null in assessment, in a run to look at,
  /// and without one.
  [[nodiscard]] const GuideWalk* guide() const;

  /// chartSignals() ten times a second.
  [[nodiscard]] const SignalHistory& history() const { return history_; }
  /// What all gauges showed at a tick (0 to tick(), else the nearest of these): worked out again
  /// from a copy of the world no more than half a minute before it.
  [[nodiscard]] unit::Frame frameAt(std::int64_t tick) const;

 private:
  struct Parts;  // what has to be ready before the run itself
  explicit LiveRun(Parts parts);
  static Parts makeParts(const Situation& situation, const LiveOptions& options);
  /// What the desk has to know of the past, beside the actions themselves.
  struct Desk {
    unit::Pace pace = unit::kStandardPace;
    std::optional<std::int64_t> intervened_at;
    std::vector<FaultEvent> fault_log;
    std::vector<TimeMark> marks;
  };
  /// All that a run consists of at a mark, but for what has been there since the start.
  struct Moment {
    Run run;
    MarkingWitness marking;
    GuideWalk guide;
    Desk desk;
    std::size_t actions;
  };
  void addWitnesses();
  void keepCopy();
  void keepMoment();
  void noteFaults();
  void noteAction(const TimedAction& timed);
  /// What was done before `tick`; with a number, also at it, up to the action of that number.
  bool repeat(const LiveRun& before, std::int64_t tick, std::int64_t number,
              const BringProgress& progress);
  void resume(const LiveRun& before, const Moment& moment);
  [[nodiscard]] Situation originalSituation() const;
  void completeOptions(LiveOptions& options) const;

  Situation situation_;
  SessionHeader header_;
  MarkingWitness marking_;
  SignalHistory history_;
  GuideWalk guide_;
  std::unique_ptr<Recorder> recorder_;
  std::string record_fault_;
  std::filesystem::path record_file_;
  scenario::Mode own_mode_;  ///< of the scenario, whatever this run was made in
  Run run_;
  std::vector<TimedAction> actions_;
  std::map<std::int64_t, Run> copies_;  ///< before anything was done at that tick
  Desk desk_;
  std::map<std::int64_t, Moment> moments_;  ///< of the marks, by their number
  bool finished_ = false;
  bool to_look_at_ = false;
};

}  // namespace cabwright::session
