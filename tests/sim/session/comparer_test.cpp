// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/comparer.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "sample_session.h"

namespace cabwright::session {
namespace {

class ComparerTest : public testing::Test {
 protected:
  ComparerTest() {
    Recorder recorder(folder_ / "a.cabsession", sampleHeader());
    std::int64_t number = 0;
    showSample(recorder, 0, 1000, number);
    recorder.close(sampleClosing(1000));
    std::int64_t again = 0;
    showSample(run_, 0, 1000, again);
  }

  std::optional<Difference> compare() {
    const Store store(folder_ / "a.cabsession");
    Comparer comparer(store);
    for (const RecordedEvent& event : run_.events) {
      if (const auto* f = std::get_if<unit::Frame>(&event)) comparer.seeFrame(*f);
      if (const auto* a = std::get_if<TimedAction>(&event)) comparer.seeAction(*a);
      if (const auto* h = std::get_if<StateHash>(&event)) comparer.seeHash(*h);
    }
    comparer.finish();
    frames_ = comparer.frames();
    return comparer.difference();
  }

  template <class Kind>
  Kind& find(std::int64_t tick) {
    for (RecordedEvent& event : run_.events)
      if (auto* found = std::get_if<Kind>(&event); found != nullptr && found->tick == tick)
        return *found;
    throw std::logic_error("no such event");
  }

  Folder folder_;
  Notebook run_;
  std::int64_t frames_ = 0;
};

TEST_F(ComparerTest, FindsNothingWhereNothingDiffers) {
  EXPECT_FALSE(compare());
  EXPECT_EQ(frames_, 101 + 10);
}

TEST_F(ComparerTest, NamesTheFirstTickAndSignalThatDiffer) {
  find<unit::Frame>(700).value[1] += 1.0F;
  find<unit::Frame>(800).value[0] += 1.0F;
  const auto difference = compare();
  ASSERT_TRUE(difference);
  EXPECT_EQ(difference->tick, 700);
  EXPECT_EQ(difference->quantity, unit::signalTable()[1].name);
  EXPECT_NE(difference->recorded, difference->replayed);
  EXPECT_EQ(difference->others, 0U);
}

TEST_F(ComparerTest, SeesADifferenceOfTheLastBit) {
  float& value = find<unit::Frame>(700).value[2];
  value = std::nextafter(value, 1e9F);
  const auto difference = compare();
  ASSERT_TRUE(difference);
  EXPECT_NE(difference->recorded, difference->replayed);
}

TEST_F(ComparerTest, SeesAStateThatDiffersWhereNoSignalDoes) {
  find<StateHash>(500).hash ^= 1U;
  const auto difference = compare();
  ASSERT_TRUE(difference);
  EXPECT_EQ(difference->tick, 500);
  EXPECT_EQ(difference->quantity, "state");
}

TEST_F(ComparerTest, SeesAnActionThatWasAnother) {
  find<TimedAction>(337).action.argument = "never";
  const auto difference = compare();
  ASSERT_TRUE(difference);
  EXPECT_EQ(difference->tick, 337);
  EXPECT_EQ(difference->quantity, "action 4");
}

TEST_F(ComparerTest, SeesAnActionThatDidNotHappen) {
  std::erase_if(run_.events, [](const RecordedEvent& event) {
    const auto* action = std::get_if<TimedAction>(&event);
    return action != nullptr && action->tick == 337;
  });
  const auto difference = compare();
  ASSERT_TRUE(difference);
  EXPECT_EQ(difference->tick, 337);
  EXPECT_THAT(difference->recorded, testing::HasSubstr("say ready"));
}

TEST_F(ComparerTest, SeesARunThatEndsTooEarly) {
  run_.events.resize(run_.events.size() - 3);
  const auto difference = compare();
  ASSERT_TRUE(difference);
  EXPECT_EQ(difference->quantity, "length");
}

}  // namespace
}  // namespace cabwright::session
