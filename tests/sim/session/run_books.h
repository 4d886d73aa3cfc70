// SPDX-License-Identifier: GPL-3.0-or-later
// The accounts of a run, held while anybody does anything in it: no air, no vacuum, no energy and
// no electric charge comes from nowhere or is lost, whatever faults come and go.
#pragma once

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "quantity/units.h"
#include "session/live_run.h"

namespace cabwright::session {

/// Follows one run from its start, tick by tick. A run gone back is followed on with resume(): it
/// began as the first one did, so that only what is added up here starts anew.
class RunBooks {
 public:
  // Of what went through since the start.
  static constexpr double kMassShare = 1e-9, kEnergyShare = 1e-6, kChargeShare = 1e-3;
  static constexpr double kLittleJ = 50.0, kLittleC = 5.0, kBusA = 1e-6;

  explicit RunBooks(const LiveRun& at_start) : first_(at_start.unit().plant().accounts()) {
    resume(at_start);
  }

  void resume(const LiveRun& run) {
    charge_ = run.unit().readings().battery_charge;
    moved_c_ = least_c_ = most_c_ = through_c_ = 0.0;
  }

  /// After each tick. What is wrong with the currents, or nothing.
  std::string follow(const LiveRun& run) {
    const plant::PlantReadings& r = run.unit().readings();
    const plant::Parameters& p = run.unit().plant().parameters();
    followCharge(r, p.battery);
    const plant::PlantInputs& in = run.unit().world().inputs;
    double current = r.battery_a - (in.load_conductance_s + p.battery.earth_s) * r.bus_v;
    for (const plant::LineReadings& line : r.line) current += line.generator_a - line.starter_a;
    if (std::abs(current) > kBusA)
      return fmt::format("{} A come from nowhere at {} V", current, r.bus_v);
    if (!in.battery_switch_closed && r.battery_a != 0.0)
      return fmt::format("{} A through an open battery switch", r.battery_a);
    return {};
  }

  /// What does not balance now, or nothing.
  std::string findLeak(const LiveRun& run) {
    const plant::Accounts a = run.unit().plant().accounts();
    const double air = (a.air_kg - first_.air_kg) - (a.air_in_kg - a.air_out_kg);
    const double air_through = a.air_in_kg + std::abs(a.air_out_kg) + first_.air_kg;
    const double vacuum = (a.vacuum_kg - first_.vacuum_kg) - (a.vacuum_in_kg - a.vacuum_out_kg);
    const double vacuum_through = std::abs(a.vacuum_in_kg) + a.vacuum_out_kg + first_.vacuum_kg;
    const double stored = a.stored_j - first_.stored_j;
    const double energy = stored - (a.in_j - a.out_j + a.altered_j);
    const double energy_through = std::abs(a.in_j) + std::abs(a.out_j) + std::abs(stored);
    note(0, air, kMassShare * air_through, 0.0);
    note(1, vacuum, kMassShare * vacuum_through, 0.0);
    note(2, energy, kEnergyShare * energy_through, kLittleJ);
    const double allowed_c = kChargeShare * through_c_ + kLittleC;
    const double charge = std::max({0.0, least_c_ - moved_c_, moved_c_ - most_c_});
    note(3, charge, allowed_c - kLittleC, kLittleC);
    through_j_ = energy_through;
    static constexpr std::array<const char*, 4> kOf{"kg of control air", "kg in the vacuum system",
                                                    "J", "C in the battery"};
    for (std::size_t k = 0; k < worst_.size(); ++k)
      if (now_[k] > 1.0)
        return fmt::format("{} out of balance: {:.1f} times what is allowed", kOf[k], now_[k]);
    return {};
  }

  /// The largest error so far of air, vacuum, energy, charge: as a share of what is allowed.
  [[nodiscard]] const std::array<double, 4>& worst() const { return worst_; }
  /// Energy that went through, J.
  [[nodiscard]] double throughJ() const { return through_j_; }

 private:
  // The tick's end stands for the tick: switches change between ticks, so only what drifts within
  // one is missed. What a nearly full battery takes it may gas away: anything from none to all.
  void followCharge(const plant::PlantReadings& r, const plant::BatteryParameters& battery) {
    constexpr double kGassesFrom = 0.98;
    moved_c_ += (r.battery_charge - charge_) * battery.capacity_ah * 3600.0;
    charge_ = r.battery_charge;
    const double coulombs = r.battery_a * quantity::kTickSeconds;
    const double lost = battery.self_discharge_a * quantity::kTickSeconds;
    through_c_ += std::abs(coulombs);
    least_c_ -= lost + (coulombs < 0.0 && charge_ >= kGassesFrom - 1e-3 ? 0.0 : coulombs);
    most_c_ -= coulombs + (charge_ > 0.0 ? lost : 0.0);
  }

  void note(std::size_t k, double error, double share, double little) {
    now_[k] = std::abs(error) / (share + little);
    worst_[k] = std::max(worst_[k], now_[k]);
  }

  plant::Accounts first_;
  std::array<double, 4> now_{}, worst_{};
  double charge_ = 0, moved_c_ = 0, least_c_ = 0, most_c_ = 0, through_c_ = 0, through_j_ = 0;
};

}  // namespace cabwright::session
