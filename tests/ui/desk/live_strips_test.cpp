// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/live_strips.h"

#include <QLineEdit>
#include <QMouseEvent>
#include <QSignalSpy>
#include <set>

#include "after/thin_out.h"
#include "desk/strip_groups.h"
#include "page_rig.h"

namespace cabwright::desk {
namespace {

using unit::Signal;

class LiveStripsTest : public PageRig<LiveStrips> {
 protected:
  QLineEdit* search() { return page_->findChild<QLineEdit*>(); }
  StripPane& pane() { return page_->pane(); }
  void type(const QString& words) {
    search()->setFocus();
    search()->clear();
    QTest::keyClicks(search(), words);
  }
  void moveTo(double x) {
    QTest::mouseMove(&pane(), QPoint(static_cast<int>(x), 200));
    QMouseEvent event(QEvent::MouseMove, QPointF(x, 200), pane().mapToGlobal(QPointF(x, 200)),
                      Qt::NoButton, Qt::NoButton, Qt::NoModifier);
    QApplication::sendEvent(&pane(), &event);
  }
};

// Cut short they are still told apart.
TEST(StripNames, OfOnePlotKeepWhatTellsThemApart) {
  const auto shortened = [](const QString& name, const QStringList& all, double room) {
    after::Plot plot;
    for (const QString& one : all) plot.curves.emplace_back().name = one;
    return StripPane::shortName(plot, name, room).toStdString();
  };
  const QStringList pipes{QStringLiteral("Vacuum in the train pipe"),
                          QStringLiteral("Vacuum in the release pipe")};
  EXPECT_EQ(shortened(pipes[0], pipes, 400), "Vacuum in the train pipe");
  EXPECT_EQ(shortened(pipes[0], pipes, 150), "\u2026 train pipe");
  EXPECT_EQ(shortened(pipes[1], pipes, 150), "\u2026 release pipe");
  const QStringList engines{QStringLiteral("Engine 1, crank speed"),
                            QStringLiteral("Engine 2, crank speed")};
  EXPECT_TRUE(shortened(engines[0], engines, 150).starts_with("Engine 1, "));
  EXPECT_TRUE(shortened(engines[1], engines, 150).starts_with("Engine 2, "));
  const QStringList alone{QStringLiteral("Speed without its sign")};
  EXPECT_TRUE(shortened(alone[0], alone, 100).starts_with("Speed w"));
}

TEST_F(LiveStripsTest, TheSearchFindsByWordUnitAndLayer) {
  sit("hill-start");
  const int all = page_->model().rowCount();
  EXPECT_EQ(static_cast<std::size_t>(all), unit::kSignalCount);
  type("true psi reservoir");
  std::set<Signal> found;
  for (int row = 0; row < page_->model().rowCount(); ++row)
    found.insert(page_->model().signalAt(row));
  EXPECT_EQ(found, (std::set<Signal>{Signal::kTrueMain, Signal::kTrueAir}));
  type("cab2.train_pipe");
  ASSERT_EQ(page_->model().rowCount(), 1);
  EXPECT_EQ(page_->model().signalAt(0), Signal::kCab2TrainPipe);
  type("no such thing");
  EXPECT_EQ(page_->model().rowCount(), 0);
}

TEST_F(LiveStripsTest, EnterGoesFromTheSearchToTheListAndSpaceTakesASignalOnAndOff) {
  sit("hill-start");
  page_->choose({});
  type("true.air");
  QTest::keyClick(search(), Qt::Key_Return);
  EXPECT_TRUE(page_->list().hasFocus());
  QTest::keyClick(&page_->list(), Qt::Key_Space);
  ASSERT_EQ(page_->chosen(), std::vector<Signal>{Signal::kTrueAir});
  EXPECT_EQ(page_->list().model()->index(0, 0).data(Qt::CheckStateRole).toInt(), Qt::Checked);
  QTest::keyClick(&page_->list(), Qt::Key_Return);
  EXPECT_TRUE(page_->chosen().empty());
  const QRect row = page_->list().visualRect(page_->list().model()->index(0, 0));
  QTest::mouseClick(page_->list().viewport(), Qt::LeftButton, {}, row.center());
  EXPECT_EQ(page_->chosen(), std::vector<Signal>{Signal::kTrueAir});
}

TEST_F(LiveStripsTest, TwelveAtMost) {
  sit("hill-start");
  std::vector<Signal> many;
  for (std::size_t k = 0; k < 20; ++k) many.push_back(static_cast<Signal>(k));
  page_->choose(many);
  EXPECT_EQ(page_->chosen().size(), kMostSignals);
  EXPECT_TRUE(page_->said().isEmpty());
  type("true.air");
  QTest::keyClick(search(), Qt::Key_Return);
  QTest::keyClick(&page_->list(), Qt::Key_Space);
  EXPECT_EQ(page_->chosen().size(), kMostSignals);
  EXPECT_FALSE(page_->said().isEmpty());
}

TEST_F(LiveStripsTest, EachStripHasOneUnitAndEachOfItsCurvesALookOfItsOwn) {
  sit("hill-start");
  for (std::size_t which = 0; which < presets().size(); ++which) {
    page_->choosePreset(which);
    EXPECT_LE(page_->chosen().size(), kMostSignals);
    std::size_t curves = 0;
    for (const after::Plot& plot : pane().plots()) {
      std::set<std::pair<int, std::vector<double>>> looks;
      for (const after::Curve& curve : plot.curves) {
        EXPECT_EQ(QString::fromStdString(std::string(unit::signalInfo(curve.signal).unit)),
                  plot.unit);
        looks.emplace(static_cast<int>(curve.tone), curve.dash);
        ++curves;
      }
      EXPECT_EQ(looks.size(), plot.curves.size());
      EXPECT_FALSE(plot.name.isEmpty());
    }
    EXPECT_EQ(curves, presets()[which].signals.size());
  }
  // Without colour the first four of a strip are told apart by their dash alone.
  const auto plots = groupSignals(std::vector<Signal>{
      Signal::kTrueChamber1, Signal::kTrueChamber2, Signal::kTrueChamber3, Signal::kTrueChamber4});
  std::set<std::vector<double>> dashes;
  for (const after::Curve& curve : plots.front().curves) dashes.insert(curve.dash);
  EXPECT_EQ(dashes.size(), 4U);
}

TEST_F(LiveStripsTest, TheCurveEndsAtWhatIsSoNow) {
  sit("hill-start");
  page_->choose({Signal::kTrueAir, Signal::kTrueRpm1, Signal::kTrueRack1});
  tests::playScript(*seat_, "hill-start", "good", 115);
  pass(0.2);
  for (const Signal signal : page_->chosen()) {
    const auto points = pane().drawnPoints(signal);
    ASSERT_GE(points.size(), 2);
    EXPECT_LE(static_cast<std::size_t>(points.size()), after::kMostPoints);
    EXPECT_NEAR(points.back().x(), static_cast<double>(page_->tape().lastTick()) / 100, 1e-6);
    EXPECT_EQ(points.back().y(), static_cast<double>(seat_->frame()[signal]));
  }
  // The scale has grown with what was measured.
  for (const after::Plot& plot : pane().plots())
    for (const after::Curve& curve : plot.curves) {
      EXPECT_GE(plot.high, static_cast<double>(page_->tape().range(curve.signal)->high));
      EXPECT_LE(plot.low, static_cast<double>(page_->tape().range(curve.signal)->low));
    }
}

TEST_F(LiveStripsTest, WindowsAreChosenByButtonsAndTheWheel) {
  sit("hill-start");
  EXPECT_EQ(page_->minutes(), 5);
  for (QAbstractButton* button : page_->findChildren<QAbstractButton*>())
    if (button->text().startsWith(QLatin1String("20"))) QTest::mouseClick(button, Qt::LeftButton);
  EXPECT_EQ(page_->minutes(), 20);
  EXPECT_EQ(pane().span().length(), 120000);
  QTest::keyClick(&pane(), Qt::Key_Plus);
  EXPECT_EQ(page_->minutes(), 5);
  QTest::keyClick(&pane(), Qt::Key_Plus);
  QTest::keyClick(&pane(), Qt::Key_Plus);
  EXPECT_EQ(page_->minutes(), 1);
  QTest::keyClick(&pane(), Qt::Key_Minus);
  EXPECT_EQ(page_->minutes(), 5);
}

TEST_F(LiveStripsTest, HeldItStandsWhileTheRunGoesOnAndTheTapeGoesOn) {
  sit("hill-start");
  pass(30);
  pane().setFocus();
  QTest::keyClick(&pane(), Qt::Key_Space);
  EXPECT_TRUE(pane().isHeld());
  const after::Span held = pane().span();
  const auto points = pane().drawnPoints(Signal::kTrueAir);
  pass(5);
  EXPECT_EQ(pane().span(), held);
  EXPECT_EQ(pane().drawnPoints(Signal::kTrueAir), points);
  EXPECT_GT(page_->tape().lastTick(), held.to + 480);
  QTest::keyClick(&pane(), Qt::Key_End);
  EXPECT_FALSE(pane().isHeld());
  EXPECT_EQ(pane().span().to, page_->tape().lastTick());
}

TEST_F(LiveStripsTest, TheMouseReadsValuesOffTheCurves) {
  sit("hill-start");
  tests::playScript(*seat_, "hill-start", "good", 115);
  pass(0.2);
  for (const std::int64_t tick : {2000, 7000, 11000}) {
    moveTo(pane().xOf(tick));
    ASSERT_TRUE(pane().cursor());
    EXPECT_NEAR(static_cast<double>(*pane().cursor()), static_cast<double>(tick), 60);
    for (const Signal signal : page_->chosen())
      EXPECT_EQ(pane().shownValue(signal),
                static_cast<double>(*page_->tape().findValue(signal, *pane().cursor())));
    EXPECT_TRUE(pane().accessibleDescription().contains(signalText(page_->chosen().front())));
  }
  moveTo(5);  // over the names: now again
  EXPECT_FALSE(pane().cursor());
  EXPECT_EQ(pane().shownValue(Signal::kTrueAir),
            static_cast<double>(seat_->frame()[Signal::kTrueAir]));
}

TEST_F(LiveStripsTest, WhatWasDoneStandsOnTheAxisOfTime) {
  sit("hill-start");
  pass(5);
  doIt("instructor: mark before the start");
  doIt("instructor: arm air.control_leak as late");
  doIt("instructor: remark general waits, looks for the reason");
  doIt("look cab1.flags");
  pass(3);
  doIt("instructor: clear late");
  pass(3);
  std::multiset<EventKind> kinds;
  for (const RunEvent* event : pane().eventsShown()) kinds.insert(event->kind);
  EXPECT_EQ(kinds.count(EventKind::kMark), 1U);
  EXPECT_EQ(kinds.count(EventKind::kRemark), 1U);
  EXPECT_GE(kinds.count(EventKind::kAct), 1U);
  const auto& faults = page_->events().faults();
  ASSERT_EQ(faults.size(), 1U);
  EXPECT_NEAR(static_cast<double>(faults[0].from), 500, 5);
  ASSERT_TRUE(faults[0].to);
  EXPECT_NEAR(static_cast<double>(*faults[0].to), 800, 5);
  // Keys go from one to the next.
  pane().setFocus();
  QTest::keyClick(&pane(), Qt::Key_Home);
  QTest::keyClick(&pane(), Qt::Key_PageDown);
  ASSERT_TRUE(pane().cursor());
  EXPECT_NEAR(static_cast<double>(*pane().cursor()), 500, 5);
  QSignalSpy wanted(page_.get(), &LiveStrips::momentChosen);
  QTest::keyClick(&pane(), Qt::Key_Return);
  ASSERT_EQ(wanted.count(), 1);
  EXPECT_EQ(wanted[0][0].toLongLong(), *pane().cursor());
  QTest::keyClick(&pane(), Qt::Key_Escape);
  EXPECT_FALSE(pane().cursor());
}

TEST_F(LiveStripsTest, VerdictsStandWhereTheyFell) {
  sit("hill-start");
  tests::playScript(*seat_, "hill-start", "good", 140);
  std::size_t verdicts = 0;
  for (const RunEvent& event : page_->events().events())
    verdicts += event.kind >= EventKind::kMet ? 1 : 0;
  EXPECT_GT(verdicts, 0U);
  EXPECT_EQ(verdicts, run().marker().marks().size());
}

TEST_F(LiveStripsTest, HiddenItKeepsAndDrawsNothing) {
  sit("hill-start");
  pass(5);
  page_->hide();
  const auto before = pane().drawnPoints(Signal::kTrueAir);
  pass(5);
  EXPECT_EQ(pane().drawnPoints(Signal::kTrueAir), before);
  EXPECT_GT(page_->tape().lastTick(), 980);
  page_->show();
  settle();
  EXPECT_NEAR(pane().drawnPoints(Signal::kTrueAir).back().x(),
              static_cast<double>(page_->tape().lastTick()) / 100, 1e-6);
}

TEST_F(LiveStripsTest, AnotherRunBeginsAnew) {
  sit("hill-start");
  pass(20);
  QTest::keyClick(&pane(), Qt::Key_Space);
  const auto other = tests::sitDown("hill-start");
  desk_.setSeat(other.get());
  settle();
  EXPECT_FALSE(pane().isHeld());
  EXPECT_LE(page_->tape().lastTick(), 0);
  EXPECT_TRUE(page_->events().events().empty());
  desk_.setSeat(nullptr);
  settle();
}

TEST_F(LiveStripsTest, CurvesAndCursorAreDrawnWhereTheyShouldBe) {
  sit("hill-start");
  page_->choose({Signal::kTrueAir});
  page_->setMinutes(1);
  pass(61);
  QImage image(pane().size(), QImage::Format_RGB32);
  moveTo(pane().xOf(3000));
  pane().render(&image);
  // Violet is the only tone with less green than both others.
  const auto is_hand = [&image](int at_x, int at_y) {
    const QColor c = image.pixelColor(at_x, at_y);
    return c.red() > c.green() + 15 && c.blue() > c.green() + 15;
  };
  const int x = static_cast<int>(std::lround(pane().xOf(*pane().cursor())));
  int inked = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int dx = -1; dx <= 1; ++dx) inked += is_hand(x + dx, y) ? 1 : 0;
  EXPECT_GT(inked, image.height() / 3);
  // The curve's own tone in a column away from the cursor, at the height its scale says.
  const QColor curve = drawing::colorOf(drawing::Theme::kDay, drawing::Tone::kCurve1);
  const int column = static_cast<int>(pane().xOf(4500));
  int found = 0;
  for (int y = 0; y < image.height(); ++y) found += image.pixelColor(column, y) == curve ? 1 : 0;
  EXPECT_GE(found, 1);
  EXPECT_LE(found, 4);
}

TEST_F(LiveStripsTest, EverythingIsReachedByKeysAndNamed) {
  sit("hill-start");
  expectAllReached();
}

}  // namespace
}  // namespace cabwright::desk
