// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/file_tail.h"

#include <algorithm>
#include <array>
#include <bit>
#include <fstream>
#include <system_error>
#include <vector>

#include "session/payload.h"
#include "session/session_error.h"

namespace cabwright::session {
namespace fs = std::filesystem;
namespace {

constexpr std::string_view kMagic = "CABWRIGHT TAIL 2";
constexpr std::string_view kDomain("Cabwright bytes 2\0", 18);
using TailBytes = std::array<std::uint8_t, kTailBytes>;

Digest digestOf(std::ifstream& in, std::uintmax_t size) {
  Sha256 digest;
  std::vector<char> buffer(std::size_t{1} << 16);
  in.clear();
  in.seekg(0);
  while (size > 0) {
    in.read(buffer.data(),
            static_cast<std::streamsize>(std::min<std::uintmax_t>(size, buffer.size())));
    const auto got = static_cast<std::size_t>(in.gcount());
    if (got == 0) break;
    digest.add({reinterpret_cast<const std::uint8_t*>(buffer.data()), got});
    size -= got;
  }
  return digest.finish();
}

std::vector<std::uint8_t> messageOf(std::string_view session_id, std::int64_t size,
                                    const Digest& digest) {
  Payload message;
  message.add(kDomain);
  message.add(session_id);
  message.add(size);
  message.add(std::span<const std::uint8_t>(digest));
  return {message.bytes().begin(), message.bytes().end()};
}

std::int64_t readNumber(std::span<const std::uint8_t> bytes) {
  std::uint64_t number = 0;
  for (std::size_t i = 0; i < 8; ++i) number |= std::uint64_t{bytes[i]} << (8 * i);
  return std::bit_cast<std::int64_t>(number);
}

bool readAt(std::ifstream& in, std::uintmax_t at, std::span<std::uint8_t> bytes) {
  in.clear();
  in.seekg(static_cast<std::streamoff>(at));
  in.read(reinterpret_cast<char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
  return in.gcount() == static_cast<std::streamsize>(bytes.size());
}

std::ifstream openToRead(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  if (!in) throw SessionError(file.string() + ": cannot be read (no permission?)");
  return in;
}

std::uintmax_t sizeOf(const fs::path& file) {
  std::error_code failed;
  const std::uintmax_t size = fs::file_size(file, failed);
  if (failed) throw SessionError(file.string() + ": " + failed.message());
  return size;
}

std::optional<std::uintmax_t> pagesEnd(std::ifstream& in) {
  std::array<std::uint8_t, 100> head{};
  static constexpr std::string_view kSqlite("SQLite format 3\0", 16);
  if (!readAt(in, 0, head) || !std::equal(kSqlite.begin(), kSqlite.end(), head.begin()))
    return std::nullopt;
  const std::uintmax_t page = std::uintmax_t{head[16]} << 8 | head[17];
  std::uintmax_t pages = 0;
  for (std::size_t i = 28; i < 32; ++i) pages = pages << 8 | head[i];
  return pages * (page == 1 ? 65536 : page);
}

// The rest of a tail once its place is known.
TailCheck judge(std::ifstream& in, std::string_view session_id, std::uintmax_t end,
                const TailBytes& tail) {
  TailCheck check;
  check.state = TailState::kUnsigned;
  if (!std::equal(kMagic.begin(), kMagic.end(), tail.begin())) return check;
  const std::span<const std::uint8_t> rest = std::span(tail).subspan(kMagic.size());
  const std::int64_t size = readNumber(rest);
  Digest digest{};
  Signature signature{};
  std::ranges::copy(rest.subspan(8, 32), digest.begin());
  std::ranges::copy(rest.subspan(40, 32), check.key.begin());
  std::ranges::copy(rest.subspan(72, 64), signature.begin());
  if (!isSignedBy(check.key, messageOf(session_id, size, digest), signature)) return check;
  const bool fits = size == static_cast<std::int64_t>(end) && digest == digestOf(in, end);
  check.state = fits ? TailState::kFits : TailState::kChanged;
  return check;
}

}  // namespace

std::optional<std::uintmax_t> findPagesEnd(const fs::path& file) {
  std::ifstream in = openToRead(file);
  return pagesEnd(in);
}

TailCheck checkTail(const fs::path& file, std::string_view session_id) {
  std::ifstream in = openToRead(file);
  const std::uintmax_t size = sizeOf(file);
  const auto end = pagesEnd(in);
  if (!end) throw SessionError(file.string() + ": not a session file");
  TailCheck check;
  if (size < *end) {
    check.state = TailState::kShorter;
    check.difference = static_cast<std::int64_t>(*end - size);
    return check;
  }
  if (size == *end) return check;
  TailBytes tail{};
  if (!readAt(in, *end, tail)) {
    check.state = TailState::kUnsigned;
    check.difference = static_cast<std::int64_t>(*end + kTailBytes - size);
    return check;
  }
  check = judge(in, session_id, *end, tail);
  if (check.state == TailState::kFits && size > *end + kTailBytes) {
    check.state = TailState::kLonger;
    check.difference = static_cast<std::int64_t>(size - *end - kTailBytes);
  }
  return check;
}

bool endsInTail(const fs::path& file) {
  std::ifstream in = openToRead(file);
  const std::uintmax_t size = sizeOf(file);
  std::array<std::uint8_t, kMagic.size()> magic{};
  return size >= kTailBytes && readAt(in, size - kTailBytes, magic) &&
         std::equal(kMagic.begin(), kMagic.end(), magic.begin());
}

void appendTail(const fs::path& file, std::string_view session_id, const SigningKey& key) {
  const std::uintmax_t size = sizeOf(file);
  Digest digest{};
  {
    std::ifstream in = openToRead(file);
    digest = digestOf(in, size);
  }
  const auto end = static_cast<std::int64_t>(size);
  const Signature signature = key.sign(messageOf(session_id, end, digest));
  std::string tail(kMagic);
  for (std::size_t i = 0; i < 8; ++i)
    tail += static_cast<char>(static_cast<std::uint64_t>(end) >> (8 * i) & 0xffU);
  tail.append(digest.begin(), digest.end());
  tail.append(key.publicKey().begin(), key.publicKey().end());
  tail.append(signature.begin(), signature.end());
  std::ofstream out(file, std::ios::binary | std::ios::app);
  out << tail << std::flush;
  if (!out) throw SessionError(file.string() + ": the disk is full");
}

}  // namespace cabwright::session
