// SPDX-License-Identifier: GPL-3.0-or-later
// Everything heard, in words, for who cannot or does not want to hear it.
//
// The words describe and never name a cause: what a sound means is for the trainee to find out.
#pragma once

#include <QString>
#include <vector>

#include "hearing/listener.h"
#include "hearing/scene.h"

namespace cabwright::hearing {

enum class HeardWho {
  kGuard,
  kEngine1,
  kEngine2,
  kAir,
  kHorn,
  kFireBell,
  kBelow,  ///< beneath the floor: thump, rattle
  kWheels,
  kNearby,  ///< click
};

/// What is drawn beside the words.
enum class HeardTrace {
  kNone,    ///< a flat line: nothing is heard
  kEngine,  ///< bars, one for each firing
  kBell,    ///< rings, one for each stroke
  kAir,     ///< a rough line
  kTone,    ///< a smooth wave
  kBlows,   ///< single bars: thump, rattle, joints, click
};

struct HeardLine {
  HeardWho who;
  HeardTrace trace;
  QString name;          ///< who, in words: "Engine 1"
  QString words;         ///< "even, idling"
  double level = 0.0;    ///< how loud, 0..1: height of the trace
  double rate_hz = 0.0;  ///< of firings, blows or strokes; 0 where it has no sense
};

/// The guard, both engines and the air always have their line, in this order; the others follow in
/// the order of HeardWho while they are heard.
[[nodiscard]] std::vector<HeardLine> calcHeardLines(const HeardScene& scene,
                                                    const HeardTrend& trend);

}  // namespace cabwright::hearing
