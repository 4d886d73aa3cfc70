// SPDX-License-Identifier: GPL-3.0-or-later
// The last bytes of a sealed file: a digest of all bytes before them, signed.
//
// The chain speaks of rows. A database also has room that holds no row, and there a byte can be
// changed that no row misses. The tail tells of those as well, and of bytes put behind the end, at
// one reading of the file. It stands behind the last page, where SQLite does not look, and is made
// anew by everything that rightly changes the file (a review entry, the erasing of a name).
//
//   16 bytes "CABWRIGHT TAIL 2", 8 bytes size of what is before, 32 bytes SHA-256 of it,
//   32 bytes public key, 64 bytes signature over a domain string, the session id, size and digest
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "session/digest.h"
#include "session/signing_key.h"

namespace cabwright::session {

inline constexpr std::size_t kTailBytes = 16 + 8 + 32 + 32 + 64;

enum class TailState : std::uint8_t {
  kNone,      ///< nothing stands behind the last page
  kFits,      ///< every byte is as it was signed
  kChanged,   ///< bytes before the tail are not those that were signed
  kShorter,   ///< the file ends before its last page does
  kLonger,    ///< there is more behind the tail
  kUnsigned,  ///< what stands behind the last page is no tail, or its signature is not good
};

struct TailCheck {
  TailState state = TailState::kNone;
  PublicKey key{};              ///< of kFits and kChanged
  std::int64_t difference = 0;  ///< bytes too many or too few
};

/// Reads all of the file. Throws SessionError when it cannot be read.
[[nodiscard]] TailCheck checkTail(const std::filesystem::path& file, std::string_view session_id);

/// Where the last page ends, as the file's own head says; empty when that is no SQLite file.
[[nodiscard]] std::optional<std::uintmax_t> findPagesEnd(const std::filesystem::path& file);

/// Whether the file ends in something that looks like a tail, whatever else it is.
[[nodiscard]] bool endsInTail(const std::filesystem::path& file);

/// Puts a tail behind a file that has none. Throws SessionError.
void appendTail(const std::filesystem::path& file, std::string_view session_id,
                const SigningKey& key);

}  // namespace cabwright::session
