// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/ink.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace cabwright::drawing {
namespace {

struct Pair {
  QRgb day, night;
};

// In the order of Tone.
constexpr std::array<Pair, 24> kTones{{
    {0x00000000, 0x00000000}, {0xFFF3EEE2, 0xFF1A2127}, {0xFFFBF8F1, 0xFF222B32},
    {0xFFE4DDCC, 0xFF2E3942}, {0xFFCFC7B6, 0xFF37434C}, {0xFF20262E, 0xFFE9E4D8},
    {0xFF565B62, 0xFFAEB3B5}, {0xFF847D70, 0xFF7C878F}, {0xFF6A3D9E, 0xFFC9A9F8},
    {0xFFE6DCEC, 0xFF372F4A}, {0xFF20262E, 0xFF0B0F13}, {0xFFFF5B4F, 0xFFFF6A5E},
    {0xFFFFC93C, 0xFFFFD04A}, {0xFF3CC878, 0xFF4CD685}, {0xFF62ADFF, 0xFF74B8FF},
    {0xFFFBF6E9, 0xFFFFF9EA}, {0xFF1D6A3F, 0xFF7FD8A2}, {0xFFA51C1C, 0xFFFF9087},
    {0xFF785300, 0xFFF0C24E}, {0xFF1B5993, 0xFF8FC3FF}, {0xFF0072B2, 0xFF56B4E9},
    {0xFFC24F00, 0xFFE69F00}, {0xFF00785A, 0xFF2FB98F}, {0xFF7A4A86, 0xFFCC79A7},
}};

double linear(double channel) {
  return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& c) {
  return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

}  // namespace

QColor colorOf(Theme theme, Tone tone) {
  const Pair& pair = kTones[static_cast<std::size_t>(tone)];
  return QColor::fromRgba(theme == Theme::kDay ? pair.day : pair.night);
}

double calcContrast(const QColor& a, const QColor& b) {
  const double la = luminance(a), lb = luminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

}  // namespace cabwright::drawing
