// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/toml_file.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace cabwright::scenario {

namespace {

// Tables in tables cost stack when they are taken down again; nobody needs more than this.
constexpr int kDeepestBrackets = 16;
constexpr int kMostKeyParts = 16;
// Leaving out bad lines and reading again is for files that people write.
constexpr std::size_t kLargestMended = 256u << 10;
constexpr int kMostMends = 50;

// Looks for nesting that would be dangerous to parse, with an eye for strings and comments.
class DepthCheck {
 public:
  explicit DepthCheck(std::string_view text) : text_(text) {}

  /// Where it is too deep.
  std::optional<TextPlace> find() {
    while (at_ < text_.size()) {
      const char c = text_[at_];
      if (c == '"' || c == '\'') {
        skipString(c);
        continue;
      }
      if (c == '#') {
        while (at_ < text_.size() && text_[at_] != '\n') step();
        continue;
      }
      count(c);
      if (depth_ > kDeepestBrackets || dots_ >= kMostKeyParts) return TextPlace{line_, column_};
      step();
    }
    return std::nullopt;
  }

 private:
  void count(char c) {
    if (c == '[' || c == '{') ++depth_;
    if ((c == ']' || c == '}') && depth_ > 0) --depth_;
    if (c == '.') {
      ++dots_;
    } else if (c == '\n' || c == '=' || c == ',' || c == '[' || c == ']' || c == '{' || c == '}') {
      dots_ = 0;
    }
  }

  void step() {
    const char c = text_[at_++];
    if (c == '\n') {
      ++line_;
      column_ = 1;
    } else if ((static_cast<unsigned char>(c) & 0xC0u) != 0x80u) {
      ++column_;
    }
  }

  void skipString(char quote) {
    const std::string three(3, quote);
    const bool multi = text_.substr(at_).starts_with(three);
    for (int k = 0; k < (multi ? 3 : 1); ++k) step();
    while (at_ < text_.size()) {
      if (!multi && text_[at_] == '\n') return;
      if (quote == '"' && text_[at_] == '\\') {
        step();
        if (at_ < text_.size()) step();
        continue;
      }
      if (multi ? text_.substr(at_).starts_with(three) : text_[at_] == quote) {
        for (int k = 0; k < (multi ? 3 : 1); ++k) step();
        return;
      }
      step();
    }
  }

