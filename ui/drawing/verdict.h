// SPDX-License-Identifier: GPL-3.0-or-later
// Signs of a judgement, drawn and not typed: each has a shape of its own besides its colour.
#pragma once

#include <QPointF>
#include <cstdint>

#include "drawing/pen.h"

namespace cabwright::drawing {

enum class VerdictSign : std::uint8_t {
  kGood,    ///< ring and tick
  kDefect,  ///< square and cross
  kUnsure,  ///< triangle and stroke
  kSeen,    ///< dashed ring: seen, not judged
  kNone,    ///< nothing is drawn
};

/// `on` is the tone it stands on.
void paintVerdict(Pen& pen, QPointF centre, VerdictSign sign, double r = 9.5,
                  Tone on = Tone::kFace);

/// Tone of the words that go with it.
[[nodiscard]] Tone toneOf(VerdictSign sign);

}  // namespace cabwright::drawing
