// SPDX-License-Identifier: GPL-3.0-or-later
// What the simulation says in runs of the shipped exercises, put together of figures and words, is
// all in the German catalogue: sentences of the sheet, why a lamp is dark, what changes.
#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QRegularExpression>
#include <array>
#include <filesystem>
#include <set>

#include "after/words.h"
#include "cab/names.h"
#include "catalogue.h"
#include "scenario/script.h"
#include "session/changes.h"
#include "session/desk_actions.h"
#include "session/live_run.h"
#include "unit/why.h"

namespace cabwright {
namespace {

namespace fs = std::filesystem;
constexpr std::int64_t kWhyTicks = 1500;

struct Said {
  std::set<std::string> seen, on_the_sheet;
};

void askWhy(const unit::Unit& unit, Said& said) {
  for (const unit::InterlockRow& row : unit::interlockTable()) {
    for (int cab = 0; cab < plant::kCabs; ++cab) {
      for (int line = 0; line < plant::kLines; ++line) {
        for (const unit::WhyFact& fact : unit::calcWhy(unit, row.outcome, cab, line)) {
          said.seen.insert(fact.when_there);
          said.seen.insert(fact.when_missing);
        }
      }
    }
  }
}

void readSheet(const marking::MarkSheet& sheet, Said& said) {
  for (const marking::SheetLine& line : sheet.lines) {
    said.on_the_sheet.insert(line.verdict.reason);
    for (const std::string& detail : line.verdict.details) said.on_the_sheet.insert(detail);
  }
}

void play(const fs::path& path, Said& said) {
  auto loaded = session::loadSituation((path.parent_path() / "scenario.toml").string());
  ASSERT_TRUE(std::holds_alternative<session::Situation>(loaded)) << path;
  const auto file = scenario::loadText(path.string());
  ASSERT_TRUE(std::holds_alternative<scenario::SourceFile>(file)) << path;
  auto script = scenario::parseScript(std::get<scenario::SourceFile>(file), {},
                                      scenario::neighboursOf(path.string()));
  ASSERT_TRUE(std::holds_alternative<scenario::Script>(script)) << path;
  session::LiveRun live(std::get<session::Situation>(loaded), {});
  scenario::ScriptRunner runner(std::get<scenario::Script>(std::move(script)));
  session::ChangeWatch watch(live.unit());
  while (!runner.isDone() && !runner.fault() && !live.failed()) {
    for (const auto& due : runner.advance(live.frame())) {
      const session::Taken taken = live.take(due.action);
      if (due.action.actor != unit::Actor::kTrainee || taken.fault) continue;
      said.seen.insert(taken.outcome.perceived);
      said.seen.insert(taken.outcome.cause);
    }
    live.advance(1);
    if (live.tick() % session::kFrameTicks == 0)
      if (const auto what = watch.see(live.unit())) said.seen.insert(*what);
    if (live.tick() % kWhyTicks == 0) askWhy(live.unit(), said);
  }
  live.finish("finished");
  readSheet(live.sheet(), said);
}

// The short exercises with all that goes wrong in them, and of the long ones what says most.
bool isPlayed(const fs::path& script) {
  const std::string exercise = script.parent_path().filename().string();
  const std::string name = script.stem().string();
  if (exercise == "cold-preparation") return name == "bad-laziest";
  if (exercise == "warm-tooth")
    return name == "good" || name == "bad-laziest" || name == "bad-half-brake-test";
  return name == "good" || name.starts_with("bad-");
}

TEST(Composed, SentencesOfShippedRunsAreInTheCatalogue) {
  Said said;
  for (const auto& exercise : fs::directory_iterator(CABWRIGHT_SOURCE_DIR "/scenarios")) {
    if (!fs::exists(exercise.path() / "scenario.toml")) continue;
    for (const auto& file : fs::directory_iterator(exercise.path())) {
      if (file.path().extension() == ".txt" && isPlayed(file.path())) play(file.path(), said);
    }
  }
  EXPECT_GT(said.seen.size(), 100U);
  EXPECT_GT(said.on_the_sheet.size(), 100U);
  testing_ui::MarkingTranslator marking(testing_ui::readCatalogue(
      QStringLiteral(CABWRIGHT_SOURCE_DIR "/assets/translations/cabwright_de.ts")));
  QCoreApplication::installTranslator(&marking);
  for (const std::string& words : said.seen)
    EXPECT_TRUE(
        testing_ui::findUnmarked(cab::translateSeen(QString::fromStdString(words))).isEmpty())
        << words;
  for (const std::string& words : said.on_the_sheet)
    EXPECT_TRUE(testing_ui::findUnmarked(after::sheetWords(words)).isEmpty())
        << words << " -> " << after::sheetWords(words).toStdString();
  QCoreApplication::removeTranslator(&marking);
}

// The names of actions and things stand in them as in a script, in quotation marks.
TEST(Composed, WhatAnAssessmentRefusesTheDeskIsInTheCatalogue) {
  session::DeskSituation situation;
  situation.mode = scenario::Mode::kAssessment;
  std::set<std::string> refused{*session::findGoBackFault(situation.mode)};
  for (const auto& [verb, object, argument] :
       {std::array{"pace", "5", ""}, std::array{"pace", "frozen", ""},
        std::array{"set", "cab1.brake", "full"}, std::array{"tooth", "1", "12"},
        std::array{"condition", "end1.hoses", "good"}}) {
    const auto fault =
        session::findDeskFault(situation, {unit::Actor::kInstructor, verb, object, argument});
    ASSERT_TRUE(fault) << verb;
    refused.insert(*fault);
  }
  testing_ui::MarkingTranslator marking(testing_ui::readCatalogue(
      QStringLiteral(CABWRIGHT_SOURCE_DIR "/assets/translations/cabwright_de.ts")));
  QCoreApplication::installTranslator(&marking);
  for (const std::string& words : refused) {
    QString seen = cab::translateSeen(QString::fromStdString(words));
    seen.remove(QRegularExpression(QStringLiteral("'[^']*'")));
    EXPECT_TRUE(testing_ui::findUnmarked(seen).isEmpty()) << words << " -> " << seen.toStdString();
  }
  QCoreApplication::removeTranslator(&marking);
}

}  // namespace
}  // namespace cabwright
