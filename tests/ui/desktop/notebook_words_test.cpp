// SPDX-License-Identifier: GPL-3.0-or-later
// The notebook in small windows: the buttons say their words whole, and what is written and hinted
// stands above, under and beside them, in English and in German.
#include <gtest/gtest.h>

#include <QTranslator>

#include "all_pages.h"
#include "cab/notebook_part.h"
#include "cab/word_button.h"
#include "driver.h"

namespace cabwright::tests {
namespace {

using testing_ui::PaintedWords;

struct Given {
  QSize size;
  bool german;
};

class NotebookWords : public ::testing::TestWithParam<Given> {
 protected:
  void SetUp() override {
    if (!GetParam().german) return;
    ASSERT_TRUE(german_.load(QStringLiteral(CABWRIGHT_GERMAN)));
    QCoreApplication::installTranslator(&german_);
  }
  void TearDown() override { QCoreApplication::removeTranslator(&german_); }

 private:
  QTranslator german_;
};

// What is wrong with the words on the page of the notebook.
std::vector<std::string> findFaults(Desk& desk) {
  const auto* notebook = desk.view().findChild<cab::NotebookPart*>();
  const QRectF page(notebook->mapTo(&desk.view(), QPoint()), notebook->size());
  std::vector<PaintedWords> words = wordsOf(desk.view());
  std::erase_if(words, [&](const PaintedWords& w) { return !page.contains(w.box.center()); });
  EXPECT_GT(words.size(), 5U);
  return testing_ui::findCutWords(words, desk.view().size());
}

void expectWhole(Desk& desk, const char* when) {
  desk.settle();
  for (const std::string& fault : findFaults(desk)) ADD_FAILURE() << when << ": " << fault;
}

TEST_P(NotebookWords, AreWholeBeforeWhileAndAfterJudging) {
  Desk desk(GetParam().size);
  desk.begin("defect-found", scenario::Mode::kAssessment);
  desk.seat().act("go", "trailer1");
  for (int k = 0; k < 400 && desk.seat().place() != unit::Place::kTrailer1; ++k) desk.pass(1);
  expectWhole(desk, "nothing is looked at");
  desk.seat().act("look", "trailer1.underframe");
  desk.pass(0.2);
  desk.seat().judge(unit::Item::kTrailer1Underframe, unit::Verdict::kGood, {});
  expectWhole(desk, "judged too soon");
  desk.pass(6);
  for (const unit::Verdict verdict :
       {unit::Verdict::kGood, unit::Verdict::kUnsure, unit::Verdict::kDefect}) {
    desk.seat().judge(unit::Item::kTrailer1Underframe, verdict, {});
    expectWhole(desk, "judged");
  }
  for (const char* letter : {"C", "S", "T"}) {
    ASSERT_TRUE(
        desk.click(desk.find<cab::WordButton>(QStringLiteral("class.") + QLatin1String(letter))));
    expectWhole(desk, letter);
  }
}

// A class is said in words, and its letter, which is its key, stands beside it.
TEST_P(NotebookWords, SayTheClassesAndTheirKeys) {
  Desk desk(GetParam().size);
  desk.begin("defect-found", scenario::Mode::kAssessment);
  desk.seat().act("go", "trailer1");
  for (int k = 0; k < 400 && desk.seat().place() != unit::Place::kTrailer1; ++k) desk.pass(1);
  desk.seat().act("look", "trailer1.underframe");
  desk.pass(6);
  desk.seat().judge(unit::Item::kTrailer1Underframe, unit::Verdict::kDefect, {});
  desk.settle();
  for (const char* letter : {"C", "S", "T"}) {
    const auto* button =
        desk.find<cab::WordButton>(QStringLiteral("class.") + QLatin1String(letter));
    ASSERT_NE(button, nullptr) << letter;
    EXPECT_GE(button->area().width(), button->neededWidth(true)) << letter;
    EXPECT_GT(button->neededWidth(true), button->neededWidth(false)) << letter;
  }
}

INSTANTIATE_TEST_SUITE_P(Sizes, NotebookWords,
                         ::testing::Values(Given{{1280, 720}, false}, Given{{1280, 720}, true},
                                           Given{{1024, 700}, false}, Given{{1024, 700}, true}));

}  // namespace
}  // namespace cabwright::tests
