// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/guide.h"

#include <algorithm>
#include <set>

#include "scenario/guide_reader.h"
#include "scenario/quantity_text.h"
#include "scenario/scenario_parts.h"
#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

std::vector<std::string_view> pointNames() {
  std::vector<std::string_view> names;
  for (const auto& info : unit::controlTable()) names.push_back(info.name);
  for (const auto& info : unit::itemTable()) names.push_back(info.name);
  for (const auto& info : unit::placeTable()) names.push_back(info.name);
  for (const auto& info : unit::objectTable()) names.push_back(info.name);
  for (const auto& info : unit::signalTable())
    if (info.layer == unit::Layer::kShown) names.push_back(info.name);
  return names;
}

void readPoints(TableReader& table, GuideStep& step) {
  for (const TableReader::Text& text : table.texts("points")) {
    if (const auto point = findGuidePoint(text.text)) {
      step.points.push_back(*point);
      continue;
    }
    if (table.sink().isFull()) return;
    table.sink().add(text.at, unit::unknownWord("thing to point at", text.text, pointNames()));
  }
}

void readActs(TableReader& table, GuideStep& step) {
  for (const TableReader::Text& text : table.texts("acts")) {
    const auto named = std::ranges::find(unit::phraseTable(), text.text, &unit::PhraseInfo::name);
    if (named != unit::phraseTable().end()) {
      step.acts.push_back(named->id);
      continue;
    }
    if (table.sink().isFull()) return;
    std::vector<std::string_view> names;
    for (const auto& info : unit::phraseTable()) names.push_back(info.name);
    table.sink().add(text.at, unit::unknownWord("thing to say or do", text.text, names));
  }
}

void readPlace(TableReader& table, GuideStep& step) {
  const auto name = table.text("place");
  if (!name) return;
  step.place = unit::findPlace(*name);
  if (step.place) return;
  std::vector<std::string_view> names;
  for (const auto& info : unit::placeTable()) names.push_back(info.name);
  table.sink().add(table.placeOfValue("place"), unit::unknownWord("place", *name, names));
}

// A guide knows no more than who is guided by it.
std::optional<unit::Condition> readGuideCondition(TableReader& table, std::string_view key) {
  auto condition = readCondition(table, key);
  if (!condition) return std::nullopt;
  for (const unit::Signal signal : condition->signals()) {
    const unit::SignalInfo& info = unit::signalInfo(signal);
    if (info.layer != unit::Layer::kTrue) continue;
    table.sink().add(table.placeOfValue(key), "'" + std::string(key) +
                                                  "' reads what is shown and done, but " +
                                                  std::string(info.name) + " is the truth");
  }
  return condition;
}

void readBeside(TableReader& table, WrittenStep& written) {
  written.before = table.text("before");
  written.after = table.text("after");
  if (written.before && written.after)
    table.sink().add(table.placeOfKey("after"), "both 'before' and 'after'; one is enough");
  if (written.before || written.after)
    written.beside_at = table.placeOfValue(written.before ? "before" : "after");
}

}  // namespace

std::optional<GuidePoint> findGuidePoint(std::string_view name) {
  if (const auto control = unit::findControl(name)) return *control;
  if (const auto item = unit::findItem(name)) return *item;
  if (const auto place = unit::findPlace(name)) return *place;
  if (const auto object = unit::findObject(name)) return *object;
  const auto signal = unit::findSignal(name);
  if (!signal || unit::signalInfo(*signal).layer != unit::Layer::kShown) return std::nullopt;
  return *signal;
}

unit::Signal countOf(unit::Phrase phrase) {
  const auto& info = unit::phraseTable()[unit::indexOf(phrase)];
  const std::string verb = info.verb == unit::PhraseVerb::kSay ? "said." : "did.";
  return *unit::findSignal(verb + std::string(info.name));
}

WrittenStep readGuideStep(TableReader& table, bool own) {
  WrittenStep written;
  GuideStep& step = written.step;
  step.id = table.text("id", Need::kMust).value_or("");
  written.id_at = table.has("id") ? table.placeOfValue("id") : table.at();
  step.act = table.text("do", Need::kMust).value_or("");
  step.why = table.text("why", Need::kMust).value_or("");
  step.phase = table.text("phase").value_or("");
  step.alternative = table.text("alternative").value_or("");
  readPlace(table, step);
  readPoints(table, step);
  if (table.find("done", Need::kMust) != nullptr)
    step.done = readGuideCondition(table, "done").value_or(unit::Condition());
  readActs(table, step);
  if (table.has("meanwhile")) step.meanwhile = readGuideCondition(table, "meanwhile");
  if (table.has("past")) step.past = readGuideCondition(table, "past");
  if (table.has("when")) step.when = readGuideCondition(table, "when");
  step.anytime = table.flag("anytime").value_or(false);
  if (own) readBeside(table, written);
  table.finish();
  return written;
}

std::vector<WrittenStep> readGuideSteps(TableReader& root, bool own) {
  std::vector<WrittenStep> steps;
  std::vector<TableReader> tables = root.tables("step");
  if (tables.size() > kMostSteps) {
    root.sink().add(root.placeOfKey("step"), "more than 500 steps");
    return steps;
  }
  std::set<std::string> ids;
  for (TableReader& table : tables) {
    WrittenStep written = readGuideStep(table, own);
    if (!written.step.id.empty() && !ids.insert(written.step.id).second)
      root.sink().add(written.id_at,
                      "there is a step '" + printable(written.step.id) + "' already");
    steps.push_back(std::move(written));
  }
  return steps;
}

GuideFile readGuideFile(const SourceFile& file) {
  FaultSink sink(file);
  const TomlFile toml = parseToml(file, sink);
  TableReader root(toml.root, sink, "a guide", toml.broken);
  (void)root.text("title");
  GuideFile read;
  for (WrittenStep& written : readGuideSteps(root, false))
    read.guide.steps.push_back(std::move(written.step));
  root.finish();
  if (read.guide.steps.empty() && sink.isEmpty())
    sink.add(1, 1, "a guide needs one [[step]] at least");
  read.faults = sink.take();
  return read;
}

std::variant<Guide, FileFaults> parseGuide(const SourceFile& file) {
  GuideFile read = readGuideFile(file);
  if (!read.faults.empty()) return std::move(read.faults);
  return std::move(read.guide);
}

}  // namespace cabwright::scenario
