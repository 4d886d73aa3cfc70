// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/exercises.h"

#include <algorithm>
#include <tuple>

#include "cab/names.h"
#include "session/situation.h"

namespace cabwright::desktop {
namespace fs = std::filesystem;
namespace {

QString keyOf(const std::string& exercise) {
  return QStringLiteral("results/") + QString::fromStdString(exercise);
}

Exercise loadOne(const fs::path& folder, const fs::path& scenarios) {
  Exercise e;
  e.name = folder.filename().string();
  e.file = folder / "scenario.toml";
  e.title = QString::fromStdString(e.name);
  const auto loaded = session::loadSituation(e.file.string(), scenarios);
  if (const auto* faults = std::get_if<scenario::FileFaults>(&loaded)) {
    e.fault = faults->empty() ? QStringLiteral("?")
                              : QString::fromStdString(scenario::toText(faults->front()));
    return e;
  }
  const auto& situation = std::get<session::Situation>(loaded);
  const scenario::Scenario& s = situation.loaded.scenario;
  e.title = cab::exerciseWords(s.title);
  e.summary = cab::exerciseWords(s.summary);
  e.purpose = cab::exerciseWords(s.purpose);
  for (const std::string& words : s.teaches) e.teaches << cab::exerciseWords(words);
  e.level = s.level.value_or(0);
  if (s.time_allowed_s) e.minutes_allowed = *s.time_allowed_s / 60;
  e.can_be_assessed = !s.rules.empty() && s.aim.has_value() && s.pass_percent > 0;
  e.has_guide = !s.guide.steps.empty();
  return e;
}

}  // namespace

std::vector<Exercise> loadExercises(const fs::path& scenarios) {
  std::vector<Exercise> list;
  std::error_code failed;
  for (const auto& entry : fs::directory_iterator(scenarios, failed)) {
    std::error_code ignored;
    if (fs::exists(entry.path() / "scenario.toml", ignored))
      list.push_back(loadOne(entry.path(), scenarios));
  }
  std::ranges::sort(list, [](const Exercise& a, const Exercise& b) {
    const int la = a.level == 0 ? 9 : a.level, lb = b.level == 0 ? 9 : b.level;
    return std::tie(la, a.title) < std::tie(lb, b.title);
  });
  return list;
}

void addResults(std::vector<Exercise>& exercises, QSettings& settings) {
  for (Exercise& e : exercises) {
    settings.beginGroup(keyOf(e.name));
    if (settings.contains(QStringLiteral("times"))) {
      BestResult best;
      best.passed = settings.value(QStringLiteral("passed")).toBool();
      best.percent = settings.value(QStringLiteral("percent")).toDouble();
      best.when = settings.value(QStringLiteral("when")).toString();
      best.mode = settings.value(QStringLiteral("mode")).toString();
      best.times = settings.value(QStringLiteral("times")).toInt();
      e.best = best;
    }
    settings.endGroup();
  }
}

void keepResult(QSettings& settings, const std::string& exercise, const marking::MarkSheet& sheet,
                scenario::Mode mode, const QDateTime& when) {
  settings.beginGroup(keyOf(exercise));
  const int times = settings.value(QStringLiteral("times")).toInt();
  const bool passed_before = settings.value(QStringLiteral("passed")).toBool();
  const double percent_before = settings.value(QStringLiteral("percent")).toDouble();
  const auto rank = [](bool passed, double percent) { return std::pair(passed, percent); };
  if (times == 0 ||
      rank(sheet.decision.passed, sheet.totals.percent) > rank(passed_before, percent_before)) {
    const std::string_view word = scenario::wordOf(mode);
    settings.setValue(QStringLiteral("passed"), sheet.decision.passed);
    settings.setValue(QStringLiteral("percent"), sheet.totals.percent);
    settings.setValue(QStringLiteral("when"), when.toString(Qt::ISODate));
    settings.setValue(QStringLiteral("mode"),
                      QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size())));
  }
  settings.setValue(QStringLiteral("times"), times + 1);
  settings.endGroup();
}

}  // namespace cabwright::desktop
