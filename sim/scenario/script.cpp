// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/script.h"

#include "scenario/action_words.h"
#include "scenario/fault_sink.h"
#include "scenario/quantity_text.h"

namespace cabwright::scenario {

namespace {

constexpr std::size_t kLongestLine = 2000;
constexpr std::size_t kMostSteps = 100'000;

std::size_t columnOf(std::string_view line, std::size_t offset) {
  std::size_t column = 1;
  for (std::size_t k = 0; k < offset && k < line.size(); ++k) {
    if ((static_cast<unsigned char>(line[k]) & 0xC0u) != 0x80u) ++column;
  }
  return column;
}

class ScriptParser {
 public:
  ScriptParser(const SourceFile& file, const ActionCheck& check)
      : sink_(file), check_(check), text_(file.text) {
    script_.name = file.name;
  }

  std::variant<Script, FileFaults> parse() {
    if (const auto faults = findTextFaults(sink_.file()); !faults.empty()) return faults;
    std::string_view rest = text_;
    while (!rest.empty()) {
      const std::size_t end = rest.find('\n');
      line_ = rest.substr(0, end);
      rest = end == std::string_view::npos ? std::string_view() : rest.substr(end + 1);
      ++number_;
      readLine();
    }
    if (!sink_.isEmpty()) return sink_.take();
    return std::move(script_);
  }

 private:
  void fault(std::string_view at, std::string what) {
    const std::size_t offset = static_cast<std::size_t>(at.data() - line_.data());
    sink_.add(number_, columnOf(line_, offset), std::move(what));
  }

  void readLine() {
    const std::string_view line = trimmed(line_);
    if (line.empty()) return;
    if (line.front() == '#') return readComment(trimmed(line.substr(1)));
    if (line.size() > kLongestLine) return fault(line, "a line of more than 2000 characters");
    if (script_.steps.size() >= kMostSteps) return fault(line, "more than 100000 steps");
    in_head_ = false;
    ScriptStep step;
    step.line = number_;
    if (readStep(line, step)) {
      checkOrder(line, step);
      script_.steps.push_back(std::move(step));
    }
  }

  void readComment(std::string_view comment) {
    constexpr std::string_view kBreaks = "breaks:";
    if (!comment.starts_with(kBreaks)) return;
    const std::string_view id = trimmed(comment.substr(kBreaks.size()));
    if (!in_head_) return fault(comment, "'breaks:' belongs at the head, before the first step");
    if (script_.breaks) return fault(comment, "a second 'breaks:'; a script breaks one rule");
    if (id.empty() || id.find_first_of(" \t") != std::string_view::npos) {
      return fault(comment, "'breaks:' is followed by the id of one rule");
    }
    script_.breaks = std::string(id);
  }

  // Whether the first word of the line is this one; it is then taken off.
  static bool takeWord(std::string_view& line, std::string_view word) {
    if (!line.starts_with(word)) return false;
    const std::string_view rest = line.substr(word.size());
    if (!rest.empty() && rest[0] != ' ' && rest[0] != '\t') return false;
    line = trimmed(rest);
    return true;
  }

  bool readStep(std::string_view line, ScriptStep& step) {
    if (takeWord(line, "wait")) return readWait(line, step);
    if (takeWord(line, "at")) return readTimed(line, ScriptStep::Kind::kAt, step);
    if (takeWord(line, "after")) return readTimed(line, ScriptStep::Kind::kAfter, step);
    if (line.starts_with("then:")) line = trimmed(line.substr(5));
    step.kind = ScriptStep::Kind::kThen;
    return readAction(line, step);
  }

  bool readTimed(std::string_view line, ScriptStep::Kind kind, ScriptStep& step) {
    step.kind = kind;
    const std::size_t colon = line.find(':');
    if (colon == std::string_view::npos) {
      fault(line, "no ':' after the time; allowed: at 12.5 s: ACTION, after 3 s: ACTION");
      return false;
    }
    const bool time_good = readTime(line.substr(0, colon), step);
    return readAction(trimmed(line.substr(colon + 1)), step) && time_good;
  }

  bool readTime(std::string_view words, ScriptStep& step) {
    const auto read = readTicks(words);
    if (const auto* wrong = std::get_if<std::string>(&read)) {
      fault(trimmed(words), *wrong);
      return false;
    }
    step.ticks = std::get<std::int64_t>(read);
    return true;
  }

  bool readWait(std::string_view line, ScriptStep& step) {
    if (!takeWord(line, "until")) {
      step.kind = ScriptStep::Kind::kWait;
      return readTime(line, step);
    }
    step.kind = ScriptStep::Kind::kWaitUntil;
    constexpr std::string_view kAtMost = " at most ";
    const std::size_t split = line.rfind(kAtMost);
    const std::string_view words = trimmed(line.substr(0, split));
    bool good = true;
    if (split == std::string_view::npos) {
      fault(line, "a wait without a limit; allowed: wait until CONDITION at most 90 s");
      good = false;
    } else {
      good = readTime(line.substr(split + kAtMost.size()), step);
    }
    auto parsed = unit::Condition::parse(words);
    if (const auto* wrong = std::get_if<unit::ConditionFault>(&parsed)) {
      fault(words.substr(std::min(wrong->at, words.size())), wrong->what);
      return false;
    }
    if (words.empty()) {
      fault(line, "wait until what? A condition is missing");
      return false;
    }
    step.condition = std::get<unit::Condition>(std::move(parsed));
    return good;
  }

  bool readAction(std::string_view words, ScriptStep& step) {
    auto parsed = unit::parseAction(words);
    if (const auto* wrong = std::get_if<std::string>(&parsed)) {
      fault(words.empty() ? line_.substr(line_.size()) : words, *wrong);
      return false;
    }
    step.action = std::get<unit::Action>(std::move(parsed));
    if (!check_ || sink_.isFull()) return true;
    const auto wrong = check_(step.action);
    if (!wrong) return true;
    fault(findBlamedWord(words, step.action, *wrong), *wrong);
    return false;
  }

  // A fixed time that has surely passed by then cannot be kept.
  void checkOrder(std::string_view line, const ScriptStep& step) {
    switch (step.kind) {
      case ScriptStep::Kind::kAt:
        if (step.ticks < earliest_) {
          fault(line, "this time has passed already: the steps above take until " +
                          std::to_string(earliest_ / 100) + "." +
                          std::to_string(earliest_ / 10 % 10) + std::to_string(earliest_ % 10) +
                          " s at least");
        }
        earliest_ = std::max(earliest_, step.ticks);
        break;
      case ScriptStep::Kind::kAfter:
      case ScriptStep::Kind::kWait:
        earliest_ += step.ticks;
        break;
      case ScriptStep::Kind::kThen:
      case ScriptStep::Kind::kWaitUntil:
        break;
    }
  }

  FaultSink sink_;
  const ActionCheck& check_;
  std::string_view text_, line_;
  std::size_t number_ = 0;
  bool in_head_ = true;
  std::int64_t earliest_ = 0;
  Script script_;
};

}  // namespace

std::variant<Script, FileFaults> parseScript(const SourceFile& file, const ActionCheck& check) {
  return ScriptParser(file, check).parse();
}

}  // namespace cabwright::scenario
