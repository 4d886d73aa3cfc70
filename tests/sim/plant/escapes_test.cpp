// SPDX-License-Identifier: GPL-3.0-or-later
// What is told of each opening adds up to what the ledgers of lost and drawn-in air take up.
#include <gtest/gtest.h>

#include <numeric>
#include <random>

#include "plant/step_method.h"
#include "plant/world.h"

namespace cabwright::plant {
namespace {

double sum(const auto& values) { return std::accumulate(values.begin(), values.end(), 0.0); }

double airOut(const Escapes& e) {
  return sum(e.device_choke) + sum(e.gears) + sum(e.throttle) + sum(e.shift) + e.main_reservoir +
         e.main_drain + e.control_reservoir + e.control_drain + e.safety_valve;
}

double vacuumIn(const Escapes& e) {
  return sum(e.drivers_valve) + sum(e.guards_valve) + sum(e.device_vent) + sum(e.end) +
         sum(e.side) + sum(e.trailer) + e.between + e.alarm + e.release_pipe + sum(e.chamber) +
         sum(e.exhauster_back);
}

// Everything open that can be open, by chance.
PlantInputs randomInputs(std::mt19937& random) {
  const auto coin = [&] { return random() % 2 == 0; };
  const auto share = [&] { return static_cast<double>(random() % 101) / 100.0; };
  PlantInputs u;
  for (LineInputs& line : u.line) {
    for (bool& valve : line.gear_valve) valve = coin();
    line.throttle_notch = static_cast<int>(random() % 5);
    line.shift_forward = coin();
    line.shift_reverse = coin();
    line.shift_air_cock_open = coin();
  }
  for (CabInputs& cab : u.cab) {
    cab.drivers_valve = 2.0 * share() - 1.0;
    cab.device_held = coin();
    cab.device_in_circuit = coin();
    cab.guards_valve = coin() ? share() : 0.0;
  }
  u.passenger_alarm = coin();
  for (bool& cord : u.release_cord) cord = coin();
  for (bool& drain : u.reservoir_drain) drain = coin();
  for (bool& hose : u.hose_on_dummy) hose = coin();
  return u;
}

Parameters leakyParameters(std::mt19937& random, bool air_pipes) {
  Parameters p;
  for (const ParameterInfo& info : parameterTable()) {
    const bool leak = info.name.ends_with("leak_c") || info.name.ends_with("lap_to_air_c") ||
                      info.name.ends_with("backflow_c");
    const bool shared =
        info.name.starts_with("air.between") || info.name.starts_with("air.trailer");
    const bool off = shared && !air_pipes;
    if (leak && !off) info.of(p) = static_cast<double>(random() % 100) / 50.0;
  }
  return p;
}

StartConditions chargedStart() {
  StartConditions s;
  s.main_psi = 118.0;  // the safety valve blows
  s.control_psi = 90.0;
  s.train_pipe_inhg = s.chamber_inhg = 20.0;
  s.release_pipe_inhg = 25.0;
  return s;
}

TEST(Escapes, AddUpToWhatTheLedgersTakeUp) {
  std::mt19937 random(20261);
  for (int k = 0; k < 60; ++k) {
    const Parameters p = leakyParameters(random, false);
    World world(p, GradeProfile(), chargedStart(), makeDopri5());
    for (int tick = 0; tick < 5; ++tick) world.advance(randomInputs(random));
    State dx;
    Forces forces;
    calcRates(world.m, world.modes, world.x, dx, forces);
    const Escapes e = calcEscapes(world.m, forces);
    EXPECT_NEAR(airOut(e), dx[kAirOutKg], 1e-12) << k;
    EXPECT_NEAR(vacuumIn(e), dx[kVacuumInKg], 1e-12) << k;
  }
}

// Two pipes leak at the same place: air and vacuum together are what both ledgers take up.
TEST(Escapes, OfAirAndVacuumAtOnePlaceAddUp) {
  std::mt19937 random(7);
  for (int k = 0; k < 20; ++k) {
    World world(leakyParameters(random, true), GradeProfile(), chargedStart(), makeDopri5());
    world.advance(randomInputs(random));
    State dx;
    Forces forces;
    calcRates(world.m, world.modes, world.x, dx, forces);
    const Escapes e = calcEscapes(world.m, forces);
    EXPECT_NEAR(airOut(e) + vacuumIn(e), dx[kAirOutKg] + dx[kVacuumInKg], 1e-12) << k;
  }
}

}  // namespace
}  // namespace cabwright::plant
