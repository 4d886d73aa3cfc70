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
