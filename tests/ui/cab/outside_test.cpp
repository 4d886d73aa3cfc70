// SPDX-License-Identifier: GPL-3.0-or-later
// What is seen outside: where things stand in the window follows the line, and what is told follows
// the Frame.
#include "cab/outside_part.h"

#include <gtest/gtest.h>

#include "session/situation.h"

namespace cabwright::cab {
namespace {

session::Situation loadCold() {
  return std::get<session::Situation>(session::loadSituation(
      std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios/cold-preparation/scenario.toml"));
}

struct Line {
  session::Situation situation = loadCold();
  plant::GradeProfile profile = situation.loaded.route.route.profile();
  QRectF window{0, 0, 464, 128};

  [[nodiscard]] OutsideScene scene(double front_m, int cab = 0) const {
    OutsideScene s;
    s.line = &situation.loaded.route;
    s.profile = &profile;
    s.cab = cab;
    s.front_m = front_m;
    return s;
  }
};

TEST(Perspective, ThingsShrinkWithDistanceAndTheTrackRunsAhead) {
  const Line line;
  const OutsideScene scene = line.scene(-400);  // on the level
  const Perspective view(line.window, scene);
  const double gauge_10 = view.at(0.72, 10).x() - view.at(-0.72, 10).x();
  const double gauge_20 = view.at(0.72, 20).x() - view.at(-0.72, 20).x();
  EXPECT_NEAR(gauge_10, 2 * gauge_20, 1e-9);
  EXPECT_NEAR(view.at(0, 10).x(), line.window.center().x(), 1e-9);
  EXPECT_GT(view.at(0, 10).y(), view.at(0, 50).y());
  EXPECT_NEAR(view.at(0, 300).y(), view.horizonY(), 2.5);
}

// Before a rise the far track stands above the level's horizon; on it the horizon lies higher.
TEST(Perspective, GradientsLiftTheLine) {
  const Line line;
  const OutsideScene level = line.scene(1500), before = line.scene(1650), bank = line.scene(2400);
  const Perspective on_level(line.window, level), foot(line.window, before),
      on_bank(line.window, bank);
  EXPECT_LT(foot.at(0, 500).y(), on_level.horizonY() - 3);
  EXPECT_LT(on_level.horizonY(), on_bank.horizonY());
  // The other cab looks down the bank.
  const OutsideScene back = line.scene(2400, 1);
  EXPECT_LT(Perspective(line.window, back).horizonY(), on_level.horizonY());
}

TEST(Perspective, ASummitHidesWhatLiesBehindIt) {
  const Line line;
  const OutsideScene scene = line.scene(4700);  // level, then falling at 1 in 80 from 5000
  const Perspective view(line.window, scene);
  EXPECT_TRUE(view.isVisible(100));
  EXPECT_TRUE(view.isVisible(280));
  EXPECT_FALSE(view.isVisible(900));
}

TEST(Perspective, FogShortensTheView) {
  const Line line;
  OutsideScene scene = line.scene(-400);
  EXPECT_TRUE(Perspective(line.window, scene).isVisible(200));
  scene.weather = weatherOf("fog");
  EXPECT_FALSE(Perspective(line.window, scene).isVisible(200));
}

TEST(Outside, WordsFollowTheFrame) {
  const Line line;
  OutsideScene scene = line.scene(1500);
  scene.limit_mph = 40;
  EXPECT_TRUE(describeAhead(scene).contains(Outside::tr("no signal in sight")));
  scene.signal = 0;
  scene.signal_m = 158;
  scene.mark_m = 97;
  const QStringList words = describeAhead(scene);
  EXPECT_EQ(words.at(0), QStringLiteral("signal at danger, 160 m"));
  EXPECT_TRUE(words.contains(QStringLiteral("limit 40 mph")));
  EXPECT_TRUE(words.contains(QStringLiteral("stopping mark 95 m")));
  scene.signal = 1;
  EXPECT_EQ(describeAhead(scene).at(0), QStringLiteral("signal clear, 160 m"));
  scene.mark_m = -4;
  EXPECT_TRUE(describeAhead(scene).contains(QStringLiteral("past the mark, 4 m")));
  scene.mark_m = -0.4;
  EXPECT_TRUE(describeAhead(scene).contains(QStringLiteral("at the mark")));
}

// Going back the other way, the board shows what held before it.
TEST(Outside, TheNextBoardIsThatOfTheWayOneGoes) {
  const Line line;
  EXPECT_TRUE(describeAhead(line.scene(100)).contains(QStringLiteral("board 40 mph in 160 m")));
  EXPECT_TRUE(describeAhead(line.scene(400, 1)).contains(QStringLiteral("board 10 mph in 140 m")));
}

TEST(Outside, PlatformAndOtherLineAreOnTheirSides) {
  const Line line;
  EXPECT_EQ(describeBeside(line.scene(1560), 1), QStringLiteral("platform, Yethrick Halt"));
  EXPECT_EQ(describeBeside(line.scene(1560), 2), QStringLiteral("other line"));
  EXPECT_EQ(describeBeside(line.scene(1000), 1), QStringLiteral("path"));
  OutsideScene scene = line.scene(1000);
  scene.person[0] = true;
  EXPECT_EQ(describeBeside(scene, 1), QStringLiteral("path, somebody stands there"));
}

TEST(Outside, TheGuardsStrokesGrowOld) {
  BehindScene behind;
  EXPECT_EQ(describeBehind(behind), QStringLiteral("silent"));
  behind.code = 33;
  behind.age_s = 5;
  EXPECT_EQ(describeBehind(behind), QStringLiteral("3-3"));
  behind.age_s = 300;
  EXPECT_EQ(describeBehind(behind), QStringLiteral("silent"));
  behind.stands = true;
  EXPECT_EQ(describeBehind(behind), QStringLiteral("3-3"));
}

TEST(Outside, ThePartLeavesRoomToHearIn) {
  for (double width : {1180.0, 1254.0}) {
    const QRectF band(40, 36, width, 132);
    const QRectF hearing = OutsidePart::hearingArea(band);
    EXPECT_GE(hearing.width(), 420);
    EXPECT_TRUE(band.contains(hearing));
  }
}

TEST(Outside, ThePartSeesTheSignalOfItsCab) {
  session::LiveOptions options;
  options.mode = scenario::Mode::kGuided;
  Seat seat(std::make_unique<session::LiveRun>(loadCold(), options));
  seat.act("take", "door_key");
  seat.act("go", "cab1", "skip");
  seat.passRealTime(0.2);
  SheetStyle style;
  style.frame = drawing::calcSheetFrame({1280, 720});
  OutsidePart part(seat, style, QRectF(40, 60, 1180, 132), nullptr);
  EXPECT_EQ(part.scene().signal, 0);
  EXPECT_NEAR(part.scene().signal_m, 60, 1);
  EXPECT_TRUE(part.role().value.startsWith(QStringLiteral("signal at danger, 60 m")));
  EXPECT_FALSE(part.behind().ringing);
}

}  // namespace
}  // namespace cabwright::cab
