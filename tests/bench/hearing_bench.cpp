// SPDX-License-Identifier: GPL-3.0-or-later
// What the sound costs: share of one core for 48 kHz stereo, in a dead unit, idling, and with
// everything at once.
#include <fmt/format.h>

#include <chrono>
#include <string_view>
#include <vector>

#include "hearing/scene.h"
#include "hearing/synth.h"

namespace {

using namespace cabwright::hearing;

constexpr int kRate = 48000, kSeconds = 20, kScenesPerSecond = 50;

HeardScene idling() {
  HeardScene s;
  s.engine_nearness = 0.4;
  s.walls = 0.85;
  for (HeardEngine& e : s.engine) {
    e.note_rpm = 420.0;
    e.evenness = 1.0;
    e.load = 0.2;
  }
  return s;
}

HeardScene everything() {
  HeardScene s = idling();
  s.engine_nearness = 1.0;
  for (HeardEngine& e : s.engine) {
    e.note_rpm = 1750.0;
    e.evenness = 0.7;
    e.load = 1.0;
    e.starter = true;
    e.hum = 1.0;
    e.compressor = Compressor::kLoaded;
  }
  s.hiss = 1.0;
  s.hiss_inwards = 0.5;
  s.rattle = s.bell = s.fire_bell = true;
  s.rattle_hz = 40.0;
  s.horn = 2;
  s.horn_level = 1.0;
  s.speed_mph = 8.0;
  s.block_press = 1.0;
  return s;
}

void measure(std::string_view name, const HeardScene& scene) {
  Synth synth;
  std::vector<float> samples(2 * kRate / kScenesPerSecond);
  const auto start = std::chrono::steady_clock::now();
  for (int k = 0; k < kSeconds * kScenesPerSecond; ++k) {
    synth.setScene(scene);
    synth.render(samples, kRate);
  }
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
  fmt::print("{:<12} {:6.3f} % of one core\n", name, 100.0 * took.count() / kSeconds);
}

}  // namespace

int main() {
  measure("dead unit", HeardScene{});
  measure("idling", idling());
  measure("everything", everything());
  return 0;
}
