// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/signing_key.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sodium.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <fstream>
#include <system_error>

#include "session/digest.h"
#include "session/session_error.h"

namespace cabwright::session {
namespace fs = std::filesystem;
namespace {

constexpr std::string_view kFirstLine = "cabwright signing key 1\n";

[[noreturn]] void fail(const fs::path& file, int system_error) {
  throw SessionError(file.string() + ": " + std::generic_category().message(system_error));
}

// A descriptor that closes itself.
class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  [[nodiscard]] int operator*() const { return number_; }

 private:
  int number_;
};

std::string readKeyText(const fs::path& file) {
  const Descriptor in(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
  if (*in < 0) fail(file, errno);
  struct stat status {};
  if (::fstat(*in, &status) != 0) fail(file, errno);
  if (!S_ISREG(status.st_mode)) throw SessionError(file.string() + ": not a key file");
  if ((status.st_mode & 077U) != 0)
    throw SessionError(file.string() +
                       ": a signing key that others can read is none; give it mode 600");
  std::string text(200, '\0');
  const ssize_t size = ::read(*in, text.data(), text.size());
  if (size < 0) fail(file, errno);
  text.resize(static_cast<std::size_t>(size));
  return text;
}

// Complete under its name or not there at all: a link is the one call that gives a name and does
// not take it from somebody else.
void makeKeyFile(const fs::path& file) {
  Seed seed{};
  randombytes_buf(seed.data(), seed.size());
  std::string text = std::string(kFirstLine) + toHex(seed) + "\n";
  fs::path hidden = file;
  hidden.replace_filename(fmt::format(".{}.{}", file.filename().string(), ::getpid()));
  ::unlink(hidden.c_str());
  int fault = 0;
  {
    const Descriptor out(::open(hidden.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600));
    if (*out < 0) fail(file, errno);
    const ssize_t size = ::write(*out, text.data(), text.size());
    if (size < 0 || ::fsync(*out) != 0)
      fault = errno;
    else if (static_cast<std::size_t>(size) != text.size())
      fault = ENOSPC;
  }
  sodium_memzero(text.data(), text.size());
  sodium_memzero(seed.data(), seed.size());
  if (fault == 0 && ::link(hidden.c_str(), file.c_str()) != 0 && errno != EEXIST) fault = errno;
  ::unlink(hidden.c_str());
  if (fault != 0) fail(file, fault);
}

}  // namespace

SigningKey::SigningKey(const Seed& seed) {
  crypto_sign_seed_keypair(public_.data(), secret_.data(), seed.data());
}

SigningKey::~SigningKey() { sodium_memzero(secret_.data(), secret_.size()); }

SigningKey SigningKey::load(const fs::path& file) {
  std::string text = readKeyText(file);
  Seed seed{};
  const bool good =
      text.starts_with(kFirstLine) && text.ends_with('\n') &&
      readHex(std::string_view(text).substr(kFirstLine.size(), text.size() - kFirstLine.size() - 1),
              seed);
  sodium_memzero(text.data(), text.size());
  if (!good) throw SessionError(file.string() + ": not a key file");
  SigningKey key(seed);
  sodium_memzero(seed.data(), seed.size());
  return key;
}

SigningKey SigningKey::loadOrMake(const fs::path& folder) {
  if (folder.empty()) throw SessionError("station.key: no place for it (HOME is not set)");
  return loadOrMakeFile(folder / "station.key");
}

SigningKey SigningKey::loadOrMakeFile(const fs::path& file) {
  const fs::path folder = file.parent_path();
  std::error_code failed;
  if (!fs::exists(file, failed)) {
    fs::create_directories(folder.parent_path(), failed);
    if (!failed && ::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST) fail(file, errno);
    if (failed) throw SessionError(file.string() + ": " + failed.message());
    makeKeyFile(file);
  }
  return load(file);
}

Signature SigningKey::sign(std::span<const std::uint8_t> message) const {
  Signature signature{};
  crypto_sign_detached(signature.data(), nullptr, message.data(), message.size(), secret_.data());
  return signature;
}

bool isSignedBy(const PublicKey& key, std::span<const std::uint8_t> message,
                const Signature& signature) {
  return crypto_sign_verify_detached(signature.data(), message.data(), message.size(),
                                     key.data()) == 0;
}

fs::path userDataFolder() {
  // As the XDG base directory specification has it: a relative path there is to be ignored.
  const char* data = std::getenv("XDG_DATA_HOME");  // NOLINT: read before threads set any
  if (data != nullptr && fs::path(data).is_absolute()) return fs::path(data) / "cabwright";
  const char* home = std::getenv("HOME");  // NOLINT: as above
  if (home == nullptr || *home == '\0') return {};
  return fs::path(home) / ".local/share/cabwright";
}

TrustedKeys TrustedKeys::load(const fs::path& file) {
  std::error_code ignored;
  std::ifstream in(file);
  if (!fs::is_regular_file(file, ignored) || !in)
    throw SessionError(file.string() + ": cannot be read");
  TrustedKeys keys;
  std::string line;
  for (int number = 1; std::getline(in, line); ++number) {
    const auto from = line.find_first_not_of(" \t\r");
    if (from == std::string::npos || line[from] == '#') continue;
    PublicKey key{};
    const auto to = line.find_first_of(" \t\r", from);
    if (!readHex(line.substr(from, to == std::string::npos ? to : to - from), key))
      throw SessionError(fmt::format("{}:{}: no public key (64 hexadecimal digits and a name)",
                                     file.string(), number));
    const auto name = to == std::string::npos ? to : line.find_first_not_of(" \t\r", to);
    std::string words = name == std::string::npos ? "" : line.substr(name);
    while (!words.empty() && words.back() == '\r') words.pop_back();
    keys.add(key, std::move(words));
  }
  return keys;
}

void TrustedKeys::add(const PublicKey& key, std::string name) {
  keys_.push_back({key, std::move(name)});
}

std::optional<std::string> TrustedKeys::findName(const PublicKey& key) const {
  const auto known = std::ranges::find(keys_, key, &Known::key);
  if (known == keys_.end()) return std::nullopt;
  return known->name;
}

}  // namespace cabwright::session
