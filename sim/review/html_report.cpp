// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/html_report.h"

#include <fmt/format.h>

#include <algorithm>

#include "session/digest.h"
#include "session/session_error.h"

namespace cabwright::review {
namespace {

using marking::SheetLine;

constexpr std::string_view kStyle =
    "body{font:10pt/1.4 'B612',Arial,sans-serif;max-width:56em;margin:2em auto;padding:0 1em;"
    "color:#111;background:#fff}h1{font-size:1.6em;margin:0}h2{font-size:1.2em;border-bottom:1px "
    "solid #888;margin:1.6em 0 .5em}h3{font-size:1em;margin:1em 0 .2em}table{border-collapse:"
    "collapse;width:100%;margin:.4em 0}th,td{text-align:left;vertical-align:top;padding:.15em "
    ".6em .15em 0}th{font-weight:normal;color:#444}td.n{text-align:right;white-space:nowrap}"
    ".decision{border:2px solid #111;padding:.5em 1em;margin:1em 0;font-weight:bold}"
    ".line{border-top:1px solid #bbb;padding:.3em 0;break-inside:avoid}.word{font-weight:bold}"
    ".caution{border:1px solid #888;padding:.5em 1em;margin-top:2em;font-size:.9em}"
    "svg{display:block;background:#fff;border:1px solid #bbb}svg path{fill:none;stroke:#111;"
    "stroke-width:1.5}svg .true{stroke-dasharray:4 3}svg .moment{stroke:#888;stroke-width:1}"
    "svg text{font:8px sans-serif;fill:#444}@media print{body{margin:0;max-width:none}"
    "h2{break-after:avoid}a{color:inherit}@page{margin:16mm}}";

class Page {
 public:
  explicit Page(const ReportInput& input) : in_(input), sheet_(input.reviewed.sheet) {}

  std::string write() {
    putHead();
    putDecision();
    putWho();
    putNotes();
    putLines();
    putJudgements();
    putEntries();
    putCautions();
    out_ += "</body>\n</html>\n";
    return std::move(out_);
  }

 private:
  void put(std::string_view text) { out_ += text; }
  void row(std::string_view name, std::string_view value) {
    if (value.empty()) return;
    put(fmt::format("<tr><th scope=\"row\">{}</th><td>{}</td></tr>\n", escapeHtml(name),
                    escapeHtml(value)));
  }
  void paragraph(std::string_view name, std::string_view text) {
    if (text.empty()) return;
    put(fmt::format("<p>{}{}</p>\n", name.empty() ? "" : fmt::format("<b>{}</b> ", name),
                    escapeHtml(text)));
  }

  void putHead() {
    put("<!DOCTYPE html>\n<!-- SPDX-License-Identifier: GPL-3.0-or-later -->\n"
        "<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        "<meta name=\"viewport\" content=\"width=device-width\">\n");
    put(fmt::format("<title>{}</title>\n<style>{}</style>\n</head>\n<body>\n",
                    escapeHtml("Mark sheet: " + sheet_.head.title), kStyle));
    put(fmt::format("<h1>Mark sheet: {}</h1>\n", escapeHtml(sheet_.head.title)));
  }

  void putDecision() {
    put(fmt::format("<div class=\"decision\">{}", escapeHtml(sheet_.decision.text)));
    if (const auto decision = findDecision(in_.reviewed.entries))
      put(fmt::format("<br>Decided by {}, {}: {}", nameOf(*decision), escapeHtml(decision->utc),
                      escapeHtml(describe(decision->content))));
    else
      put("<br>No assessor has decided yet; this is what the program found.");
    put("</div>\n");
    const session::Verification& v = in_.verification;
    switch (v.standing) {
      case session::Standing::kWhole:
        paragraph("Record:",
                  fmt::format("sealed {} and whole, {} rows, key {}", wordOf(v.seal->how), v.rows,
                              session::toHex(v.seal->station)));
        break;
      case session::Standing::kNotSealed:
        paragraph("Record:", "not sealed; nothing here proves that it was not changed");
        break;
      default:
        for (const std::string& finding : v.findings) paragraph("Record altered:", finding);
    }
    if (!in_.reviewed.complete) paragraph("Record:", "cut off; marked as far as it goes");
  }

