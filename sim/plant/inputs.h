// SPDX-License-Identifier: GPL-3.0-or-later
// What reaches the machine from outside during one tick: contacts, cocks, levers, hands. The plant
// knows no cab circuit: the unit decides, through its interlocks, what is energised.
#pragma once

#include <array>

namespace cabwright::plant {

inline constexpr int kLines = 2;  ///< drive lines, each an engine with its own driven axle
inline constexpr int kCabs = 2;   ///< cab 1 on the motor car, cab 2 on the trailer
inline constexpr int kGears = 4;
inline constexpr int kBands = 3;  ///< first, second and third gear; top is the direct clutch
inline constexpr int kCylinders =
    4;  ///< vacuum brake cylinders: 1 and 2 on car 1, 3 and 4 on car 2

/// Positions of the driver's brake valve, along its travel: release - lap - graduated - full.
/// Any value between kValveLap and kValveFull is a graduated application whose opening grows with
/// the angle. The valve is not self-lapping: in lap everything is shut.
inline constexpr double kValveRelease = -1.0;
inline constexpr double kValveLap = 0.0;
inline constexpr double kValveFull = 1.0;

struct LineInputs {
  bool starter_contactor = false;  ///< starter fed from the battery bus
  bool stop_solenoid = false;      ///< pulls the rack to zero and trips the fuel latch
  bool fuel_cock_open = true;
  double hand_throttle = 0.0;  ///< 0 home .. 1 right out, at the engine
  int throttle_notch = 0;      ///< 0..4: air valves of the throttle motor energised by the cab
  std::array<bool, kGears> gear_valve{};  ///< air valve of gear 1..4 energised (several: a fault)
  bool shift_forward = false;  ///< direction valve towards "car 1 leads" (positive speed)
  bool shift_reverse = false;
  bool shift_air_cock_open = true;  ///< shut for isolation: the shift cylinder is vented
  bool sleeve_pinned = false;       ///< pin in: the dog sleeve is locked in the middle
  bool sleeve_to_middle = false;    ///< someone draws the sleeve to the middle by hand
  bool operator==(const LineInputs&) const = default;
};

struct CabInputs {
  double drivers_valve = kValveLap;  ///< kValveRelease .. kValveLap .. kValveFull
  bool device_held = false;          ///< the driver's safety device is held down
  bool device_in_circuit = false;    ///< a direction is selected in this cab
  bool device_cock_open = true;      ///< isolating cock: open to the device
  double guards_valve = 0.0;         ///< 0 shut .. 1 open to atmosphere
  double handbrake = 0.0;            ///< 0 off .. 1 hard on, on this cab's own car
  bool horn = false;
  bool operator==(const CabInputs&) const = default;
};

struct PlantInputs {
  std::array<LineInputs, kLines> line;
  std::array<CabInputs, kCabs> cab;
  bool battery_switch_closed = true;
  double load_conductance_s = 0.0;  ///< lamps, valves, heaters on the bus, siemens
  bool passenger_alarm = false;     ///< partial opening of the train pipe
  std::array<bool, kCylinders> release_cord{};
  std::array<bool, 2> reservoir_drain{};              ///< main, control reservoir drain cock open
  std::array<bool, kCabs> hose_on_dummy{true, true};  ///< end hoses closed on their dummies
  std::array<bool, kCabs> scotch{};                   ///< a scotch under car 1, car 2
  bool operator==(const PlantInputs&) const = default;
};

}  // namespace cabwright::plant
