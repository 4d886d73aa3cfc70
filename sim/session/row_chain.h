// SPDX-License-Identifier: GPL-3.0-or-later
// The running check value over all rows of a session file, in either format.
//
// Format 2:  h0 = SHA-256(magic | session id | length of a tick in microseconds)
//            hn = SHA-256(h(n-1) | seq | tick | kind | length | payload)
//   with little-endian numbers of eight bytes and one byte for the kind. Each row keeps the first
//   eight bytes of its hn, which is enough to say where a file stops fitting; the seal (seal.h)
//   holds the whole of the last one. Rows of the head have seq 0 and tick 0.
// Format 1:  FNV-1a 64 over the same fields without the length (chain.h). It guards against
//   accidents only, and is read but no longer written.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "session/chain.h"
#include "session/digest.h"
#include "session/payload.h"

namespace cabwright::session {

class RowChain {
 public:
  /// `version` is the format's, 1 or 2.
  RowChain(int version, std::string_view session_id);

  /// The payload of the next row, empty, to be filled before endRow() or endHead().
  [[nodiscard]] Payload& begin();
  void endRow(char kind, std::int64_t seq, std::int64_t tick);
  /// A row of the head: its place is its turn.
  void endHead(char kind);

  /// What the last row keeps of it.
  [[nodiscard]] std::int64_t stored() const;
  /// The whole of it as text, as the head keeps it.
  [[nodiscard]] std::string text() const;
  /// Of format 2; of format 1 all zero.
  [[nodiscard]] const Digest& digest() const { return digest_; }
  [[nodiscard]] int version() const { return version_; }

 private:
  void step(char kind, std::int64_t seq, std::int64_t tick);
  int version_;
  Chain plain_;
  Digest digest_{};
  Payload payload_;
};

}  // namespace cabwright::session
