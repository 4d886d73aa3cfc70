// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/marks_rows.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "after/finished_run.h"
#include "after/words.h"

namespace cabwright::review_room {

using drawing::VerdictSign;
using marking::Outcome;
using marking::RuleClass;
using marking::SheetLine;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(MarkSheet)
};

bool isBroken(const SheetLine& line) {
  return line.void_reason.empty() && line.outcome() == Outcome::kBroken;
}

bool passes(const SheetLine& line, MarkFilter filter) {
  switch (filter) {
    case MarkFilter::kAll:
      return true;
    case MarkFilter::kBroken:
      return isBroken(line);
    case MarkFilter::kCritical:
      return line.rule_class == RuleClass::kCritical;
    case MarkFilter::kOverridden:
      break;
  }
  return line.override_record.has_value();
}

bool isCommented(const std::vector<review::Entry>& entries, const std::string& rule) {
  return std::ranges::any_of(entries, [&rule](const review::Entry& entry) {
    const auto* comment = std::get_if<review::Comment>(&entry.content);
    return comment != nullptr && comment->rule == rule;
  });
}

MarkRow makeRow(const SheetLine& line, const std::vector<review::Entry>& entries) {
  MarkRow row;
  row.rule = line.id;
  row.number = line.number;
  row.title = after::sheetWords(line.title);
  row.verdict = verdictWord(line);
  if (line.override_record) row.was = outcomeWord(line.verdict.outcome);
  row.margin = marginText(line.verdict);
  const bool plain = line.outcome() == Outcome::kMet && !line.override_record;
  if (!plain && line.verdict.outcome != Outcome::kNotExercised)
    row.detail = after::sheetWords(line.verdict.reason);
  if (line.possible > 0)
    row.points =
        Words::tr("%1 of %2").arg(after::pointsText(line.earned), after::pointsText(line.possible));
  row.tick = findMoment(line);
  if (row.tick) row.moment = after::timeText(*row.tick);
  row.sign = signOf(line);
  row.critical = line.rule_class == RuleClass::kCritical;
  row.commented = isCommented(entries, line.id);
  return row;
}

// Criticals stand together; others under their phase.
QString headingOf(const SheetLine& line) {
  if (line.rule_class == RuleClass::kCritical) return Words::tr("Critical");
  if (line.phase.empty()) return Words::tr("Other lines");
  QString words = after::sheetWords(line.phase);
  words[0] = words[0].toUpper();
  return words;
}

QString sumText(const std::vector<const SheetLine*>& lines) {
  if (lines.front()->rule_class == RuleClass::kCritical) return Words::tr("one broken fails");
  double earned = 0, possible = 0;
  for (const SheetLine* line : lines) {
    earned += line->earned;
    possible += line->possible;
  }
  if (possible <= 0) return Words::tr("no points");
  return Words::tr("%1 of %2 points").arg(after::pointsText(earned), after::pointsText(possible));
}

}  // namespace

QString outcomeWord(Outcome outcome) { return after::sheetWords(marking::wordOf(outcome)); }

QString verdictWord(const SheetLine& line) {
  if (!line.void_reason.empty()) return Words::tr("void");
  if (line.follows_line) return Words::tr("follows from line %1").arg(*line.follows_line);
  if (line.outcome() == Outcome::kMet && line.prompted_at) return Words::tr("met, prompted");
  if (line.self_corrected_after_s)
    return Words::tr("self-corrected after %1 s")
        .arg(after::pointsText(*line.self_corrected_after_s));
  return outcomeWord(line.outcome());
}

QString marginText(const marking::Verdict& verdict) {
  if (!verdict.margin || verdict.unit.empty()) return {};
  const double much = std::abs(*verdict.margin);
  const QString words = (QString::number(much, 'f', much >= 100 ? 0 : 1) + QLatin1Char(' ') +
                         after::sheetWords(verdict.unit))
                            .trimmed();
  return *verdict.margin >= 0 ? Words::tr("margin %1").arg(words)
                              : Words::tr("missed by %1").arg(words);
}

