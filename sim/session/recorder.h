// SPDX-License-Identifier: GPL-3.0-or-later
// Writes a session file while the run goes on, with a thread of its own.
//
// What a killed process loses: at most one second of session time, at any speed of the run, and
// when the run keeps real time at most 0.3 s of the clock. The run's thread hands values over and
// goes on; the writer commits as soon as 0.4 s of session time lie waiting, and whatever waits
// every 250 ms of the clock. The run is made to wait before it would get more than 0.9 s ahead of
// the last commit (frames are 0.1 s apart, hence one second), so a fast headless run is as safe as
// a live one. A commit is one write to the journal (WAL, synchronous = NORMAL): it outlives the
// process. When the power goes, the operating system may still lose what it had not put on the
// disk; the file opens all the same.
#pragma once

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

#include "session/record.h"

namespace cabwright::session {

struct RecorderOptions {
  std::int64_t size_limit_bytes = 0;  ///< 0: as much as the disk holds
  std::chrono::milliseconds commit_every{250};
  /// Seal the session when it ends (seal.h). One that is run in assessment always is.
  bool seals = false;
  /// Where the station's key is kept; empty: the user's data folder (signing_key.h).
  std::filesystem::path key_folder{};
};

class Recorder final : public Witness {
 public:
  /// Makes the file, which must not exist yet. It appears under its name only when it is complete
  /// and opens; a process killed before that leaves no session, and there is none to lose.
  /// Throws SessionError: the file exists, the folder is missing or cannot be written, no room; or
  /// it is to be sealed and there is no key to do it with.
  Recorder(const std::filesystem::path& file, const SessionHeader& header,
           const RecorderOptions& options = {});
  /// Without a close(), writes what is waiting and leaves the session marked as cut off.
  ~Recorder() override;
  Recorder(const Recorder&) = delete;
  Recorder& operator=(const Recorder&) = delete;

  /// These never throw: a run does not stop because the disk is full. See findFault().
  void seeFrame(const unit::Frame& frame) override;
  void seeAction(const TimedAction& action) override;
  void seeHash(const StateHash& hash) override;

  /// Writes the end, folds the journal into the file, closes it and seals it if it is to be sealed:
  /// one file is left. Throws SessionError when anything could not be written, now or before; what
  /// was recorded is there all the same, and can be sealed later when only the seal is missing.
  void close(const Closing& closing);

  /// Why nothing is recorded any more, in one line; empty while all is well.
  [[nodiscard]] std::optional<std::string> findFault() const;

  /// Tick of the last event that is safe from the end of the process; -1 before the first.
  [[nodiscard]] std::int64_t committedTick() const;

 private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace cabwright::session
