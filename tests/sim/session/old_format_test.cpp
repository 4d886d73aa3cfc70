// SPDX-License-Identifier: GPL-3.0-or-later
// A session recorded in format 1, kept as it was written, opens, is marked and runs again.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "sealed_session.h"
#include "session/replay.h"
#include "session/verify.h"

namespace cabwright::session {
namespace {

using testing::HasSubstr;

std::filesystem::path oldFile() {
  return std::filesystem::path(CABWRIGHT_SOURCE_DIR) /
         "tests/sim/session/data/first-format.cabsession";
}

TEST(OldFormat, Opens) {
  const Store store(oldFile());
  EXPECT_EQ(store.formatVersion(), 1);
  EXPECT_EQ(store.header().scenario, "Handbrake");
  EXPECT_EQ(store.header().people, (std::vector<Person>{{"trainee", "P. Example"}}));
  EXPECT_EQ(store.closing()->reason, "finished");
  EXPECT_FALSE(store.seal());
  EXPECT_EQ(store.readActions().size(), 2U);
}

TEST(OldFormat, IsMarked) {
  const Remarked marked = markAgain(Store(oldFile()));
  EXPECT_TRUE(marked.complete);
  EXPECT_TRUE(marked.sheet.decision.passed);
  EXPECT_EQ(marked.sheet.head.trainee, "P. Example");
  EXPECT_EQ(marked.sheet.lines.size(), 2U);
  ASSERT_EQ(marked.sheet.lines.size(), Store(oldFile()).closing()->verdicts.size());
  for (std::size_t i = 0; i < marked.sheet.lines.size(); ++i)
    EXPECT_EQ(marked.sheet.lines[i].verdictText(), Store(oldFile()).closing()->verdicts[i].verdict);
}

// Frames are not compared here: the machine may have been made better since. What people did and
// when it ended are read from the file.
TEST(OldFormat, RunsAgainToItsEnd) {
  const Store store(oldFile());
  const Replayed again = replay(store);
  EXPECT_EQ(again.last_tick, store.closing()->tick);
  EXPECT_GT(again.frames, 0);
}

TEST(OldFormat, IsNotSealedAndCannotBe) {
  EXPECT_EQ(verifySession(oldFile()).standing, Standing::kNotSealed);
  const Folder folder;
  std::filesystem::copy_file(oldFile(), folder / "a.cabsession");
  EXPECT_THAT(
      errorOf([&] { sealSession(folder / "a.cabsession", sampleKey(), SealHow::kOnRequest); }),
      HasSubstr("recorded in format 1"));
  EXPECT_EQ(slurp(folder / "a.cabsession"), slurp(oldFile()));
}

TEST(OldFormat, ItsRowsAreHeldAgainstTheirCheckValues) {
  const Folder folder;
  std::string bytes = slurp(oldFile());
  const auto at = bytes.find("set cab1.pawl out");
  ASSERT_NE(at, std::string::npos);
  const auto in_action = bytes.find("set cab1.pawl out", at + 1);
  for (const auto place : {at, in_action}) {
    if (place == std::string::npos) continue;
    std::string changed = bytes;
    changed[place] = 'g';
    spill(folder / "b.cabsession", changed);
    EXPECT_EQ(verifySession(folder / "b.cabsession").standing, Standing::kAltered);
  }
}

}  // namespace
}  // namespace cabwright::session
