// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/why.h"

#include <fmt/format.h>

#include <array>

#include "quantity/units.h"
#include "unit/actions.h"
#include "unit/frame_fill.h"

namespace cabwright::unit {
namespace {

namespace q = cabwright::quantity;

// What each fact is seen at, of cab 1 and engine 1 where there are two.
struct Pointer {
  Fact fact;
  Control control;
};
constexpr std::array kPointers{
    Pointer{Fact::kBatteryOn, Control::kBatterySwitch},
    Pointer{Fact::kControlBreakerIn, Control::kBreakerControl},
    Pointer{Fact::kStartBreakerIn, Control::kBreakerStart},
    Pointer{Fact::kLampBreakerIn, Control::kBreakerLamps},
    Pointer{Fact::kLightBreakerIn, Control::kBreakerLights},
    Pointer{Fact::kSomeDeskAlive, Control::kCab1Key},
    Pointer{Fact::kKeyOn, Control::kCab1Key},
    Pointer{Fact::kDeskAlive, Control::kCab1Key},
    Pointer{Fact::kReverserIn, Control::kCab1Reverser},
    Pointer{Fact::kReverserAtOff, Control::kCab1Reverser},
    Pointer{Fact::kReverserTurned, Control::kCab1Reverser},
    Pointer{Fact::kReverserContact, Control::kCab1Reverser},
    Pointer{Fact::kThrottleShut, Control::kCab1Throttle},
    Pointer{Fact::kNotchSet, Control::kCab1Throttle},
    Pointer{Fact::kDeviceDown, Control::kCab1Device},
    Pointer{Fact::kDeviceContact, Control::kCab1Device},
    Pointer{Fact::kHandleIn, Control::kCab1Brake},
    Pointer{Fact::kHandleInLap, Control::kCab1Brake},
    Pointer{Fact::kPawlOut, Control::kCab1Pawl},
    Pointer{Fact::kLampTestIn, Control::kCab1LampTest},
    Pointer{Fact::kFireTestIn, Control::kCab1FireTest},
    Pointer{Fact::kJumperHome, Control::kJumper},
    Pointer{Fact::kGearSelected, Control::kCab1Gear},
    Pointer{Fact::kWhiteOn, Control::kCab1White},
    Pointer{Fact::kRedOn, Control::kCab1Red},
    Pointer{Fact::kSwitchAtCab, Control::kEngine1Switch},
    Pointer{Fact::kSwitchAtGround, Control::kEngine1Switch},
    Pointer{Fact::kSwitchNotOff, Control::kEngine1Switch},
    Pointer{Fact::kGroundStartIn, Control::kEngine1Start},
    Pointer{Fact::kGroundStopIn, Control::kEngine1Stop},
    Pointer{Fact::kThrottleValveSound, Control::kEngine1HandThrottle},
    Pointer{Fact::kSolenoidSound, Control::kEngine1Stop},
    Pointer{Fact::kSleeveInMiddle, Control::kEngine1Sleeve},
};

Control thatOf(Control of_first, int cab, int line) {
  if (cabOfControl(of_first) == 0) return ofCab(of_first, cab);
  if (engineOfControl(of_first) == 0) return ofEngine(of_first, line);
  return of_first;
}

std::optional<Place> findPlaceOf(Control control) {
  for (const PlaceInfo& place : placeTable())
    if (contains(controlInfo(control).places, place.id)) return place.id;
  return std::nullopt;
}

class WhyBook {
 public:
  WhyBook(const Unit& unit, int cab, int line)
      : u_(unit), w_(unit.world()), cab_(cab), line_(line) {}

  void add(Outcome outcome) {
    for (std::size_t k = 0; k < kFactCount; ++k) {
      const Fact fact = static_cast<Fact>(k);
      if ((interlockRow(outcome).needs & factBit(fact)) == 0) continue;
      if (fact == Fact::kDeskAlive && outcome != Outcome::kDeskAlive)
        add(Outcome::kDeskAlive);
      else if (fact == Fact::kDrivesMeshed)
        addDrives();
      else if (!isListed(fact))
        facts_.push_back(make(fact));
    }
  }
  std::vector<WhyFact> take() { return std::move(facts_); }

 private:
  [[nodiscard]] bool isListed(Fact fact) const {
    for (const WhyFact& known : facts_)
      if (known.fact == fact) return true;
    return false;
  }

  WhyFact make(Fact fact) {
    WhyFact why;
    why.fact = fact;
    why.there = w_.result.facts.has(fact, cab_, line_);
    why.when_there = thereWords(fact);
    why.when_missing = missingWords(fact);
    for (const Pointer& pointer : kPointers)
      if (pointer.fact == fact) pointAt(why, thatOf(pointer.control, cab_, line_));
    addFigures(why);
    return why;
  }

