// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "drawing/parts_sheet.h"
#include "words_lint.h"

namespace cabwright::drawing {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing_ui::findWordFaults;

class SheetWords : public ::testing::TestWithParam<std::tuple<QSizeF, Theme>> {};

TEST_P(SheetWords, OfThePartsSheetCanAllBeRead) {
  const auto [window, theme] = GetParam();
  int counted = 0;
  EXPECT_THAT(findWordFaults(paintPartsSheet, window, theme, &counted), IsEmpty());
  EXPECT_GT(counted, 150);
}

INSTANTIATE_TEST_SUITE_P(Windows, SheetWords,
                         ::testing::Combine(::testing::Values(QSizeF(1280, 720), QSizeF(1600, 1000),
                                                              QSizeF(1280, 1024),
                                                              QSizeF(1920, 1080)),
                                            ::testing::Values(Theme::kDay, Theme::kNight)));

// The same check over sheets that offend, so that an empty list means something.
std::vector<std::string> faultsOf(const testing_ui::PaintSheet& paint) {
  return findWordFaults(paint, {1600, 1000}, Theme::kDay);
}

TEST(WordFaults, AreSeen) {
  const auto one = [](QPointF at, Words words) {
    return faultsOf(
        [=](Pen& pen, const SheetFrame&) { pen.text(at, QStringLiteral("word"), words); });
  };
  EXPECT_THAT(one({300, 300}, {}), IsEmpty());
  EXPECT_THAT(one({300, 300}, {.size = 17}), ElementsAre(HasSubstr("too small")));
  EXPECT_THAT(one({10, 300}, {}), ElementsAre(HasSubstr("outside")));
  EXPECT_THAT(one({300, 300}, {.tone = Tone::kRule}), ElementsAre(HasSubstr("too pale")));
  EXPECT_THAT(one({300, 300}, {.tone = Tone::kInk, .on = Tone::kWash}),
              ElementsAre(HasSubstr("not on what it says")));
}

TEST(WordFaults, AreSeenWhereThingsMeet) {
  EXPECT_THAT(faultsOf([](Pen& pen, const SheetFrame&) {
                pen.text({300, 300}, QStringLiteral("one word"));
                pen.text({320, 306}, QStringLiteral("another"));
              }),
              ElementsAre(HasSubstr("over another")));
  EXPECT_THAT(faultsOf([](Pen& pen, const SheetFrame&) {
                pen.line({200, 295}, {500, 295});
                pen.text({300, 300}, QStringLiteral("word"));
              }),
              ElementsAre(HasSubstr("crossed by a line")));
}

}  // namespace
}  // namespace cabwright::drawing
