// SPDX-License-Identifier: GPL-3.0-or-later
// Files as such: missing, folders, binary, huge, not UTF-8; and errors in the form of the file.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "scenario_texts.h"

namespace cabwright::scenario {
namespace {

using cabwright::testing::faultsOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::StartsWith;

class TextFile : public ::testing::Test {
 protected:
  void SetUp() override {
    const auto* info = ::testing::UnitTest::GetInstance()->current_test_info();
    folder_ = std::filesystem::path(::testing::TempDir()) /
              (std::string("cabwright_text_") + info->name());
    std::filesystem::remove_all(folder_);
    std::filesystem::create_directories(folder_);
  }
  void TearDown() override { std::filesystem::remove_all(folder_); }

  std::string write(const std::string& name, const std::string& text) {
    const std::filesystem::path path = folder_ / name;
    std::filesystem::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary) << text;
    return path.string();
  }
  static std::string faultOf(const std::string& path) {
    const auto loaded = loadText(path);
    const auto* fault = std::get_if<FileFault>(&loaded);
    return fault ? toText(*fault) : "";
  }

  std::filesystem::path folder_;
};

TEST_F(TextFile, SaysThatItIsNotThere) {
  const std::string path = (folder_ / "none.toml").string();
  EXPECT_EQ(faultOf(path), path + ": there is no such file");
}

TEST_F(TextFile, SaysThatItIsAFolder) {
  EXPECT_EQ(faultOf(folder_.string()), folder_.string() + ": is a folder, a file is wanted");
}

TEST_F(TextFile, RefusesMoreThanFourMebibytes) {
  const std::string path = write("big.toml", std::string((4u << 20) + 1, '#'));
  EXPECT_EQ(faultOf(path), path + ": is larger than the 4 MiB allowed");
  EXPECT_EQ(faultOf(write("fits.toml", std::string(4u << 20, '#'))), "");
}

TEST_F(TextFile, PointsAtTheFirstByteThatIsNoText) {
  const std::string nul = write("nul.toml", std::string("a = 1\nb\0c", 9));
  EXPECT_EQ(faultOf(nul), nul + ":2:2: a NUL byte: this is no text file");
  const std::string latin = write("latin.toml", "x = \"gr\xFC n\"");
  EXPECT_EQ(faultOf(latin), latin + ":1:8: byte FC is no UTF-8 text");
  for (const char* bad : {"\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xE2\x82", "\x80"}) {
    EXPECT_THAT(faultOf(write("bad.toml", bad)), HasSubstr(":1:1: byte"));
  }
  // Columns count characters, not bytes.
  const std::string after = write("after.toml", "\xC3\xA9\xE2\x82\xAC\xF0\x9F\x98\x80\xFF");
  EXPECT_THAT(faultOf(after), HasSubstr(":1:4: byte FF"));
}

TEST_F(TextFile, TakesAByteOrderMarkOff) {
  const auto loaded = loadText(write("bom.toml", "\xEF\xBB\xBFtitle = 1"));
  ASSERT_TRUE(std::holds_alternative<SourceFile>(loaded));
  EXPECT_EQ(std::get<SourceFile>(loaded).text, "title = 1");
}

TEST_F(TextFile, AScenarioFindsItsVehicleBesideItsFolder) {
  write("vehicles/plain.toml", "title = \"Plain\"\n");
  write("routes/line.toml", cabwright::testing::kRouteText);
  const std::string path = write("first-steps/scenario.toml", cabwright::testing::kHead);
  const auto loaded = cabwright::testing::good(loadScenario(path));
  EXPECT_EQ(loaded.vehicle.title, "Plain");
  EXPECT_EQ(loaded.sources.size(), 3u);
}

TEST(Library, NamesCannotLeadOutOfTheFolder) {
  EXPECT_TRUE(isShelfName("two-engine_unit2"));
  for (const char* bad : {"", "../x", "a/b", "a.b", "x\\y", "a b"}) EXPECT_FALSE(isShelfName(bad));
  const FolderLibrary library(cabwright::testing::shippedScenarios());
  EXPECT_TRUE(std::holds_alternative<std::string>(library.find(Shelf::kRoutes, "../routes/x")));
}

TEST(Syntax, EveryBrokenLineIsReportedAndTheRestIsStillRead) {
  const auto read = parseVehicle({"v.toml",
                                  "title = \"x\n"         // 1: text without its end
                                  "[air]\n"               // 2
                                  "cut_out_psi = 1..2\n"  // 3: no number
                                  "cut_in_psy = 80\n"     // 4: unknown
                                  "main_m3 = \n"          // 5: no value
                                  "control_m3 = 9\n"});   // 6: too large
  const std::vector<std::string> faults = faultsOf(read);
  ASSERT_EQ(faults.size(), 5u) << ::testing::PrintToString(faults);
  EXPECT_THAT(faults[0], StartsWith("v.toml:1:"));
  EXPECT_THAT(faults[1], StartsWith("v.toml:3:"));
  EXPECT_THAT(faults[2], StartsWith("v.toml:4:1: unknown parameter 'air.cut_in_psy'; did you "
                                    "mean 'air.cut_in_psi'?"));
  EXPECT_THAT(faults[3], StartsWith("v.toml:5:"));
  EXPECT_THAT(faults[4], StartsWith("v.toml:6:14: 'air.control_m3' is 9; allowed: 0.005 to 5 m3"));
}

TEST_F(TextFile, SaysThatALineEndsInNoWayKnownHere) {
  const std::string path = write("old.txt", "wait 1 s\r\nwait 2 s\rwait 3 s\r");
  EXPECT_EQ(faultOf(path), path +
                               ":2:9: a carriage return in a line; allowed: lines that end with "
                               "LF or CR LF");
  EXPECT_EQ(
      faultOf(write("last.txt", "wait 1 s\r")).find(":1:9: a carriage return") != std::string::npos,
      true);
}

TEST(Syntax, ATextThatIsNotClosedIsCalledThat) {
  EXPECT_THAT(faultsOf(parseVehicle({"v.toml", "title = \"t\"\ntext = \"\xC3\xA9 open\n"})),
              ElementsAre("v.toml:2:15: a text that is not closed on its line"));
  EXPECT_THAT(faultsOf(parseVehicle({"v.toml", "title = \"t\"\r\ntext = \"open\r\n"})),
              ElementsAre(HasSubstr("v.toml:2:13: a text that is not closed on its line")));
  EXPECT_THAT(faultsOf(parseVehicle({"v.toml", "title = \"t\"\ntext = \"a\x01z\"\n"})),
              ElementsAre(HasSubstr("unescaped control character")));
}

TEST(Syntax, MoreRulesThanAnybodyWritesAreRefused) {
  std::string rules;
  for (int k = 0; k < 2001; ++k) {
    rules += "[[rule]]\nid = \"r" + std::to_string(k) +
             "\"\ntitle = \"t\"\nreason = \"w\"\nkind = \"existence\"\na = \"did go cab1\"\n";
  }
  EXPECT_THAT(faultsOf(parseRules({"r.toml", rules})),
              ElementsAre("r.toml:1:3: more than 2000 of [[rule]]"));
}

TEST(Syntax, AnOpenListSpoilsItselfOnly) {
  const auto read = parseVehicle({"v.toml",
                                  "title = \"x\"\n"
                                  "bad = [1, 2\n"
                                  "[air]\n"
                                  "horn_c = 900\n"});
  const std::vector<std::string> faults = faultsOf(read);
  ASSERT_EQ(faults.size(), 2u) << ::testing::PrintToString(faults);
  EXPECT_THAT(faults[1], StartsWith("v.toml:4:10: 'air.horn_c' is 900"));
}

TEST(Syntax, AKeyTwiceIsAFault) {
  const auto faults =
      faultsOf(parseVehicle({"v.toml", "title = \"x\"\n[air]\nhorn_c = 3\nhorn_c = 4\n"}));
  ASSERT_EQ(faults.size(), 1u);
  EXPECT_THAT(faults[0], StartsWith("v.toml:4:"));
}

TEST(Syntax, DeepNestingIsRefusedBeforeItHurts) {
  const std::string dots = "a" + [] {
    std::string s;
    for (int k = 0; k < 200'000; ++k) s += ".a";
    return s;
  }();
  EXPECT_THAT(faultsOf(parseVehicle({"v.toml", dots + " = 1"})),
              ElementsAre(HasSubstr("nested too deeply")));
  EXPECT_THAT(faultsOf(parseVehicle({"v.toml", "[" + dots + "]"})),
              ElementsAre(HasSubstr("nested too deeply")));
  for (const char open : {'[', '{'}) {
    const std::string deep = "a = " + std::string(300'000, open);
    EXPECT_THAT(faultsOf(parseVehicle({"v.toml", deep})),
                ElementsAre(StartsWith("v.toml:1:21: nested too deeply")));
  }
  // Inside a text or a comment they are only letters.
  const std::string harmless = "title = \"" + std::string(500, '[') + dots + "\" # " + dots;
  EXPECT_THAT(faultsOf(parseVehicle({"v.toml", harmless})), IsEmpty());
}

TEST(Syntax, ManyFaultsAreCountedNotListed) {
  std::string text = "title = \"x\"\n";
  for (int k = 0; k < 100'000; ++k) text += "k" + std::to_string(k) + " = 1\n";
  const auto faults = faultsOf(parseVehicle({"v.toml", text}));
  ASSERT_EQ(faults.size(), 201u);
  EXPECT_EQ(faults.back(), "v.toml: and 99800 more faults, not listed");
}

TEST(Syntax, OneLongLineOfManyThingsIsReadOnce) {
  std::string text =
      "[[rule]]\nid = \"r\"\ntitle = \"t\"\nreason = \"w\"\nkind = \"k\"\nfollows = [";
  for (int k = 0; k < 100'000; ++k) text += "\"a" + std::to_string(k) + "\",";
  const auto faults = faultsOf(cabwright::testing::parseAfterHead(text + "]\n"));
  ASSERT_EQ(faults.size(), 201u);
  EXPECT_THAT(faults[0], StartsWith("x.toml:11:12: unknown rule 'a0'"));
  EXPECT_THAT(faults[1], StartsWith("x.toml:11:17: unknown rule 'a1'"));
}

TEST(Syntax, ABinaryFileIsToldByItsFirstByte) {
  EXPECT_THAT(faultsOf(parseVehicle({"v.toml", std::string("\x7F\x45LF\0\0", 6)})),
              ElementsAre("v.toml:1:5: a NUL byte: this is no text file"));
}

}  // namespace
}  // namespace cabwright::scenario
