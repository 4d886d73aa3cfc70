// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/store.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include "forge.h"
#include "sample_session.h"
#include "session/database.h"

namespace cabwright::session {
namespace {

using testing::EndsWith;
using testing::HasSubstr;
using testing::Not;

class StoreTest : public testing::Test {
 protected:
  // A good, closed session of 12 s: more than one key frame.
  std::filesystem::path good() {
    const auto file = folder_ / "good.cabsession";
    if (std::filesystem::exists(file)) return file;
    Recorder recorder(file, sampleHeader());
    std::int64_t number = 0;
    showSample(recorder, 0, 1200, number);
    recorder.close(sampleClosing(1200));
    return file;
  }

  // The good one after somebody ran SQL on it.
  std::filesystem::path changed(const std::string& sql) {
    const auto file = folder_ / "changed.cabsession";
    std::filesystem::copy_file(good(), file, std::filesystem::copy_options::overwrite_existing);
    Database::openForWriting(file).run(sql);
    return file;
  }

  std::string errorAfter(const std::string& sql) {
    const auto file = changed(sql);
    return errorOf([&] { readAll(file); });
  }

  // Changed, and the chain made to fit again, as somebody who knows the format would.
  std::filesystem::path forged(const std::string& sql) {
    auto file = changed(sql);
    forgeChain(file);
    return file;
  }

  std::string errorAfterForging(const std::string& sql) {
    const auto file = forged(sql);
    return errorOf([&] { readAll(file); });
  }

  std::string errorOfBytes(const std::string& bytes) {
    const auto file = folder_ / "bytes.cabsession";
    spill(file, bytes);
    return errorOf([&] { readAll(file); });
  }

