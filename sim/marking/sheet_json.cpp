// SPDX-License-Identifier: GPL-3.0-or-later
// The mark sheet as JSON. What has no value is null, so that every key is always there.
#include <nlohmann/json.hpp>

#include "marking/sheet.h"

namespace cabwright::marking {
namespace {

using nlohmann::json;

template <typename T>
json orNull(const std::optional<T>& value) {
  return value ? json(*value) : json(nullptr);
}

json notesToJson(const std::vector<SheetNote>& notes) {
  json all = json::array();
  for (const SheetNote& note : notes) {
    all.push_back({{"tick", note.tick}, {"time", clockText(note.tick)}, {"text", note.text}});
  }
  return all;
}

json headToJson(const SheetHead& h) {
  return {{"title", h.title},
          {"purpose", h.purpose},
          {"trainee", h.trainee},
          {"instructor", h.instructor},
          {"assessor", h.assessor},
          {"attempt", h.attempt},
          {"mode", h.mode},
          {"scenario", h.scenario},
          {"scenario_hash", h.scenario_hash},
          {"vehicle", h.vehicle},
          {"route", h.route},
          {"conditions_told", h.conditions_told},
          {"session_id", h.session_id},
          {"session_hash", h.session_hash},
          {"started_utc", h.started_utc},
          {"plant_version", h.plant_version},
          {"program_version", h.program_version},
          {"seed", orNull(h.seed)},
          {"last_tick", h.last_tick},
          {"time_allowed_s", orNull(h.time_allowed_s)},
          {"faults", notesToJson(h.faults)},
          {"freezes", notesToJson(h.freezes)},
          {"prompts", notesToJson(h.prompts)},
          {"paces", notesToJson(h.paces)},
          {"interventions", notesToJson(h.interventions)},
          {"remarks", notesToJson(h.remarks)},
          {"taken_again", notesToJson(h.taken_again)},
          {"unaided_until", orNull(h.unaided_until)},
          {"limits_met", notesToJson(h.limits_met)}};
}

json readingsToJson(const std::vector<Reading>& readings) {
  json all = json::array();
  for (const Reading& r : readings) {
    const unit::SignalInfo& info = unit::signalInfo(r.signal);
    json one = {{"signal", info.name},
                {"value", r.value},
                {"unit", info.unit},
                {"true_signal", nullptr},
                {"true_value", nullptr}};
    if (r.counterpart) {
      one["true_signal"] = unit::signalInfo(*r.counterpart).name;
      one["true_value"] = r.true_value;
    }
    all.push_back(std::move(one));
  }
  return all;
}

json overrideToJson(const std::optional<Override>& o) {
  if (!o) return nullptr;
  return {{"who", o->who},
          {"when_utc", o->when_utc},
          {"reason", o->reason},
          {"outcome", o->outcome ? json(wordOf(*o->outcome)) : json(nullptr)}};
}

json lineToJson(const SheetLine& line) {
  const Verdict& v = line.verdict;
  return {{"line", line.number},
          {"id", line.id},
          {"phase", line.phase},
          {"title", line.title},
          {"why", line.why},
          {"advice", line.advice},
          {"tolerance", line.tolerance},
          {"class", wordOf(line.rule_class)},
          {"critical", line.rule_class == RuleClass::kCritical},
          {"reads", wordOf(line.reads)},
          {"weight", line.weight},
          {"verdict", wordOf(v.outcome)},
          {"shown_as", line.verdictText()},
          {"final", v.is_final},
          {"tick", v.tick},
          {"time", clockText(v.tick)},
          {"judged_as", wordOf(v.judged_as)},
          {"inside_tolerance", v.inside_tolerance},
          {"margin", orNull(v.margin)},
          {"margin_unit", v.unit},
          {"reason", v.reason},
          {"act", v.act},
          {"way", v.way},
          {"details", v.details},
          {"readings", readingsToJson(v.readings)},
          {"times_exercised", v.times_exercised},
          {"times_broken", v.times_broken},
          {"corrected_after_s", orNull(v.corrected_after_s)},
          {"with_help", line.aided_outcome ? json(wordOf(*line.aided_outcome)) : json(nullptr)},
          {"follows_line", orNull(line.follows_line)},
          {"prompted_at", orNull(line.prompted_at)},
          {"self_corrected_after_s", orNull(line.self_corrected_after_s)},
          {"void_reason", line.void_reason},
          {"override", overrideToJson(line.override_record)},
          {"possible", line.possible},
          {"earned", line.earned},
          {"fails_run", line.fails_run}};
}

json aimToJson(const std::optional<AimResult>& aim) {
  if (!aim) return nullptr;
  return {{"words", aim->words}, {"reached_at", orNull(aim->reached_at)}};
}

json judgementsToJson(const std::optional<JudgementTable>& table) {
  if (!table) return nullptr;
  json rows = json::array();
  for (const JudgementRow& row : table->rows) {
    rows.push_back({{"item", row.item},
                    {"true", row.truth},
                    {"defect", row.defect ? json(wordOf(*row.defect)) : json(nullptr)},
                    {"judged", row.judged},
                    {"judged_class", row.judged_class},
                    {"place", row.place},
                    {"looked_s", row.looked_s},
                    {"tick", row.tick},
                    {"revised", row.revised},
                    {"result", wordOf(row.result)},
                    {"not_looked", row.empty_entry}});
  }
  return {{"rows", std::move(rows)},
          {"hits", table->hits},
          {"misses", table->misses},
          {"not_judged", table->not_judged},
          {"false_alarms", table->false_alarms},
          {"right", table->right},
          {"unsure", table->unsure},
          {"not_looked", table->empty},
          {"missed_critical", table->missed_critical},
          {"possible", table->possible},
          {"earned", table->earned}};
}

}  // namespace

nlohmann::json sheetToJson(const MarkSheet& sheet) {
  json lines = json::array();
  for (const SheetLine& line : sheet.lines) lines.push_back(lineToJson(line));
  const SheetTotals& t = sheet.totals;
  return {{"head", headToJson(sheet.head)},
          {"pass_percent", sheet.pass.pass_percent},
          {"lines", std::move(lines)},
          {"aim", aimToJson(sheet.aim)},
          {"judgements", judgementsToJson(sheet.judgements)},
          {"totals",
           {{"possible", t.possible},
            {"earned", t.earned},
            {"percent", t.percent},
            {"met", t.met},
            {"broken", t.broken},
            {"following", t.following},
            {"not_exercised", t.not_exercised},
            {"pending", t.pending},
            {"void", t.voided},
            {"prompted", t.prompted}}},
          {"decision",
           {{"complete", sheet.decision.complete},
            {"passed", sheet.decision.passed},
            {"in_time", sheet.decision.in_time},
            {"failed_by", sheet.decision.failed_by},
            {"text", sheet.decision.text}}}};
}

std::string printSheetJson(const MarkSheet& sheet) {
  return sheetToJson(sheet).dump(2, ' ', false, json::error_handler_t::replace);
}

}  // namespace cabwright::marking
