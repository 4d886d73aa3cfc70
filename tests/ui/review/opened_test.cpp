// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/opened.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QSignalSpy>
#include <nlohmann/json.hpp>

#include "review/review.h"
#include "reviewed_session.h"
#include "session/session_error.h"

namespace cabwright::review_room {
namespace {

using marking::Outcome;

class OpenedTest : public testing::Test {
 protected:
  void SetUp() override { review::recordAndSeal(file_, review::kBadDeeds); }
  review::Folder folder_;
  std::filesystem::path file_ = folder_ / "a.cabsession";
};

TEST_F(OpenedTest, ShowsTheSameSheetAsTheMarkingOfTheFile) {
  const Opened opened(file_);
  const review::Reviewed reviewed = review::reviewSession(session::Store(file_));
  EXPECT_EQ(marking::sheetToJson(opened.sheet()), marking::sheetToJson(reviewed.sheet));
  EXPECT_TRUE(opened.readFault().empty());
  EXPECT_EQ(opened.verification().standing, session::Standing::kWhole);
  EXPECT_EQ(opened.lastTick(), session::Store(file_).lastTick());
  EXPECT_EQ(opened.run().history->size(), static_cast<std::size_t>(opened.lastTick() / 10 + 1));
}

TEST_F(OpenedTest, TheCursorStaysWithinTheSession) {
  Opened opened(file_);
  const QSignalSpy moved(&opened, &Opened::cursorMoved);
  opened.setCursor(-5);
  EXPECT_EQ(moved.count(), 0);
  opened.setCursor(1'000'000'000);
  EXPECT_EQ(opened.cursor(), opened.lastTick());
  EXPECT_EQ(moved.count(), 1);
}

TEST_F(OpenedTest, WhatIsAddedIsSignedAndCounts) {
  Opened opened(file_);
  const review::Override counts{"gear", "", Outcome::kMet, "asked to by the instructor"};
  EXPECT_NE(opened.add({counts}), std::nullopt) << "nobody has signed on";
  opened.setSigner(review::kAssessor, session::sampleKey(2));
  ASSERT_FALSE(opened.sheet().decision.passed);
  const QSignalSpy changed(&opened, &Opened::entriesChanged);
  EXPECT_EQ(opened.add({counts}), std::nullopt);
  EXPECT_EQ(changed.count(), 1);
  EXPECT_TRUE(opened.sheet().decision.passed);
  EXPECT_FALSE(opened.run().sheet.decision.passed) << "as it was marked";
  EXPECT_EQ(opened.entries().size(), 1U);
  EXPECT_EQ(opened.verification().standing, session::Standing::kWhole);
}

TEST_F(OpenedTest, WhatCannotBeAddedIsToldAndChangesNothing) {
  Opened opened(file_);
  opened.setSigner(review::kAssessor, session::sampleKey(2));
  const auto fault = opened.add({review::Override{"no-such-line", "", Outcome::kMet, "why"}});
  ASSERT_TRUE(fault);
  EXPECT_THAT(*fault, testing::HasSubstr("no-such-line"));
  EXPECT_TRUE(opened.entries().empty());
}

TEST_F(OpenedTest, WhatIsNoSessionIsRefused) {
  EXPECT_THROW(Opened(folder_ / "nothing.cabsession"), session::SessionError);
}

}  // namespace
}  // namespace cabwright::review_room
