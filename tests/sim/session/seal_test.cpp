// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/seal.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "sealed_session.h"
#include "session/database.h"
#include "session/file_tail.h"
#include "session/verify.h"

namespace cabwright::session {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::UnorderedElementsAre;

class SealTest : public testing::Test {
 protected:
  void record(const SessionHeader& header, bool ends = true) {
    Recorder recorder(file_, header);
    std::int64_t number = 0;
    showSample(recorder, 0, 1200, number);
    if (ends) recorder.close(sampleClosing(1200));
  }
  Folder folder_;
  std::filesystem::path file_ = folder_ / "a.cabsession";
};

TEST_F(SealTest, AnAssessmentIsSealedWhenItEndsByTheKeyOfTheStation) {
  recordSealed(file_, folder_ / "keys");
  const Verification found = verifySession(file_);
  EXPECT_EQ(found.standing, Standing::kWhole);
  EXPECT_THAT(found.findings, IsEmpty());
  ASSERT_TRUE(found.seal);
  EXPECT_EQ(found.seal->how, SealHow::kWhenItEnded);
  EXPECT_EQ(found.seal->station, SigningKey::load(folder_ / "keys/station.key").publicKey());
  EXPECT_EQ(found.seal->count, found.rows);
  EXPECT_TRUE(found.has_end);
  EXPECT_THAT(folder_.names(), UnorderedElementsAre("a.cabsession", "keys"));
}

TEST_F(SealTest, OtherSessionsAreNotUnlessOneAsks) {
  record(sampleHeader());
  EXPECT_EQ(verifySession(file_).standing, Standing::kNotSealed);
  sealSession(file_, sampleKey(), SealHow::kOnRequest);
  const Verification found = verifySession(file_);
  EXPECT_EQ(found.standing, Standing::kWhole);
  EXPECT_EQ(found.seal->how, SealHow::kOnRequest);
  EXPECT_THAT(folder_.names(), ElementsAre("a.cabsession"));
}

TEST_F(SealTest, TheSealedSessionReadsAsBefore) {
  record(sampleHeader());
  const auto before = readAll(file_);
  sealSession(file_, sampleKey(), SealHow::kOnRequest);
  const auto after = readAll(file_);
  ASSERT_EQ(after.size(), before.size());
  for (std::size_t i = 0; i < after.size(); ++i) EXPECT_TRUE(same(after[i], before[i]));
  EXPECT_EQ(Store(file_).header(), sampleHeader());
  EXPECT_EQ(Store(file_).closing(), sampleClosing(1200));
  EXPECT_EQ(Store(file_).findFrame(700)->value, sampleFrame(700).value);
}

TEST_F(SealTest, ACutOffSessionCanBeSealedAsFarAsItGoes) {
  record(sampleHeader(), false);
  sealSession(file_, sampleKey(), SealHow::kOnRequest);
  const Verification found = verifySession(file_);
  EXPECT_EQ(found.standing, Standing::kWhole);
  EXPECT_FALSE(found.has_end);
  EXPECT_THAT(folder_.names(), ElementsAre("a.cabsession"));
}

TEST_F(SealTest, IsPutOnOnce) {
  recordSealed(file_, folder_ / "keys");
  const std::string before = slurp(file_);
  EXPECT_THAT(errorOf([&] { sealSession(file_, sampleKey(), SealHow::kOnRequest); }),
              HasSubstr("is sealed already"));
  EXPECT_EQ(slurp(file_), before);
}

TEST_F(SealTest, IsNotPutOnASessionThatIsBeingRecordedOrDamaged) {
  {
    Recorder recorder(file_, sampleHeader());
    std::int64_t number = 0;
    showSample(recorder, 0, 500, number);
    EXPECT_THAT(errorOf([&] { sealSession(file_, sampleKey(), SealHow::kOnRequest); }),
                testing::AnyOf(HasSubstr("is still being recorded"), HasSubstr("using the file")));
    showSample(recorder, 501, 600, number);
    recorder.close(sampleClosing(600));
  }
  EXPECT_EQ(Store(file_).lastTick(), 600);
  Database::openForWriting(file_).run("DELETE FROM state WHERE tick = 300");
  const std::string before = slurp(file_);
  EXPECT_THAT(errorOf([&] { sealSession(file_, sampleKey(), SealHow::kOnRequest); }),
              HasSubstr("missing"));
  EXPECT_EQ(slurp(file_), before);
}

TEST_F(SealTest, AnAssessmentIsNotRecordedWhenThereIsNoKeyToSealItWith) {
  RecorderOptions options;
  options.key_folder = "/proc/none";
  EXPECT_THAT(errorOf([&] { Recorder r(file_, assessmentHeader(), options); }),
              HasSubstr("station.key: "));
  EXPECT_THAT(folder_.names(), IsEmpty());
}

TEST_F(SealTest, TheSameDeedsGiveTheSameSeal) {
  SessionHeader header = sampleHeader();
  header.people.clear();  // the salts differ every time
  record(header);
  const ChainEnd one = Store(file_).readChainEnd();
  std::filesystem::remove(file_);
  record(header);
  const ChainEnd two = Store(file_).readChainEnd();
  EXPECT_EQ(one.last, two.last);
  EXPECT_EQ(sampleKey().sign(sealMessage("x", SealHow::kOnRequest, one.count, one.last)),
            sampleKey().sign(sealMessage("x", SealHow::kOnRequest, two.count, two.last)));
}

TEST_F(SealTest, WhatIsSignedNamesUseSessionCountAndValue) {
  const Digest last{1, 2, 3};
  const auto message = sealMessage("id", SealHow::kOnRequest, 7, last);
  EXPECT_NE(message, sealMessage("ie", SealHow::kOnRequest, 7, last));
  EXPECT_NE(message, sealMessage("id", SealHow::kWhenItEnded, 7, last));
  EXPECT_NE(message, sealMessage("id", SealHow::kOnRequest, 8, last));
  EXPECT_NE(message, sealMessage("id", SealHow::kOnRequest, 7, Digest{1, 2, 4}));
}

TEST(FileTail, FitsTheFileItWasMadeForAndNoOther) {
  const Folder folder;
  recordSealed(folder / "a.cabsession", folder / "keys");
  const std::string id = sampleHeader().session_id;
  EXPECT_EQ(checkTail(folder / "a.cabsession", id).state, TailState::kFits);
  EXPECT_EQ(checkTail(folder / "a.cabsession", "another").state, TailState::kUnsigned);
  EXPECT_TRUE(endsInTail(folder / "a.cabsession"));
  const std::string bytes = slurp(folder / "a.cabsession");
  EXPECT_EQ(bytes.size(), *findPagesEnd(folder / "a.cabsession") + kTailBytes);
}

}  // namespace
}  // namespace cabwright::session
