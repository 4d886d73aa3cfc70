// SPDX-License-Identifier: GPL-3.0-or-later
// Against RFC 3629, section 4 (the syntax of UTF-8 byte sequences) and its limits.
#include "quantity/utf8.h"

#include <gtest/gtest.h>

#include <string>

namespace cabwright::quantity {
namespace {

TEST(Utf8, TellsHowLongACharacterIs) {
  EXPECT_EQ(calcCharacterLength("A"), 1U);
  EXPECT_EQ(calcCharacterLength("\x7f"), 1U);
  EXPECT_EQ(calcCharacterLength("\xc2\x80"), 2U);
  EXPECT_EQ(calcCharacterLength("\xdf\xbf and more"), 2U);
  EXPECT_EQ(calcCharacterLength("\xe0\xa0\x80"), 3U);
  EXPECT_EQ(calcCharacterLength("\xed\x9f\xbf"), 3U);
  EXPECT_EQ(calcCharacterLength("\xf0\x90\x80\x80"), 4U);
  EXPECT_EQ(calcCharacterLength("\xf4\x8f\xbf\xbf"), 4U);
}

TEST(Utf8, TakesNothingElseForOne) {
  EXPECT_EQ(calcCharacterLength(""), 0U);
  for (const char* text : {"\x80", "\xbf", "\xc0\x80", "\xc1\xbf", "\xc2", "\xc2\x41",
                           "\xe0\x9f\xbf", "\xe2\x82", "\xed\xa0\x80", "\xf0\x8f\xbf\xbf",
                           "\xf0\x9f\x98", "\xf4\x90\x80\x80", "\xf5\x80\x80\x80", "\xff"})
    EXPECT_EQ(calcCharacterLength(text), 0U) << testing::PrintToString(std::string(text));
}

}  // namespace
}  // namespace cabwright::quantity
