// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a session file: opened, read to the end, verified, labelled. Whatever they are, the
// answer is a value or a SessionError.
//
// Bytes changed at random hardly ever make a database any more; so an input that begins with a
// number below 200 is a list of changes to a sound session (of the first format when it is even,
// of the second, sealed, when it is odd), three bytes each: where, in 1/65536 of the file, and what
// stands there then. Every other input is a file as it is.
#include <unistd.h>

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "review/review.h"
#include "session/label.h"
#include "session/session_error.h"
#include "session/verify.h"

namespace {

using namespace cabwright;

using Bytes = std::vector<std::uint8_t>;

Bytes readSound(const char* name) {
  std::ifstream file(std::string(CABWRIGHT_SOURCE_DIR) + "/tests/sim/session/data/" + name,
                     std::ios::binary);
  Bytes bytes((std::istreambuf_iterator<char>(file)), {});
  if (bytes.empty()) __builtin_trap();
  return bytes;
}

Bytes makeFile(const std::uint8_t* data, std::size_t size) {
  static const Bytes first = readSound("first-format.cabsession");
  static const Bytes second = readSound("second-format.cabsession");
  if (size == 0 || data[0] >= 200) return {data, data + size};
  Bytes bytes = data[0] % 2 == 0 ? first : second;
  for (std::size_t k = 1; k + 3 <= size; k += 3) {
    const std::size_t share = std::size_t{256} * data[k] + data[k + 1];
    bytes[share * bytes.size() / 65536] = data[k + 2];
  }
  return bytes;
}

// A regular file, held in memory where the system has a place for such: a session is nothing else.
class SessionFile {
 public:
  explicit SessionFile(const Bytes& bytes) {
    std::ofstream out(path(), std::ios::binary | std::ios::trunc);
    out.write(reinterpret_cast<const char*>(bytes.data()),
              static_cast<std::streamsize>(bytes.size()));
    if (!out.flush()) __builtin_trap();
  }
  ~SessionFile() { ::unlink(path().c_str()); }
  SessionFile(const SessionFile&) = delete;
  SessionFile& operator=(const SessionFile&) = delete;
  [[nodiscard]] static const std::filesystem::path& path() {
    static const std::filesystem::path kept =
        (std::filesystem::is_directory("/dev/shm") ? std::filesystem::path("/dev/shm")
                                                   : std::filesystem::temp_directory_path()) /
        ("session-fuzz-" + std::to_string(::getpid()) + ".cabsession");
    return kept;
  }
};

template <class Act>
void attempt(Act act) {
  try {
    act();
  } catch (const session::SessionError&) {
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const SessionFile file(makeFile(data, size));
  attempt([&] { static_cast<void>(session::readLabel(file.path())); });
  attempt([&] {
    const session::Store store(file.path());
    static_cast<void>(store.findFrame(1000));
    static_cast<void>(store.lastTick());
    static_cast<void>(review::readEntries(store));
    session::Store::Reader reader = store.read();
    while (reader.next()) continue;
  });
  static_cast<void>(session::verifySession(file.path()));
  return 0;
}
