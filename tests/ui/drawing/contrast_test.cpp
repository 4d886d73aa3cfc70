// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "drawing/ink.h"

namespace cabwright::drawing {
namespace {

constexpr double kWord = 4.5, kMark = 3.0;  // WCAG 2.2, success criteria 1.4.3 and 1.4.11

const std::array<Tone, 4> kCurves{Tone::kCurve1, Tone::kCurve2, Tone::kCurve3, Tone::kCurve4};

// Outside reference: the contrast of black on white is 21:1 by definition, and #777777 on white,
// known as the grey that just fails, has 4.48:1 (WCAG 2.2, relative luminance and contrast ratio).
TEST(Contrast, IsThatOfTheGuidelines) {
  const QColor white(Qt::white);
  EXPECT_DOUBLE_EQ(calcContrast(Qt::black, white), 21);
  EXPECT_DOUBLE_EQ(calcContrast(white, Qt::black), 21);
  EXPECT_DOUBLE_EQ(calcContrast(white, white), 1);
  EXPECT_NEAR(calcContrast(QColor(0x77, 0x77, 0x77), white), 4.48, 0.005);
  EXPECT_NEAR(calcContrast(QColor(0x76, 0x76, 0x76), white), 4.54, 0.005);
}

class Themes : public ::testing::TestWithParam<Theme> {
 protected:
  [[nodiscard]] double between(Tone a, Tone b) const {
    return calcContrast(colorOf(GetParam(), a), colorOf(GetParam(), b));
  }
};

TEST_P(Themes, LetWordsBeRead) {
  for (Tone word :
       {Tone::kInk, Tone::kInk2, Tone::kHand, Tone::kGood, Tone::kBad, Tone::kDoubt, Tone::kInfo})
    for (Tone ground : {Tone::kPaper, Tone::kFace})
      EXPECT_GE(between(word, ground), kWord) << int(word) << " on " << int(ground);
  for (Tone word : {Tone::kInk, Tone::kHand}) EXPECT_GE(between(word, Tone::kWash), kWord);
  EXPECT_GE(between(Tone::kPaper, Tone::kHand), kWord);
}

TEST_P(Themes, LetMarksBeSeen) {
  for (Tone mark : {Tone::kInk, Tone::kInk2, Tone::kRule, Tone::kHand, Tone::kBad})
    for (Tone ground : {Tone::kPaper, Tone::kFace}) EXPECT_GE(between(mark, ground), kMark);
  for (Tone curve : kCurves)
    for (Tone ground : {Tone::kPaper, Tone::kFace})
      EXPECT_GE(between(curve, ground), kMark) << int(curve);
}

TEST_P(Themes, LetALensShineInItsBezel) {
  for (Tone lens : {Tone::kRed, Tone::kYellow, Tone::kGreen, Tone::kBlue, Tone::kWhite})
    EXPECT_GE(between(lens, Tone::kBezel), kMark) << int(lens);
}

// How a colour looks to an eye without one kind of cone: matrices of Machado, Oliveira and
// Fernandes (2009) for full severity, in linear RGB, written down from memory. Each row adds up to
// 1, so that grey stays grey.
using Matrix = std::array<std::array<double, 3>, 3>;
constexpr Matrix kProtan{{{0.152286, 1.052583, -0.204868},
                          {0.114503, 0.786281, 0.099216},
                          {-0.003882, -0.048116, 1.051998}}};
constexpr Matrix kDeutan{{{0.367322, 0.860646, -0.227968},
                          {0.280085, 0.672501, 0.047413},
                          {-0.011820, 0.042940, 0.968881}}};
constexpr Matrix kFull{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};

using Triple = std::array<double, 3>;

Triple linearOf(const QColor& c) {
  const auto linear = [](double v) {
    return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
  };
  return {linear(c.redF()), linear(c.greenF()), linear(c.blueF())};
}

Triple multiply(const Matrix& m, const Triple& v) {
  Triple out{};
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j) out[i] += m[i][j] * v[j];
  return out;
}

// CIE 1976 L*a*b* of linear sRGB, white D65.
Triple labOf(const Triple& rgb) {
  constexpr Matrix kXyz{
      {{0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}}};
  const Triple xyz = multiply(kXyz, rgb);
  const auto f = [](double t) {
    return t > 216.0 / 24389 ? std::cbrt(t) : (24389.0 / 27 * t + 16) / 116;
  };
  const double x = f(xyz[0] / 0.9505), y = f(xyz[1]), z = f(xyz[2] / 1.089);
  return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

double distanceFor(const Matrix& eye, const QColor& a, const QColor& b) {
  const auto seen = [&](const QColor& c) {
    Triple rgb = multiply(eye, linearOf(c));
    for (double& v : rgb) v = std::clamp(v, 0.0, 1.0);
    return labOf(rgb);
  };
  const Triple p = seen(a), q = seen(b);
  return std::hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}

TEST(ColorBlindness, IsSimulatedAsItShould) {
  for (const Matrix& eye : {kProtan, kDeutan})
    for (const auto& row : eye) EXPECT_NEAR(row[0] + row[1] + row[2], 1, 1e-5);
  // Pure red and a green of like brightness: far apart for most eyes, near for these two.
  const QColor red(200, 60, 40), green(110, 120, 30);
  EXPECT_GT(distanceFor(kFull, red, green), 60);
  EXPECT_LT(distanceFor(kDeutan, red, green), 25);
}

// A difference of 2 is just seen, of 10 at a glance. Curves also have dashes of their own.
TEST_P(Themes, KeepCurvesApartForColorBlindEyes) {
  for (const Matrix& eye : {kFull, kProtan, kDeutan})
    for (std::size_t i = 0; i < kCurves.size(); ++i)
      for (std::size_t j = i + 1; j < kCurves.size(); ++j)
        EXPECT_GE(
            distanceFor(eye, colorOf(GetParam(), kCurves[i]), colorOf(GetParam(), kCurves[j])), 10)
            << "curves " << i + 1 << " and " << j + 1;
}

INSTANTIATE_TEST_SUITE_P(Both, Themes, ::testing::Values(Theme::kDay, Theme::kNight));

}  // namespace
}  // namespace cabwright::drawing
