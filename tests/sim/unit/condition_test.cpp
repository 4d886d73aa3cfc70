// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/condition.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>

#include "unit/objects.h"

namespace cabwright::unit {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

Condition parsed(const std::string& text) {
  auto result = Condition::parse(text);
  if (const auto* fault = std::get_if<ConditionFault>(&result)) {
    ADD_FAILURE() << text << ": at " << fault->at << ": " << fault->what;
    return {};
  }
  return std::get<Condition>(result);
}

ConditionFault faultOf(const std::string& text) {
  const auto result = Condition::parse(text);
  if (const auto* fault = std::get_if<ConditionFault>(&result)) return *fault;
  ADD_FAILURE() << text << " is taken";
  return {};
}

Frame frameWith(std::initializer_list<std::pair<Signal, double>> values) {
  Frame frame;
  for (const auto& [signal, value] : values) frame[signal] = static_cast<float>(value);
  return frame;
}

bool holds(const std::string& text, const Frame& frame = {}) { return parsed(text).holds(frame); }

TEST(Condition, TermsAreWhatIsAskedForAllAtOnce) {
  const auto read = [](const std::string& text) {
    std::vector<std::vector<Signal>> signals;
    for (const Condition& term : parsed(text).terms()) signals.push_back(term.signals());
    return signals;
  };
  const Signal key = *findSignal("cab1.key"), wiper = *findSignal("cab1.wiper"),
               air = *findSignal("cab1.air"), other = *findSignal("cab2.key");
  using Row = std::vector<Signal>;
  EXPECT_THAT(read("cab1.key and  (cab1.wiper or cab1.air >= 5 psi)\n and not cab2.key"),
              ElementsAre(Row{key}, Row{wiper, air}, Row{other}));
  EXPECT_THAT(read("cab1.key and cab1.wiper or cab2.key"), ElementsAre(Row{key, wiper, other}));
  EXPECT_THAT(read("(cab1.key and abs(cab1.air - 2 * cab2.air) <= 5 psi) and cab1.wiper"),
              ElementsAre(Row{key}, Row{air, *findSignal("cab2.air")}, Row{wiper}));
  EXPECT_EQ(Condition().terms().size(), 1U);
  std::string row = "cab1.key";
  for (int k = 0; k < 700; ++k) row += " and cab1.key";
  EXPECT_EQ(parsed(row).terms().size(), 701U);
}

// Together they say what the whole says.
TEST(Condition, HoldsWhenAllItsTermsHold) {
  const Condition whole = parsed("cab1.key and (cab1.wiper or cab2.key) and not cab2.wiper");
  const Signal all[] = {*findSignal("cab1.key"), *findSignal("cab1.wiper"), *findSignal("cab2.key"),
                        *findSignal("cab2.wiper")};
  for (unsigned bits = 0; bits < 16; ++bits) {
    Frame frame;
    for (unsigned k = 0; k < 4; ++k) frame[all[k]] = (bits >> k & 1U) != 0 ? 1.0F : 0.0F;
    const auto terms = whole.terms();
    ASSERT_EQ(terms.size(), 3U);
    EXPECT_EQ(whole.holds(frame),
              std::ranges::all_of(terms, [&](const Condition& t) { return t.holds(frame); }))
        << bits;
  }
}

TEST(Condition, IsAlwaysTrueWhenThereIsNone) {
  EXPECT_TRUE(Condition().holds({}));
  EXPECT_EQ(Condition().margin({}), std::numeric_limits<double>::infinity());
}

TEST(Condition, ComparesASignalWithANumberInItsUnit) {
  const Frame frame = frameWith({{Signal::kCab1Air, 75}});
  EXPECT_TRUE(holds("cab1.air >= 75 psi", frame));
  EXPECT_TRUE(holds("cab1.air >= 75", frame));
  EXPECT_FALSE(holds("cab1.air > 75 psi", frame));
  EXPECT_TRUE(holds("cab1.air <= 75psi", frame));
  EXPECT_FALSE(holds("cab1.air < 75 psi", frame));
  EXPECT_TRUE(holds("75 psi == cab1.air", frame));
  EXPECT_FALSE(holds("cab1.air != 75 psi", frame));
}

TEST(Condition, KeepsTheTruthApartFromTheMargin) {
  const Frame frame = frameWith({{Signal::kCab1Air, 75}});
  EXPECT_EQ(parsed("cab1.air > 75 psi").margin(frame), 0);
  EXPECT_EQ(parsed("cab1.air >= 75 psi").margin(frame), 0);
  EXPECT_TRUE(holds("not cab1.air > 75 psi", frame));
  EXPECT_FALSE(holds("cab1.air >= 75 psi and cab1.air > 75 psi", frame));
  EXPECT_TRUE(holds("cab1.air > 75 psi or cab1.air >= 75 psi", frame));
}

TEST(Condition, TakesTheLeastMarginOverAndTheMostOverOr) {
  const Frame frame = frameWith({{Signal::kCab1Air, 80}, {Signal::kCab1Speed, 2}});
  const Condition both = parsed("cab1.air >= 75 psi and cab1.speed < 5 mph");
  EXPECT_EQ(both.margin(frame), 3);
  EXPECT_EQ(both.marginUnit(frame), "mph");
  const Condition either = parsed("cab1.air >= 75 psi or cab1.speed < 5 mph");
  EXPECT_EQ(either.margin(frame), 5);
  EXPECT_EQ(either.marginUnit(frame), "psi");
  EXPECT_EQ(parsed("not (cab1.air >= 75 psi or cab1.speed < 5 mph)").margin(frame), -5);
}

TEST(Condition, TakesABareSignalAsASwitch) {
  EXPECT_TRUE(holds("cab1.lamp_air", frameWith({{Signal::kCab1LampAir, 0.5}})));
  EXPECT_FALSE(holds("cab1.lamp_air", frameWith({{Signal::kCab1LampAir, 0.49}})));
  EXPECT_EQ(parsed("cab1.lamp_air").margin(frameWith({{Signal::kCab1LampAir, 1}})), 1);
  EXPECT_EQ(parsed("not cab1.lamp_air").margin(frameWith({{Signal::kCab1LampAir, 1}})), -1);
}

TEST(Condition, BindsNotTighterThanAndTighterThanOr) {
  const Frame air = frameWith({{Signal::kCab1LampAir, 1}});
  EXPECT_TRUE(holds("cab1.lamp_air or cab2.lamp_air and cab2.lamp_device", air));
  EXPECT_FALSE(holds("(cab1.lamp_air or cab2.lamp_air) and cab2.lamp_device", air));
  EXPECT_TRUE(holds("not cab2.lamp_air and cab1.lamp_air", air));
  EXPECT_FALSE(holds("not (cab2.lamp_air or cab1.lamp_air)", air));
  EXPECT_TRUE(holds("not not cab1.lamp_air", air));
}

TEST(Condition, ReckonsWithTheUsualPrecedence) {
  EXPECT_TRUE(holds("1 + 2 * 3 == 7"));
  EXPECT_TRUE(holds("(1 + 2) * 3 == 9"));
  EXPECT_TRUE(holds("8 / 4 / 2 == 1"));
  EXPECT_TRUE(holds("5 - 3 - 1 == 1"));
  EXPECT_TRUE(holds("-2 * -3 == 6"));
  EXPECT_TRUE(holds("--2 == 2"));
  EXPECT_TRUE(holds("abs(2 - 5) == 3"));
  EXPECT_TRUE(holds("1.5e1 == 15"));
  EXPECT_TRUE(holds(".5 == 0.5"));
}

TEST(Condition, HasTheSameUnitOnBothSides) {
  const Frame frame = frameWith({{Signal::kCab1Air, 80}, {Signal::kTrueAir, 75}});
  EXPECT_TRUE(holds("cab1.air - true.air == 5 psi", frame));
  EXPECT_TRUE(holds("cab1.air / true.air > 1", frame));
  EXPECT_TRUE(holds("2 * true.air == 150 psi", frame));
  EXPECT_EQ(faultOf("cab1.air >= 75 inHg").at, 12U);
  EXPECT_THAT(faultOf("cab1.air >= 75 inHg").what, HasSubstr("'inHg'"));
  EXPECT_THAT(faultOf("cab1.gear == 2 psi").what, HasSubstr("without unit"));
  EXPECT_THAT(faultOf("cab1.air + cab1.speed > 3").what, HasSubstr("added"));
  EXPECT_THAT(faultOf("cab1.air * cab1.air > 3").what, HasSubstr("product"));
  EXPECT_THAT(faultOf("cab1.air / cab1.speed > 3").what, HasSubstr("divided"));
  EXPECT_THAT(faultOf("cab1.air > 3 psj").what, HasSubstr("psi"));
}

TEST(Condition, ReadsUnitsWithSignsAndBlanks) {
  const Frame frame = frameWith({{Signal::kTrueAcceleration, 0.5}, {Signal::kTrueCoupling1, 10}});
  EXPECT_TRUE(holds("true.acceleration == 0.5 m/s2", frame));
  EXPECT_TRUE(holds("true.drive1.coupling_nm > 9 N m", frame));
  EXPECT_TRUE(holds("engine1.fuel_gauge < 3 %", frame));
}

TEST(Condition, NearHasAMarginOfWhatIsLeftOfItsReach) {
  const Frame frame = frameWith({{Signal::kCab1TrainPipe, 20.5}});
  const Condition near = parsed("cab1.train_pipe near 21 inHg by 0.75 inHg");
  EXPECT_TRUE(near.holds(frame));
  EXPECT_EQ(near.margin(frame), 0.25);
  EXPECT_EQ(near.marginUnit(frame), "inHg");
  EXPECT_TRUE(holds("cab1.train_pipe near 21 inHg by 0.5", frame));
  EXPECT_FALSE(holds("cab1.train_pipe near 21 inHg by 0.4", frame));
}

TEST(Condition, RoundsNumbersAsAFrameDoes) {
  const Frame frame = frameWith({{Signal::kEngine1HandThrottle, 0.7}});
  EXPECT_TRUE(holds("engine1.hand_throttle == 0.7", frame));
  EXPECT_TRUE(holds("engine1.hand_throttle >= 0.7", frame));
  EXPECT_TRUE(holds("engine1.hand_throttle <= 0.7", frame));
}

TEST(Condition, KnowsPositionsAndJudgementsByName) {
  EXPECT_TRUE(holds("cab1.reverser == forward", frameWith({{Signal::kCab1Reverser, 1}})));
  EXPECT_TRUE(holds("cab1.reverser != off", frameWith({{Signal::kCab1Reverser, -1}})));
  EXPECT_TRUE(holds("engine1.hand_throttle >= fast_idle",
                    frameWith({{Signal::kEngine1HandThrottle, 0.3}})));
  EXPECT_TRUE(holds("cab1.gear == N and not decision == go_on"));
  EXPECT_TRUE(holds("judged.end1.hoses == defect", frameWith({{Signal::kJudgedEnd1Hoses, 2}})));
  EXPECT_THAT(faultOf("cab1.reverser == forwards").what, HasSubstr("forward"));
  EXPECT_EQ(faultOf("cab1.reverser == forwards").at, 17U);
}

TEST(Condition, EqualityOfPlainNumbersIsASwitch) {
  const Condition equal = parsed("cab1.gear == 2");
  EXPECT_EQ(equal.margin(frameWith({{Signal::kCab1Gear, 2}})), 1);
  EXPECT_EQ(equal.margin(frameWith({{Signal::kCab1Gear, 4}})), -1);
  EXPECT_EQ(parsed("cab1.air == 2 psi").margin(frameWith({{Signal::kCab1Air, 5}})), -3);
}

TEST(Condition, HoldsInNoComparisonWithAQuotientByZero) {
  EXPECT_FALSE(holds("1 / 0 > 0"));
  EXPECT_FALSE(holds("1 / 0 < 0"));
  EXPECT_FALSE(holds("0 / 0 == 0"));
  EXPECT_FALSE(holds("0 / 0 != 0"));
  EXPECT_FALSE(std::isnan(parsed("0 / 0 != 0").margin({})));
}

TEST(Condition, NamesItsSignalsOnceInOrder) {
  EXPECT_THAT(parsed("cab1.speed < 5 and (cab1.air > 3 or cab1.speed > 1)").signals(),
              ElementsAre(Signal::kCab1Speed, Signal::kCab1Air));
  EXPECT_EQ(parsed("cab1.speed < 5").text(), "cab1.speed < 5");
}

TEST(ConditionFault, SaysWhereAndWhatIsAllowed) {
  EXPECT_EQ(faultOf("").at, 0U);
  EXPECT_EQ(faultOf("   ").at, 3U);
  EXPECT_EQ(faultOf("cab1.air >").at, 10U);
  EXPECT_EQ(faultOf("cab1.air > 3 psi psi").at, 17U);
  EXPECT_EQ(faultOf("(cab1.lamp_air").at, 14U);
  EXPECT_EQ(faultOf("cab1.lamp_air)").at, 13U);
  EXPECT_EQ(faultOf("cab1.lamp_air and").at, 17U);
  EXPECT_EQ(faultOf("cab1.lamp_air and and").at, 18U);
  EXPECT_THAT(faultOf("cab1.lamp_ayr").what, HasSubstr("cab1.lamp_air"));
  EXPECT_THAT(faultOf("cab1.air = 3").what, HasSubstr("=="));
  EXPECT_THAT(faultOf("cab1.air + 3").what, HasSubstr("compare"));
  EXPECT_THAT(faultOf("3").what, HasSubstr("compare"));
  EXPECT_THAT(faultOf("1 < 2 < 3").what, HasSubstr("second comparison"));
  EXPECT_THAT(faultOf("(1 < 2) > 3").what, HasSubstr("number is needed"));
  EXPECT_THAT(faultOf("cab1.air near 3").what, HasSubstr("'by'"));
  EXPECT_THAT(faultOf("cab1.air > 1.2.3").what, HasSubstr("two points"));
  EXPECT_THAT(faultOf("cab1.air > 1e999").what, HasSubstr("cannot be read"));
  EXPECT_THAT(faultOf("cab1.air & cab1.lamp_air").what, HasSubstr("'&'"));
  EXPECT_THAT(faultOf("abs 3 > 2").what, HasSubstr("'('"));
}

TEST(ConditionFault, StopsHostileText) {
  EXPECT_THAT(faultOf(std::string(100'000, '(')).what, HasSubstr("10000"));
  EXPECT_THAT(faultOf(std::string(5000, '(') + "1 > 0").what, HasSubstr("nested"));
  EXPECT_THAT(faultOf(std::string(5000, '-') + "1 > 0").what, HasSubstr("nested"));
  std::string many_nots;
  for (int k = 0; k < 1000; ++k) many_nots += "not ";
  EXPECT_THAT(faultOf(many_nots + "cab1.seen").what, HasSubstr("nested"));
  std::string wide = "cab1.air > 0";
  while (wide.size() < 9000) wide += " and cab1.air > 0";
  EXPECT_TRUE(holds(wide, frameWith({{Signal::kCab1Air, 1}})));
  faultOf(std::string("cab1.air > \0 3", 13));
  faultOf("\xff\xfe");
}

TEST(ConditionFault, ComesOfAnyTextWithoutACrash) {
  EXPECT_TRUE(rc::check([] {
    static const std::vector<std::string> kPieces{"cab1.air", "cab1.lamp_air",
                                                  "and",      "or",
                                                  "not",      "(",
                                                  ")",        "abs(",
                                                  "near",     "by",
                                                  "<",        ">=",
                                                  "==",       "+",
                                                  "-",        "*",
                                                  "/",        "3",
                                                  "0.5",      "psi",
                                                  "%",        " ",
                                                  "N m",      "forward",
                                                  "\n",       "\xc3"};
    const auto words = *rc::gen::container<std::vector<std::string>>(rc::gen::elementOf(kPieces));
    std::string text;
    for (const std::string& word : words) text += word + " ";
    const auto result = Condition::parse(text);
    if (const auto* fault = std::get_if<ConditionFault>(&result)) {
      RC_ASSERT(fault->at <= text.size());
      RC_ASSERT(!fault->what.empty());
    } else {
      const Condition condition = std::get<Condition>(result);
      RC_ASSERT(!std::isnan(condition.margin({})));
    }
  }));
}

TEST(Condition, AnswersHaveWords) {
  const auto answered = [](Reply reply) {
    return frameWith({{Signal::kAnsweredAskProtection, static_cast<float>(reply)}});
  };
  const std::pair<const char*, Reply> kWords[] = {
      {"none", Reply::kNone},
      {"granted", Reply::kGranted},
      {"nobody_works", Reply::kNobodyWorks},
      {"still_working", Reply::kStillWorking},
      {"nobody_knows", Reply::kNobodyKnows},
      {"fitter_has_it", Reply::kFitterHasIt},
      {"on_my_way", Reply::kOnMyWay},
      {"at_the_rear", Reply::kAtTheRear},
      {"nobody_there", Reply::kNobodyThere},
      {"rear_reading", Reply::kRearReading},
      {"valve_open", Reply::kValveOpen},
      {"valve_shut", Reply::kValveShut},
      {"blocks_on", Reply::kBlocksOn},
      {"blocks_off", Reply::kBlocksOff},
      {"blocks_differ", Reply::kBlocksDiffer},
      {"understood", Reply::kUnderstood},
      {"ready_for_bell", Reply::kReadyForBell},
      {"person_seen", Reply::kPersonSeen},
      {"nobody_seen", Reply::kNobodySeen},
  };
  for (const auto& [word, reply] : kWords) {
    const std::string text = std::string("answered.ask_protection == ") + word;
    EXPECT_TRUE(holds(text, answered(reply))) << text;
  }
}

TEST(SignalTable, FindsEverySignalByItsName) {
  EXPECT_EQ(signalTable().size(), kSignalCount);
  for (const SignalInfo& info : signalTable()) {
    EXPECT_EQ(findSignal(info.name), info.id) << info.name << ": is the name there twice?";
    EXPECT_EQ(signalInfo(info.id).name, info.name);
  }
  EXPECT_FALSE(findSignal("cab1.aer"));
  EXPECT_FALSE(findSignal(""));
}

}  // namespace
}  // namespace cabwright::unit
