// SPDX-License-Identifier: GPL-3.0-or-later
// What happened in a run that goes on, for the axis of time: what people did, verdicts as they
// fell, marks and remarks, and how long each fault has been there.
#pragma once

#include <QString>
#include <cstdint>
#include <optional>
#include <vector>

#include "session/live_run.h"

namespace cabwright::desk {

enum class EventKind : std::uint8_t {
  kAct,        ///< of the trainee
  kOther,      ///< done by somebody else: guard, signaller, instructor, helper
  kMark,       ///< a moment to come back to
  kRemark,     ///< of the instructor
  kIntervene,  ///< the instructor stepped in
  kMet,        ///< a rule was kept
  kForgiven,   ///< broken inside its tolerance
  kBroken,
};

struct RunEvent {
  std::int64_t tick = 0;
  EventKind kind = EventKind::kAct;
  QString words;          ///< what was done, the title of the rule, the remark
  bool critical = false;  ///< of a broken rule
};

/// A fault from its coming to its going.
struct FaultStay {
  std::string id;
  QString name;
  std::int64_t from = 0;
  std::optional<std::int64_t> to;  ///< empty: it is there
  bool growing = false;
};

class RunEvents {
 public:
  void clear();
  /// Takes what is new. True: something was.
  bool update(const session::LiveRun& run);

  /// In order of time.
  [[nodiscard]] const std::vector<RunEvent>& events() const { return events_; }
  /// In the order in which they came.
  [[nodiscard]] const std::vector<FaultStay>& faults() const { return faults_; }

 private:
  bool updateFaults(const session::LiveRun& run);
  void add(RunEvent event);
  std::size_t seen_actions_ = 0, seen_marks_ = 0, seen_faults_ = 0;
  std::vector<RunEvent> events_;
  std::vector<FaultStay> faults_;
};

}  // namespace cabwright::desk
