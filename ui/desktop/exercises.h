// SPDX-License-Identifier: GPL-3.0-or-later
// The exercises there are, as they are chosen from, and how they went so far on this machine.
#pragma once

#include <QDateTime>
#include <QSettings>
#include <QString>
#include <QStringList>
#include <filesystem>
#include <optional>
#include <vector>

#include "marking/sheet.h"
#include "scenario/scenario.h"

namespace cabwright::desktop {

/// How an exercise was taken best: passed before not passed, then by points.
struct BestResult {
  bool passed = false;
  double percent = 0;
  QString when;  ///< date, ISO
  QString mode;  ///< word of the scenario format
  int times = 0;
};

struct Exercise {
  std::string name;  ///< of its folder
  std::filesystem::path file;
  QString title, summary, purpose;
  QStringList teaches;
  int level = 0;  ///< 1 to 5; 0: not said
  std::optional<double> minutes_allowed;
  bool can_be_assessed = false;
  bool has_guide = false;
  QString fault;  ///< why it cannot be taken; empty: it can
  std::optional<BestResult> best;
};

/// All folders of `scenarios` with a scenario.toml, by level, then by title. Files with faults are
/// there too, with the first fault.
[[nodiscard]] std::vector<Exercise> loadExercises(const std::filesystem::path& scenarios);

/// Puts the best results kept in the settings beside the exercises.
void addResults(std::vector<Exercise>& exercises, QSettings& settings);
/// Keeps a result if it is the best so far; counts it in any case.
void keepResult(QSettings& settings, const std::string& exercise, const marking::MarkSheet& sheet,
                scenario::Mode mode, const QDateTime& when);

}  // namespace cabwright::desktop
