// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/truth_view.h"

#include <gmock/gmock.h>

#include <QLineEdit>
#include <QSignalSpy>
#include <algorithm>
#include <map>
#include <set>

#include "desk/truth_table.h"
#include "page_rig.h"

namespace cabwright::desk {
namespace {

using unit::Instrument;
using unit::Signal;

class TruthViewTest : public PageRig<TruthView> {
 protected:
  TruthModel& model() { return page_->model(); }
  // The row of a truth whose gauge is this.
  int rowOf(Instrument gauge) {
    for (int row = 0; row < model().rowCount(); ++row) {
      const TruthRow* truth = model().rowAt(row);
      if (truth == nullptr) continue;
      for (const auto& says : truth->gauges)
        if (says && says->instrument == gauge) return row;
    }
    return -1;
  }
  QString words(int row, TruthModel::Column column) {
    return model().index(row, column).data().toString();
  }
  std::vector<std::string> differing() {
    std::vector<std::string> names;
    for (int row = 0; row < model().rowCount(); ++row) {
      const TruthRow* truth = model().rowAt(row);
      if (truth != nullptr && truth->agreement() == Agreement::kDiffers)
        names.push_back(qPrintable(truth->name + QLatin1String(": ") + truth->finding()));
    }
    return names;
  }
};

TEST(TruthTable, HasEveryGaugeAndLampOnceAndEverySystem) {
  std::map<Instrument, int> found;
  std::map<System, int> systems;
  for (const TruthSource& source : truthTable()) {
    ++systems[source.system];
    for (const auto& gauge : source.gauges)
      if (gauge) ++found[*gauge];
  }
  for (const unit::InstrumentInfo& info : unit::instrumentTable())
    EXPECT_EQ(found[info.id], 1) << info.name;
  EXPECT_EQ(systems.size(), static_cast<std::size_t>(System::kCount));
}

TEST(TruthTable, AGaugeHangsInTheColumnOfItsCab) {
  for (const TruthSource& source : truthTable()) {
    for (std::size_t c = 0; c < kGaugeColumns; ++c) {
      if (!source.gauges[c]) continue;
      const std::string_view name = unit::instrumentTable()[unit::indexOf(*source.gauges[c])].name;
      const auto column = name.starts_with("cab1.")   ? GaugeColumn::kCab1
                          : name.starts_with("cab2.") ? GaugeColumn::kCab2
                                                      : GaugeColumn::kSpot;
      EXPECT_EQ(static_cast<GaugeColumn>(c), column) << name;
    }
  }
}

TEST_F(TruthViewTest, ShowsWhatIsSoBesideWhatTheGaugesSay) {
  sit("hill-start");
  tests::playScript(*seat_, "hill-start", "good", 110);
  pass(0.5);
  const int air = rowOf(Instrument::kCab1Air);
  ASSERT_GE(air, 0);
  EXPECT_NEAR(words(air, TruthModel::kTrue).toDouble(),
              static_cast<double>(seat_->frame()[Signal::kTrueAir]), 0.15);
  EXPECT_NEAR(words(air, TruthModel::kCab2).toDouble(),
              static_cast<double>(seat_->frame()[Signal::kCab2Air]), 0.15);
  EXPECT_EQ(words(air, TruthModel::kUnit), QLatin1String("psi"));
  const int lamp = rowOf(Instrument::kCab1LampAir);
  EXPECT_EQ(words(lamp, TruthModel::kTrue), words(lamp, TruthModel::kCab1));
}

// Gauges lag: a needle on its way is not a broken gauge, whether one looks each hundredth of a
// second or now and then.
TEST_F(TruthViewTest, SoundGaugesNeverDiffer) {
  sit("hill-start");
  int looks = 0;
  QObject::connect(seat_.get(), &cab::Seat::frameChanged, page_.get(), [&] {
    ++looks;
    ASSERT_THAT(differing(), testing::IsEmpty()) << seat_->run().tick();
  });
  tests::playScript(*seat_, "hill-start", "good", 140);
  EXPECT_GT(looks, 13000);
}

TEST(TruthRows, SoundGaugesNeverDifferHoweverSeldomOneLooks) {
  for (const std::int64_t every : {7, 25, 130}) {
    const auto seat = tests::sitDown("hill-start");
    TruthRows rows;
    QObject::connect(seat.get(), &cab::Seat::frameChanged, seat.get(), [&] {
      if (seat->run().tick() % every != 0) return;
      rows.update(seat->run());
      for (const TruthRow& row : rows.rows())
        ASSERT_EQ(row.agreement(), Agreement::kAgrees)
            << qPrintable(row.name + row.finding()) << seat->run().tick();
    });
    tests::playScript(*seat, "hill-start", "good", 140);
  }
}

TEST_F(TruthViewTest, AGaugeThatReadsWrongIsSeenAtOnce) {
  sit("hill-start");
  pass(1);
  EXPECT_EQ(model().differing(), 0);
  doIt("instructor: condition cab1.air offset 7");
  pass(1);
  const int air = rowOf(Instrument::kCab1Air);
  EXPECT_EQ(model().agreementAt(model().index(air, TruthModel::kCab1)), Agreement::kDiffers);
  EXPECT_EQ(model().agreementAt(model().index(air, TruthModel::kCab2)), Agreement::kAgrees);
  const QString finding = words(air, TruthModel::kFinding);
  EXPECT_TRUE(finding.contains(QLatin1String("7.0 psi high"))) << qPrintable(finding);
  EXPECT_TRUE(finding.contains(QLatin1String("cab 1")));
  EXPECT_TRUE(page_->summary().contains(finding));
  EXPECT_TRUE(page_->accessibleDescription().contains(finding));
  EXPECT_TRUE(model().index(air, 0).data(Qt::AccessibleTextRole).toString().contains(finding));
}

TEST_F(TruthViewTest, AStuckGaugeIsSuspectWhileItAgreesAndDiffersWhenTheTruthMovesOn) {
  sit("hill-start");
  pass(1);
  doIt("instructor: condition cab2.train_pipe stuck");
  pass(0.5);
  const int row = rowOf(Instrument::kCab2TrainPipe);
  EXPECT_EQ(model().rowAt(row)->agreement(), Agreement::kSuspect);
  EXPECT_EQ(model().suspect(), 1);
  tests::playScript(*seat_, "hill-start", "good", 100);
  pass(0.5);
  EXPECT_EQ(model().rowAt(row)->agreement(), Agreement::kDiffers)
      << qPrintable(words(row, TruthModel::kTrue) + words(row, TruthModel::kCab2));
  EXPECT_TRUE(words(row, TruthModel::kFinding).contains(QLatin1String("stuck")));
}

TEST_F(TruthViewTest, ABlownLampDiffersFromWhatItsCircuitFeeds) {
  sit("hill-start");
  pass(1);
  const auto& table = unit::instrumentTable();
  const auto lamp = std::ranges::find_if(table, [this](const unit::InstrumentInfo& info) {
    return info.lamp && info.name.starts_with("cab1.") && seat_->frame()[info.signal] > 0.5F;
  });
  ASSERT_NE(lamp, table.end());
  const int row = rowOf(lamp->id);
  ASSERT_EQ(words(row, TruthModel::kTrue), QLatin1String("lit"));
  EXPECT_EQ(model().rowAt(row)->agreement(), Agreement::kAgrees);
  doIt("instructor: condition " + std::string(lamp->name) + " blown");
  pass(0.5);
  EXPECT_EQ(words(row, TruthModel::kTrue), QLatin1String("lit"));
  EXPECT_EQ(words(row, TruthModel::kCab1), QLatin1String("dark"));
  EXPECT_TRUE(words(row, TruthModel::kFinding).contains(QLatin1String("blown")));
}

TEST_F(TruthViewTest, OnlyCellsWithOtherWordsAreDrawnAnew) {
  sit("hill-start");
  pass(1);
  QSignalSpy told(&model(), &QAbstractItemModel::dataChanged);
  QSignalSpy reset(&model(), &QAbstractItemModel::modelReset);
  std::map<std::pair<int, int>, QString> before;
  const auto note = [&] {
    for (int row = 0; row < model().rowCount(); ++row)
      for (int column = 0; column < TruthModel::kColumns; ++column)
        before[{row, column}] = model().index(row, column).data().toString();
  };
  note();
  passUnseen(0.2);
  std::set<std::pair<int, int>> cells;
  for (const auto& call : told) {
    const auto at = call[0].toModelIndex();
    EXPECT_EQ(at, call[1].toModelIndex());
    cells.emplace(at.row(), at.column());
  }
  for (int row = 0; row < model().rowCount(); ++row)
    for (int column = 0; column < TruthModel::kColumns; ++column)
      EXPECT_EQ(cells.contains({row, column}),
                (before[{row, column}] != model().index(row, column).data().toString()))
          << row << ' ' << column;
  EXPECT_LT(cells.size(), 60U);
  EXPECT_EQ(reset.count(), 0);
}

TEST_F(TruthViewTest, SearchSystemAndOnlyWhatDiffersNarrowIt) {
  sit("hill-start");
  pass(1);
  const int all = model().rowCount();
  auto* search = page_->findChild<QLineEdit*>();
  search->setFocus();
  QTest::keyClicks(search, "vacuum pipe");
  EXPECT_GT(model().rowCount(), 1);
  EXPECT_LT(model().rowCount(), 8);
  search->clear();
  EXPECT_EQ(model().rowCount(), all);
  const auto click = [this](const QString& words) {
    for (QAbstractButton* button : page_->findChildren<QAbstractButton*>())
      if (button->text() == words) QTest::mouseClick(button, Qt::LeftButton);
  };
  click(QStringLiteral("Electrics"));
  for (int row = 1; row < model().rowCount(); ++row)
    EXPECT_EQ(model().rowAt(row)->system, System::kElectrics);
  click(QStringLiteral("All"));
  click(QStringLiteral("Only what differs"));
  EXPECT_EQ(model().rowCount(), 0);
  doIt("instructor: condition cab2.speed offset 9");
  pass(1);
  ASSERT_EQ(model().rowCount(), 2);  // a heading and the row
  EXPECT_EQ(model().rowAt(0), nullptr);
}

TEST_F(TruthViewTest, EverythingIsReachedByKeysAndNamed) {
  sit("hill-start");
  expectAllReached();
}

}  // namespace
}  // namespace cabwright::desk
