// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/report_facts.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>

#include "made_session.h"
#include "reviewed_session.h"

namespace cabwright::review {
namespace {

namespace fs = std::filesystem;

class ReportFactsTest : public testing::Test {
 protected:
  void SetUp() override {
    fs::create_directory(shelf_);
    options_.cache_folder = folder_ / "cache";
  }
  fs::path make(const std::string& name, const tests::MadeSession& made) {
    tests::makeSession(shelf_ / name, exercise_, made);
    return shelf_ / name;
  }
  Folder folder_;
  fs::path shelf_ = folder_ / "shelf";
  ShelfOptions options_;
  session::Situation exercise_ = tests::loadExercise("walk-round");
};

TEST_F(ReportFactsTest, AttemptsAreThoseOfOneTraineeAtOneVersionByTheTimeTheyBegan) {
  const auto at = [](const std::string& number, const std::string& day) {
    tests::MadeSession made;
    made.number = number;
    made.started_utc = "2031-03-" + day + "T08:00:00Z";
    return made;
  };
  const auto late = make("a.cabsession", at("07", "17"));
  const auto early = make("b.cabsession", at("07", "15"));
  tests::MadeSession made = at("07", "16");
  made.ends = false;
  const auto cut = make("c.cabsession", made);
  const auto other = make("d.cabsession", at("08", "14"));
  made = at("07", "13");
  made.more_text = "later";
  const auto version = make("e.cabsession", made);
  const auto place = [&](const fs::path& file) {
    const auto found = findAttempt(file, options_);
    return found ? std::pair(found->number, found->of) : std::pair(0, 0);
  };
  EXPECT_EQ(place(early), std::pair(1, 3));
  EXPECT_EQ(place(cut), std::pair(2, 3));
  EXPECT_EQ(place(late), std::pair(3, 3));
  EXPECT_EQ(place(other), std::pair(1, 1));
  EXPECT_EQ(place(version), std::pair(1, 1));
  fs::current_path(shelf_);  // as it is named on a command line
  EXPECT_EQ(place("a.cabsession"), std::pair(3, 3));
  fs::current_path("/");
}

TEST_F(ReportFactsTest, WhoCannotBeToldFromOthersIsNotCounted) {
  EXPECT_FALSE(findAttempt(make("a.cabsession", {}), options_));
  EXPECT_FALSE(findAttempt(shelf_ / "none.cabsession", options_));
  std::ofstream(shelf_ / "broken.cabsession") << "nothing";
  EXPECT_FALSE(findAttempt(shelf_ / "broken.cabsession", options_));
}

TEST_F(ReportFactsTest, ThePlantIsTheVehiclesTextAsItWasRecorded) {
  session::SessionHeader header = session::makeHeader(exercise_, 7, "1.0.0");
  const std::string plant = describePlant(header);
  EXPECT_THAT(plant, testing::MatchesRegex("two-engine-unit \\[[0-9a-f]{16}\\]"));
  for (session::SourceText& source : header.sources)
    if (source.role == "scenario") source.text += "#";
  EXPECT_EQ(describePlant(header), plant);
  for (session::SourceText& source : header.sources)
    if (source.role == "vehicle") source.text += "#";
  EXPECT_NE(describePlant(header), plant);
  EXPECT_EQ(describePlant({}), "");
}

}  // namespace
}  // namespace cabwright::review
