// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/flag_sign.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "after/words.h"

namespace cabwright::after {
namespace {

using drawing::Theme;
using drawing::Tone;
using marking::RuleClass;

QColor colorAt(Theme theme, RuleClass c, double x) {
  QImage image(60, 40, QImage::Format_RGB32);
  image.fill(drawing::colorOf(theme, Tone::kPaper));
  QPainter painter(&image);
  drawing::Pen pen(painter, theme);
  paintFlag(pen, {5, 5}, {c, QStringLiteral("1"), false, false});
  painter.end();
  return image.pixelColor(static_cast<int>(5 + x), 5 + static_cast<int>(kFlagHeight / 2));
}

TEST(FlagSign, CanBeReadInBothThemes) {
  for (const Theme theme : {Theme::kDay, Theme::kNight}) {
    const auto color = [theme](Tone tone) { return drawing::colorOf(theme, tone); };
    for (const auto c : {RuleClass::kCritical, RuleClass::kSerious, RuleClass::kTechnique}) {
      EXPECT_GE(drawing::calcContrast(color(flagInk(c)), color(flagCloth(c))), 4.5);
      for (const Tone on : {Tone::kPaper, Tone::kFace})
        EXPECT_GE(drawing::calcContrast(color(toneOf(c)), color(on)), 4.5);
    }
  }
}

// Without its colour each still differs: the point of a critical one fills the middle of its end,
// where the others are cut out; a hollow one shows the paper beside its number.
TEST(FlagSign, IsToldByItsShapeToo) {
  const double tip = flagWidth(QStringLiteral("1")) - 4;
  for (const Theme theme : {Theme::kDay, Theme::kNight}) {
    const QColor paper = drawing::colorOf(theme, Tone::kPaper);
    EXPECT_EQ(colorAt(theme, RuleClass::kCritical, tip), drawing::colorOf(theme, Tone::kBad));
    EXPECT_EQ(colorAt(theme, RuleClass::kSerious, tip), paper);
    EXPECT_EQ(colorAt(theme, RuleClass::kSerious, 3), drawing::colorOf(theme, Tone::kDoubt));
    EXPECT_EQ(colorAt(theme, RuleClass::kTechnique, 3), paper);
  }
}

}  // namespace
}  // namespace cabwright::after
