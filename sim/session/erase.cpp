// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/erase.h"

#include "session/database.h"
#include "session/file_change.h"
#include "session/file_tail.h"
#include "session/session_error.h"
#include "session/verify.h"

namespace cabwright::session {

std::size_t erasePeople(const std::filesystem::path& file, const SigningKey& key) {
  foldJournal(file);
  FileChange change(file);
  const Verification found = verifySession(change.copy());
  const std::string name = file.string();
  if (found.standing == Standing::kAltered || found.standing == Standing::kNoSession)
    throw SessionError(name + ": " + found.findings.front());
  if (found.format < 2)
    throw SessionError(name +
                       ": recorded in format 1, which keeps names in its mark sheet as well");
  std::filesystem::resize_file(change.copy(), *findPagesEnd(change.copy()));
  Database database = Database::openOwnCopy(change.copy(), name);
  const auto count = static_cast<std::size_t>(database.integer("SELECT count(*) FROM person"));
  database.run("DELETE FROM person");
  database.close();
  if (found.seal) appendTail(change.copy(), found.session_id, key);
  change.commit();
  return count;
}

}  // namespace cabwright::session
