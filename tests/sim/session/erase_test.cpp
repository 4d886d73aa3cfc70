// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/erase.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "sealed_session.h"
#include "session/verify.h"

namespace cabwright::session {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

TEST(Erase, TakesAllNamesOutOfTheBytesAndLeavesTheSealWhole) {
  const Folder folder;
  const auto file = folder / "a.cabsession";
  recordSealed(file, folder / "keys");
  appendReview(file, {{"2031-02-04T08:00:00Z", "comment", "{}", {"assessor", "R. Who"}}},
               sampleKey());
  const auto events = readAll(file).size();
  ASSERT_THAT(slurp(file), HasSubstr("P. Example"));
  ASSERT_THAT(slurp(file), HasSubstr("R. Who"));
  EXPECT_EQ(erasePeople(file, sampleKey(2)), 3U);
  for (const std::string name : {"P. Example", "Q. Sample", "R. Who"})
    EXPECT_THAT(slurp(file), Not(HasSubstr(name)));
  const Verification found = verifySession(file);
  EXPECT_EQ(found.standing, Standing::kWhole);
  EXPECT_EQ(found.erased_people, 2U);
  EXPECT_EQ(found.review.at(0).by.name, "");
  EXPECT_EQ(readAll(file).size(), events);
  EXPECT_THAT(Store(file).header().people, IsEmpty());
  EXPECT_EQ(erasePeople(file, sampleKey(2)), 0U);
}

TEST(Erase, TheNumberTheTraineeSignedOnWithStays) {
  const Folder folder;
  const auto file = folder / "a.cabsession";
  SessionHeader header = assessmentHeader();
  header.trainee_number = "07";
  RecorderOptions options;
  options.key_folder = folder / "keys";
  Recorder recorder(file, header, options);
  std::int64_t number = 0;
  showSample(recorder, 0, 600, number);
  recorder.close(sampleClosing(600));
  EXPECT_EQ(traineeWords(Store(file).header()), "07, P. Example");
  EXPECT_EQ(erasePeople(file, sampleKey()), 2U);
  EXPECT_EQ(verifySession(file).standing, Standing::kWhole);
  EXPECT_EQ(traineeWords(Store(file).header()), "07");
  EXPECT_THAT(slurp(file), Not(HasSubstr("P. Example")));
}

TEST(Erase, ANumberThatWasErasedIsNotGivenToSomebodyElse) {
  const Folder folder;
  const auto file = folder / "a.cabsession";
  recordSealed(file, folder / "keys");
  erasePeople(file, sampleKey());
  appendReview(file, {{"2031-02-04T08:00:00Z", "comment", "{}", {"assessor", "R. Who"}}},
               sampleKey());
  const Verification found = verifySession(file);
  EXPECT_EQ(found.standing, Standing::kWhole);
  EXPECT_EQ(found.review.at(0).person, 3);
  EXPECT_EQ(found.erased_people, 2U);
}

TEST(Erase, WorksWithoutASealAndNotOnWhatWasAlteredOrIsRecorded) {
  const Folder folder;
  const auto file = folder / "a.cabsession";
  {
    Recorder recorder(file, sampleHeader());
    std::int64_t number = 0;
    showSample(recorder, 0, 300, number);
    EXPECT_NE(errorOf([&] { return erasePeople(file, sampleKey()); }), "");
    recorder.close(sampleClosing(300));
  }
  EXPECT_EQ(erasePeople(file, sampleKey()), 1U);
  EXPECT_EQ(verifySession(file).standing, Standing::kNotSealed);
  EXPECT_THAT(slurp(file), Not(HasSubstr("P. Example")));
  recordSealed(folder / "b", folder / "keys");
  std::string bytes = slurp(folder / "b");
  bytes[bytes.size() / 2] ^= 1;
  spill(folder / "b", bytes);
  EXPECT_NE(errorOf([&] { return erasePeople(folder / "b", sampleKey()); }), "");
  EXPECT_EQ(slurp(folder / "b"), bytes);
}

TEST(Erase, OfFormatOneIsRefusedSinceItsSheetHoldsNamesToo) {
  const Folder folder;
  std::filesystem::copy_file(std::filesystem::path(CABWRIGHT_SOURCE_DIR) /
                                 "tests/sim/session/data/first-format.cabsession",
                             folder / "a");
  const std::string before = slurp(folder / "a");
  EXPECT_THAT(errorOf([&] { return erasePeople(folder / "a", sampleKey()); }),
              HasSubstr("format 1"));
}

}  // namespace
}  // namespace cabwright::session
