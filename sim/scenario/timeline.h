// SPDX-License-Identifier: GPL-3.0-or-later
// What guard, signaller and the world do by themselves in a scenario.
#pragma once

#include <vector>

#include "fault/moment.h"
#include "quantity/hash.h"
#include "unit/action.h"
#include "unit/frame.h"

namespace cabwright::scenario {

/// Done once, when its moment comes, one after the other in the same tick.
struct Happening {
  fault::Moment at;
  std::vector<unit::Action> actions;
};

/// A value: a copy goes on alike.
class Timeline {
 public:
  Timeline() = default;
  explicit Timeline(std::vector<Happening> happenings);
  /// What is due at this Frame, in the order of the file; to be applied before the next tick. Every
  /// tick, from the Frame before the first tick on.
  std::vector<unit::Action> advance(const unit::Frame& frame);
  [[nodiscard]] const std::vector<Happening>& happenings() const { return happenings_; }
  /// Whether that one has been done.
  [[nodiscard]] bool hasCome(std::size_t k) const { return watches_[k].hasCome(); }
  void addTo(quantity::Fnv1a64& hash) const;

 private:
  std::vector<Happening> happenings_;
  std::vector<fault::MomentWatch> watches_;
};

}  // namespace cabwright::scenario
