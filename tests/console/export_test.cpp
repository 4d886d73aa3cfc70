// SPDX-License-Identifier: GPL-3.0-or-later
// export, and mark for many sessions, by what comes out of the real program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <csignal>
#include <nlohmann/json.hpp>

#include "exercise.h"

namespace cabwright::console_test {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::SizeIs;
using testing::StartsWith;
namespace fs = std::filesystem;

class Export : public testing::Test {
 protected:
  void record(const std::string& file, const std::string& script = "good") {
    ASSERT_LE(run({"run", folder_.exercise().string(), "--script", script, "--record", file}).code,
              1);
  }
  static std::vector<nlohmann::json> linesOf(const std::string& text) {
    std::vector<nlohmann::json> lines;
    for (std::size_t from = 0; from < text.size();) {
      const auto end = text.find('\n', from);
      lines.push_back(nlohmann::json::parse(text.substr(from, end - from)));
      from = end + 1;
    }
    return lines;
  }
  ExerciseFolder folder_;
  std::string file_ = folder_ / "a.cabsession";
};

TEST_F(Export, WritesAllThreeAndOverwritesNone) {
  record(file_, "bad-gear");
  const std::vector<std::string> words{"export", file_,           "--html", folder_ / "a.html",
                                       "--csv",  folder_ / "csv", "--xapi", folder_ / "a.json"};
  const Outcome first = run(words);
  EXPECT_EQ(first.code, 0) << first.err;
  EXPECT_THAT(slurp(folder_ / "a.html"),
              AllOf(StartsWith("<!DOCTYPE html>"), HasSubstr("Leave the gear alone")));
  EXPECT_THAT(slurp(folder_ / "csv/actions.csv"), HasSubstr("set,cab1.gear,1"));
  EXPECT_THAT(slurp(folder_ / "csv/signals.csv"), HasSubstr("cab1.air [psi]"));
  EXPECT_EQ(nlohmann::json::parse(slurp(folder_ / "a.json")).size(), 3U);
  const Outcome second = run(words);
  EXPECT_EQ(second.code, 2);
  EXPECT_THAT(second.errorLines(), testing::ElementsAre(HasSubstr("is not overwritten")));
}

TEST_F(Export, SaysWhatIsMissingOrWrong) {
  record(file_);
  EXPECT_THAT(run({"export", file_}).err, HasSubstr("say what to export"));
  EXPECT_EQ(run({"export", file_, "--csv", folder_ / "c", "--every", "0"}).code, 2);
  EXPECT_THAT(run({"export", file_, "--xapi", folder_ / "x", "--home", "nowhere"}).err,
              HasSubstr("is no address"));
  EXPECT_EQ(run({"export", file_, "--html", folder_ / "none/x"}).code, 2);
  EXPECT_EQ(run({"export", file_, "--html", file_}).code, 2);
  EXPECT_EQ(run({"export", folder_ / "none", "--html", folder_ / "x"}).code, 2);
  EXPECT_FALSE(fs::exists(folder_ / "x"));
}

TEST_F(Export, WritesNothingWhenOneOfThemIsThere) {
  record(file_);
  spill(folder_ / "a.json", "dear to somebody");
  const Outcome outcome = run({"export", file_, "--html", folder_ / "a.html", "--csv",
                               folder_ / "csv", "--xapi", folder_ / "a.json"});
  EXPECT_EQ(outcome.code, 2);
  EXPECT_EQ(outcome.out, "");
  EXPECT_THAT(outcome.errorLines(), testing::ElementsAre(HasSubstr("a.json: exists already")));
  EXPECT_FALSE(fs::exists(folder_ / "a.html"));
  EXPECT_FALSE(fs::exists(folder_ / "csv"));
  EXPECT_EQ(slurp(folder_ / "a.json"), "dear to somebody");
}

TEST_F(Export, SaysWhyAFileCannotBeWritten) {
  record(file_);
  EXPECT_THAT(run({"export", file_, "--html", folder_ / "none/x"}).err,
              HasSubstr("cannot be written: No such file"));
  for (const char* what : {"--html", "--csv", "--xapi", "--pdf"})
    EXPECT_THAT(run({"export", file_, what, ""}).errorLines(),
                testing::ElementsAre(HasSubstr("is empty")));
}

#ifdef CABWRIGHT_DESKTOP
TEST_F(Export, NamesThatBeginWithADashAreNoOptionsOfTheDesktopProgram) {
  record(file_);
  fs::rename(file_, folder_ / "-a.cabsession");
  Program::Settings settings;
  settings.folder = folder_.path();
  const Outcome outcome = run({"export", "--pdf=-a.pdf", "--", "-a.cabsession"}, settings);
  EXPECT_EQ(outcome.code, 0) << outcome.err;
  EXPECT_THAT(slurp(folder_ / "-a.pdf"), StartsWith("%PDF-"));
}

TEST_F(Export, WritesPagesByTheDesktopProgram) {
  record(file_, "bad-gear");
  const std::vector<std::string> words{"export", file_, "--pdf", folder_ / "a.pdf"};
  const Outcome first = run(words);
  EXPECT_EQ(first.code, 0) << first.err;
  EXPECT_THAT(slurp(folder_ / "a.pdf"), StartsWith("%PDF-"));
  EXPECT_EQ(run(words).code, 2) << "it is not overwritten";
  EXPECT_EQ(run({"export", file_, "--pdf", folder_ / "none/a.pdf"}).code, 2);
  Program::Settings settings;
  settings.most_file_bytes = 2000;
  const Outcome full = run({"export", file_, "--pdf", folder_ / "b.pdf"}, settings);
  EXPECT_EQ(full.code, 2);
  EXPECT_THAT(full.errorLines(), testing::ElementsAre(HasSubstr("b.pdf cannot be written")));
  EXPECT_FALSE(fs::exists(folder_ / "b.pdf"));
}
#endif

TEST_F(Export, AFullDiskLeavesNoHalfFile) {
  record(file_);
  Program::Settings settings;
  settings.most_file_bytes = 2000;
  const Outcome outcome = run({"export", file_, "--html", folder_ / "a.html"}, settings);
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.err, HasSubstr("the disk is full"));
  EXPECT_FALSE(fs::exists(folder_ / "a.html"));
  // There is room for the small table of the two.
  settings.most_file_bytes = 10'000;
  EXPECT_THAT(run({"export", file_, "--csv", folder_ / "csv"}, settings).err,
              HasSubstr("signals.csv: the disk is full"));
  EXPECT_TRUE(fs::is_empty(folder_ / "csv"));
}

