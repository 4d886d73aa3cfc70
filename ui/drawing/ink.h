// SPDX-License-Identifier: GPL-3.0-or-later
// Ink and paper: the colours of the live drawing by name, in a day and a night theme, and what
// contrast they have. Colour means state and nothing else; most of a sheet is ink on paper.
#pragma once

#include <QColor>
#include <cstdint>

namespace cabwright::drawing {

enum class Theme : std::uint8_t { kDay, kNight };

enum class Tone : std::uint8_t {
  kNone,    ///< nothing is drawn
  kPaper,   ///< the sheet
  kFace,    ///< dials, panels, the notebook
  kShade,   ///< fills far away
  kHair,    ///< separators that carry no meaning
  kInk,     ///< lines, words, needles
  kInk2,    ///< second words, leaders, hatching
  kRule,    ///< out of reach, ribs; marks only, never text
  kHand,    ///< your hand: what it holds, focus, where you are
  kWash,    ///< its tint
  kBezel,   ///< of a lit lamp
  kRed,     ///< lenses, never text: danger
  kYellow,  ///< abnormal
  kGreen,   ///< as it should be
  kBlue,    ///< must be done
  kWhite,   ///< no meaning of its own
  kGood,    ///< verdicts, words and signs
  kBad,     ///< also blocked, broken
  kDoubt,   ///< not sure, abnormal
  kInfo,    ///< advice
  kCurve1,  ///< curves, each also with a dash of its own
  kCurve2,
  kCurve3,
  kCurve4,
};

[[nodiscard]] QColor colorOf(Theme theme, Tone tone);

/// Contrast ratio of two opaque colours, 1 to 21 (WCAG 2.2, relative luminance of sRGB).
[[nodiscard]] double calcContrast(const QColor& a, const QColor& b);

/// Widths of lines, in sheet units.
inline constexpr double kHairline = 1.0, kThin = 1.3, kNorm = 1.9, kRing = 2.4, kBold = 2.8,
                        kFocus = 3.2, kHeavy = 4.6;
/// Sizes of type, in sheet units. Nothing on a sheet is smaller than kText.
inline constexpr double kText = 18.5, kName = 21.0, kFigure = 22.0, kResult = 26.0, kTitle = 32.0;

}  // namespace cabwright::drawing
