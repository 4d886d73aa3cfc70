// SPDX-License-Identifier: GPL-3.0-or-later
// The passphrase of a shared machine: right, wrong, slower and slower, and the file that keeps it.
#include "session/passphrase.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include "sample_session.h"

namespace cabwright::session {
namespace {

using testing::HasSubstr;
using testing::Not;

SecretText secret(std::string words) { return SecretText(words); }

class PassphraseTest : public testing::Test {
 protected:
  [[nodiscard]] Passphrase open() const { return Passphrase(file_, HashCost::kLeast); }
  void set(const std::string& words) {
    Passphrase passphrase = open();
    ASSERT_EQ(passphrase.change(secret(""), secret(words), 100), Tried::kRight);
  }
  Folder folder_;
  std::filesystem::path file_ = folder_ / "data/lock";
};

TEST_F(PassphraseTest, NoneIsSetAtFirst) {
  Passphrase passphrase = open();
  EXPECT_FALSE(passphrase.isSet());
  EXPECT_EQ(passphrase.tryWith(secret("whatever"), 100), Tried::kUnset);
  EXPECT_FALSE(std::filesystem::exists(file_));
}

TEST_F(PassphraseTest, IsKnownAgainByAnotherProgram) {
  set("four plain words here");
  Passphrase passphrase = open();
  EXPECT_TRUE(passphrase.isSet());
  EXPECT_EQ(passphrase.tryWith(secret("four plain words her"), 100), Tried::kWrong);
  EXPECT_EQ(passphrase.tryWith(secret("four plain words here"), 100), Tried::kRight);
}

TEST_F(PassphraseTest, TheFileIsForItsOwnerAloneAndHoldsAHashOnly) {
  set("four plain words here");
  struct stat status {};
  ASSERT_EQ(::stat(file_.c_str(), &status), 0);
  EXPECT_EQ(status.st_mode & 0777U, 0600U);
  EXPECT_THAT(slurp(file_), HasSubstr("$argon2id$"));
  EXPECT_THAT(slurp(file_), Not(HasSubstr("plain")));
}

TEST_F(PassphraseTest, WrongTriesSlowDownAndOutliveTheProgram) {
  set("four plain words here");
  EXPECT_EQ(delayAfter(0), 0);
  EXPECT_EQ(delayAfter(2), 0);
  EXPECT_EQ(delayAfter(3), 5);
  EXPECT_EQ(delayAfter(4), 10);
  EXPECT_EQ(delayAfter(10), 640);
  EXPECT_EQ(delayAfter(11), 900);
  EXPECT_EQ(delayAfter(1'000'000), 900);
  std::int64_t now = 1000;
  for (int k = 0; k < 3; ++k) EXPECT_EQ(open().tryWith(secret("wrong one"), now), Tried::kWrong);
  EXPECT_EQ(open().waitSeconds(now), 5);
  EXPECT_EQ(open().tryWith(secret("four plain words here"), now + 4), Tried::kTooSoon);
  EXPECT_EQ(open().waitSeconds(now + 4), 1);
  now += 5;
  EXPECT_EQ(open().tryWith(secret("wrong one"), now), Tried::kWrong);
  EXPECT_EQ(open().waitSeconds(now), 10);
  EXPECT_EQ(open().tryWith(secret("four plain words here"), now + 10), Tried::kRight);
  EXPECT_EQ(open().waitSeconds(now + 10), 0);
  EXPECT_EQ(open().tryWith(secret("wrong one"), now + 10), Tried::kWrong);
  EXPECT_EQ(open().waitSeconds(now + 10), 0);
}

TEST_F(PassphraseTest, AClockPutBackNeitherOpensNorBarsForEver) {
  set("four plain words here");
  for (int k = 0; k < 3; ++k) EXPECT_EQ(open().tryWith(secret("wrong one"), 90'000), Tried::kWrong);
  EXPECT_EQ(open().waitSeconds(1000), 5);
  EXPECT_EQ(open().tryWith(secret("four plain words here"), 1000), Tried::kTooSoon);
  EXPECT_EQ(open().waitSeconds(1002), 3);
  EXPECT_EQ(open().tryWith(secret("four plain words here"), 1005), Tried::kRight);
}

TEST_F(PassphraseTest, IsChangedAndTakenAwayWithTheOldOneOnly) {
  set("four plain words here");
  Passphrase passphrase = open();
  EXPECT_EQ(passphrase.change(secret("no"), secret("another one"), 100), Tried::kWrong);
  EXPECT_EQ(passphrase.change(secret("four plain words here"), secret("short"), 100),
            Tried::kFault);
  EXPECT_THAT(passphrase.fault(), HasSubstr("8 to 1000 bytes"));
  EXPECT_EQ(passphrase.change(secret("four plain words here"), secret("another one"), 100),
            Tried::kRight);
  EXPECT_EQ(open().tryWith(secret("four plain words here"), 100), Tried::kWrong);
  EXPECT_EQ(open().remove(secret("four plain words here"), 100), Tried::kWrong);
  EXPECT_TRUE(open().isSet());
  EXPECT_EQ(open().remove(secret("another one"), 100), Tried::kRight);
  EXPECT_FALSE(open().isSet());
}

TEST_F(PassphraseTest, AFileThatCannotBeReadKeepsTheDoorShut) {
  set("four plain words here");
  const std::string good = slurp(file_);
  for (const std::string& bad :
       {std::string(), std::string("cabwright lock 1\n"), good.substr(0, good.size() / 2),
        std::string("cabwright lock 1\nx\n-1\n0\n"), std::string(5000, 'x')}) {
    spill(file_, bad);
    Passphrase passphrase = open();
    EXPECT_TRUE(passphrase.isSet()) << bad;
    EXPECT_EQ(passphrase.tryWith(secret("four plain words here"), 100), Tried::kFault) << bad;
    EXPECT_NE(passphrase.fault(), "");
  }
  spill(file_, "cabwright lock 1\nnohash\n0\n0\n");
  EXPECT_EQ(open().tryWith(secret("four plain words here"), 100), Tried::kWrong);
}

TEST_F(PassphraseTest, WhatWasTypedIsWiped) {
  std::string typed = "a rather long passphrase that is on the heap";
  const SecretText kept(typed);
  EXPECT_EQ(typed, "");
  EXPECT_EQ(kept.text(), "a rather long passphrase that is on the heap");
  SecretText first = secret("short"), second(std::move(first));
  EXPECT_EQ(first.text(), "");  // NOLINT: what is left behind is what is looked at
  EXPECT_EQ(second.text(), "short");
}

TEST_F(PassphraseTest, WithoutAPlaceItSaysSo) {
  Passphrase passphrase({}, HashCost::kLeast);
  EXPECT_FALSE(passphrase.isSet());
  EXPECT_EQ(passphrase.change(secret(""), secret("long enough"), 0), Tried::kFault);
  EXPECT_NE(passphrase.fault(), "");
}

}  // namespace
}  // namespace cabwright::session
