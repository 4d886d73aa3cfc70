// SPDX-License-Identifier: GPL-3.0-or-later
// The German catalogue is whole: every text of tables, guides and shipped exercises is in it, and
// everything in it is translated with its places and plural forms.
#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QTemporaryDir>
#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <set>

#include "catalogue.h"
#include "table_words.h"
#include "wording/sentences.h"

namespace cabwright {
namespace {

using testing_ui::CatalogueEntry;

QString catalogueFile(const char* language) {
  return QStringLiteral(CABWRIGHT_SOURCE_DIR "/assets/translations/cabwright_") +
         QLatin1String(language) + QStringLiteral(".ts");
}

const std::vector<CatalogueEntry>& german() {
  static const std::vector<CatalogueEntry> entries = testing_ui::readCatalogue(catalogueFile("de"));
  return entries;
}

std::string name(const CatalogueEntry& entry) {
  return (entry.context + QStringLiteral(": ") + entry.source).toStdString();
}

QStringList placesOf(const QString& text) {
  static const QRegularExpression place(QStringLiteral("%[1-9n]"));
  QStringList places;
  for (auto match = place.globalMatch(text); match.hasNext();) places << match.next().captured();
  places.sort();
  return places;
}

std::set<std::pair<std::string, std::string>> sourcesOf(const std::vector<CatalogueEntry>& all) {
  std::set<std::pair<std::string, std::string>> sources;
  for (const CatalogueEntry& entry : all)
    sources.emplace(entry.context.toStdString(), entry.source.toStdString());
  return sources;
}

TEST(German, HasEveryTextOfTablesGuidesAndExercises) {
  const auto sources = sourcesOf(german());
  for (const auto& words : testing_ui::collectAllWords(CABWRIGHT_SOURCE_DIR))
    EXPECT_TRUE(sources.contains(words)) << words.first << ": " << words.second;
}

TEST(German, HasEveryPattern) {
  const auto sources = sourcesOf(german());
  for (const wording::Pattern& pattern : wording::patternTable())
    EXPECT_TRUE(sources.contains({pattern.context, pattern.english})) << pattern.english;
}

TEST(German, HasEveryTextOfTheWindows) {
  QTemporaryDir folder;
  const std::string file = folder.filePath(QStringLiteral("now.ts")).toStdString();
  const std::string source = CABWRIGHT_SOURCE_DIR;
  const std::string command = std::string(CABWRIGHT_LUPDATE) +
                              " -silent -I '" CABWRIGHT_BINARY_DIR "/rooms/review_room' '" +
                              source + "/ui' '" + source + "/app' -ts '" + file + "' 2> '" + file +
                              ".err'";
  ASSERT_EQ(std::system(command.c_str()), 0) << command;
  const auto now = testing_ui::readCatalogue(QString::fromStdString(file));
  ASSERT_GT(now.size(), 500U);
  const auto sources = sourcesOf(german());
  for (const CatalogueEntry& entry : now)
    EXPECT_TRUE(sources.contains({entry.context.toStdString(), entry.source.toStdString()}))
        << name(entry);
}

TEST(German, IsFinished) {
  ASSERT_GT(german().size(), 2000U);
  for (const CatalogueEntry& entry : german()) {
    EXPECT_TRUE(entry.finished) << name(entry);
    ASSERT_FALSE(entry.translations.isEmpty()) << name(entry);
    for (const QString& words : entry.translations)
      EXPECT_FALSE(words.trimmed().isEmpty()) << name(entry);
  }
}

TEST(German, KeepsThePlaces) {
  for (const CatalogueEntry& entry : german())
    for (const QString& words : entry.translations)
      EXPECT_EQ(placesOf(words), placesOf(entry.source)) << name(entry);
}

// The blanks at either end join what is put together.
TEST(German, KeepsBlanksAtTheEnds) {
  for (const CatalogueEntry& entry : german())
    for (const QString& words : entry.translations) {
      EXPECT_EQ(words.startsWith(QLatin1Char(' ')), entry.source.startsWith(QLatin1Char(' ')))
          << name(entry);
      EXPECT_EQ(words.endsWith(QLatin1Char(' ')), entry.source.endsWith(QLatin1Char(' ')))
          << name(entry);
    }
}

// A letter is underlined in German where one is in English, and once in a menu.
TEST(German, KeepsTheLettersOfMenus) {
  for (const CatalogueEntry& entry : german()) {
    const auto letters = entry.source.count(QLatin1Char('&'));
    for (const QString& words : entry.translations)
      EXPECT_EQ(words.count(QLatin1Char('&')), letters) << name(entry);
  }
}

TEST(Plurals, GermanAndEnglishHaveBothForms) {
  std::set<std::pair<std::string, std::string>> of_german, of_english;
  for (const CatalogueEntry& entry : german()) {
    if (!entry.plural) continue;
    EXPECT_EQ(entry.translations.size(), 2) << name(entry);
    of_german.emplace(entry.context.toStdString(), entry.source.toStdString());
  }
  for (const CatalogueEntry& entry : testing_ui::readCatalogue(catalogueFile("en"))) {
    EXPECT_TRUE(entry.plural) << name(entry);
    EXPECT_TRUE(entry.finished) << name(entry);
    EXPECT_EQ(entry.translations.size(), 2) << name(entry);
    for (const QString& words : entry.translations)
      EXPECT_EQ(placesOf(words), placesOf(entry.source)) << name(entry);
    of_english.emplace(entry.context.toStdString(), entry.source.toStdString());
  }
  EXPECT_GT(of_german.size(), 0U);
  EXPECT_EQ(of_german, of_english);
}

}  // namespace
}  // namespace cabwright
