// SPDX-License-Identifier: GPL-3.0-or-later
// The key of one person who signs: an assessor's own, beside the key of the station. It lies in the
// folder "people" in the user's data folder, for its owner alone, under the person's name; so a
// name says which key, and nothing else has to be kept.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "session/signing_key.h"

namespace cabwright::session {

/// The longest name a key can have, bytes.
inline constexpr std::size_t kLongestKeyName = 80;

/// Where the key of that person lies. What a file cannot be called is written as %xx. Throws
/// SessionError for a name that is blank or too long, and when the folder is empty.
[[nodiscard]] std::filesystem::path personalKeyFile(const std::filesystem::path& data_folder,
                                                    std::string_view name);

/// Makes it when it is not there yet (folders 0700, file 0600). Throws SessionError.
[[nodiscard]] SigningKey loadOrMakePersonalKey(const std::filesystem::path& data_folder,
                                               std::string_view name);

struct PersonalKey {
  std::string name;
  PublicKey key{};
};
struct PersonalKeys {
  std::vector<PersonalKey> keys;    ///< by name
  std::vector<std::string> faults;  ///< files that are none, each in one line
};
/// All of this user; none when the folder is not there.
[[nodiscard]] PersonalKeys findPersonalKeys(const std::filesystem::path& data_folder);

/// What people compare: the first 16 hexadecimal digits in fours, "9f3c 71ab 2233 4455".
[[nodiscard]] std::string fingerprintOf(const PublicKey& key);

}  // namespace cabwright::session
