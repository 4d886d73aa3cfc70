// SPDX-License-Identifier: GPL-3.0-or-later
// An instructor at work in a run: what LiveRun keeps for the desk, what is recorded of it, and
// going back to a mark.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include <algorithm>

#include "desk_fixture.h"
#include "session/replay.h"

namespace cabwright::session {
namespace {

using fault::FaultStage;
using scenario::Mode;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::SizeIs;

std::vector<std::string> logOf(const LiveRun& live) {
  std::vector<std::string> lines;
  for (const FaultEvent& e : live.faultLog())
    lines.push_back(std::to_string(e.tick) + " " + e.id + " " + std::string(wordOf(e.stage)) +
                    (e.by == unit::Actor::kInstructor ? " by instructor" : ""));
  return lines;
}

class DeskRun : public testing::Test {
 protected:
  std::filesystem::path file() const { return folder_ / "a.cabsession"; }
  LiveOptions recorded(Mode mode = Mode::kPractice) const {
    LiveOptions options = inMode(mode);
    options.record = file();
    return options;
  }
  void expectIdentical() const {
    const Store store(file());
    const Replayed replayed = replay(store);
    EXPECT_FALSE(replayed.difference);
    EXPECT_GT(replayed.hashes, 0);
    EXPECT_EQ(markAgain(store).as_recorded, true);
  }
  Folder folder_;
};

TEST_F(DeskRun, KeepsWhatBecameOfTheFaultsAndWhoDidIt) {
  LiveRun live(deskSituation(), recorded());
  live.advance(120);
  ASSERT_EQ(faultOf(live, "instructor: arm vacuum.train_pipe_leak size 3 ramp 1 s after 1 s"), "");
  live.advance(150);
  ASSERT_THAT(live.faultsNow(), SizeIs(2));
  const FaultNow now = live.faultsNow()[1];
  EXPECT_EQ(now.id, "vacuum.train_pipe_leak#2");
  EXPECT_EQ(now.size, 3.0);
  EXPECT_EQ(now.stage, FaultStage::kGrowing);
  EXPECT_NEAR(now.share, 0.5, 0.02);
  EXPECT_EQ(now.by, unit::Actor::kInstructor);
  live.advance(130);
  EXPECT_EQ(faultOf(live, "instructor: clear vacuum.train_pipe_leak#2"), "");
  live.advance(1);
  EXPECT_THAT(logOf(live), ElementsAre("0 vacuum.train_pipe_leak armed",
                                       "120 vacuum.train_pipe_leak#2 armed by instructor",
                                       "220 vacuum.train_pipe_leak#2 growing by instructor",
                                       "300 vacuum.train_pipe_leak there",
                                       "320 vacuum.train_pipe_leak#2 there by instructor",
                                       "400 vacuum.train_pipe_leak#2 cleared by instructor"));
  const auto sheet = live.finish("finished");
  EXPECT_THAT(marking::printSheet(sheet), HasSubstr("0:00:01.2 instructor: arm vacuum"));
  expectIdentical();
}

TEST_F(DeskRun, AFaultWaitsForItsConditionFromNowOn) {
  LiveRun live(deskSituation(), {});
  live.take(actionOf("set cab1.pawl out"));
  live.take(actionOf("set cab1.handbrake off"));
  live.advance(2000);
  faultOf(live,
          "instructor: arm compressor1.belt_gone when cab1.handbrake > 0.5 after 1 s as belt");
  live.advance(300);
  EXPECT_EQ(live.faultsNow()[1].stage, FaultStage::kArmed);
  live.take(actionOf("set cab1.handbrake on"));
  live.advance(2000);
  EXPECT_EQ(live.faultsNow()[1].stage, FaultStage::kThere);
}

TEST_F(DeskRun, RefusesIdsThatAreTakenOrNotThere) {
  LiveRun live(deskSituation(), {});
  EXPECT_THAT(faultOf(live, "instructor: clear vacuum.train_pipe_leek"),
              HasSubstr("did you mean 'vacuum.train_pipe_leak'"));
  EXPECT_EQ(faultOf(live, "instructor: arm compressor1.belt_gone as belt"), "");
  EXPECT_THAT(faultOf(live, "instructor: arm compressor1.worn as belt"), HasSubstr("is taken"));
  EXPECT_EQ(faultOf(live, "instructor: clear belt"), "");
  live.advance(1);
  EXPECT_THAT(faultOf(live, "instructor: clear belt"), HasSubstr("put right already"));
  EXPECT_THAT(faultOf(live, "instructor: arm compresor1.worn"), HasSubstr("compressor1.worn"));
  EXPECT_THAT(live.actions(), SizeIs(2));  // what is refused is not recorded
}

TEST_F(DeskRun, ClearedAFaultLeavesTheMachineAsItWasToTheBit) {
  LiveRun live(deskSituation(), {}), other(deskSituation(), {});
  faultOf(live, "instructor: arm vacuum.train_pipe_leak size 4 after 1 s as leak");
  live.advance(150);
  const auto& info = *plant::findParameters("vacuum.side1_leak_c").front();
  const auto leakOf = [&](const LiveRun& run) { return info.of(run.unit().plant().parameters()); };
  other.advance(150);
  EXPECT_GT(leakOf(live), leakOf(other));
  faultOf(live, "instructor: clear leak");
  live.advance(1);
  EXPECT_EQ(leakOf(live), leakOf(other));
}

// What the instructor armed under an id that an event wants too must not end the run.
TEST_F(DeskRun, AnEventThatCannotBeDoneIsRefusedInTheRecord) {
  auto sources = sampleSources();
  std::string& text = sources.front().text;
  text.replace(text.find("[marking]"), 0,
               "[[event]]\nwho = \"scenario\"\nat = \"2 s\"\n"
               "do = [\"arm compressor1.belt_gone as belt\", \"clear vacuum.train_pipe_leak\"]\n");
  LiveOptions options = recorded();
  LiveRun live(std::get<Situation>(readSituation(sources)), options);
  faultOf(live, "instructor: arm compressor1.worn as belt");
  faultOf(live, "instructor: clear vacuum.train_pipe_leak");
  live.advance(400);
  EXPECT_EQ(live.tick(), 400);
  EXPECT_EQ(live.faultsNow()[1].spec->name, "compressor1.worn");
  live.finish("finished");
  expectIdentical();
}

TEST_F(DeskRun, PaceMarksAndInterventionsAreKeptAndChangeNothing) {
  LiveRun live(deskSituation(), {}), other(deskSituation(), {});
  EXPECT_EQ(live.pace(), unit::kStandardPace);
  live.advance(100);
  other.advance(100);
  for (const std::string text :
       {"pace 0.5", "mark one", "intervene she rolled", "remark general a"})
    EXPECT_EQ(faultOf(live, "instructor: " + text), "") << text;
  EXPECT_EQ(live.pace().rate, 0.5);
  EXPECT_EQ(live.intervenedAt(), 100);
  EXPECT_THAT(live.marks(), ElementsAre(TimeMark{100, 2, "one"}));
  EXPECT_EQ(live.run().hash(), other.run().hash());
  EXPECT_EQ(hashesOf(live, 5), hashesOf(other, 5));
}

TEST_F(DeskRun, AnAssessmentRefusesAndRecordsNothingOfIt) {
  LiveRun live(deskSituation(), recorded(Mode::kAssessment));
  live.advance(100);
  EXPECT_THAT(faultOf(live, "instructor: pace 0.5"), HasSubstr("pace 1"));
  EXPECT_THAT(faultOf(live, "instructor: set cab1.brake full"), HasSubstr("for the trainee"));
  EXPECT_EQ(faultOf(live, "instructor: arm compressor1.belt_gone"), "");
  EXPECT_EQ(faultOf(live, "instructor: mark here"), "");
  const GoneBack back = live.goBackTo(live.marks().front(), {});
  EXPECT_EQ(back.run, nullptr);
  EXPECT_THAT(back.fault.value_or(""), HasSubstr("not gone back"));
  EXPECT_EQ(faultOf(live, "instructor: intervene a person on the line"), "");
  EXPECT_EQ(faultOf(live, "instructor: pace frozen"), "");
  EXPECT_EQ(faultOf(live, "instructor: pace 1"), "");
  EXPECT_THAT(live.actions(), SizeIs(5));
  live.finish("finished");
  expectIdentical();
}

const std::vector<Deed> kAfterTheMark{{410, "set cab1.handbrake off"},
                                      {430, "instructor: clear vacuum.train_pipe_leak"},
                                      {505, "say call_warning"},
                                      {700, "set cab1.handbrake on"}};

// A run with a mark at 400, and acts of its own tick on both sides of it.
void goToTheMark(LiveRun& live) {
  live.advance(200);
  live.take(actionOf("set cab1.pawl out"));
  faultOf(live, "instructor: arm air.main_leak size 2 ramp 20 s after 1 s as leak");
  live.advance(200);
  live.take(actionOf("say call_warning"));
  EXPECT_EQ(faultOf(live, "instructor: mark before the wheel"), "");
}

std::vector<std::uint64_t> goOn(LiveRun& live) {
  std::vector<std::uint64_t> hashes{live.run().hash()};
  for (const Deed& deed : kAfterTheMark) {
    live.advance(deed.tick - live.tick());
    EXPECT_EQ(faultOf(live, deed.text), "");
    hashes.push_back(live.run().hash());
  }
  for (const std::uint64_t hash : hashesOf(live, 40)) hashes.push_back(hash);
  return hashes;
}

TEST_F(DeskRun, GoingBackToAMarkAndDoingTheSameGivesTheSameBits) {
  LiveRun live(deskSituation(), {});
  goToTheMark(live);
  const auto hashes = goOn(live);
  const std::string sheet = marking::printSheetJson(live.sheet());
  ASSERT_THAT(live.marks(), SizeIs(1));
  for (const bool from_the_start : {false, true}) {
    LiveOptions options;
    if (from_the_start) options.record = file();
    GoneBack back = live.goBackTo(live.marks().front(), options);
    ASSERT_TRUE(back.run) << back.fault.value_or("");
    EXPECT_EQ(back.run->tick(), 400);
    EXPECT_THAT(back.run->marks(), SizeIs(1));
    EXPECT_EQ(logOf(*back.run),
              (std::vector<std::string>{
                  "0 vacuum.train_pipe_leak armed", "200 leak armed by instructor",
                  "300 vacuum.train_pipe_leak there", "300 leak growing by instructor"}));
    EXPECT_EQ(goOn(*back.run), hashes);
    EXPECT_EQ(back.run->history().series(unit::Signal::kCab1Handbrake).size(),
              live.history().series(unit::Signal::kCab1Handbrake).size());
    EXPECT_EQ(back.run->frameAt(350).value, live.frameAt(350).value);
    EXPECT_EQ(back.run->frameAt(650).value, live.frameAt(650).value);
    auto again = back.run->sheet();
    ASSERT_THAT(again.head.taken_again, SizeIs(1));
    EXPECT_EQ(again.head.taken_again[0].text, "from 0:00:04.00, mark 'before the wheel'");
    // But for that, and who it is, the sheet is the same.
    again.head.taken_again.clear();
    again.head.session_id = live.header().session_id;
    again.head.started_utc = live.header().started_utc;
    EXPECT_EQ(marking::printSheetJson(again), sheet);
    back.run->finish("finished");
  }
  expectIdentical();
}

TEST_F(DeskRun, OneMayGoBackAgainAndAgain) {
  LiveRun live(deskSituation(), {});
  goToTheMark(live);
  live.advance(500);
  faultOf(live, "instructor: mark later");
  const TimeMark first = live.marks()[0], later = live.marks()[1];
  auto once = live.goBackTo(first, {}).run;
  ASSERT_TRUE(once);
  EXPECT_THAT(once->goBackTo(later, {}).fault.value_or(""), HasSubstr("no mark 'later'"));
  once->advance(100);
  auto twice = once->goBackTo(first, {}).run;
  ASSERT_TRUE(twice);
  EXPECT_EQ(twice->tick(), 400);
  EXPECT_EQ(goOn(*twice).back(), goOn(*live.goBackTo(first, {}).run).back());
}

TEST_F(DeskRun, ARunTakenAgainSaysSoOnItsSheet) {
  LiveRun live(deskSituation(), {});
  live.advance(300);
  const auto again = live.takenAgainFrom(200, {});
  EXPECT_THAT(again->sheet().head.taken_again, SizeIs(1));
  EXPECT_TRUE(again->sheet().head.prompts.empty());
  EXPECT_TRUE(live.sheet().head.taken_again.empty());
}

TEST_F(DeskRun, TheHeadSaysWhatTheInstructorDid) {
  LiveRun live(deskSituation(), recorded());
  live.advance(100);
  for (const std::string text :
       {"pace 0.5", "remark prompt look at the gauge", "remark general calm and clear",
        "pace frozen", "intervene the wheel was off"})
    EXPECT_EQ(faultOf(live, "instructor: " + text), "");
  live.advance(100);
  faultOf(live, "instructor: pace 0.5");
  faultOf(live, "instructor: pace 1");
  const auto sheet = live.finish("finished");
  const auto textsOf = [](const std::vector<marking::SheetNote>& notes) {
    std::vector<std::string> texts;
    for (const auto& note : notes) texts.push_back(std::to_string(note.tick) + " " + note.text);
    return texts;
  };
  EXPECT_THAT(textsOf(sheet.head.paces), ElementsAre("100 0.5", "200 0.5", "200 1"));
  EXPECT_THAT(textsOf(sheet.head.freezes), ElementsAre("100 frozen"));
  EXPECT_THAT(textsOf(sheet.head.prompts), ElementsAre("100 look at the gauge"));
  EXPECT_THAT(textsOf(sheet.head.remarks), ElementsAre("100 calm and clear"));
  EXPECT_THAT(textsOf(sheet.head.interventions), ElementsAre("100 the wheel was off"));
  const std::string text = marking::printSheet(sheet);
  for (const std::string line :
       {"Pace              0:00:01.0 0.5", "Prompt            0:00:01.0 look at the gauge",
        "Remark            0:00:01.0 calm and clear", "Stepped in        0:00:01.0 the wheel",
        "Freeze            0:00:01.0 frozen", "Unaided           up to 0:00:01.0"})
    EXPECT_THAT(text, HasSubstr(line));
  const auto json = marking::sheetToJson(sheet).at("head");
  EXPECT_EQ(json.at("remarks").at(0).at("text"), "calm and clear");
  EXPECT_EQ(json.at("remarks").at(0).at("tick"), 100);
  EXPECT_EQ(json.at("remarks").at(0).at("time"), "0:00:01.00");
  EXPECT_EQ(json.at("unaided_until"), 100);
  expectIdentical();
}

const marking::SheetLine& lineOf(const marking::MarkSheet& sheet, const std::string& id) {
  return *std::ranges::find(sheet.lines, id, &marking::SheetLine::id);
}

TEST_F(DeskRun, AfterAnInterventionOnlyTheUnaidedPartCounts) {
  LiveRun live(deskSituation(), recorded());
  live.advance(100);
  faultOf(live, "instructor: intervene it went too slowly");
  live.take(actionOf("set cab1.pawl out"));
  live.take(actionOf("set cab1.handbrake off"));
  live.take(actionOf("set cab1.gear 1"));  // a critical breach, but the trainee was no longer alone
  live.advance(1500);
  const auto sheet = live.finish("finished");
  const auto& pawl = lineOf(sheet, "pawl");
  EXPECT_EQ(pawl.outcome(), marking::Outcome::kNotExercised);
  EXPECT_EQ(pawl.verdictText(), "not exercised (with help: met)");
  EXPECT_EQ(pawl.possible, 0.0);
  const auto& gear = lineOf(sheet, "gear");
  EXPECT_EQ(gear.verdictText(), "met (with help: broken)");
  EXPECT_FALSE(gear.fails_run);
  EXPECT_FALSE(sheet.decision.passed);
  EXPECT_THAT(sheet.decision.text, HasSubstr("stepped in at 0:00:01.00"));
  expectIdentical();
}

TEST_F(DeskRun, WhatWasBrokenUnaidedStaysBroken) {
  LiveRun live(deskSituation(), {});
  live.take(actionOf("set cab1.gear 1"));
  live.advance(100);
  faultOf(live, "instructor: intervene the gear was in");
  live.advance(100);
  const auto sheet = live.finish("finished");
  EXPECT_EQ(lineOf(sheet, "gear").verdictText(), "broken");
  EXPECT_THAT(sheet.decision.failed_by, SizeIs(1));
}

TEST_F(DeskRun, AnInterventionAfterTheAimTakesNothingAway) {
  LiveRun live(deskSituation(), {});
  live.take(actionOf("set cab1.pawl out"));
  live.take(actionOf("set cab1.handbrake off"));
  live.advance(2000);
  ASSERT_TRUE(live.sheet().aim->reached_at);
  faultOf(live, "instructor: intervene enough for today");
  live.advance(100);
  EXPECT_EQ(live.finish("finished").decision.text.find("stepped in"), std::string::npos);
}

TEST_F(DeskRun, ARecordingOfAnEarlierVersionSaysTheSame) {
  LiveRun live(deskSituation(), recorded());
  live.advance(100);
  live.finish("finished");
  const Store store(file());
  auto json = nlohmann::json::parse(store.closing()->sheet_json);
  json["head"].erase("paces");  // what only a later version writes
  json["head"].erase("unaided_until");
  for (auto& line : json["lines"]) line.erase("with_help");
  EXPECT_TRUE(isSameSheet(json.dump(), store.closing()->sheet_json));
  json["totals"]["met"] = 99;
  EXPECT_FALSE(isSameSheet(json.dump(), store.closing()->sheet_json));
  EXPECT_FALSE(isSameSheet("no json", store.closing()->sheet_json));
}

}  // namespace
}  // namespace cabwright::session
