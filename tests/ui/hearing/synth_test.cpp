// SPDX-License-Identifier: GPL-3.0-or-later
// The other voices, and what holds for all of them together.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <limits>
#include <string>
#include <utility>

#include "hearing/air_voice.h"
#include "hearing/bell_voice.h"
#include "hearing/horn_voice.h"
#include "hearing/limiter.h"
#include "hearing/wheels_voice.h"
#include "spectrum.h"

namespace cabwright::hearing::testing {
namespace {

constexpr double kMinus80Db = 1e-4;

HeardScene hornScene(int tone, double level = 1.0) {
  HeardScene s;
  s.horn = tone;
  s.horn_level = level;
  return s;
}

TEST(Horn, HasItsTwoTones) {
  EXPECT_EQ(findStrongest(renderSteady(hornScene(1), 1.0), 200.0, 500.0, 1.0), HornVoice::kLowHz);
  EXPECT_EQ(findStrongest(renderSteady(hornScene(2), 1.0), 200.0, 500.0, 1.0), HornVoice::kHighHz);
}

TEST(Horn, IsWeakThinAndFlatWithLittleAir) {
  const Mono full = renderSteady(hornScene(1), 1.0), weak = renderSteady(hornScene(1, 0.2), 1.0);
  EXPECT_LT(calcRms(weak), 0.3 * calcRms(full));
  EXPECT_LT(calcShareAbove(weak, 1200.0), calcShareAbove(full, 1200.0));
  EXPECT_LT(findStrongest(weak, 200.0, 500.0, 1.0), HornVoice::kLowHz - 4.0);
}

// Strokes of 0.3 s with pauses of 0.3 s, groups a second apart, as the guard gives them.
bool isStroke(double t, std::initializer_list<int> groups) {
  double start = 0.2;
  for (int strokes : groups) {
    for (int k = 0; k < strokes; ++k, start += 0.6) {
      if (t >= start && t < start + 0.3) return true;
    }
    start += 0.7;
  }
  return false;
}

TEST(Bell, GivesAsManyStrokesAsTheGuard) {
  const auto count = [](std::initializer_list<int> groups) {
    Synth synth;
    const Mono sound = renderScenes(synth, 6.0, [&](double t) {
      HeardScene s;
      s.bell = isStroke(t, groups);
      return s;
    });
    // A blow is a rise by half over what still rings, and no other follows at once.
    const Mono envelope = calcEnvelope(sound, 0.02);
    int blows = 0, quiet = 10;
    for (std::size_t k = 1; k < envelope.size(); ++k, ++quiet) {
      if (envelope[k] < 1.5 * envelope[k - 1] || envelope[k] < 0.02 || quiet < 10) continue;
      ++blows;
      quiet = 0;
    }
    return blows;
  };
  EXPECT_EQ(count({1}), 1);
  EXPECT_EQ(count({2}), 2);
  EXPECT_EQ(count({3, 3}), 6);
  EXPECT_EQ(count({6}), 6);
  EXPECT_EQ(count({}), 0);
}

TEST(Bell, IsNotTheFireBell) {
  HeardScene fire;
  fire.fire_bell = true;
  const Mono sound = renderSteady(fire, 1.0);
  EXPECT_NEAR(findStrongest(sound, 800.0, 3000.0, 5.0), BellVoice::kFireHz, 20.0);
  // Hammered: its loudness goes up and down with the blows.
  Mono loudness = calcEnvelope(sound, 0.01);
  const double mean = calcRms(loudness);
  for (double& l : loudness) l -= mean;
  EXPECT_NEAR(findStrongest(loudness, 5.0, 30.0, 0.5, 100.0), BellVoice::kFireBlowsHz, 1.0);
}

TEST(Bell, StopsWhenTheFireBellStops) {
  Synth synth;
  HeardScene fire;
  fire.fire_bell = true;
  synth.setScene(fire);
  (void)render(synth, 1.0);
  synth.setScene(HeardScene{});
  (void)render(synth, 0.2);
  EXPECT_LT(calcPeak(render(synth, 0.1)), kMinus80Db);
}

TEST(Air, HasAnotherColourInAndOut) {
  HeardScene out, in;
  out.hiss = in.hiss = 0.5;
  in.hiss_inwards = 1.0;
  const Mono bright = renderSteady(out, 1.0), deep = renderSteady(in, 1.0);
  EXPECT_GT(calcShareAbove(bright, 3000.0), 2.0 * calcShareAbove(deep, 3000.0));
  HeardScene loud = in;
  loud.hiss = 1.0;
  EXPECT_GT(calcRms(renderSteady(loud, 1.0)), 1.7 * calcRms(deep));
}

TEST(Blows, SoundOnceForEachTime) {
  Synth synth;
  const auto scene = [](double t) {
    HeardScene s;
    s.thump = (t > 0.5 && t < 1.0) || (t > 2.5 && t < 3.0);
    s.click = t > 4.0 && t < 4.5;
    return s;
  };
  const Mono sound = renderScenes(synth, 5.5, scene);
  const Mono envelope = calcEnvelope(sound, 0.02);
  EXPECT_EQ(countRises(envelope, 0.02, 0.002), 3);
  const std::span<const double> all(sound);
  EXPECT_LT(calcShareAbove(all.subspan(kRate / 2, kRate / 2), 800.0), 0.1);
  EXPECT_GT(calcShareAbove(all.subspan(4 * kRate, kRate / 2), 800.0), 0.3);
}

TEST(Rattle, IsAsFastAsTheTeethPass) {
  HeardScene s;
  s.rattle = true;
  s.rattle_hz = 12.0;
  EXPECT_NEAR(countRises(calcEnvelope(renderSteady(s, 2.0), 0.005), 0.03, 0.015), 24, 2);
}

TEST(Wheels, RollLouderWithSpeedAndOverJoints) {
  const auto rolling = [](double mph) {
    HeardScene s;
    s.speed_mph = mph;
    return renderSteady(s, 6.0);
  };
  EXPECT_GT(calcRms(rolling(60.0)), 1.5 * calcRms(rolling(20.0)));
  // At 20 mph a rail takes 2.05 s: in six seconds three times the two blows of the near bogie.
  Mono loud = calcEnvelope(rolling(20.0), 0.02);
  EXPECT_NEAR(countRises(loud, 0.6 * calcPeak(loud), 0.45 * calcPeak(loud)), 6, 1);
}

TEST(Wheels, SquealSlowlyUnderTheBlocksOnly) {
  EXPECT_EQ(WheelsVoice::calcSqueal(0.0), 0.0);
  EXPECT_EQ(WheelsVoice::calcSqueal(30.0), 0.0);
  EXPECT_EQ(WheelsVoice::calcSqueal(4.0), 1.0);
  const auto squeal = [](double mph, double press) {
    HeardScene s;
    s.speed_mph = mph;
    s.block_press = press;
    return calcAmplitude(renderSteady(s, 1.0), 1840.0);
  };
  EXPECT_GT(squeal(4.0, 0.6), 10.0 * squeal(4.0, 0.0));
  EXPECT_GT(squeal(4.0, 0.6), 10.0 * squeal(40.0, 0.6));
}

TEST(Silence, IsExactInADeadUnit) {
  Synth synth;
  synth.setScene(HeardScene{});
  EXPECT_EQ(calcPeak(render(synth, 1.0)), 0.0);
}

TEST(Silence, ComesBackExactlyAfterEverything) {
  Synth synth;
  synth.setScene(loudest());
  (void)render(synth, 1.0);
  synth.setScene(HeardScene{});
  (void)render(synth, 1.0);
  EXPECT_LT(calcPeak(render(synth, 0.5)), 30.0 * kMinus80Db);
  (void)render(synth, 3.0);
  EXPECT_EQ(calcPeak(render(synth, 1.0)), 0.0);
}

TEST(Synth, IsNeverAboveItsCeiling) {
  Synth synth;
  synth.setScene(loudest());
  double peak = 0.0;
  for (int k = 0; k < 40; ++k) {
    HeardScene s = loudest();
    s.thump = s.bell = s.click = k % 2 == 0;
    s.horn = 1 + k % 2;
    synth.setScene(s);
    peak = std::max(peak, calcPeak(render(synth, 0.1)));
  }
  EXPECT_LE(peak, Limiter::kCeiling);
  EXPECT_GT(peak, Limiter::kThreshold);
}

TEST(Limiter, LeavesTheQuietAloneAndBoundsTheRest) {
  Limiter limiter;
  limiter.prepare(kRate);
  Stereo quiet{0.3, -0.5};
  limiter.apply(quiet);
  EXPECT_EQ(quiet.left, 0.3);
  EXPECT_EQ(quiet.right, -0.5);
  for (double v : {1.0, 1e3, 1e300, -5.0}) {
    Stereo s{v, -v};
    limiter.apply(s);
    EXPECT_LE(std::abs(s.left), Limiter::kCeiling);
    EXPECT_EQ(s.left, -s.right);
  }
  Stereo broken{std::numeric_limits<double>::quiet_NaN(), 0.1};
  limiter.apply(broken);
  EXPECT_EQ(broken.left, 0.0);
}

TEST(Synth, TakesAnyNumbersAndStaysFiniteAndBounded) {
  rc::check("whatever the scene", [] {
    const auto any = [] {
      return *rc::gen::element(0.0, 1.0, -1.0, 0.3, 1e9, -1e300, 700.0,
                               std::numeric_limits<double>::quiet_NaN(),
                               std::numeric_limits<double>::infinity());
    };
    Synth synth;
    for (int k = 0; k < 4; ++k) {
      HeardScene s = loudest();
      for (HeardEngine& e : s.engine) e = {any(), any(), any(), true, any(), {}, any()};
      s.engine_nearness = any();
      s.walls = any();
      s.hiss = any();
      s.hiss_inwards = any();
      s.rattle_hz = any();
      s.horn = *rc::gen::inRange(-3, 5);
      s.horn_level = any();
      s.speed_mph = any();
      s.block_press = any();
      synth.setScene(s);
      synth.setVolume(any());
      const int rate = *rc::gen::element(-1, 8000, 44100, 48000, 96000, 1000000);
      std::vector<float> out(1001);
      synth.render(out, rate);
      for (float v : out) RC_ASSERT(std::isfinite(v) && std::abs(v) <= 0.9F);
    }
  });
}

TEST(Synth, GivesTheSameForTheSame) {
  Synth a, b;
  a.setScene(loudest());
  b.setScene(loudest());
  EXPECT_EQ(render(a, 0.5), render(b, 0.5));
}

TEST(Synth, SoundsAlikeAtOtherRates) {
  for (int rate : {22050, 44100, 96000}) {
    Synth synth;
    synth.setScene(hornScene(1));
    std::vector<float> out(2 * static_cast<std::size_t>(rate));
    synth.render(out, rate);
    Mono mono;
    for (std::size_t k = 0; k < out.size(); k += 2) mono.push_back(out[k]);
    EXPECT_EQ(findStrongest(mono, 280.0, 320.0, 1.0, rate), HornVoice::kLowHz) << rate;
  }
}

// A scene that changes makes no step that the scenes before and after do not make by themselves.
TEST(Synth, DoesNotClickWhenTheSceneChanges) {
  const HeardScene idle = oneEngine(420.0), fast = oneEngine(1700.0, 1.0, 1.0);
  HeardScene walled = idle, near = idle, hiss;
  walled.walls = 1.0;
  near.engine_nearness = 1.0;
  near.engine[0].bearing = 0.8;
  hiss.hiss = 0.8;
  const std::vector<std::pair<std::string, std::pair<HeardScene, HeardScene>>> changes{
      {"speed", {idle, fast}},
      {"walls", {idle, walled}},
      {"place", {idle, near}},
      {"horn begins", {HeardScene{}, hornScene(2)}},
      {"horn changes", {hornScene(1), hornScene(2)}},
      {"hiss begins", {HeardScene{}, hiss}},
      {"engine not heard", {fast, HeardScene{}}}};
  for (const auto& [name, change] : changes) {
    const double alone = std::max(calcLargestStep(renderSteady(change.first, 1.0)),
                                  calcLargestStep(renderSteady(change.second, 1.0)));
    for (const bool back : {false, true}) {
      Synth synth;
      synth.setScene(back ? change.second : change.first);
      Mono sound = render(synth, 1.0037);
      const double last = sound.back();
      synth.setScene(back ? change.first : change.second);
      sound = render(synth, 0.5);
      sound.insert(sound.begin(), last);
      EXPECT_LT(calcLargestStep(sound), 1.25 * alone) << name << (back ? ", back" : "");
    }
  }
}

TEST(Volume, FadesAndMutes) {
  Synth synth;
  synth.setScene(hornScene(1));
  const Mono loud = render(synth, 1.0);
  const double step = calcLargestStep(std::span(loud).last(kRate / 2));
  synth.setMuted(true);
  const Mono fading = render(synth, 0.5);
  EXPECT_LT(calcLargestStep(fading), 1.1 * step);
  EXPECT_GT(calcPeak(std::span(fading).first(480)), 0.05);
  EXPECT_EQ(calcPeak(std::span(fading).last(480)), 0.0);
  synth.setVolume(0.5);
  EXPECT_EQ(calcPeak(render(synth, 0.1)), 0.0);
  synth.setMuted(false);
  (void)render(synth, 0.5);
  EXPECT_NEAR(calcRms(render(synth, 0.5)), 0.5 * calcRms(std::span(loud).last(kRate / 2)), 0.01);
}

}  // namespace
}  // namespace cabwright::hearing::testing
