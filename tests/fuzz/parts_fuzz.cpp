// SPDX-License-Identifier: GPL-3.0-or-later
// What stands inside rows, behind the check values that stop most changed files at the door:
// frames, actions, entries of a review, conditions. What was read is written and read again as the
// same.
#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "review/csv.h"
#include "review/entry.h"
#include "review/html_report.h"
#include "session/frame_code.h"
#include "unit/action.h"

namespace {

using namespace cabwright;

void require(bool good) {
  if (!good) __builtin_trap();
}

void tryFrames(std::span<const std::uint8_t> bytes) {
  std::vector<float> values(16), before(16);
  static_cast<void>(session::decodeKeyFrame(bytes, values));
  if (session::decodeDeltaFrame(bytes, values)) return;
}

void tryAction(std::string_view text) {
  const auto read = unit::parseAction(text);
  const auto* action = std::get_if<unit::Action>(&read);
  if (action == nullptr) return;
  const auto again = unit::parseAction(unit::toText(*action));
  require(std::holds_alternative<unit::Action>(again) && std::get<unit::Action>(again) == *action);
}

void tryEntry(std::string_view kind, std::string_view body) {
  const auto content = review::readContent(kind, body);
  if (!content || std::holds_alternative<review::Unknown>(*content)) return;
  require(review::readContent(kind, review::bodyOf(*content)) == content);
  static_cast<void>(review::describe(*content));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const std::string_view text(reinterpret_cast<const char*>(data) + 1, size - 1);
  tryFrames({data + 1, size - 1});
  tryAction(text);
  static constexpr std::string_view kKinds[] = {"override",    "rating",     "comment",
                                                "self-rating", "blind-mark", "decision",
                                                "signature",   "score-shown"};
  tryEntry(kKinds[data[0] % 8], text);
  const std::string html = review::escapeHtml(text);
  require(html.find_first_of("<>\"'") == std::string::npos);
  require(review::csvField(text).size() >= text.size());
  return 0;
}
