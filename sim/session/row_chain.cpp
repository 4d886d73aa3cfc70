// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/row_chain.h"

#include <fmt/format.h>

#include "session/record.h"

namespace cabwright::session {
namespace {

constexpr std::string_view kMagic("Cabwright session 2\0", 20);

}  // namespace

RowChain::RowChain(int version, std::string_view session_id) : version_(version) {
  if (version_ < 2) return;
  digest_ =
      Sha256().add(kMagic).add(session_id).add(std::int64_t{1'000'000 / kTicksPerSecond}).finish();
}

Payload& RowChain::begin() {
  payload_.clear();
  return payload_;
}

void RowChain::step(char kind, std::int64_t seq, std::int64_t tick) {
  const auto bytes = payload_.bytes();
  digest_ = Sha256()
                .add(digest_)
                .add(seq)
                .add(tick)
                .add(static_cast<std::uint8_t>(kind))
                .add(static_cast<std::int64_t>(bytes.size()))
                .add(bytes)
                .finish();
}

void RowChain::endRow(char kind, std::int64_t seq, std::int64_t tick) {
  if (version_ >= 2) return step(kind, seq, tick);
  plain_.add(static_cast<std::uint8_t>(kind));
  plain_.add(seq);
  plain_.add(tick);
  for (const std::uint8_t byte : payload_.bytes()) plain_.add(byte);
}

void RowChain::endHead(char kind) {
  if (version_ >= 2) return step(kind, 0, 0);
  for (const std::uint8_t byte : payload_.bytes()) plain_.add(byte);
}

std::int64_t RowChain::stored() const {
  if (version_ < 2) return plain_.stored();
  std::uint64_t number = 0;
  for (std::size_t i = 0; i < 8; ++i) number |= std::uint64_t{digest_[i]} << (8 * i);
  return std::bit_cast<std::int64_t>(number);
}

std::string RowChain::text() const {
  return version_ < 2 ? fmt::format("{:016x}", plain_.value()) : toHex(digest_);
}

}  // namespace cabwright::session
