// SPDX-License-Identifier: GPL-3.0-or-later
// Holds a run against a recording of it, event by event and bit by bit.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>

#include "session/record.h"
#include "session/store.h"

namespace cabwright::session {

/// The first moment at which run and recording are not the same.
struct Difference {
  std::int64_t tick = 0;
  std::string quantity;  ///< a signal's name, "state", "action 12", "length"
  std::string recorded;
  std::string replayed;
  std::size_t others = 0;  ///< further signals that differ in the same frame
};

/// Shown a run, it reads along in the recording. Only signals that were recorded are compared.
class Comparer final : public Witness {
 public:
  /// The store must outlive the comparer.
  explicit Comparer(const Store& store);

  /// Each throws as Store::Reader::next.
  void seeFrame(const unit::Frame& frame) override;
  void seeAction(const TimedAction& action) override;
  void seeHash(const StateHash& hash) override;

  /// To be called when the run has come to the recording's last tick: whatever was recorded and
  /// did not happen is a difference as well. Throws as Store::Reader::next.
  void finish();

  [[nodiscard]] const std::optional<Difference>& difference() const { return difference_; }
  /// How much was compared and found the same.
  [[nodiscard]] std::int64_t frames() const { return frames_; }
  [[nodiscard]] std::int64_t hashes() const { return hashes_; }
  [[nodiscard]] std::int64_t actions() const { return actions_; }

 private:
  std::optional<RecordedEvent> nextRecorded();
  void note(Difference difference);
  Store::Reader reader_;
  std::array<bool, unit::kSignalCount> compared_{};
  std::optional<Difference> difference_;
  bool ended_ = false;
  std::int64_t frames_ = 0, hashes_ = 0, actions_ = 0;
};

}  // namespace cabwright::session
