// SPDX-License-Identifier: GPL-3.0-or-later
// Edits of a script's lines: without, instead of, before, after.
#include <algorithm>
#include <charconv>
#include <map>

#include "scenario/quantity_text.h"
#include "scenario/script_lines.h"
#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

// Looking for the nearest of more lines than this costs more than it helps.
constexpr std::size_t kMostCompared = 5000;
constexpr std::size_t kComparedLength = 64;  // of a line; nearestName() takes no longer ones
constexpr std::size_t kMostListed = 6;
constexpr std::size_t kMostEdits = 1000;

struct Anchor {
  std::string text;         // the line it means
  std::string_view at;      // where that is written
  std::size_t ordinal = 0;  // 0: there is to be one only
  bool last = false;
  [[nodiscard]] bool isCounted() const { return last || ordinal > 0; }
};

enum class EditKind : std::uint8_t { kWithout, kInsteadOf, kBefore, kAfter };

struct Edit {
  EditKind kind = EditKind::kWithout;
  ScriptLine line;
  Anchor from;
  std::optional<Anchor> to;
  std::vector<ScriptLine> block;
  bool is_good = true;
};

std::string inQuotes(std::string_view text) { return "\"" + printable(text) + "\""; }

// One anchor out of the words of an edit: [2nd] "LINE"
class AnchorReader {
 public:
  AnchorReader(std::string_view& words) : words_(words) {}

  // What is wrong, or nothing.
  std::optional<std::string> read(Anchor& anchor) {
    if (takeWord(words_, "last")) {
      anchor.last = true;
    } else if (auto wrong = readOrdinal(anchor)) {
      return wrong;
    }
    anchor.at = words_;
    if (!words_.starts_with('"'))
      return "a line in quotation marks is wanted here, as \"wait 5 s\"";
    for (std::size_t k = 1; k < words_.size(); ++k) {
      if (words_[k] != '"') {
        anchor.text += words_[k];
      } else if (words_.substr(k).starts_with("\"\"")) {
        anchor.text += words_[k++];
      } else {
        anchor.text = std::string(trimmed(anchor.text));
        if (anchor.text.empty()) return "an empty line is none to go by";
        words_ = trimmed(words_.substr(k + 1));
        return std::nullopt;
      }
    }
    return "the quotation mark is not closed";
  }

 private:
  std::optional<std::string> readOrdinal(Anchor& anchor) {
    if (words_.empty() || words_[0] < '0' || words_[0] > '9') return std::nullopt;
    const char* end = words_.data() + words_.size();
    const auto read = std::from_chars(words_.data(), end, anchor.ordinal);
    const std::string_view word = words_.substr(0, words_.find_first_of(" \t\""));
    const std::string_view ending =
        word.substr(std::min(word.size(), static_cast<std::size_t>(read.ptr - words_.data())));
    const bool sound = read.ec == std::errc() && anchor.ordinal > 0 &&
                       (ending == "st" || ending == "nd" || ending == "rd" || ending == "th");
    if (!sound) return "'" + printable(word) + "' found; allowed: 1st, 2nd, 3rd ..., last";
    words_ = trimmed(words_.substr(word.size()));
    return std::nullopt;
  }

  std::string_view& words_;
};

class EditReader {
 public:
  EditReader(const std::vector<ScriptLine>& lines, FaultSink& sink) : lines_(lines), sink_(sink) {}

  std::vector<Edit> read() {
    while (next_ < lines_.size()) {
      if (edits_.size() == kMostEdits) {
        sink_.add(lines_[next_].number, 1, "more than 1000 edits");
        break;
      }
      readEdit();
    }
    return std::move(edits_);
  }

 private:
  static std::optional<EditKind> takeKind(std::string_view& words) {
    if (takeWord(words, "without")) return EditKind::kWithout;
    if (takeWord(words, "instead") && takeWord(words, "of")) return EditKind::kInsteadOf;
    if (takeWord(words, "before")) return EditKind::kBefore;
    if (takeWord(words, "after")) return EditKind::kAfter;
    return std::nullopt;
  }

  // Steps are never like this: "after" of a step is followed by a time.
  static bool beginsEdit(std::string_view words) {
    return takeKind(words) && words.find('"') != std::string_view::npos &&
           words.find(':') > words.find('"');
  }

  void fault(Edit& edit, std::string_view at, std::string what) {
    edit.is_good = false;
    sink_.add(edit.line.number, columnOf(edit.line, at), std::move(what));
  }

  void readEdit() {
    Edit edit;
    edit.line = lines_[next_++];
    std::string_view words = edit.line.text;
    const auto kind = takeKind(words);
    if (!kind) {
      fault(edit, edit.line.text,
            "'" + printable(edit.line.text, 40) +
                "' found; allowed behind 'as': without, instead of, before, after");
      return;
    }
    edit.kind = *kind;
    readWords(edit, words);
    if (edit.kind != EditKind::kWithout) readBlock(edit);
    edits_.push_back(std::move(edit));
  }

