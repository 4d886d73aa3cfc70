// SPDX-License-Identifier: GPL-3.0-or-later
// A signal lamp with its engraved word. Lit and unlit differ in shape, not in colour alone: rays
// and a dark bezel against a hatched lens.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QString>
#include <cstdint>

#include "drawing/pen.h"

namespace cabwright::drawing {

/// Colours and what they mean: danger, abnormal, as it should be, must be done, no meaning.
enum class LampColor : std::uint8_t { kRed, kYellow, kGreen, kBlue, kWhite };

struct LampLook {
  LampColor color = LampColor::kWhite;
  bool lit = false;
  double brightness = 1;  ///< 0 to 1 of a lit one: rays grow shorter and the lens duller
  bool mixed = false;     ///< colours stand side by side: the lens carries the sign of its colour
  bool focus = false;
  bool out_of_reach = false;
};

/// `r`: radius of the bezel, u. The word's baseline is r + 29 below the centre; no word: empty.
void paintLamp(Pen& pen, QPointF centre, const LampLook& look, const QString& word, double r = 16);

/// All that it may paint on, with rays, focus ring and word.
[[nodiscard]] QRectF lampBounds(QPointF centre, const QString& word, double r = 16);

[[nodiscard]] Tone toneOf(LampColor color);

}  // namespace cabwright::drawing
