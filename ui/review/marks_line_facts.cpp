// SPDX-License-Identifier: GPL-3.0-or-later
// All of one line of the mark sheet, the judgements, and the totals.
#include <QCoreApplication>
#include <cmath>

#include "after/finding.h"
#include "after/words.h"
#include "review_room/marks_facts.h"
#include "review_room/marks_rows.h"
#include "review_room/marks_style.h"

namespace cabwright::review_room {

using drawing::Tone;
using marking::SheetLine;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(MarkSheet)
};

void put(FactGroup& group, const QString& name, const QString& value) {
  if (!value.isEmpty()) group.facts.push_back({name, value});
}

void putVerdict(FactGroup& group, const SheetLine& line) {
  const marking::Verdict& verdict = line.verdict;
  Fact counts{Words::tr("Counts as"), verdictWord(line)};
  counts.tone = drawing::toneOf(signOf(line));
  counts.strong = true;
  group.facts.push_back(counts);
  if (line.override_record) put(group, Words::tr("Recorded as"), outcomeWord(verdict.outcome));
  if (line.aided_outcome) put(group, Words::tr("With help"), outcomeWord(*line.aided_outcome));
  if (line.fails_run) group.facts.push_back({{}, Words::tr("decides the run"), {}, Tone::kBad});
  QString weight = after::className(line.rule_class);
  if (line.outcome() == marking::Outcome::kBroken && verdict.judged_as != line.rule_class)
    weight += QLatin1String(", ") +
              Words::tr("this breach as %1").arg(after::className(verdict.judged_as));
  put(group, Words::tr("Class"), weight);
  put(group, Words::tr("Weight"),
      line.possible > 0 ? Words::tr("%1, earned %2")
                              .arg(after::pointsText(line.weight), after::pointsText(line.earned))
                        : Words::tr("%1, not counted").arg(after::pointsText(line.weight)));
}

void putEvidence(FactGroup& group, const SheetLine& line) {
  const marking::Verdict& verdict = line.verdict;
  if (const auto moment = findMoment(line))
    group.facts.push_back(
        {after::timeText(*moment, true), after::sheetWords(verdict.reason), moment});
  else
    put(group, Words::tr("Seen"), after::sheetWords(verdict.reason));
  if (!marginText(verdict).isEmpty())
    put(group, Words::tr("Margin"), marginText(verdict));
  else if (verdict.margin)
    put(group, Words::tr("Margin"), QString::number(*verdict.margin, 'f', 1));
  if (verdict.inside_tolerance) put(group, {}, Words::tr("inside the tolerance"));
  if (!verdict.act.empty()) put(group, Words::tr("Done"), after::actText(verdict.act));
  put(group, Words::tr("Way taken"), after::sheetWords(verdict.way));
  for (const std::string& detail : verdict.details) put(group, {}, after::sheetWords(detail));
  if (line.prompted_at)
    group.facts.push_back({after::timeText(*line.prompted_at),
                           Words::tr("was prompted: earns nothing"), line.prompted_at});
  if (verdict.times_exercised > 1)
    put(group, Words::tr("Times"),
        Words::tr("came up %1 times, broken %2 times")
            .arg(verdict.times_exercised)
            .arg(verdict.times_broken));
  if (verdict.corrected_after_s)
    put(group, Words::tr("Put right"),
        Words::tr("by itself after %1 s").arg(after::pointsText(*verdict.corrected_after_s)));
  for (const marking::Reading& reading : verdict.readings) {
    QString value = after::valueText(reading.signal, static_cast<double>(reading.value));
    if (reading.counterpart)
      value +=
          QLatin1String(", ") +
          Words::tr("in truth %1")
              .arg(after::valueText(*reading.counterpart, static_cast<double>(reading.true_value)));
    put(group, after::signalName(reading.signal), value);
  }
}

// Every override of the line, the last one counting, and every comment on it.
FactGroup saidOf(const std::vector<review::Entry>& entries, const std::string& rule) {
  FactGroup group{Words::tr("Said of this line"), {}};
  for (const review::Entry& entry : entries) {
    const auto* given = std::get_if<review::Override>(&entry.content);
    const auto* comment = std::get_if<review::Comment>(&entry.content);
    const QString by = personName(entry.by) + QLatin1String(", ") + utcText(entry.utc);
    if (given != nullptr && given->rule == rule) {
      const QString what =
          given->outcome
              ? Words::tr("%1 \u2192 %2")
                    .arg(after::sheetWords(given->old_verdict), outcomeWord(*given->outcome))
              : Words::tr("%1 \u2192 void").arg(after::sheetWords(given->old_verdict));
      group.facts.push_back(
          {Words::tr("Override"),
           what + QLatin1String(": ") + toQt(given->reason) + QLatin1Char('\n') + by});
    }
    if (comment != nullptr && comment->rule == rule)
      group.facts.push_back(
          {Words::tr("Comment"), toQt(comment->text) + QLatin1Char('\n') + by, comment->tick});
  }
  return group;
}

}  // namespace