  void readWords(Edit& edit, std::string_view words) {
    if (const auto wrong = AnchorReader(words).read(edit.from)) return fault(edit, words, *wrong);
    const std::string_view behind = words;
    if (takeWord(words, "to")) {
      const bool takes_away = edit.kind == EditKind::kWithout || edit.kind == EditKind::kInsteadOf;
      if (!takes_away) {
        return fault(edit, behind, "'to' goes with 'without' and 'instead of' only");
      }
      edit.to.emplace();
      if (const auto wrong = AnchorReader(words).read(*edit.to)) return fault(edit, words, *wrong);
    }
    const bool has_block = edit.kind != EditKind::kWithout;
    if (words == (has_block ? ":" : "")) return;
    fault(edit, words.empty() ? edit.line.whole.substr(edit.line.whole.size()) : words,
          has_block ? "':' is wanted here, then lines, then 'end'"
                    : "'" + printable(words, 40) + "' found; allowed: to \"LINE\", or nothing");
  }

  void readBlock(Edit& edit) {
    for (; next_ < lines_.size() && lines_[next_].text != "end"; ++next_) {
      if (beginsEdit(lines_[next_].text)) return fault(edit, edit.line.text, "there is no 'end'");
      edit.block.push_back(lines_[next_]);
    }
    if (next_ == lines_.size()) return fault(edit, edit.line.text, "there is no 'end'");
    ++next_;
    if (edit.block.empty()) fault(edit, edit.line.text, "no line stands before its 'end'");
  }

  const std::vector<ScriptLine>& lines_;
  FaultSink& sink_;
  std::size_t next_ = 0;
  std::vector<Edit> edits_;
};

class Editor {
 public:
  Editor(const std::vector<ScriptLine>& base, std::string_view name, FaultSink& sink)
      : base_(base), name_(printable(name)), sink_(sink), slots_(base.size()) {
    for (std::size_t k = 0; k < base_.size(); ++k) places_[base_[k].text].push_back(k);
  }

  EditedLines apply(const std::vector<Edit>& edits) {
    // What is taken away first: nothing can be put beside a line that goes.
    for (const bool takes_away : {true, false}) {
      for (const Edit& edit : edits) {
        const bool takes = edit.kind == EditKind::kWithout || edit.kind == EditKind::kInsteadOf;
        if (takes != takes_away) continue;
        if (edit.is_good && (takes ? takeAway(edit) : putIn(edit))) continue;
        edited_.left_over.insert(edited_.left_over.end(), edit.block.begin(), edit.block.end());
      }
    }
    for (std::size_t k = 0; k < base_.size(); ++k) {
      add(slots_[k].before);
      if (slots_[k].taken_by == 0) edited_.lines.push_back(base_[k]);
      add(slots_[k].after);
    }
    return std::move(edited_);
  }

 private:
  struct Slot {
    std::size_t taken_by = 0;  // line of the edit
    std::vector<ScriptLine> before, after;
  };
  struct Range {
    std::size_t from = 0, to = 0;  // both included
  };

  void add(const std::vector<ScriptLine>& lines) {
    edited_.lines.insert(edited_.lines.end(), lines.begin(), lines.end());
  }

  void fault(const Edit& edit, std::string_view at, std::string what) {
    sink_.add(edit.line.number, columnOf(edit.line, at), std::move(what));
  }

  bool takeAway(const Edit& edit) {
    const auto range = findRange(edit);
    if (!range) return false;
    for (std::size_t k = range->from; k <= range->to; ++k) {
      if (isTaken(edit, k)) return false;
    }
    for (std::size_t k = range->from; k <= range->to; ++k) slots_[k].taken_by = edit.line.number;
    slots_[range->from].before = edit.block;
    return true;
  }

  bool putIn(const Edit& edit) {
    const auto at = find(edit, edit.from, 0);
    if (!at || isTaken(edit, *at)) return false;
    auto& lines = edit.kind == EditKind::kBefore ? slots_[*at].before : slots_[*at].after;
    lines.insert(lines.end(), edit.block.begin(), edit.block.end());
    return true;
  }

  bool isTaken(const Edit& edit, std::size_t k) {
    if (slots_[k].taken_by == 0) return false;
    fault(edit, edit.from.at,
          "line " + std::to_string(base_[k].number) + " of " + name_ + ", " +
              inQuotes(base_[k].text) + ", is taken away already by line " +
              std::to_string(slots_[k].taken_by));
    return true;
  }

