// SPDX-License-Identifier: GPL-3.0-or-later
// The interlocks as one table. A row is an outcome and the facts it needs, all of them; a fact is a
// contact, a lever in its place, a switch that has made. Nothing else decides what is energised,
// what a lever lets a hand do, or which lamp has current. "Habit" has no row: nothing prevents it.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "plant/inputs.h"
#include "unit/controls.h"
#include "unit/unit_parameters.h"

namespace cabwright::unit {

// F(Identifier, scope, what it says in words when it is missing, and when it is there)
// scope: kUnit one for all, kCab of the cab spoken of, kLine of the engine, kBoth of the pair.
// clang-format off
#define CABWRIGHT_FACTS(F) \
  F(BatteryOn, kUnit, "the battery switch is open", "the battery switch is closed") \
  F(ControlBreakerIn, kUnit, "the control breaker is out", "the control breaker is in") \
  F(StartBreakerIn, kUnit, "the start breaker is out", "the start breaker is in") \
  F(LampBreakerIn, kUnit, "the lamp breaker is out", "the lamp breaker is in") \
  F(LightBreakerIn, kUnit, "the lights breaker is out", "the lights breaker is in") \
  F(RelayIn, kUnit, "the control relay is out: volts too low", "the control relay is in") \
  F(SomeDeskAlive, kUnit, "no desk is alive", "a desk is alive") \
  F(GearsNeutral, kUnit, "a gear selector is not in neutral", "both gear selectors are in neutral") \
  F(AirSwitchMade, kUnit, "not enough control air", "control air is enough") \
  F(ChargeRelayOut, kUnit, "the battery is being charged", "the battery is not being charged") \
  F(HeatWarning, kUnit, "no heat line warns", "a heat line warns") \
  F(HeatLinesWhole, kUnit, "a heat line is broken", "the heat lines are whole") \
  F(DrivesMeshed, kCab, "a final drive in use is not in mesh that way", "each final drive in use is in mesh that way") \
  F(KeyOn, kCab, "the key switch is off, or has no key", "the key switch is on") \
  F(HasControl, kCab, "the other cab's key is on", "no other cab has control") \
  F(DeskAlive, kCab, "this desk is dead", "this desk is alive") \
  F(ReverserIn, kCab, "there is no reversing lever", "the reversing lever is in") \
  F(ReverserAtOff, kCab, "the reverser is not at off", "the reverser is at off") \
  F(ReverserTurned, kCab, "the reverser is at off", "the reverser is at a direction") \
  F(ReverserContact, kCab, "the reverser's contacts do not make", "the reverser's contacts make") \
  F(ThrottleShut, kCab, "the throttle is not shut", "the throttle is shut") \
  F(DeviceDown, kCab, "the safety device is not held", "the safety device is held") \
  F(DeviceContact, kCab, "the contact of the safety device does not make", "the contact of the safety device makes") \
  F(HandleIn, kCab, "there is no brake handle", "the brake handle is in") \
  F(HandleInLap, kCab, "the brake handle is not in lap", "the brake handle is in lap") \
  F(PawlOut, kCab, "the pawl is in the ratchet", "the pawl is out of the ratchet") \
  F(LampTestIn, kCab, "the lamp test is not pressed", "the lamp test is pressed") \
  F(FireTestIn, kCab, "the fire test is not pressed", "the fire test is pressed") \
  F(JumperHome, kCab, "the jumper between the cars does not make", "the jumper between the cars makes") \
  F(GearSelected, kCab, "no gear is selected, or its contact does not make", "a gear is selected") \
  F(NotchSet, kCab, "the throttle is shut", "the throttle is open") \
  F(WhiteOn, kCab, "white lamps off", "white lamps on") \
  F(RedOn, kCab, "red lamps off", "red lamps on") \
  F(EngineStopped, kLine, "the engine's oil pressure is up", "the engine stands") \
  F(EngineUp, kLine, "no oil pressure, or not running", "the engine runs with oil pressure") \
  F(SwitchAtCab, kLine, "the isolating switch is not at cab", "the isolating switch is at cab") \
  F(SwitchAtGround, kLine, "the isolating switch is not at ground", "the isolating switch is at ground") \
  F(SwitchNotOff, kLine, "the isolating switch is off", "the isolating switch is not off") \
  F(GroundStartIn, kLine, "the start button at the engine is not pressed", "the start button at the engine is pressed") \
  F(GroundStopIn, kLine, "the stop lever at the engine is not pulled", "the stop lever at the engine is pulled") \
  F(StartRelaySound, kLine, "the start relay does not pull", "the start relay pulls") \
  F(SolenoidSound, kLine, "the stop solenoid does not pull", "the stop solenoid pulls") \
  F(ThrottleValveSound, kLine, "the throttle motor's valves do not open", "the throttle motor's valves open") \
  F(SleeveInMiddle, kLine, "the dog sleeve is not in the middle", "the dog sleeve is in the middle") \
  F(StartIn, kBoth, "the start button is not pressed", "the start button is pressed") \
  F(StopIn, kBoth, "the stop button is not pressed", "the stop button is pressed")
// clang-format on

#define CABWRIGHT_FACT(id, scope, missing, there) k##id,
enum class Fact : std::uint8_t { CABWRIGHT_FACTS(CABWRIGHT_FACT) kCount };
#undef CABWRIGHT_FACT
inline constexpr std::size_t kFactCount = static_cast<std::size_t>(Fact::kCount);
static_assert(kFactCount <= 64);
/// What somebody who knows the circuits says when this fact is missing.
[[nodiscard]] std::string_view missingWords(Fact f);
/// And when it is there.
[[nodiscard]] std::string_view thereWords(Fact f);

using FactSet = std::uint64_t;
[[nodiscard]] constexpr FactSet factBit(Fact f) { return FactSet{1} << static_cast<unsigned>(f); }

enum class Outcome : std::uint8_t {
  // current
  kDeskAlive,
  kGroundStart,
  kCabStart,
  kCabStop,
  kGroundStop,
  kThrottle,
  kDirection,
  kGear,
  // air and mechanics
  kDeviceInCircuit,
  kThrottleStays,
  kMoveReverser,
  kInsertReverser,
  kTakeReverser,
  kBrakeValve,
  kBrakeHandle,
  kTurnHandbrakeOff,
  kPin,
  // lamps and bells
  kLampEngine,
  kLampAir,
  kLampDevice,
  kLampCharge,
  kLampFire,
  kLampTest,
  kFireBell,
  kFireBellTest,
  kBell,
  kWhite,
  kRed,
  kLights,
  kCount,
};

struct InterlockRow {
  Outcome outcome;
  std::string_view action;  ///< as the trade names it
  FactSet needs;
  std::string_view refused;  ///< what a person perceives when one of them is missing
};
/// One row for each outcome, in their order.
[[nodiscard]] std::span<const InterlockRow> interlockTable();
[[nodiscard]] const InterlockRow& interlockRow(Outcome o);

/// What the circuits sense.
struct InterlockInputs {
  ControlValues control;
  std::array<bool, plant::kCabs> has_key{}, has_reverser{}, has_brake_handle{};
  double bus_v = 0;
  double control_psi = 0;
  std::array<double, plant::kLines> rpm{}, oil_psi{};
  std::array<int, plant::kLines> meshed{};  ///< 1 forward, -1 reverse, 0 not
  std::array<bool, plant::kLines> sleeve_in_middle{};
  std::array<bool, plant::kLines> burning{};  ///< the heat lines feel it
};

/// What the circuits remember: lags and switches with two levels.
struct InterlockMemory {
  double relay_v = 0;  ///< bus voltage as the relay's coil feels it
  bool relay_in = false;
  int desk = -1;  ///< cab whose key came on first, -1 none
  bool air_switch = false;
  std::array<bool, plant::kLines> oil_switch{}, running_contact{};
  bool charge_relay = false;  ///< in: the battery is charged
};

/// Switch with two levels.
[[nodiscard]] constexpr bool calcSwitch(bool was, double value, double rise, double fall) {
  return was ? value >= fall : value > rise;
}

/// The memory one tick (dt seconds) later.
[[nodiscard]] InterlockMemory calcMemory(const InterlockMemory& before, const InterlockInputs& in,
                                         const UnitParameters& p, double dt);

/// All facts by cab and engine.
struct Facts {
  std::array<std::array<FactSet, plant::kLines>, plant::kCabs> of{};  ///< [cab][line]
  [[nodiscard]] bool has(Fact f, int cab = 0, int line = 0) const {
    return (of[static_cast<std::size_t>(cab)][static_cast<std::size_t>(line)] & factBit(f)) != 0;
  }
  /// Whether a row is fulfilled for this cab and engine.
  [[nodiscard]] bool fulfils(Outcome o, int cab = 0, int line = 0) const {
    const FactSet needs = interlockRow(o).needs;
    return (of[static_cast<std::size_t>(cab)][static_cast<std::size_t>(line)] & needs) == needs;
  }
  /// The facts a row still needs, in the order of the list.
  [[nodiscard]] std::vector<Fact> findMissing(Outcome o, int cab = 0, int line = 0) const;
};
[[nodiscard]] Facts calcFacts(const InterlockInputs& in, const InterlockMemory& memory,
                              const UnitParameters& p);

/// What follows: which wires carry current, which lamps are fed.
struct InterlockResult {
  Facts facts;
  std::array<bool, plant::kCabs> desk{}, device_in_circuit{};
  std::array<bool, plant::kLines> starter{}, stop{};
  std::array<int, plant::kLines> notch{}, gear{};  ///< as the circuits ask, before stuck valves
  int direction = 0;                               ///< 1 towards growing positions, -1, 0
  std::array<std::array<bool, plant::kLines>, plant::kCabs> lamp_engine{};
  std::array<bool, plant::kCabs> lamp_air{}, lamp_device{}, lamp_charge{}, lamp_fire{}, fire_bell{},
      white{}, red{};
  bool bell_fed = false, lights_fed = false;
};
[[nodiscard]] InterlockResult calcInterlocks(const InterlockInputs& in,
                                             const InterlockMemory& memory,
                                             const UnitParameters& p);

/// What reaches the machine: the circuits' wishes through valves and relays that may stick, the
/// hand controls as they stand, and the electric load of it all.
[[nodiscard]] plant::PlantInputs calcPlantInputs(const InterlockInputs& in,
                                                 const InterlockResult& result,
                                                 const UnitParameters& p);

}  // namespace cabwright::unit