class MarkMany : public Export {
 protected:
  void SetUp() override {
    fs::create_directories(folder_ / "shelf/more");
    record(folder_ / "shelf/good.cabsession");
    record(folder_ / "shelf/more/bad.cabsession", "bad-gear");
    spill(folder_ / "shelf/broken.cabsession", "nothing");
  }
  std::string shelf() { return folder_ / "shelf"; }
};

TEST_F(MarkMany, GivesALineForEachWhateverIsBroken) {
  const Outcome outcome = run({"mark", shelf(), "--json"});
  EXPECT_EQ(outcome.code, 2);
  const auto lines = linesOf(outcome.out);
  ASSERT_THAT(lines, SizeIs(3));
  int passed = 0, broken = 0;
  for (const auto& line : lines) {
    broken += line.contains("fault") ? 1 : 0;
    passed += line.value("passed", false) ? 1 : 0;
  }
  EXPECT_EQ(passed, 1);
  EXPECT_EQ(broken, 1);
  EXPECT_THAT(outcome.err, AllOf(HasSubstr("2 of 3 sessions marked in"), HasSubstr("per second"),
                                 HasSubstr("1 broken")));
  EXPECT_EQ(run({"mark", shelf() + "/good.cabsession", shelf() + "/more"}).code, 0);
}

TEST_F(MarkMany, GoesOnWhereItWasStopped) {
  const std::string out = folder_ / "marks.jsonl";
  EXPECT_EQ(run({"mark", shelf() + "/more", "--json", "--out", out}).code, 0);
  spill(out, slurp(out) + "{\"file\":\"half");
  const Outcome second = run({"mark", shelf(), "--json", "--out", out});
  EXPECT_THAT(second.err, HasSubstr("1 were marked before"));
  EXPECT_THAT(linesOf(slurp(out)), SizeIs(3));
  // What was broken is tried again, what was marked is not.
  const Outcome third = run({"mark", shelf(), "--json", "--out", out});
  EXPECT_THAT(third.err, HasSubstr("2 were marked before"));
  EXPECT_THAT(linesOf(slurp(out)), SizeIs(4));
}

TEST_F(MarkMany, AnEmptyFolderIsNoSuccess) {
  fs::create_directories(folder_ / "empty");
  const Outcome outcome = run({"mark", folder_ / "empty", "--json"});
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.err, HasSubstr("no session there"));
}

TEST_F(MarkMany, AddsToNothingButMarks) {
  const std::string session = shelf() + "/good.cabsession", before = slurp(session);
  spill(folder_ / "one-line", "dear to somebody");
  spill(folder_ / "other.json", "{\"dear\":1}");
  for (const std::string& out : {session, folder_ / "one-line", folder_ / "other.json"}) {
    const std::string kept = slurp(out);
    const Outcome outcome = run({"mark", shelf(), "--out", out});
    EXPECT_EQ(outcome.code, 2) << out;
    EXPECT_THAT(outcome.errorLines(), testing::ElementsAre(HasSubstr("something else than marks")));
    EXPECT_EQ(slurp(out), kept);
  }
  for (const std::string& out : {std::string("/dev/full"), shelf()}) {
    const Outcome outcome = run({"mark", shelf(), "--out", out});
    EXPECT_EQ(outcome.code, 2) << out;
    EXPECT_THAT(outcome.errorLines(), testing::ElementsAre(HasSubstr("not a regular file")));
  }
}

// 15 of 16 points are 93.75 %.
TEST_F(MarkMany, NeverSaysMoreThanWasReached) {
  const std::string file = folder_ / "tooth.cabsession";
  ASSERT_EQ(run({"run", "warm-tooth", "--script", "bad-dark-lamp", "--record", file}).code, 1);
  EXPECT_THAT(run({"mark", file, file}).out, HasSubstr("failed, 93 % air-light"));
}

TEST_F(MarkMany, KnowsNamesAgainThatAreNoText) {
  fs::remove_all(shelf());
  fs::create_directories(shelf());
  record(shelf() + "/\xff.cabsession");
  record(shelf() + "/\xfe.cabsession");
  const std::string out = folder_ / "marks.jsonl";
  EXPECT_EQ(run({"mark", shelf(), "--out", out}).code, 0);
  EXPECT_THAT(run({"mark", shelf(), "--out", out}).err, HasSubstr("2 were marked before"));
  const auto lines = linesOf(slurp(out));
  ASSERT_THAT(lines, SizeIs(2));
  EXPECT_NE(lines[0]["file"], lines[1]["file"]);
}

}  // namespace
}  // namespace cabwright::console_test
