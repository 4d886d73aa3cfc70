// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/file_layout.h"

#include <toml++/toml.h>

#include <algorithm>

#include "scenario/draft_text.h"

namespace cabwright::scenario {

namespace {

bool isSpace(char c) { return c == ' ' || c == '\t'; }

/// Goes through sound TOML without decoding it.
class Scanner {
 public:
  explicit Scanner(std::string_view text) : text_(text) {}

  FileLayout scan() {
    layout_.blocks.emplace_back();
    const std::size_t first = text_.find('\n');
    if (first != std::string_view::npos && first > 0 && text_[first - 1] == '\r')
      layout_.line_end = "\r\n";
    while (at_ < text_.size()) line();
    return std::move(layout_);
  }

  /// Behind the value that begins here; `remarked` if a comment stands inside it.
  std::size_t skipValue(std::size_t at, bool& remarked) {
    at_ = at;
    value(remarked);
    return at_;
  }

 private:
  [[nodiscard]] char peek() const { return at_ < text_.size() ? text_[at_] : '\n'; }
  void skipSpaces() {
    while (at_ < text_.size() && isSpace(text_[at_])) ++at_;
  }

  void line() {
    const std::size_t begin = at_;
    skipSpaces();
    if (peek() == '#') {
      if (comments_ == std::string::npos) comments_ = begin;
      at_ = nextLine(text_, at_);
      return;
    }
    if (peek() == '\n' || peek() == '\r') {
      comments_ = std::string::npos;
      at_ = nextLine(text_, at_);
      return;
    }
    if (peek() == '[') {
      head(begin);
    } else {
      statement(begin);
    }
    comments_ = std::string::npos;
  }

  void head(std::size_t begin) {
    FileBlock block;
    block.is_list = text_.substr(at_).starts_with("[[");
    at_ += block.is_list ? 2 : 1;
    block.path = key(']');
    at_ = nextLine(text_, at_);
    block.head = {begin, at_};
    block.lead = comments_ == std::string::npos ? begin : comments_;
    block.end = at_;
    layout_.blocks.push_back(std::move(block));
  }

  void statement(std::size_t begin) {
    FileStatement s;
    s.path = key('=');
    ++at_;
    skipSpaces();
    s.value.begin = at_;
    value(s.remarked);
    s.value.end = at_;
    skipSpaces();
    s.remarked = s.remarked || peek() == '#';
    at_ = nextLine(text_, at_);
    s.lines = {begin, at_};
    s.block = layout_.blocks.size() - 1;
    layout_.blocks.back().end = at_;
    layout_.statements.push_back(std::move(s));
  }

  // The parts of a key up to the sign that ends it.
  KeyPath key(char end) {
    KeyPath path;
    skipSpaces();
    while (peek() != end) {
      const std::size_t begin = at_;
      if (peek() == '"' || peek() == '\'') {
        string();
        path.push_back(decoded(text_.substr(begin, at_ - begin)));
      } else {
        while (peek() != end && peek() != '.' && !isSpace(peek())) ++at_;
        path.emplace_back(text_.substr(begin, at_ - begin));
      }
      skipSpaces();
      if (peek() == '.') ++at_;
      skipSpaces();
    }
    return path;
  }

  static std::string decoded(std::string_view quoted) {
    return toml::parse("k = " + std::string(quoted))["k"].value_or(std::string());
  }

  void string() {
    const char quote = text_[at_];
    const std::string three(3, quote);
    const bool multi = text_.substr(at_).starts_with(three);
    at_ += multi ? 3 : 1;
    while (at_ < text_.size()) {
      if (quote == '"' && text_[at_] == '\\') {
        at_ += 2;
        continue;
      }
      if (multi ? text_.substr(at_).starts_with(three) : text_[at_] == quote) {
        at_ += multi ? 3 : 1;
        // One or two more belong to the text: """"a""" and """a"""".
        for (int k = 0; multi && k < 2 && peek() == quote; ++k) ++at_;
        return;
      }
      ++at_;
    }
  }

  void value(bool& remarked) {
    int depth = 0;
    while (at_ < text_.size()) {
      const char c = text_[at_];
      if (c == '"' || c == '\'') {
        string();
        continue;
      }
      if (c == '[' || c == '{') ++depth;
      if (c == ']' || c == '}') --depth;
      if (depth == 0 && (c == '#' || c == '\n' || c == '\r' || c == ',')) break;
      if (depth < 0) break;
      if (c == '#') {
        remarked = true;
        at_ = nextLine(text_, at_);
        continue;
      }
      ++at_;
    }
    while (isSpace(text_[at_ - 1])) --at_;
  }

  std::string_view text_;
  std::size_t at_ = 0;
  std::size_t comments_ = std::string::npos;  ///< where the comment lines right above begin
  FileLayout layout_;
};

bool isBare(std::string_view part) {
  return !part.empty() && std::all_of(part.begin(), part.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' ||
           c == '-';
  });
}

}  // namespace

FileLayout findLayout(std::string_view text) { return Scanner(text).scan(); }

std::vector<ByteRange> findItems(std::string_view text, ByteRange value) {
  std::vector<ByteRange> items;
  Scanner scanner(text.substr(0, value.end));
  std::size_t at = value.begin + 1;
  while (at < value.end) {
    const char c = text[at];
    if (c == '#') {
      at = nextLine(text, at);
    } else if (c == ',' || c == '\n' || c == '\r' || isSpace(c)) {
      ++at;
    } else if (c == ']') {
      break;
    } else {
      bool remarked = false;
      const std::size_t end = scanner.skipValue(at, remarked);
      items.push_back({at, end});
      at = end;
    }
  }
  return items;
}

std::size_t lineStart(std::string_view text, std::size_t at) {
  while (at > 0 && text[at - 1] != '\n') --at;
  return at;
}

std::size_t nextLine(std::string_view text, std::size_t at) {
  const std::size_t end = text.find('\n', at);
  return end == std::string_view::npos ? text.size() : end + 1;
}

bool isBlankLine(std::string_view text, std::size_t at) {
  while (at < text.size() && (isSpace(text[at]) || text[at] == '\r')) ++at;
  return at < text.size() && text[at] == '\n';
}

std::string keyText(const KeyPath& path) {
  std::string text;
  for (const std::string& part : path) {
    if (!text.empty()) text += '.';
    text += isBare(part) ? part : quotedText(part);
  }
  return text;
}

KeyPath splitName(std::string_view dotted) {
  KeyPath path;
  std::size_t begin = 0;
  while (true) {
    const std::size_t dot = dotted.find('.', begin);
    path.emplace_back(dotted.substr(begin, dot == std::string_view::npos ? dot : dot - begin));
    if (dot == std::string_view::npos) return path;
    begin = dot + 1;
  }
}

std::string joinName(const KeyPath& path, std::size_t from) {
  std::string name;
  for (std::size_t k = from; k < path.size(); ++k) {
    if (k > from) name += '.';
    name += path[k];
  }
  return name;
}

}  // namespace cabwright::scenario
