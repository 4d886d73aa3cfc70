// SPDX-License-Identifier: GPL-3.0-or-later
// A passphrase that keeps one room of a shared machine for those who know it. Kept as an Argon2id
// hash in a file for its owner alone; what is typed is wiped from memory as soon as it was looked
// at.
//
// Wrong tries slow down: two are free, from the third on nobody is listened to for 5 s, 10 s, 20 s
// ... at most a quarter of an hour, whoever asks and whether or not the program was started anew. A
// try is written down before it is looked at, so that ending the program does not undo it.
//
// It keeps honest people out of a window. Whoever can delete or change the file, or read the
// session files themselves, is not kept from anything: no more is promised.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

namespace cabwright::session {

/// What somebody typed. Wiped when it is gone; moved, not copied.
class SecretText {
 public:
  SecretText() = default;
  /// Takes the characters and wipes those it was given.
  explicit SecretText(std::string& typed);
  ~SecretText();
  SecretText(SecretText&& other) noexcept;
  SecretText& operator=(SecretText&& other) noexcept;
  SecretText(const SecretText&) = delete;
  SecretText& operator=(const SecretText&) = delete;
  [[nodiscard]] const std::string& text() const { return text_; }
  [[nodiscard]] bool empty() const { return text_.empty(); }

 private:
  void wipe();
  std::string text_;
};

enum class Tried : std::uint8_t {
  kRight,
  kWrong,
  kTooSoon,  ///< not looked at: see waitSeconds()
  kUnset,    ///< there is no passphrase
  kFault,    ///< the file cannot be read or written: see Passphrase::fault()
};

/// How hard a hash is to make. The least is for tests.
enum class HashCost : std::uint8_t { kLeast, kUsual };

inline constexpr std::size_t kLeastPassphraseBytes = 8, kMostPassphraseBytes = 1000;

/// After so many wrong tries in a row nobody is listened to for so long, seconds.
[[nodiscard]] std::int64_t delayAfter(int wrong_tries);

/// Times are seconds of any clock that goes on between two starts of the program, as of 1970.
class Passphrase {
 public:
  /// The file need not be there: then none is set.
  explicit Passphrase(std::filesystem::path file, HashCost cost = HashCost::kUsual);

  /// There is one, or a file that should hold one and cannot be read: both keep the door shut.
  [[nodiscard]] bool isSet() const;
  [[nodiscard]] const std::filesystem::path& file() const { return file_; }
  /// Why the file cannot be read or written, in one line; empty: it can.
  [[nodiscard]] const std::string& fault() const { return fault_; }
  /// How long from `now_s` on nobody is listened to; 0: ask.
  [[nodiscard]] std::int64_t waitSeconds(std::int64_t now_s) const;

  /// Looks whether it is the one, slowly by intent.
  [[nodiscard]] Tried tryWith(const SecretText& typed, std::int64_t now_s);
  /// Puts a new one in place of the old; without one set, `old` is not looked at. kRight: it is
  /// done. Fails with kFault when the new one is too short or too long.
  [[nodiscard]] Tried change(const SecretText& old, const SecretText& fresh, std::int64_t now_s);
  /// Takes it away.
  [[nodiscard]] Tried remove(const SecretText& old, std::int64_t now_s);

 private:
  struct Kept {
    std::string hash;
    int wrong = 0;
    std::int64_t wrong_at_s = 0;
  };
  [[nodiscard]] std::optional<Kept> load() const;  ///< empty: there is no file; sets the fault
  bool save(const Kept& kept);
  std::filesystem::path file_;
  HashCost cost_;
  mutable std::string fault_;
};

}  // namespace cabwright::session
