// SPDX-License-Identifier: GPL-3.0-or-later
// Files are changed where they are changed, and nowhere else.
#include "scenario/scenario_writer.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>

#include "draft_texts.h"
#include "scenario/draft_text.h"
#include "scenario/draft_writer.h"
#include "scenario/quantity_text.h"

namespace cabwright::scenario {
namespace {

using namespace cabwright::testing;
using S = DraftSection;
using ::testing::HasSubstr;

TEST(ScenarioWriter, ShippedFilesComeBackToTheByte) {
  ASSERT_GE(shippedFiles().size(), 5U);
  for (const std::string& path : shippedFiles()) {
    const std::string text = textOf(path);
    EXPECT_EQ(writeDraft(draftOf(text)), text) << path;
  }
}

TEST(ScenarioWriter, ShippedFilesWrittenAnewMeanTheSame) {
  for (const std::string& path : shippedFiles()) {
    const Draft draft = draftOf(textOf(path));
    const std::string anew = writeDraft(freshOf(draft));
    EXPECT_EQ(anew, changedText(freshOf(draft), Draft().original));
    EXPECT_EQ(meaningOf(anew), meaningOf(draft.original)) << path << "\n" << anew;
    EXPECT_NE(meaningOf(anew).front(), "FAULTS") << meaningOf(anew)[1];
  }
}

Draft smallDraft() {
  Draft draft;
  DraftTable& head = draft.table(S::kHead);
  head.set("route", "quavelow-branch");
  head.set("title", "A small one");
  head.set("purpose", "To see");
  head.set("summary", "Nothing \"much\"");
  head.set("vehicle", "two-engine-unit");
  head.set("time_allowed", timeText(180000));
  head.set("seed", 0);
  draft.table(S::kConditions).set("temperature", quantityValue(2, "C"));
  draft.table(S::kConditions).set("dark", false);
  draft.table(S::kStart).set("place", "cab1");
  draft.table(S::kStart).set("main_psi", 96.0);
  draft.table(S::kControls).set("cab2.pawl", "out");
  draft.table(S::kControls).set("cab1.key", "on");
  draft.table(S::kObjects).set("control_key", "cab1");
  draft.table(S::kPeople).set("guard", false);
  DraftTable hidden;
  hidden.set("condition", "hanging");
  hidden.set("item", "end2.hoses");
  draft.list(S::kHidden).push_back(hidden);
  hidden.set("item", "end1.hoses");
  draft.list(S::kHidden).push_back(hidden);
  DraftTable event;
  event.set("who", "guard");
  event.set("do", std::vector<std::string>{"ring bell 2"});
  event.set("when", "true.standing");
  event.set("after", timeText(500));
  draft.list(S::kEvent).push_back(event);
  return draft;
}

TEST(ScenarioWriter, ANewFileReadsAsIfWrittenByHand) {
  EXPECT_EQ(writeDraft(smallDraft()), R"(# SPDX-License-Identifier: GPL-3.0-or-later
title = "A small one"
purpose = "To see"
summary = "Nothing \"much\""
vehicle = "two-engine-unit"
route = "quavelow-branch"
time_allowed = "30 min"

[conditions]
temperature = "2 C"

[start]
place = "cab1"
main_psi = 96
[start.controls]
cab1.key = "on"
cab2.pawl = "out"
[start.objects]
control_key = "cab1"

[people]
guard = false

[[hidden]]
item = "end2.hoses"
condition = "hanging"
[[hidden]]
item = "end1.hoses"
condition = "hanging"

[[event]]
who = "guard"
when = "true.standing"
after = "5 s"
do = ["ring bell 2"]
)");
}

// The text with comments in all the usual places.
const std::string kText = R"(# SPDX-License-Identifier: GPL-3.0-or-later
# What this is for.
title   = "Old"      # of the exercise
purpose = "P"
summary = "S"
vehicle = "two-engine-unit"
route = "quavelow-branch"

# Cold, and dark.
[conditions]
temperature = 2   # C
rail = 'damp'

[start]
place = "booking"
berth = "siding_1"
# Air is up.
main_psi = 96

# Three things; all of them are seen.
[[hidden]]
item = "end2.hoses"
condition = "hanging"
[[hidden]]
item = "end1.hoses"   # the other end
condition = "hanging"

# It comes late.
[[fault]]
fault = "air.main_leak"
at = "3 min"

[[fault]]
fault = "battery.load_left_on"

[marking]
pass_mark = 80

[[marking.use]]
file = "preparation"
rules = [
  "access", "protect",   # first
  "hb-on",
  "warn", "danger",
]
# The end.
)";

std::string changed(const std::function<void(Draft&)>& change, const std::string& text = kText) {
  Draft draft = draftOf(text);
  change(draft);
  const std::string out = writeDraft(draft);
  EXPECT_EQ(out, changedText(draft, draft.original)) << "written anew, comments lost";
  return out;
}
std::string replaced(std::string text, const std::string& was, const std::string& now) {
  const std::size_t at = text.find(was);
  EXPECT_NE(at, std::string::npos) << was;
  return text.replace(at, was.size(), now);
}

TEST(ScenarioWriter, AValueIsChangedInItsPlace) {
  EXPECT_EQ(changed([](Draft& d) { d.table(S::kHead).set("title", "New"); }),
            replaced(kText, "\"Old\"", "\"New\""));
  EXPECT_EQ(changed([](Draft& d) { d.table(S::kConditions).set("temperature", "-3 C"); }),
            replaced(kText, "= 2 ", "= \"-3 C\" "));
  EXPECT_EQ(changed([](Draft& d) { d.list(S::kHidden)[1].set("condition", "good"); }),
            replaced(kText, "end\ncondition = \"hanging\"", "end\ncondition = \"good\""));
}

TEST(ScenarioWriter, AKeyComesWherePeoplePutIt) {
  EXPECT_EQ(changed([](Draft& d) { d.table(S::kHead).set("mode", "guided"); }),
            replaced(kText, "branch\"\n", "branch\"\nmode = \"guided\"\n"));
  EXPECT_EQ(changed([](Draft& d) { d.table(S::kStart).set("control_psi", 95.0); }),
            replaced(kText, "main_psi = 96\n", "main_psi = 96\ncontrol_psi = 95\n"));
  EXPECT_EQ(changed([](Draft& d) { d.table(S::kConditions).set("weather", "frost"); }),
            replaced(kText, "[conditions]\n", "[conditions]\nweather = \"frost\"\n"));
  EXPECT_EQ(changed([](Draft& d) { d.list(S::kFault)[0].set("ramp", "20 s"); }),
            replaced(kText, "at = \"3 min\"\n", "at = \"3 min\"\nramp = \"20 s\"\n"));
}

TEST(ScenarioWriter, ASectionComesInItsOrder) {
  EXPECT_EQ(changed([](Draft& d) { d.table(S::kControls).set("cab2.pawl", "out"); }),
            replaced(kText, "psi = 96\n", "psi = 96\n[start.controls]\ncab2.pawl = \"out\"\n"));
  EXPECT_EQ(changed([](Draft& d) { d.table(S::kPeople).set("guard", false); }),
            replaced(kText, "psi = 96\n", "psi = 96\n\n[people]\nguard = false\n"));
  EXPECT_EQ(changed([](Draft& d) { d.table(S::kJudgements).set("hit_points", 2); }),
            replaced(kText, "mark = 80\n", "mark = 80\n[marking.judgements]\nhit_points = 2\n"));
  const auto add = [](Draft& d) {
    DraftTable hidden;
    hidden.set("item", "end2.tail_lamp");
    hidden.set("condition", "dead");
    d.list(S::kHidden).push_back(hidden);
  };
  EXPECT_EQ(changed(add), replaced(kText, "other end\ncondition = \"hanging\"\n",
                                   "other end\ncondition = \"hanging\"\n[[hidden]]\nitem = "
                                   "\"end2.tail_lamp\"\ncondition = \"dead\"\n"));
}

TEST(ScenarioWriter, WhatIsTakenOutLeavesNoHole) {
  EXPECT_EQ(changed([](Draft& d) { d.list(S::kFault).erase(d.list(S::kFault).begin()); }),
            replaced(kText,
                     "# It comes late.\n[[fault]]\nfault = \"air.main_leak\"\nat = \"3 "
                     "min\"\n\n",
                     ""));
  EXPECT_EQ(changed([](Draft& d) { d.list(S::kHidden).erase(d.list(S::kHidden).begin()); }),
            replaced(kText, "[[hidden]]\nitem = \"end2.hoses\"\ncondition = \"hanging\"\n", ""))
      << "what is said of all stays";
  EXPECT_EQ(changed([](Draft& d) { d.table(S::kConditions).entries.clear(); }),
            replaced(kText,
                     "# Cold, and dark.\n[conditions]\ntemperature = 2   # C\nrail = "
                     "'damp'\n\n",
                     ""));
  EXPECT_EQ(changed([](Draft& d) { d.table(S::kStart).remove("berth"); }),
            replaced(kText, "berth = \"siding_1\"\n", ""));
}

TEST(ScenarioWriter, OfALongListOnlyTheItemChanges) {
  const auto rules = [](std::vector<std::string> all) {
    return [all](Draft& d) { d.list(S::kUse)[0].set("rules", all); };
  };
  EXPECT_EQ(changed(rules({"access", "protect", "hb-on", "danger"})),
            replaced(kText, "\"warn\", ", ""));
  EXPECT_EQ(changed(rules({"access", "protect", "warn", "danger"})),
            replaced(kText, "  \"hb-on\",\n", ""));
  EXPECT_EQ(changed(rules({"access", "hb-on", "warn"})),
            replaced(replaced(kText, " \"protect\",", ""), " \"danger\",", ""));
  EXPECT_EQ(changed(rules({"access", "protect", "hb-on", "warn", "signal", "danger", "guard"})),
            replaced(replaced(kText, "\"danger\"", "\"signal\", \"danger\""), "\"danger\"",
                     "\"danger\", \"guard\""));
}

TEST(ScenarioWriter, OrderIsChangedWithItsComments) {
  const std::string out = changed([](Draft& d) {
    auto& faults = d.list(S::kFault);
    std::swap(faults[0], faults[1]);
  });
  EXPECT_THAT(out, HasSubstr("[[fault]]\nfault = \"battery.load_left_on\"\n\n# It comes late.\n"
                             "[[fault]]\nfault = \"air.main_leak\"\nat = \"3 min\"\n\n[marking]"));
}

TEST(ScenarioWriter, TheUsualIsLeftOutUnlessItWasSaid) {
  EXPECT_EQ(changed([](Draft& d) {
              d.table(S::kHead).set("seed", 0);
              d.table(S::kPeople).set("guard", true);
            }),
            kText);
  const std::string said = kText + "[people]\nguard = true\n";
  EXPECT_EQ(writeDraft(draftOf(said)), said);
}

TEST(ScenarioWriter, LinesEndAsTheyDid) {
  std::string text = kText;
  for (std::size_t at = 0; (at = text.find('\n', at)) != std::string::npos; at += 2)
    text.insert(at, "\r");
  const std::string out = changed([](Draft& d) { d.table(S::kPeople).set("guard", false); }, text);
  EXPECT_THAT(out, HasSubstr("psi = 96\r\n\r\n[people]\r\nguard = false\r\n\r\n"));
}

// Other ways to lay a file out; each means the same as smallDraft's sections or near.
TEST(ScenarioWriter, OtherLayoutsAreKeptAndCanBeChanged) {
  const std::string head =
      "title = \"T\"\npurpose = \"P\"\nsummary = \"\"\"\nS # no comment\n\"\"\"\n"
      "vehicle = \"two-engine-unit\"\nroute = \"quavelow-branch\"\n";
  for (const std::string& more :
       {std::string("conditions.weather = \"rain\"\n[start]\ncontrols.cab1.key = \"on\"\n"),
        std::string("start = { place = \"cab1\", controls = { \"cab1\" = { key = \"on\" } } }\n"),
        std::string("hidden = [{ item = \"end2.hoses\", condition = \"hanging\" }]\n"),
        std::string("[start.controls.cab1]\nkey = \"on\"\n[start.controls.cab2]\npawl = 0\n"),
        std::string("[[draw]]\nname = \"x\"\n[[draw.from]]\nnothing = true\n[[draw.from]]\n"
                    "item = \"end2.hoses\"\ncondition = \"hanging\"\n"),
        std::string("[marking]\nuse = [{ file = \"preparation\", rules = [\"access\"] }]\n"),
        std::string("[ start . objects ]\n\"vest\" = 'carried'")}) {
    const std::string text = head + more;
    ASSERT_NE(meaningOf(text).front(), "FAULTS") << text << meaningOf(text)[1];
    EXPECT_EQ(writeDraft(draftOf(text)), text);
    EXPECT_EQ(meaningOf(writeDraft(freshOf(draftOf(text)))), meaningOf(text)) << text;
    for (const auto& change : std::vector<std::function<void(Draft&)>>{
             [](Draft& d) { d.table(S::kControls).set("cab2.white_lamps", "on"); },
             [](Draft& d) { d.table(S::kObjects).set("hand_lamp", "carried"); },
             [](Draft& d) { d.table(S::kStart).set("place", "cab2"); },
             [](Draft& d) { d.table(S::kConditions).set("rail", "wet"); },
             [](Draft& d) { d.table(S::kControls).set("cab1.key", "off"); },
             [](Draft& d) { d.list(S::kHidden).clear(); },
             [](Draft& d) {
               DraftTable h;
               h.set("item", "end1.hoses");
               h.set("condition", "hanging");
               d.list(S::kHidden).push_back(h);
             },
             [](Draft& d) {
               for (DraftTable& draw : d.list(S::kDraw)) {
                 DraftList from = std::get<DraftList>(draw.find("from")->value);
                 std::get<DraftInline>(from.items[1].value).values[0] = DraftValue("hanging");
                 from.items.pop_back();
                 draw.set("from", from);
               }
             }}) {
      Draft draft = draftOf(text);
      change(draft);
      const std::string out = changed(change, text);
      EXPECT_EQ(meaningOf(out), meaningOf(writeDraft(freshOf(draft)))) << out;
      EXPECT_THAT(out, HasSubstr("S # no comment"));
    }
  }
}

TEST(ScenarioWriter, FaultsStandInTheTextThatWouldBeSaved) {
  const FolderLibrary library(scenariosFolder());
  Draft draft = smallDraft();
  EXPECT_TRUE(findDraftFaults(draft, "new.toml", library).empty());
  draft.list(S::kHidden)[1].set("item", "end1.hosse");
  draft.table(S::kHead).set("mode", "assessment");
  const FileFaults faults = findDraftFaults(draft, "new.toml", library);
  ASSERT_EQ(faults.size(), 3U);
  EXPECT_EQ(toText(faults[0]), "new.toml:7:8: an assessment without any rule");
  EXPECT_EQ(toText(faults[2]).substr(0, 14), "new.toml:29:8:");
  EXPECT_THAT(faults[2].what, HasSubstr("did you mean 'end1.hoses'"));
}

TEST(ScenarioWriter, TimesReadAsTheyAreWritten) {
  EXPECT_EQ(timeText(0), "0 s");
  EXPECT_EQ(timeText(500), "5 s");
  EXPECT_EQ(timeText(1250), "12.5 s");
  EXPECT_EQ(timeText(9000), "1 min 30 s");
  EXPECT_EQ(timeText(360000), "60 min");
  EXPECT_EQ(timeText(540000), "90 min");
  EXPECT_EQ(timeText(1080000), "3 h");
  for (std::int64_t ticks = 0; ticks < 2000000; ticks += 773)
    ASSERT_EQ(std::get<std::int64_t>(readTicks(timeText(ticks))), ticks) << timeText(ticks);
}

TEST(ScenarioWriter, AFileThatIsThereStaysUntilTheNewOneIsWhole) {
  const auto folder = std::filesystem::temp_directory_path() / "cabwright-writer-test";
  std::filesystem::remove_all(folder);
  const std::string path = (folder / "NEW" / "scenario.toml").string();
  EXPECT_FALSE(saveText(path, "a").has_value());
  EXPECT_FALSE(saveText(path, "b").has_value());
  EXPECT_EQ(textOf(path), "b");
  EXPECT_FALSE(std::filesystem::exists(path + ".part"));
  EXPECT_TRUE(saveText(folder.string(), "c").has_value()) << "a folder";
  EXPECT_TRUE(saveText(path + "/x/y", "c").has_value()) << "below a file";
  EXPECT_EQ(textOf(path), "b");
  std::filesystem::remove_all(folder);
}

}  // namespace
}  // namespace cabwright::scenario
