// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of a session file, in order, by one thread. Recorder adds the thread and the queue.
#pragma once

#include <array>
#include <cstdint>
#include <filesystem>
#include <optional>

#include "session/database.h"
#include "session/record.h"
#include "session/row_chain.h"

namespace cabwright::session {

/// All members throw SessionError; after one that threw, rollBack() leaves the file as it was at
/// the last commit and nothing more can be written.
class SessionWriter {
 public:
  /// size_limit_bytes 0: none.
  SessionWriter(const std::filesystem::path& file, const SessionHeader& header,
                std::int64_t size_limit_bytes);
  SessionWriter(const SessionWriter&) = delete;
  SessionWriter& operator=(const SessionWriter&) = delete;

  void begin();
  void write(const unit::Frame& frame);
  void write(const TimedAction& action);
  void write(const StateHash& hash);
  void commit();
  void rollBack() noexcept;

  /// Closing and verdicts, then one plain file without a journal, on the disk for good.
  void finish(const Closing& closing);

 private:
  void prepare();
  void writeClosing(const Closing& closing);
  RowChain chain_;  // before the file: writing its header starts the chain
  Database database_;
  std::optional<Statement> put_frame_, put_action_, put_state_;
  std::int64_t seq_ = 0;
  std::int64_t last_key_tick_ = 0;
  bool has_frame_ = false;
  std::array<float, unit::kSignalCount> last_values_{};
};

}  // namespace cabwright::session
