// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/passphrase.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sodium.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <system_error>
#include <utility>

namespace cabwright::session {
namespace fs = std::filesystem;
namespace {

constexpr int kFreeTries = 2;
constexpr std::int64_t kFirstDelay_s = 5, kMostDelay_s = 900;
constexpr int kMostWrong = 1'000'000;

std::string systemFault(const fs::path& file, int number) {
  return file.string() + ": " + std::generic_category().message(number);
}

// Two programs of one user wait for each other while a try is written down and looked at. Where the
// folder cannot be locked they do not, which costs nothing but a free try.
class FolderLock {
 public:
  explicit FolderLock(const fs::path& folder)
      : number_(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)) {
    if (number_ >= 0) (void)::flock(number_, LOCK_EX);
  }
  ~FolderLock() {
    if (number_ >= 0) ::close(number_);
  }
  FolderLock(const FolderLock&) = delete;
  FolderLock& operator=(const FolderLock&) = delete;

 private:
  int number_;
};

std::string makeHash(const SecretText& typed, HashCost cost) {
  std::array<char, crypto_pwhash_STRBYTES> hash{};
  const bool least = cost == HashCost::kLeast;
  const int failed =
      crypto_pwhash_str_alg(hash.data(), typed.text().data(), typed.text().size(),
                            least ? crypto_pwhash_OPSLIMIT_MIN : crypto_pwhash_OPSLIMIT_INTERACTIVE,
                            least ? crypto_pwhash_MEMLIMIT_MIN : crypto_pwhash_MEMLIMIT_INTERACTIVE,
                            crypto_pwhash_ALG_ARGON2ID13);
  return failed == 0 ? std::string(hash.data()) : std::string();
}

bool fitsHash(const std::string& hash, const SecretText& typed) {
  return crypto_pwhash_str_verify(hash.c_str(), typed.text().data(), typed.text().size()) == 0;
}

}  // namespace

SecretText::SecretText(std::string& typed) : text_(typed) {
  sodium_memzero(typed.data(), typed.size());
  typed.clear();
}

SecretText::~SecretText() { wipe(); }

// A short text stands inside the string itself: moving copies it, and the one left is wiped.
SecretText::SecretText(SecretText&& other) noexcept : text_(std::move(other.text_)) {
  other.wipe();
}

SecretText& SecretText::operator=(SecretText&& other) noexcept {
  if (this == &other) return *this;
  wipe();
  text_ = std::move(other.text_);
  other.wipe();
  return *this;
}

void SecretText::wipe() {
  text_.resize(text_.capacity());
  sodium_memzero(text_.data(), text_.size());
  text_.clear();
}

std::int64_t delayAfter(int wrong_tries) {
  if (wrong_tries <= kFreeTries) return 0;
  const int doublings = std::min(wrong_tries - kFreeTries - 1, 20);
  return std::min(kMostDelay_s, kFirstDelay_s << doublings);
}

Passphrase::Passphrase(fs::path file, HashCost cost) : file_(std::move(file)), cost_(cost) {
  if (sodium_init() < 0) fault_ = "the cryptographic library does not start";
}

