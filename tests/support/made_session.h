// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions as a station has them after some months, without driving each: of a shipped exercise,
// with its own sheet, and verdicts that are given here.
#pragma once

#include <filesystem>
#include <functional>
#include <string>

#include "marking/sheet.h"
#include "session/recorder.h"
#include "session/situation.h"

namespace cabwright::tests {

inline session::Situation loadExercise(const std::string& name) {
  const std::filesystem::path scenarios = std::filesystem::path(CABWRIGHT_SOURCE_DIR) / "scenarios";
  auto loaded = session::loadSituation((scenarios / name / "scenario.toml").string(), scenarios);
  return std::get<session::Situation>(std::move(loaded));
}

struct MadeSession {
  std::string number, name, started_utc = "2031-03-15T08:00:00Z";
  scenario::Mode mode = scenario::Mode::kAssessment;
  std::int64_t ticks = 60'000;
  bool ends = true;
  bool is_sealed = true;  ///< an assessment that ends always is
  /// Text put behind the scenario's own: another version of the exercise.
  std::string more_text;
  /// Of a line: broken, not exercised, else met.
  std::function<marking::Outcome(const std::string& rule)> outcome = [](const std::string&) {
    return marking::Outcome::kMet;
  };
};

/// Writes it where there is no file yet; the key it is sealed with goes into the folder above.
inline void makeSession(const std::filesystem::path& file, const session::Situation& exercise,
                        const MadeSession& made) {
  session::Situation situation = exercise;
  session::SessionHeader header = session::makeHeader(situation, 7, "1.0.0");
  session::chooseMode(situation, header, made.mode);
  header.started_utc = made.started_utc;
  header.trainee_number = made.number;
  if (!made.name.empty()) header.people.push_back({"trainee", made.name});
  if (!made.more_text.empty()) header.sources.front().text += "# " + made.more_text + "\n";
  session::RecorderOptions options;
  options.seals = made.is_sealed;
  options.key_folder = file.parent_path().parent_path() / "keys";
  session::Recorder recorder(file, header, options);
  unit::Frame frame;
  recorder.seeFrame(frame);
  frame.tick = made.ticks;
  recorder.seeFrame(frame);
  if (!made.ends) return;
  std::vector<marking::Verdict> verdicts;
  for (const auto& rule : situation.rules->rules()) {
    marking::Verdict verdict;
    verdict.outcome = made.outcome(rule.spec.id);
    verdict.judged_as = rule.spec.rule_class;
    verdict.is_final = true;
    verdict.tick = made.ticks / 2;
    verdicts.push_back(verdict);
  }
  marking::SheetHead head = session::makeHead(situation, header);
  head.last_tick = made.ticks;
  const auto sheet = marking::makeSheet(head, {}, *situation.rules, verdicts);
  recorder.close(session::makeClosing(made.ticks, "finished", sheet));
}

}  // namespace cabwright::tests