  std::string_view text_;
  std::size_t at_ = 0, line_ = 1, column_ = 1;
  int depth_ = 0, dots_ = 0;
};

struct SyntaxFault {
  std::size_t line, column;
  std::string what;
};

struct Attempt {
  toml::table root;
  std::optional<SyntaxFault> fault;
};

// Of a text whose closing quotation mark is missing the parser says that a line end is no letter.
std::string inWords(std::string_view text, const toml::source_position& at,
                    std::string_view description) {
  if (description.find("unescaped control character") != std::string_view::npos) {
    std::size_t k = 0;
    for (std::size_t line = 1; line < at.line && k != std::string_view::npos; ++line) {
      k = text.find('\n', k);
      if (k != std::string_view::npos) ++k;
    }
    const std::string_view rest = k < text.size() ? text.substr(k) : std::string_view();
    std::size_t column = 1, offset = 0;
    for (; offset < rest.size() && rest[offset] != '\n' && rest[offset] != '\r'; ++offset) {
      if ((static_cast<unsigned char>(rest[offset]) & 0xC0u) != 0x80u) ++column;
    }
    if (at.column >= column) return "a text that is not closed on its line";
  }
  return printable(description, 300);
}

Attempt attempt(std::string_view text) {
  if (const auto deep = DepthCheck(text).find()) {
    return {{}, SyntaxFault{deep->line, deep->column, "nested too deeply; allowed: 16 levels"}};
  }
  try {
    return {toml::parse(text), std::nullopt};
  } catch (const toml::parse_error& error) {
    const toml::source_position at = error.source().begin;
    return {{}, SyntaxFault{at.line, at.column, inWords(text, at, error.description())}};
  }
}

std::vector<std::size_t> findLineStarts(std::string_view text) {
  std::vector<std::size_t> starts{0};
  for (std::size_t k = 0; k < text.size(); ++k) {
    if (text[k] == '\n') starts.push_back(k + 1);
  }
  return starts;
}

// Turns whole lines into blanks, so that places in the others stay what they are.
void blank(std::string& text, const std::vector<std::size_t>& starts, std::size_t first,
           std::size_t last) {
  const std::size_t end = last < starts.size() ? starts[last] : text.size();
  for (std::size_t k = starts[first - 1]; k < end; ++k) {
    if (text[k] != '\n') text[k] = ' ';
  }
}

// The line at or before `line` on which a statement seems to begin.
std::size_t findStatement(std::string_view text, const std::vector<std::size_t>& starts,
                          std::size_t line) {
  for (std::size_t n = line; n > 1; --n) {
    std::size_t k = starts[n - 1];
    while (k < text.size() && (text[k] == ' ' || text[k] == '\t')) ++k;
    const std::size_t end = text.find('\n', k);
    const std::string_view rest = text.substr(k, end == std::string_view::npos ? end : end - k);
    const std::size_t equals = rest.find('=');
    const std::size_t odd = rest.find_first_of("\"'{},[]#");
    if (equals != std::string_view::npos && equals > 0 && equals < odd) return n;
    if (rest.starts_with("[")) return n;
  }
  return 1;
}

bool beginsTable(std::string_view text, const std::vector<std::size_t>& starts, std::size_t line) {
  std::size_t k = starts[line - 1];
  while (k < text.size() && (text[k] == ' ' || text[k] == '\t')) ++k;
  return k < text.size() && text[k] == '[';
}

// The last line before the next head of a table.
std::size_t findSectionEnd(std::string_view text, const std::vector<std::size_t>& starts,
                           std::size_t line) {
  while (line < starts.size() && !beginsTable(text, starts, line + 1)) ++line;
  return line;
}

// Leaves out what could not be read, in the way that lets most of the rest be read.
std::string mend(const std::string& text, const std::vector<std::size_t>& starts,
                 std::size_t line) {
  line = std::clamp<std::size_t>(line, 1, starts.size());
  const std::size_t before = line > 1 ? findStatement(text, starts, line - 1) : 1;
  std::string best;
  std::size_t best_line = 0;
  // Below a bad head of a table stand keys that belong to no other one: they go with it.
  const std::size_t section_end =
      beginsTable(text, starts, line) ? findSectionEnd(text, starts, line) : line;
  for (const auto& [first, last] : {std::pair{line, section_end}, std::pair{line, line},
                                    std::pair{before, line - 1}, std::pair{before, line}}) {
    if (first < 1 || last < first) continue;
    std::string mended = text;
    blank(mended, starts, first, last);
    if (mended == text) continue;
    const Attempt next = attempt(mended);
    const std::size_t reached = next.fault ? next.fault->line : starts.size() + 1;
    if (reached > best_line) {
      best_line = reached;
      best = std::move(mended);
    }
  }
  return best_line > line ? best : std::string();
}

}  // namespace

TomlFile parseToml(const SourceFile& file, FaultSink& sink) {
  if (const auto faults = findTextFaults(file); !faults.empty()) {
    sink.add(faults.front().at, faults.front().what);
    return {{}, true};
  }
  const std::vector<std::size_t> starts = findLineStarts(file.text);
  std::string text = file.text;
  TomlFile result;
  for (int mends = 0; mends <= kMostMends; ++mends) {
    Attempt tried = attempt(text);
    if (!tried.fault) {
      result.root = std::move(tried.root);
      return result;
    }
    result.broken = true;
    sink.add(tried.fault->line, tried.fault->column, tried.fault->what);
    if (text.size() > kLargestMended) return result;
    text = mend(text, starts, tried.fault->line);
    if (text.empty()) return result;
  }
  return result;
}

}  // namespace cabwright::scenario
