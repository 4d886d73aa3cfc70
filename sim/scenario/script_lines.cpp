// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/script_lines.h"

#include "scenario/quantity_text.h"

namespace cabwright::scenario {

namespace {

constexpr std::size_t kLongestLine = 2000;
constexpr std::size_t kMostLines = 100'000;

class LineReader {
 public:
  LineReader(FaultSink& sink, std::size_t file) : sink_(sink) { line_.file = file; }

  ScriptLines read() {
    std::string_view rest = sink_.file().text;
    while (!rest.empty()) {
      const std::size_t end = rest.find('\n');
      line_.whole = rest.substr(0, end);
      line_.text = trimmed(line_.whole);
      rest = end == std::string_view::npos ? std::string_view() : rest.substr(end + 1);
      ++line_.number;
      if (!line_.text.empty()) readOne();
    }
    return std::move(read_);
  }

 private:
  void fault(std::string_view at, std::string what) {
    sink_.add(line_.number, columnOf(line_, at), std::move(what));
  }

  void readOne() {
    if (line_.text.front() == '#') return readComment(trimmed(line_.text.substr(1)));
    if (line_.text.size() > kLongestLine) {
      return fault(line_.text, "a line of more than 2000 characters");
    }
    if (read_.lines.size() >= kMostLines) return fault(line_.text, "more than 100000 steps");
    read_.lines.push_back(line_);
  }

  void readComment(std::string_view comment) {
    constexpr std::string_view kBreaks = "breaks:";
    if (!comment.starts_with(kBreaks)) return;
    const std::string_view id = trimmed(comment.substr(kBreaks.size()));
    if (!read_.lines.empty()) {
      return fault(comment, "'breaks:' belongs at the head, before the first step");
    }
    if (read_.breaks) return fault(comment, "a second 'breaks:'; a script breaks one rule");
    if (id.empty() || id.find_first_of(" \t") != std::string_view::npos) {
      return fault(comment, "'breaks:' is followed by the id of one rule");
    }
    read_.breaks = std::string(id);
  }

  FaultSink& sink_;
  ScriptLine line_;
  ScriptLines read_;
};

}  // namespace

std::size_t columnOf(const ScriptLine& line, std::string_view part) {
  const auto offset = static_cast<std::size_t>(part.data() - line.whole.data());
  std::size_t column = 1;
  for (std::size_t k = 0; k < offset && k < line.whole.size(); ++k) {
    if ((static_cast<unsigned char>(line.whole[k]) & 0xC0u) != 0x80u) ++column;
  }
  return column;
}

ScriptLines readLines(FaultSink& sink, std::size_t file) { return LineReader(sink, file).read(); }

bool takeWord(std::string_view& text, std::string_view word) {
  if (!text.starts_with(word)) return false;
  const std::string_view rest = text.substr(word.size());
  if (!rest.empty() && rest[0] != ' ' && rest[0] != '\t') return false;
  text = trimmed(rest);
  return true;
}

}  // namespace cabwright::scenario
