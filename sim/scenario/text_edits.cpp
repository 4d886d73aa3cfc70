// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/text_edits.h"

#include <algorithm>

#include "scenario/draft_text.h"

namespace cabwright::scenario {

namespace {

bool isScalarList(const DraftValue& value) {
  const auto* list = std::get_if<DraftList>(&value.value);
  return list && !list->items.empty() &&
         std::none_of(list->items.begin(), list->items.end(), [](const DraftValue& item) {
           return std::holds_alternative<DraftList>(item.value) ||
                  std::holds_alternative<DraftInline>(item.value);
         });
}

// The longest run of items that both have, in order: for each old one the number of the new one.
std::vector<std::size_t> matchItems(const std::vector<DraftValue>& was,
                                    const std::vector<DraftValue>& now) {
  const std::size_t n = was.size(), m = now.size();
  std::vector<std::size_t> longest((n + 1) * (m + 1), 0);
  const auto at = [&](std::size_t i, std::size_t j) -> std::size_t& {
    return longest[i * (m + 1) + j];
  };
  for (std::size_t i = n; i-- > 0;) {
    for (std::size_t j = m; j-- > 0;) {
      at(i, j) = was[i] == now[j] ? at(i + 1, j + 1) + 1 : std::max(at(i + 1, j), at(i, j + 1));
    }
  }
  std::vector<std::size_t> match(n, m);
  for (std::size_t i = 0, j = 0; i < n && j < m;) {
    if (was[i] == now[j]) {
      match[i++] = j++;
    } else if (at(i + 1, j) >= at(i, j + 1)) {
      ++i;
    } else {
      ++j;
    }
  }
  return match;
}

class ListEditor {
 public:
  ListEditor(std::string_view text, std::vector<ByteRange> items, std::string_view line_end,
             TextEdits& edits)
      : text_(text), items_(std::move(items)), line_end_(line_end), edits_(edits) {}

  void edit(const std::vector<DraftValue>& was, const std::vector<DraftValue>& now) {
    const std::vector<std::size_t> match = matchItems(was, now);
    std::size_t next = 0;  // of the new ones
    for (std::size_t k = 0; k < was.size(); ++k) {
      if (match[k] == now.size()) {
        takeOut(k);
        continue;
      }
      std::string before;
      for (; next < match[k]; ++next) before += valueText(now[next]) + ", ";
      if (!before.empty()) edits_.replace({items_[k].begin, items_[k].begin}, before);
      next = match[k] + 1;
      last_ = k;
    }
    for (; next < now.size(); ++next) append(valueText(now[next]));
  }

 private:
  void append(const std::string& item) {
    const std::size_t end = items_[last_].end;
    const std::size_t begin = lineStart(text_, end);
    std::size_t line = nextLine(text_, end);
    while (line > begin && (text_[line - 1] == '\n' || text_[line - 1] == '\r')) --line;
    added_ += item.size() + 2;
    std::string in_front = ", ";
    if (line - begin + added_ > kWidestLine) {
      std::size_t indent = begin;
      while (text_[indent] == ' ' || text_[indent] == '\t') ++indent;
      in_front = "," + std::string(line_end_) + std::string(text_.substr(begin, indent - begin));
      added_ = 0;
    }
    edits_.replace({end, end}, in_front + item);
  }

  void takeOut(std::size_t k) {
    ByteRange gone = items_[k];
    const std::size_t begin = lineStart(text_, gone.begin), end = nextLine(text_, gone.end);
    const bool next_on_line = k + 1 < items_.size() && items_[k + 1].begin < end;
    if (next_on_line) {
      edits_.remove({gone.begin, items_[k + 1].begin});
      return;
    }
    if (gone.end < text_.size() && text_[gone.end] == ',') ++gone.end;
    const auto blank = [&](std::size_t from, std::size_t to) {
      return text_.substr(from, to - from).find_first_not_of(" \t\r\n") == std::string_view::npos;
    };
    if (blank(begin, gone.begin) && blank(gone.end, end)) {
      edits_.remove({begin, end});
      return;
    }
    while (gone.begin > begin && text_[gone.begin - 1] == ' ') --gone.begin;
    edits_.remove(gone);
  }

  std::string_view text_;
  std::vector<ByteRange> items_;
  std::string_view line_end_;
  TextEdits& edits_;
  std::size_t last_ = 0, added_ = 0;
};

}  // namespace

std::string TextEdits::applied(std::string_view text, ByteRange of,
                               std::string_view line_end) const {
  std::vector<TextEdit> sorted;
  for (const TextEdit& edit : edits_) {
    if (edit.range.begin >= of.begin && edit.range.end <= of.end) sorted.push_back(edit);
  }
  std::stable_sort(sorted.begin(), sorted.end(), [](const TextEdit& a, const TextEdit& b) {
    return a.range.begin < b.range.begin;
  });
  const std::string blank = std::string(line_end) + std::string(line_end);
  std::string out;
  std::size_t at = of.begin;
  for (const TextEdit& edit : sorted) {
    if (edit.range.begin > at) out.append(text.substr(at, edit.range.begin - at));
    at = std::max(at, edit.range.end);
    std::string_view put = edit.text;
    if (edit.whole_lines) {
      if (!out.empty() && out.back() != '\n') out.append(line_end);
      const bool begins_blank = put.starts_with(line_end);
      if (begins_blank && (out.empty() || out.ends_with(blank))) put.remove_prefix(line_end.size());
    }
    out.append(put);
  }
  return out.append(text.substr(at, of.end - at));
}

void changeValue(std::string_view text, ByteRange value, const DraftValue& was,
                 const DraftValue& now, std::string_view line_end, TextEdits& edits) {
  const std::string_view written = text.substr(value.begin, value.end - value.begin);
  const bool over_lines = written.find('\n') != std::string_view::npos;
  if (over_lines && isScalarList(was) && isScalarList(now)) {
    const auto& old_items = std::get<DraftList>(was.value).items;
    const auto& new_items = std::get<DraftList>(now.value).items;
    const std::vector<std::size_t> match = matchItems(old_items, new_items);
    const bool any_kept = std::any_of(match.begin(), match.end(),
                                      [&](std::size_t j) { return j < new_items.size(); });
    std::vector<ByteRange> items = findItems(text, value);
    if (any_kept && items.size() == old_items.size()) {
      ListEditor(text, std::move(items), line_end, edits).edit(old_items, new_items);
      return;
    }
  }
  const std::size_t used = value.begin - lineStart(text, value.begin);
  edits.replace(value, valueText(now, used, line_end));
}

}  // namespace cabwright::scenario