// Line by line: what it is, the hash, how many wrong tries, when the last one was.
std::optional<Passphrase::Kept> Passphrase::load() const {
  fault_.clear();
  const int in = ::open(file_.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
  if (in < 0) {
    if (errno != ENOENT) fault_ = systemFault(file_, errno);
    return std::nullopt;
  }
  std::string text(1000, '\0');
  const ssize_t size = ::read(in, text.data(), text.size());
  ::close(in);
  text.resize(static_cast<std::size_t>(std::max<ssize_t>(size, 0)));
  std::array<char, crypto_pwhash_STRBYTES> hash{};
  long long wrong = 0, wrong_at = 0;
  // 127: one less than crypto_pwhash_STRBYTES.
  static_assert(crypto_pwhash_STRBYTES == 128);
  const int read = std::sscanf(text.c_str(), "cabwright lock 1\n%127[!-~]\n%lld\n%lld\n",  // NOLINT
                               hash.data(), &wrong, &wrong_at);
  if (read != 3 || wrong < 0 || wrong > kMostWrong) {
    fault_ = file_.string() + ": holds no passphrase that can be read";
    return std::nullopt;
  }
  return Kept{hash.data(), static_cast<int>(wrong), wrong_at};
}

// The whole text or the one before.
bool Passphrase::save(const Kept& kept) {
  const std::string text =
      fmt::format("cabwright lock 1\n{}\n{}\n{}\n", kept.hash, kept.wrong, kept.wrong_at_s);
  const fs::path hidden = fs::path(file_).replace_filename(fmt::format(".lock.{}", ::getpid()));
  ::unlink(hidden.c_str());
  const int out = ::open(hidden.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
  if (out < 0) {
    fault_ = systemFault(file_, errno);
    return false;
  }
  const bool written =
      ::write(out, text.data(), text.size()) == static_cast<ssize_t>(text.size()) &&
      ::fsync(out) == 0;
  int failed = written ? 0 : errno;
  ::close(out);
  if (failed == 0 && ::rename(hidden.c_str(), file_.c_str()) != 0) failed = errno;
  if (failed == 0) return true;
  ::unlink(hidden.c_str());
  fault_ = systemFault(file_, failed);
  return false;
}

bool Passphrase::isSet() const { return load().has_value() || !fault_.empty(); }

std::int64_t Passphrase::waitSeconds(std::int64_t now_s) const {
  const auto kept = load();
  if (!kept) return 0;
  const std::int64_t delay = delayAfter(kept->wrong);
  // A clock that was put back does not make it longer than the delay itself.
  return std::clamp<std::int64_t>(kept->wrong_at_s + delay - now_s, 0, delay);
}

Tried Passphrase::tryWith(const SecretText& typed, std::int64_t now_s) {
  const FolderLock lock(file_.parent_path());
  auto kept = load();
  if (!kept) return fault_.empty() ? Tried::kUnset : Tried::kFault;
  if (waitSeconds(now_s) > 0) {
    if (now_s >= kept->wrong_at_s) return Tried::kTooSoon;
    // The clock was put back: the delay runs from now on, not from a time that is to come.
    kept->wrong_at_s = now_s;
    return save(*kept) ? Tried::kTooSoon : Tried::kFault;
  }
  Kept counted = *kept;
  counted.wrong = std::min(kept->wrong + 1, kMostWrong);
  counted.wrong_at_s = now_s;
  if (!save(counted)) return Tried::kFault;
  if (typed.text().size() > kMostPassphraseBytes || !fitsHash(kept->hash, typed))
    return Tried::kWrong;
  kept->wrong = 0;
  return save(*kept) ? Tried::kRight : Tried::kFault;
}

Tried Passphrase::change(const SecretText& old, const SecretText& fresh, std::int64_t now_s) {
  const std::size_t size = fresh.text().size();
  if (size < kLeastPassphraseBytes || size > kMostPassphraseBytes) {
    fault_ =
        fmt::format("a passphrase has {} to {} bytes", kLeastPassphraseBytes, kMostPassphraseBytes);
    return Tried::kFault;
  }
  if (isSet()) {
    if (const Tried tried = tryWith(old, now_s); tried != Tried::kRight) return tried;
  }
  std::error_code failed;
  const fs::path folder = file_.parent_path();
  fs::create_directories(folder.parent_path(), failed);
  if (!failed && ::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST) {
    fault_ = systemFault(file_, errno);
    return Tried::kFault;
  }
  const FolderLock lock(folder);
  Kept kept;
  kept.hash = makeHash(fresh, cost_);
  if (kept.hash.empty()) {
    fault_ = "there is not enough memory to keep a passphrase safely";
    return Tried::kFault;
  }
  return save(kept) ? Tried::kRight : Tried::kFault;
}

Tried Passphrase::remove(const SecretText& old, std::int64_t now_s) {
  if (const Tried tried = tryWith(old, now_s); tried != Tried::kRight) return tried;
  if (::unlink(file_.c_str()) == 0) return Tried::kRight;
  fault_ = systemFault(file_, errno);
  return Tried::kFault;
}

}  // namespace cabwright::session
