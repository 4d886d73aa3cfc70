// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences that are put together of figures and words are taken apart again.
#include "wording/sentences.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QTranslator>
#include <map>

namespace cabwright::wording {
namespace {

class Words : public QTranslator {
 public:
  explicit Words(std::map<QString, QString> words) : words_(std::move(words)) {
    QCoreApplication::installTranslator(this);
  }
  ~Words() override { QCoreApplication::removeTranslator(this); }
  Words(const Words&) = delete;
  Words& operator=(const Words&) = delete;

  [[nodiscard]] QString translate(const char* /*context*/, const char* source, const char*,
                                  int) const override {
    const auto found = words_.find(QString::fromUtf8(source));
    return found == words_.end() ? QString() : found->second;
  }
  [[nodiscard]] bool isEmpty() const override { return false; }

 private:
  std::map<QString, QString> words_;
};

TEST(Sentences, PlacesTakeWhatStandsThere) {
  const Pattern pattern{"Seen", "engine %1 runs with %2 psi of oil", "12"};
  EXPECT_EQ(matchPattern(pattern, QStringLiteral("engine 1 runs with 43 psi of oil")),
            (QStringList{QStringLiteral("1"), QStringLiteral("43")}));
  EXPECT_TRUE(matchPattern(pattern, QStringLiteral("engine 1 runs")).isEmpty());
  EXPECT_TRUE(matchPattern(pattern, QStringLiteral("engine  runs with 43 psi of oil")).isEmpty());
}

TEST(Sentences, AFigureIsNoWordAndTheLastOneIsTaken) {
  const Pattern pattern{"Sheet", "%1 at %2.", "2"};
  EXPECT_EQ(matchPattern(pattern, QStringLiteral("A look at it at 0:01:02.30.")),
            (QStringList{QStringLiteral("A look at it"), QStringLiteral("0:01:02.30")}));
  EXPECT_TRUE(matchPattern(pattern, QStringLiteral("A look at it.")).isEmpty());
}

TEST(Sentences, APlaceAtEitherEndWantsSomething) {
  const Pattern pattern{"Sheet", "%1 and %2", ""};
  EXPECT_TRUE(matchPattern(pattern, QStringLiteral(" and so")).isEmpty());
  EXPECT_TRUE(matchPattern(pattern, QStringLiteral("so and ")).isEmpty());
  EXPECT_TRUE(matchPattern(pattern, QString()).isEmpty());
}

TEST(Sentences, AreTranslatedPieceByPiece) {
  const Words words(
      {{QStringLiteral("%1 at %2."), QStringLiteral("Um %2: %1.")},
       {QStringLiteral("power"), QStringLiteral("gas")},
       {QStringLiteral("Asked before it: %1, for %2 s."), QStringLiteral("Davor, %2 s: %1.")},
       {QStringLiteral("the brake let off"), QStringLiteral("Bremse los")}});
  EXPECT_EQ(translateSentence("Sheet", QStringLiteral("Power at 0:18:36.90. Asked before it: the "
                                                      "brake let off, for 2.5 s.")),
            QStringLiteral("Um 0:18:36.90: Gas. Davor, 2.5 s: Bremse los."));
}

TEST(Sentences, NamesMayHoldCommas) {
  const Pattern before{"Sheet", "%1 at %2, %3 %4 s before.", "24"};
  EXPECT_EQ(matchPattern(before, QStringLiteral("The horn, low tone at 0:18:36.90, a look at the "
                                                "gauge, train pipe, both 2.5 s before.")),
            (QStringList{QStringLiteral("The horn, low tone"), QStringLiteral("0:18:36.90"),
                         QStringLiteral("a look at the gauge, train pipe, both"),
                         QStringLiteral("2.5")}));
  const Pattern since{"Sheet", "From %1: %2, while %3, for %4 s and more.", "14"};
  EXPECT_EQ(matchPattern(since, QStringLiteral("From 0:01:00: left, while right, while moving, for "
                                               "3 s and more.")),
            (QStringList{QStringLiteral("0:01:00"), QStringLiteral("left, while right"),
                         QStringLiteral("moving"), QStringLiteral("3")}));
  EXPECT_TRUE(matchPattern(before, QStringLiteral("The horn at noon, a look, long 2.5 s before."))
                  .isEmpty());
}

TEST(Sentences, OfAListANameWithACommaStaysOne) {
  const Words words({{QStringLiteral("%1, %2"), QStringLiteral("%1, %2")},
                     {QStringLiteral("%1 and %2"), QStringLiteral("%1 und %2")},
                     {QStringLiteral("the gauge, train pipe and release"), QStringLiteral("Uhr")},
                     {QStringLiteral("the gauge"), QStringLiteral("falsch")},
                     {QStringLiteral("the bell"), QStringLiteral("Glocke")},
                     {QStringLiteral("the horn, low"), QStringLiteral("Horn")}});
  EXPECT_EQ(translateSentence("Sheet", QStringLiteral("the bell, the gauge, train pipe and release "
                                                      "and the horn, low")),
            QStringLiteral("Glocke, Uhr und Horn"));
}

TEST(Sentences, LongListsOfUnknownWordsTakeNoTime) {
  QString list = QStringLiteral("one");
  for (int k = 0; k < 2000; ++k) list += QStringLiteral(", and while at 1, then");
  EXPECT_EQ(translateSentence("Sheet", list), list);
}

TEST(Sentences, UnknownOnesStayEnglish) {
  const QString unknown = QStringLiteral("Nothing of this is in any catalogue. Nor is this.");
  EXPECT_EQ(translateSentence("Sheet", unknown), unknown);
  EXPECT_EQ(translateSentence("Seen", QString()), QString());
}

TEST(Sentences, FiguresWithPercentSignsAreNoPlaces) {
  const Words words(std::map<QString, QString>{
      {QStringLiteral("Signal %1 shows %2."), QStringLiteral("%1: %2!")}});
  EXPECT_EQ(translateSentence("Seen", QStringLiteral("Signal %2 shows %1.")),
            QStringLiteral("%2: %1!"));
}

// English writes a name small inside a sentence, German writes it large wherever it stands.
TEST(Sentences, NamesInsideAreWrittenAsTheLanguageWritesThem) {
  EXPECT_EQ(insideSentence(QStringLiteral("Coupling")), QStringLiteral("coupling"));
  EXPECT_EQ(insideSentence(QStringLiteral("AIR lamp")), QStringLiteral("AIR lamp"));
  const Words words(std::map<QString, QString>{{QStringLiteral("small"), QStringLiteral("large")}});
  EXPECT_EQ(insideSentence(QStringLiteral("Kupplung")), QStringLiteral("Kupplung"));
}

TEST(Sentences, EveryPatternFitsItself) {
  for (const Pattern& pattern : patternTable()) {
    QString sample = QString::fromUtf8(pattern.english);
    for (int place = 1; place <= 9; ++place) {
      const bool figure = QLatin1String(pattern.figures).contains(QString::number(place));
      sample.replace(QLatin1Char('%') + QString::number(place),
                     figure ? QStringLiteral("12") : QStringLiteral("word"));
    }
    EXPECT_FALSE(matchPattern(pattern, sample).isEmpty()) << pattern.english;
  }
}

}  // namespace
}  // namespace cabwright::wording
