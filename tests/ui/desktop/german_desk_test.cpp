// SPDX-License-Identifier: GPL-3.0-or-later
// In English and in German, which is longer, no word of the desk's pages is cut: in the real
// widgets, at the smallest size the desk is made for.
#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QCoreApplication>
#include <QScrollArea>
#include <QTranslator>
#include <algorithm>

#include "all_pages.h"

namespace cabwright {
namespace {

using testing_ui::PaintedWords;
using tests::lookAtDesk;
using tests::wordsOf;

QRectF areaIn(const QWidget& page, const QWidget* inner) {
  return QRectF(inner->mapTo(&page, QPoint()), inner->size());
}

// Rows of a list may be cut, as its tips and the screen reader have them whole; and what is only
// to be scrolled to is not cut.
std::vector<PaintedWords> wordsToJudge(QWidget& page) {
  std::vector<PaintedWords> words = wordsOf(page);
  for (const auto* list : page.findChildren<QAbstractItemView*>()) {
    if (!list->isVisibleTo(&page)) continue;
    const QRectF area = areaIn(page, list->viewport());
    std::erase_if(words, [&](const PaintedWords& w) { return area.contains(w.visible); });
  }
  for (const auto* scroll : page.findChildren<QAbstractScrollArea*>()) {
    if (!scroll->isVisibleTo(&page)) continue;
    const QRectF area = areaIn(page, scroll->viewport());
    std::erase_if(words, [&](const PaintedWords& w) {
      const bool inside = area.adjusted(-1, -1, 1, 1).contains(w.visible);
      return inside && (w.box.top() < area.top() || w.box.bottom() > area.bottom());
    });
  }
  return words;
}

void expectWhole(QSize size) {
  int looked = 0;
  lookAtDesk(size, [&](const std::string& what, QWidget& page) {
    const std::vector<PaintedWords> words = wordsToJudge(page);
    EXPECT_GT(words.size(), 12U) << what;
    ++looked;
    for (const std::string& fault : testing_ui::findCutWords(words, page.size()))
      ADD_FAILURE() << what << ": " << fault;
  });
  EXPECT_EQ(looked, 15);
}

class DeskWords : public ::testing::TestWithParam<QSize> {};

TEST_P(DeskWords, AreWholeInEnglish) { expectWhole(GetParam()); }

TEST_P(DeskWords, AreWholeInGerman) {
  QTranslator german;
  ASSERT_TRUE(german.load(QStringLiteral(CABWRIGHT_GERMAN)));
  QCoreApplication::installTranslator(&german);
  expectWhole(GetParam());
  QCoreApplication::removeTranslator(&german);
}

INSTANTIATE_TEST_SUITE_P(Sizes, DeskWords, ::testing::Values(QSize(1280, 720), QSize(1920, 1080)));

}  // namespace
}  // namespace cabwright
