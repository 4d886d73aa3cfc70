// SPDX-License-Identifier: GPL-3.0-or-later
// Every circuit against a table written by hand from what the unit is meant to do, not from the
// program's own: all contacts made, current; any single one of them broken, none. Levers, keys,
// volts and dead contacts are the real ones. All common practice, no published source.
#include <gmock/gmock.h>

#include <functional>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "interlock_bench.h"

namespace cabwright::unit {
namespace {

using Change = std::function<void(Bench&, int cab, int line)>;

struct Break {
  Fact missing;
  std::string what;
  Change change;
};

struct Circuit {
  Outcome outcome;
  Change make;  ///< on top of a cab that leads
  std::function<bool(const InterlockResult&, int cab, int line)> energised;
  std::vector<Break> breaks;
};

std::size_t at(int n) { return static_cast<std::size_t>(n); }

Change lever(Control of_first_cab, double value) {
  return [=](Bench& b, int cab, int) { b.set(of_first_cab, cab, value); };
}
Change engineLever(Control of_first_engine, double value) {
  return [=](Bench& b, int, int line) { b.in.control[ofEngine(of_first_engine, line)] = value; };
}
Change unitLever(Control c, double value) {
  return [=](Bench& b, int, int) { b.in.control[c] = value; };
}

const Break kBattery{Fact::kBatteryOn, "battery switch open",
                     unitLever(Control::kBatterySwitch, 0)};
const Break kControlBreaker{Fact::kControlBreakerIn, "control breaker out",
                            unitLever(Control::kBreakerControl, 0)};
const Break kLampBreaker{Fact::kLampBreakerIn, "lamp breaker out",
                         unitLever(Control::kBreakerLamps, 0)};
const Break kLightBreaker{Fact::kLightBreakerIn, "lights breaker out",
                          unitLever(Control::kBreakerLights, 0)};
const Break kStartBreaker{Fact::kStartBreakerIn, "start breaker out",
                          unitLever(Control::kBreakerStart, 0)};
const Break kNoVolts{Fact::kRelayIn, "too few volts", [](Bench& b, int, int) { b.in.bus_v = 10; }};
const Break kRelayDead{Fact::kRelayIn, "relay dead",
                       [](Bench& b, int, int) { b.p.relay.dead = 1; }};
const Break kKeyOff{Fact::kKeyOn, "key off", lever(Control::kCab1Key, 0)};
const Break kNoKey{Fact::kKeyOn, "no key",
                   [](Bench& b, int cab, int) { b.in.has_key[at(cab)] = false; }};
const Break kKeyDead{Fact::kKeyOn, "key contact dead",
                     [](Bench& b, int cab, int) { b.p.desk[at(cab)].key_contact_dead = 1; }};
const Break kOtherKey{Fact::kHasControl, "the other cab had the key first",
                      [](Bench& b, int cab, int) {
                        const int other = 1 - cab;
                        b.in.has_key[at(other)] = true;
                        b.set(Control::kCab1Key, other, 1);
                        b.set(Control::kCab1Key, cab, 0);
                        (void)b.result();
                        b.set(Control::kCab1Key, cab, 1);
                      }};
const Break kReverserOff{Fact::kReverserContact, "reverser off", lever(Control::kCab1Reverser, 0)};
const Break kNoReverser{Fact::kReverserContact, "no reverser",
                        [](Bench& b, int cab, int) { b.in.has_reverser[at(cab)] = false; }};
const Break kReverserDead{
    Fact::kReverserContact, "reverser contact dead",
    [](Bench& b, int cab, int) { b.p.desk[at(cab)].reverser_contact_dead = 1; }};
const Break kDeviceUp{Fact::kDeviceContact, "device let go", lever(Control::kCab1Device, 0)};
const Break kSwitchGround{Fact::kSwitchAtCab, "switch at ground",
                          engineLever(Control::kEngine1Switch, 2)};
const Break kSwitchOff{Fact::kSwitchAtCab, "switch off", engineLever(Control::kEngine1Switch, 1)};
const Break kIsolated{Fact::kSwitchNotOff, "switch off", engineLever(Control::kEngine1Switch, 1)};
const Break kGearHere{Fact::kGearsNeutral, "a gear in this cab", lever(Control::kCab1Gear, 1)};
const Break kGearThere{Fact::kGearsNeutral, "a gear in the other cab",
                       [](Bench& b, int cab, int) { b.set(Control::kCab1Gear, 1 - cab, 4); }};
const Break kTurning{Fact::kEngineStopped, "it runs with oil pressure",
                     [](Bench& b, int, int line) {
                       b.in.rpm[at(line)] = 420;
                       b.in.oil_psi[at(line)] = 40;
                     }};
const Break kStartRelay{Fact::kStartRelaySound, "start relay dead",
                        [](Bench& b, int, int line) { b.p.start_relay[at(line)].dead = 1; }};

// What makes the desk alive, and what takes it away; with the word of the desk for the fact.
std::vector<Break> withDesk(std::vector<Break> more, Fact named = Fact::kDeskAlive) {
  for (Break desk : {kBattery, kControlBreaker, kNoVolts, kRelayDead, kKeyOff, kNoKey, kKeyDead}) {
    desk.missing = named;
    more.push_back(desk);
  }
  if (named == Fact::kDeskAlive) {
    Break other = kOtherKey;
    other.missing = named;
    more.push_back(other);
  }
  return more;
}

Change both(Change a, Change b) {
  return [=](Bench& bench, int cab, int line) {
    a(bench, cab, line);
    b(bench, cab, line);
  };
}
void nothing(Bench&, int, int) {}

Control startOf(int line) { return line == 0 ? Control::kCab1Start1 : Control::kCab1Start2; }
Control stopOf(int line) { return line == 0 ? Control::kCab1Stop1 : Control::kCab1Stop2; }

void pressStart(Bench& b, int cab, int line) { b.set(startOf(line), cab, 1); }
void pressStop(Bench& b, int cab, int line) { b.set(stopOf(line), cab, 1); }
void killStart(Bench& b, int cab, int line) {
  (line == 0 ? b.p.desk[at(cab)].start1_dead : b.p.desk[at(cab)].start2_dead) = 1;
}
void letEngineRun(Bench& b, int, int line) {
  b.in.rpm[at(line)] = 420;
  b.in.oil_psi[at(line)] = 40;
}

bool fulfils(Outcome o, const InterlockResult& r, int cab, int line) {
  return r.facts.fulfils(o, cab, line);
}
auto byFacts(Outcome o) {
  return [o](const InterlockResult& r, int cab, int line) { return fulfils(o, r, cab, line); };
}

std::vector<Circuit> startCircuits() {
  return {
      {Outcome::kDeskAlive,
       nothing,
       [](const InterlockResult& r, int cab, int) { return r.desk[at(cab)]; },
       {kBattery, kControlBreaker, kNoVolts, kRelayDead, kKeyOff, kNoKey, kKeyDead, kOtherKey}},
      {Outcome::kGroundStart,
       both(engineLever(Control::kEngine1Switch, 2), engineLever(Control::kEngine1Start, 1)),
       [](const InterlockResult& r, int, int line) { return r.starter[at(line)]; },
       withDesk({kStartBreaker,
                 kGearHere,
                 kGearThere,
                 {Fact::kSwitchAtGround, "switch at cab", engineLever(Control::kEngine1Switch, 0)},
                 {Fact::kSwitchAtGround, "switch off", engineLever(Control::kEngine1Switch, 1)},
                 kTurning,
                 {Fact::kGroundStartIn, "button out", engineLever(Control::kEngine1Start, 0)},
                 kStartRelay},
                Fact::kSomeDeskAlive)},
      {Outcome::kCabStart, pressStart,
       [](const InterlockResult& r, int, int line) { return r.starter[at(line)]; },
       withDesk({kStartBreaker,
                 kReverserOff,
                 kNoReverser,
                 kReverserDead,
                 kDeviceUp,
                 kGearHere,
                 kGearThere,
                 kSwitchGround,
                 kSwitchOff,
                 kTurning,
                 {Fact::kStartIn, "button out",
                  [](Bench& b, int cab, int line) { b.set(startOf(line), cab, 0); }},
                 {Fact::kStartIn, "button dead", killStart},
                 kStartRelay})},
      {Outcome::kCabStop, pressStop,
       [](const InterlockResult& r, int, int line) { return r.stop[at(line)]; },
       withDesk({kReverserOff,
                 kNoReverser,
                 kReverserDead,
                 {Fact::kStopIn, "button out",
                  [](Bench& b, int cab, int line) { b.set(stopOf(line), cab, 0); }},
                 {Fact::kSolenoidSound, "solenoid dead",
                  [](Bench& b, int, int line) { b.p.stop_solenoid[at(line)].dead = 1; }}})},
      {Outcome::kGroundStop,
       engineLever(Control::kEngine1Stop, 1),
       [](const InterlockResult& r, int, int line) { return r.stop[at(line)]; },
       {{Fact::kGroundStopIn, "lever let go", engineLever(Control::kEngine1Stop, 0)}}},
  };
}

std::vector<Circuit> driveCircuits() {
  return {
      {Outcome::kThrottle, lever(Control::kCab1Throttle, 3),
       [](const InterlockResult& r, int, int line) { return r.notch[at(line)] == 3; },
       withDesk({kReverserOff,
                 kNoReverser,
                 kReverserDead,
                 kDeviceUp,
                 {Fact::kNotchSet, "throttle shut", lever(Control::kCab1Throttle, 0)},
                 kSwitchGround,
                 kSwitchOff,
                 {Fact::kThrottleValveSound, "throttle valve dead",
                  [](Bench& b, int, int line) { b.p.throttle_valve[at(line)].dead = 1; }}})},
      {Outcome::kDirection, nothing,
       [](const InterlockResult& r, int cab, int) { return r.direction == (cab == 0 ? 1 : -1); },
       withDesk({kReverserOff, kNoReverser, kReverserDead})},
      {Outcome::kGear, lever(Control::kCab1Gear, 3),
       [](const InterlockResult& r, int, int line) { return r.gear[at(line)] == 3; },
       withDesk({kReverserOff,
                 kNoReverser,
                 kReverserDead,
                 {Fact::kGearSelected, "neutral", lever(Control::kCab1Gear, 0)},
                 {Fact::kGearSelected, "contact of that gear dead",
                  [](Bench& b, int cab, int) { b.p.desk[at(cab)].gear_contact_dead = 3; }},
                 {Fact::kGearSelected, "all its contacts dead",
                  [](Bench& b, int cab, int) { b.p.desk[at(cab)].gear_contact_dead = 5; }},
                 kIsolated})},
  };
}

std::vector<Circuit> mechanics() {
  const Break no_lever{Fact::kReverserIn, "no reverser",
                       [](Bench& b, int cab, int) { b.in.has_reverser[at(cab)] = false; }};
  const Break open{Fact::kThrottleShut, "throttle open", lever(Control::kCab1Throttle, 1)};
  const Break turned{Fact::kReverserAtOff, "in a direction", lever(Control::kCab1Reverser, -1)};
  const Change off = lever(Control::kCab1Reverser, 0);
  return {
      {Outcome::kDeviceInCircuit,
       nothing,
       [](const InterlockResult& r, int cab, int) { return r.device_in_circuit[at(cab)]; },
       {no_lever, {Fact::kReverserTurned, "reverser off", off}}},
      {Outcome::kThrottleStays,
       nothing,
       byFacts(Outcome::kThrottleStays),
       {{Fact::kDeviceDown, "device let go", lever(Control::kCab1Device, 0)}}},
      {Outcome::kMoveReverser,
       nothing,
       byFacts(Outcome::kMoveReverser),
       {no_lever, kKeyOff, kNoKey, kKeyDead, open}},
      {Outcome::kInsertReverser, off, byFacts(Outcome::kInsertReverser), {turned, open}},
      {Outcome::kTakeReverser, off, byFacts(Outcome::kTakeReverser), {no_lever, turned, open}},
      {Outcome::kBrakeValve,
       nothing,
       byFacts(Outcome::kBrakeValve),
       {{Fact::kHandleIn, "no handle",
         [](Bench& b, int cab, int) { b.in.has_brake_handle[at(cab)] = false; }}}},
      {Outcome::kBrakeHandle,
       nothing,
       byFacts(Outcome::kBrakeHandle),
       {{Fact::kHandleInLap, "in release", lever(Control::kCab1Brake, -1)},
        {Fact::kHandleInLap, "applied", lever(Control::kCab1Brake, 0.4)}}},
      {Outcome::kTurnHandbrakeOff,
       lever(Control::kCab1Pawl, 0),
       byFacts(Outcome::kTurnHandbrakeOff),
       {{Fact::kPawlOut, "pawl in", lever(Control::kCab1Pawl, 1)}}},
      {Outcome::kPin,
       [](Bench& b, int, int line) { b.in.sleeve_in_middle[at(line)] = true; },
       byFacts(Outcome::kPin),
       {{Fact::kSleeveInMiddle, "sleeve out of the middle",
         [](Bench& b, int, int line) { b.in.sleeve_in_middle[at(line)] = false; }}}},
  };
}

std::vector<Circuit> lampCircuits() {
  return {
      {Outcome::kLampEngine, letEngineRun,
       [](const InterlockResult& r, int cab, int line) { return r.lamp_engine[at(cab)][at(line)]; },
       withDesk({kLampBreaker,
                 {Fact::kEngineUp, "no oil pressure",
                  [](Bench& b, int, int line) { b.in.oil_psi[at(line)] = 2; }},
                 {Fact::kEngineUp, "it does not run",
                  [](Bench& b, int, int line) { b.in.rpm[at(line)] = 150; }},
                 {Fact::kEngineUp, "oil switch open",
                  [](Bench& b, int, int line) { b.p.oil_switch[at(line)].stuck = -1; }},
                 kIsolated})},
      {Outcome::kLampAir, nothing,
       [](const InterlockResult& r, int cab, int) { return r.lamp_air[at(cab)]; },
       withDesk(
           {kLampBreaker,
            kReverserOff,
            kNoReverser,
            kReverserDead,
            {Fact::kAirSwitchMade, "60 psi", [](Bench& b, int, int) { b.in.control_psi = 60; }},
            {Fact::kAirSwitchMade, "its switch open",
             [](Bench& b, int, int) { b.p.air_switch.stuck = -1; }},
            {Fact::kDrivesMeshed, "a drive not in mesh",
             [](Bench& b, int, int line) { b.in.meshed[at(line)] = 0; }}})},
      {Outcome::kLampDevice, nothing,
       [](const InterlockResult& r, int cab, int) { return r.lamp_device[at(cab)]; },
       withDesk({kLampBreaker, kReverserOff, kNoReverser, kReverserDead, kDeviceUp})},
      {Outcome::kLampCharge, nothing,
       [](const InterlockResult& r, int cab, int) { return r.lamp_charge[at(cab)]; },
       withDesk(
           {kLampBreaker,
            {Fact::kChargeRelayOut, "charging", [](Bench& b, int, int) { b.in.bus_v = 27.5; }}})},
      {Outcome::kLampFire,
       [](Bench& b, int, int line) { b.in.burning[at(line)] = true; },
       [](const InterlockResult& r, int cab, int) { return r.lamp_fire[at(cab)]; },
       {kBattery,
        kLampBreaker,
        kNoVolts,
        kRelayDead,
        {Fact::kHeatWarning, "no fire",
         [](Bench& b, int, int line) { b.in.burning[at(line)] = false; }},
        {Fact::kHeatWarning, "its line broken",
         [](Bench& b, int, int line) { b.p.fire[at(line)].line_broken = 1; }}}},
      {Outcome::kLampTest,
       both(lever(Control::kCab1LampTest, 1),
            [](Bench& b, int, int) {
              b.in.meshed = {0, 0};
            }),
       [](const InterlockResult& r, int cab, int) { return r.lamp_air[at(cab)]; },
       withDesk(
           {kLampBreaker, {Fact::kLampTestIn, "button out", lever(Control::kCab1LampTest, 0)}})},
  };
}

std::vector<Circuit> bellsAndLights() {
  return {
      {Outcome::kFireBell,
       [](Bench& b, int, int line) { b.in.burning[at(line)] = true; },
       [](const InterlockResult& r, int cab, int) { return r.fire_bell[at(cab)]; },
       {kBattery,
        kLampBreaker,
        kNoVolts,
        kRelayDead,
        {Fact::kHeatWarning, "no fire",
         [](Bench& b, int, int line) { b.in.burning[at(line)] = false; }},
        {Fact::kHeatWarning, "its line broken",
         [](Bench& b, int, int line) { b.p.fire[at(line)].line_broken = 1; }}}},
      {Outcome::kFireBellTest,
       lever(Control::kCab1FireTest, 1),
       [](const InterlockResult& r, int cab, int) { return r.fire_bell[at(cab)]; },
       {kBattery,
        kLampBreaker,
        kNoVolts,
        kRelayDead,
        {Fact::kHeatLinesWhole, "a heat line broken",
         [](Bench& b, int, int line) { b.p.fire[at(line)].line_broken = 1; }},
        {Fact::kFireTestIn, "button out", lever(Control::kCab1FireTest, 0)}}},
      {Outcome::kBell,
       nothing,
       [](const InterlockResult& r, int, int) { return r.bell_fed; },
       {kBattery, kLampBreaker, kNoVolts, kRelayDead}},
      {Outcome::kWhite,
       lever(Control::kCab1White, 1),
       [](const InterlockResult& r, int cab, int) { return r.white[at(cab)]; },
       {kBattery, kLightBreaker, {Fact::kWhiteOn, "off", lever(Control::kCab1White, 0)}}},
      {Outcome::kRed,
       lever(Control::kCab1Red, 1),
       [](const InterlockResult& r, int cab, int) { return r.red[at(cab)]; },
       {kBattery, kLightBreaker, {Fact::kRedOn, "off", lever(Control::kCab1Red, 0)}}},
      {Outcome::kLights,
       nothing,
       [](const InterlockResult& r, int, int) { return r.lights_fed; },
       {kBattery, kLightBreaker}},
  };
}

std::vector<Circuit> allCircuits() {
  std::vector<Circuit> all = startCircuits();
  for (const auto& more : {driveCircuits(), mechanics(), lampCircuits(), bellsAndLights()}) {
    all.insert(all.end(), more.begin(), more.end());
  }
  return all;
}

TEST(Circuits, TheTableOfTheTestHoldsEachOutcomeOnce) {
  std::multiset<Outcome> seen;
  for (const Circuit& c : allCircuits()) seen.insert(c.outcome);
  ASSERT_EQ(seen.size(), static_cast<std::size_t>(Outcome::kCount));
  for (std::size_t k = 0; k < seen.size(); ++k) EXPECT_EQ(seen.count(static_cast<Outcome>(k)), 1u);
}

TEST(Circuits, CarryCurrentWithEverythingMadeAndNoneWithAnySingleThingBroken) {
  for (const Circuit& circuit : allCircuits()) {
    for (int cab = 0; cab < plant::kCabs; ++cab) {
      for (int line = 0; line < plant::kLines; ++line) {
        const std::string who = std::string(interlockRow(circuit.outcome).action) + ", cab " +
                                std::to_string(cab + 1) + ", engine " + std::to_string(line + 1);
        Bench made(cab);
        circuit.make(made, cab, line);
        EXPECT_TRUE(circuit.energised(made.result(), cab, line)) << who;
        for (const Break& single : circuit.breaks) {
          Bench broken(cab);
          circuit.make(broken, cab, line);
          single.change(broken, cab, line);
          const InterlockResult r = broken.result();
          EXPECT_FALSE(circuit.energised(r, cab, line)) << who << ": " << single.what;
          EXPECT_THAT(r.facts.findMissing(circuit.outcome, cab, line),
                      ::testing::Contains(single.missing))
              << who << ": " << single.what;
        }
      }
    }
  }
}

// The trailer's cab reaches the motor car through the jumper, the motor car's own does without.
TEST(Circuits, OfTheTrailersCabNeedTheJumperWhereTheyReachTheMotorCar) {
  const std::set<Outcome> through{Outcome::kCabStart,  Outcome::kCabStop, Outcome::kThrottle,
                                  Outcome::kDirection, Outcome::kGear,    Outcome::kLampEngine,
                                  Outcome::kLampAir};
  for (const Circuit& circuit : allCircuits()) {
    for (int cab = 0; cab < plant::kCabs; ++cab) {
      Bench b(cab);
      circuit.make(b, cab, 0);
      b.in.control[Control::kJumper] = 0;
      const bool needs = cab == 1 && through.count(circuit.outcome) == 1;
      EXPECT_EQ(circuit.energised(b.result(), cab, 0), !needs)
          << interlockRow(circuit.outcome).action << ", cab " << cab + 1;
    }
  }
}

// What a circuit is free of is as much part of it: habit, not current, keeps people from it.
TEST(Circuits, AskForNothingThatIsNotInTheTable) {
  const std::map<Fact, Change> kStrangers{
      {Fact::kAirSwitchMade, [](Bench& b, int, int) { b.in.control_psi = 10; }},
      {Fact::kDrivesMeshed,
       [](Bench& b, int, int) {
         b.in.meshed = {0, 0};
       }},
      {Fact::kHandleIn, [](Bench& b, int cab, int) { b.in.has_brake_handle[at(cab)] = false; }},
      {Fact::kHandleInLap, lever(Control::kCab1Brake, -1)},
      {Fact::kLightBreakerIn, unitLever(Control::kBreakerLights, 0)},
      {Fact::kStartBreakerIn, unitLever(Control::kBreakerStart, 0)},
      {Fact::kLampBreakerIn, unitLever(Control::kBreakerLamps, 0)},
      {Fact::kSolenoidSound, [](Bench& b, int, int line) { b.p.stop_solenoid[at(line)].dead = 1; }},
      {Fact::kStartRelaySound, [](Bench& b, int, int line) { b.p.start_relay[at(line)].dead = 1; }},
  };
  for (const Circuit& circuit : allCircuits()) {
    std::set<Fact> needed;
    for (const Break& single : circuit.breaks) needed.insert(single.missing);
    for (const auto& [fact, change] : kStrangers) {
      if (needed.count(fact) == 1) continue;
      Bench b(0);
      circuit.make(b, 0, 1);
      change(b, 0, 1);
      EXPECT_TRUE(circuit.energised(b.result(), 0, 1))
          << interlockRow(circuit.outcome).action << ": " << missingWords(fact);
    }
  }
}

}  // namespace
}  // namespace cabwright::unit
