// SPDX-License-Identifier: GPL-3.0-or-later
// Ed25519 signatures (RFC 8032) and the key a station or an assessor signs with.
//
// A key made here proves one thing: what was signed has not been changed since by anybody who does
// not have the key file. Who has it can sign anything; so a trainee's account must not be able to
// read the file of the station, and a court of last resort compares public keys (TrustedKeys).
#pragma once

#include <array>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace cabwright::session {

using PublicKey = std::array<std::uint8_t, 32>;
using Signature = std::array<std::uint8_t, 64>;
using Seed = std::array<std::uint8_t, 32>;

class SigningKey {
 public:
  explicit SigningKey(const Seed& seed);
  ~SigningKey();  // leaves nothing of it in memory
  SigningKey(const SigningKey&) = default;
  SigningKey& operator=(const SigningKey&) = default;

  /// From a key file, which nobody but its owner may be able to read. Throws SessionError.
  static SigningKey load(const std::filesystem::path& file);
  /// The file station.key in this folder; makes both when they are not there yet, for the owner
  /// alone (0700, 0600). Several programs may do so at once and get the same. Throws SessionError.
  static SigningKey loadOrMake(const std::filesystem::path& folder);
  /// The same with a file of this name.
  static SigningKey loadOrMakeFile(const std::filesystem::path& file);

  [[nodiscard]] const PublicKey& publicKey() const { return public_; }
  [[nodiscard]] Signature sign(std::span<const std::uint8_t> message) const;

 private:
  PublicKey public_{};
  std::array<std::uint8_t, 64> secret_{};
};

[[nodiscard]] bool isSignedBy(const PublicKey& key, std::span<const std::uint8_t> message,
                              const Signature& signature);

/// Where this user's programs keep what lasts: XDG_DATA_HOME, or HOME/.local/share, and cabwright
/// in it. Empty when neither variable is set.
[[nodiscard]] std::filesystem::path userDataFolder();

/// Public keys of stations and assessors one knows. A text file: on each line a key as 64
/// hexadecimal digits and a name; empty lines and those that begin with # are left out.
class TrustedKeys {
 public:
  TrustedKeys() = default;
  /// Throws SessionError with file and line.
  static TrustedKeys load(const std::filesystem::path& file);
  void add(const PublicKey& key, std::string name);
  /// The name; empty for a key that is not among them.
  [[nodiscard]] std::optional<std::string> findName(const PublicKey& key) const;

 private:
  struct Known {
    PublicKey key;
    std::string name;
  };
  std::vector<Known> keys_;
};

}  // namespace cabwright::session