  static void pointAt(WhyFact& why, Control control) {
    why.points = control;
    why.place = findPlaceOf(control);
  }
  static void pointAt(WhyFact& why, Signal signal, Place place) {
    why.points = signal;
    why.place = place;
  }
  [[nodiscard]] Signal here(Signal first, Signal second) const {
    return ofNumber(first, second, static_cast<std::size_t>(cab_));
  }
  [[nodiscard]] bool isOn(Control of_cab1) const { return w_.control.on(ofCab(of_cab1, cab_)); }

  // Where there is more to say than the fact: the figure, or which part of it.
  void addFigures(WhyFact& why) {
    switch (why.fact) {
      case Fact::kRelayIn:
        addRelay(why);
        break;
      case Fact::kAirSwitchMade:
        addAir(why);
        break;
      case Fact::kEngineUp:
      case Fact::kEngineStopped:
        addEngine(why);
        break;
      case Fact::kGearsNeutral:
        pointAt(why, w_.control.on(Control::kCab1Gear) ? Control::kCab1Gear : Control::kCab2Gear);
        break;
      case Fact::kHasControl:
        pointAt(why, ofCab(Control::kCab1Key, 1 - cab_));
        break;
      case Fact::kChargeRelayOut:
        pointAt(why, here(Signal::kCab1LampCharge, Signal::kCab2LampCharge), cabPlace(cab_));
        break;
      default:
        addContacts(why);
    }
  }

  void addRelay(WhyFact& why) {
    pointAt(why, Signal::kCupboardVolts, Place::kCupboard);
    const double volts = u_.readings().bus_v;
    if (!w_.result.facts.has(Fact::kBatteryOn))
      why.when_missing = "the control relay has no current";
    else if (w_.parameters.relay.dead > 0.5)
      why.when_missing = fmt::format("the control relay does not pull, with {:.0f} V", volts);
    else
      why.when_missing = fmt::format("the control relay is out: {:.0f} V, and {:g} V pull it in",
                                     volts, w_.parameters.relay.pull_v);
    why.when_there = fmt::format("the control relay is in, with {:.0f} V", volts);
  }

  void addAir(WhyFact& why) {
    pointAt(why, here(Signal::kCab1Air, Signal::kCab2Air), cabPlace(cab_));
    const double psi = q::paToPsiGauge(u_.readings().control_reservoir_pa);
    const AirSwitchParameters& air = w_.parameters.air_switch;
    why.when_there = psi < air.fall_psi
                         ? fmt::format("the air switch has made, with {:.0f} psi", psi)
                         : fmt::format("control air is enough: {:.0f} psi", psi);
    why.when_missing =
        psi > air.rise_psi
            ? fmt::format("the air switch does not make, with {:.0f} psi", psi)
            : fmt::format("not enough control air: {:.0f} psi, and {:g} psi are needed", psi,
                          air.rise_psi);
  }

  void addEngine(WhyFact& why) {
    const auto n = static_cast<std::size_t>(line_);
    why.place = line_ == 0 ? Place::kEngine1 : Place::kEngine2;
    why.points = ofNumber(Signal::kEngine1OilGauge, Signal::kEngine2OilGauge, n);
    const plant::LineReadings& reading = u_.readings().line[n];
    const int number = line_ + 1;
    const std::string up = fmt::format("engine {} runs with {:.0f} psi of oil", number,
                                       reading.oil_pressure_pa / q::kPaPerPsi);
    const bool turns = w_.memory.running_contact[n];
    const std::string down =
        !turns ? fmt::format("engine {} does not run", number)
               : fmt::format("engine {} runs, but its oil switch says no pressure: {:.0f} psi",
                             number, reading.oil_pressure_pa / q::kPaPerPsi);
    const bool wants_up = why.fact == Fact::kEngineUp;
    why.when_there = wants_up ? up : down;
    why.when_missing = wants_up ? down : up;
  }

  // A lever may be where it should be and make no contact all the same.
  void addContacts(WhyFact& why) {
    const auto& in_place = w_.result.facts;
    switch (why.fact) {
      case Fact::kKeyOn:
        if (!isInserted(w_, Object::kControlKey, cabPlace(cab_)) &&
            !isInserted(w_, Object::kSpareKey, cabPlace(cab_)))
          why.when_missing = "no control key is in the switch";
        else if (!isOn(Control::kCab1Key))
          why.when_missing = "the key switch is off";
        else
          why.when_missing = "the key switch is on and makes no contact";
        break;
      case Fact::kReverserContact:
        if (!in_place.has(Fact::kReverserIn, cab_))
          why.when_missing = "there is no reversing lever";
        else if (!in_place.has(Fact::kReverserTurned, cab_))
          why.when_missing = "the reverser is at off";
        break;
      case Fact::kDeviceContact:
        if (!in_place.has(Fact::kDeviceDown, cab_))
          why.when_missing = "the safety device is not held";
        break;
      case Fact::kGearSelected:
        why.when_missing = isOn(Control::kCab1Gear) ? "the contact of this gear does not make"
                                                    : "no gear is selected";
        break;
      case Fact::kStartIn:
      case Fact::kStopIn:
        addButton(why);
        break;
      default:
        break;
    }
  }

