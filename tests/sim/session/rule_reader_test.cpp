// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/rule_reader.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cabwright::session {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

std::vector<scenario::RuleText> parse(const std::string& text) {
  auto parsed = scenario::parseRules({"r.toml", text});
  if (const auto* faults = std::get_if<scenario::FileFaults>(&parsed))
    for (const auto& fault : *faults) ADD_FAILURE() << scenario::toText(fault);
  return std::get<std::vector<scenario::RuleText>>(parsed);
}

std::vector<std::string> faultsIn(const std::string& text) {
  auto rules = readRules(parse(text));
  std::vector<std::string> lines;
  if (const auto* faults = std::get_if<scenario::FileFaults>(&rules))
    for (const auto& fault : *faults) lines.push_back(scenario::toText(fault));
  return lines;
}

// Lines 1 to 4 of a rule; the test's own come from line 5 on.
const std::string kHead = "[[rule]]\nid = \"x\"\ntitle = \"t\"\nreason = \"r\"\n";

TEST(RuleReader, ReadsEveryKeyOfARule) {
  auto rules = readRules(
      parse("[[rule]]\nid = \"first\"\ntitle = \"t\"\nreason = \"r\"\nkind = \"absence\"\n"
            "a = \"did set cab1.gear *\"\n" +
            kHead + R"(phase = "engines"
advice = "do it"
kind = "response"
class = "S"
weight = 2.5
reads = "true"
a = "did press cab1.start1"
a_name = "the start"
b = "when true.engine1.running"
b_name = "it runs"
within = [0.5, 10]
tolerance = "one second is forgiven"
slack = 1
falls_to = "T"
follows = ["first"]
repeated = 3
repeated_class = "C"
must_occur = true
)"));
  ASSERT_TRUE(std::holds_alternative<std::shared_ptr<const marking::RuleSet>>(rules))
      << scenario::toText(std::get<scenario::FileFaults>(rules)[0]);
  const auto& set = *std::get<std::shared_ptr<const marking::RuleSet>>(rules);
  ASSERT_EQ(set.rules().size(), 2U);
  const marking::RuleSpec& spec = set.rules()[1].spec;
  EXPECT_EQ(spec.id, "x");
  EXPECT_EQ(spec.phase, "engines");
  EXPECT_EQ(spec.advice, "do it");
  EXPECT_EQ(spec.kind, marking::RuleKind::kResponse);
  EXPECT_EQ(spec.rule_class, marking::RuleClass::kSerious);
  EXPECT_EQ(spec.weight, 2.5);
  EXPECT_EQ(spec.reads, marking::Reads::kTrue);
  EXPECT_EQ(spec.a.name, "the start");
  EXPECT_EQ(spec.b.text, "when true.engine1.running");
  EXPECT_EQ(spec.from_s, 0.5);
  EXPECT_EQ(spec.to_s, 10.0);
  EXPECT_EQ(spec.tolerance.slack_s, 1.0);
  EXPECT_EQ(spec.tolerance.falls_to, marking::RuleClass::kTechnique);
  EXPECT_THAT(spec.follows, ElementsAre("first"));
  ASSERT_TRUE(spec.repeated);
  EXPECT_EQ(spec.repeated->times, 3);
  EXPECT_EQ(spec.repeated->counts_as, marking::RuleClass::kCritical);
  EXPECT_TRUE(spec.must_occur);
}

TEST(RuleReader, ReadsWhatIsMeasuredAndHowFarOffItMayBeTold) {
  auto rules = readRules(parse(kHead + R"(kind = "fall_told"
b = "did note leak *"
condition = "cab1.brake == lap"
measure = "cab1.train_pipe"
by = 0.5
)"));
  ASSERT_TRUE(std::holds_alternative<std::shared_ptr<const marking::RuleSet>>(rules))
      << scenario::toText(std::get<scenario::FileFaults>(rules)[0]);
  const auto& set = *std::get<std::shared_ptr<const marking::RuleSet>>(rules);
  EXPECT_EQ(set.rules().at(0).spec.measure, "cab1.train_pipe");
  EXPECT_EQ(set.rules().at(0).spec.by, 0.5);
  EXPECT_THAT(
      faultsIn(kHead + "kind = \"fall_told\"\nb = \"did note leak *\"\n"
                       "condition = \"cab1.brake == lap\"\nmeasure = \"cab1.pipe\"\nby = 1\n"),
      ElementsAre(HasSubstr("r.toml:8:12: unknown signal 'cab1.pipe'")));
}

TEST(RuleReader, PointsAtAWordThatIsNoKind) {
  const auto faults = faultsIn(kHead + "kind = \"abscence\"\na = \"did set cab1.gear *\"\n");
  EXPECT_THAT(faults, ElementsAre(testing::AllOf(HasSubstr("r.toml:5:9: "),
                                                 HasSubstr("did you mean 'absence'"))));
}

TEST(RuleReader, OfAnUnknownKindOnlyTheWordsAreLookedAt) {
  EXPECT_THAT(faultsIn(kHead + "kind = \"odrer\"\nsteps = [\"did set cab1.gear 1\", \"did x y\"]\n"
                               "condition = \"cab1.airr > 5 psi\"\nfor = 5\n"),
              ElementsAre(HasSubstr("r.toml:5:9: unknown kind 'odrer'; did you mean 'order'?"),
                          HasSubstr("r.toml:6:38: unknown verb 'x'"),
                          HasSubstr("r.toml:7:14: unknown signal 'cab1.airr'")));
}

TEST(RuleReader, AFileOfRulesTellsItsFaultsOfFormAndOfMeaningTogether) {
  std::string second = kHead, third = kHead;
  second.replace(second.find("\"x\""), 3, "\"y\"");
  third.replace(third.find("\"x\""), 3, "\"z\"");
  const auto parsed = scenario::parseRules(
      {"r.toml", kHead + "kind = \"absence\"\na = \"did set cab1.gaer *\"\n" + second +
                     "kind = \"response\"\na = \"did st cab1.gear 1\"\nweight = -1\n" + third +
                     "kind = \"response\"\na = \"did set cab1.gear 1\"\n"},
      findRuleFaults);
  std::vector<std::string> lines;
  for (const auto& fault : std::get<scenario::FileFaults>(parsed))
    lines.push_back(scenario::toText(fault));
  EXPECT_THAT(lines, ElementsAre(HasSubstr("r.toml:6:10: unknown control 'cab1.gaer'"),
                                 HasSubstr("r.toml:12:10: unknown verb 'st'"),
                                 HasSubstr("r.toml:13:10: 'weight' is -1"),
                                 // not of the second, which may have lost its 'b' with the weight
                                 HasSubstr("response needs 'b'")));
}

TEST(RuleReader, PointsIntoTheMiddleOfAnEvent) {
  const auto faults =
      faultsIn(kHead + "kind = \"absence\"\na = \"when cab1.air >= 75 psi and cab1.aira < 3\"\n");
  ASSERT_EQ(faults.size(), 1U);
  // a = "when cab1.air >= 75 psi and cab1.aira": the quote is column 5, the word 28 further on.
  EXPECT_THAT(faults[0], HasSubstr("r.toml:6:34:"));
}

TEST(RuleReader, PointsAtTheStepThatIsWrong) {
  const auto faults = faultsIn(kHead +
                               "kind = \"order\"\nsteps = [\n  \"did take brake_handle\",\n"
                               "  \"did take brake_hanlde\",\n]\n");
  ASSERT_EQ(faults.size(), 1U);
  EXPECT_THAT(faults[0], HasSubstr("r.toml:8:"));
}

TEST(RuleReader, TellsAllFaultsOfAllRulesAtOnceInTheirOrder) {
  std::string second = kHead;
  second.replace(second.find("\"x\""), 3, "\"y\"");
  const auto faults = faultsIn(kHead + "kind = \"nonsense\"\na = \"did x y\"\n" + second +
                               "kind = \"absence\"\na = \"did set cab1.gaer 1\"\n");
  ASSERT_GE(faults.size(), 2U);
  EXPECT_THAT(faults.front(), HasSubstr("r.toml:5:"));
  EXPECT_THAT(faults.back(), HasSubstr("r.toml:12:"));
}

}  // namespace
}  // namespace cabwright::session
