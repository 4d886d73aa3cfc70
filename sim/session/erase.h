// SPDX-License-Identifier: GPL-3.0-or-later
// Taking what identifies people out of a session. Seal and rows stay what they were.
#pragma once

#include <cstdint>
#include <filesystem>

#include "session/signing_key.h"

namespace cabwright::session {

/// Erases all names with their salts, of those who took part and of those who added something
/// later; gives how many. What was written as free text (remarks, comments, reasons) is not looked
/// into. The bytes are overwritten in the file; older copies of it elsewhere are not known here.
/// The key makes the last bytes of a sealed file anew. Throws SessionError: it was altered, is
/// still being recorded, or is of format 1, which keeps names in its mark sheet as well.
std::size_t erasePeople(const std::filesystem::path& file, const SigningKey& key);

}  // namespace cabwright::session
