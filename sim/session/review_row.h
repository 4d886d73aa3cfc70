// SPDX-License-Identifier: GPL-3.0-or-later
// What was added to a session after its seal: entries with a chain of their own that begins with
// the seal, each signed. What the entries mean is known to the room above (review/).
//
//   r0 = SHA-256(magic | signature of the seal)
//   rn = SHA-256(r(n-1) | seq | 0 | 'r' | length | utc, kind, person, mark, body)
//   signed: a domain string, session id, seq, rn
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "session/digest.h"
#include "session/record.h"
#include "session/signing_key.h"

namespace cabwright::session {

class Database;
class Store;
struct KnownPerson;
struct Seal;

struct ReviewRow {
  std::int64_t seq = 0;     ///< 1, 2, 3 ...
  std::string utc;          ///< RFC 3339
  std::string kind;         ///< "override", "rating" ...
  std::int64_t person = 0;  ///< who said it: their row in the table of people
  Digest mark{};            ///< what stands for that person
  std::string body;         ///< JSON
  Digest last{};            ///< rn
  PublicKey key{};
  Signature signature{};
  /// Not signed: as the table of people has it; empty when it was erased.
  Person by;
  bool operator==(const ReviewRow&) const = default;
};

/// How many entries a session may hold.
inline constexpr std::size_t kMostReviewRows = 10'000;

/// As they stand. Throws SessionError for rows that are none, and when somebody named there is not
/// whom the mark stands for.
[[nodiscard]] std::vector<ReviewRow> loadReview(Database& database,
                                                const std::vector<KnownPerson>& people);

/// Number of the first row that does not follow from the seal and the rows before it, or whose
/// signature is not good; 0 when all do.
[[nodiscard]] std::int64_t findBrokenReviewRow(std::string_view session_id, const Seal& seal,
                                               const std::vector<ReviewRow>& rows);

/// What is to be added. `by` is taken for somebody in the table of people when role and name are
/// the same, else a row is made.
struct NewReviewRow {
  std::string utc, kind, body;
  Person by;
};

/// Adds entries to a sealed session that is whole, all or none. Throws SessionError: it is not
/// sealed, was altered, somebody else is at it, no room.
void appendReview(const std::filesystem::path& file, const std::vector<NewReviewRow>& rows,
                  const SigningKey& key);

/// What is to be added, made from the session as it is when nobody else can add to it any more. May
/// throw SessionError to add nothing.
using MakeReviewRows = std::function<std::vector<NewReviewRow>(const Store& store)>;
void appendReview(const std::filesystem::path& file, const MakeReviewRows& make_rows,
                  const SigningKey& key);

}  // namespace cabwright::session
