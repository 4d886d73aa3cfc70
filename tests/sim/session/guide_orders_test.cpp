// SPDX-License-Identifier: GPL-3.0-or-later
// The guide knows one order. To who takes another safe one it goes on with what is left: it does
// not ask again for what is done, and comes to its end.
#include <gtest/gtest.h>

#include "session/guide_walk.h"
#include "shipped_run.h"

namespace cabwright::session {
namespace {

std::string currentId(const GuideWalk& walk) {
  return walk.current() != nullptr ? walk.current()->id : "";
}

std::string goodLines() {
  const std::string path = (shippedFolder() / "cold-preparation" / "good.txt").string();
  return std::get<scenario::SourceFile>(scenario::loadText(path)).text;
}

// From the first line that begins so to before the next one after it that begins so.
std::string cut(const std::string& lines, const std::string& from, const std::string& to) {
  const std::size_t begin = lines.find(from);
  return lines.substr(begin, lines.find(to, begin + 1) - begin);
}

std::string swapped(const std::string& lines, const std::string& a, const std::string& b) {
  std::string out = lines;
  for (std::size_t at = 0; at < out.size(); ++at) {
    if (out.compare(at, a.size(), a) == 0)
      out.replace(at, a.size(), b);
    else if (out.compare(at, b.size(), b) == 0)
      out.replace(at, b.size(), a);
  }
  return out;
}

std::string with(std::string lines, const std::string& old, const std::string& now) {
  return lines.replace(lines.find(old), old.size(), now);
}

struct OtherOrder {
  std::string name, lines;
  std::string last;  ///< where to stop looking; empty: at the end of it all
};
void PrintTo(const OtherOrder& order, std::ostream* out) { *out << order.name; }

std::vector<OtherOrder> otherOrders() {
  const std::string good = goodLines();
  const std::string ground = cut(good, "# Engine 1 from the ground", "go cab1");
  const std::string proving = cut(good, "# Each engine stopped once", "# The reservoir");
  const std::string test = cut(good, "set cab1.brake 0.45", "# full application");
  return {{"ShippedOtherWays",
           std::get<scenario::SourceFile>(
               scenario::loadText(
                   (shippedFolder() / "cold-preparation" / "good-other-ways.txt").string()))
               .text,
           ""},
          {"Engine2FirstFromTheGround", with(good, ground, swapped(ground, "engine1", "engine2")),
           "hold cab1.device"},
          {"Engine1ProvedFirst",
           with(good, proving,
                swapped(swapped(swapped(swapped(proving, "stop1", "stop2"), "rpm1", "rpm2"),
                                "start1", "start2"),
                        "lamp_engine1", "lamp_engine2")),
           "note leak 1.9"},
          {"OneFullApplication", with(good, test, ""), "say ask_rear_gauge"}};
}

class OtherOrders : public testing::TestWithParam<OtherOrder> {};

TEST_P(OtherOrders, AreNotHeldAgainstWhoTakesThem) {
  LiveOptions options;
  options.mode = scenario::Mode::kGuided;
  LiveRun live(shippedSituation("cold-preparation"), options);
  const std::string path = (shippedFolder() / "cold-preparation" / "other.txt").string();
  auto parsed = scenario::parseScript(
      {path, GetParam().lines},
      [&live](const unit::Action& action) { return live.unit().findActionFault(action); },
      scenario::neighboursOf(path));
  if (const auto* faults = std::get_if<scenario::FileFaults>(&parsed))
    for (const auto& fault : *faults) FAIL() << scenario::toText(fault);
  scenario::ScriptRunner runner(std::get<scenario::Script>(parsed));
  bool looking = true;
  std::string step_then;
  playGood(
      live, runner, [&] { return looking; },
      [&](const unit::Action& action) {
        if (GetParam().last.empty() || unit::toText(action) != GetParam().last) return;
        looking = false;
        step_then = currentId(*live.guide());
      });
  const GuideWalk& walk = *live.guide();
  if (GetParam().last.empty()) {
    EXPECT_TRUE(walk.isDone()) << "asks for " << currentId(walk);
    return;
  }
  // It asks for what is done next, as it does when all was done in its own order.
  LiveRun taught(shippedSituation("cold-preparation"), options);
  scenario::ScriptRunner good(goodScript("cold-preparation", taught.unit()));
  bool going = true;
  std::string step_taught;
  playGood(
      taught, good, [&] { return going; },
      [&](const unit::Action& action) {
        if (unit::toText(action) != GetParam().last) return;
        going = false;
        step_taught = currentId(*taught.guide());
      });
  EXPECT_FALSE(looking) << "never came to " << GetParam().last;
  EXPECT_EQ(step_then, step_taught);
}

INSTANTIATE_TEST_SUITE_P(ColdPreparation, OtherOrders, testing::ValuesIn(otherOrders()),
                         [](const auto& order) { return order.param.name; });

}  // namespace
}  // namespace cabwright::session
