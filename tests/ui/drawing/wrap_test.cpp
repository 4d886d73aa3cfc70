// SPDX-License-Identifier: GPL-3.0-or-later
// Long words are parted where they may be.
#include <gtest/gtest.h>

#include "drawing/pen.h"

namespace cabwright::drawing {
namespace {

const QString kLong = QStringLiteral("Brems\u00ADzylinder\u00ADdeckel");

TEST(Wrap, PartsALongWordAtASoftHyphen) {
  const double room = textWidth(QStringLiteral("Bremszylinder-")) + 1;
  EXPECT_EQ(wrapText(kLong, room),
            (QStringList{QStringLiteral("Bremszylinder-"), QStringLiteral("deckel")}));
  const double narrow = textWidth(QStringLiteral("zylinder-")) + 1;
  EXPECT_EQ(wrapText(QStringLiteral("am ") + kLong, narrow),
            (QStringList{QStringLiteral("am"), QStringLiteral("Brems-"),
                         QStringLiteral("zylinder-"), QStringLiteral("deckel")}));
}

TEST(Wrap, LeavesAWordWholeThatFitsOrCannotBeParted) {
  EXPECT_EQ(wrapText(kLong, 1000).size(), 1);
  EXPECT_EQ(wrapText(QStringLiteral("Bremszylinderdeckel"), 20).size(), 1);
}

TEST(Wrap, SoftHyphensTakeNoRoom) {
  EXPECT_DOUBLE_EQ(textWidth(kLong), textWidth(QStringLiteral("Bremszylinderdeckel")));
  EXPECT_EQ(elideText(kLong, 1000), QStringLiteral("Bremszylinderdeckel"));
}

}  // namespace
}  // namespace cabwright::drawing
