// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a session file: the way for marking again, replaying and looking at what was recorded.
// The file is taken as hostile: whatever is in it, reading gives values that were checked or a
// SessionError of one line, never a crash, and never changes the file.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "session/record.h"
#include "session/review_row.h"
#include "session/seal.h"

namespace cabwright::session {

using RecordedEvent = std::variant<unit::Frame, TimedAction, StateHash>;

/// Where a chain ends: how many rows there are, and its value after the last.
struct ChainEnd {
  std::int64_t count = 0;
  Digest last{};  ///< all zero in format 1
};

class Store {
 public:
  /// Opens and checks: a regular file of sane size, SQLite, ours by its application id, of a known
  /// version, quick_check, exactly the known schema, signals known to this program. Throws
  /// SessionError with the first of these that fails.
  explicit Store(const std::filesystem::path& file);
  ~Store();
  Store(Store&&) noexcept;
  Store& operator=(Store&&) noexcept;

  [[nodiscard]] const SessionHeader& header() const;
  /// Empty when the session was cut off.
  [[nodiscard]] const std::optional<Closing>& closing() const;
  [[nodiscard]] const std::string& name() const;
  [[nodiscard]] int formatVersion() const;
  /// How many of those who took part have been erased from the table of people.
  [[nodiscard]] std::size_t erasedPeople() const;

  /// The seal and what was added after it, as they stand: verifySession() says whether they hold.
  [[nodiscard]] const std::optional<Seal>& seal() const;
  [[nodiscard]] const std::vector<ReviewRow>& review() const;

  /// Signals this program knows and the recording does not have: their value is 0 in every frame.
  [[nodiscard]] const std::vector<unit::Signal>& missingSignals() const;

  /// Reads all events in the order in which they were seen, checking the chain on the way.
  class Reader {
   public:
    /// Empty after the last event. Throws SessionError at the first row that does not fit: damaged,
    /// missing, doubled, out of order; the events before it are good.
    [[nodiscard]] std::optional<RecordedEvent> next();
    /// After the row given last, and after the end that of the closing.
    [[nodiscard]] ChainEnd chainEnd() const;
    ~Reader();
    Reader(Reader&&) noexcept;
    Reader& operator=(Reader&&) noexcept;

   private:
    friend class Store;
    struct Impl;
    explicit Reader(std::unique_ptr<Impl> impl);
    std::unique_ptr<Impl> impl_;
  };
  [[nodiscard]] Reader read() const;

  /// Shows a witness the whole session. Throws as Reader::next.
  void show(Witness& witness) const;

  /// Reads all of it for its chain alone. Throws as Reader::next.
  [[nodiscard]] ChainEnd readChainEnd() const;

  /// All actions in order. Throws as Reader::next.
  [[nodiscard]] std::vector<TimedAction> readActions() const;

  /// The last frame at or before this tick; empty before the first. Reads from the key frame
  /// before it, without the chain.
  [[nodiscard]] std::optional<unit::Frame> findFrame(std::int64_t tick) const;

  /// Tick of the last recorded event, -1 without any.
  [[nodiscard]] std::int64_t lastTick() const;

 private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace cabwright::session
