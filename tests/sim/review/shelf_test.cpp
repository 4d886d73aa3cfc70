// SPDX-License-Identifier: GPL-3.0-or-later
// A shelf of some hundred files, and many marked at once.
#include "review/shelf.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <thread>

#include "review/mark_many.h"
#include "reviewed_session.h"
#include "session/erase.h"

namespace cabwright::review {
namespace {

using testing::HasSubstr;
namespace fs = std::filesystem;

class ShelfTest : public testing::Test {
 protected:
  void SetUp() override {
    fs::create_directory(shelf_);
    fs::create_directory(shelf_ / "more");
    recordAndSeal(shelf_ / "bad.cabsession", kBadDeeds);
    session::record(shelf_ / "good.cabsession", session::kGoodDeeds);
    session::record(shelf_ / "cut.cabsession", session::kGoodDeeds, 915, false);
    const std::string bytes = session::slurp(shelf_ / "good.cabsession");
    session::spill(shelf_ / "torn.cabsession", bytes.substr(0, bytes.size() / 2));
    session::spill(shelf_ / "text.cabsession", "nothing");
    session::spill(shelf_ / "other.txt", "nothing");
    session::spill(shelf_ / ".hidden.cabsession", "nothing");
    fs::copy_file(fs::path(CABWRIGHT_SOURCE_DIR) / "tests/sim/session/data/first-format.cabsession",
                  shelf_ / "more/old.cabsession");
  }
  Shelf open() {
    ShelfOptions options;
    options.cache_folder = folder_ / "cache";
    return openShelf({shelf_}, options);
  }
  static const ShelfItem& find(const Shelf& shelf, const std::string& name) {
    for (const ShelfItem& item : shelf.items)
      if (item.file.filename() == name) return item;
    throw std::out_of_range(name);
  }
  Folder folder_;
  fs::path shelf_ = folder_ / "shelf";
};

TEST_F(ShelfTest, TellsWhatStandsOnEachFile) {
  const Shelf shelf = open();
  EXPECT_EQ(shelf.items.size(), 6U);
  const ShelfItem& bad = find(shelf, "bad.cabsession");
  EXPECT_EQ(bad.outcome, ShelfOutcome::kFailed);
  EXPECT_EQ(bad.trainee, "P. Example");
  EXPECT_EQ(bad.scenario, "Handbrake");
  EXPECT_EQ(bad.mode, "practice");
  EXPECT_EQ(bad.started_utc.size(), 20U);
  EXPECT_EQ(bad.last_tick, 915);
  EXPECT_TRUE(bad.sealed);
  EXPECT_EQ(find(shelf, "good.cabsession").outcome, ShelfOutcome::kPassed);
  EXPECT_FALSE(find(shelf, "good.cabsession").sealed);
  EXPECT_EQ(find(shelf, "cut.cabsession").outcome, ShelfOutcome::kCutOff);
  EXPECT_EQ(find(shelf, "cut.cabsession").last_tick, 910);
  EXPECT_EQ(find(shelf, "old.cabsession").outcome, ShelfOutcome::kPassed);
  EXPECT_EQ(find(shelf, "old.cabsession").mode, "practice");
}

TEST_F(ShelfTest, TellsWhatTheLinesOfTheSheetCameTo) {
  session::record(shelf_ / "seven.cabsession", kBadDeeds, 915, true, "07");
  const auto good_sheet = session::record(shelf_ / "another.cabsession", session::kGoodDeeds);
  const Shelf shelf = open();
  const ShelfItem &bad = find(shelf, "bad.cabsession"), &good = find(shelf, "good.cabsession"),
                  &seven = find(shelf, "seven.cabsession");
  ASSERT_TRUE(bad.sheet.names);
  EXPECT_EQ(bad.sheet.names, good.sheet.names);  // the same list, not a like one
  const auto letter = [](const ShelfItem& item, const std::string& id) {
    for (std::size_t k = 0; k < item.sheet.names->size(); ++k)
      if ((*item.sheet.names)[k].id == id) return item.sheet.letters[k];
    return '?';
  };
  EXPECT_EQ(letter(bad, "gear"), kLineFails);
  EXPECT_EQ(letter(good, "gear"), kLineMet);
  EXPECT_EQ(countBrokenCriticals(bad.sheet), 1);
  EXPECT_EQ(countBrokenCriticals(good.sheet), 0);
  EXPECT_EQ(good.sheet.percent, good_sheet.totals.percent);
  EXPECT_EQ(good.sheet.earned, good_sheet.totals.earned);
  EXPECT_EQ(bad.scenario_hash, good.scenario_hash);
  EXPECT_EQ(bad.scenario_hash.size(), 16U);
  EXPECT_EQ(traineeKey(seven), "07");
  EXPECT_EQ(traineeKey(bad), "P. Example");
  addEntries(shelf_ / "bad.cabsession", kAssessor,
             {Override{"gear", "", marking::Outcome::kMet, "seen otherwise"}}, session::sampleKey(),
             kUtc);
  const Shelf after = open();
  EXPECT_EQ(letter(find(after, "bad.cabsession"), "gear"), kLineMet);
  EXPECT_EQ(open().items, after.items);
}

TEST_F(ShelfTest, OnlyWhatTheGlanceWantsIsReadOfASheet) {
  // What stands deeper has the same names as what counts, and counts for nothing.
  const SheetGlance glance = readGlance(
      R"({"judgements":{"totals":{"percent":3},"rows":[{"id":"no"}]},"totals":{"percent":40},)"
      R"("lines":[{"id":"a","class":"critical","readings":[{"id":"deep","verdict":"broken"}],)"
      R"("details":{"id":"deep"},"verdict":"met","title":"A"}]})");
  ASSERT_TRUE(glance.names);
  ASSERT_EQ(glance.names->size(), 1U);
  EXPECT_EQ(glance.names->front(), (LineName{"a", "A", true}));
  EXPECT_EQ(glance.letters, std::string(1, kLineMet));
  EXPECT_EQ(glance.percent, 40);
}

TEST_F(ShelfTest, WhatIsNoSheetGivesNoLines) {
  for (const std::string text : {"", "[]", "{\"lines\":7,\"totals\":[]}", "{\"lines\":[7]}",
                                 "{\"totals\":{\"percent\":1e999}}"})
    EXPECT_TRUE(readGlance(text).letters.empty()) << text;
  const SheetGlance odd = readGlance("{\"lines\":[{\"id\":3}],\"totals\":{\"percent\":900}}");
  EXPECT_EQ(odd.letters, std::string(1, kLineNotExercised));
  EXPECT_EQ(odd.percent, 100);
}

TEST_F(ShelfTest, ABrokenFileIsThereWithItsReasonAndSpoilsNothing) {
  const Shelf shelf = open();
  EXPECT_EQ(find(shelf, "torn.cabsession").outcome, ShelfOutcome::kBroken);
  EXPECT_THAT(find(shelf, "torn.cabsession").why_broken, HasSubstr("damaged"));
  EXPECT_THAT(find(shelf, "text.cabsession").why_broken, HasSubstr("not a session file"));
  ShelfOptions options;
  options.cache_folder.clear();
  const Shelf none = openShelf({folder_ / "none"}, options);
  ASSERT_EQ(none.items.size(), 1U);
  EXPECT_EQ(none.items[0].outcome, ShelfOutcome::kBroken);
}

TEST_F(ShelfTest, OpensTheSecondTimeOnlyWhatHasChanged) {
  const Shelf first = open();
  EXPECT_EQ(first.opened, 6U);
  const Shelf second = open();
  EXPECT_LE(second.opened, 1U);  // what may be going on beside the one cut off
  EXPECT_EQ(second.items, first.items);
  addEntries(shelf_ / "bad.cabsession", kAssessor, {Decision{Result::kPassed, "x", ""}},
             session::sampleKey(), kUtc);
  session::erasePeople(shelf_ / "good.cabsession", session::sampleKey());
  const Shelf third = open();
  EXPECT_GE(third.opened, 2U);
  EXPECT_LE(third.opened, 3U);
  EXPECT_EQ(find(third, "bad.cabsession").decision, "passed");
  EXPECT_EQ(find(third, "good.cabsession").trainee, "");
  EXPECT_EQ(find(third, "good.cabsession").sheet, find(first, "good.cabsession").sheet);
}

TEST_F(ShelfTest, TheCacheIsForItsOwnerAloneAndMayBeAnything) {
  const Shelf first = open();
  const fs::path cache = folder_ / "cache/shelf.jsonl";
  struct stat status {};
  ASSERT_EQ(::stat(cache.c_str(), &status), 0);
  EXPECT_EQ(status.st_mode & 0777U, 0600U);
  const std::string good = session::slurp(cache);
  for (const std::string& bad :
       {std::string("x"), std::string("cabwright shelf 2\n[1,2]\n{\n{\"names\":[[1]]}\n"),
        good.substr(0, 200), good.substr(0, good.size() - 100),
        std::string("cabwright shelf 2\n") + std::string(10'000, '[')}) {
    session::spill(cache, bad);
    EXPECT_EQ(open().items, first.items);
  }
}

TEST_F(ShelfTest, WithoutAPlaceForACacheItIsOpenedAllTheSame) {
  ShelfOptions options;
  options.cache_folder = "/proc/none";
  EXPECT_EQ(openShelf({shelf_}, options).items.size(), 6U);
}

TEST_F(ShelfTest, SomeHundredFilesAndGivingUp) {
  for (int k = 0; k < 300; ++k)
    fs::copy_file(shelf_ / "bad.cabsession", shelf_ / "more" / (std::to_string(k) + ".cabsession"));
  std::size_t asked = 0;
  ShelfOptions options;
  options.cache_folder = folder_ / "cache";
  options.progress = [&](std::size_t, std::size_t all) {
    EXPECT_EQ(all, 306U);
    return ++asked < 3;
  };
  EXPECT_FALSE(openShelf({shelf_}, options).complete);
  EXPECT_EQ(open().items.size(), 306U);
  EXPECT_LE(open().opened, 1U);
  options.goes_down = false;
  options.progress = {};
  EXPECT_EQ(openShelf({shelf_}, options).items.size(), 5U);
}

// Two hundred more files, a cache that is written with every fiftieth.
class BrokenOffLook : public ShelfTest {
 protected:
  void SetUp() override {
    ShelfTest::SetUp();
    for (int k = 0; k < 200; ++k)
      fs::create_hard_link(shelf_ / "bad.cabsession",
                           shelf_ / "more" / (std::to_string(k) + ".cabsession"));
    options_.cache_folder = folder_ / "cache";
    options_.keep_every = 50;
  }
  // Looked at while this goes on, one or two files in other threads too.
  static std::size_t threads() { return std::max(1U, std::thread::hardware_concurrency()); }
  ShelfOptions options_;
};

TEST_F(BrokenOffLook, GivenUpHalfWayTheNextOpensOnlyTheRest) {
  std::size_t seen = 0;
  options_.progress = [&](std::size_t done, std::size_t) { return (seen = done) < 100; };
  EXPECT_FALSE(openShelf({shelf_}, options_).complete);
  ASSERT_GE(seen, 100U);
  ASSERT_LT(seen, 206U);
  options_.progress = {};
  const Shelf next = openShelf({shelf_}, options_);
  EXPECT_TRUE(next.complete);
  EXPECT_LE(next.opened, 206U - seen + threads());
  EXPECT_GT(next.opened, 0U);
  ShelfOptions without = options_;
  without.cache_folder.clear();
  EXPECT_EQ(next.items, openShelf({shelf_}, without).items);
}

TEST_F(BrokenOffLook, KilledHalfWayMostOfItIsKept) {
  const pid_t child = ::fork();
  ASSERT_GE(child, 0);
  if (child == 0) {
    ::alarm(60);  // nothing is ever written: the test ends all the same
    options_.progress = [this](std::size_t done, std::size_t) {
      // Another thread may be writing just now.
      while (done >= 150)
        if (fs::exists(options_.cache_folder / "shelf.jsonl")) ::_exit(0);
      return true;
    };
    ::_exit(openShelf({shelf_}, options_).complete ? 1 : 2);
  }
  int status = 0;
  ASSERT_EQ(::waitpid(child, &status, 0), child);
  ASSERT_TRUE(WIFEXITED(status));
  ASSERT_EQ(WEXITSTATUS(status), 0);
  options_.progress = {};
  const Shelf next = openShelf({shelf_}, options_);
  EXPECT_LE(next.opened, 206U - 50U);
  EXPECT_EQ(next.items.size(), 206U);
  EXPECT_LE(openShelf({shelf_}, options_).opened, 1U);
}

TEST_F(ShelfTest, AllAreMarkedWhateverIsBrokenAmongThem) {
  std::vector<MarkedSession> marked;
  const auto files = findSessions({shelf_, shelf_ / "bad.cabsession"});
  EXPECT_EQ(files.size(), 6U);
  const auto each = [&](const MarkedSession& one) {
    marked.push_back(one);
    return true;
  };
  EXPECT_EQ(markMany(files, each, 3), 6U);
  int broken = 0, passed = 0;
  for (const MarkedSession& one : marked) {
    broken += one.fault.empty() ? 0 : 1;
    passed += one.passed ? 1 : 0;
    const auto name = readMarkedFile(toJsonLine(one));
    EXPECT_EQ(name.has_value(), one.fault.empty());
  }
  EXPECT_EQ(broken, 2);
  EXPECT_EQ(passed, 2);
  const MarkedSession bad = markOne(shelf_ / "bad.cabsession");
  EXPECT_EQ(bad.failed_by, std::vector<std::string>{"gear"});
  EXPECT_EQ(nlohmann::json::parse(toJsonLine(bad))["verdicts"]["gear"], "broken");
  EXPECT_EQ(markMany(
                files, [](const MarkedSession&) { return false; }, 1),
            1U);
}

}  // namespace
}  // namespace cabwright::review