std::vector<FactGroup> makeLineFacts(const Opened& opened, const SheetLine& line) {
  FactGroup verdict{Words::tr("%1. %2").arg(line.number).arg(after::sheetWords(line.title)), {}};
  putVerdict(verdict, line);
  FactGroup evidence{Words::tr("Evidence"), {}};
  putEvidence(evidence, line);
  FactGroup rule{Words::tr("The rule"), {}};
  put(rule, Words::tr("Why"), after::sheetWords(line.why));
  put(rule, Words::tr("Next time"), after::sheetWords(line.advice));
  put(rule, Words::tr("Tolerance"), after::sheetWords(line.tolerance));
  put(rule, Words::tr("Reads"),
      line.reads == marking::Reads::kShown ? Words::tr("what was shown")
                                           : Words::tr("what was so"));
  put(rule, Words::tr("Rule"), toQt(line.id));
  return {verdict, saidOf(opened.entries(), line.id), evidence, rule};
}

FactGroup makeJudgementFacts(const marking::MarkSheet& sheet) {
  FactGroup group{Words::tr("Items looked at and judged"), {}};
  if (!sheet.judgements) return group;
  const marking::JudgementTable& table = *sheet.judgements;
  group.facts.push_back({Words::tr("Points"), Words::tr("%1 of %2")
                                                  .arg(after::pointsText(table.earned),
                                                       after::pointsText(table.possible))});
  for (const marking::JudgementRow& row : table.rows) {
    const bool good = row.result == marking::JudgementResult::kHit ||
                      row.result == marking::JudgementResult::kRight;
    const QString judged =
        row.judged.empty() ? Words::tr("not judged") : after::sheetWords(row.judged);
    QString words = Words::tr("%1. Was: %2; judged: %3")
                        .arg(after::sheetWords(marking::wordOf(row.result)),
                             after::truthText(row.item, row.truth), judged);
    if (row.empty_entry) words += Words::tr("; not looked at for long enough");
    if (row.revised > 0) words += Words::tr("; changed");
    Fact fact{after::itemName(row.item), words};
    if (row.tick > 0) fact.tick = row.tick;
    fact.tone = good && !row.empty_entry ? Tone::kInk
                : row.result == marking::JudgementResult::kMiss ||
                        row.result == marking::JudgementResult::kNotJudged
                    ? Tone::kBad
                    : Tone::kDoubt;
    group.facts.push_back(std::move(fact));
  }
  return group;
}

std::vector<FactGroup> makeTotalFacts(const marking::MarkSheet& sheet) {
  const marking::SheetTotals& totals = sheet.totals;
  FactGroup group{Words::tr("Totals"), {}};
  put(group, Words::tr("Points"),
      Words::tr("%1 of %2, %3 %")
          .arg(after::pointsText(totals.earned), after::pointsText(totals.possible),
               after::pointsText(std::floor(totals.percent + 1e-9))));
  put(group, Words::tr("Pass mark"),
      Words::tr("%1 %").arg(after::pointsText(sheet.pass.pass_percent)));
  QStringList counts;
  const auto count = [&counts](int number, const QString& words) {
    if (number > 0) counts << words.arg(number);
  };
  count(totals.met, Words::tr("%1 met"));
  count(totals.prompted, Words::tr("%1 met after a prompt"));
  count(totals.broken, Words::tr("%1 broken"));
  count(totals.following, Words::tr("%1 following from others"));
  count(totals.not_exercised, Words::tr("%1 not exercised"));
  count(totals.pending, Words::tr("%1 open"));
  count(totals.voided, Words::tr("%1 void"));
  put(group, Words::tr("Lines"), counts.join(QLatin1String(", ")));
  if (sheet.aim)
    group.facts.push_back(
        {sheet.aim->reached_at ? after::timeText(*sheet.aim->reached_at) : Words::tr("Aim"),
         sheet.aim->reached_at
             ? Words::tr("reached: %1").arg(after::aimWords(sheet.aim->words))
             : Words::tr("not reached: %1").arg(after::aimWords(sheet.aim->words)),
         sheet.aim->reached_at});
  if (!sheet.decision.in_time) put(group, Words::tr("Time"), Words::tr("over the time allowed"));
  Fact come{Words::tr("The marks come to"), after::makeFinding(sheet).sentence};
  come.strong = true;
  come.tone = sheet.decision.passed ? Tone::kGood : Tone::kBad;
  group.facts.push_back(come);
  return {group};
}

}  // namespace cabwright::review_room
