// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/strip_chart.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "after/thin_out.h"
#include "after/words.h"
#include "strip_rig.h"
#include "text_recorder.h"

namespace cabwright::after {
namespace {

using marking::RuleClass;
using testing::ElementsAre;
using unit::Signal;

class StripChartTest : public StripRig {};

TEST_F(StripChartTest, SaysAtTheCursorWhatTheHistoryHolds) {
  show();
  for (std::int64_t tick = 0; tick <= 60000; tick += 1237) {
    strip_->setCursor(tick);
    for (const Plot& plot : strip_->plots())
      for (const Curve& curve : plot.curves)
        EXPECT_EQ(strip_->valueAtCursor(curve.signal),
                  static_cast<double>(*history_.findValue(curve.signal, tick)));
    const int place = static_cast<int>(*history_.findValue(Signal::kPlace, tick));
    EXPECT_EQ(wordsAt(strip_->lanes().front(), tick), placeName(place)) << tick;
    EXPECT_TRUE(strip_->momentText().contains(placeName(place)));
  }
}

TEST_F(StripChartTest, FlagsStandAtTheTicksOfTheirMarks) {
  show();
  std::vector<std::tuple<std::int64_t, int, bool>> found;
  for (const Flag& flag : strip_->flags()) found.emplace_back(flag.tick, flag.line, flag.again);
  EXPECT_THAT(found, ElementsAre(std::tuple(4000, 2, false), std::tuple(9000, 2, true),
                                 std::tuple(31230, 1, false), std::tuple(31230, 3, false)));
  // In proportion to time between the ends of the plots.
  const double left = strip_->xOf(0), right = strip_->xOf(60000);
  EXPECT_NEAR(strip_->xOf(31230), left + (right - left) * 0.5205, 0.01);
}

TEST(StripFlags, ThoseThatComeTogetherStandInRowsAndNoneIsLost) {
  std::vector<Flag> flags;
  for (int n = 1; n <= 20; ++n) flags.push_back({1000 + n, n, RuleClass::kSerious, {}, false});
  flags.push_back({60000, 21, RuleClass::kSerious, {}, false});
  const StripLayout layout = layOutStrip({1040, 700}, 5, 5, 3);
  const auto placed = placeFlags(flags, layout, {0, 60000});
  int shown = 0;
  for (const PlacedFlag& flag : placed) {
    shown += 1 + flag.merged;
    EXPECT_LT(flag.row, kMostFlagRows);
    EXPECT_NEAR(flag.x, layout.xOf(flags[flag.flag].tick, {0, 60000}), 1e-9);
  }
  EXPECT_EQ(shown, 21);
  EXPECT_TRUE(placed.back().mirrored);
}

TEST_F(StripChartTest, TwoHoursAreDrawnInAtMostSixHundredPointsACurve) {
  show(720000);
  for (const Plot& plot : strip_->plots()) {
    for (const Curve& curve : plot.curves) {
      const auto points = strip_->drawnPoints(curve.signal);
      EXPECT_GT(points.size(), 100);
      EXPECT_LE(static_cast<std::size_t>(points.size()), kMostPoints);
    }
  }
  // The one sample that stands out is among them.
  const auto engine = strip_->drawnPoints(Signal::kCab1Rpm1);
  EXPECT_TRUE(std::ranges::any_of(engine, [](const QPointF& p) { return p.y() == 1900; }));
}

TEST_F(StripChartTest, CurvesAreShownAtTheHeightOfTheirValues) {
  show();
  // The peak of the engine is the only thing so high in its plot: its column of the picture has
  // ink where the scale says, and the others have not.
  QImage image(strip_->size(), QImage::Format_RGB32);
  strip_->setCursor(0);
  strip_->render(&image);
  const QColor ink = drawing::colorOf(look_.theme, drawing::Tone::kCurve3);
  std::vector<int> inked;
  for (int y = 0; y < image.height(); ++y) {
    for (int dx = -1; dx <= 1; ++dx) {
      const int x = static_cast<int>(std::lround(strip_->xOf(30000))) + dx;
      if (image.pixelColor(x, y) == ink) inked.push_back(y);
    }
  }
  ASSERT_FALSE(inked.empty());
  const StripLayout layout = layOutStrip({760 / 0.72, 520 / 0.72}, 5, 5, 2);
  const QRectF box = layout.plots[2];
  EXPECT_GE(inked.front(), box.top() * 0.72);
  EXPECT_LE(inked.front(), box.top() * 0.72 + box.height() * 0.72 * 0.2);
  EXPECT_LE(inked.back(), box.bottom() * 0.72);
}

TEST_F(StripChartTest, TheCursorFollowsTheMouse) {
  show();
  for (const std::int64_t tick : {5000, 30000, 55000}) {
    mouse(QEvent::MouseMove, strip_->xOf(tick), 300, false);
    EXPECT_NEAR(static_cast<double>(strip_->cursor()), static_cast<double>(tick), 60);
  }
  mouse(QEvent::MouseMove, 20, 300, false);  // over the names nothing moves
  EXPECT_NEAR(static_cast<double>(strip_->cursor()), 55000, 60);
}

TEST_F(StripChartTest, TheWheelZoomsRoundTheMouseAndDraggingShifts) {
  show();
  const double x = strip_->xOf(20000);
  turnWheel(x, 5);
  EXPECT_LT(strip_->span().length(), 25000);
  EXPECT_NEAR(strip_->xOf(20000), x, 1.0);
  const Span before = strip_->span();
  mouse(QEvent::MouseButtonPress, x, 300, true);
  mouse(QEvent::MouseMove, x - 60, 300, true);
  mouse(QEvent::MouseButtonRelease, x - 60, 300, false);
  EXPECT_EQ(strip_->span().length(), before.length());
  EXPECT_NEAR(strip_->xOf(20000), x - 60, 1.0);
  turnWheel(x, -20);
  EXPECT_EQ(strip_->span(), (Span{0, 60000}));
}

TEST_F(StripChartTest, KeysMoveTheCursor) {
  show();
  press(Qt::Key_Home);
  EXPECT_EQ(strip_->cursor(), 0);
  press(Qt::Key_Right);
  const std::int64_t step = strip_->cursor();
  EXPECT_GT(step, 0);
  press(Qt::Key_Right, Qt::ShiftModifier);
  EXPECT_EQ(strip_->cursor(), 11 * step);
  press(Qt::Key_Left);
  EXPECT_EQ(strip_->cursor(), 10 * step);
  press(Qt::Key_Plus);
  EXPECT_LT(strip_->span().length(), 60000);
  press(Qt::Key_End);  // out of sight: the strip follows
  EXPECT_EQ(strip_->span().to, 60000);
  press(Qt::Key_0);
  EXPECT_EQ(strip_->span(), (Span{0, 60000}));
}

TEST_F(StripChartTest, KeysGoFromFlagToFlag) {
  show();
  const int& chosen = watchChosen();
  press(Qt::Key_Home);
  std::vector<std::int64_t> stops;
  for (int k = 0; k < 3; ++k) {
    press(Qt::Key_PageDown);
    stops.push_back(strip_->cursor());
  }
  EXPECT_THAT(stops, ElementsAre(4000, 9000, 31230));
  press(Qt::Key_Return);
  EXPECT_EQ(chosen, 1);
  press(Qt::Key_PageUp);
  EXPECT_EQ(strip_->cursor(), 9000);
}

TEST_F(StripChartTest, AClickOnAFlagChoosesItsLine) {
  show();
  const int& chosen = watchChosen();
  const double x = strip_->xOf(4000) + 6;
  mouse(QEvent::MouseButtonPress, x, 12, true);
  mouse(QEvent::MouseButtonRelease, x, 12, false);
  EXPECT_EQ(chosen, 2);
}

TEST_F(StripChartTest, TellsAScreenReaderAllOfIt) {
  show();
  strip_->setCursor(31230);
  const QString words = strip_->accessibleDescription();
  for (const char* part : {"Title 1", "Title 2", "Title 3", "critical", "0:05:12", "Control air"})
    EXPECT_TRUE(words.contains(QLatin1String(part))) << part;
}

std::vector<testing_ui::PaintedWords> wordsOn(StripChart& strip) {
  testing_ui::TextRecorder recorder(strip.size());
  strip.render(&recorder);
  return recorder.words();
}

TEST_F(StripChartTest, TheWordsOfLowPlotsDoNotTouch) {
  show();
  for (const int high : {430, 520}) {
    strip_->resize(760, high);
    QApplication::processEvents();
    std::vector<testing_ui::PaintedWords> legend;
    for (const auto& words : wordsOn(*strip_))
      if (words.box.right() < 200 * look_.scale) legend.push_back(words);
    ASSERT_GT(legend.size(), 12U);
    for (std::size_t a = 0; a < legend.size(); ++a)
      for (std::size_t b = a + 1; b < legend.size(); ++b) {
        const QRectF both = legend[a].box & legend[b].box;
        EXPECT_FALSE(both.width() > 1 && both.height() > 1.5)
            << high << ": " << legend[a].text.toStdString() << " and "
            << legend[b].text.toStdString();
      }
  }
}

// Two engines that stand: both figures are in the plot of the engines, none in that of the speed.
TEST_F(StripChartTest, ValuesAtTheCursorStayInTheirPlot) {
  show();
  session::SignalHistory still(session::chartSignals());
  unit::Frame frame;
  for (std::int64_t t = 0; t <= 6000; t += 10) {
    frame.tick = t;
    still.seeFrame(frame);
  }
  FinishedRun run;
  run.history = &still;
  run.sheet.head.last_tick = 6000;
  strip_->resize(760, 700);
  strip_->setReview(run, {});
  strip_->setCursor(3000);
  QApplication::processEvents();
  std::map<std::size_t, int> figures;
  const std::vector<QRectF> plots =
      layOutStrip({760 / look_.scale, 700 / look_.scale}, 0, strip_->plots().size(), 0).plots;
  ASSERT_GE(plots.size(), 4U);
  for (const auto& words : wordsOn(*strip_)) {
    if (words.box.left() < strip_->xOf(3000) || words.text.contains(QLatin1Char(':'))) continue;
    for (std::size_t k = 0; k < plots.size(); ++k) {
      const QRectF box(plots[k].topLeft() * look_.scale, plots[k].size() * look_.scale);
      if (box.adjusted(0, -8, 0, 8).contains(words.box.center())) ++figures[k];
    }
  }
  for (std::size_t k = 0; k < plots.size(); ++k)
    EXPECT_GE(figures[k], static_cast<int>(strip_->plots()[k].curves.size())) << k;
}

}  // namespace
}  // namespace cabwright::after
