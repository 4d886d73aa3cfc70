// SPDX-License-Identifier: GPL-3.0-or-later
// When something happens by itself: at a time of the run, or so long after a condition first holds.
#pragma once

#include <cstdint>
#include <optional>

#include "quantity/hash.h"
#include "unit/condition.h"
#include "unit/frame.h"

namespace cabwright::fault {

struct Moment {
  std::optional<unit::Condition> when;  ///< none: counted from the start of the run
  std::int64_t ticks = 0;               ///< so long after that, 0 or more
};

/// Waits for a moment. Once it has come it stays; a condition that lapses during the delay does not
/// take it back.
class MomentWatch {
 public:
  /// True from the first Frame on at which the moment has come. Frames in order of time.
  bool advance(const Moment& moment, const unit::Frame& frame);
  [[nodiscard]] bool hasCome() const { return come_; }
  void addTo(quantity::Fnv1a64& hash) const;

 private:
  std::optional<std::int64_t> held_at_;
  bool come_ = false;
};

}  // namespace cabwright::fault
