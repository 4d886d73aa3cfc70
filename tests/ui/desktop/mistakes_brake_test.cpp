// SPDX-License-Identifier: GPL-3.0-or-later
// Typical mistakes with air and vacuum up, made with the mouse: what needles and lamps show of
// them, and what the sheet says afterwards.
#include "mistakes_rig.h"

namespace cabwright::tests {
namespace {

using ::testing::HasSubstr;
using unit::Control;
using unit::Signal;

constexpr std::size_t kTrainPipe = 0, kReleasePipe = 1;

// Before the brake test: everything is up, nothing has been tried.
struct Ready : Trainee {
  Ready() : Trainee(scenario::Mode::kAssessment) {
    up = desk.playUpTo("cold-preparation", "good", "say ask_second_person");
  }
  double vacuum(std::size_t which) { return needle(QStringLiteral("Vacuum"), which); }
  bool up = false;
};

TEST(Mistake, TheDeviceLetGoPutsTheBrakeOnAfterItsFiveSeconds) {
  Ready t;
  ASSERT_TRUE(t.up);
  EXPECT_EQ(t.lamp(Signal::kCab1LampDevice), "lit");
  EXPECT_NEAR(t.vacuum(kTrainPipe), 21, 0.6);
  ASSERT_TRUE(t.click(Control::kCab1Device));
  EXPECT_EQ(t.value(Control::kCab1Device), 0);
  t.desk.pass(1);
  EXPECT_EQ(t.lamp(Signal::kCab1LampDevice), "dark");
  t.desk.pass(2.5);
  EXPECT_NEAR(t.vacuum(kTrainPipe), 21, 0.6);
  t.desk.pass(6.5);
  EXPECT_LT(t.vacuum(kTrainPipe), 8);
  // Taken hold of again it comes back.
  ASSERT_TRUE(t.click(Control::kCab1Device));
  t.desk.pass(60);
  EXPECT_EQ(t.lamp(Signal::kCab1LampDevice), "lit");
  EXPECT_NEAR(t.vacuum(kTrainPipe), 21, 0.8);
}

TEST(Mistake, FanningTheBrakeEmptiesTheReleasePipe) {
  Ready t;
  ASSERT_TRUE(t.up);
  const double before = t.vacuum(kReleasePipe);
  EXPECT_GT(before, 24);
  for (int k = 0; k < 6; ++k) {
    ASSERT_TRUE(t.drag(Control::kCab1Brake, 1));
    t.desk.pass(2);
    ASSERT_TRUE(t.drag(Control::kCab1Brake, -1));
    t.desk.pass(3);
  }
  EXPECT_LT(t.vacuum(kReleasePipe), before - 3);
  EXPECT_LT(t.vacuum(kTrainPipe), 20);  // and there is no brake to be released
}

TEST(Mistake, TheHandbrakeOffBeforeTheBrakeTestFailsTheRun) {
  Ready t;
  ASSERT_TRUE(t.up);
  auto* wheel = t.part(Control::kCab1Handbrake);
  ASSERT_TRUE(t.click(Control::kCab1Handbrake));  // the pawl is in
  EXPECT_GT(t.value(Control::kCab1Handbrake), 0.9);
  EXPECT_THAT(t.desk.view().message().toStdString(), HasSubstr("the wheel will not turn"));
  ASSERT_TRUE(t.click(Control::kCab1Pawl));
  EXPECT_EQ(t.value(Control::kCab1Pawl), 0);
  ASSERT_TRUE(t.click(Control::kCab1Handbrake));
  t.desk.pass(30);
  EXPECT_LT(t.value(Control::kCab1Handbrake), 0.05);
  EXPECT_LT(wheel->role().number, 0.05);
  EXPECT_THAT(t.verdict("brake-test"), HasSubstr("broken"));
  EXPECT_FALSE(t.desk.seat().run().sheet().decision.passed);
}

}  // namespace
}  // namespace cabwright::tests
