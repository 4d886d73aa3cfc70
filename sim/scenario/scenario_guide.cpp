// SPDX-License-Identifier: GPL-3.0-or-later
// The guide of a scenario: shared ones one after the other, less what is left out, with own steps.
#include <algorithm>
#include <set>

#include "scenario/guide_reader.h"
#include "scenario/scenario_parts.h"
#include "unit/nearest_name.h"

namespace cabwright::scenario {

namespace {

std::vector<std::string_view> idsOf(const std::vector<GuideStep>& steps) {
  std::vector<std::string_view> ids;
  ids.reserve(steps.size());
  for (const GuideStep& step : steps) ids.push_back(step.id);
  return ids;
}

std::vector<GuideStep>::iterator findStep(std::vector<GuideStep>& steps, std::string_view id) {
  return std::ranges::find(steps, id, &GuideStep::id);
}

class GuideBuilder {
 public:
  GuideBuilder(const Library& library, std::vector<LoadedScenario::Source>& sources,
               FileFaults& others)
      : library_(library), sources_(sources), others_(others) {}

  void build(TableReader& table, std::vector<GuideStep>& steps) {
    for (const TableReader::Text& name : table.texts("use")) use(name, table, steps);
    for (const TableReader::Text& id : table.texts("without")) {
      if (const auto step = findStep(steps, id.text); step != steps.end())
        steps.erase(step);
      else if (is_whole_)
        table.sink().add(id.at, unit::unknownWord("step", id.text, idsOf(steps)));
    }
    for (WrittenStep& written : readGuideSteps(table, true)) place(written, table, steps);
    if (!table.has("use") && !table.has("step") && !table.isLenient())
      table.sink().add(table.at(), "[guide] needs 'use' or [[guide.step]]");
    fillPhases(steps);
    table.finish();
  }

 private:
  void use(const TableReader::Text& name, TableReader& table, std::vector<GuideStep>& steps) {
    auto found = library_.find(Shelf::kGuides, name.text);
    if (const auto* why = std::get_if<std::string>(&found)) {
      const std::vector<std::string> names = library_.names(Shelf::kGuides);
      const std::vector<std::string_view> views(names.begin(), names.end());
      const bool known = std::ranges::find(names, name.text) != names.end();
      table.sink().add(name.at, known ? *why : unit::unknownWord("guide", name.text, views));
      is_whole_ = false;
      return;
    }
    const SourceFile& file = std::get<SourceFile>(found);
    if (!used_.insert(name.text).second) {
      table.sink().add(name.at, "the guide '" + printable(name.text) + "' is there already");
      return;
    }
    sources_.push_back({std::string(wordOf(Shelf::kGuides)), name.text, file.text});
    GuideFile read = readGuideFile(file);
    is_whole_ = is_whole_ && read.faults.empty();
    others_.insert(others_.end(), read.faults.begin(), read.faults.end());
    fillPhases(read.guide.steps);
    for (GuideStep& step : read.guide.steps) {
      if (findStep(steps, step.id) != steps.end())
        table.sink().add(name.at, "the step '" + printable(step.id) + "' of the guide '" +
                                      printable(name.text) + "' is there already");
      steps.push_back(std::move(step));
    }
  }

  void place(WrittenStep& written, TableReader& table, std::vector<GuideStep>& steps) {
    if (!written.step.id.empty() && findStep(steps, written.step.id) != steps.end())
      table.sink().add(written.id_at,
                       "there is a step '" + printable(written.step.id) + "' already");
    const auto& beside = written.before ? written.before : written.after;
    auto at = steps.end();
    if (beside) {
      at = findStep(steps, *beside);
      if (at == steps.end() && is_whole_ && !table.sink().isFull())
        table.sink().add(written.beside_at, unit::unknownWord("step", *beside, idsOf(steps)));
      if (at != steps.end()) {
        if (written.step.phase.empty()) written.step.phase = at->phase;
        if (written.after) ++at;
      }
    }
    steps.insert(at, std::move(written.step));
  }

  static void fillPhases(std::vector<GuideStep>& steps) {
    for (std::size_t k = 1; k < steps.size(); ++k)
      if (steps[k].phase.empty()) steps[k].phase = steps[k - 1].phase;
  }

  const Library& library_;
  std::vector<LoadedScenario::Source>& sources_;
  FileFaults& others_;
  std::set<std::string> used_;
  bool is_whole_ = true;  ///< all that is used could be read
};

}  // namespace

void readGuide(TableReader& root, ScenarioDraft& draft, const Library& library,
               std::vector<LoadedScenario::Source>& sources, FileFaults& others) {
  auto table = root.table("guide");
  if (!table) return;
  GuideBuilder(library, sources, others).build(*table, draft.scenario.guide.steps);
}

}  // namespace cabwright::scenario