VerdictSign signOf(const SheetLine& line) {
  if (!line.void_reason.empty()) return VerdictSign::kSeen;
  if (line.follows_line) return VerdictSign::kUnsure;
  switch (line.outcome()) {
    case Outcome::kMet:
      return line.prompted_at ? VerdictSign::kSeen : VerdictSign::kGood;
    case Outcome::kBroken:
      return line.verdict.judged_as == RuleClass::kTechnique ? VerdictSign::kUnsure
                                                             : VerdictSign::kDefect;
    case Outcome::kNotExercised:
    case Outcome::kPendingGood:
    case Outcome::kPendingBad:
      break;
  }
  return VerdictSign::kSeen;
}

std::optional<std::int64_t> findMoment(const SheetLine& line) {
  if (after::neverCame(line)) return std::nullopt;
  return line.verdict.tick;
}

std::vector<MarkRow> makeMarkRows(const marking::MarkSheet& sheet,
                                  const std::vector<review::Entry>& entries, MarkFilter filter) {
  std::vector<MarkRow> rows;
  std::vector<const SheetLine*> group;
  const auto close = [&] {
    if (group.empty()) return;
    MarkRow heading;
    heading.title = headingOf(*group.front());
    heading.points = sumText(group);
    rows.push_back(std::move(heading));
    for (const SheetLine* line : group) rows.push_back(makeRow(*line, entries));
    group.clear();
  };
  for (const SheetLine& line : sheet.lines) {
    if (!passes(line, filter)) continue;
    if (!group.empty() && headingOf(*group.front()) != headingOf(line)) close();
    group.push_back(&line);
  }
  close();
  return rows;
}

std::vector<MarkRow> makeBlindRows(const marking::MarkSheet& sheet,
                                   const std::vector<BlindDraft>& marked) {
  std::vector<const SheetLine*> lines;
  for (const SheetLine& line : sheet.lines) lines.push_back(&line);
  std::ranges::sort(lines, {}, &SheetLine::rule);
  std::vector<MarkRow> rows;
  for (const SheetLine* line : lines) {
    MarkRow row;
    row.rule = line->id;
    row.number = static_cast<int>(rows.size()) + 1;
    row.title = after::sheetWords(line->title);
    row.critical = line->rule_class == RuleClass::kCritical;
    row.sign = VerdictSign::kSeen;
    row.verdict = Words::tr("not marked yet");
    if (const auto mark = std::ranges::find(marked, line->id, &BlindDraft::rule);
        mark != marked.end()) {
      row.verdict = outcomeWord(mark->outcome);
      row.sign = mark->outcome == Outcome::kMet      ? VerdictSign::kGood
                 : mark->outcome == Outcome::kBroken ? VerdictSign::kDefect
                                                     : VerdictSign::kSeen;
    }
    rows.push_back(std::move(row));
  }
  return rows;
}

MarkCounts countMarks(const marking::MarkSheet& sheet) {
  const auto count = [&sheet](MarkFilter filter) {
    return static_cast<int>(std::ranges::count_if(
        sheet.lines, [filter](const SheetLine& line) { return passes(line, filter); }));
  };
  return {count(MarkFilter::kAll), count(MarkFilter::kBroken), count(MarkFilter::kCritical),
          count(MarkFilter::kOverridden)};
}

std::string findRowAt(const std::vector<MarkRow>& rows, std::int64_t tick,
                      const std::string& kept) {
  const MarkRow* found = nullptr;
  for (const MarkRow& row : rows) {
    if (row.rule.empty() || !row.tick || *row.tick > tick) continue;
    const bool later = found == nullptr || *row.tick > *found->tick;
    if (later || (*row.tick == *found->tick && row.rule == kept)) found = &row;
  }
  return found == nullptr ? std::string() : found->rule;
}

}  // namespace cabwright::review_room
