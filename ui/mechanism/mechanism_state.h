// SPDX-License-Identifier: GPL-3.0-or-later
// What the mechanism view shows, read from the machine: speeds, pressures, torques, temperatures in
// the trade's units, and the words that follow from them. Nothing here decides anything.
#pragma once

#include <QString>
#include <array>
#include <vector>

#include "plant/readings.h"
#include "unit/unit.h"

namespace cabwright::mechanism {

/// Teeth of the three epicyclic trains: first, second, third gear.
struct TrainTeeth {
  int sun = 24, planet = 27, annulus = 78;
  bool operator==(const TrainTeeth&) const = default;
};

/// One drive line. Speeds in rev/min, with the engine positive.
struct LineState {
  double engine = 0, runner = 0, input = 0, output = 0, wheel = 0;
  std::array<double, 3> drum{};      ///< of first, second, third gear
  std::array<double, 4> gear_psi{};  ///< bands of first, second, third; top clutch; gauge
  std::array<bool, 4> gear_holds{};  ///< drum stands, clutch is one piece
  bool freewheel_drives = false;
  plant::DogState dog = plant::DogState::kMiddle;
  int dog_side = 0;      ///< 1 forward, -1 reverse, 0 middle
  double sleeve = 0;     ///< -1 fully reverse, 0 middle, 1 fully forward
  double tooth_deg = 0;  ///< of crown wheel against axle within one pitch
  double shift_forward_psi = 0, shift_reverse_psi = 0;
  double crown = 0;  ///< crown wheel of the side the sleeve points to, rev/min
  double coupling_nm = 0, output_nm = 0;
  double coupling_c = 0, box_c = 0, hottest_c = 0;
};

/// A contact of the lamp's circuit, in the order current passes them.
struct PathContact {
  QString name;
  bool made = false;
  QString words;  ///< how it stands
};

struct MechanismState {
  std::array<LineState, 2> line;
  std::array<TrainTeeth, 3> teeth;
  double dog_pitch_deg = 30, dog_window_deg = 8;
  std::vector<PathContact> path;
  bool lamp_air = false;
  double battery_v = 0;
  int cab = 0;  ///< whose lamp it is: 0 cab 1, 1 cab 2
};

/// Reads everything that is shown; of the air lamps that of the living desk, else of cab 1.
[[nodiscard]] MechanismState readMechanism(const unit::Unit& unit);

/// "teeth stand on teeth", "in mesh, forward".
[[nodiscard]] QString dogWords(const LineState& line);
/// What comes next, as far as it follows from how things stand; may be empty.
[[nodiscard]] QString dogOutlook(const LineState& line, const MechanismState& state);
/// Of first, second, third gear (0 to 2): "open", "slips", "holds".
[[nodiscard]] QString bandWords(const LineState& line, int gear);
[[nodiscard]] QString clutchWords(const LineState& line);
[[nodiscard]] QString freewheelWords(const LineState& line);
/// The gear that carries, in words; "no gear".
[[nodiscard]] QString gearWords(const LineState& line);

}  // namespace cabwright::mechanism
