// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QSignalSpy>

#include "cab/seat.h"
#include "review/playback.h"
#include "review_room/opened.h"
#include "reviewed_session.h"
#include "session/replay.h"

namespace cabwright::review_room {
namespace {

class SeatToLookAtTest : public testing::Test {
 protected:
  SeatToLookAtTest()
      : file_(recorded(folder_)),
        store_(file_),
        seat_(session::LiveRun::toLookAt(session::readSituation(store_), store_.header())),
        playback_(file_) {
    while (playback_.build(1000)) {
    }
  }
  static std::filesystem::path recorded(const review::Folder& folder) {
    session::record(folder / "a.cabsession", session::kGoodDeeds);
    return folder / "a.cabsession";
  }
  review::Folder folder_;
  std::filesystem::path file_;
  session::Store store_;
  cab::Seat seat_;
  review::Playback playback_;
};

TEST_F(SeatToLookAtTest, ShowsWhateverMomentItIsGiven) {
  const QSignalSpy changed(&seat_, &cab::Seat::momentChanged);
  for (const std::int64_t tick : {915, 120, 121, 0, 600}) {
    seat_.showMoment(*playback_.findMoment(tick));
    EXPECT_EQ(seat_.run().tick(), tick);
    EXPECT_EQ(seat_.value(unit::Control::kCab1Pawl) > 0.5, tick <= 120) << tick;
  }
  EXPECT_EQ(changed.count(), 5);
}

TEST_F(SeatToLookAtTest, NothingCanBeDoneInIt) {
  seat_.showMoment(*playback_.findMoment(300));
  const std::uint64_t before = seat_.run().run().hash();
  EXPECT_FALSE(seat_.setControl(unit::Control::kCab1Gear, 1).accepted);
  EXPECT_EQ(seat_.refusalOf(unit::Control::kCab1Gear), QString())
      << "the trainee was refused nothing";
  EXPECT_TRUE(seat_.takeFor({unit::Actor::kInstructor, "set", "cab1.gear", "1"}).fault);
  seat_.passRealTime(10);
  seat_.passUntilChange();
  EXPECT_FALSE(seat_.isPassing());
  EXPECT_EQ(seat_.run().run().hash(), before);
  EXPECT_TRUE(seat_.isFinished());
  EXPECT_EQ(seat_.guide(), nullptr);
}

TEST_F(SeatToLookAtTest, ToWalkSomewhereIsToLookFromThere) {
  const QSignalSpy moved(&seat_, &cab::Seat::placeChanged);
  const QSignalSpy asked(&seat_, &cab::Seat::viewpointChanged);
  EXPECT_EQ(seat_.place(), unit::Place::kCab1);
  EXPECT_TRUE(seat_.walk(unit::Place::kEngine2).accepted);
  EXPECT_EQ(seat_.place(), unit::Place::kEngine2);
  EXPECT_FALSE(seat_.isWalking());
  EXPECT_EQ(seat_.unit().world().trainee.place, unit::Place::kCab1);
  seat_.lookFrom(std::nullopt);
  EXPECT_EQ(seat_.place(), unit::Place::kCab1);
  EXPECT_EQ(moved.count(), 2);
  EXPECT_EQ(asked.count(), 2);
}

TEST_F(SeatToLookAtTest, WhatCameOfADeedIsSeenAgain) {
  const QSignalSpy acted(&seat_, &cab::Seat::acted);
  seat_.showMoment(*playback_.findMoment(300));
  seat_.recall({unit::Actor::kTrainee, "set", "cab1.gear", "1"}, {false, "will not move", "why"});
  EXPECT_EQ(seat_.refusalOf(unit::Control::kCab1Gear), QStringLiteral("why"));
  EXPECT_EQ(acted.count(), 1);
  seat_.showMoment(*playback_.findMoment(310));
  EXPECT_EQ(seat_.refusalOf(unit::Control::kCab1Gear), QString());
}

}  // namespace
}  // namespace cabwright::review_room
