// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/words.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QTranslator>

namespace cabwright::after {
namespace {

using unit::Signal;

TEST(Words, SayNamesAndValuesAsTheyAreReadAloud) {
  EXPECT_EQ(itemName("end1.tail_lamp").toStdString(), "End 1, tail lamp");
  EXPECT_EQ(signalName(Signal::kCab1Handbrake).toStdString(), "Handbrake, cab 1");
  EXPECT_EQ(signalName(Signal::kTrueMeshed2).toStdString(), "Dogs in mesh, drive 2");
  EXPECT_EQ(valueText(Signal::kCab1Handbrake, 0.49).toStdString(), "49 %");
  EXPECT_EQ(valueText(Signal::kCab1Brake, 0).toStdString(), "lap");
  EXPECT_EQ(valueText(Signal::kCab1TrainPipe, 14.66).toStdString(), "14.7 inHg");
  EXPECT_EQ(valueText(Signal::kTrueMeshed2, 0).toStdString(), "no");
  EXPECT_EQ(timeText(133140).toStdString(), "0:22:11");
  EXPECT_EQ(timeText(133140, true).toStdString(), "0:22:11.4");
}

TEST(Words, TellAnActByWhatAHandTookHoldOf) {
  EXPECT_EQ(actText("set cab1.handbrake off").toStdString(), "set Handbrake, cab 1: off");
  EXPECT_EQ(actText("hold engine1.start").toStdString(), "hold Start, engine 1");
  EXPECT_EQ(actText("judge end1.tail_lamp good").toStdString(), "judge End 1, tail lamp: good");
  EXPECT_EQ(actText("go lineside").toStdString(), "go lineside");
  const QString put_in = actText("instructor: arm battery.weak");
  EXPECT_TRUE(put_in.startsWith(QLatin1String("put in: "))) << put_in.toStdString();
  EXPECT_FALSE(put_in.contains(QLatin1String("battery.weak"))) << put_in.toStdString();
  EXPECT_TRUE(actText("instructor: clear battery.weak").startsWith(QLatin1String("put right: ")));
}

TEST(Words, TellWhatWasDoneAtTheDesk) {
  EXPECT_EQ(actText("instructor: mark before the hill").toStdString(), "mark set: before the hill");
  EXPECT_EQ(actText("instructor: remark general waits too long").toStdString(),
            "remark: waits too long");
  EXPECT_EQ(actText("instructor: pace frozen").toStdString(), "the clock stands still");
  EXPECT_EQ(actText("instructor: pace 5").toStdString(), "the clock goes at \u00d75");
  EXPECT_EQ(actText("instructor: intervene").toStdString(), "the instructor stepped in");
}

class OtherLanguage : public QTranslator {
 public:
  QString translate(const char* context, const char* source, const char*, int) const override {
    const bool known = QLatin1String(context) == QLatin1String("Sheet") &&
                       QLatin1String(source) == QLatin1String("Both engines run.");
    return known ? QStringLiteral("Beide Motoren laufen.") : QString();
  }
  [[nodiscard]] bool isEmpty() const override { return false; }
};

// The sheet has it without the full stop with which the exercise, and so the catalogue, says it.
TEST(Words, SayAnAimInTheReadersLanguage) {
  EXPECT_EQ(aimWords("Both engines run"), QLatin1String("Both engines run"));
  OtherLanguage other;
  QCoreApplication::installTranslator(&other);
  EXPECT_EQ(aimWords("Both engines run"), QLatin1String("Beide Motoren laufen"));
  EXPECT_EQ(aimWords("'cab1.air > 75'"), QLatin1String("'cab1.air > 75'"));
  QCoreApplication::removeTranslator(&other);
}

}  // namespace
}  // namespace cabwright::after
