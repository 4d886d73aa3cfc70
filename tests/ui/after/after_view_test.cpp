// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/after_view.h"

#include <gtest/gtest.h>

#include <QClipboard>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <filesystem>
#include <fstream>

#include "after/words.h"
#include "view_rig.h"

namespace cabwright::after {
namespace {

using marking::Outcome;
using scenario::Mode;

class AfterViewTest : public ViewRig {};

TEST_F(AfterViewTest, WhatWasKeptIsNamedAndSoIsEveryJudgement) {
  open(Mode::kPractice);
  QString text;
  for (const SectionBlock* section : view_->sections())
    for (const SectionRow& row : section->rows()) text += row.title + row.detail + u'\n';
  for (const marking::SheetLine& line : sheet_.lines)
    if (line.outcome() == Outcome::kMet || line.outcome() == Outcome::kNotExercised) {
      EXPECT_TRUE(text.contains(sheetWords(line.title))) << line.title;
    }
  ASSERT_TRUE(sheet_.judgements);
  ASSERT_FALSE(sheet_.judgements->rows.empty());
  for (const marking::JudgementRow& row : sheet_.judgements->rows)
    EXPECT_TRUE(text.contains(itemName(row.item))) << row.item;
  EXPECT_TRUE(text.contains(sheetWords(sheet_.aim->words)));
}

TEST_F(AfterViewTest, APartThatIsFoldedIsLowerAndWhatIsBelowMovesUp) {
  open(Mode::kPractice, "good");
  SectionBlock* first = view_->sections().front();
  const SectionBlock* second = view_->sections()[1];
  const int height = first->height(), top = second->y();
  first->setFolded(true);
  EXPECT_LT(first->height(), height);
  EXPECT_EQ(top - second->y(), height - first->height());
}

TEST_F(AfterViewTest, TheSheetIsSavedAndCopiedAsItIsPrinted) {
  open(Mode::kPractice);
  const QString printed = QString::fromStdString(marking::printSheet(sheet_));
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("sheet.txt"));
  ASSERT_TRUE(view_->saveSheet(path));
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_EQ(QString::fromUtf8(file.readAll()), printed);
  EXPECT_FALSE(view_->saveSheet(folder.filePath(QStringLiteral("none/sheet.txt"))));
  view_->copySheet();
  EXPECT_EQ(QGuiApplication::clipboard()->text(), printed);
}

TEST_F(AfterViewTest, BothThemesAndAllSizesAreDrawnWithoutAHole) {
  open(Mode::kPractice);
  const QColor nothing(255, 0, 255);
  for (const auto theme : {drawing::Theme::kNight, drawing::Theme::kDay}) {
    view_->setTheme(theme);
    for (const QSize size : {QSize(1280, 720), QSize(1920, 1080), QSize(1024, 900)}) {
      view_->resize(size);
      QApplication::processEvents();
      QImage image(size, QImage::Format_RGB32);
      image.fill(nothing);
      view_->render(&image);
      int holes = 0;
      for (int y = 0; y < size.height(); y += 2)
        for (int x = 0; x < size.width(); x += 2) holes += image.pixelColor(x, y) == nothing;
      EXPECT_EQ(holes, 0);
      const QColor paper = drawing::colorOf(theme, drawing::Tone::kPaper);
      EXPECT_EQ(image.pixelColor(3, 3), paper);
      EXPECT_EQ(image.pixelColor(size.width() - 4, size.height() - 4), paper);
    }
  }
}

TEST_F(AfterViewTest, WhatPassedIsSaidCalmly) {
  open(Mode::kPractice, "good");
  EXPECT_TRUE(view_->finding().passed);
  EXPECT_TRUE(view_->finding().sentence.startsWith(QLatin1String("Passed")));
  EXPECT_TRUE(view_->cards().empty());
  EXPECT_TRUE(view_->strip().flags().empty());
}

// The rule a script says it breaks.
std::optional<std::string> findBroken(const std::filesystem::path& script) {
  std::ifstream in(script);
  const std::string mark = "# breaks: ";
  for (std::string line; std::getline(in, line);)
    if (line.starts_with(mark)) return line.substr(mark.size());
  return std::nullopt;
}

std::vector<std::filesystem::path> badScripts(const std::filesystem::path& exercise) {
  std::vector<std::filesystem::path> scripts;
  for (const auto& file : std::filesystem::directory_iterator(exercise))
    if (file.path().filename().string().starts_with("bad-") && findBroken(file.path()))
      scripts.push_back(file.path());
  std::ranges::sort(scripts);
  return scripts;
}

TEST(Finding, NamesTheRuleThatABadScriptOfEachShippedExerciseBreaks) {
  const std::filesystem::path scenarios = std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios";
  int exercises = 0;
  for (const auto& folder : std::filesystem::directory_iterator(scenarios)) {
    if (!std::filesystem::exists(folder.path() / "scenario.toml")) continue;
    const auto scripts = badScripts(folder.path());
    ASSERT_FALSE(scripts.empty()) << folder.path();
    const std::string id = *findBroken(scripts.front());
    const auto run = tests::playRun(CABWRIGHT_SOURCE_DIR, folder.path().filename().string(),
                                    scripts.front().stem().string());
    ASSERT_TRUE(run);
    const marking::MarkSheet sheet = run->sheet();
    const auto line = std::ranges::find(sheet.lines, id, &marking::SheetLine::id);
    ASSERT_NE(line, sheet.lines.end());
    const Finding finding = makeFinding(sheet);
    EXPECT_FALSE(finding.passed);
    EXPECT_TRUE(finding.sentence.startsWith(QLatin1String("Not yet")));
    EXPECT_TRUE(finding.sentence.contains(sheetWords(line->title)))
        << scripts.front() << ": " << finding.sentence.toStdString();
    EXPECT_FALSE(finding.seen.isEmpty());
    ++exercises;
  }
  EXPECT_GE(exercises, 2);
}

}  // namespace
}  // namespace cabwright::after
