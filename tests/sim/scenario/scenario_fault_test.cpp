// SPDX-License-Identifier: GPL-3.0-or-later
// What is said about bad scenarios: every kind of fault with its exact place.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "scenario_texts.h"

namespace cabwright::scenario {
namespace {

using cabwright::testing::faultsOf;
using cabwright::testing::kHead;
using cabwright::testing::parseAfterHead;
using cabwright::testing::parseScenarioText;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

// The rest begins in line 6.
std::vector<std::string> faultsIn(const std::string& rest) {
  return faultsOf(parseAfterHead(rest));
}

TEST(ScenarioFaults, WhatIsMissingIsSaid) {
  EXPECT_THAT(faultsOf(parseScenarioText("title = \"\"\nvehicle = \"plain\"\n")),
              ElementsAre("x.toml:1:1: a scenario needs 'purpose'",
                          "x.toml:1:1: a scenario needs 'summary'",
                          "x.toml:1:1: a scenario needs 'route'", "x.toml:1:9: 'title' is empty"));
}

TEST(ScenarioFaults, UnknownKeysAreFaultsWithTheNearestName) {
  EXPECT_THAT(faultsIn("time_alowed = 5\n[condition]\nrail = \"wet\"\n[conditions]\nraill = 1\n"),
              ElementsAre("x.toml:6:1: unknown key 'time_alowed'; did you mean 'time_allowed'? in "
                          "a scenario",
                          "x.toml:7:2: unknown key 'condition'; did you mean 'conditions'? in a "
                          "scenario",
                          "x.toml:10:1: unknown key 'raill'; did you mean 'rail'? in "
                          "[conditions]"));
}

TEST(ScenarioFaults, WrongTypesWordsUnitsAndBounds) {
  EXPECT_THAT(faultsIn("mode = \"exam\"\nseed = -1\ntime_allowed = \"50 psi\"\n[conditions]\n"
                       "weather = 3\ntemperature = \"2 F\"\nrail = \"wett\"\nstood_hours = 500\n"
                       "dark = \"yes\"\n"),
              ElementsAre("x.toml:6:8: unknown mode 'exam'; allowed: guided, practice, assessment",
                          HasSubstr("x.toml:7:8: 'seed' is -1; allowed: 0 to "),
                          HasSubstr("x.toml:8:16: 'time_allowed': '50 psi' found; allowed: a time"),
                          "x.toml:10:11: 'weather' is a number; allowed: text",
                          "x.toml:11:15: 'temperature': unit 'F' found; allowed: a number of C",
                          "x.toml:12:8: unknown rail 'wett'; did you mean 'wet'?",
                          "x.toml:13:15: 'stood_hours' is 500; allowed: 0 to 200 h",
                          "x.toml:14:8: 'dark' is text; allowed: true or false"));
}

TEST(ScenarioFaults, VehiclesAndRoutesThatDoNotExist) {
  EXPECT_THAT(faultsOf(parseScenarioText("title = \"T\"\npurpose = \"P\"\nsummary = \"S\"\n"
                                         "vehicle = \"plian\"\nroute = \"../line\"\n")),
              ElementsAre("x.toml:4:11: unknown vehicle 'plian'; did you mean 'plain'?",
                          HasSubstr("x.toml:5:9: unknown route '../line'")));
}

TEST(ScenarioFaults, FaultsOfTheVehicleAndTheRouteComeAlong) {
  TextLibrary library;
  library.add(Shelf::kVehicles, "plain", "title = \"x\"\n[air]\nhorn_c = 99\n");
  library.add(Shelf::kRoutes, "line", "title = \"x\"\n");
  EXPECT_THAT(faultsOf(parseScenario({"x.toml", kHead + "mode = 1\n"}, library)),
              ElementsAre("x.toml:6:8: 'mode' is a number; allowed: text",
                          HasSubstr("vehicles/plain.toml:3:10: 'air.horn_c' is 99"),
                          "routes/line.toml:1:1: a route file needs one [[grade]] at least"));
}

TEST(ScenarioFaults, TheStartSpeaksOfKnownThings) {
  EXPECT_THAT(
      faultsIn("[start]\nplace = \"cab3\"\nberth = \"bayy\"\nmain_psy = 3\nline1.coolant_c = 200\n"
               "ambient_c = 3\n[start.controls]\ncab1.gear = \"R\"\ncab9.gear = 1\n"
               "cab1.pawl = [1]\n[start.objects]\nbrake_handel = \"carried\"\n"
               "control_key = \"cab3\"\n[start.parameters]\nair.horn = 3\nair.horn_c = 99\n"),
      ElementsAre(HasSubstr("x.toml:7:9: unknown place 'cab3'; did you mean 'cab1'?"),
                  "x.toml:8:9: unknown berth 'bayy'; did you mean 'bay'?",
                  "x.toml:9:1: unknown start condition 'main_psy'; did you mean 'main_psi'?",
                  "x.toml:10:19: 'line1.coolant_c' is 200; allowed: -30 to 120 C",
                  HasSubstr("x.toml:11:1: the air's temperature is 'temperature'"),
                  HasSubstr("x.toml:13:13: cab1.gear cannot be 'R'; allowed: "),
                  HasSubstr("x.toml:14:6: unknown control 'cab9.gear'; did you mean 'cab1.gear'?"),
                  "x.toml:15:13: 'cab1.pawl' is a list; allowed: a word, or a number",
                  "x.toml:17:1: unknown thing 'brake_handel'; did you mean 'brake_handle'?",
                  HasSubstr("x.toml:18:15: control_key: unknown whereabouts 'cab3'"),
                  "x.toml:20:5: unknown parameter 'air.horn'; did you mean 'air.horn_c'?",
                  "x.toml:21:14: 'air.horn_c' is 99; allowed: 0 to 50 dm3/(s bar)"));
}

TEST(ScenarioFaults, WhatOnlyShowsTogetherPointsAtTheStart) {
  EXPECT_THAT(faultsIn("[start.objects]\ncontrol_key = \"cab1\"\nspare_key = \"cab1\"\n"),
              ElementsAre(HasSubstr("x.toml:6:1: control_key and spare_key are both in cab1")));
  EXPECT_THAT(faultsIn("[start.parameters]\nair.cut_in_psi = 99\n"),
              ElementsAre("x.toml:7:18: air.cut_out_psi = 95.5: must be above cut_in_psi = 99"));
}

TEST(ScenarioFaults, HiddenThingsAreOneOfTheKnown) {
  EXPECT_THAT(
      faultsIn("[[hidden]]\nitem = \"end2.hose\"\ncondition = \"hanging\"\n"
               "[[hidden]]\nitem = \"end2.hoses\"\ncondition = \"hangin\"\n"
               "[[hidden]]\nitem = \"end2.hoses\"\nfault = \"starter1.dead\"\n"
               "[[hidden]]\ncondition = \"x\"\n"
               "[[hidden]]\nfault = \"starter1.ded\"\nsiez = 3\n"),
      ElementsAre(HasSubstr("x.toml:7:8: unknown item or instrument 'end2.hose'; did you mean "
                            "'end2.hoses'?"),
                  HasSubstr("x.toml:11:13: end2.hoses: unknown condition 'hangin'; did you mean "
                            "'hanging'?"),
                  HasSubstr("x.toml:12:1: one of 'item', 'instrument', 'fault' is wanted here"),
                  HasSubstr("x.toml:15:1: one of 'item', 'instrument', 'fault' is wanted here"),
                  "x.toml:18:9: unknown fault 'starter1.ded'; did you mean 'starter1.dead'?",
                  "x.toml:19:1: unknown key 'siez'; did you mean 'size'? in [[hidden]]"));
}

TEST(ScenarioFaults, DrawsCanBeDrawn) {
  EXPECT_THAT(
      faultsIn("[[draw]]\nname = \"a\"\ncount = 3\nfrom = [{ nothing = true },\n"
               "{ item = \"end1.window\", condition = \"cracked\", weight = 0 }]\n"
               "[[draw]]\nname = \"a\"\nfrom = [{ nothing = true, weight = -1 }]\n"
               "[[draw]]\nname = \"b\"\n"
               "[[draw]]\nname = \"c\"\nfrom = [{ nothing = true, weight = 0 }]\n"),
      ElementsAre("x.toml:8:9: 'count' is 3; allowed: at most the 1 choices that can be drawn",
                  "x.toml:12:8: there is a draw 'a' already",
                  "x.toml:13:36: 'weight' is -1; allowed: 0 to 1e+06",
                  "x.toml:14:1: [[draw]] needs 'from', a list of what can be drawn",
                  "x.toml:18:1: nothing can be drawn: every weight is 0"));
}

TEST(ScenarioFaults, FaultsOfTheMachineHaveSoundSizesAndTimes) {
  EXPECT_THAT(
      faultsIn("[[fault]]\nfault = \"vacuum.train_pipe_leak\"\nsize = \"3 cm\"\nat = 5\n"
               "when = \"cab1.air > 5 psi\"\n"
               "[[fault]]\nfault = \"starter1.dead\"\nsize = 1\nramp = \"5 s\"\n"
               "[[fault]]\nfault = \"engine1.injector_out\"\nsize = 1.5\nafter = 3\n"
               "[[fault]]\nfault = \"starter2.dead\"\nat = \"5 min\"\nuntil = \"4 min\"\n"
               "[[fault]]\nfault = \"generator1.dead\"\nwhen = \"cab1.airr > 5 psi\"\n"
               "[[fault]]\nfault = \"generator2.dead\"\nwhen = \"1 > 0\"\nramp = 0.001\n"
               "[[fault]]\nsize = 3\n"),
      ElementsAre("x.toml:8:8: 'size': unit 'cm' found; allowed: a number of mm",
                  "x.toml:10:1: both 'at' and 'when'; allowed: one of them",
                  "x.toml:13:1: 'starter1.dead' has no size: it is there or it is not",
                  "x.toml:14:1: 'starter1.dead' comes at once; it cannot have a 'ramp'",
                  HasSubstr("x.toml:17:8: 'engine1.injector_out' is counted in whole injectors"),
                  "x.toml:18:1: 'after' without 'when': there is nothing to count from",
                  "x.toml:22:9: the fault is over before it comes: 'until' is not after 'at'",
                  "x.toml:25:9: unknown signal 'cab1.airr'; did you mean 'cab1.air'?",
                  "x.toml:28:8: 'when' is a condition without any signal",
                  HasSubstr("x.toml:29:8: 'ramp': 0.001 s found; allowed: whole hundredths"),
                  "x.toml:30:1: [[fault]] needs 'fault'"));
}

TEST(ScenarioFaults, TwoThatHoldTheSameNumberAtTheSameTimeContradictEachOther) {
  const std::string belt = "[[fault]]\nfault = \"compressor1.belt_gone\"\n";
  EXPECT_THAT(faultsIn(belt + "until = 100\n" + belt + "at = 50\n"),
              ElementsAre("x.toml:9:1: 'compressor1.belt_gone' holds compressor1.belt, which "
                          "'compressor1.belt_gone' of line 6 holds at the same time"));
  EXPECT_THAT(faultsIn(belt + "until = 100\n" + belt + "at = 100\n"), IsEmpty());
  EXPECT_THAT(faultsIn(belt + "[[hidden]]\nitem = \"engine1.belts\"\n"
                              "condition = \"compressor_gone\"\n"),
              ElementsAre("x.toml:6:1: 'compressor1.belt_gone' holds compressor1.belt, which "
                          "'engine1.belts compressor_gone' of line 8 holds at the same time"));
  const std::string stuck = "[[fault]]\nfault = \"final_drive1.mesh_switch_";
  EXPECT_THAT(faultsIn(stuck + "made\"\n" + stuck + "open\"\n"),
              ElementsAre(HasSubstr("x.toml:8:1: 'final_drive1.mesh_switch_open' holds "
                                    "mesh_switch1.stuck")));
  // Leaks add up; they do not contradict each other, but twice the same is a slip of the pen.
  const std::string leak = "[[fault]]\nfault = \"vacuum.train_pipe_leak\"\n";
  EXPECT_THAT(faultsIn(leak + "[[fault]]\nfault = \"vacuum.hose_chafed\"\n"), IsEmpty());
  EXPECT_THAT(faultsIn(leak + leak),
              ElementsAre("x.toml:8:1: 'vacuum.train_pipe_leak' is there by line 6 already at the "
                          "same time"));
}

TEST(ScenarioFaults, OtherThingsThatContradictEachOther) {
  EXPECT_THAT(faultsIn("[[hidden]]\nitem = \"end1.hoses\"\ncondition = \"split\"\n"
                       "[[hidden]]\nitem = \"end1.hoses\"\ncondition = \"hanging\"\n"),
              ElementsAre("x.toml:9:1: 'end1.hoses' is given a condition by line 6 already"));
  EXPECT_THAT(faultsIn("[start]\nberth = \"bay\"\nposition_m = 3\n"),
              ElementsAre("x.toml:7:9: both 'berth' and 'position_m'; allowed: one of them"));
  EXPECT_THAT(faultsIn("[start]\nteeth = \"random\"\nline1.tooth_phase_deg = 3\n"),
              ElementsAre(HasSubstr("x.toml:6:1: both random 'teeth' and 'tooth_phase_deg'")));
  EXPECT_THAT(faultsIn("[conditions]\nrail = \"wet\"\n[start.parameters]\n"
                       "train.adhesion_factor = 0.5\n"),
              ElementsAre(HasSubstr("x.toml:9:25: both 'rail' of [conditions] and")));
  EXPECT_THAT(faultsIn("time_allowed = 60\n[[event]]\nwho = \"guard\"\nat = \"2 min\"\n"
                       "do = \"ring bell 2\"\n"),
              ElementsAre("x.toml:7:1: this is to come at 120 s, but 'time_allowed' is 60 s"));
  EXPECT_THAT(faultsIn("[[fault]]\nid = \"a\"\nfault = \"starter1.dead\"\n"
                       "[[fault]]\nid = \"a\"\nfault = \"starter2.dead\"\n"),
              ElementsAre("x.toml:9:1: the id 'a' is taken by another fault"));
}

std::string ruleNamed(const std::string& id) {
  return "[[rule]]\nid = \"" + id + "\"\ntitle = \"t\"\nreason = \"w\"\nkind = \"existence\"\n";
}

TEST(ScenarioFaults, EventsAreThingsThatPeopleCanDo) {
  EXPECT_THAT(
      faultsIn("[[event]]\nwho = \"gaurd\"\nat = 1\ndo = \"ring bell 2\"\n"
               "[[event]]\nwho = \"guard\"\ndo = \"ring bell 2\"\n"
               "[[event]]\nwho = \"signaller\"\nat = 1\n"
               "do = [\"set signal.S1 clear\", \"set signal.S2 clear\", \"set signal.S1 up\"]\n"
               "[[event]]\nwho = \"guard\"\nat = 1\ndo = \"guard: ring bell 2\"\n"
               "[[event]]\nwho = \"guard\"\nat = 1\ndo = \"\"\n"
               "[[event]]\nwho = \"scenario\"\nat = 1\ndo = \"condition end1.hoses \\\"x\"\n"),
      ElementsAre(HasSubstr("x.toml:7:7: unknown who 'gaurd'; did you mean 'guard'?"),
                  "x.toml:10:1: [[event]] needs 'at' or 'when'",
                  HasSubstr("x.toml:16:42: unknown signal 'S2'; did you mean 'S1'?"),
                  HasSubstr("x.toml:16:68: unknown aspect 'up'"),
                  HasSubstr("x.toml:20:6: 'who' says who does it"), HasSubstr("x.toml:24:6: "),
                  HasSubstr("x.toml:28:28: end1.hoses: unknown condition")));
}

TEST(ScenarioFaults, EventsAreLookedAtWhateverElseIsWrong) {
  const std::string event =
      "[[event]]\nwho = \"signaller\"\nat = 1\n"
      "do = [\"set signal.S2 clear\", \"sett signal.S1 clear\"]\n";
  const auto wrong_words = [](std::size_t line) {
    return std::pair(HasSubstr("x.toml:" + std::to_string(line) + ":19: unknown signal 'S2'"),
                     HasSubstr("x.toml:" + std::to_string(line) + ":31: unknown verb 'sett'"));
  };
  // Other faults in the file; numbers that do not fit together; a vehicle that is not there.
  EXPECT_THAT(
      faultsIn("mode = 1\n" + event),
      ElementsAre(HasSubstr("x.toml:6:8: 'mode'"), wrong_words(10).first, wrong_words(10).second));
  EXPECT_THAT(faultsIn("[start.parameters]\nair.cut_in_psi = 99\n" + event),
              ElementsAre(HasSubstr("x.toml:7:18: air.cut_out_psi"), wrong_words(11).first,
                          wrong_words(11).second));
  EXPECT_THAT(faultsOf(parseScenarioText("title = \"T\"\npurpose = \"P\"\nsummary = \"S\"\n"
                                         "vehicle = \"x\"\nroute = \"line\"\n" +
                                         event)),
              ElementsAre(HasSubstr("x.toml:4:11: unknown vehicle"), wrong_words(9).first,
                          wrong_words(9).second));
  // Without its route nobody knows what signals there are.
  EXPECT_THAT(faultsOf(parseScenarioText("title = \"T\"\npurpose = \"P\"\nsummary = \"S\"\n"
                                         "vehicle = \"plain\"\nroute = \"x\"\n" +
                                         event +
                                         "[[event]]\nwho = \"guard\"\nat = 1\n"
                                         "do = \"rang bell 2\"\n")),
              ElementsAre(HasSubstr("x.toml:5:9: unknown route"),
                          HasSubstr("x.toml:13:7: unknown verb 'rang'")));
  EXPECT_THAT(faultsIn("[[event]]\nwho = \"gaurd\"\nat = 1\ndo = \"rang bell 2\"\n"),
              ElementsAre(HasSubstr("x.toml:7:7: unknown who"),
                          HasSubstr("x.toml:9:7: unknown verb 'rang'")));
}

TEST(ScenarioFaults, AnEventDoesSomething) {
  EXPECT_THAT(faultsIn("[[event]]\nwho = \"guard\"\nat = 1\ndo = []\n"),
              ElementsAre("x.toml:9:6: 'do' is an empty list"));
}

TEST(ScenarioFaults, FaultsOfTheStartAreToldWithThoseOfOtherParts) {
  EXPECT_THAT(faultsIn("[start.objects]\ncontrol_key = \"cab1\"\nspare_key = \"cab1\"\n"
                       "[people]\nguard = 3\n"),
              ElementsAre(HasSubstr("x.toml:6:1: control_key and spare_key are both in cab1"),
                          HasSubstr("x.toml:10:9: 'guard' is a number")));
}

TEST(ScenarioFaults, ASecondTableOfAKindIsOneFault) {
  EXPECT_THAT(faultsIn("[marking]\npass_mark = 50\n[people]\nguard = true\n"
                       "[marking]\nphases = [\"a\"]\npass_mark = 80\n[conditions]\nrail = 3\n"),
              ElementsAre(HasSubstr("x.toml:10:1: "), HasSubstr("x.toml:14:8: 'rail'")));
}

TEST(ScenarioFaults, ListsOfWhatIsAllowedNameEachOnce) {
  const std::vector<std::string> faults =
      faultsIn(ruleNamed("a") + ruleNamed("a") + "follows = [\"quite_another\"]\n");
  ASSERT_THAT(faults, ElementsAre(HasSubstr("the id 'a' is taken"),
                                  HasSubstr("unknown rule 'quite_another'; allowed: a")));
  EXPECT_THAT(faults[1], ::testing::EndsWith("allowed: a"));
}

// What the check of the rules' meaning says comes with the rest, and only for what could be read.
TEST(ScenarioFaults, WhatIsFoundInTheRulesComesWithTheRest) {
  std::vector<bool> whole;
  const RuleCheck check = [&](const std::vector<RuleText>& rules) {
    FileFaults found;
    for (const RuleText& rule : rules) {
      whole.push_back(rule.is_whole);
      found.push_back({rule.at, "of rule " + rule.id});
    }
    return found;
  };
  EXPECT_THAT(
      faultsOf(parseScenario({"x.toml", kHead + "mode = 1\n" + ruleNamed("a") + ruleNamed("b") +
                                            "weight = -1\n[[marking.use]]\nfile = \"common\"\n"
                                            "rules = [\"hb-off\"]\n"},
                             cabwright::testing::testLibrary(), check)),
      ElementsAre("x.toml:6:8: 'mode' is a number; allowed: text", "x.toml:8:6: of rule a",
                  "x.toml:13:6: of rule b", HasSubstr("x.toml:17:10: 'weight' is -1"),
                  "rules/common.toml:2:6: of rule hb-off"));
  EXPECT_THAT(whole, ElementsAre(true, false, true));
}

TEST(ScenarioFaults, RulesOfAFileWithFaultsAreLookedAtToo) {
  TextLibrary library = cabwright::testing::testLibrary();
  library.add(Shelf::kRules, "other", ruleNamed("a") + "weight = -1\n" + ruleNamed("b"));
  const RuleCheck check = [](const std::vector<RuleText>& rules) {
    FileFaults found;
    for (const RuleText& rule : rules) found.push_back({rule.at, "of rule " + rule.id});
    return found;
  };
  EXPECT_THAT(
      faultsOf(parseScenario({"x.toml", kHead + "[[marking.use]]\nfile = \"other\"\n"
                                                "rules = [\"b\", \"c\"]\n"},
                             library, check)),
      ElementsAre(HasSubstr("rules/other.toml:6:10: 'weight'"), "rules/other.toml:8:6: of rule b"));
}

const std::string kRule =
    "[[rule]]\nid = \"r\"\ntitle = \"t\"\nreason = \"w\"\nkind = \"existence\"\n";

TEST(ScenarioFaults, RulesAreWhole) {
  EXPECT_THAT(
      faultsIn("[[rule]]\nid = \"a b\"\ntitle = \"\"\nresaon = \"x\"\n"
               "class = \"X\"\nreads = \"both\"\nweight = -2\nwithin = [5, 2]\nfor = \"2 km\"\n"
               "times = 1.5\nsteps = [\"a\", 3]\nmust_occur = 1\nrepeated = 1\n"),
      ElementsAre("x.toml:6:1: [[rule]] needs 'reason'", "x.toml:6:1: [[rule]] needs 'kind'",
                  HasSubstr("x.toml:7:6: 'a b' found; allowed in an id: letters"),
                  "x.toml:8:9: 'title' is empty",
                  "x.toml:9:1: unknown key 'resaon'; did you mean 'reason'? in [[rule]]",
                  HasSubstr("x.toml:10:9: unknown class 'X'"),
                  HasSubstr("x.toml:11:9: unknown reads 'both'"),
                  "x.toml:12:10: 'weight' is -2; allowed: 0 to 1e+06",
                  HasSubstr("x.toml:13:10: 'within' is [lo, hi]"),
                  "x.toml:14:7: 'for': unit 'km' found; allowed: a number of s",
                  "x.toml:15:9: 'times' is a number; allowed: a whole number",
                  "x.toml:16:15: 'steps' is a number; allowed: text in this list",
                  "x.toml:17:14: 'must_occur' is a number; allowed: true or false",
                  "x.toml:18:12: 'repeated' is 1; allowed: 2 to 1000000"));
}

TEST(ScenarioFaults, RuleIdsAreUniqueAndFollowKnownOnes) {
  EXPECT_THAT(faultsIn(kRule + "follows = [\"r2\", \"r\"]\n" + kRule),
              ElementsAre("x.toml:11:12: unknown rule 'r2'; did you mean 'r'?",
                          "x.toml:11:18: the rule 'r' cannot follow from itself",
                          "x.toml:13:6: the id 'r' is taken by the rule of line 7"));
}

TEST(ScenarioFaults, SharedRulesAreChosenOnceAndByName) {
  EXPECT_THAT(
      faultsIn("[[marking.use]]\nfile = \"comon\"\n"
               "[[marking.use]]\nfile = \"common\"\nrules = [\"hb-off\", \"hb-on\"]\n"
               "[[marking.use]]\nfile = \"common\"\nexcept = [\"brake-tset\"]\n"
               "[[marking.use]]\nrules = [\"x\"]\nexcept = [\"y\"]\n"
               "[[marking.change]]\nrule = \"hb-of\"\nweight = 2\n"),
      ElementsAre("x.toml:7:8: unknown file of rules 'comon'; did you mean 'common'?",
                  HasSubstr("x.toml:10:20: unknown rule 'hb-on'; did you mean 'hb-off'? in "
                            "'common'"),
                  "x.toml:12:8: the rule 'hb-off' is there already; choose it once",
                  HasSubstr("x.toml:13:11: unknown rule 'brake-tset'; did you mean 'brake-test'?"),
                  "x.toml:14:1: [[marking.use]] needs 'file'",
                  HasSubstr("x.toml:16:1: both 'rules' and 'except'"),
                  "x.toml:18:8: unknown rule 'hb-of'; did you mean 'hb-off'?"));
}

TEST(ScenarioFaults, ThePassMarkCanBeReached) {
  EXPECT_THAT(faultsIn("[marking]\npass_mark = 101\n"),
              ElementsAre("x.toml:7:13: 'pass_mark' is 101; allowed: 0 to 100 %"));
  EXPECT_THAT(faultsIn(kRule + "weight = 7\n[marking]\npass_mark = \"8 points\"\n"),
              ElementsAre("x.toml:13:13: 'pass_mark' is 8 points; all rules together give 7"));
  EXPECT_THAT(faultsIn(kRule + "weight = 7\n[marking]\npass_mark = \"7 points\"\n"), IsEmpty());
  EXPECT_THAT(faultsIn("[marking]\npass_mark = \"eight points\"\n"),
              ElementsAre(HasSubstr("x.toml:7:13: 'pass_mark': 'eight points' found")));
}

TEST(ScenarioFaults, AnAimIsOfWhatIsShownAndDone) {
  EXPECT_THAT(faultsIn("[marking]\ncomplete = \"cab1.air > 5 psi and true.standing\"\n"),
              ElementsAre("x.toml:7:12: 'complete' reads what is shown and done, but true.standing "
                          "is the truth"));
  EXPECT_THAT(faultsIn("[marking]\ncomplete = \"cab1.airr > 5 psi\"\ncomplete_says = \" \"\n"),
              ElementsAre("x.toml:7:13: unknown signal 'cab1.airr'; did you mean 'cab1.air'?",
                          "x.toml:8:17: 'complete_says' is empty"));
  EXPECT_THAT(faultsIn("[marking]\ncomplete = \"1 > 0\"\n"),
              ElementsAre("x.toml:7:12: 'complete' is a condition without any signal"));
  EXPECT_THAT(faultsIn("[marking]\ncomplete_says = \"done\"\n"),
              ElementsAre(HasSubstr("x.toml:7:1: 'complete_says' without 'complete'")));
  EXPECT_THAT(faultsIn("[marking]\ncomplete = \"cab1.air > 5 psi\"\n"), IsEmpty());
}

TEST(ScenarioFaults, AnAssessmentHasRulesAnAimAndAPassMark) {
  const std::string mode = "mode = \"assessment\"\n";
  const std::string aim = "complete = \"cab1.air > 5 psi\"\n";
  EXPECT_THAT(faultsIn(mode),
              ElementsAre("x.toml:6:8: an assessment without any rule",
                          "x.toml:6:8: an assessment without an aim; wanted: complete = "
                          "\"CONDITION\" in [marking]"));
  EXPECT_THAT(faultsIn(mode + kRule + "[marking]\npass_mark = 0\n" + aim),
              ElementsAre("x.toml:13:13: an assessment with a pass mark of 0"));
  EXPECT_THAT(faultsIn(mode + kRule + "[marking]\npass_mark = \"0 points\"\n" + aim),
              ElementsAre("x.toml:13:13: an assessment with a pass mark of 0"));
  EXPECT_THAT(
      faultsIn(mode + "[marking]\n" + aim + "[[marking.use]]\nfile = \"common\"\nrules = []\n"),
      ElementsAre("x.toml:6:8: an assessment without any rule"));
  // Rules that are meant but could not be found are said once.
  EXPECT_THAT(faultsIn(mode + "[marking]\n" + aim + "[[marking.use]]\nfile = \"comon\"\n"),
              ElementsAre(HasSubstr("x.toml:10:8: unknown file of rules 'comon'")));
  EXPECT_THAT(faultsIn(mode + kRule + "[marking]\n" + aim), IsEmpty());
  EXPECT_THAT(faultsIn("mode = \"practice\"\n[marking]\npass_mark = 0\n"), IsEmpty());
}

TEST(ScenarioFaults, PhasesOfRulesAreThoseOfTheList) {
  EXPECT_THAT(faultsIn(kRule + "phase = \"brakes\"\n[marking]\n"
                               "phases = [\"brake\", \"\", \"brake\"]\n"),
              ElementsAre("x.toml:11:10: unknown phase 'brakes'; did you mean 'brake'?",
                          "x.toml:13:20: a phase without a name",
                          "x.toml:13:24: the phase 'brake' is there already"));
  EXPECT_THAT(faultsIn(kRule + "phase = \"brakes\"\n"), IsEmpty());
  TextLibrary library = cabwright::testing::testLibrary();
  library.add(Shelf::kRules, "other", kRule + "phase = \"brakes\"\n");
  EXPECT_THAT(faultsOf(parseScenario({"x.toml", kHead + "[marking]\nphases = [\"brake\"]\n"
                                                        "[[marking.use]]\nfile = \"other\"\n"},
                                     library)),
              ElementsAre("rules/other.toml:6:10: unknown phase 'brakes'; did you mean 'brake'? "
                          "(the 'phases' of x.toml)"));
}

TEST(ScenarioFaults, AFileOfRulesIsReadAsStrictly) {
  EXPECT_THAT(faultsOf(parseRules({"r.toml", "title = \"x\"\n[[rule]]\nid = \"a\"\n[[rules]]\n"})),
              ElementsAre("r.toml:2:1: [[rule]] needs 'title'",
                          "r.toml:2:1: [[rule]] needs "
                          "'reason'",
                          "r.toml:2:1: [[rule]] needs 'kind'",
                          HasSubstr("r.toml:4:3: unknown key 'rules'; did you mean 'rule'?")));
  EXPECT_THAT(faultsOf(parseRules({"r.toml", ""})),
              ElementsAre("r.toml:1:1: a file of rules needs one [[rule]] at least"));
}

}  // namespace
}  // namespace cabwright::scenario