  // Says of the pass what the session says itself, and of its time what is known here.
  std::string goodWords() const {
    const auto day_of =
        in_.day_of ? in_.day_of : [](const ShelfItem& item) { return readDay(item.started_utc); };
    const GoodFor good = findGoodFor(in_.label, in_.verification.standing,
                                     in_.recency.value_or(RecencyRules()), day_of);
    const auto text = [](Day day) {
      return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(day.year()),
                         static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    };
    switch (good.kind) {
      case GoodFor::Kind::kAltered:
        return "the record was altered: it proves no pass";
      case GoodFor::Kind::kNoPass:
        return "not a pass that counts: that is a sealed assessment passed, or what an assessor "
               "decided as passed";
      case GoodFor::Kind::kNoDay:
        return "a pass, but the session does not say when it was begun";
      case GoodFor::Kind::kNoTime:
        return fmt::format("a pass of {}; {}the operator says how long it is good",
                           text(good.passed),
                           in_.recency ? "no time is set at this station; " : "");
      case GoodFor::Kind::kUntil:
        break;
    }
    return fmt::format("{} ({} {})", text(good.until), good.months,
                       good.months == 1 ? "month" : "months");
  }

  std::string plantWords() const {
    const std::string& version = sheet_.head.program_version;
    if (in_.plant.empty()) return "not recorded";
    return version.empty() ? in_.plant : in_.plant + ", calculated by version " + version;
  }

  void putWho() {
    const marking::SheetHead& head = sheet_.head;
    put("<h2>Who and what</h2>\n<table>\n");
    row("Purpose", head.purpose);
    row("Mode", head.mode);
    row("Trainee", head.trainee.empty() ? "not recorded" : head.trainee);
    row("Instructor", head.instructor);
    row("Assessor", head.assessor);
    row("Attempt", in_.attempt ? fmt::format("{} of {} at this exercise in the same folder",
                                             in_.attempt->number, in_.attempt->of)
                               : "not counted");
    row("Scenario", fmt::format("{} [{}]", head.scenario, head.scenario_hash));
    row("Vehicle", head.vehicle);
    row("Plant", plantWords());
    if (head.limits_met.empty()) row("Model limits", "none met");
    row("Route", head.route);
    row("Told beforehand", head.conditions_told);
    row("Seed", head.seed ? std::to_string(*head.seed) : "");
    row("Session", head.session_id);
    row("Begun", head.started_utc);
    row("Length", marking::clockText(head.last_tick));
    if (head.time_allowed_s)
      row("Allowed", marking::clockText(static_cast<std::int64_t>(*head.time_allowed_s * 100)));
    if (sheet_.aim)
      row("Done when",
          sheet_.aim->words + (sheet_.aim->reached_at
                                   ? ": at " + marking::clockText(*sheet_.aim->reached_at)
                                   : std::string(": it did not come to that")));
    if (head.unaided_until)
      row("Unaided", "up to " + marking::clockText(*head.unaided_until) +
                         "; the lines count what was done by then");
    row("Points",
        fmt::format("{:.4g} of {:.4g}, {} %; {:.4g} % needed", sheet_.totals.earned,
                    sheet_.totals.possible, marking::describePercent(sheet_.totals.percent),
                    sheet_.pass.pass_percent));
    row("Good until", goodWords());
    row("Recorded by", head.program_version.empty() ? "a program whose version was not recorded"
                                                    : "version " + head.program_version);
    row("Report by", in_.program.empty() ? "" : "version " + in_.program);
    row("File, SHA-256", in_.digest);
    put("</table>\n");
  }

  void putNotes(const char* title, const std::vector<marking::SheetNote>& notes) {
    if (notes.empty()) return;
    put(fmt::format("<h3>{}</h3>\n<table>\n", title));
    for (const marking::SheetNote& note : notes) row(marking::clockText(note.tick), note.text);
    put("</table>\n");
  }
  void putNotes() {
    putNotes("Faults", sheet_.head.faults);
    putNotes("Freezes", sheet_.head.freezes);
    putNotes("Prompts", sheet_.head.prompts);
    putNotes("Pace of time", sheet_.head.paces);
    putNotes("Stepped in", sheet_.head.interventions);
    putNotes("Remarks", sheet_.head.remarks);
    putNotes("Taken again", sheet_.head.taken_again);
    putNotes("Model limits", sheet_.head.limits_met);
  }

