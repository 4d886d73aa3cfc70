// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody edits a sealed session: row by row with SQL, with check values made to fit, and byte by
// byte at places drawn at random. All of it is told, and where a row tells, the row is named.
#include "session/verify.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "forge.h"
#include "sealed_session.h"
#include "session/file_tail.h"

namespace cabwright::session {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

class VerifyTest : public testing::Test {
 protected:
  // Sealed, with two entries added after the seal; made once for all tests.
  static const std::string& good() {
    static const std::string bytes = [] {
      const Folder folder;
      const auto file = folder / "a.cabsession";
      recordSealed(file, folder / "keys", 300);
      appendReview(
          file,
          {{"2031-02-04T08:00:00Z", "comment", R"({"text":"one"})", {"assessor", "R. Who"}},
           {"2031-02-04T08:00:01Z", "comment", R"({"text":"two"})", {"assessor", "R. Who"}}},
          sampleKey());
      return slurp(file);
    }();
    return bytes;
  }

  Verification verify(const std::string& bytes) {
    spill(file_, bytes);
    return verifySession(file_);
  }
  // After somebody ran SQL on it.
  Verification after(const std::string& sql) {
    spill(file_, good());
    Database::openForWriting(file_).run(sql);
    return verifySession(file_);
  }
  // And made the check values of the rows fit again.
  Verification afterForging(const std::string& sql) {
    spill(file_, good());
    Database::openForWriting(file_).run(sql);
    forgeChain(file_);
    return verifySession(file_);
  }
  void expectTold(const std::string& sql, const std::string& words) {
    const Verification found = after(sql);
    EXPECT_EQ(found.standing, Standing::kAltered) << sql;
    ASSERT_THAT(found.findings, Not(IsEmpty())) << sql;
    EXPECT_THAT(found.findings.front(), HasSubstr(words)) << sql;
  }
  Folder folder_;
  std::filesystem::path file_ = folder_ / "b.cabsession";
};

TEST_F(VerifyTest, FindsNothingInWhatNobodyTouched) {
  const Verification found = verify(good());
  EXPECT_EQ(found.standing, Standing::kWhole);
  EXPECT_THAT(found.findings, IsEmpty());
  EXPECT_EQ(found.review.size(), 2U);
  EXPECT_EQ(found.review[1].by, (Person{"assessor", "R. Who"}));
  EXPECT_EQ(slurp(file_), good());  // looking changes nothing
}

TEST_F(VerifyTest, NamesTheRowThatWasChanged) {
  expectTold("UPDATE action SET text = 'say ready at_once' WHERE number = 2", "entry");
  expectTold("UPDATE action SET tick = tick + 1 WHERE number = 2", "does not fit");
  expectTold("UPDATE action SET scheduled = 1 - scheduled WHERE number = 2", "does not fit");
  expectTold("UPDATE action SET scheduled = 2 WHERE scheduled = 1", "yes or no");
  expectTold("UPDATE action SET number = 9 WHERE number = 2", "does not fit");
  expectTold("UPDATE state SET hash = hash + 1 WHERE tick = 200", "does not fit");
  expectTold("UPDATE state SET tick = 201 WHERE tick = 200", "does not fit");
  expectTold("UPDATE frame SET data = x'' WHERE tick = 200", "does not fit");
  expectTold("UPDATE frame SET is_key = 1 WHERE tick = 200", "does not fit");
  expectTold("UPDATE frame SET is_key = 3 WHERE seq = 1", "yes or no");
  expectTold("UPDATE frame SET chain = chain + 1 WHERE tick = 200", "does not fit");
  expectTold("UPDATE closing SET passed = 0", "does not fit");
  expectTold("UPDATE closing SET passed = 7", "yes or no");
  expectTold("UPDATE closing SET reason = 'x'", "does not fit");
  expectTold("UPDATE closing SET sheet = '{}'", "does not fit");
  expectTold("UPDATE verdict SET verdict = 'met'", "does not fit");
  expectTold("UPDATE verdict SET margin = 9.0 WHERE line = 1", "does not fit");
  expectTold("UPDATE verdict SET line = 7 WHERE line = 2", "gaps");
}

TEST_F(VerifyTest, TellsWhatWasChangedAtTheHead) {
  const std::string head = "the texts at its head were changed";
  expectTold("UPDATE about SET value = '1' WHERE key = 'seed'", head);
  expectTold("UPDATE about SET value = 'practice' WHERE key = 'run_mode'", head);
  expectTold("UPDATE about SET value = hex(x'00') WHERE key = 'person_1'", head);
  expectTold("INSERT INTO about(key, value) VALUES('x', 'y')", head);
  expectTold("UPDATE source SET text = 'title = 1' WHERE id = 1", head);
  expectTold("UPDATE source SET id = 9 WHERE id = 2", "gaps");
  expectTold("UPDATE signal SET unit = name WHERE id = 3", "was recorded in");
  expectTold("UPDATE signal SET name = 'unheard.of' WHERE id = 3", head);
}

TEST_F(VerifyTest, TellsAnotherNameButTakesAnErasedOne) {
  expectTold("UPDATE person SET name = 'P. Other' WHERE id = 1", "a name at its head was changed");
  expectTold("UPDATE person SET role = 'assessor' WHERE id = 1", "a name at its head was changed");
  expectTold("UPDATE person SET salt = zeroblob(16) WHERE id = 1", "a name at its head");
  expectTold("UPDATE person SET salt = x'00' WHERE id = 1", "without its salt");
  expectTold("UPDATE person SET name = 'R. Other' WHERE name = 'R. Who'",
             "a name beside an entry added later was changed");
  expectTold("INSERT INTO person(role, name, salt) VALUES('trainee', 'X', zeroblob(16))",
             "no part in it");
}

TEST_F(VerifyTest, TellsRowsTakenOutPutInAndExchanged) {
  for (const std::string table : {"action", "frame", "state"}) {
    expectTold("DELETE FROM " + table + " WHERE seq = (SELECT max(seq) FROM " + table +
                   " WHERE tick < 250)",
               "missing");
    expectTold("UPDATE " + table + " SET seq = -seq WHERE seq > 20; UPDATE " + table +
                   " SET seq = seq + 100000 WHERE seq < 0",
               "missing");
  }
  expectTold("INSERT INTO state SELECT max(seq) + 1000, 300, 1, 1 FROM frame",
             "missing or doubled");
  expectTold(
      "INSERT INTO state SELECT (SELECT seq FROM frame WHERE tick = 100 LIMIT 1), tick, "
      "hash, chain FROM state WHERE tick = 0",
      "entry");
  expectTold("UPDATE frame SET data = (SELECT data FROM frame WHERE tick = 110) WHERE tick = 120",
             "does not fit");
  expectTold("DELETE FROM source WHERE id = 1", "gaps");
  expectTold("DELETE FROM signal WHERE id = (SELECT max(id) FROM signal)", "head were changed");
  expectTold("DELETE FROM verdict WHERE line = 2", "does not fit");
}

TEST_F(VerifyTest, TellsWhatWasCutOffAndWhatWasAddedBehindTheSealedEnd) {
  expectTold("DELETE FROM closing; DELETE FROM verdict", "cut off after row");
  expectTold(
      "DELETE FROM closing; DELETE FROM verdict; DELETE FROM frame WHERE tick > 100; "
      "DELETE FROM action WHERE tick > 100; DELETE FROM state WHERE tick > 100",
      "cut off after row");
}

TEST_F(VerifyTest, TellsRowsWhoseCheckValuesWereMadeToFit) {
  const std::string fit = "made to fit";
  Verification found = afterForging("UPDATE action SET text = 'say ready now' WHERE number = 2");
  EXPECT_EQ(found.standing, Standing::kAltered);
  EXPECT_THAT(found.findings.front(), HasSubstr(fit));
  found = afterForging("UPDATE about SET value = '8' WHERE key = 'seed'");
  EXPECT_THAT(found.findings.front(), HasSubstr(fit));
  found = afterForging("UPDATE closing SET passed = 0");
  EXPECT_THAT(found.findings.front(), HasSubstr(fit));
  found = afterForging(
      "UPDATE closing SET seq = seq + 1; INSERT INTO state SELECT seq - 1, tick, 1, 1 FROM "
      "closing");
  EXPECT_THAT(found.findings.front(), HasSubstr("rows were added"));
  EXPECT_EQ(afterForging("SELECT 1").standing, Standing::kWhole);  // the same values once more
}

TEST_F(VerifyTest, TellsASealThatWasChangedTakenAwayOrPutOnAgainByHand) {
  expectTold("UPDATE seal SET count = count - 1", "signature of its seal");
  expectTold("UPDATE seal SET how = 'on request'", "signature of its seal");
  expectTold("UPDATE seal SET how = 'nicely'", "its seal is none");
  expectTold("UPDATE seal SET last = zeroblob(32)", "signature of its seal");
  expectTold("UPDATE seal SET signature = zeroblob(64)", "signature of its seal");
  expectTold("UPDATE seal SET station = zeroblob(32)", "signature of its seal");
  expectTold("UPDATE seal SET station = zeroblob(31)", "its seal is none");
  expectTold("INSERT INTO seal SELECT 2, how, count, last, station, signature FROM seal",
             "its seal is none");
  expectTold("DELETE FROM seal", "entries were added though it has no seal");
  expectTold("DELETE FROM seal; DELETE FROM review; DELETE FROM person WHERE id = 3",
             "its seal was taken away");
}

TEST_F(VerifyTest, TellsEntriesAddedLaterThatWereChangedTakenOutOrExchanged) {
  expectTold("UPDATE review SET body = '{}' WHERE seq = 1", "entry 1 of those added");
  expectTold("UPDATE review SET utc = '2031' WHERE seq = 2", "entry 2 of those added");
  expectTold("UPDATE review SET kind = 'decision' WHERE seq = 2", "entry 2 of those added");
  expectTold("UPDATE review SET person = 1 WHERE seq = 2", "a name beside an entry");
  expectTold("UPDATE review SET mark = zeroblob(32) WHERE seq = 1", "a name beside an entry");
  expectTold("UPDATE review SET last = zeroblob(32) WHERE seq = 1", "entry 1 of those added");
  expectTold("UPDATE review SET signature = zeroblob(64) WHERE seq = 1", "entry 1 of those added");
  expectTold("UPDATE review SET key = zeroblob(32) WHERE seq = 1", "entry 1 of those added");
  expectTold("UPDATE review SET key = x'00' WHERE seq = 1", "entry added later is none");
  expectTold("DELETE FROM review WHERE seq = 1", "entry 1 of those added");
  expectTold("DELETE FROM review WHERE seq = 2", "belong to no row");  // cut off: the bytes tell
  expectTold("UPDATE review SET seq = 3 - seq + 10; UPDATE review SET seq = seq - 10",
             "of those added");
}

TEST_F(VerifyTest, TellsEveryByteOfItsEndAndHead) {
  for (std::size_t at = good().size() - kTailBytes; at < good().size(); ++at) {
    std::string bytes = good();
    bytes[at] = static_cast<char>(bytes[at] ^ 0x10);
    EXPECT_EQ(verify(bytes).standing, Standing::kAltered) << at;
  }
  for (std::size_t at = 0; at < 100; ++at) {
    std::string bytes = good();
    bytes[at] = static_cast<char>(bytes[at] ^ 0x04);
    EXPECT_EQ(verify(bytes).standing, Standing::kAltered) << at;
  }
}

TEST_F(VerifyTest, TellsAnyByteFlippedAnywhere) {
  EXPECT_TRUE(rc::check("a flipped bit is told", [&] {
    const auto at = *rc::gen::inRange<std::size_t>(0, good().size());
    const auto bit = *rc::gen::inRange(0, 8);
    std::string bytes = good();
    bytes[at] = static_cast<char>(bytes[at] ^ (1 << bit));
    RC_ASSERT(verify(bytes).standing == Standing::kAltered);
  }));
}

TEST_F(VerifyTest, TellsAnyPieceCutOutPutInOrMoved) {
  EXPECT_TRUE(rc::check("cut off at the end", [&] {
    const auto size = *rc::gen::inRange<std::size_t>(0, good().size());
    RC_ASSERT(verify(good().substr(0, size)).standing != Standing::kWhole);
  }));
  EXPECT_TRUE(rc::check("cut out of the middle, or put in", [&] {
    const auto at = *rc::gen::inRange<std::size_t>(0, good().size());
    const auto count = *rc::gen::inRange<std::size_t>(1, 5000);
    std::string bytes = good();
    if (*rc::gen::arbitrary<bool>())
      bytes.erase(at, count);
    else
      bytes.insert(at, std::string(count, static_cast<char>(*rc::gen::inRange(0, 256))));
    RC_ASSERT(verify(bytes).standing != Standing::kWhole);
  }));
  EXPECT_TRUE(rc::check("two pages exchanged", [&] {
    const auto pages = good().size() / 4096;
    const auto a = *rc::gen::inRange<std::size_t>(0, pages);
    const auto b = (a + 1 + *rc::gen::inRange<std::size_t>(0, pages - 1)) % pages;
    std::string bytes = good();
    std::swap_ranges(bytes.begin() + static_cast<std::ptrdiff_t>(a * 4096),
                     bytes.begin() + static_cast<std::ptrdiff_t>(a * 4096 + 4096),
                     bytes.begin() + static_cast<std::ptrdiff_t>(b * 4096));
    RC_PRE(bytes != good());
    RC_ASSERT(verify(bytes).standing != Standing::kWhole);
  }));
}

TEST_F(VerifyTest, TellsBytesAddedBehindTheEndAndAWholeSecondTail) {
  EXPECT_EQ(verify(good() + "x").standing, Standing::kAltered);
  EXPECT_THAT(verify(good() + "xyz").findings.front(), HasSubstr("3 bytes were added"));
  EXPECT_EQ(verify(good() + good().substr(good().size() - kTailBytes)).standing,
            Standing::kAltered);
  EXPECT_THAT(verify(good().substr(0, good().size() - kTailBytes)).findings.front(),
              HasSubstr("cut off at its end"));
}

TEST_F(VerifyTest, TheSealOfAnotherSessionDoesNotFit) {
  SessionHeader other = assessmentHeader();
  other.session_id = "99999999-2222-4333-8444-555555555555";
  RecorderOptions options;
  options.key_folder = folder_ / "keys";
  {
    Recorder recorder(folder_ / "other", other, options);
    std::int64_t number = 0;
    showSample(recorder, 0, 300, number);
    recorder.close(sampleClosing(300));
  }
  Database from = Database::openForWriting(folder_ / "other");
  Statement seal(from, "SELECT how, count, last, station, signature FROM seal");
  ASSERT_TRUE(seal.step());
  spill(file_, good());
  {
    Database to = Database::openForWriting(file_);
    Statement put(to, "UPDATE seal SET last = ?1, station = ?2, signature = ?3");
    put.bind(1, seal.bytes(2)).bind(2, seal.bytes(3)).bind(3, seal.bytes(4)).run();
  }
  EXPECT_THAT(verifySession(file_).findings, testing::Contains(HasSubstr("seal")));
}

// Somebody re-seals what he changed with a key of his own: it is whole, and it is his.
TEST_F(VerifyTest, WhoSealsAgainIsKnownByHisKey) {
  spill(file_, good());
  Database::openForWriting(file_).run(
      "UPDATE action SET text = 'say ready now' WHERE number = 2; DELETE FROM seal; "
      "DELETE FROM review; DELETE FROM person WHERE id = 3");
  forgeChain(file_);
  std::filesystem::resize_file(file_, *findPagesEnd(file_));
  sealSession(file_, sampleKey(66), SealHow::kWhenItEnded);
  const Verification found = verifySession(file_);
  EXPECT_EQ(found.standing, Standing::kWhole);
  EXPECT_EQ(found.seal->station, sampleKey(66).publicKey());
}

TEST_F(VerifyTest, IsNoSessionWhatIsNone) {
  EXPECT_EQ(verify("").standing, Standing::kNoSession);
  EXPECT_EQ(verify("title = 1\n").standing, Standing::kNoSession);
  EXPECT_EQ(verifySession(folder_ / "none").standing, Standing::kNoSession);
  EXPECT_EQ(verifySession("/").standing, Standing::kNoSession);
}

TEST_F(VerifyTest, AJournalLaidBesideASealedSessionIsNotRead) {
  spill(file_, good());
  spill(file_.string() + "-wal", std::string(8192, '\x01'));
  spill(file_.string() + "-journal", std::string(8192, '\x01'));
  EXPECT_EQ(verifySession(file_).standing, Standing::kWhole);
  EXPECT_EQ(slurp(file_), good());
}

}  // namespace
}  // namespace cabwright::session
