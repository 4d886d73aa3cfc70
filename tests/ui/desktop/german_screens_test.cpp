// SPDX-License-Identifier: GPL-3.0-or-later
// In German, which is longer than English, every page still shows its words whole, beside each
// other, and none of them has stayed English.
#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QRegularExpression>
#include <QTranslator>
#include <set>

#include "all_pages.h"
#include "catalogue.h"

namespace cabwright {
namespace {

using testing_ui::PaintedWords;
using tests::lookAtAll;
using tests::wordsOf;

class Language {
 public:
  explicit Language(QTranslator& translator) : translator_(translator) {
    QCoreApplication::installTranslator(&translator_);
  }
  ~Language() { QCoreApplication::removeTranslator(&translator_); }
  Language(const Language&) = delete;
  Language& operator=(const Language&) = delete;

 private:
  QTranslator& translator_;
};

class GermanScreens : public ::testing::TestWithParam<QSize> {};

// What is wrong on any page, each with the page it is on.
std::set<std::string> findFaults(QSize size) {
  std::set<std::string> faults;
  lookAtAll(size, [&](const std::string& what, QWidget& page) {
    const auto words = wordsOf(page);
    EXPECT_GT(words.size(), 3U) << what;
    for (const std::string& fault : testing_ui::findCutWords(words, page.size()))
      faults.insert(what + ": " + fault);
  });
  return faults;
}

// Figures of a small dial that touch its unit do so in any language.
TEST_P(GermanScreens, ShowTheirWordsAsWholeAsInEnglish) {
  const std::set<std::string> in_english = findFaults(GetParam());
  QTranslator german;
  ASSERT_TRUE(german.load(QStringLiteral(CABWRIGHT_GERMAN)));
  const Language language(german);
  for (const std::string& fault : findFaults(GetParam()))
    EXPECT_TRUE(in_english.contains(fault)) << fault;
}

TEST_P(GermanScreens, HaveNoEnglishLeft) {
  testing_ui::MarkingTranslator marking(testing_ui::readCatalogue(
      QStringLiteral(CABWRIGHT_SOURCE_DIR "/assets/translations/cabwright_de.ts")));
  const Language language(marking);
  lookAtAll(GetParam(), [](const std::string& what, QWidget& page) {
    for (const PaintedWords& words : wordsOf(page)) {
      // Where a folder or a file lies is no language, alone or in a sentence.
      static const QRegularExpression path(QStringLiteral("/\\S+"));
      const QStringList left = testing_ui::findUnmarked(QString(words.text).remove(path));
      EXPECT_TRUE(left.isEmpty()) << what << ": " << words.text.toStdString();
    }
  });
}

INSTANTIATE_TEST_SUITE_P(Sizes, GermanScreens,
                         ::testing::Values(QSize(1280, 720), QSize(1920, 1080)));

}  // namespace
}  // namespace cabwright
