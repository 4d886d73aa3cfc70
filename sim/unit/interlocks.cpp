// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/interlocks.h"

#include <initializer_list>

namespace cabwright::unit {

namespace {

constexpr FactSet needs(std::initializer_list<Fact> list) {
  FactSet set = 0;
  for (Fact f : list) set |= factBit(f);
  return set;
}

// The table. Each row: outcome, the trade's name of it, what it needs, what is perceived without.
// A fact that is not in a row does not matter to it: what is missing there is left to habit.
constexpr std::array<InterlockRow, static_cast<std::size_t>(Outcome::kCount)> makeTable() {
  using enum Fact;
  return {{
      {Outcome::kDeskAlive, "desk alive",
       needs({kBatteryOn, kControlBreakerIn, kRelayIn, kKeyOn, kHasControl}),
       "lamps dark, nothing answers"},
      {Outcome::kGroundStart, "ground start",
       needs({kSomeDeskAlive, kStartBreakerIn, kGearsNeutral, kSwitchAtGround, kEngineStopped,
              kGroundStartIn, kStartRelaySound}),
       "no click"},
      {Outcome::kCabStart, "cab start",
       needs({kDeskAlive, kStartBreakerIn, kJumperHome, kReverserContact, kDeviceContact,
              kGearsNeutral, kSwitchAtCab, kEngineStopped, kStartIn, kStartRelaySound}),
       "dead button"},
      {Outcome::kCabStop, "cab stop",
       needs({kDeskAlive, kJumperHome, kReverserContact, kStopIn, kSolenoidSound}),
       "the engine runs on"},
      {Outcome::kGroundStop, "ground stop", needs({kGroundStopIn}), "the engine runs on"},
      {Outcome::kThrottle, "throttle over idle",
       needs({kDeskAlive, kJumperHome, kReverserContact, kDeviceContact, kNotchSet, kSwitchAtCab,
              kThrottleValveSound}),
       "the engine is deaf"},
      {Outcome::kDirection, "dogs shift", needs({kDeskAlive, kJumperHome, kReverserContact}),
       "no hiss and no thump"},
      {Outcome::kGear, "gear select",
       needs({kDeskAlive, kJumperHome, kReverserContact, kGearSelected, kSwitchNotOff}),
       "no take-up"},
      {Outcome::kDeviceInCircuit, "device in circuit", needs({kReverserIn, kReverserTurned}),
       "the handle does nothing"},
      {Outcome::kThrottleStays, "throttle stays", needs({kDeviceDown}), "springs back to idle"},
      {Outcome::kMoveReverser, "move reverser", needs({kReverserIn, kKeyOn, kThrottleShut}),
       "the lever is blocked"},
      {Outcome::kInsertReverser, "insert reverser", needs({kReverserAtOff, kThrottleShut}),
       "the lever will not go in"},
      {Outcome::kTakeReverser, "take reverser", needs({kReverserIn, kReverserAtOff, kThrottleShut}),
       "the lever will not lift"},
      {Outcome::kBrakeValve, "brake from this cab", needs({kHandleIn}), "there is no handle"},
      {Outcome::kBrakeHandle, "brake handle in or out", needs({kHandleInLap}),
       "the handle will not lift"},
      {Outcome::kTurnHandbrakeOff, "handbrake off", needs({kPawlOut}), "the wheel will not turn"},
      {Outcome::kPin, "pin the final drive", needs({kSleeveInMiddle}), "the pin will not go in"},
      {Outcome::kLampEngine, "engine lamp",
       needs({kDeskAlive, kLampBreakerIn, kJumperHome, kEngineUp, kSwitchNotOff}), "dark"},
      {Outcome::kLampAir, "air lamp",
       needs({kDeskAlive, kLampBreakerIn, kJumperHome, kReverserContact, kAirSwitchMade,
              kDrivesMeshed}),
       "dark"},
      {Outcome::kLampDevice, "device lamp",
       needs({kDeskAlive, kLampBreakerIn, kReverserContact, kDeviceContact}), "dark"},
      {Outcome::kLampCharge, "charge lamp", needs({kDeskAlive, kLampBreakerIn, kChargeRelayOut}),
       "dark"},
      {Outcome::kLampFire, "fire lamp", needs({kBatteryOn, kLampBreakerIn, kRelayIn, kHeatWarning}),
       "dark"},
      {Outcome::kLampTest, "lamp test", needs({kDeskAlive, kLampBreakerIn, kLampTestIn}), "dark"},
      {Outcome::kFireBell, "fire bell", needs({kBatteryOn, kLampBreakerIn, kRelayIn, kHeatWarning}),
       "silent"},
      {Outcome::kFireBellTest, "fire bell test",
       needs({kBatteryOn, kLampBreakerIn, kRelayIn, kHeatLinesWhole, kFireTestIn}), "silent"},
      {Outcome::kBell, "bell to and from the guard", needs({kBatteryOn, kLampBreakerIn, kRelayIn}),
       "silent"},
      {Outcome::kWhite, "white lamps", needs({kBatteryOn, kLightBreakerIn, kWhiteOn}), "dark"},
      {Outcome::kRed, "red lamps", needs({kBatteryOn, kLightBreakerIn, kRedOn}), "dark"},
      {Outcome::kLights, "lights, displays, wipers", needs({kBatteryOn, kLightBreakerIn}), "dark"},
  }};
}
constexpr auto kTable = makeTable();

constexpr auto kMissing = [] {
  std::array<std::string_view, kFactCount> words{};
#define CABWRIGHT_FACT(id, scope, missing, there) \
  words[static_cast<std::size_t>(Fact::k##id)] = missing;
  CABWRIGHT_FACTS(CABWRIGHT_FACT)
#undef CABWRIGHT_FACT
  return words;
}();

constexpr auto kThere = [] {
  std::array<std::string_view, kFactCount> words{};
#define CABWRIGHT_FACT(id, scope, missing, there) \
  words[static_cast<std::size_t>(Fact::k##id)] = there;
  CABWRIGHT_FACTS(CABWRIGHT_FACT)
#undef CABWRIGHT_FACT
  return words;
}();

// Collects facts: a fact of the unit, of a cab, of an engine, of a pair.
class FactBook {
 public:
  void unit(Fact f, bool holds) {
    if (holds) unit_ |= factBit(f);
  }
  void cab(Fact f, std::size_t c, bool holds) {
    if (holds) cab_[c] |= factBit(f);
  }
  void line(Fact f, std::size_t n, bool holds) {
    if (holds) line_[n] |= factBit(f);
  }
  void both(Fact f, std::size_t c, std::size_t n, bool holds) {
    if (holds) both_[c][n] |= factBit(f);
  }
  [[nodiscard]] bool fulfilsCab(Outcome o, std::size_t c) const {
    const FactSet wanted = interlockRow(o).needs;
    return ((unit_ | cab_[c]) & wanted) == wanted;
  }
  [[nodiscard]] Facts facts() const {
    Facts all;
    for (std::size_t c = 0; c < plant::kCabs; ++c) {
      for (std::size_t n = 0; n < plant::kLines; ++n) {
        all.of[c][n] = unit_ | cab_[c] | line_[n] | both_[c][n];
      }
    }
    return all;
  }

 private:
  FactSet unit_ = 0;
  std::array<FactSet, plant::kCabs> cab_{};
  std::array<FactSet, plant::kLines> line_{};
  std::array<std::array<FactSet, plant::kLines>, plant::kCabs> both_{};
};

bool stuckOr(double stuck, bool sound) { return stuck > 0.5 ? true : stuck < -0.5 ? false : sound; }

// The air lamp speaks for the drives in use: a pinned one is by-passed, but not both.
bool calcDrivesMeshed(const InterlockInputs& in, const UnitParameters& p, std::size_t cab) {
  const double reverser = in.control[ofCab(Control::kCab1Reverser, static_cast<int>(cab))];
  if (reverser == 0.0) return false;
  const bool towards_plus = (reverser > 0.0) == (cab == 0);
  int in_use = 0;
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    if (in.control.on(ofEngine(Control::kEngine1Pin, static_cast<int>(n)))) continue;
    ++in_use;
    const bool made = in.meshed[n] == (towards_plus ? 1 : -1);
    if (!stuckOr(p.mesh_switch[n].stuck, made)) return false;
  }
  return in_use > 0;
}

bool calcGearContact(const InterlockInputs& in, const UnitParameters& p, std::size_t cab) {
  const double gear = in.control[ofCab(Control::kCab1Gear, static_cast<int>(cab))];
  const double dead = p.desk[cab].gear_contact_dead;
  return gear > 0.5 && dead < 4.5 && !(dead > 0.5 && dead - gear < 0.5 && gear - dead < 0.5);
}

void noteUnitFacts(const InterlockInputs& in, const InterlockMemory& m, const UnitParameters& p,
                   FactBook& book) {
  const ControlValues& u = in.control;
  using enum Fact;
  book.unit(kBatteryOn, u.on(Control::kBatterySwitch));
  book.unit(kControlBreakerIn, u.on(Control::kBreakerControl));
  book.unit(kStartBreakerIn, u.on(Control::kBreakerStart));
  book.unit(kLampBreakerIn, u.on(Control::kBreakerLamps));
  book.unit(kLightBreakerIn, u.on(Control::kBreakerLights));
  book.unit(kRelayIn, m.relay_in);
  book.unit(kGearsNeutral, !u.on(Control::kCab1Gear) && !u.on(Control::kCab2Gear));
  book.unit(kAirSwitchMade, stuckOr(p.air_switch.stuck, m.air_switch));
  book.unit(kChargeRelayOut, !m.charge_relay);
  bool warns = false, whole = true;
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    const bool felt = in.burning[n] && p.fire[n].line_broken <= 0.5;
    warns = warns || felt || p.fire[n].line_false > 0.5;
    // The test sends its current through both lines: a broken one keeps it silent.
    whole = whole && p.fire[n].line_broken <= 0.5;
  }
  book.unit(kHeatWarning, warns);
  book.unit(kHeatLinesWhole, whole);
}

void noteCabFacts(const InterlockInputs& in, const InterlockMemory& m, const UnitParameters& p,
                  std::size_t c, FactBook& book) {
  const int cab = static_cast<int>(c);
  const auto at = [&](Control of_cab1) { return in.control[ofCab(of_cab1, cab)]; };
  const DeskParameters& desk = p.desk[c];
  using enum Fact;
  const double reverser = at(Control::kCab1Reverser);
  const bool down = at(Control::kCab1Device) > 0.5;
  const bool jumper = c == 0 || in.control.on(Control::kJumper);
  book.cab(kDrivesMeshed, c, calcDrivesMeshed(in, p, c));
  book.cab(kKeyOn, c, in.has_key[c] && at(Control::kCab1Key) > 0.5 && desk.key_contact_dead <= 0.5);
  book.cab(kHasControl, c, m.desk < 0 || m.desk == cab);
  book.cab(kReverserIn, c, in.has_reverser[c]);
  book.cab(kReverserAtOff, c, reverser == 0.0);
  book.cab(kReverserTurned, c, reverser != 0.0);
  book.cab(kReverserContact, c,
           in.has_reverser[c] && reverser != 0.0 && desk.reverser_contact_dead <= 0.5);
  book.cab(kThrottleShut, c, at(Control::kCab1Throttle) < 0.5);
  book.cab(kNotchSet, c, at(Control::kCab1Throttle) > 0.5);
  book.cab(kDeviceDown, c, down);
  book.cab(kDeviceContact, c, down || desk.device_contact_stuck > 0.5);
  book.cab(kHandleIn, c, in.has_brake_handle[c]);
  book.cab(kHandleInLap, c, at(Control::kCab1Brake) == plant::kValveLap);
  book.cab(kPawlOut, c, at(Control::kCab1Pawl) < 0.5);
  book.cab(kLampTestIn, c, at(Control::kCab1LampTest) > 0.5);
  book.cab(kFireTestIn, c, at(Control::kCab1FireTest) > 0.5);
  book.cab(kJumperHome, c, jumper);
  book.cab(kGearSelected, c, calcGearContact(in, p, c));
  book.cab(kWhiteOn, c, at(Control::kCab1White) > 0.5);
  book.cab(kRedOn, c, at(Control::kCab1Red) > 0.5);
}

void noteLineFacts(const InterlockInputs& in, const InterlockMemory& m, const UnitParameters& p,
                   std::size_t n, FactBook& book) {
  const int line = static_cast<int>(n);
  const auto at = [&](Control of_engine1) { return in.control[ofEngine(of_engine1, line)]; };
  using enum Fact;
  // The lamp speaks of both: oil pressure alone is up as soon as a cold engine is turned.
  const bool up = m.running_contact[n] && stuckOr(p.oil_switch[n].stuck, m.oil_switch[n]);
  book.line(kEngineUp, n, up);
  book.line(kEngineStopped, n, !up);
  const double isolating = at(Control::kEngine1Switch);
  book.line(kSwitchAtCab, n, isolating < 0.5);
  book.line(kSwitchAtGround, n, isolating > 1.5);
  book.line(kSwitchNotOff, n, isolating < 0.5 || isolating > 1.5);
  book.line(kGroundStartIn, n, at(Control::kEngine1Start) > 0.5);
  book.line(kGroundStopIn, n, at(Control::kEngine1Stop) > 0.5);
  book.line(kStartRelaySound, n, p.start_relay[n].dead <= 0.5);
  book.line(kSolenoidSound, n, p.stop_solenoid[n].dead <= 0.5);
  book.line(kThrottleValveSound, n, p.throttle_valve[n].dead <= 0.5);
  book.line(kSleeveInMiddle, n, in.sleeve_in_middle[n]);
  for (std::size_t c = 0; c < plant::kCabs; ++c) {
    const Control start = n == 0 ? Control::kCab1Start1 : Control::kCab1Start2;
    const Control stop = n == 0 ? Control::kCab1Stop1 : Control::kCab1Stop2;
    const double dead = n == 0 ? p.desk[c].start1_dead : p.desk[c].start2_dead;
    const int cab = static_cast<int>(c);
    book.both(kStartIn, c, n, in.control.on(ofCab(start, cab)) && dead <= 0.5);
    book.both(kStopIn, c, n, in.control.on(ofCab(stop, cab)));
  }
}

}  // namespace

std::string_view missingWords(Fact f) { return kMissing[static_cast<std::size_t>(f)]; }
std::string_view thereWords(Fact f) { return kThere[static_cast<std::size_t>(f)]; }
std::span<const InterlockRow> interlockTable() { return kTable; }
const InterlockRow& interlockRow(Outcome o) { return kTable[static_cast<std::size_t>(o)]; }

std::vector<Fact> Facts::findMissing(Outcome o, int cab, int line) const {
  std::vector<Fact> missing;
  const FactSet lacking =
      interlockRow(o).needs & ~of[static_cast<std::size_t>(cab)][static_cast<std::size_t>(line)];
  for (std::size_t k = 0; k < kFactCount; ++k) {
    const Fact f = static_cast<Fact>(k);
    if ((lacking & factBit(f)) != 0) missing.push_back(f);
  }
  return missing;
}

InterlockMemory calcMemory(const InterlockMemory& before, const InterlockInputs& in,
                           const UnitParameters& p, double dt) {
  InterlockMemory m = before;
  m.relay_v += (in.bus_v - m.relay_v) * dt / (p.relay.lag_s + dt);
  const bool wanted = calcSwitch(m.relay_in, m.relay_v, p.relay.pull_v, p.relay.drop_v);
  m.relay_in = wanted && p.relay.dead <= 0.5;
  m.air_switch =
      calcSwitch(m.air_switch, in.control_psi, p.air_switch.rise_psi, p.air_switch.fall_psi);
  m.charge_relay =
      calcSwitch(m.charge_relay, in.bus_v, p.charge_relay.rise_v, p.charge_relay.fall_v);
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    m.oil_switch[n] = calcSwitch(m.oil_switch[n], in.oil_psi[n], p.oil_switch[n].rise_psi,
                                 p.oil_switch[n].fall_psi);
    m.running_contact[n] = calcSwitch(m.running_contact[n], in.rpm[n],
                                      p.running_contact[n].rise_rpm, p.running_contact[n].fall_rpm);
  }
  // The first key that comes on keeps control until it goes off.
  const auto key = [&](int cab) {
    const auto c = static_cast<std::size_t>(cab);
    return in.has_key[c] && in.control.on(ofCab(Control::kCab1Key, cab)) &&
           p.desk[c].key_contact_dead <= 0.5;
  };
  if (m.desk >= 0 && !key(m.desk)) m.desk = -1;
  for (int cab = 0; cab < plant::kCabs && m.desk < 0; ++cab) {
    if (key(cab)) m.desk = cab;
  }
  return m;
}

Facts calcFacts(const InterlockInputs& in, const InterlockMemory& memory, const UnitParameters& p) {
  FactBook book;
  noteUnitFacts(in, memory, p, book);
  bool some_desk = false;
  for (std::size_t c = 0; c < plant::kCabs; ++c) {
    noteCabFacts(in, memory, p, c, book);
    const bool alive = book.fulfilsCab(Outcome::kDeskAlive, c);
    book.cab(Fact::kDeskAlive, c, alive);
    some_desk = some_desk || alive;
  }
  book.unit(Fact::kSomeDeskAlive, some_desk);
  for (std::size_t n = 0; n < plant::kLines; ++n) noteLineFacts(in, memory, p, n, book);
  return book.facts();
}

namespace {

void applyCabLamps(const Facts& facts, int cab, InterlockResult& r) {
  const auto c = static_cast<std::size_t>(cab);
  const bool test = facts.fulfils(Outcome::kLampTest, cab);
  r.lamp_air[c] = test || facts.fulfils(Outcome::kLampAir, cab);
  r.lamp_device[c] = test || facts.fulfils(Outcome::kLampDevice, cab);
  r.lamp_charge[c] = test || facts.fulfils(Outcome::kLampCharge, cab);
  r.lamp_fire[c] = test || facts.fulfils(Outcome::kLampFire, cab);
  for (int line = 0; line < plant::kLines; ++line) {
    r.lamp_engine[c][static_cast<std::size_t>(line)] =
        test || facts.fulfils(Outcome::kLampEngine, cab, line);
  }
  r.fire_bell[c] =
      facts.fulfils(Outcome::kFireBell, cab) || facts.fulfils(Outcome::kFireBellTest, cab);
  r.white[c] = facts.fulfils(Outcome::kWhite, cab);
  r.red[c] = facts.fulfils(Outcome::kRed, cab);
}

int wholeValue(double v) { return static_cast<int>(v + (v < 0.0 ? -0.5 : 0.5)); }

}  // namespace

InterlockResult calcInterlocks(const InterlockInputs& in, const InterlockMemory& memory,
                               const UnitParameters& p) {
  InterlockResult r;
  r.facts = calcFacts(in, memory, p);
  const Facts& facts = r.facts;
  for (int cab = 0; cab < plant::kCabs; ++cab) {
    const auto c = static_cast<std::size_t>(cab);
    r.desk[c] = facts.has(Fact::kDeskAlive, cab);
    r.device_in_circuit[c] = facts.fulfils(Outcome::kDeviceInCircuit, cab);
    applyCabLamps(facts, cab, r);
    if (facts.fulfils(Outcome::kDirection, cab)) {
      const double reverser = in.control[ofCab(Control::kCab1Reverser, cab)];
      r.direction = (reverser > 0.0) == (cab == 0) ? 1 : -1;
    }
    for (int line = 0; line < plant::kLines; ++line) {
      const auto n = static_cast<std::size_t>(line);
      if (facts.fulfils(Outcome::kCabStart, cab, line)) r.starter[n] = true;
      if (facts.fulfils(Outcome::kCabStop, cab, line)) r.stop[n] = true;
      if (facts.fulfils(Outcome::kThrottle, cab, line)) {
        r.notch[n] = wholeValue(in.control[ofCab(Control::kCab1Throttle, cab)]);
      }
      if (facts.fulfils(Outcome::kGear, cab, line)) {
        r.gear[n] = wholeValue(in.control[ofCab(Control::kCab1Gear, cab)]);
      }
    }
  }
  for (int line = 0; line < plant::kLines; ++line) {
    const auto n = static_cast<std::size_t>(line);
    if (facts.fulfils(Outcome::kGroundStart, 0, line)) r.starter[n] = true;
    if (facts.fulfils(Outcome::kGroundStop, 0, line)) r.stop[n] = true;
    if (p.start_relay[n].welded > 0.5) r.starter[n] = facts.has(Fact::kBatteryOn);
  }
  r.bell_fed = facts.fulfils(Outcome::kBell);
  r.lights_fed = facts.fulfils(Outcome::kLights);
  return r;
}

}  // namespace cabwright::unit
