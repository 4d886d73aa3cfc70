// SPDX-License-Identifier: GPL-3.0-or-later
// The note of the engines, measured: six cylinders, four strokes, three firings a turn.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "hearing/engine_voice.h"
#include "spectrum.h"

namespace cabwright::hearing::testing {
namespace {

// Half orders 1..60 of an engine: amplitudes at multiples of rpm / 120 Hz.
std::vector<double> measureHalfOrders(const HeardScene& scene) {
  const Mono sound = renderSteady(scene, 4.0);
  std::vector<double> orders;
  for (int k = 1; k <= 60; ++k) {
    orders.push_back(calcAmplitude(sound, k * scene.engine[0].note_rpm / 120.0));
  }
  return orders;
}

int strongestOf(const std::vector<double>& orders) {
  return static_cast<int>(std::ranges::max_element(orders) - orders.begin()) + 1;
}

// Strength of all that is no multiple of the firing frequency, over that of the firing frequency.
double calcRoughness(const std::vector<double>& orders) {
  double sum = 0.0;
  for (std::size_t k = 1; k <= orders.size(); ++k) {
    if (k % 6 != 0) sum += orders[k - 1] * orders[k - 1];
  }
  return std::sqrt(sum) / orders[5];
}

TEST(EngineNote, FiresThreeTimesATurnAndThatIsTheStrongest) {
  for (double rpm : {420.0, 600.0, 900.0, 1200.0, 1500.0, 1800.0}) {
    for (double load : {0.15, 1.0}) {
      const auto orders = measureHalfOrders(oneEngine(rpm, 1.0, load));
      EXPECT_EQ(strongestOf(orders), 6) << rpm << " rpm, load " << load;
      EXPECT_LT(calcRoughness(orders), 0.1) << rpm << " rpm, load " << load;
    }
  }
}

TEST(EngineNote, IsRoughWithHalfOrdersWhenItFiresUnevenly) {
  for (double rpm : {420.0, 700.0, 1500.0}) {
    const double even = calcRoughness(measureHalfOrders(oneEngine(rpm, 1.0)));
    const double slightly = calcRoughness(measureHalfOrders(oneEngine(rpm, 0.93)));
    const double clearly = calcRoughness(measureHalfOrders(oneEngine(rpm, 0.75)));
    EXPECT_GT(slightly, 3.0 * even) << rpm;
    EXPECT_GT(clearly, 1.3 * slightly) << rpm;
  }
}

TEST(EngineNote, WithoutFireIsCompressionAlone) {
  const double fires = calcRms(renderSteady(oneEngine(300.0, 1.0, 0.5), 2.0));
  const double turns = calcRms(renderSteady(oneEngine(300.0, 0.0, 0.5), 2.0));
  EXPECT_GT(turns, 0.003);
  EXPECT_LT(turns, 0.5 * fires);
}

TEST(EngineNote, GrowsAndSharpensWithLoad) {
  const Mono light = renderSteady(oneEngine(1200.0, 1.0, 0.15), 2.0);
  const Mono heavy = renderSteady(oneEngine(1200.0, 1.0, 1.0), 2.0);
  EXPECT_GT(calcRms(heavy), 1.4 * calcRms(light));
  const auto harmonics = [](const Mono& m) {
    return calcAmplitude(m, 300.0) / calcAmplitude(m, 60.0);
  };
  EXPECT_GT(harmonics(heavy), 1.15 * harmonics(light));
}

TEST(EngineNote, IsDullBehindWalls) {
  HeardScene open = oneEngine(900.0), walled = open;
  walled.walls = 1.0;
  EXPECT_LT(calcShareAbove(renderSteady(walled, 2.0), 1000.0),
            0.3 * calcShareAbove(renderSteady(open, 2.0), 1000.0));
}

TEST(EngineNote, FollowsTheSpeedWithoutAJump) {
  Synth synth;
  const auto at = [](double t) { return t < 2.0 ? 600.0 : t < 4.0 ? 1400.0 : 800.0; };
  const Mono sound = renderScenes(synth, 6.0, [&](double t) { return oneEngine(at(t)); });
  const std::span<const double> all(sound);
  const auto second = [&](int k) {
    return all.subspan(static_cast<std::size_t>(k) * kRate, kRate);
  };
  EXPECT_NEAR(findStrongest(second(1), 15.0, 110.0, 0.5), 30.0, 1.0);
  EXPECT_NEAR(findStrongest(second(3), 15.0, 110.0, 0.5), 70.0, 1.0);
  EXPECT_NEAR(findStrongest(second(5), 15.0, 110.0, 0.5), 40.0, 1.0);
  const double steady = std::max(
      {calcLargestStep(second(1)), calcLargestStep(second(3)), calcLargestStep(second(5))});
  EXPECT_LT(calcLargestStep(all.subspan(kRate)), 1.5 * steady);
}

// Walking away must not sound like an engine that stops.
TEST(EngineNote, KeepsItsPitchWhenItIsNotHeardAnyMore) {
  Synth synth;
  const Mono sound =
      renderScenes(synth, 2.2, [](double t) { return t < 2.0 ? oneEngine(1500.0) : HeardScene{}; });
  const std::span<const double> fading(sound.data() + 2 * kRate, kRate / 10);
  EXPECT_GT(calcAmplitude(fading, 75.0), 2.0 * calcAmplitude(fading, 35.0));
}

TEST(TwoEngines, BeatAtTheDifferenceOfTheirFirings) {
  for (double apart_rpm : {10.0, 20.0}) {
    HeardScene s = oneEngine(1200.0);
    s.engine[1] = s.engine[0];
    s.engine[1].note_rpm += apart_rpm;
    const Mono sound = renderSteady(s, 16.0);
    // How loud the firing frequency is from one tenth of a second to the next.
    const double middle_hz = (1200.0 + 0.5 * apart_rpm) / 20.0;
    Mono loudness;
    for (std::size_t k = 0; k + 4800 <= sound.size(); k += 4800) {
      loudness.push_back(calcAmplitude(std::span(sound).subspan(k, 4800), middle_hz));
    }
    double mean = 0.0;
    for (double l : loudness) mean += l / static_cast<double>(loudness.size());
    for (double& l : loudness) l -= mean;
    EXPECT_NEAR(findStrongest(loudness, 0.2, 4.0, 0.05, 10.0), apart_rpm / 20.0, 0.051);
    EXPECT_GT(calcRms(loudness), 0.3 * mean);
  }
}

TEST(TwoEngines, StandOnTheirOwnSides) {
  HeardScene s = oneEngine(900.0);
  s.engine[0].bearing = -0.5;
  EXPECT_GT(calcRms(renderSteady(s, 1.0, 0)), 1.5 * calcRms(renderSteady(s, 1.0, 1)));
}

TEST(Misfires, AreAsManyAsAskedForAndMoreInTheWeak) {
  for (double evenness = 0.0; evenness <= 1.0; evenness += 0.05) {
    double sum = 0.0, least = 1.0, most = 0.0;
    for (std::size_t k = 0; k < EngineVoice::kCylinders; ++k) {
      const double fires = EngineVoice::calcFires(k, evenness);
      sum += fires;
      least = std::min(least, fires);
      most = std::max(most, fires);
    }
    EXPECT_NEAR(sum / 6.0, evenness, 1e-6);
    EXPECT_GE(least, -1e-9);
    EXPECT_LE(most, 1.0);
    if (evenness > 0.2 && evenness < 0.95) {
      EXPECT_GT(most - least, 0.05);
    }
  }
}

TEST(Starter, WhinesWithTheTeethOfTheRingAndGrowlsWhenNothingTurns) {
  HeardScene s = oneEngine(180.0, 0.0, 1.0);
  s.engine[0].starter = true;
  EXPECT_NEAR(findStrongest(renderSteady(s, 1.0), 150.0, 1000.0, 5.0), 330.0, 5.0);
  s.engine[0].note_rpm = 0.0;
  EXPECT_NEAR(findStrongest(renderSteady(s, 2.0), 40.0, 1000.0, 5.0), 100.0, 20.0);
}

TEST(Exhauster, HumsWithItsVanes) {
  HeardScene s = oneEngine(600.0);
  s.engine_nearness = 0.0;
  s.engine[0].hum = 1.0;
  EXPECT_NEAR(findStrongest(renderSteady(s, 1.0), 50.0, 400.0, 2.0), 120.0, 2.0);
}

TEST(Compressor, KnocksWhileLoadedAndPuffsWhenUnloaded) {
  HeardScene s = oneEngine(480.0);
  s.engine_nearness = 0.0;
  s.engine[0].compressor = Compressor::kLoaded;
  Synth synth;
  synth.setScene(s);
  (void)render(synth, 1.0);
  const Mono knocks = render(synth, 2.0);
  EXPECT_NEAR(countRises(calcEnvelope(knocks, 0.005), 0.03, 0.01), 16, 1);
  s.engine[0].compressor = Compressor::kUnloaded;
  synth.setScene(s);
  const Mono puff = render(synth, 2.0);
  EXPECT_GT(calcRms(std::span(puff).first(kRate / 10)), 0.05);
  EXPECT_LT(calcRms(std::span(puff).last(kRate / 10)), 1e-4);
  // Not when one only walks away.
  s.engine[0].compressor = Compressor::kLoaded;
  synth.setScene(s);
  (void)render(synth, 1.0);
  synth.setScene(HeardScene{});
  EXPECT_LT(calcShareAbove(render(synth, 0.3), 2500.0), 0.25);
}

}  // namespace
}  // namespace cabwright::hearing::testing
