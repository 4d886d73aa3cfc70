// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/script.h"

#include <algorithm>
#include <deque>

#include "scenario/action_words.h"
#include "scenario/library.h"
#include "scenario/quantity_text.h"
#include "scenario/script_lines.h"
#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

constexpr std::size_t kMostSteps = 100'000;

class ScriptParser {
 public:
  ScriptParser(const SourceFile& file, const ActionCheck& check, const Neighbours& neighbours)
      : check_(check), neighbours_(neighbours) {
    script_.name = file.name;
    script_.files.reserve(2);  // its texts are pointed into
    script_.files.push_back(file);
    sinks_.emplace_back(file);
  }

  std::variant<Script, FileFaults> parse() {
    if (const auto faults = findTextFaults(own().file()); !faults.empty()) return faults;
    ScriptLines read = readLines(own(), 0);
    script_.breaks = std::move(read.breaks);
    if (!read.lines.empty() && isAs(read.lines.front())) {
      readSteps(editNeighbour(read.lines));
    } else {
      readSteps(read.lines);
    }
    FileFaults all;
    for (FaultSink& sink : sinks_) {
      const FileFaults faults = sink.take();
      all.insert(all.end(), faults.begin(), faults.end());
    }
    all.insert(all.end(), others_.begin(), others_.end());
    if (all.empty() && script_.steps.empty()) {
      return FileFaults{{{script_.name, 0, 0}, "no step in it: a script says who does what"}};
    }
    if (!all.empty()) return all;
    return std::move(script_);
  }

 private:
  FaultSink& own() { return sinks_.front(); }

  void fault(std::string_view at, std::string what) {
    sinks_[line_.file].add(line_.number, columnOf(line_, at), std::move(what));
  }

  // "as" is no verb: nobody can do it.
  static bool isAs(const ScriptLine& line) {
    std::string_view words = line.text;
    return takeWord(words, "as");
  }

  // Lines of the script that this one is like, with the edits made.
  std::vector<ScriptLine> editNeighbour(const std::vector<ScriptLine>& lines) {
    line_ = lines.front();
    const std::vector<ScriptLine> edits(lines.begin() + 1, lines.end());
    if (edits.empty()) fault(line_.text, "nothing is said to be otherwise here");
    const std::optional<std::vector<ScriptLine>> base = readNeighbour();
    if (!base) {
      keeps_order_ = false;
      return {};
    }
    EditedLines edited = applyEdits(
        *base, std::filesystem::path(script_.files[1].name).filename().string(), edits, own());
    keeps_order_ = own().isEmpty();
    edited.lines.insert(edited.lines.end(), edited.left_over.begin(), edited.left_over.end());
    return std::move(edited.lines);
  }

  std::optional<std::vector<ScriptLine>> readNeighbour() {
    std::string_view name = line_.text;
    (void)takeWord(name, "as");
    if (!isShelfName(name)) {
      fault(name.empty() ? line_.text : name,
            "'as' is followed by the name of a script beside this one: letters, digits, '-', '_', "
            "without .txt");
      return std::nullopt;
    }
    auto found = neighbours_.find ? neighbours_.find(std::string(name)) : std::nullopt;
    if (!found) {
      const std::vector<std::string> names =
          neighbours_.names ? neighbours_.names() : std::vector<std::string>();
      const std::vector<std::string_view> known(names.begin(), names.end());
      fault(name, unit::unknownWord("script", name, known));
      return std::nullopt;
    }
    if (const auto* wrong = std::get_if<FileFault>(&*found)) {
      others_.push_back(*wrong);
      return std::nullopt;
    }
    script_.files.push_back(std::get<SourceFile>(std::move(*found)));
    sinks_.emplace_back(script_.files.back());
    return readWhole();
  }

  // One step only: what a script stands on stands by itself, so nothing can go round in a circle.
  std::optional<std::vector<ScriptLine>> readWhole() {
    const SourceFile& file = script_.files.back();
    if (auto faults = findTextFaults(file); !faults.empty()) {
      others_ = std::move(faults);
      return std::nullopt;
    }
    std::vector<ScriptLine> lines = readLines(sinks_.back(), 1).lines;
    if (lines.empty() || !isAs(lines.front())) return lines;
    fault(line_.text, file.name + " itself begins with 'as'; allowed: a script that is whole");
    return std::nullopt;
  }

  void readSteps(const std::vector<ScriptLine>& lines) {
    for (const ScriptLine& line : lines) {
      line_ = line;
      if (script_.steps.size() >= kMostSteps) return fault(line.text, "more than 100000 steps");
      readLine();
    }
  }

  void readLine() {
    ScriptStep step;
    step.file = line_.file;
    step.line = line_.number;
    if (isAs(line_)) return fault(line_.text, "'as' belongs at the head, before the first step");
    if (!readStep(line_.text, step)) return;
    if (keeps_order_) checkOrder(line_.text, step);
    script_.steps.push_back(std::move(step));
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
      fault(words.empty() ? line_.whole.substr(line_.whole.size()) : words, *wrong);
      return false;
    }
    step.action = std::get<unit::Action>(std::move(parsed));
    if (!check_ || sinks_[line_.file].isFull()) return true;
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

  const ActionCheck& check_;
  const Neighbours& neighbours_;
  Script script_;
  std::deque<FaultSink> sinks_;  // of each of its files
  FileFaults others_;            // of a file that could not be read
  ScriptLine line_;
  bool keeps_order_ = true;
  std::int64_t earliest_ = 0;
};

}  // namespace

FilePlace Script::placeOf(const ScriptStep& step) const {
  return {step.file < files.size() ? files[step.file].name : name, step.line, 1};
}

std::variant<Script, FileFaults> parseScript(const SourceFile& file, const ActionCheck& check,
                                             const Neighbours& neighbours) {
  return ScriptParser(file, check, neighbours).parse();
}

Neighbours neighboursOf(const std::filesystem::path& script) {
  namespace fs = std::filesystem;
  const fs::path folder = script.parent_path();
  Neighbours beside;
  beside.find =
      [folder](const std::string& name) -> std::optional<std::variant<SourceFile, FileFault>> {
    const fs::path path = folder / (name + ".txt");
    std::error_code error;
    if (!fs::exists(path, error) && !error) return std::nullopt;
    return loadText(path.string());
  };
  beside.names = [folder] {
    std::vector<std::string> names;
    std::error_code error;
    for (fs::directory_iterator at(folder.empty() ? fs::path(".") : folder, error), end;
         !error && at != end; at.increment(error)) {
      if (at->path().extension() == ".txt") names.push_back(at->path().stem().string());
    }
    std::sort(names.begin(), names.end());
    return names;
  };
  return beside;
}

}  // namespace cabwright::scenario
