// SPDX-License-Identifier: GPL-3.0-or-later
// The run as the desk knows it: what is done from there is in the record, and in whose name.
#include "desk/desk.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QSignalSpy>

#include "desk_rig.h"

namespace cabwright::desk {
namespace {

TEST(Desk, WithoutARunRefusesAndSaysWhy) {
  Desk desk;
  QSignalSpy faults(&desk, &Desk::fault);
  EXPECT_EQ(desk.run(), nullptr);
  EXPECT_FALSE(desk.take("remark", "general", "late"));
  ASSERT_EQ(faults.count(), 1);
  EXPECT_FALSE(faults[0][0].toString().isEmpty());
}

TEST(Desk, DoesInTheNameOfWhoIsMeant) {
  const auto seat = tests::makeSeat("warm-tooth", scenario::Mode::kPractice);
  Desk desk;
  desk.setSeat(seat.get());
  EXPECT_TRUE(desk.take("remark", "general", "waits at the lamp"));
  EXPECT_TRUE(desk.take({unit::Actor::kGuard, "ring", "bell", "2"}));
  const auto& done = desk.run()->actions();
  ASSERT_EQ(done.size(), 2U);
  EXPECT_EQ(unit::toText(done[0].action), "instructor: remark general waits at the lamp");
  EXPECT_EQ(unit::toText(done[1].action), "guard: ring bell 2");
}

TEST(Desk, SaysWhatIsWrongWithWords) {
  const auto seat = tests::makeSeat("warm-tooth", scenario::Mode::kPractice);
  Desk desk;
  desk.setSeat(seat.get());
  QSignalSpy faults(&desk, &Desk::fault);
  EXPECT_FALSE(desk.take("set", "cab9.throttle", "2"));
  ASSERT_EQ(faults.count(), 1);
  EXPECT_THAT(faults[0][0].toString().toStdString(), testing::HasSubstr("cab9.throttle"));
}

TEST(Desk, LetsGoOfASeatThatIsGone) {
  auto seat = tests::makeSeat("warm-tooth", scenario::Mode::kPractice);
  Desk desk;
  QSignalSpy runs(&desk, &Desk::runChanged);
  desk.setSeat(seat.get());
  EXPECT_TRUE(desk.isLive());
  seat.reset();
  EXPECT_EQ(desk.run(), nullptr);
  EXPECT_FALSE(desk.isLive());
  EXPECT_EQ(runs.count(), 2);
}

TEST(Desk, DoesNotGoBackInAssessment) {
  const auto seat = tests::makeSeat("warm-tooth", scenario::Mode::kAssessment);
  Desk desk;
  desk.setSeat(seat.get());
  QSignalSpy faults(&desk, &Desk::fault);
  QSignalSpy asked(&desk, &Desk::backAsked);
  desk.goBack({0, 1, "start"});
  EXPECT_EQ(asked.count(), 0);
  EXPECT_EQ(faults.count(), 1);
}

}  // namespace
}  // namespace cabwright::desk