  std::optional<Range> findRange(const Edit& edit) {
    const bool counts = edit.from.isCounted() || (edit.to && edit.to->isCounted());
    if (edit.to && !counts) return findStretch(edit);
    const auto from = find(edit, edit.from, 0);
    if (!from) return std::nullopt;
    const auto to = edit.to ? find(edit, *edit.to, *from + 1) : from;
    if (!to) return std::nullopt;
    return Range{*from, *to};
  }

  [[nodiscard]] const std::vector<std::size_t>& placesOf(const Anchor& anchor) const {
    static const std::vector<std::size_t> kNone;
    const auto at = places_.find(anchor.text);
    return at == places_.end() ? kNone : at->second;
  }

  // From a line to another with neither of them between: one such stretch is there to be.
  std::optional<Range> findStretch(const Edit& edit) {
    const std::vector<std::size_t>& starts = placesOf(edit.from);
    std::vector<Range> found;
    auto start = starts.begin();
    for (const std::size_t end : placesOf(*edit.to)) {
      const auto behind = std::lower_bound(start, starts.end(), end);
      if (behind != start) found.push_back({*(behind - 1), end});
      start = behind;
    }
    if (found.size() == 1) return found.front();
    if (found.empty()) {
      // Whichever of the two is not there says so.
      (void)(starts.empty() ? find(edit, edit.from, 0) : find(edit, *edit.to, starts.front() + 1));
      return std::nullopt;
    }
    std::vector<std::size_t> first_lines;
    first_lines.reserve(found.size());
    for (const Range& range : found) first_lines.push_back(range.from);
    sayAmbiguous(edit, edit.from, first_lines);
    return std::nullopt;
  }

  void sayAmbiguous(const Edit& edit, const Anchor& anchor, const std::vector<std::size_t>& found) {
    fault(edit, anchor.at,
          inQuotes(anchor.text) + " stands in " + name_ + " " + std::to_string(found.size()) +
              " times" + linesOf(found) + "; say which: 2nd \"LINE\", last \"LINE\"");
  }

  // The line that is meant, from `first` on: of a range's end the nearest one, otherwise one that
  // stands there once or whose ordinal is given.
  std::optional<std::size_t> find(const Edit& edit, const Anchor& anchor, std::size_t first) {
    const std::vector<std::size_t>& all = placesOf(anchor);
    const std::vector<std::size_t> found(std::lower_bound(all.begin(), all.end(), first),
                                         all.end());
    const bool is_end = first > 0;
    const std::string where =
        is_end ? " behind line " + std::to_string(base_[first - 1].number) : "";
    if (found.empty()) {
      fault(edit, anchor.at,
            name_ + " has no line " + inQuotes(anchor.text) + where + nearest(anchor.text, first));
    } else if (anchor.last) {
      return found.back();
    } else if (anchor.ordinal > found.size()) {
      fault(edit, anchor.at,
            inQuotes(anchor.text) + " stands in " + name_ + where + " only " +
                std::to_string(found.size()) + (found.size() == 1 ? " time" : " times") +
                linesOf(found));
    } else if (anchor.ordinal > 0) {
      return found[anchor.ordinal - 1];
    } else if (found.size() > 1 && !is_end) {
      sayAmbiguous(edit, anchor, found);
    } else {
      return found.front();
    }
    return std::nullopt;
  }

  [[nodiscard]] std::string linesOf(const std::vector<std::size_t>& found) const {
    std::string text = found.size() == 1 ? ", in line " : ", in lines ";
    for (std::size_t k = 0; k < found.size() && k < kMostListed; ++k) {
      text += (k > 0 ? ", " : "") + std::to_string(base_[found[k]].number);
    }
    return found.size() > kMostListed ? text + " ..." : text;
  }

  [[nodiscard]] std::string nearest(std::string_view text, std::size_t first) const {
    if (base_.size() > kMostCompared || sink_.isFull()) return {};
    std::vector<std::string_view> known;
    for (std::size_t k = first; k < base_.size(); ++k) {
      known.push_back(base_[k].text.substr(0, kComparedLength));
    }
    const auto near = unit::nearestName(text.substr(0, kComparedLength), known);
    if (!near) return {};
    const auto at = std::find(known.begin(), known.end(), *near) - known.begin();
    const ScriptLine& line = base_[first + static_cast<std::size_t>(at)];
    return "; did you mean " + inQuotes(line.text) + " of line " + std::to_string(line.number) +
           "?";
  }

  const std::vector<ScriptLine>& base_;
  std::string name_;
  FaultSink& sink_;
  std::vector<Slot> slots_;
  std::map<std::string_view, std::vector<std::size_t>> places_;  // of each line's text
  EditedLines edited_;
};

}  // namespace

EditedLines applyEdits(const std::vector<ScriptLine>& base, std::string_view base_name,
                       const std::vector<ScriptLine>& edits, FaultSink& sink) {
  return Editor(base, base_name, sink).apply(EditReader(edits, sink).read());
}

}  // namespace cabwright::scenario