  void putReadings(const SheetLine& line) {
    if (line.verdict.readings.empty()) return;
    const bool draws = line.verdict.outcome == marking::Outcome::kBroken;
    put(
        fmt::format("<table>\n<tr><th scope=\"col\">Read</th><th scope=\"col\">value</th>"
                    "<th scope=\"col\">true</th><th scope=\"col\">{}</th></tr>\n",
                    draws ? "20 s before to 5 s after (broken line: true)" : ""));
    for (const marking::Reading& reading : line.verdict.readings) {
      const unit::SignalInfo& info = unit::signalInfo(reading.signal);
      const std::string truth =
          reading.counterpart ? marking::describeValue(*reading.counterpart, reading.true_value)
                              : "";
      put(fmt::format(
          "<tr><td>{}<br><small>{}</small></td><td class=\"n\">{}</td><td class=\"n\">{}</td>"
          "<td>{}</td></tr>\n",
          escapeHtml(info.name), escapeHtml(info.text),
          escapeHtml(marking::describeValue(reading.signal, reading.value)), escapeHtml(truth),
          draws ? drawStrip(in_.history, reading, line.verdict.tick) : ""));
    }
    put("</table>\n");
  }

  void putLine(const SheetLine& line) {
    const marking::Verdict& verdict = line.verdict;
    const bool broken = verdict.outcome == marking::Outcome::kBroken;
    std::string more = line.fails_run ? ", fails the run" : "";
    if (broken && verdict.judged_as != line.rule_class)
      more += fmt::format(", counted as {}", marking::wordOf(verdict.judged_as));
    if (line.possible > 0) more += fmt::format(" [{:.4g} of {:.4g}]", line.earned, line.possible);
    put(fmt::format("<div class=\"line\">\n<h3>{}. {} {}: <span class=\"word\">{}</span>{}</h3>\n",
                    line.number, escapeHtml(marking::wordOf(line.rule_class)),
                    escapeHtml(line.title), escapeHtml(line.verdictText()), more));
    if (verdict.outcome != marking::Outcome::kNotExercised) {
      const std::string margin = marking::describeMargin(verdict);
      paragraph("", verdict.reason + (margin.empty() ? "" : " (" + margin + ")"));
      paragraph("Way taken", verdict.way);
    }
    if (broken && verdict.corrected_after_s)
      paragraph("Lasted", fmt::format("{:.4g} s", *verdict.corrected_after_s));
    if (broken) paragraph("Done", verdict.act);
    for (const std::string& detail : verdict.details) paragraph("", detail);
    putReadings(line);
    if (broken) {
      paragraph("Why", line.why);
      paragraph("Instead", line.advice);
    }
    paragraph("Tolerance", line.tolerance);
    if (line.override_record)
      paragraph("Overridden",
                fmt::format("by {}, {}: {} (recorded: {})",
                            line.override_record->who.empty() ? "somebody whose name was erased"
                                                              : line.override_record->who,
                            line.override_record->when_utc, line.override_record->reason,
                            marking::wordOf(verdict.outcome)));
    put("</div>\n");
  }

  void putLines() {
    put("<h2>Lines</h2>\n");
    std::string phase;
    for (const SheetLine& line : sheet_.lines) {
      const bool critical = line.rule_class == marking::RuleClass::kCritical;
      const std::string heading = critical ? "Critical" : line.phase;
      if (heading != phase) put(fmt::format("<h3>{}</h3>\n", escapeHtml(heading)));
      phase = heading;
      putLine(line);
    }
  }

