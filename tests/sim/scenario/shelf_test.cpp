// SPDX-License-Identifier: GPL-3.0-or-later
// A folder of own scenarios: what is broken is listed and spoils nothing.
#include "scenario/shelf.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "draft_texts.h"

namespace cabwright::scenario {
namespace {

namespace fs = std::filesystem;
using namespace cabwright::testing;
using ::testing::HasSubstr;

class ScenarioShelf : public ::testing::Test {
 protected:
  void SetUp() override {
    folder_ = fs::temp_directory_path() /
              ("cabwright-shelf-" +
               std::string(::testing::UnitTest::GetInstance()->current_test_info()->name()));
    fs::remove_all(folder_);
  }
  void TearDown() override { fs::remove_all(folder_); }

  static Draft draft(const std::string& title) {
    Draft d;
    DraftTable& head = d.table(DraftSection::kHead);
    head.set("title", title);
    head.set("purpose", "P");
    head.set("summary", "S");
    head.set("vehicle", "two-engine-unit");
    head.set("route", "quavelow-branch");
    return d;
  }
  void put(const std::string& name, const std::string& text) const {
    ASSERT_FALSE(saveText((folder_ / name / "scenario.toml").string(), text).has_value());
  }
  fs::path folder_;
};

TEST_F(ScenarioShelf, IsEmptyWithoutAFolder) {
  EXPECT_TRUE(listScenarios(folder_, scenariosFolder()).empty());
}

TEST_F(ScenarioShelf, ListsWhatWasSavedByTitle) {
  const auto saved = saveScenario(draft("Hill start, WET rail"), folder_);
  ASSERT_TRUE(std::holds_alternative<std::string>(saved));
  EXPECT_EQ(fs::path(std::get<std::string>(saved)), folder_ / "hill-start-wet-rail/scenario.toml");
  const auto again = saveScenario(draft("Hill start, WET rail"), folder_);
  EXPECT_EQ(fs::path(std::get<std::string>(again)).parent_path().filename(),
            "hill-start-wet-rail-2")
      << "nothing is overwritten";
  EXPECT_TRUE(std::holds_alternative<std::string>(saveScenario(draft("!?"), folder_)));
  const auto all = listScenarios(folder_, scenariosFolder());
  ASSERT_EQ(all.size(), 3U);
  EXPECT_EQ(all[0].title, "Hill start, WET rail");
  EXPECT_EQ(all[2].name, "scenario");
  for (const ShelvedScenario& one : all) EXPECT_FALSE(one.fault.has_value()) << one.fault->what;
}

TEST_F(ScenarioShelf, ABrokenFileIsListedWithItsFirstFault) {
  ASSERT_TRUE(std::holds_alternative<std::string>(saveScenario(draft("Good"), folder_)));
  put("broken", "title = \"Half\npurpose = 1\n");
  put("wrong", writeDraft(draft("Wrong one")) + "[start]\nplace = \"cab3\"\n");
  put("no-text", std::string("\0\xff", 2));
  fs::create_directories(folder_ / "empty");
  std::ofstream(folder_ / "loose.txt") << "x";
  const auto all = listScenarios(folder_, scenariosFolder());
  ASSERT_EQ(all.size(), 4U);
  EXPECT_EQ(all[0].name, "broken");
  ASSERT_TRUE(all[0].fault.has_value());
  EXPECT_EQ(all[0].fault->at.line, 1U);
  EXPECT_FALSE(all[1].fault.has_value());
  EXPECT_TRUE(all[2].fault.has_value());
  EXPECT_EQ(all[3].title, "Wrong one");
  ASSERT_TRUE(all[3].fault.has_value());
  EXPECT_EQ(all[3].fault->at.line, 8U);
  EXPECT_EQ(all[3].fault->at.column, 9U);
  EXPECT_THAT(all[3].fault->what, HasSubstr("did you mean"));
}

}  // namespace
}  // namespace cabwright::scenario
