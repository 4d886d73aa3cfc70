// SPDX-License-Identifier: GPL-3.0-or-later
// Every fault of the catalogue lives at one spot of the drawing, and can be pressed there.
#include "desk/spots.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QLineF>
#include <algorithm>
#include <set>

#include "desk/draw_unit.h"
#include "desk/unit_view.h"
#include "words_lint.h"

namespace cabwright::desk {
namespace {

using ::testing::IsEmpty;

TEST(Spots, EveryFaultOfTheCatalogueLivesAtExactlyOne) {
  std::multiset<const fault::FaultSpec*> reached;
  for (std::size_t k = 0; k < spotTable().size(); ++k)
    for (const fault::FaultSpec* spec : faultsAt(k)) reached.insert(spec);
  for (const fault::FaultSpec& spec : fault::faultCatalogue())
    EXPECT_EQ(reached.count(&spec), 1U) << spec.name;
  EXPECT_EQ(reached.size(), fault::faultCatalogue().size());
}

TEST(Spots, NoneIsEmptyAndNoTwoAreCalledAlike) {
  std::set<QString> names;
  for (std::size_t k = 0; k < spotTable().size(); ++k) {
    EXPECT_FALSE(faultsAt(k).empty()) << spotTable()[k].id;
    EXPECT_TRUE(names.insert(nameOf(spotTable()[k])).second) << spotTable()[k].id;
    EXPECT_EQ(findSpot(spotTable()[k].id), k);
  }
}

TEST(Spots, FaultsLiveWhereTheCatalogueSaysTheyAre) {
  // Whatever the words "gearbox 2" stand at the head of is at gearbox 2, and so on.
  for (const char* id : {"gearbox1", "gearbox2", "final_drive1", "final_drive2"}) {
    QString words = QString::fromLatin1(id).replace(QLatin1Char('_'), QLatin1Char(' '));
    words.insert(words.size() - 1, QLatin1Char(' '));
    int found = 0;
    for (const fault::FaultSpec& spec : fault::faultCatalogue()) {
      if (!spec.where.starts_with(words.toStdString())) continue;
      ++found;
      EXPECT_EQ(spotTable()[spotOf(spec)].id, id) << spec.name;
    }
    EXPECT_GT(found, 5) << id;
  }
}

TEST(Spots, LieFarEnoughApartToBePressed) {
  for (std::size_t a = 0; a < spotTable().size(); ++a)
    for (std::size_t b = a + 1; b < spotTable().size(); ++b)
      EXPECT_GE(QLineF(spotTable()[a].at, spotTable()[b].at).length(), 34)
          << spotTable()[a].id << ' ' << spotTable()[b].id;
}

TEST(Spots, AreFoundByWordsInAnyOrder) {
  const auto found = findFaults(QStringLiteral("band gearbox WORN"));
  ASSERT_FALSE(found.empty());
  for (const fault::FaultSpec* spec : found)
    EXPECT_THAT(spec->name, ::testing::HasSubstr("gearbox"));
  EXPECT_THAT(findFaults(QStringLiteral("  ")), IsEmpty());
  EXPECT_THAT(findFaults(QStringLiteral("teapot")), IsEmpty());
}

// What is looked for by its name is not hidden behind all that shows on it.
TEST(Spots, ThoseThatAreCalledSoComeFirst) {
  const auto found = findFaults(QStringLiteral("gauge"));
  const auto isCalledSo = [](const fault::FaultSpec* spec) {
    const std::size_t spot = spotOf(*spec);
    return (QString::fromStdString(spec->name) + whereText(*spec) + textOf(*spec) +
            (spot < spotTable().size() ? nameOf(spotTable()[spot]) : QString()))
        .contains(QLatin1String("gauge"), Qt::CaseInsensitive);
  };
  ASSERT_GT(found.size(), 20U);
  EXPECT_TRUE(isCalledSo(found.front()));
  EXPECT_FALSE(isCalledSo(found.back()));
  EXPECT_TRUE(std::ranges::is_partitioned(found, isCalledSo));
}

TEST(Spots, AnInstrumentIsCalledByItsPlace) {
  const fault::FaultSpec* spec = fault::findFault("cab2.train_pipe_stuck");
  ASSERT_NE(spec, nullptr);
  EXPECT_EQ(whereText(*spec).toStdString(), "Cab 2, train pipe");
}

}  // namespace
}  // namespace cabwright::desk
