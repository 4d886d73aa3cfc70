// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/review_row.h"

#include <algorithm>

#include "session/database.h"
#include "session/file_change.h"
#include "session/file_tail.h"
#include "session/payload.h"
#include "session/schema.h"
#include "session/session_error.h"
#include "session/store.h"
#include "session/store_checks.h"
#include "session/verify.h"

namespace cabwright::session {
namespace {

constexpr std::size_t kMostReviewBytes = std::size_t{32} << 20;

template <std::size_t N>
bool copyExactly(std::span<const std::uint8_t> from, std::array<std::uint8_t, N>& to) {
  if (from.size() != N) return false;
  std::ranges::copy(from, to.begin());
  return true;
}

Digest startOf(const Seal& seal) {
  return Sha256().add(std::string_view("Cabwright review 2")).add(seal.signature).finish();
}

Digest follow(const Digest& before, const ReviewRow& row) {
  Payload payload;
  payload.add(std::string_view(row.utc));
  payload.add(std::string_view(row.kind));
  payload.add(row.person);
  payload.add(std::span<const std::uint8_t>(row.mark));
  payload.add(std::string_view(row.body));
  return Sha256()
      .add(before)
      .add(row.seq)
      .add(std::int64_t{0})
      .add(std::uint8_t{'r'})
      .add(static_cast<std::int64_t>(payload.bytes().size()))
      .add(payload.bytes())
      .finish();
}

std::vector<std::uint8_t> messageOf(std::string_view session_id, const ReviewRow& row) {
  Payload message;
  message.add(std::string_view("Cabwright review entry 2"));
  message.add(session_id);
  message.add(row.seq);
  message.add(std::span<const std::uint8_t>(row.last));
  return {message.bytes().begin(), message.bytes().end()};
}

ReviewRow readRow(const Database& database, const Statement& row) {
  ReviewRow entry;
  entry.seq = row.integer(0);
  entry.utc = row.text(1);
  entry.kind = row.text(2);
  entry.person = row.integer(3);
  entry.body = row.text(5);
  if (!copyExactly(row.bytes(4), entry.mark) || !copyExactly(row.bytes(6), entry.last) ||
      !copyExactly(row.bytes(7), entry.key) || !copyExactly(row.bytes(8), entry.signature))
    throw SessionError(database.name() + ": damaged: an entry added later is none");
  return entry;
}

struct Author {
  std::int64_t id = 0;
  Digest mark{};
};

// A person's row, made when there is none. The numbers of those who were erased are not given to
// others: entries still bear them.
Author takeAuthor(Database& database, const Person& person, std::int64_t least_new_id) {
  if (!fits(person)) throw SessionError(database.name() + ": a name is longer than any");
  Statement known(database, "SELECT id, salt FROM person WHERE role = ?1 AND name = ?2");
  known.bind(1, std::string_view(person.role)).bind(2, std::string_view(person.name));
  Salt salt{};
  if (known.step() && copyExactly(known.bytes(1), salt))
    return {known.integer(0), calcPersonMark(salt, person)};
  salt = makeSalt();
  const std::int64_t id =
      std::max(least_new_id, database.integer("SELECT max(id) FROM person") + 1);
  Statement put(database, "INSERT INTO person(id, role, name, salt) VALUES(?1, ?2, ?3, ?4)");
  put.bind(1, id).bind(2, std::string_view(person.role)).bind(3, std::string_view(person.name));
  put.bind(4, salt).run();
  return {id, calcPersonMark(salt, person)};
}

void putRow(Database& database, const ReviewRow& row) {
  Statement put(database,
                "INSERT INTO review(seq, utc, kind, person, mark, body, last, key, signature) "
                "VALUES(?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)");
  put.bind(1, row.seq).bind(2, std::string_view(row.utc)).bind(3, std::string_view(row.kind));
  put.bind(4, row.person).bind(5, row.mark).bind(6, std::string_view(row.body));
  put.bind(7, row.last).bind(8, row.key).bind(9, row.signature).run();
}

std::int64_t leastNewId(const Store& store) {
  auto id = static_cast<std::int64_t>(store.header().people.size() + store.erasedPeople());
  for (const ReviewRow& row : store.review()) id = std::max(id, row.person);
  return id + 1;
}

void putAll(Database& database, const Store& before, const std::vector<NewReviewRow>& rows,
            const SigningKey& key) {
  Digest last = before.review().empty() ? startOf(*before.seal()) : before.review().back().last;
  auto seq = static_cast<std::int64_t>(before.review().size());
  for (const NewReviewRow& given : rows) {
    const Author author = takeAuthor(database, given.by, leastNewId(before));
    ReviewRow row{++seq,      given.utc, given.kind,      author.id, author.mark,
                  given.body, {},        key.publicKey(), {},        given.by};
    row.last = last = follow(last, row);
    row.signature = key.sign(messageOf(before.header().session_id, row));
    putRow(database, row);
  }
}

}  // namespace

std::vector<ReviewRow> loadReview(Database& database, const std::vector<KnownPerson>& people) {
  std::vector<ReviewRow> rows;
  std::size_t bytes = 0;
  Statement all(database,
                "SELECT seq, utc, kind, person, mark, body, last, key, signature "
                "FROM review ORDER BY seq");
  while (all.step()) {
    bytes += all.bytes(5).size();
    if (rows.size() >= kMostReviewRows || bytes > kMostReviewBytes)
      throw SessionError(database.name() + ": holds more entries than any session");
    ReviewRow row = readRow(database, all);
    const auto by = std::ranges::find(people, row.person, &KnownPerson::id);
    if (by != people.end() && by->mark != row.mark)
      throw SessionError(database.name() +
                         ": damaged: a name beside an entry added later was changed");
    if (by != people.end()) row.by = by->person;
    rows.push_back(std::move(row));
  }
  return rows;
}

std::int64_t findBrokenReviewRow(std::string_view session_id, const Seal& seal,
                                 const std::vector<ReviewRow>& rows) {
  Digest last = startOf(seal);
  std::int64_t seq = 0;
  for (const ReviewRow& row : rows) {
    ++seq;
    last = follow(last, row);
    if (row.seq != seq || row.last != last ||
        !isSignedBy(row.key, messageOf(session_id, row), row.signature))
      return seq;
  }
  return 0;
}

void appendReview(const std::filesystem::path& file, const MakeReviewRows& make_rows,
                  const SigningKey& key) {
  FileChange change(file);
  requireWhole(change.copy(), file.string());
  std::filesystem::resize_file(change.copy(), *findPagesEnd(change.copy()));  // the tail comes anew
  const Store before(change.copy());
  const std::vector<NewReviewRow> rows = make_rows(before);
  std::size_t bytes = 0;
  for (const ReviewRow& row : before.review()) bytes += row.body.size();
  for (const NewReviewRow& row : rows) bytes += row.body.size();
  if (before.review().size() + rows.size() > kMostReviewRows || bytes > kMostReviewBytes)
    throw SessionError(file.string() + ": holds as many entries as a session can");
  Database database = Database::openOwnCopy(change.copy(), file.string());
  database.run("BEGIN");
  putAll(database, before, rows, key);
  database.run("COMMIT");
  database.close();
  appendTail(change.copy(), before.header().session_id, key);
  change.commit();
}

void appendReview(const std::filesystem::path& file, const std::vector<NewReviewRow>& rows,
                  const SigningKey& key) {
  appendReview(
      file, [&rows](const Store&) { return rows; }, key);
}

}  // namespace cabwright::session
