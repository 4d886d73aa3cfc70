// SPDX-License-Identifier: GPL-3.0-or-later
// What a session file holds, as plain values, and who may look at a run without changing it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "scenario/scenario.h"
#include "unit/action.h"
#include "unit/frame.h"

namespace cabwright::session {

inline constexpr std::int64_t kTicksPerSecond = 100;
/// Frames are recorded ten times a second, and once more right before each action.
inline constexpr std::int64_t kFrameTicks = 10;
inline constexpr std::int64_t kHashTicks = kTicksPerSecond;

/// An action with its place in the run. The order number counts all actions of the run from 1, so
/// that those of one tick keep their order.
struct TimedAction {
  std::int64_t tick = 0;
  std::int64_t number = 0;
  /// Made by the scenario's own timeline: a replay makes it again by itself.
  bool scheduled = false;
  unit::Action action;
  bool operator==(const TimedAction&) const = default;
};

/// Hash of the whole state of the world after this tick.
struct StateHash {
  std::int64_t tick = 0;
  std::uint64_t hash = 0;
  bool operator==(const StateHash&) const = default;
};

/// Who is shown a run as it goes: recorder, marker, comparer. Has no way to change it.
/// The order of the calls is part of the record: within a tick, frame before action, and the hash
/// after the frame.
class Witness {
 public:
  virtual ~Witness() = default;
  virtual void seeFrame(const unit::Frame& frame) = 0;
  virtual void seeAction(const TimedAction& action) = 0;
  virtual void seeHash(const StateHash& hash) = 0;
};

/// The text of a file the run was made from, so that the session needs nothing but itself.
struct SourceText {
  std::string role;  ///< "scenario", "rules", "guide", "vehicle", "route", "script"
  std::string name;  ///< as the other texts refer to it
  std::string text;
  bool operator==(const SourceText&) const = default;
};

/// Who took part, by name. Kept in a table of its own, outside the chain of check values, so that
/// it can be erased on request without harm to the rest; the chain holds a mark of each (schema.h),
/// so that another name is noticed.
struct Person {
  std::string role;  ///< "trainee", "instructor", "assessor"
  std::string name;
  bool operator==(const Person&) const = default;
};

struct SessionHeader {
  std::string session_id;       ///< random UUID, RFC 9562 version 4
  std::string program_version;  ///< of the program that recorded it
  std::string started_utc;      ///< RFC 3339, seconds, UTC
  std::string scenario;         ///< its title
  std::uint64_t seed = 0;       ///< that drew the hidden conditions
  /// Chosen for this run instead of the scenario's own; empty: the scenario's.
  std::optional<scenario::Mode> mode;
  /// The mode it is run in, chosen or not; empty in a file of format 1.
  std::optional<scenario::Mode> run_mode;
  /// What the trainee signed on with. It names nobody by itself: which number is whose is kept
  /// elsewhere, and it stays when the names are erased. Empty: nobody signed on with one.
  std::string trainee_number;
  std::vector<SourceText> sources;
  std::vector<Person> people;
  bool operator==(const SessionHeader&) const = default;
};

/// The trainee's name; empty: none was given, or it was erased.
[[nodiscard]] std::string traineeName(const SessionHeader& header);
/// Whoever signs on as the trainee: by name, or by number where there is none. A name that is
/// empty: nobody knows who it was.
[[nodiscard]] Person traineePerson(const SessionHeader& header);
/// The trainee as a sheet has them: "07, P. Example"; the number or the name alone where there is
/// but one of them; empty without both.
[[nodiscard]] std::string traineeWords(const SessionHeader& header);
[[nodiscard]] std::string traineeWords(std::string_view number, std::string_view name);
/// Of all texts but scripts, 16 hexadecimal digits: what was set, not what was done.
[[nodiscard]] std::string calcScenarioHash(const std::vector<SourceText>& sources);

/// One line of the mark sheet as a row that can be queried; the sheet itself is kept whole.
struct VerdictRow {
  std::string rule;
  std::string verdict;
  std::int64_t tick = 0;
  std::optional<double> margin;
  std::string unit;
  std::string reason;
  bool operator==(const VerdictRow&) const = default;
};

/// How a run ended. A session without it was cut off.
struct Closing {
  std::int64_t tick = 0;
  std::string reason;  ///< "finished", "stopped by a signal" ...
  bool passed = false;
  std::string sheet_json;
  std::vector<VerdictRow> verdicts;
  bool operator==(const Closing&) const = default;
};

/// A new random session id, and the time now: the only two things in a session that are not a
/// consequence of its scenario and actions.
[[nodiscard]] std::string makeSessionId();
[[nodiscard]] std::string currentUtc();

}  // namespace cabwright::session