  Folder folder_;
};

TEST_F(StoreTest, OpensNothingThatIsNotAFile) {
  EXPECT_THAT(errorOf([&] { Store s(folder_ / "none"); }), EndsWith("there is no such file"));
  EXPECT_THAT(errorOf([&] { Store s("/"); }), EndsWith("not a regular file"));
  ASSERT_EQ(::mkfifo((folder_ / "pipe").c_str(), 0600), 0);
  EXPECT_THAT(errorOf([&] { Store s(folder_ / "pipe"); }), EndsWith("not a regular file"));
}

TEST_F(StoreTest, TellsAnEmptyATextAndABinaryFileFromASession) {
  EXPECT_THAT(errorOfBytes(""), EndsWith("the file is empty"));
  EXPECT_THAT(errorOfBytes("title = \"not a session\"\n"), EndsWith("not a session file"));
  EXPECT_THAT(errorOfBytes(std::string(70'000, '\xff')), EndsWith("not a session file"));
  EXPECT_THAT(errorOfBytes(std::string(70'000, '\0')), EndsWith("not a session file"));
}

TEST_F(StoreTest, RefusesAFileTooLargeToBeASessionBeforeReadingIt) {
  spill(folder_ / "huge", slurp(good()));
  std::filesystem::resize_file(folder_ / "huge", (std::uintmax_t{2} << 30) + 1);  // sparse
  EXPECT_THAT(errorOf([&] { Store s(folder_ / "huge"); }), HasSubstr("larger than any session"));
}

TEST_F(StoreTest, RefusesADatabaseOfSomebodyElse) {
  EXPECT_THAT(errorAfter("PRAGMA application_id = 7"), HasSubstr("not a session of this program"));
}

TEST_F(StoreTest, SaysWhichFormatItReadsWhenTheFileIsNewer) {
  EXPECT_THAT(errorAfter("PRAGMA user_version = 3"),
              EndsWith("session format 3, this program reads formats 1 to 2"));
  EXPECT_THAT(errorAfter("PRAGMA user_version = 0"), HasSubstr("session format 0"));
  EXPECT_THAT(errorAfter("PRAGMA user_version = 1"), HasSubstr("a table that no session has"));
}

TEST_F(StoreTest, RefusesAnythingInTheSchemaThatNoSessionHas) {
  EXPECT_THAT(errorAfter("CREATE TABLE extra(x)"), EndsWith("a table that no session has: extra"));
  EXPECT_THAT(errorAfter("CREATE VIEW v AS SELECT 1"), EndsWith("a view that no session has: v"));
  EXPECT_THAT(errorAfter("CREATE TRIGGER t AFTER INSERT ON frame BEGIN SELECT 1; END"),
              EndsWith("a trigger that no session has: t"));
  EXPECT_THAT(errorAfter("ALTER TABLE frame ADD COLUMN more INTEGER"),
              EndsWith("a table that no session has: frame"));
  EXPECT_THAT(errorAfter("DROP TABLE verdict"), EndsWith("tables are missing"));
}

TEST_F(StoreTest, NoticesEveryKindOfEdit) {
  const std::string damaged = "does not fit";
  EXPECT_THAT(errorAfter("UPDATE action SET text = 'say ready at once' WHERE number = 4"),
              HasSubstr(damaged));
  EXPECT_THAT(errorAfter("UPDATE action SET tick = tick + 1 WHERE number = 4"), HasSubstr(damaged));
  EXPECT_THAT(errorAfter("UPDATE state SET hash = hash + 1 WHERE tick = 500"), HasSubstr(damaged));
  EXPECT_THAT(errorAfter("UPDATE frame SET data = x'' WHERE tick = 500"), HasSubstr(damaged));
  EXPECT_THAT(errorAfter("UPDATE closing SET passed = 0"), HasSubstr(damaged));
  EXPECT_THAT(errorAfter("UPDATE closing SET sheet = '{}'"), HasSubstr(damaged));
  EXPECT_THAT(errorAfter("UPDATE verdict SET verdict = 'met'"), HasSubstr(damaged));
  EXPECT_THAT(errorAfter("UPDATE verdict SET margin = 9.0"), HasSubstr(damaged));
  EXPECT_THAT(errorAfter("DELETE FROM frame WHERE tick = 500"), HasSubstr("missing"));
  EXPECT_THAT(errorAfter("DELETE FROM action WHERE number = 2"), HasSubstr("missing"));
  EXPECT_THAT(errorAfter("DELETE FROM frame WHERE seq = 1"), HasSubstr("missing"));
  EXPECT_THAT(errorAfter("UPDATE source SET text = 'title = 1' WHERE id = 1"),
              HasSubstr("the texts at its head were changed"));
  EXPECT_THAT(errorAfter("UPDATE about SET value = '1' WHERE key = 'seed'"),
              HasSubstr("the texts at its head were changed"));
  EXPECT_THAT(errorAfter("DELETE FROM about WHERE key = 'seed'"), EndsWith("\"seed\" is missing"));
}

TEST_F(StoreTest, RefusesContradictions) {
  EXPECT_THAT(errorAfter("INSERT INTO closing SELECT seq + 1, tick, reason, passed, sheet, chain "
                         "FROM closing"),
              HasSubstr("it ends twice"));
  EXPECT_THAT(errorAfter("UPDATE signal SET name = (SELECT name FROM signal WHERE id = 0)"),
              HasSubstr("is listed twice"));
  EXPECT_THAT(errorAfter("UPDATE signal SET unit = 'furlong' WHERE id = 0"),
              HasSubstr("was recorded in \"furlong\""));
  EXPECT_THAT(errorAfter("DELETE FROM signal WHERE id = 1"), HasSubstr("has gaps"));
  EXPECT_THAT(errorAfter("UPDATE about SET value = '60' WHERE key = 'ticks_per_second'"),
              HasSubstr("another length of tick"));
  EXPECT_THAT(errorAfter("UPDATE about SET value = '-1' WHERE key = 'seed'"),
              HasSubstr("\"seed\" is not a number"));
  EXPECT_NE(errorAfter("INSERT INTO state SELECT seq, 1, 1, 1 FROM action LIMIT 1"), "");
}

TEST_F(StoreTest, ReadsTheGoodPartOfACutOffSessionAndSaysItHasNoEnd) {
  const auto file = changed("DELETE FROM closing; DELETE FROM verdict");
  EXPECT_FALSE(Store(file).closing());
  EXPECT_EQ(readAll(file).size(), readAll(good()).size());
}

TEST_F(StoreTest, ASessionCutAtAnyPageIsRefusedInOneLine) {
  const std::string bytes = slurp(good());
  ASSERT_GT(bytes.size(), 8U * 4096U);
  for (std::size_t size = 4096; size < bytes.size(); size += 4096) {
    const std::string message = errorOfBytes(bytes.substr(0, size));
    ASSERT_FALSE(message.empty()) << "cut after " << size;
    ASSERT_THAT(message, Not(HasSubstr("\n")));
  }
}

TEST_F(StoreTest, ASessionCutAtAnyByteOfItsFirstPageIsRefusedInOneLine) {
  const std::string bytes = slurp(good());
  for (std::size_t size = 0; size < 4096; size += 31)
    ASSERT_FALSE(errorOfBytes(bytes.substr(0, size)).empty()) << "cut after " << size;
}

// A flipped byte is either noticed, or lies where nothing is kept (free space, a page's scratch
// fields, names of people): what is read never differs silently.
TEST_F(StoreTest, AFlippedByteNeverChangesWhatIsReadSilently) {
  const std::string bytes = slurp(good());
  const auto expected = readAll(good());
  const Closing closing = *Store(good()).closing();
  const SessionHeader header = Store(good()).header();
  std::size_t noticed = 0, tried = 0;
  const std::size_t stride = bytes.size() / 600;
  for (std::size_t at = 0; at < bytes.size(); at += stride, ++tried) {
    std::string flipped = bytes;
    flipped[at] = static_cast<char>(flipped[at] ^ (1 << (at % 8)));
    const auto file = folder_ / "flipped.cabsession";
    spill(file, flipped);
    std::vector<RecordedEvent> events;
    const auto message = errorOf([&] { events = readAll(file); });
    if (!message.empty()) {
      ++noticed;
      ASSERT_THAT(message, Not(HasSubstr("\n")));
      continue;
    }
    const Store store(file);
    ASSERT_EQ(events.size(), expected.size()) << "byte " << at;
    for (std::size_t i = 0; i < events.size(); ++i)
      ASSERT_TRUE(same(events[i], expected[i])) << "byte " << at << ", event " << i;
    ASSERT_EQ(store.closing(), closing) << "byte " << at;
    SessionHeader read = store.header();
    read.people = header.people;
    ASSERT_EQ(read, header) << "byte " << at;
  }
  EXPECT_GT(noticed, tried / 5);
}

TEST_F(StoreTest, ReadingChangesNothingInTheFile) {
  const std::string before = slurp(good());
  readAll(good());
  EXPECT_EQ(slurp(good()), before);
  EXPECT_THAT(folder_.names(), testing::ElementsAre("good.cabsession"));
}

TEST_F(StoreTest, ReadsNamesThatMeanSomethingInAnAddress) {
  const auto file = folder_ / "50% of a?b#c d\".cabsession";
  std::filesystem::copy_file(good(), file);
  EXPECT_EQ(readAll(file).size(), readAll(good()).size());
}

TEST_F(StoreTest, DoesNotApplyAJournalSomebodyLaidBesideAClosedSession) {
  const std::string before = slurp(good());
  spill(good().string() + "-journal", std::string(4096, '\x01'));
  EXPECT_FALSE(readAll(good()).empty());
  EXPECT_EQ(slurp(good()), before);
}

TEST_F(StoreTest, AnOlderListOfSignalsOpensAndTellsWhatItLacks) {
  const auto file = forged("UPDATE signal SET name = 'unheard.of' WHERE id = 0");
  const Store store(file);
  const unit::Signal first = unit::signalTable()[0].id;
  const unit::Signal second = unit::signalTable()[1].id;
  EXPECT_EQ(store.missingSignals(), std::vector<unit::Signal>{first});
  EXPECT_EQ((*store.findFrame(500))[first], 0.0F);
  EXPECT_EQ((*store.findFrame(500))[second], sampleFrame(500)[second]);
}

// Files made on purpose: every check value fits, and still they are nonsense.
TEST_F(StoreTest, RefusesForgedNonsense) {
  EXPECT_EQ(errorAfterForging("SELECT 1"), "");
  EXPECT_THAT(errorAfterForging("UPDATE frame SET tick = 5 WHERE tick = 500"),
              HasSubstr("contradicts itself: tick 5 after tick 490"));
  EXPECT_THAT(errorAfterForging("UPDATE frame SET tick = -10 WHERE seq = 1"),
              HasSubstr("contradicts itself: tick -10"));
  EXPECT_THAT(errorAfterForging("UPDATE state SET tick = 9000000000000 WHERE tick = 1200"),
              HasSubstr("contradicts itself: tick 9000000000000"));
  EXPECT_THAT(errorAfterForging("UPDATE action SET number = 77 WHERE number = 3"),
              HasSubstr("action 77 where action 3 belongs"));
  EXPECT_THAT(errorAfterForging("UPDATE frame SET is_key = 0 WHERE seq = 1"),
              HasSubstr("the first frame is not whole"));
  EXPECT_THAT(errorAfterForging("UPDATE frame SET is_key = 1 WHERE tick = 10"),
              HasSubstr("a key frame of"));
  EXPECT_THAT(errorAfterForging("UPDATE frame SET data = x'ffff7f01' WHERE tick = 10"),
              HasSubstr("a signal that does not exist"));
  EXPECT_THAT(errorAfterForging("UPDATE action SET text = '' WHERE number = 3"),
              HasSubstr("an action: "));
  EXPECT_THAT(errorAfterForging("UPDATE frame SET data = zeroblob(40000000) WHERE tick = 500"),
              HasSubstr("larger than any session holds"));
  EXPECT_THAT(errorAfterForging("UPDATE source SET text = hex(zeroblob(9000000)) WHERE id = 1; "
                                "UPDATE source SET text = hex(zeroblob(9000000)) WHERE id = 2"),
              HasSubstr("more text than any session"));
  EXPECT_THAT(errorAfterForging("UPDATE closing SET tick = 10"), HasSubstr("contradicts itself"));
}

}  // namespace
}  // namespace cabwright::session
