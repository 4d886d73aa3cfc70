// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/signal_tape.h"

#include <gtest/gtest.h>

#include <map>

#include "after/thin_out.h"
#include "desk_play.h"

namespace cabwright::desk {
namespace {

using unit::Signal;

TEST(SignalTape, HoldsOfEverySignalWhatTheRunShowedTenTimesASecond) {
  const auto seat = tests::sitDown("hill-start");
  SignalTape tape;
  std::map<std::int64_t, unit::Frame> seen;
  QObject::connect(seat.get(), &cab::Seat::frameChanged, seat.get(), [&] {
    if (tape.sample(seat->run())) seen[seat->run().tick()] = seat->frame();
  });
  tests::playScript(*seat, "hill-start", "good", 110);
  EXPECT_GE(seen.size(), 1099U);
  std::size_t changed = 0;
  for (std::size_t k = 0; k < unit::kSignalCount; ++k) {
    const auto signal = static_cast<Signal>(k);
    bool same = true;
    for (const auto& [tick, frame] : seen) {
      const auto value = tape.findValue(signal, tick);
      ASSERT_TRUE(value) << unit::signalInfo(signal).name;
      ASSERT_EQ(*value, frame[signal]) << unit::signalInfo(signal).name << " at " << tick;
      same = same && frame[signal] == seen.begin()->second[signal];
    }
    changed += same ? 0 : 1;
  }
  EXPECT_GT(changed, 100U);  // the script drives off
}

TEST(SignalTape, DoesNotChangeTheRun) {
  const auto watched = tests::sitDown("hill-start"), alone = tests::sitDown("hill-start");
  SignalTape tape;
  QObject::connect(watched.get(), &cab::Seat::frameChanged, watched.get(),
                   [&] { tape.sample(watched->run()); });
  tests::playScript(*watched, "hill-start", "good", 110);
  tests::playScript(*alone, "hill-start", "good", 110);
  ASSERT_EQ(watched->run().tick(), alone->run().tick());
  EXPECT_EQ(watched->run().run().hash(), alone->run().run().hash());
}

TEST(SignalTape, WhatWasNotLookedAtComesFromTheRunsOwnHistory) {
  const auto seat = tests::sitDown("hill-start");
  SignalTape tape;
  tape.sample(seat->run());
  tests::playScript(*seat, "hill-start", "good", 110);
  tape.sample(seat->run());
  for (std::int64_t tick = 10; tick < 11000; tick += 370)
    for (const Signal signal : {Signal::kCab1TrainPipe, Signal::kTrueRpm1, Signal::kCab1Gear})
      EXPECT_EQ(tape.findValue(signal, tick), seat->run().history().findValue(signal, tick));
  // A signal that the history does not keep is taken to have stood, and then to be what it is.
  EXPECT_EQ(tape.findValue(Signal::kTrueRack1, seat->run().tick()),
            seat->frame()[Signal::kTrueRack1]);
  EXPECT_EQ(tape.findValue(Signal::kTrueRack1, 5000), tape.findValue(Signal::kTrueRack1, 0));
}

TEST(SignalTape, OpenedLateItKnowsTheGaugesPastAndOfOthersOnlyThePresent) {
  const auto seat = tests::sitDown("hill-start");
  tests::passSeconds(*seat, 20);
  SignalTape tape;
  tape.sample(seat->run());
  EXPECT_EQ(tape.findValue(Signal::kCab1Air, 1000),
            seat->run().history().findValue(Signal::kCab1Air, 1000));
  EXPECT_FALSE(tape.findValue(Signal::kTrueRack1, 1000));
  EXPECT_TRUE(tape.points(Signal::kTrueRack1, 0, 1000).isEmpty());
  EXPECT_TRUE(tape.findValue(Signal::kTrueRack1, seat->run().tick()));
}

TEST(SignalTape, KeepsTwentyMinutesAndDrawsThemInSixHundredPoints) {
  const auto seat = tests::sitDown("hill-start");
  SignalTape tape;
  while (seat->run().tick() < 150000) {
    tests::passSeconds(*seat, 0.1);
    tape.sample(seat->run());
  }
  const std::int64_t last = tape.lastTick();
  EXPECT_GE(tape.ticks().size(), SignalTape::kMostSamples);
  EXPECT_LE(tape.ticks().size(), SignalTape::kMostSamples + 1201);
  EXPECT_LE(tape.firstTick(), last - 119000);
  EXPECT_GT(tape.firstTick(), 0);
  const auto points = tape.points(Signal::kTrueAir, last - 120000, last);
  EXPECT_GT(points.size(), 100);
  EXPECT_LE(static_cast<std::size_t>(points.size()), after::kMostPoints);
  EXPECT_EQ(points.back().y(), static_cast<double>(seat->frame()[Signal::kTrueAir]));
  EXPECT_LT(tape.bytes(), 30U * 1000 * 1000);
}

TEST(SignalTape, GoneBackItBeginsAnew) {
  const auto late = tests::sitDown("hill-start"), early = tests::sitDown("hill-start");
  SignalTape tape;
  tests::passSeconds(*late, 10);
  tape.sample(late->run());
  tests::passSeconds(*early, 5);
  tape.sample(early->run());
  EXPECT_EQ(tape.lastTick(), early->run().tick());
  EXPECT_EQ(tape.findValue(Signal::kTrueAir, tape.lastTick()), early->frame()[Signal::kTrueAir]);
}

}  // namespace
}  // namespace cabwright::desk
