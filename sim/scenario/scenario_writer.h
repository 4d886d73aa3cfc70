// SPDX-License-Identifier: GPL-3.0-or-later
// Writes scenario files. What was read is changed line by line: comments, order, spacing and all
// that did not change stay to the byte. What is new stands where people put it.
#pragma once

#include <optional>
#include <string>

#include "scenario/draft.h"
#include "scenario/library.h"
#include "scenario/rule_text.h"

namespace cabwright::scenario {

/// The text of the file. Of a draft that says what its original says: the original.
[[nodiscard]] std::string writeDraft(const Draft& draft);

/// All that the reader of scenarios finds wrong, with line and column in the text that would be
/// saved; `name` is what the file is called there.
[[nodiscard]] FileFaults findDraftFaults(const Draft& draft, const std::string& name,
                                         const Library& library, const RuleCheck& check = {});

/// Writes a text file whole or not at all: what was there stays until all of it is on the disk.
/// Makes the folder. Gives what hinders.
[[nodiscard]] std::optional<FileFault> saveText(const std::string& path, const std::string& text);

}  // namespace cabwright::scenario
