// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/perception.h"

#include <algorithm>

#include "quantity/units.h"
#include "unit/item_state.h"
#include "unit/unit.h"

namespace cabwright::unit {

namespace {

template <class... P>
constexpr PlaceSet placeSet(P... places) {
  return (PlaceSet{0} | ... | placeBit(places));
}

constexpr PlaceSet kAroundCar1 =
    placeSet(Place::kEnd1, Place::kBetween, Place::kCab1, Place::kCupboard, Place::kSaloon);

// Shown signals that are perceived from more places than the one whose name they begin with; of
// several that fit, the first. What smokes or burns beneath the car is seen along its whole side:
// from either car, and on side 1 from the walkway as well.
struct Elsewhere {
  std::string_view prefix;
  PlaceSet from;
};
constexpr PlaceSet kAlongSide1 =
    placeSet(Place::kEngine1, Place::kSide1, Place::kTrailer1, Place::kLineside);
constexpr PlaceSet kAlongSide2 = placeSet(Place::kEngine2, Place::kSide2, Place::kTrailer2);
constexpr Elsewhere kElsewhere[] = {
    {"engine1.smoke", kAlongSide1},
    {"engine1.fire", kAlongSide1},
    {"engine2.smoke", kAlongSide2},
    {"engine2.fire", kAlongSide2},
    {"side1.", placeSet(Place::kSide1, Place::kEngine1)},
    {"side2.", placeSet(Place::kSide2, Place::kEngine2)},
};

constexpr bool isWord(std::string_view name, std::string_view prefix) {
  return name.starts_with(prefix) &&
         (prefix.ends_with('.') || name.size() == prefix.size() || name[prefix.size()] == '.');
}

constexpr double kGlowV = 10.0;  // lamps give light above this

// Lights, displays and wipers have current.
bool hasCurrent(const World& w) {
  return w.result.lights_fed && w.frame[Signal::kTrueBusV] > kGlowV;
}

// Whether that which shows a thing is at work; at an end or in a cab that of its own cab.
bool isLit(const World& w, SeenBy by, Place place) {
  const std::size_t cab = place == Place::kEnd2 || place == Place::kCab2 ? 1 : 0;
  switch (by) {
    case SeenBy::kWhiteLamps:
      return w.result.white[cab] && hasCurrent(w);
    case SeenBy::kRedLamps:
      return w.result.red[cab] && hasCurrent(w);
    case SeenBy::kSaloonLights:
      return w.control.on(Control::kSaloonLights) && hasCurrent(w);
    case SeenBy::kLampTest:
      return w.result.facts.fulfils(Outcome::kLampTest, static_cast<int>(cab)) &&
             w.frame[Signal::kTrueBusV] > kGlowV;
    case SeenBy::kEye:
      break;
  }
  return true;
}

}  // namespace

PlaceSet hearingOfEngine(int line) {
  return kAroundCar1 | (line == 0 ? placeSet(Place::kEngine1, Place::kSide1, Place::kTrailer1)
                                  : placeSet(Place::kEngine2, Place::kSide2, Place::kTrailer2));
}

PlaceSet hearingOfHum(int line) {
  return line == 0 ? placeSet(Place::kEngine1, Place::kSide1)
                   : placeSet(Place::kEngine2, Place::kSide2);
}

PlaceSet hearingOfDrive(int line) {
  return placeSet(Place::kCab1, Place::kCupboard, Place::kSaloon, Place::kBetween) |
         hearingOfHum(line);
}

bool hasLightAt(const World& w, Place place) {
  const bool lamp = w.object_exists[indexOf(Object::kLamp)] &&
                    w.object[indexOf(Object::kLamp)].state == ObjectState::kCarried &&
                    w.control.on(Control::kHandLamp);
  if (!w.dark || place == Place::kBooking || (lamp && place == w.trainee.place)) return true;
  if (!hasCurrent(w)) return false;
  const int cab = cabOf(place);
  if (cab >= 0) return w.control.on(ofCab(Control::kCab1CabLight, cab));
  const bool inside = placeInfo(place).kind == PlaceKind::kInside;
  return inside && w.control.on(Control::kSaloonLights);
}

bool hasLight(const World& w) { return hasLightAt(w, w.trainee.place); }

bool needsLight(Signal s) {
  for (const InstrumentInfo& info : instrumentTable()) {
    if (info.signal == s) return !info.lamp;
  }
  const std::string_view name = signalInfo(s).name;
  for (std::string_view seen : {".blocks_on", ".wiper_sweeps", ".smoke"}) {
    if (name.ends_with(seen)) return true;
  }
  return false;
}

double calcSecondsToSee(const World& w, Item item) {
  return std::max(w.parameters.hands.look_s, itemInfo(item).look_s);
}

bool hasSeen(const World& w, Item item) {
  const double looked = w.trainee.looked_ticks[indexOf(item)];
  return looked + 0.5 > calcSecondsToSee(w, item) * quantity::kTicksPerSecond;
}

bool canMakeOut(const World& w, Item item) {
  const ItemInfo& info = itemInfo(item);
  return isLit(w, info.by, info.place);
}

int findVisibleCondition(const World& w, Item item) {
  const ItemInfo& info = itemInfo(item);
  const auto shows = [&](std::size_t k) { return isLit(w, info.conditions[k].by, info.place); };
  const int hidden = w.item[indexOf(item)].hidden;
  if (hidden > 0 && shows(static_cast<std::size_t>(hidden - 1))) return hidden;
  for (std::size_t k = 0; k < info.conditions.size(); ++k) {
    if (holdsNow(w, info.conditions[k]) && shows(k)) return static_cast<int>(k) + 1;
  }
  return 0;
}

namespace {

// Of things whose state changes with a switch: what they show besides their condition.
std::string liveWords(const World& w, Item item) {
  const auto lit = [&](Signal white, Signal red) {
    return std::string(w.frame[white] > 0.5F ? "; white lit" : "; white dark") +
           (w.frame[red] > 0.5F ? ", red lit" : ", red dark");
  };
  const auto number = [&](Signal shows) {
    const int n = static_cast<int>(w.frame[shows]);
    return n == 0 ? std::string("; blank") : "; shows " + std::to_string(n);
  };
  switch (item) {
    case Item::kEnd1Lamps:
    case Item::kEnd1TailLamp:
      return lit(Signal::kEnd1White, Signal::kEnd1RedLit);
    case Item::kEnd2Lamps:
    case Item::kEnd2TailLamp:
      return lit(Signal::kEnd2White, Signal::kEnd2RedLit);
    case Item::kEnd1Display:
      return number(Signal::kEnd1Shows);
    case Item::kEnd2Display:
      return number(Signal::kEnd2Shows);
    default:
      return "";
  }
}

}  // namespace

Sight describeSight(const World& w, Item item) {
  const ItemInfo& info = itemInfo(item);
  if (!canMakeOut(w, item)) {
    const bool desk = info.by == SeenBy::kLampTest;
    const char* why = desk ? "desk lamps are looked at under the lamp test" : "not lit";
    return {"dark", w.assessment ? "" : why};
  }
  const int present = findVisibleCondition(w, item);
  const std::string& seen =
      present == 0 ? info.good : info.conditions[static_cast<std::size_t>(present - 1)].seen;
  return {seen + liveWords(w, item), {}};
}

bool isPerceivedAt(Signal s, Place place) {
  const SignalInfo& info = signalInfo(s);
  if (info.layer != Layer::kShown) return false;
  for (std::string_view anywhere : {"heard.", "smelled.", "felt.", "second."}) {
    if (info.name.starts_with(anywhere)) return true;
  }
  // That the unit moves is seen, and felt, by whoever is in it or beside it.
  if (s == Signal::kSeenMoving) return place != Place::kBooking;
  for (const Elsewhere& e : kElsewhere) {
    if (isWord(info.name, e.prefix)) return contains(e.from, place);
  }
  const std::string_view name = placeInfo(place).name;
  return info.name.size() > name.size() && info.name.starts_with(name) &&
         info.name[name.size()] == '.';
}

bool Unit::canSee(Item item) const {
  const TraineeState& t = w_.trainee;
  return !t.walking && t.place == itemInfo(item).place && hasLight(w_);
}

Sight Unit::sightOf(Item item) const { return describeSight(w_, item); }

int Unit::presentCondition(Item item) const { return findPresentCondition(w_, item); }

Perceivable Unit::perceivable(Place place) const {
  Perceivable p;
  for (const ControlInfo& c : controlTable()) {
    const bool lamp = c.id == Control::kHandLamp &&
                      w_.object[indexOf(Object::kLamp)].state == ObjectState::kCarried;
    if (contains(c.places, place) || lamp) p.controls.push_back(c.id);
  }
  for (const ItemInfo& item : itemTable()) {
    if (item.place == place) p.items.push_back(item.id);
  }
  for (const SignalInfo& s : signalTable()) {
    if (!isPerceivedAt(s.id, place) || (needsLight(s.id) && !hasLightAt(w_, place))) continue;
    p.signals.push_back(s.id);
  }
  for (const ObjectInfo& o : objectTable()) {
    const ObjectPlace& at = w_.object[indexOf(o.id)];
    const bool here = at.state != ObjectState::kCarried && at.place == place;
    if (w_.object_exists[indexOf(o.id)] && here) p.objects.push_back(o.id);
  }
  for (const PlaceInfo& other : placeTable()) {
    if (other.id != place) p.places.push_back(other.id);
  }
  return p;
}

}  // namespace cabwright::unit
