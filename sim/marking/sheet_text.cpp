// SPDX-License-Identifier: GPL-3.0-or-later
// The mark sheet as plain text.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "marking/sheet.h"

namespace cabwright::marking {
namespace {

constexpr std::size_t kColumns = 79;
constexpr std::string_view kCaution =
    "A training aid only: generic, of no particular vehicle, and no authority to drive. The "
    "operator's rule book, the vehicle's own manual and a licensed assessor decide.";

// Columns a text takes: code points, as far as plain letters go.
std::size_t widthOf(std::string_view text) {
  std::size_t width = 0;
  for (char c : text) width += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0;
  return width;
}

class Paper {
 public:
  void blank() { text_ += '\n'; }
  void put(std::string_view line) { text_.append(line).append("\n"); }
  void rule() { put(std::string(kColumns, '-')); }

  // Words wrapped, every line with the indent, the first with the label hung into it.
  void wrap(std::size_t indent, std::string_view label, std::string_view words) {
    std::string line(label);
    if (widthOf(label) < indent) line.append(indent - widthOf(label), ' ');
    bool fresh = true;
    while (!words.empty()) {
      const std::size_t end = std::min(words.find_first_of(" \n"), words.size());
      const std::string_view word = words.substr(0, end);
      words.remove_prefix(std::min(end + 1, words.size()));
      if (word.empty()) continue;
      if (!fresh && widthOf(line) + 1 + widthOf(word) > kColumns) {
        put(line);
        line.assign(indent, ' ');
        fresh = true;
      }
      if (!fresh) line += ' ';
      line += word;
      fresh = false;
    }
    if (!fresh) put(line);
  }
  [[nodiscard]] std::string take() { return std::move(text_); }