  void putJudgements() {
    if (!sheet_.judgements || sheet_.judgements->rows.empty()) return;
    put("<h2>What was looked at and judged</h2>\n<table>\n<tr><th scope=\"col\">Time</th>"
        "<th scope=\"col\">Item</th><th scope=\"col\">True</th><th scope=\"col\">Judged</th>"
        "<th scope=\"col\">From</th><th scope=\"col\">Looked</th><th scope=\"col\">Result</th>"
        "</tr>\n");
    for (const marking::JudgementRow& judged : sheet_.judgements->rows) {
      put(fmt::format(
          "<tr><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{}</td>"
          "<td class=\"n\">{:.1f} s</td><td>{}</td></tr>\n",
          judged.judged.empty() ? "" : marking::clockText(judged.tick), escapeHtml(judged.item),
          escapeHtml(judged.truth), escapeHtml(judged.judged), escapeHtml(judged.place),
          judged.looked_s, escapeHtml(marking::describeResult(judged))));
    }
    put("</table>\n");
    const marking::JudgementTable& table = *sheet_.judgements;
    paragraph("", fmt::format("Hits {}, misses {}, not judged {}, false alarms {}, not sure {}, "
                              "not looked {}.",
                              table.hits, table.misses, table.not_judged, table.false_alarms,
                              table.unsure, table.empty));
  }

  static std::string nameOf(const Entry& entry) {
    return entry.by.name.empty() ? "somebody whose name was erased"
                                 : escapeHtml(entry.by.role + " " + entry.by.name);
  }

  void putEntries() {
    if (in_.reviewed.entries.empty()) return;
    put("<h2>Added after the seal</h2>\n<table>\n");
    for (const Entry& entry : in_.reviewed.entries)
      put(fmt::format("<tr><td class=\"n\">{}</td><td>{}</td><td>{}</td><td>{}: {}</td></tr>\n",
                      entry.seq, escapeHtml(entry.utc), nameOf(entry),
                      escapeHtml(kindOf(entry.content)), escapeHtml(describe(entry.content))));
    put("</table>\n");
  }

  void putCautions() {
    put("<div class=\"caution\">Caution: a training aid only. It is generic, models no particular "
        "vehicle and gives no authority to drive. The operator's rule book, the vehicle's own "
        "manual and a licensed instructor or assessor decide. Working around stabled trains, "
        "rotating shafts, compressed air and moving vehicles kills people. A mark is one "
        "occasion. Who does not agree with a line can ask for a second assessor on the same "
        "record.</div>\n");
  }

  const ReportInput& in_;
  const marking::MarkSheet& sheet_;
  std::string out_;
};

std::vector<unit::Signal> signalsOf(const marking::MarkSheet& sheet) {
  std::vector<unit::Signal> signals;
  for (const SheetLine& line : sheet.lines)
    for (const marking::Reading& reading : line.verdict.readings) {
      signals.push_back(reading.signal);
      if (reading.counterpart) signals.push_back(*reading.counterpart);
    }
  return signals;
}

}  // namespace

std::string escapeHtml(std::string_view text) {
  std::string escaped;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    switch (c) {
      case '&':
        escaped += "&amp;";
        break;
      case '<':
        escaped += "&lt;";
        break;
      case '>':
        escaped += "&gt;";
        break;
      case '"':
        escaped += "&quot;";
        break;
      case '\'':
        escaped += "&#39;";
        break;
      default:
        escaped += (byte < 0x20 && c != '\n' && c != '\t') || byte == 0x7f ? '?' : c;
    }
  }
  return escaped;
}

ReportInput loadReport(const std::filesystem::path& file) {
  const session::Store store(file);
  const auto digest = session::digestOfFile(file);
  if (!digest) throw session::SessionError(file.string() + ": cannot be read");
  Reviewed reviewed = reviewSession(store);
  const std::vector<unit::Signal> signals = signalsOf(reviewed.sheet);
  ReportInput input{std::move(reviewed),
                    session::verifySession(file),
                    session::SignalHistory(signals),
                    describePlant(store.header()),
                    lookAt(file),
                    session::toHex(*digest),
                    {},
                    {},
                    {},
                    {}};
  store.show(input.history);
  return input;
}

std::string makeHtmlReport(const ReportInput& input) { return Page(input).write(); }

}  // namespace cabwright::review
