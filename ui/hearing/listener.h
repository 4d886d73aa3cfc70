// SPDX-License-Identifier: GPL-3.0-or-later
// What an ear makes of some seconds of scenes: whether a note rises, falls or hunts, how many
// strokes there were, what happened just now.
#pragma once

#include <array>
#include <deque>

#include "hearing/scene.h"

namespace cabwright::hearing {

enum class NoteTrend { kSteady, kRising, kFalling, kHunting };

/// What was heard over the last seconds.
struct HeardTrend {
  std::array<NoteTrend, 2> note{};
  int strokes = 0;  ///< of the bell, of the code that is being given; 0: none is
  bool thump_just_now = false;
  bool click_just_now = false;
  bool operator==(const HeardTrend&) const = default;
};

class Listener {
 public:
  /// A scene at a time of the run, s, never less than the one before; a time that goes back (a
  /// replay, a mark gone back to) makes the listener begin anew.
  void hear(const HeardScene& scene, double time_s);
  [[nodiscard]] const HeardTrend& trend() const { return trend_; }

  /// A note is judged over this time, s.
  static constexpr double kNoteS = 4.0;
  /// What happened is "just now" for this long, s.
  static constexpr double kJustNowS = 2.0;
  /// A pause after which strokes belong to another code, s.
  static constexpr double kCodeS = 3.0;

 private:
  struct Heard {
    double time_s, rpm;
  };
  void hearNote(std::size_t n, double rpm, double time_s);
  void hearEvents(const HeardScene& scene, double time_s);
  [[nodiscard]] NoteTrend calcNoteTrend(std::size_t n) const;

  std::array<std::deque<Heard>, 2> notes_;
  HeardTrend trend_;
  HeardScene before_;
  double time_s_ = -1.0, thump_s_ = -1e9, click_s_ = -1e9, stroke_s_ = -1e9;
};

}  // namespace cabwright::hearing
