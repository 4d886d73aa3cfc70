// SPDX-License-Identifier: GPL-3.0-or-later
#include "golden_script.h"

#include <vector>

namespace cabwright::testing {

namespace {

using plant::PlantInputs;

void setNotch(PlantInputs& u, int notch) {
  for (plant::LineInputs& line : u.line) line.throttle_notch = notch;
}
void setGear(PlantInputs& u, int gear) {
  for (plant::LineInputs& line : u.line) {
    line.gear_valve.fill(false);
    if (gear > 0) line.gear_valve[static_cast<std::size_t>(gear - 1)] = true;
  }
}
void setDirection(PlantInputs& u, int way) {
  for (plant::LineInputs& line : u.line) {
    line.shift_forward = way > 0;
    line.shift_reverse = way < 0;
  }
  u.cab[0].device_in_circuit = way != 0;
}
void setHandbrakes(PlantInputs& u, double on) {
  for (plant::CabInputs& cab : u.cab) cab.handbrake = on;
}
void setValve(PlantInputs& u, double at) { u.cab[0].drivers_valve = at; }

struct Change {
  double at_s;
  void (*make)(PlantInputs&);
};

constexpr double kRelease = plant::kValveRelease, kLap = plant::kValveLap,
                 kFull = plant::kValveFull;

using U = PlantInputs;
// clang-format off
const std::vector<Change>& preparation() {
  static const std::vector<Change> changes{
    {4.0, [](U& u) { u.battery_switch_closed = true; }},
    {6.0, [](U& u) { u.load_conductance_s = 0.6; }},
    {12.0, [](U& u) { u.line[0].hand_throttle = 1.0; }},
    {14.0, [](U& u) { u.line[0].starter_contactor = true; }},
    {26.0, [](U& u) { u.line[0].starter_contactor = false; }},
    {34.0, [](U& u) { u.line[0].hand_throttle = 0.55; }},
    {44.0, [](U& u) { u.line[1].hand_throttle = 1.0; }},
    {46.0, [](U& u) { u.line[1].starter_contactor = true; }},
    {58.0, [](U& u) { u.line[1].starter_contactor = false; }},
    {66.0, [](U& u) { u.line[1].hand_throttle = 0.55; }},
    {80.0, [](U& u) { setValve(u, kRelease); }},
    {140.0, [](U& u) { setValve(u, kLap); }},
    {170.0, [](U& u) { setValve(u, 0.35); }},
    {176.0, [](U& u) { setValve(u, kLap); }},
    {186.0, [](U& u) { setValve(u, kFull); }},
    {200.0, [](U& u) { setValve(u, kRelease); }},
    {240.0, [](U& u) { u.load_conductance_s = 1.1; }},
    {262.0, [](U& u) { u.cab[0].horn = true; }},
    {263.5, [](U& u) { u.cab[0].horn = false; }},
    {250.0, [](U& u) { for (auto& l : u.line) l.hand_throttle = 0.42; }},
    {362.0, [](U& u) { for (auto& l : u.line) l.hand_throttle = 0.0; }},
    {366.0, [](U& u) { u.cab[0].device_held = true; }},
    {372.0, [](U& u) { setDirection(u, 1); }},
    {380.0, [](U& u) { u.cab[0].device_held = false; }},   // the device's own test
    {389.0, [](U& u) { u.cab[0].device_held = true; }},
    {400.0, [](U& u) { setValve(u, kFull); }},
    {406.0, [](U& u) { setValve(u, kLap); }},
    {412.0, [](U& u) { setValve(u, kRelease); }},
    {425.0, [](U& u) { setNotch(u, 2); }},
    {429.0, [](U& u) { setNotch(u, 0); }},
    {436.0, [](U& u) { setValve(u, 0.6); }},
    {439.0, [](U& u) { setValve(u, kLap); }},
    {442.0, [](U& u) { setHandbrakes(u, 0.0); }},
  };
  return changes;
}
const std::vector<Change>& firstTrip() {
  static const std::vector<Change> changes{
    {446.0, [](U& u) { setGear(u, 1); }},
    {449.0, [](U& u) { setValve(u, kRelease); }},
    {456.0, [](U& u) { setNotch(u, 1); }},
    {459.0, [](U& u) { setNotch(u, 3); }},
    {463.0, [](U& u) { setNotch(u, 4); }},
    {482.0, [](U& u) { setNotch(u, 0); }},
    {482.4, [](U& u) { setGear(u, 2); }},
    {485.0, [](U& u) { setNotch(u, 4); }},
    {505.0, [](U& u) { setNotch(u, 0); }},
    {505.4, [](U& u) { setGear(u, 3); }},
    {508.0, [](U& u) { setNotch(u, 4); }},
    {512.0, [](U& u) { u.cab[0].horn = true; }},
    {514.0, [](U& u) { u.cab[0].horn = false; }},
    {545.0, [](U& u) { setNotch(u, 0); }},
    {545.4, [](U& u) { setGear(u, 4); }},
    {548.0, [](U& u) { setNotch(u, 4); }},
    {620.0, [](U& u) { setNotch(u, 0); }},
    {628.0, [](U& u) { setValve(u, 0.4); }},
    {632.0, [](U& u) { setValve(u, kLap); }},
    {645.0, [](U& u) { setValve(u, kRelease); }},
    {652.0, [](U& u) { setGear(u, 3); }},
    {660.0, [](U& u) { setNotch(u, 2); }},
    {690.0, [](U& u) { setNotch(u, 0); }},
    {696.0, [](U& u) { setValve(u, 0.5); }},
    {701.0, [](U& u) { setValve(u, kLap); }},
    {716.0, [](U& u) { setGear(u, 0); }},
    {722.0, [](U& u) { setValve(u, kFull); }},
    {760.0, [](U& u) { setHandbrakes(u, 0.5); }},
  };
  return changes;
}
const std::vector<Change>& secondTrip() {
  static const std::vector<Change> changes{
    {775.0, [](U& u) { setGear(u, 1); }},
    {780.0, [](U& u) { setHandbrakes(u, 0.0); }},
    {782.0, [](U& u) { setValve(u, kRelease); }},
    {790.0, [](U& u) { setNotch(u, 2); }},
    {800.0, [](U& u) { setNotch(u, 4); }},
    {818.0, [](U& u) { setNotch(u, 0); }},
    {818.4, [](U& u) { setGear(u, 2); }},
    {820.8, [](U& u) { setNotch(u, 3); }},
    {850.0, [](U& u) { setNotch(u, 0); }},
    {855.0, [](U& u) { u.cab[1].guards_valve = 0.6; }},
    {858.0, [](U& u) { u.cab[1].guards_valve = 0.0; }},
    {860.5, [](U& u) { setValve(u, kLap); }},
    {885.0, [](U& u) { setGear(u, 0); }},
    {895.0, [](U& u) { setDirection(u, 0); }},
    {899.3, [](U& u) { setDirection(u, -1); }},
    {902.0, [](U& u) { setNotch(u, 1); }},
    {905.0, [](U& u) { setNotch(u, 0); }},
    {912.0, [](U& u) { setGear(u, 1); }},
    {915.0, [](U& u) { setValve(u, kRelease); }},
    {925.0, [](U& u) { setNotch(u, 2); }},
    {950.0, [](U& u) { setNotch(u, 0); }},
    {951.0, [](U& u) { u.cab[0].device_held = false; }},   // let go on the move
    {970.0, [](U& u) { u.cab[0].device_held = true; }},
    {985.0, [](U& u) { setValve(u, kFull); }},
    {995.0, [](U& u) { setGear(u, 0); }},
    {1010.0, [](U& u) { setHandbrakes(u, 1.0); }},
    {1020.0, [](U& u) { setDirection(u, 0); }},
    {1040.0, [](U& u) { u.line[1].stop_solenoid = true; }},
    {1048.0, [](U& u) { u.line[1].stop_solenoid = false; }},
    {1060.0, [](U& u) { u.line[0].stop_solenoid = true; }},
    {1068.0, [](U& u) { u.line[0].stop_solenoid = false; }},
    {1080.0, [](U& u) { setValve(u, kRelease); }},
    {1100.0, [](U& u) { u.release_cord[0] = u.release_cord[2] = true; }},
    {1110.0, [](U& u) { u.release_cord.fill(false); }},
    {1130.0, [](U& u) { u.reservoir_drain[1] = true; }},
    {1140.0, [](U& u) { u.reservoir_drain[1] = false; }},
    {1150.0, [](U& u) { u.load_conductance_s = 0.0; }},
    {1160.0, [](U& u) { u.battery_switch_closed = false; }},
  };
  return changes;
}
// clang-format on

const std::vector<Change>& allChanges() {
  static const std::vector<Change> changes = [] {
    std::vector<Change> all = preparation();
    all.insert(all.end(), firstTrip().begin(), firstTrip().end());
    all.insert(all.end(), secondTrip().begin(), secondTrip().end());
    return all;
  }();
  return changes;
}

}  // namespace

plant::StartConditions goldenStart(const plant::Parameters& p, double ambient_c) {
  return plant::StartConditions::afterStanding(14.0, ambient_c, p);
}

plant::GradeProfile goldenLine() {
  return plant::GradeProfile({{-1e4, 0.0, 0.0},
                              {300.0, 1.0 / 120.0, 0.0},
                              {900.0, 0.0, 15.0},
                              {1400.0, -1.0 / 90.0, 0.0},
                              {1900.0, 0.0, 0.0},
                              {2300.0, 1.0 / 100.0, 10.0},
                              {4000.0, 0.0, 0.0}});
}

std::size_t countGoldenChanges() { return allChanges().size(); }

GoldenScript::GoldenScript() {
  inputs_.battery_switch_closed = false;
  setHandbrakes(inputs_, 1.0);
}

const plant::PlantInputs& GoldenScript::advanceTo(std::int64_t tick) {
  const std::vector<Change>& changes = allChanges();
  while (next_ < changes.size() && static_cast<double>(tick) >= changes[next_].at_s * 100.0 - 0.5) {
    changes[next_++].make(inputs_);
  }
  return inputs_;
}

}  // namespace cabwright::testing