  void addButton(WhyFact& why) {
    const bool start = why.fact == Fact::kStartIn;
    const Control first = start ? (line_ == 0 ? Control::kCab1Start1 : Control::kCab1Start2)
                                : (line_ == 0 ? Control::kCab1Stop1 : Control::kCab1Stop2);
    pointAt(why, ofCab(first, cab_));
    if (isOn(first)) why.when_missing = "the button is pressed and makes no contact";
  }

  void addDrives() {
    for (int line = 0; line < plant::kLines; ++line) facts_.push_back(makeDrive(line));
    // What a switch that lies does to the row is said, whatever the teeth do.
    bool all = true;
    for (const WhyFact& why : facts_)
      if (why.fact == Fact::kDrivesMeshed) all = all && why.there;
    if (all && !w_.result.facts.has(Fact::kDrivesMeshed, cab_))
      facts_.push_back(make(Fact::kDrivesMeshed));
  }

  WhyFact makeDrive(int line) const {
    const auto n = static_cast<std::size_t>(line);
    WhyFact why;
    why.fact = Fact::kDrivesMeshed;
    why.place = line == 0 ? Place::kEngine1 : Place::kEngine2;
    why.points = line == 0 ? Item::kEngine1FinalDrive : Item::kEngine2FinalDrive;
    const double stuck = w_.parameters.mesh_switch[n].stuck;
    const double reverser = w_.control[ofCab(Control::kCab1Reverser, cab_)];
    const int wanted = reverser == 0.0 ? 0 : (reverser > 0.0) == (cab_ == 0) ? 1 : -1;
    const plant::LineReadings& reading = u_.readings().line[n];
    const bool meshed = reading.dog == plant::DogState::kMeshed;
    const bool right = meshed && wanted != 0 && reading.dog_side == wanted;
    const std::string drive = fmt::format("final drive {}", line + 1);
    if (w_.control.on(ofEngine(Control::kEngine1Pin, line))) return makePinned(why, line);
    why.there = wanted != 0 && (stuck > 0.5 || (stuck >= -0.5 && right));
    why.when_there = right ? drive + " is in mesh that way"
                           : "the switch of " + drive + " makes, though it is not in mesh";
    if (wanted == 0)
      why.when_missing = drive + ": no direction is asked for";
    else if (right)
      why.when_missing = drive + " is in mesh, but its switch does not make";
    else
      why.when_missing = dogWords(drive, reading, wanted);
    return why;
  }

  WhyFact makePinned(WhyFact why, int line) const {
    const bool other = w_.control.on(ofEngine(Control::kEngine1Pin, 1 - line));
    why.points = ofEngine(Control::kEngine1Pin, line);
    why.there = !other && w_.control[ofCab(Control::kCab1Reverser, cab_)] != 0.0;
    why.when_there = fmt::format("final drive {} is pinned, and by-passed", line + 1);
    why.when_missing =
        other ? "both final drives are pinned: none is in use"
              : fmt::format("final drive {} is pinned; no direction is asked for", line + 1);
    return why;
  }

  [[nodiscard]] std::string dogWords(const std::string& drive, const plant::LineReadings& reading,
                                     int wanted) const {
    constexpr double kShiftPsi = 60.0;  // moves a sleeve; less only hisses
    const double psi =
        q::paToPsiGauge(wanted > 0 ? reading.shift_forward_pa : reading.shift_reverse_pa);
    switch (reading.dog) {
      case plant::DogState::kMeshed:
        return drive + " is in mesh the other way";
      case plant::DogState::kOnTooth:
        return drive + " stands tooth on tooth";
      case plant::DogState::kRattling:
        return drive + ": its teeth pass too fast to drop in";
      case plant::DogState::kEntering:
        return drive + " is going in";
      case plant::DogState::kPinned:
        return drive + " is pinned";
      case plant::DogState::kMoving:
      case plant::DogState::kMiddle:
        break;
    }
    if (psi < kShiftPsi)
      return fmt::format("{}: its shift air is too low, {:.0f} psi", drive, psi < 0 ? 0.0 : psi);
    return drive + (reading.dog == plant::DogState::kMoving ? ": its sleeve is on its way"
                                                            : ": its sleeve stands in the middle");
  }

  const Unit& u_;
  const World& w_;
  int cab_, line_;
  std::vector<WhyFact> facts_;
};

}  // namespace

std::vector<WhyFact> calcWhy(const Unit& unit, Outcome outcome, int cab, int line) {
  WhyBook book(unit, cab, line);
  book.add(outcome);
  return book.take();
}

}  // namespace cabwright::unit
