// SPDX-License-Identifier: GPL-3.0-or-later
// verify, seal, erase and key: whether a session is what was recorded, and what makes sure of it.
#include <fmt/format.h>

#include "console_commands.h"
#include "session/erase.h"
#include "session/personal_key.h"
#include "session/session_error.h"
#include "session/verify.h"

namespace cabwright::console {
namespace {

using session::Standing;
using session::Verification;

// Codes of their own, so that a script can tell the four apart.
int codeOf(Standing standing) {
  switch (standing) {
    case Standing::kWhole:
      return kPassed;
    case Standing::kAltered:
      return kAltered;
    case Standing::kNotSealed:
      return kNotSealed;
    case Standing::kNoSession:
      break;
  }
  return kBadInput;
}

std::string countNames(std::size_t count) {
  return fmt::format("{} {}", count, count == 1 ? "name" : "names");
}

std::string nameOf(const session::PublicKey& key, const std::optional<session::TrustedKeys>& keys) {
  const std::string hex = session::toHex(key);
  if (!keys) return "key " + hex;
  const auto name = keys->findName(key);
  return name ? fmt::format("{} (key {}...)", *name, hex.substr(0, 16))
              : "a key that is not among the trusted ones, " + hex;
}

void sayWhole(const Context& context, const Verification& found,
              const std::optional<session::TrustedKeys>& keys) {
  Output& out = context.output;
  out.putLine(toOneLine(fmt::format("  sealed {}, {} rows, by {}", wordOf(found.seal->how),
                                    found.seal->count, nameOf(found.seal->station, keys))));
  if (!found.has_end) out.putLine("  was cut off: it has no end and no mark sheet");
  if (found.erased_people > 0)
    out.putLine(fmt::format("  {} of those who took part {} erased",
                            countNames(found.erased_people),
                            found.erased_people == 1 ? "was" : "were"));
  for (const session::ReviewRow& row : found.review) {
    const std::string by =
        row.by.name.empty() ? "somebody whose name was erased" : row.by.role + " " + row.by.name;
    out.putLine(
        toOneLine(fmt::format("  added after the seal, entry {}: {} by {}, {}, signed by {}",
                              row.seq, row.kind, by, row.utc, nameOf(row.key, keys))));
  }
}

bool isAllTrusted(const Verification& found, const std::optional<session::TrustedKeys>& keys) {
  if (!keys) return true;
  bool all = keys->findName(found.seal->station).has_value();
  for (const session::ReviewRow& row : found.review) all = all && keys->findName(row.key);
  return all;
}

int sayVerification(const Context& context, const std::string& file, const Verification& found,
                    const std::optional<session::TrustedKeys>& keys) {
  Output& out = context.output;
  switch (found.standing) {
    case Standing::kNoSession:
      context.output.fault(file + ": " + found.findings.front());
      return kBadInput;
    case Standing::kNotSealed:
      out.putLine(toOneLine(file + ": not sealed"));
      out.putLine(fmt::format("  its {} rows fit each other{}", found.rows,
                              found.has_end ? "" : "; it was cut off"));
      if (found.is_assessment)
        out.putLine(
            "  an assessment is sealed when it ends: this one was cut off, or its seal was "
            "taken away");
      return kNotSealed;
    case Standing::kAltered:
      out.putLine(toOneLine(file + ": altered"));
      for (const std::string& finding : found.findings) out.putLine(toOneLine("  " + finding));
      return kAltered;
    case Standing::kWhole:
      break;
  }
  const bool trusted = isAllTrusted(found, keys);
  out.putLine(toOneLine(file + (trusted ? ": sealed and whole"
                                        : ": whole, but not every key that signed it is trusted")));
  sayWhole(context, found, keys);
  return trusted ? codeOf(found.standing) : kNotSealed;
}

session::SigningKey stationKey() {
  return session::SigningKey::loadOrMake(session::userDataFolder());
}

}  // namespace

int runVerify(const Context& context, const VerifyOptions& options) {
  try {
    std::optional<session::TrustedKeys> keys;
    if (options.trust) keys = session::TrustedKeys::load(*options.trust);
    return sayVerification(context, options.session, session::verifySession(options.session), keys);
  } catch (const session::SessionError& error) {
    context.output.fault(error.what());
    return kBadInput;
  }
}

int runSeal(const Context& context, const SealOptions& options) {
  try {
    session::sealSession(options.session, stationKey(), session::SealHow::kOnRequest);
    context.output.putLine(toOneLine(options.session + ": sealed"));
    return kPassed;
  } catch (const session::SessionError& error) {
    context.output.fault(error.what());
    return kBadInput;
  }
}

int runErase(const Context& context, const EraseOptions& options) {
  try {
    if (!options.is_sure) {
      context.output.fault(options.session +
                           ": erasing names cannot be undone; say --erase-names-for-good to do it");
      return kBadInput;
    }
    const std::size_t count = session::erasePeople(options.session, stationKey());
    context.output.putLine(
        toOneLine(fmt::format("{}: {} erased; what was written as free text was not looked into",
                              options.session, countNames(count))));
    return kPassed;
  } catch (const session::SessionError& error) {
    context.output.fault(error.what());
    return kBadInput;
  }
}

int runKey(const Context& context) {
  try {
    context.output.putLine(session::toHex(stationKey().publicKey()) + " this station");
    const session::PersonalKeys people = session::findPersonalKeys(session::userDataFolder());
    for (const session::PersonalKey& person : people.keys)
      context.output.putLine(toOneLine(session::toHex(person.key) + " " + person.name));
    for (const std::string& fault : people.faults) context.output.fault(fault);
    return people.faults.empty() ? kPassed : kBadInput;
  } catch (const session::SessionError& error) {
    context.output.fault(error.what());
    return kBadInput;
  }
}

}  // namespace cabwright::console
