// SPDX-License-Identifier: GPL-3.0-or-later
// Every template against its published formula in linear temporal logic on finite traces (De
// Giacomo and Vardi 2013; templates after Pesic 2008), evaluated by brute force on whole words with
// future operators, where the monitors look back and run along. All words over {a,b,c} of length 0
// to 7.
#include <gtest/gtest.h>

#include <functional>
#include <string>

#include "rig.h"

namespace cabwright::marking {
namespace {

// A formula at a place of a word.
using Formula = std::function<bool(const std::string&, std::size_t)>;

Formula is(char letter) {
  return [=](const std::string& w, std::size_t k) { return k < w.size() && w[k] == letter; };
}
Formula operator!(Formula f) {
  return [=](const std::string& w, std::size_t k) { return !f(w, k); };
}
Formula operator&(Formula f, Formula g) {
  return [=](const std::string& w, std::size_t k) { return f(w, k) && g(w, k); };
}
Formula operator|(Formula f, Formula g) {
  return [=](const std::string& w, std::size_t k) { return f(w, k) || g(w, k); };
}
Formula operator>>(Formula f, Formula g) { return (!f) | g; }
Formula next(Formula f) {  // strong
  return [=](const std::string& w, std::size_t k) { return k + 1 < w.size() && f(w, k + 1); };
}
Formula weakNext(Formula f) {
  return [=](const std::string& w, std::size_t k) { return k + 1 >= w.size() || f(w, k + 1); };
}
Formula finally(Formula f) {
  return [=](const std::string& w, std::size_t k) {
    for (; k < w.size(); ++k) {
      if (f(w, k)) return true;
    }
    return false;
  };
}
Formula globally(Formula f) { return !finally(!f); }
Formula until(Formula f, Formula g) {
  return [=](const std::string& w, std::size_t k) {
    for (; k < w.size(); ++k) {
      if (g(w, k)) return true;
      if (!f(w, k)) return false;
    }
    return false;
  };
}
Formula weakUntil(Formula f, Formula g) { return until(f, g) | globally(f); }
// The one past operator: the published form of the chain. False at the first place.
Formula yesterday(Formula f) {
  return [=](const std::string& w, std::size_t k) { return k > 0 && f(w, k - 1); };
}

const Formula a = is('a'), b = is('b'), c = is('c');

struct Case {
  std::string name;
  RuleSpec rule;
  Formula holds;
  Formula exercised;  ///< at the first place: whether the rule came to anything
};

RuleSpec makeCounted(RuleKind kind, std::optional<int> times = std::nullopt) {
  RuleSpec spec = makeRule(kind);
  spec.a = {kA, "A"};
  spec.times = times;
  return spec;
}

RuleSpec makeChain() {
  RuleSpec spec = makeAB(RuleKind::kChainPrecedence);
  spec.steps = {{kC, "C"}};
  return spec;
}

RuleSpec makeOrder() {
  RuleSpec spec = makeRule(RuleKind::kOrder);
  spec.steps = {{kA, "A"}, {kB, "B"}, {kC, "C"}};
  return spec;
}

std::vector<Case> makeCases() {
  const Formula always = !(a & !a);
  const Formula some = finally(a | b);
  return {
      {"Precedence", makeAB(RuleKind::kPrecedence), weakUntil(!b, a), finally(b)},
      {"AlternatePrecedence", makeAB(RuleKind::kAlternatePrecedence),
       weakUntil(!b, a) & globally(b >> weakNext(weakUntil(!b, a))), finally(b)},
      {"ChainPrecedence", makeChain(), globally(b >> yesterday(a)), finally(b)},
      {"ChainPrecedenceProjected", makeAB(RuleKind::kChainPrecedence),
       weakUntil(!b, a) & globally(b >> weakNext(weakUntil(!b, a))), finally(b)},
      {"Response", makeAB(RuleKind::kResponse), globally(a >> finally(b)), finally(a)},
      {"AlternateResponse", makeAB(RuleKind::kAlternateResponse), globally(a >> next(until(!a, b))),
       finally(a)},
      {"Existence", makeCounted(RuleKind::kExistence), finally(a), always},
      {"ExistenceTwice", makeCounted(RuleKind::kExistence, 2), finally(a & next(finally(a))),
       always},
      {"Absence", makeCounted(RuleKind::kAbsence), !finally(a), always},
      {"AbsenceTwo", makeCounted(RuleKind::kAbsence, 1), !finally(a & next(finally(a))), always},
      {"CoExistence", makeAB(RuleKind::kCoExistence),
       (finally(a) >> finally(b)) & (finally(b) >> finally(a)), some},
      {"NotCoExistence", makeAB(RuleKind::kNotCoExistence), !(finally(a) & finally(b)), some},
      {"NotSuccession", makeAB(RuleKind::kNotSuccession), globally(a >> !finally(b)), finally(a)},
      {"Order", makeOrder(), weakUntil(!b, a) & weakUntil(!c, a) & weakUntil(!c, b),
       finally(b) | finally(c)},
  };
}

class Declare : public testing::TestWithParam<Case> {};

void forEveryWord(const std::function<void(const std::string&)>& call) {
  for (std::size_t length = 0; length <= 7; ++length) {
    std::string word(length, 'a');
    for (;;) {
      call(word);
      std::size_t k = 0;
      while (k < length && word[k] == 'c') word[k++] = 'a';
      if (k == length) break;
      ++word[k];
    }
  }
}

Marker runWord(const std::shared_ptr<const RuleSet>& rules, const std::string& word) {
  Marker marker(rules);
  marker.seeFrame(unit::Frame{});
  for (std::size_t k = 0; k < word.size(); ++k) {
    marker.seeAction(static_cast<std::int64_t>(k + 1), actOf(word[k]));
  }
  return marker;
}

TEST_P(Declare, AgreesWithItsFormulaOnEveryWord) {
  const Case& test = GetParam();
  const auto rules = compiled({test.rule});
  int words = 0, held = 0, wrong = 0;
  forEveryWord([&](const std::string& word) {
    Marker marker = runWord(rules, word);
    const Outcome before = marker.verdicts().at(0).outcome;
    const bool is_final = marker.verdicts().at(0).is_final;
    marker.finish(100);
    const Outcome after = marker.verdicts().at(0).outcome;
    const bool holds = test.holds(word, 0);
    const bool exercised = test.exercised(word, 0);
    ++words;
    held += holds ? 1 : 0;
    const Outcome expected = !exercised ? Outcome::kNotExercised
                             : holds    ? Outcome::kMet
                                        : Outcome::kBroken;
    // While it runs it says what it would be if the run ended now.
    const bool good = before == Outcome::kPendingGood || before == Outcome::kMet ||
                      before == Outcome::kNotExercised;
    if (after == expected && good == holds && (!is_final || before == after)) return;
    if (++wrong <= 5) {
      ADD_FAILURE() << "'" << word << "': before the end " << wordOf(before) << ", after it "
                    << wordOf(after) << ", expected " << wordOf(expected);
    }
  });
  EXPECT_EQ(wrong, 0);
  EXPECT_EQ(words, 1 + 3279);
  EXPECT_GT(held, 0);
  EXPECT_LT(held, words);
}

// What is final must not change, whatever comes.
TEST_P(Declare, SaysFinalOnlyWhatNoContinuationCanChange) {
  const Case& test = GetParam();
  const auto rules = compiled({test.rule});
  forEveryWord([&](const std::string& word) {
    if (word.size() > 5) return;
    const Marker marker = runWord(rules, word);
    const Verdict now = marker.verdicts().at(0);
    if (!now.is_final) return;
    for (const std::string rest : {"a", "b", "c", "ab", "ba", "cab", "bca"}) {
      EXPECT_EQ(test.holds(word + rest, 0), now.outcome == Outcome::kMet) << word << " " << rest;
    }
  });
}

INSTANTIATE_TEST_SUITE_P(Template, Declare, testing::ValuesIn(makeCases()),
                         [](const auto& one) { return one.param.name; });

TEST(AlternatePrecedence, DiffersFromPrecedenceByTheWordAbb) {
  Story plain(makeAB(RuleKind::kPrecedence)), alternate(makeAB(RuleKind::kAlternatePrecedence));
  for (Story* run : {&plain, &alternate}) run->act(1, 'a').act(2, 'b').act(3, 'b').finish(4);
  EXPECT_EQ(plain.outcome(), Outcome::kMet);
  EXPECT_EQ(alternate.outcome(), Outcome::kBroken);
  EXPECT_EQ(alternate.verdict().tick, 3);
}

TEST(ChainPrecedence, DoesNotLetTheSecondEventBeTheFirstOfAll) {
  Story run(makeChain());
  run.act(1, 'b').act(2, 'c').finish(3);  // the word that the widely printed formula lets through
  EXPECT_EQ(run.outcome(), Outcome::kBroken);
  EXPECT_EQ(run.verdict().tick, 1);
}

TEST(ChainPrecedence, IsNotBrokenByEventsTheRuleDoesNotName) {
  Story run(makeAB(RuleKind::kChainPrecedence));
  run.act(1, 'a').act(2, 'c').act(3, "press cab1.lamp_test").act(4, 'b').finish(5);
  EXPECT_EQ(run.outcome(), Outcome::kMet);
}

}  // namespace
}  // namespace cabwright::marking
