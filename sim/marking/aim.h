// SPDX-License-Identifier: GPL-3.0-or-later
// What an exercise is for: without having come so far it is not passed, however little was broken
// on the way.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>

#include "unit/condition.h"

namespace cabwright::marking {

struct Aim {
  unit::Condition condition;  ///< has to come true at some time of the run
  std::string words;          ///< what it is, for the sheet; the condition's text if empty
};

/// The aim and whether the run came to it.
struct AimResult {
  std::string words;
  std::optional<std::int64_t> reached_at;  ///< tick
};

/// Listens to the same Frames as the Marker.
class AimListener {
 public:
  explicit AimListener(std::optional<Aim> aim) : aim_(std::move(aim)) {}
  void seeFrame(const unit::Frame& frame) {
    if (aim_ && !reached_at_ && aim_->condition.holds(frame)) reached_at_ = frame.tick;
  }
  /// Nothing if the exercise has no aim.
  [[nodiscard]] std::optional<AimResult> result() const {
    if (!aim_) return std::nullopt;
    std::string words = aim_->words.empty() ? "'" + aim_->condition.text() + "'" : aim_->words;
    if (words.back() == '.') words.pop_back();  // it comes to stand inside sentences
    return AimResult{std::move(words), reached_at_};
  }

 private:
  std::optional<Aim> aim_;
  std::optional<std::int64_t> reached_at_;
};

}  // namespace cabwright::marking
