// SPDX-License-Identifier: GPL-3.0-or-later
// Everything heard is also said, in words that describe and do not explain.
#include <gtest/gtest.h>

#include <QStringList>
#include <cmath>
#include <functional>

#include "hearing/captions.h"
#include "hearing/listener.h"
#include "spectrum.h"

namespace cabwright::hearing::testing {
namespace {

QString wordsOf(HeardWho who, const HeardScene& scene, const HeardTrend& trend = {}) {
  for (const HeardLine& line : calcHeardLines(scene, trend)) {
    if (line.who == who) return line.words;
  }
  return "(no line)";
}

// What a listener makes of a note over some seconds.
NoteTrend listen(double seconds, const std::function<double(double)>& rpm_at) {
  Listener listener;
  for (double t = 0.0; t < seconds; t += 0.02) listener.hear(oneEngine(rpm_at(t)), t);
  return listener.trend().note[0];
}

TEST(Listener, HearsWhereANoteGoes) {
  EXPECT_EQ(listen(5.0, [](double) { return 420.0; }), NoteTrend::kSteady);
  EXPECT_EQ(listen(5.0, [](double t) { return 420.0 + 100.0 * t; }), NoteTrend::kRising);
  EXPECT_EQ(listen(5.0, [](double t) { return 1700.0 - 100.0 * t; }), NoteTrend::kFalling);
  EXPECT_EQ(listen(6.0, [](double t) { return 450.0 + 60.0 * std::sin(4.0 * t); }),
            NoteTrend::kHunting);
  // It settles: no longer hunting some seconds after.
  EXPECT_EQ(
      listen(12.0, [](double t) { return t < 5.0 ? 450.0 + 60.0 * std::sin(4.0 * t) : 450.0; }),
      NoteTrend::kSteady);
  // One rise and fall is no hunting.
  EXPECT_NE(listen(4.0, [](double t) { return t < 2.0 ? 420.0 + 200.0 * t : 1220.0 - 200.0 * t; }),
            NoteTrend::kHunting);
}

TEST(Listener, CountsStrokesAndForgetsThem) {
  Listener listener;
  HeardScene stroke, pause;
  stroke.bell = true;
  double t = 0.0;
  for (int k = 1; k <= 3; ++k) {
    listener.hear(stroke, t += 0.3);
    EXPECT_EQ(listener.trend().strokes, k);
    listener.hear(pause, t += 0.3);
  }
  listener.hear(pause, t += 4.0);
  EXPECT_EQ(listener.trend().strokes, 0);
  listener.hear(stroke, t += 1.0);
  EXPECT_EQ(listener.trend().strokes, 1);
}

TEST(Listener, KeepsAThumpForAMomentAndBeginsAnewWhenTimeGoesBack) {
  Listener listener;
  HeardScene s;
  s.thump = s.click = true;
  listener.hear(s, 10.0);
  listener.hear(HeardScene{}, 11.5);
  EXPECT_TRUE(listener.trend().thump_just_now);
  EXPECT_TRUE(listener.trend().click_just_now);
  Listener goes_on = listener;
  goes_on.hear(HeardScene{}, 13.0);
  EXPECT_EQ(goes_on.trend(), HeardTrend{});
  listener.hear(HeardScene{}, 5.0);
  EXPECT_EQ(listener.trend(), HeardTrend{});
}

TEST(Captions, AlwaysHaveGuardEnginesAndAir) {
  const auto lines = calcHeardLines(HeardScene{}, HeardTrend{});
  ASSERT_EQ(lines.size(), 4U);
  EXPECT_EQ(lines[0].words, "silent, no strokes yet");
  EXPECT_EQ(lines[1].words, "silent");
  EXPECT_EQ(lines[2].name, "Engine 2");
  EXPECT_EQ(lines[3].words, "no hiss");
  for (const HeardLine& line : lines) {
    EXPECT_EQ(line.trace, HeardTrace::kNone);
    EXPECT_EQ(line.level, 0.0);
  }
}

TEST(Captions, DescribeTheNote) {
  EXPECT_EQ(wordsOf(HeardWho::kEngine1, oneEngine(420.0)), "even, idling");
  EXPECT_EQ(wordsOf(HeardWho::kEngine1, oneEngine(1700.0)), "even, high");
  HeardTrend hunts;
  hunts.note[0] = NoteTrend::kHunting;
  EXPECT_EQ(wordsOf(HeardWho::kEngine1, oneEngine(420.0, 0.6), hunts), "uneven, hunting");
  HeardScene s = oneEngine(170.0, 0.0, 1.0);
  s.engine[0].starter = true;
  EXPECT_EQ(wordsOf(HeardWho::kEngine1, s), "cranking");
  s.engine[0].evenness = 0.3;
  EXPECT_EQ(wordsOf(HeardWho::kEngine1, s), "cranking, fires now and then");
  s.engine[0].note_rpm = 0.0;
  EXPECT_EQ(wordsOf(HeardWho::kEngine1, s), "a growl, nothing turns");
  s = oneEngine(420.0);
  s.engine[0].hum = 1.0;
  s.engine[0].compressor = Compressor::kLoaded;
  EXPECT_EQ(wordsOf(HeardWho::kEngine1, s), "even, idling, with a hum, with a light knock");
  const HeardLine line = calcHeardLines(s, {})[1];
  EXPECT_EQ(line.trace, HeardTrace::kEngine);
  EXPECT_EQ(line.rate_hz, 21.0);
}

TEST(Captions, CountTheGuardsStrokes) {
  HeardScene s;
  HeardTrend trend;
  s.bell = true;
  trend.strokes = 2;
  EXPECT_EQ(wordsOf(HeardWho::kGuard, s, trend), "two strokes");
  s.bell = false;
  s.bell_code = 2;
  s.bell_age_s = 1.0;
  EXPECT_EQ(wordsOf(HeardWho::kGuard, s, trend), "two strokes just now");
  s.bell_code = 33;
  EXPECT_EQ(wordsOf(HeardWho::kGuard, s), "three strokes, then three strokes just now");
  s.bell_age_s = 25.4;
  EXPECT_EQ(wordsOf(HeardWho::kGuard, s), "three strokes, then three strokes 25 s ago");
  s.bell_age_s = 125;
  EXPECT_EQ(wordsOf(HeardWho::kGuard, s), "three strokes, then three strokes 2 min ago");
  s.bell_age_s = 9999.0;
  EXPECT_EQ(wordsOf(HeardWho::kGuard, s), "silent");
}

TEST(Captions, DescribeTheAir) {
  HeardScene s;
  s.hiss = 0.1;
  EXPECT_EQ(wordsOf(HeardWho::kAir, s), "hiss, faint");
  s.hiss = 0.9;
  EXPECT_EQ(wordsOf(HeardWho::kAir, s), "hiss, loud");
  s.hiss_inwards = 1.0;
  EXPECT_EQ(wordsOf(HeardWho::kAir, s), "deep hiss, loud");
}

// What has a sound has a line.
TEST(Captions, LeaveNothingOut) {
  HeardTrend trend;
  trend.thump_just_now = trend.click_just_now = true;
  trend.strokes = 1;
  const auto lines = calcHeardLines(loudest(), trend);
  ASSERT_EQ(lines.size(), 9U);
  for (std::size_t k = 0; k < lines.size(); ++k) {
    EXPECT_EQ(static_cast<std::size_t>(lines[k].who), k);
    EXPECT_NE(lines[k].trace, HeardTrace::kNone);
    EXPECT_GT(lines[k].level, 0.0);
    EXPECT_LE(lines[k].level, 1.0);
    EXPECT_FALSE(lines[k].name.isEmpty() || lines[k].words.isEmpty());
  }
}

// No cause, no verdict, no advice: whatever is heard.
TEST(Captions, NeverNameACause) {
  const QStringList forbidden{"leak",  "fault", "defect", "misfir", "belt",  "fuel",
                              "cold",  "worn",  "broken", "vacuum", "brake", "starter",
                              "valve", "wrong", "should", "must",   "tooth", "dog"};
  for (double rpm : {0.0, 150.0, 300.0, 420.0, 700.0, 1200.0, 1700.0, 1900.0}) {
    for (double evenness : {0.0, 0.2, 0.6, 0.9, 1.0}) {
      for (int trend = 0; trend < 4; ++trend) {
        for (bool starter : {false, true}) {
          HeardScene s = loudest();
          for (HeardEngine& e : s.engine) e = {rpm, evenness, 0.5, starter, 0.4, {}, 0.0};
          HeardTrend t;
          t.note = {static_cast<NoteTrend>(trend), NoteTrend::kSteady};
          for (const HeardLine& line : calcHeardLines(s, t)) {
            for (const QString& word : forbidden) {
              EXPECT_FALSE(line.words.contains(word)) << qPrintable(line.words);
            }
          }
        }
      }
    }
  }
}

}  // namespace
}  // namespace cabwright::hearing::testing
