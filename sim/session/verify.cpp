// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/verify.h"

#include <fmt/format.h>

#include "session/file_tail.h"
#include "session/session_error.h"
#include "session/store.h"
#include "session/store_checks.h"

namespace cabwright::session {
namespace fs = std::filesystem;
namespace {

std::string withoutName(const std::string& what, const std::string& name) {
  return what.starts_with(name + ": ") ? what.substr(name.size() + 2) : what;
}

void checkSeal(Verification& found, const ChainEnd& end) {
  const Seal& seal = *found.seal;
  if (!isSignedBy(seal.station, sealMessage(found.session_id, seal.how, seal.count, seal.last),
                  seal.signature))
    found.findings.emplace_back("the signature of its seal is not good");
  if (end.count < seal.count)
    found.findings.push_back(
        fmt::format("cut off after row {}: it was sealed with {} rows", end.count, seal.count));
  else if (end.count > seal.count)
    found.findings.push_back(
        fmt::format("rows were added: row {} and what follows were not there when it was sealed "
                    "with {} rows",
                    seal.count + 1, seal.count));
  else if (end.last != seal.last)
    found.findings.emplace_back(
        "its rows are not those that were sealed, though their check values were made to fit");
}

void checkReview(Verification& found) {
  if (!found.seal) {
    if (!found.review.empty())
      found.findings.emplace_back("entries were added though it has no seal");
    return;
  }
  if (const auto seq = findBrokenReviewRow(found.session_id, *found.seal, found.review); seq != 0)
    found.findings.push_back(
        fmt::format("entry {} of those added after the seal was changed, or "
                    "one before it is missing",
                    seq));
}

std::string describe(const TailCheck& tail) {
  switch (tail.state) {
    case TailState::kNone:
      return "its last bytes are missing: it was cut off at its end";
    case TailState::kShorter:
      return fmt::format(
          "{} missing at its end",
          tail.difference == 1 ? "1 byte is" : fmt::format("{} bytes are", tail.difference));
    case TailState::kLonger:
      return fmt::format(
          "{} added behind its end",
          tail.difference == 1 ? "1 byte was" : fmt::format("{} bytes were", tail.difference));
    case TailState::kChanged:
      return "bytes were changed that belong to no row";
    case TailState::kUnsigned:
      return "its last bytes were changed or cut off";
    case TailState::kFits:
      break;
  }
  return {};
}

void checkBytes(Verification& found, const fs::path& file) {
  const TailCheck tail = checkTail(file, found.session_id);
  if (found.seal) {
    // One finding is enough where a row tells more.
    const bool told = tail.state == TailState::kChanged && !found.findings.empty();
    if (tail.state != TailState::kFits && !told) found.findings.push_back(describe(tail));
    return;
  }
  if (tail.state == TailState::kNone) return;
  if (tail.state == TailState::kFits || tail.state == TailState::kChanged)
    found.findings.emplace_back("its seal was taken away");
  else
    found.findings.push_back(describe(tail));
}

// Rows of the session and of the head; findings say where it stops fitting.
void readAll(Verification& found, const fs::path& file) {
  const Store store(file);
  found.format = store.formatVersion();
  found.session_id = store.header().session_id;
  found.seal = store.seal();
  found.review = store.review();
  found.is_assessment = store.header().run_mode == scenario::Mode::kAssessment;
  found.has_end = store.closing().has_value();
  found.erased_people = store.erasedPeople();
  Store::Reader reader = store.read();
  try {
    while (reader.next()) found.rows = reader.chainEnd().count;
    found.rows = reader.chainEnd().count;
    if (found.seal) checkSeal(found, reader.chainEnd());
  } catch (const SessionError& error) {
    found.findings.push_back(withoutName(error.what(), file.string()));
  }
  checkReview(found);
}

bool looksSealed(const fs::path& file) {
  try {
    return endsInTail(file);
  } catch (const SessionError&) {
    return false;
  }
}

}  // namespace

Verification verifySession(const fs::path& file) {
  Verification found;
  try {
    checkOutside(file);
  } catch (const SessionError& error) {
    found.findings.push_back(withoutName(error.what(), file.string()));
    std::error_code ignored;
    if (fs::is_regular_file(file, ignored) && looksSealed(file))
      found.standing = Standing::kAltered;
    return found;
  }
  try {
    readAll(found, file);
    checkBytes(found, file);
    if (!found.findings.empty())
      found.standing = Standing::kAltered;
    else
      found.standing = found.seal ? Standing::kWhole : Standing::kNotSealed;
  } catch (const SessionError& error) {
    found.findings.push_back(withoutName(error.what(), file.string()));
    found.standing = Standing::kAltered;
  }
  return found;
}

void requireWhole(const fs::path& file, const std::string& name) {
  const Verification found = verifySession(file);
  if (found.standing == Standing::kWhole) return;
  if (found.standing == Standing::kNotSealed) throw SessionError(name + ": is not sealed");
  throw SessionError(name + ": was altered: " + found.findings.front());
}

}  // namespace cabwright::session
