// SPDX-License-Identifier: GPL-3.0-or-later
// Reading what was added to a session, adding to it by the rules of an assessment, and the mark
// sheet with all of it on.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "marking/sheet.h"
#include "review/entry.h"
#include "session/store.h"

namespace cabwright::review {

/// In the order in which they were added. Whether they hold is told by session::verifySession().
/// Throws SessionError when an entry is none of its kind.
[[nodiscard]] std::vector<Entry> readEntries(const session::Store& store);

/// Why this may not be added after those, in one sentence; empty when it may:
///   override, blind mark   of a line the sheet has; an override needs a reason, and an assessor
///   self-rating            by the trainee, once, and before the score was shown or decided
///   decision               by an assessor; needs a reason when it is not what the sheet says
///   signature              by an assessor after a decision, or by trainee or instructor
[[nodiscard]] std::optional<std::string> findEntryFault(const session::Closing& closing,
                                                        const std::vector<Entry>& before,
                                                        const session::Person& by,
                                                        const Content& content);

/// Adds entries to a sealed session that is whole, all or none; the old verdict of an override is
/// filled in. Throws SessionError: a fault as above, or what session::appendReview() throws.
void addEntries(const std::filesystem::path& file, const session::Person& by,
                std::vector<Content> contents, const session::SigningKey& key,
                const std::string& utc = session::currentUtc());

/// Puts overrides on the sheet, the last of each line counting, and settles it anew. The automatic
/// verdicts stay where they are.
void applyOverrides(marking::MarkSheet& sheet, const marking::RuleSet& rules,
                    const std::vector<Entry>& entries);

/// The last decision; empty without one.
[[nodiscard]] std::optional<Entry> findDecision(const std::vector<Entry>& entries);

/// A session marked again, with what was added to it.
struct Reviewed {
  marking::MarkSheet sheet;  ///< with overrides
  bool complete = false;
  std::vector<Entry> entries;
};
/// Throws SessionError as session::markAgain() and readEntries().
[[nodiscard]] Reviewed reviewSession(const session::Store& store);

}  // namespace cabwright::review
