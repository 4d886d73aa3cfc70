// SPDX-License-Identifier: GPL-3.0-or-later
// Scripts that are another one but for a few lines.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "scenario_texts.h"

namespace cabwright::scenario {
namespace {

using cabwright::testing::faultsOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

// Line 1 is a comment, so that steps do not stand where they are counted.
const std::string kGood =
    "# as taught\n"
    "set cab1.key on\n"
    "wait 2 s\n"
    "look cab1.seal\n"
    "wait 2 s\n"
    "judge cab1.seal good\n"
    "set cab1.brake full\n"
    "wait 3 s\n"
    "set cab1.brake lap\n"
    "set cab1.brake full\n"
    "wait 9 s\n"
    "note leak 1.9\n";

Neighbours beside(const std::map<std::string, std::string>& texts) {
  Neighbours all;
  all.find =
      [texts](const std::string& name) -> std::optional<std::variant<SourceFile, FileFault>> {
    const auto at = texts.find(name);
    if (at == texts.end()) return std::nullopt;
    return SourceFile{name + ".txt", at->second};
  };
  all.names = [texts] {
    std::vector<std::string> names;
    for (const auto& [name, text] : texts) names.push_back(name);
    return names;
  };
  return all;
}

auto read(const std::string& edits, const std::string& good = kGood) {
  return parseScript({"bad.txt", "as good\n" + edits}, {}, beside({{"good", good}}));
}

// What each step says and where it comes from.
std::vector<std::string> stepsOf(const std::string& edits, const std::string& good = kGood) {
  const Script script = cabwright::testing::good(read(edits, good));
  std::vector<std::string> all;
  for (const ScriptStep& step : script.steps) {
    const FilePlace at = script.placeOf(step);
    const std::string words = step.kind == ScriptStep::Kind::kWait
                                  ? "wait " + std::to_string(step.ticks / 100)
                                  : unit::toText(step.action);
    all.push_back(at.file + ":" + std::to_string(at.line) + " " + words);
  }
  return all;
}
// The lines of good.txt that are left.
std::vector<std::size_t> leftOf(const std::string& edits) {
  const Script script = cabwright::testing::good(read(edits));
  std::vector<std::size_t> lines;
  for (const ScriptStep& step : script.steps) lines.push_back(step.line);
  return lines;
}
std::vector<std::string> faultsIn(const std::string& edits, const std::string& good = kGood) {
  return faultsOf(read(edits, good));
}

TEST(ScriptEdits, TakeALineAway) {
  EXPECT_THAT(leftOf("without \"note leak 1.9\"\n"), ElementsAre(2, 3, 4, 5, 6, 7, 8, 9, 10, 11));
  EXPECT_THAT(leftOf("  without   2nd  \"wait 2 s\"  \r\n"),
              ElementsAre(2, 3, 4, 6, 7, 8, 9, 10, 11, 12));
  EXPECT_THAT(leftOf("without last \"set cab1.brake full\"\n"),
              ElementsAre(2, 3, 4, 5, 6, 7, 8, 9, 11, 12));
}

TEST(ScriptEdits, TakeAStretchAway) {
  EXPECT_THAT(leftOf("without \"look cab1.seal\" to \"judge cab1.seal good\"\n"),
              ElementsAre(2, 3, 7, 8, 9, 10, 11, 12));
  // The one that has neither of its ends inside: there are two of the first line, or of the last.
  EXPECT_THAT(leftOf("without \"set cab1.brake full\" to \"wait 9 s\"\n"),
              ElementsAre(2, 3, 4, 5, 6, 7, 8, 9, 12));
  EXPECT_THAT(leftOf("without \"set cab1.key on\" to \"wait 2 s\"\n"),
              ElementsAre(4, 5, 6, 7, 8, 9, 10, 11, 12));
  // Counted: as said.
  EXPECT_THAT(leftOf("without 1st \"set cab1.brake full\" to \"wait 9 s\"\n"),
              ElementsAre(2, 3, 4, 5, 6, 12));
  EXPECT_THAT(leftOf("without \"set cab1.key on\" to 2nd \"wait 2 s\"\n"),
              ElementsAre(6, 7, 8, 9, 10, 11, 12));
  EXPECT_THAT(leftOf("without \"set cab1.key on\" to last \"wait 2 s\"\n"),
              ElementsAre(6, 7, 8, 9, 10, 11, 12));
}

TEST(ScriptEdits, PutStepsInstead) {
  EXPECT_THAT(stepsOf("instead of \"look cab1.seal\" to \"note leak 1.9\":\n"
                      "  # nothing of it\n"
                      "  wait 7 s\n"
                      "\n"
                      "  guard: ring bell 2\n"
                      "end\n"),
              ElementsAre("good.txt:2 set cab1.key on", "good.txt:3 wait 2", "bad.txt:4 wait 7",
                          "bad.txt:6 guard: ring bell 2"));
}

TEST(ScriptEdits, PutStepsBeforeAndAfter) {
  EXPECT_THAT(stepsOf("after \"set cab1.key on\":\nwait 5 s\nend\n"
                      "before \"set cab1.key on\":\nwait 4 s\nend\n"
                      "after \"set cab1.key on\":\nafter 1 s: set cab1.gear 1\nend\n"
                      "without \"wait 2 s\"\n",
                      "set cab1.key on\nwait 2 s\n"),
              ElementsAre("bad.txt:6 wait 4", "good.txt:1 set cab1.key on", "bad.txt:3 wait 5",
                          "bad.txt:9 set cab1.gear 1"));
}

TEST(ScriptEdits, KeepTheirOwnHeadAndBothTexts) {
  const std::string text = "# breaks: hb-on\n# why\nas good\nwithout \"note leak 1.9\"\n";
  const Script script = cabwright::testing::good(
      parseScript({"bad.txt", text}, {}, beside({{"good", "# breaks: other\n" + kGood}})));
  EXPECT_EQ(script.breaks, "hb-on");
  ASSERT_THAT(script.files, SizeIs(2));
  EXPECT_EQ(script.files[0], (SourceFile{"bad.txt", text}));
  EXPECT_EQ(script.files[1], (SourceFile{"good.txt", "# breaks: other\n" + kGood}));
}

TEST(ScriptEdits, AQuotationMarkIsWrittenTwice) {
  EXPECT_THAT(stepsOf("without \"note leak \"\"much\"\"\"\n", "note leak \"much\"\nwait 1 s\n"),
              ElementsAre("good.txt:2 wait 1"));
}

TEST(ScriptEdits, ALineThatIsNotThereIsAFaultWithTheNearest) {
  EXPECT_THAT(faultsIn("without \"look cab1.sael\"\n"
                       "  before 2nd \"something else altogether\":\n  wait 1 s\n  end\n"
                       "without \"look cab1.seal\" to \"set cab1.key on\"\n"
                       "without \"look cab1.seal\" to \"judge cab1.seal bad\"\n"
                       "without \"# as taught\"\n"),
              ElementsAre("bad.txt:2:9: good.txt has no line \"look cab1.sael\"; did you mean "
                          "\"look cab1.seal\" of line 4?",
                          "bad.txt:3:14: good.txt has no line \"something else altogether\"",
                          "bad.txt:6:29: good.txt has no line \"set cab1.key on\" behind line 4",
                          "bad.txt:7:29: good.txt has no line \"judge cab1.seal bad\" behind line "
                          "4; did you mean \"judge cab1.seal good\" of line 6?",
                          "bad.txt:8:9: good.txt has no line \"# as taught\""));
}

TEST(ScriptEdits, FindTheNearestOfLongLinesToo) {
  const std::string line =
      "wait until cab1.speed >= 32 mph or cab1.mark_distance <= 330 m at most ";
  EXPECT_THAT(faultsIn("without \"" + line + "2 min\"\n", line + "3 min\n"),
              ElementsAre(HasSubstr("did you mean \"" + line + "3 min\" of line 1?")));
}

TEST(ScriptEdits, ALineThatIsThereSeveralTimesIsAFault) {
  EXPECT_THAT(faultsIn("without \"wait 2 s\"\n"
                       "without 3rd \"wait 2 s\"\n"
                       "without 2nd \"wait 9 s\"\n"
                       "without \"wait 3 s\" to 2nd \"wait 9 s\"\n"),
              ElementsAre("bad.txt:2:9: \"wait 2 s\" stands in good.txt 2 times, in lines 3, 5; "
                          "say which: 2nd \"LINE\", last \"LINE\"",
                          "bad.txt:3:13: \"wait 2 s\" stands in good.txt only 2 times, in lines 3, "
                          "5",
                          "bad.txt:4:13: \"wait 9 s\" stands in good.txt only 1 time, in line 11",
                          "bad.txt:5:27: \"wait 9 s\" stands in good.txt behind line 8 only 1 "
                          "time, in line 11"));
  // A stretch that is there twice.
  EXPECT_THAT(faultsIn("without \"wait 1 s\" to \"wait 2 s\"\n",
                       "wait 1 s\nwait 2 s\nwait 1 s\nwait 2 s\n"),
              ElementsAre(HasSubstr("bad.txt:2:9: \"wait 1 s\" stands in good.txt 2 times, in "
                                    "lines 1, 3; say which")));
  EXPECT_THAT(faultsIn("without \"wait 1 s\"\n",
                       "wait 1 s\nwait 1 s\nwait 1 s\nwait 1 s\n"
                       "wait 1 s\nwait 1 s\nwait 1 s\nwait 1 s\n"),
              ElementsAre(HasSubstr("8 times, in lines 1, 2, 3, 4, 5, 6 ...; say which")));
}

TEST(ScriptEdits, TwoThatSpeakOfTheSameLineContradictEachOther) {
  EXPECT_THAT(faultsIn("after \"judge cab1.seal good\":\nwait 1 s\nend\n"
                       "without \"look cab1.seal\" to \"judge cab1.seal good\"\n"
                       "instead of 2nd \"wait 2 s\":\nwait 1 s\nend\n"),
              ElementsAre("bad.txt:2:7: line 6 of good.txt, \"judge cab1.seal good\", is taken "
                          "away already by line 5",
                          "bad.txt:6:16: line 5 of good.txt, \"wait 2 s\", is taken away already "
                          "by line 5"));
}

TEST(ScriptEdits, MisspeltOnesAreFaultsWithTheirPlaces) {
  EXPECT_THAT(
      faultsIn("wihtout \"wait 9 s\"\n"
               "instead \"wait 9 s\":\n"
               "without wait 9 s\n"
               "without \"wait 9 s\n"
               "without \"  \"\n"
               "without 0th \"wait 9 s\"\n"
               "without 2 \"wait 9 s\"\n"
               "without \"wait 9 s\" and more\n"
               "without \"wait 9 s\" to\n"
               "before \"wait 3 s\" to \"wait 9 s\":\nwait 1 s\nend\n"
               "after \"wait 9 s\"\nwait 1 s\nend\n"
               "set cab1.gear 1\n"),
      ElementsAre("bad.txt:2:1: 'wihtout \"wait 9 s\"' found; allowed behind 'as': without, "
                  "instead of, before, after",
                  HasSubstr("bad.txt:3:1: 'instead \"wait 9 s\":' found"),
                  "bad.txt:4:9: a line in quotation marks is wanted here, as \"wait 5 s\"",
                  "bad.txt:5:9: the quotation mark is not closed",
                  "bad.txt:6:9: an empty line is none to go by",
                  "bad.txt:7:9: '0th' found; allowed: 1st, 2nd, 3rd ..., last",
                  "bad.txt:8:9: '2' found; allowed: 1st, 2nd, 3rd ..., last",
                  "bad.txt:9:20: 'and more' found; allowed: to \"LINE\", or nothing",
                  HasSubstr("a line in quotation marks is wanted here"),
                  "bad.txt:11:19: 'to' goes with 'without' and 'instead of' only",
                  "bad.txt:14:17: ':' is wanted here, then lines, then 'end'",
                  HasSubstr("bad.txt:17:1: 'set cab1.gear 1' found; allowed behind 'as'")));
}

TEST(ScriptEdits, ABlockHasToEndAndToHoldSomething) {
  EXPECT_THAT(
      faultsIn("before \"wait 3 s\":\nwait 1 s\n"
               "after \"wait 9 s\":\nend\n"
               "instead of \"wait 3 s\":\nwait 1 s\n"),
      ElementsAre("bad.txt:2:1: there is no 'end'", "bad.txt:4:1: no line stands before its 'end'",
                  "bad.txt:6:1: there is no 'end'"));
  EXPECT_THAT(faultsIn("without \"wait 9 s\"\nend\n"),
              ElementsAre(HasSubstr("bad.txt:3:1: 'end' found; allowed behind 'as'")));
}

TEST(ScriptEdits, StandOnAScriptThatIsThereAndWhole) {
  const auto faults = [](const std::string& text, const std::map<std::string, std::string>& all) {
    return faultsOf(parseScript({"bad.txt", text}, {}, beside(all)));
  };
  EXPECT_THAT(faults("as goood\nwithout \"x\"\n", {{"good", kGood}}),
              ElementsAre("bad.txt:1:4: unknown script 'goood'; did you mean 'good'?"));
  EXPECT_THAT(faults("as ../good\nwithout \"x\"\n", {}),
              ElementsAre(HasSubstr("bad.txt:1:4: 'as' is followed by the name of a script")));
  EXPECT_THAT(faults("as\nwithout \"x\"\n", {}), ElementsAre(HasSubstr("bad.txt:1:1: 'as' is")));
  EXPECT_THAT(faults("as good\n", {{"good", kGood}}),
              ElementsAre("bad.txt:1:1: nothing is said to be otherwise here"));
  // Neither in a circle nor in a long row.
  EXPECT_THAT(faults("as bad\nwithout \"x\"\n", {{"bad", "as bad\nwithout \"x\"\n"}}),
              ElementsAre("bad.txt:1:1: bad.txt itself begins with 'as'; allowed: a script that is "
                          "whole"));
  EXPECT_THAT(faults("set cab1.key on\nas good\n", {{"good", kGood}}),
              ElementsAre("bad.txt:2:1: 'as' belongs at the head, before the first step"));
  EXPECT_THAT(faultsOf(parseScript({"bad.txt", "as good\nwithout \"x\"\n"})),
              ElementsAre("bad.txt:1:4: unknown script 'good'"));
}

TEST(ScriptEdits, FaultsOfBothFilesAreListedWithTheirOwnPlaces) {
  EXPECT_THAT(
      faultsIn("without \"wait 9 s\"\n"
               "before \"no such\":\nwait soon\nend\n"
               "after \"wait 1 s\":\n wait late\nend\n",
               "wait 1 s\nsett x\nwait never\nwait 9 s\n"),
      ElementsAre("bad.txt:3:8: good.txt has no line \"no such\"",
                  HasSubstr("bad.txt:4:6: 'soon' found"), HasSubstr("bad.txt:7:7: 'late' found"),
                  HasSubstr("good.txt:3:6: 'never' found")));
  EXPECT_THAT(faultsIn("without \"wait 9 s\"\n", std::string("wait 1 s\n\0", 10)),
              ElementsAre("good.txt:2:1: a NUL byte: this is no text file"));
}

TEST(ScriptEdits, TimesAreCheckedInTheOrderThatComesOut) {
  EXPECT_THAT(
      faultsIn("after \"wait 2 s\":\nwait 5 s\nend\n", "wait 2 s\nat 4 s: set cab1.key on\n"),
      ElementsAre(HasSubstr("good.txt:2:1: this time has passed already: the steps above "
                            "take until 7.00 s at least")));
}

TEST(ScriptEdits, HostileOnesAreRefusedInTime) {
  std::string good, edits;
  for (int k = 0; k < 99'000; ++k) good += "wait " + std::to_string(k) + " s\n";
  for (int k = 0; k < 20'000; ++k) edits += "without \"wait " + std::to_string(k) + " h\"\n";
  EXPECT_THAT(faultsIn(edits, good), SizeIs(201));
  EXPECT_THAT(faultsIn("without 99999999999999999999th \"wait 9 s\"\n"), SizeIs(1));
  EXPECT_THAT(faultsIn("without " + std::string(1900, '"') + "\n"), SizeIs(1));
}

TEST(ScriptFolder, FindsTheScriptBesideIt) {
  const auto folder = cabwright::testing::shippedScenarios() / "cold-preparation";
  const Neighbours all = neighboursOf(folder / "bad-no-leave.txt");
  EXPECT_THAT(all.names(), ::testing::Contains("good"));
  const auto found = all.find("good");
  ASSERT_TRUE(found);
  EXPECT_EQ(std::get<SourceFile>(*found).name, (folder / "good.txt").string());
  EXPECT_FALSE(all.find("no-such-script"));
  EXPECT_THAT(neighboursOf("no-such-folder/a.txt").names(), IsEmpty());
}

}  // namespace
}  // namespace cabwright::scenario
