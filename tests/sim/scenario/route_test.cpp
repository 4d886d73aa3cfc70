// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/route_file.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "scenario_texts.h"

namespace cabwright::scenario {
namespace {

using cabwright::testing::faultsOf;
using cabwright::testing::good;
using cabwright::testing::shippedScenarios;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

const std::string kTop = "title = \"x\"\n[[grade]]\nfrom = 0\nslope = \"level\"\n";

std::vector<std::string> faultsIn(const std::string& text) {
  return faultsOf(parseRoute("r", {"r.toml", text}));
}

TEST(RouteFile, ReadsAllThereIs) {
  const RouteFile r = good(parseRoute("r", {"r.toml", R"(title = "Line"
text = "words"
easing = "60 m"
display = 4
[[grade]]
from = -100
slope = "fall 1 in 200"
[[grade]]
from = "1.5 km"
slope = "rise 12.5 permille"
curve_radius = 300
[[signal]]
name = "A1"
at = 20
faces = "down"
shows = "clear"
[[platform]]
name = "Halt"
from = 10
to = 110
mark_up = 100
mark_down = 20
side = 2
[[limit]]
from = 0
speed = "25 mph"
[[board]]
at = 5
says = "whistle"
[[berth]]
name = "bay_1"
at = -50
)"}));
  EXPECT_EQ(r.route.name, "r");
  EXPECT_EQ(r.route.display, 4);
  EXPECT_EQ(r.route.easing_m, 60.0);
  ASSERT_EQ(r.route.grades.size(), 2u);
  EXPECT_EQ(r.route.grades[0].gradient, -1.0 / 200.0);
  EXPECT_EQ(r.route.grades[1].from_m, 1500.0);
  EXPECT_EQ(r.route.grades[1].gradient, 0.0125);
  EXPECT_NEAR(r.route.grades[1].curve_n_t, 650.0 / 245.0 * 9.80665, 1e-9);
  EXPECT_EQ(r.route.signals[0].direction, -1);
  EXPECT_TRUE(r.route.signals[0].clear);
  EXPECT_EQ(r.route.signals[0].sighting_m, 400.0);
  EXPECT_EQ(r.route.platforms[0].side, 2);
  EXPECT_EQ(r.route.limits[0].mph, 25.0);
  EXPECT_EQ(r.boards[0].says, "whistle");
  EXPECT_EQ(r.berths[0].at_m, -50.0);
}

// Roeckl: 650/(R - 55) N/kN from 300 m up, 500/(R - 30) below.
TEST(RouteFile, CurveResistanceFollowsTheRadius) {
  EXPECT_NEAR(calcCurveResistance(705.0), 9.80665, 1e-9);
  EXPECT_NEAR(calcCurveResistance(130.0), 5.0 * 9.80665, 1e-9);
}

TEST(RouteFile, PointsAtSlopesThatAreNone) {
  EXPECT_THAT(faultsIn("title = \"x\"\n[[grade]]\nfrom = 0\nslope = \"1 in 80\"\n"
                       "[[grade]]\nfrom = 9\nslope = \"rise 1 in 5\"\n"
                       "[[grade]]\nfrom = 10\nslope = 0.01\n"
                       "[[grade]]\nfrom = 11\nslope = \"fall 1 in 0\"\n"),
              ElementsAre(HasSubstr("r.toml:4:9: '1 in 80' is no slope; allowed: \"level\""),
                          "r.toml:7:9: 'rise 1 in 5' is steeper than the 1 in 10 allowed",
                          "r.toml:10:9: 'slope' is a number; allowed: text",
                          HasSubstr("r.toml:13:9: 'fall 1 in 0' is no slope")));
}

TEST(RouteFile, PointsAtWhatIsOutOfOrderOrPlace) {
  EXPECT_THAT(
      faultsIn(kTop +
               "[[grade]]\nfrom = 0\nslope = \"level\"\n"
               "[[limit]]\nfrom = 5\nspeed = 20\n[[limit]]\nfrom = 4\nspeed = \"20 km\"\n"
               "[[platform]]\nname = \"p\"\nfrom = 100\nto = 50\nmark_up = 60\nmark_down = 70\n"
               "side = 3\n"
               "[[platform]]\nname = \"p\"\nfrom = 0\nto = 50\nmark_up = 60\nmark_down = 10\n"
               "side = 1\n"),
      ElementsAre("r.toml:6:8: 'from' is 0; allowed: more than the 0 m before it",
                  "r.toml:12:8: 'from' is 4; allowed: more than the 5 m before it",
                  "r.toml:13:9: 'speed': unit 'km' found; allowed: a number of mph",
                  "r.toml:17:6: 'to' is 50; allowed: more than 'from', which is 100 m",
                  "r.toml:20:8: 'side' is 3; allowed: 1 to 2",
                  "r.toml:22:8: there is a platform 'p' already",
                  "r.toml:25:11: 'mark_up' is 60; allowed: inside the platform, 0 to 50 m"));
}

TEST(RouteFile, PointsAtSignalsWithoutAGoodName) {
  EXPECT_THAT(
      faultsIn(kTop + "[[signal]]\nname = \"A 1\"\nat = 0\nfaces = \"up\"\n"
                      "[[signal]]\nname = \"B\"\nat = 0\nfaces = \"uo\"\n"
                      "[[signal]]\nname = \"B\"\nat = 0\nfaces = \"up\"\nshows = \"green\"\n"
                      "[[signal]]\nnmae = \"C\"\nat = 0\nfaces = \"up\"\n"),
      ElementsAre("r.toml:6:8: 'A 1' found; allowed: letters, digits and '_'",
                  "r.toml:12:9: unknown faces 'uo'; did you mean 'up'?",
                  "r.toml:14:8: there is a signal 'B' already",
                  HasSubstr("r.toml:17:9: unknown shows 'green'"),
                  "r.toml:18:1: [[signal]] needs 'name'",
                  "r.toml:19:1: unknown key 'nmae'; did you mean 'name'? in [[signal]]"));
}

TEST(RouteFile, NeedsAGradeAndKnowsItsKeys) {
  EXPECT_THAT(faultsIn("title = \"x\"\ngrades = 3\n"),
              ElementsAre("r.toml:1:1: a route file needs one [[grade]] at least",
                          "r.toml:2:1: unknown key 'grades'; did you mean 'grade'? in a route "
                          "file"));
  EXPECT_THAT(faultsIn("title = \"x\"\ngrade = 3\n"),
              ElementsAre("r.toml:2:9: 'grade' is a number; allowed: a list of tables, as "
                          "[[grade]]"));
}

TEST(ShippedRoutes, AreSoundAndHaveTheGradesToLearnOn) {
  const FolderLibrary library(shippedScenarios());
  bool gentle = false, bank = false, steep = false;
  std::size_t signals = 0, platforms = 0;
  for (const std::string& name : library.names(Shelf::kRoutes)) {
    const auto file = library.find(Shelf::kRoutes, name);
    ASSERT_TRUE(std::holds_alternative<SourceFile>(file)) << name;
    const RouteFile r = good(parseRoute(name, std::get<SourceFile>(file)));
    for (const plant::GradePoint& g : r.route.grades) {
      gentle = gentle || std::abs(std::abs(g.gradient) - 1.0 / 200) < 1e-12;
      bank = bank || std::abs(std::abs(g.gradient) - 1.0 / 80) < 1e-12;
      steep = steep || std::abs(std::abs(g.gradient) - 1.0 / 50) < 1e-12;
    }
    signals += r.route.signals.size();
    platforms += r.route.platforms.size();
    EXPECT_FALSE(r.berths.empty());
  }
  EXPECT_TRUE(gentle && bank && steep);
  EXPECT_GE(signals, 5u);
  EXPECT_GE(platforms, 3u);
}

}  // namespace
}  // namespace cabwright::scenario