 private:
  std::string text_;
};

std::string numberText(double value) {
  if (value == 0 || std::fabs(value) >= 1e6) return fmt::format("{:g}", value);
  if (std::fabs(value) >= 100) return fmt::format("{:.0f}", value);
  std::string text = fmt::format("{:.2f}", value);
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text;
}

std::string withUnit(double value, std::string_view unit) {
  return unit.empty() ? numberText(value) : fmt::format("{} {}", numberText(value), unit);
}

std::string clockShort(std::int64_t tick) {
  const std::string text = clockText(tick);
  return text.substr(0, text.size() - 1);  // tenths
}

void printField(Paper& paper, std::string_view name, const std::string& value) {
  if (!value.empty()) paper.wrap(18, name, value);
}

void printNotes(Paper& paper, std::string_view name, const std::vector<SheetNote>& notes) {
  for (const SheetNote& note : notes) {
    paper.wrap(18, name, fmt::format("{}  {}", clockShort(note.tick), note.text));
  }
}

void printHead(Paper& paper, const MarkSheet& sheet) {
  const SheetHead& head = sheet.head;
  paper.rule();
  paper.wrap(0, "", head.title.empty() ? "Mark sheet" : "Mark sheet: " + head.title);
  paper.rule();
  printField(paper, "Purpose", head.purpose);
  printField(paper, "Mode", head.mode);
  printField(paper, "Trainee", head.trainee);
  printField(paper, "Attempt", head.attempt);
  printField(paper, "Instructor", head.instructor);
  printField(paper, "Assessor", head.assessor);
  std::string scenario = head.scenario;
  if (!head.scenario_hash.empty()) scenario += "  [" + head.scenario_hash + "]";
  printField(paper, "Scenario", scenario);
  if (head.seed) printField(paper, "Seed", std::to_string(*head.seed));
  printField(paper, "Vehicle", head.vehicle);
  printField(paper, "Route", head.route);
  printField(paper, "Told beforehand", head.conditions_told);
  printField(paper, "Session", head.session_id);
  printField(paper, "Session hash", head.session_hash);
  printField(paper, "Started (UTC)", head.started_utc);
  printField(paper, "Plant", head.plant_version);
  printField(paper, "Program", head.program_version);
  std::string took = clockShort(head.last_tick);
  if (head.time_allowed_s) {
    took += " of " + clockShort(static_cast<std::int64_t>(*head.time_allowed_s * 100.0));
    if (static_cast<double>(head.last_tick) / 100.0 > *head.time_allowed_s) took += ", over time";
  }
  printField(paper, "Time taken", took);
  printNotes(paper, "Fault", head.faults);
  printNotes(paper, "Taken again", head.taken_again);
  printNotes(paper, "Pace", head.paces);
  printNotes(paper, "Freeze", head.freezes);
  printNotes(paper, "Prompt", head.prompts);
  printNotes(paper, "Stepped in", head.interventions);
  printNotes(paper, "Remark", head.remarks);
  if (head.unaided_until)
    printField(
        paper, "Unaided",
        "up to " + clockShort(*head.unaided_until) + "; the lines count what was done by then");
  printNotes(paper, "Model limit", head.limits_met);
  std::string pass_rule =
      fmt::format("{} % of the points, and no critical rule broken", sheet.pass.pass_percent);
  if (head.time_allowed_s) pass_rule += ", in the time allowed";
  printField(paper, "Pass rule", pass_rule);
  if (sheet.aim)
    printField(
        paper, "Done when",
        sheet.aim->words + (sheet.aim->reached_at ? ": at " + clockShort(*sheet.aim->reached_at)
                                                  : std::string(": it did not come to that")));
}

std::string readingText(const Reading& reading) {
  std::string text = fmt::format("{} {}", unit::signalInfo(reading.signal).name,
                                 describeValue(reading.signal, reading.value));
  if (reading.counterpart)
    text += fmt::format(" (true {})", describeValue(*reading.counterpart, reading.true_value));
  return text;
}

void printEvidence(Paper& paper, const Verdict& v) {
  if (!v.act.empty()) paper.wrap(17, "       Done", v.act);
  if (!v.readings.empty()) {
    std::string all;
    for (const Reading& reading : v.readings) {
      all += (all.empty() ? "" : "; ") + readingText(reading);
    }
    paper.wrap(17, "       Read", all);
  }
  for (const std::string& detail : v.details) paper.wrap(17, "       Step", detail);
}

void printLine(Paper& paper, const SheetLine& line) {
  const Verdict& v = line.verdict;
  const bool broken = v.outcome == Outcome::kBroken;
  const std::string label = fmt::format("{:4}  {} ", line.number, letterOf(line.rule_class));
  std::string head = fmt::format("{}: {}", line.title, line.verdictText());
  if (line.fails_run) head += ", fails the run";
  if (broken && v.judged_as != line.rule_class) {
    head += fmt::format(", counted as {}", wordOf(v.judged_as));
  }
  if (line.possible > 0) {
    head += fmt::format("  [{} of {}]", numberText(line.earned), numberText(line.possible));
  }
  paper.wrap(8, label, head);
  if (v.outcome == Outcome::kNotExercised) return;
  std::string seen = v.reason;
  if (const std::string margin = describeMargin(v); !margin.empty()) seen += " (" + margin + ")";
  paper.wrap(8, "", seen);
  if (!v.way.empty()) paper.wrap(17, "       Way taken", v.way);
  if (!broken) return;
  if (v.corrected_after_s) {
    paper.wrap(17, "       Lasted", fmt::format("{} s", numberText(*v.corrected_after_s)));
  }
  printEvidence(paper, v);
  paper.wrap(17, "       Why", line.why);
  paper.wrap(17, "       Instead", line.advice);
  if (!line.tolerance.empty()) paper.wrap(17, "       Tolerance", line.tolerance);
  if (line.override_record) {
    const Override& o = *line.override_record;
    paper.wrap(17, "       Override", fmt::format("{} {}: {}", o.when_utc, o.who, o.reason));
  }
}

void printLines(Paper& paper, const MarkSheet& sheet) {
  std::string heading;
  for (const SheetLine& line : sheet.lines) {
    const bool critical = line.rule_class == RuleClass::kCritical;
    const std::string now = critical ? "Critical" : line.phase.empty() ? "Other" : line.phase;
    if (now != heading) {
      paper.blank();
      paper.put(now);
      heading = now;
    }
    printLine(paper, line);
  }
}

void printJudgements(Paper& paper, const JudgementTable& table) {
  if (table.rows.empty()) return;
  paper.blank();
  paper.put("Judgements");
  std::size_t wide = 23;  // of the names; a few are longer
  for (const JudgementRow& row : table.rows) wide = std::max(wide, row.item.size());
  paper.put(fmt::format("  {:<{}} {:<15} {:<9} {:<9} {:>6}  {}", "item", wide, "true", "judged",
                        "from", "looked", "result"));
  for (const JudgementRow& row : table.rows) {
    const std::string looked = row.judged.empty() ? "-" : fmt::format("{:.1f} s", row.looked_s);
    paper.put(fmt::format("  {:<{}} {:<15} {:<9} {:<9} {:>6}  {}", row.item, wide, row.truth,
                          row.judged.empty() ? "-" : row.judged,
                          row.place.empty() ? "-" : row.place, looked, describeResult(row)));
  }
  paper.put(fmt::format(
      "  hits {}, misses {}, not judged {}, false alarms {}, not sure {}, "
      "not looked {}",
      table.hits, table.misses, table.not_judged, table.false_alarms, table.unsure, table.empty));
}

void printEnd(Paper& paper, const MarkSheet& sheet) {
  const SheetTotals& t = sheet.totals;
  paper.blank();
  paper.put("Totals");
  std::string counts = fmt::format("met {}, broken {}, following {}, not exercised {}", t.met,
                                   t.broken, t.following, t.not_exercised);
  if (t.prompted > 0) counts += fmt::format(", prompted {}", t.prompted);
  if (t.voided > 0) counts += fmt::format(", void {}", t.voided);
  if (t.pending > 0) counts += fmt::format(", pending {}", t.pending);
  paper.wrap(2, "", counts);
  paper.wrap(2, "",
             fmt::format("{} of {} points: {} %", numberText(t.earned), numberText(t.possible),
                         describePercent(t.percent)));
  paper.blank();
  paper.put("Decision");
  paper.wrap(2, "", sheet.decision.text);
  paper.rule();
  paper.wrap(0, "", kCaution);
}

}  // namespace

std::string describeMargin(const Verdict& verdict) {
  if (!verdict.margin || verdict.unit.empty()) return {};
  if (*verdict.margin < 0)
    return fmt::format("missed by {}", withUnit(-*verdict.margin, verdict.unit));
  return fmt::format("{} in hand", withUnit(*verdict.margin, verdict.unit));
}

std::string describeValue(unit::Signal signal, float value) {
  const std::string_view word = unit::findWordOfValue(signal, value);
  return word.empty() ? withUnit(static_cast<double>(value), unit::signalInfo(signal).unit)
                      : std::string(word);
}

std::string describeResult(const JudgementRow& row) {
  std::string result(wordOf(row.result));
  if (row.empty_entry) result += ", not looked";
  if (row.revised > 0) result += ", revised";
  return result;
}

std::string describePercent(double percent) {
  return fmt::format("{}", std::floor(percent + 1e-9));
}

std::string printSheet(const MarkSheet& sheet) {
  Paper paper;
  printHead(paper, sheet);
  printLines(paper, sheet);
  if (sheet.judgements) printJudgements(paper, *sheet.judgements);
  printEnd(paper, sheet);
  return paper.take();
}

}  // namespace cabwright::marking
