// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/fault_sink.h"

#include <utility>

namespace cabwright::scenario {

namespace {

bool continues(char c) { return (static_cast<unsigned char>(c) & 0xC0u) == 0x80u; }

// Walks through a TOML string token and notes where each decoded byte came from.
class StringWalker {
 public:
  StringWalker(std::string_view rest, TextPlace at) : rest_(rest), at_(at) {}

  std::vector<TextPlace> walk(std::string_view decoded) {
    const char quote = rest_.empty() ? '\0' : rest_[0];
    if (quote != '"' && quote != '\'') return {};
    const std::string three(3, quote);
    const bool multi = rest_.starts_with(three);
    step(multi ? 3 : 1);
    if (multi && rest_.starts_with("\r\n")) step(2);
    if (multi && rest_.starts_with("\n")) step(1);
    while (!rest_.empty()) {
      if (multi ? rest_.starts_with(three) && !rest_.starts_with(three + quote)
                : rest_[0] == quote) {
        break;
      }
      if (quote == '"' && rest_[0] == '\\') {
        if (!walkEscape()) return {};
      } else if (rest_.starts_with("\r\n")) {
        step(1);  // read as one newline
      } else {
        emit(rest_.substr(0, 1));
        step(1);
      }
    }
    places_.push_back(at_);
    if (decoded_ != decoded) return {};
    return std::move(places_);
  }

 private:
  void emit(std::string_view bytes) {
    for (char c : bytes) {
      decoded_ += c;
      places_.push_back(at_);
    }
  }

  void step(std::size_t bytes) {
    for (; bytes > 0 && !rest_.empty(); --bytes) {
      const char c = rest_[0];
      rest_.remove_prefix(1);
      if (c == '\n') {
        ++at_.line;
        at_.column = 1;
      } else if (rest_.empty() || !continues(rest_[0])) {
        ++at_.column;
      }
    }
  }

  bool walkEscape() {
    if (rest_.size() < 2) return false;
    const char kind = rest_[1];
    if (kind == 'u' || kind == 'U') return walkUnicode(kind == 'u' ? 4 : 8);
    if (kind == '\n' || kind == '\r' || kind == ' ' || kind == '\t') return walkContinuation();
    constexpr std::string_view kFrom = "btnfre\"\\", kTo = "\b\t\n\f\r\x1b\"\\";
    const std::size_t k = kFrom.find(kind);
    if (k == std::string_view::npos) return false;
    emit(kTo.substr(k, 1));
    step(2);
    return true;
  }

  bool walkUnicode(std::size_t digits) {
    if (rest_.size() < 2 + digits) return false;
    unsigned long code = 0;
    for (char c : rest_.substr(2, digits)) {
      const std::string_view hex = "0123456789abcdef";
      const std::size_t value = hex.find(c >= 'A' && c <= 'F' ? static_cast<char>(c + 32) : c);
      if (value == std::string_view::npos) return false;
      code = code * 16 + value;
    }
    emit(encode(code));
    step(2 + digits);
    return true;
  }

  static std::string encode(unsigned long c) {
    const auto tail = [&](int shift) { return static_cast<char>(0x80u | ((c >> shift) & 0x3Fu)); };
    if (c < 0x80) return {static_cast<char>(c)};
    if (c < 0x800) return {static_cast<char>(0xC0u | (c >> 6)), tail(0)};
    if (c < 0x10000) return {static_cast<char>(0xE0u | (c >> 12)), tail(6), tail(0)};
    return {static_cast<char>(0xF0u | (c >> 18)), tail(12), tail(6), tail(0)};
  }

  bool walkContinuation() {
    step(1);
    while (!rest_.empty() &&
           (rest_[0] == '\n' || rest_[0] == '\r' || rest_[0] == ' ' || rest_[0] == '\t')) {
      step(1);
    }
    return true;
  }

  std::string_view rest_;
  TextPlace at_;
  std::string decoded_;
  std::vector<TextPlace> places_;
};

}  // namespace

FaultSink::FaultSink(const SourceFile& file) : file_(file) {
  line_starts_.push_back(0);
  for (std::size_t k = 0; k < file.text.size(); ++k) {
    if (file.text[k] == '\n') line_starts_.push_back(k + 1);
  }
}

void FaultSink::add(std::size_t line, std::size_t column, std::string what) {
  if (isFull()) {
    ++uncounted_;
    return;
  }
  faults_.push_back({place(line, column), std::move(what)});
}

std::size_t FaultSink::offsetOf(std::size_t line, std::size_t column) {
  if (line == 0 || column == 0 || line > line_starts_.size()) return std::string::npos;
  if (line != last_.line || column < last_.column) last_ = {line, 1, line_starts_[line - 1]};
  const std::string& text = file_.text;
  for (; last_.column < column; ++last_.column) {
    if (last_.offset >= text.size() || text[last_.offset] == '\n') return std::string::npos;
    do {
      ++last_.offset;
    } while (last_.offset < text.size() && continues(text[last_.offset]));
  }
  return last_.offset;
}

FileFaults FaultSink::take() {
  sortFaults(faults_);
  if (uncounted_ > 0) {
    faults_.push_back(
        {{file_.name, 0, 0}, "and " + std::to_string(uncounted_) + " more faults, not listed"});
    uncounted_ = 0;
  }
  return std::move(faults_);
}

std::vector<TextPlace> findTextPlaces(FaultSink& sink, const FilePlace& at,
                                      std::string_view decoded) {
  const std::size_t offset = sink.offsetOf(at.line, at.column);
  if (offset == std::string::npos) return {};
  const std::string_view rest = std::string_view(sink.file().text).substr(offset);
  return StringWalker(rest, {at.line, at.column}).walk(decoded);
}

std::string printable(std::string_view text, std::size_t longest) {
  std::string shown;
  const bool cut = text.size() > longest;
  if (cut) {
    text = text.substr(0, longest);
    while (!text.empty() && continues(text.back())) text.remove_suffix(1);
    if (!text.empty() && static_cast<unsigned char>(text.back()) >= 0xC0u) text.remove_suffix(1);
  }
  for (char c : text) {
    shown += (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) ? '?' : c;
  }
  return cut ? shown + "..." : shown;
}

}  // namespace cabwright::scenario
