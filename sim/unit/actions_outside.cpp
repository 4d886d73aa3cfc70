// SPDX-License-Identifier: GPL-3.0-or-later
// What only the instructor and the scenario do: hidden conditions, faults, things put elsewhere.
#include <algorithm>
#include <array>
#include <stdexcept>

#include "unit/actions.h"
#include "unit/item_state.h"
#include "unit/nearest_name.h"

namespace cabwright::unit {

namespace {

const plant::ParameterInfo& plantParameter(std::string_view name) {
  const auto found = plant::findParameters(name);
  if (found.size() != 1) throw std::logic_error("no single parameter: " + std::string(name));
  return *found.front();
}

void setWithin(plant::Plant& plant, const plant::ParameterInfo& info, double value) {
  plant.setParameter(info, std::clamp(value, info.lowest, info.highest));
}

struct EffectWords {
  std::string_view verb, object, argument;
};
EffectWords split(std::string_view effect) {
  EffectWords e;
  e.verb = firstWord(effect);
  e.object = firstWord(effect);
  e.argument = effect;
  return e;
}

void setInstrument(World& w, Instrument id, std::string_view words) {
  w.numbers_changed = true;
  const InstrumentInfo& info = instrumentTable()[indexOf(id)];
  const std::string_view word = firstWord(words);
  InstrumentState& s = w.instrument[indexOf(id)];
  s.condition = findInstrumentCondition(info, word).value_or(InstrumentCondition::kSound);
  s.size = words.empty() ? 0.0 : readFinite(words).value_or(0.0);
}

void setFault(World& w, plant::Plant& plant, std::string_view name, double value) {
  w.numbers_changed = true;
  for (const UnitParameterInfo* info : findUnitParameters(name)) info->of(w.parameters) = value;
  for (const plant::ParameterInfo* info : plant::findParameters(name)) {
    setWithin(plant, *info, value);
  }
}

// The effect of a condition coming (sense +1) or being lifted (-1).
void applyEffect(World& w, plant::Plant& plant, const plant::Parameters& base,
                 const std::string& text, int sense) {
  const EffectWords e = split(text);
  w.numbers_changed = true;
  if (e.verb == "set") {
    const Control c = *findControl(e.object);
    const ControlInfo& info = controlInfo(c);
    w.control[c] = sense > 0 ? *findPosition(info, e.argument) : info.standard;
    for (int cab = 0; cab < plant::kCabs; ++cab) {
      if (c == ofCab(Control::kCab1Handbrake, cab)) {
        w.wheel_target[static_cast<std::size_t>(cab)] = w.control[c];
      }
    }
  } else if (e.verb == "add") {
    const plant::ParameterInfo& info = plantParameter(e.object);
    setWithin(plant, info, info.of(plant.parameters()) + sense * *readFinite(e.argument));
  } else if (e.verb == "fault") {
    if (sense > 0) return setFault(w, plant, e.object, *readFinite(e.argument));
    for (const UnitParameterInfo* info : findUnitParameters(e.object)) {
      info->of(w.parameters) = info->standard;
    }
    for (const plant::ParameterInfo* info : plant::findParameters(e.object)) {
      setWithin(plant, *info, info->of(base));
    }
  } else if (e.verb == "condition") {
    setInstrument(w, *findInstrument(e.object), sense > 0 ? e.argument : "sound");
  }
}

void applyAll(World& w, plant::Plant& plant, const plant::Parameters& base, const ItemInfo& info,
              int condition, int sense) {
  if (condition <= 0) return;
  for (const std::string& effect :
       info.conditions[static_cast<std::size_t>(condition - 1)].effects) {
    applyEffect(w, plant, base, effect, sense);
  }
}

void putItemCondition(World& w, plant::Plant& plant, const plant::Parameters& base, Item item,
                      int wanted) {
  const ItemInfo& info = itemInfo(item);
  ItemState& state = w.item[indexOf(item)];
  applyAll(w, plant, base, info, state.hidden, -1);
  if (wanted == 0 && state.hidden == 0) {
    // Nothing hidden: put right whatever is out of its place.
    for (std::size_t k = 0; k < info.conditions.size(); ++k) {
      const auto& live = info.conditions[k].live;
      if (live && live->of == LiveTest::Of::kSignal && holdsNow(w, info.conditions[k])) {
        applyAll(w, plant, base, info, static_cast<int>(k) + 1, -1);
      }
    }
  }
  applyAll(w, plant, base, info, wanted, +1);
  // What follows from a control is not hidden: put right by hand, it is gone.
  bool lives = false;
  if (wanted > 0) {
    const auto& live = info.conditions[static_cast<std::size_t>(wanted - 1)].live;
    lives = live && live->of == LiveTest::Of::kSignal;
  }
  state.hidden = lives ? 0 : wanted;
  w.items_changed = true;
}

}  // namespace

void putCondition(World& w, plant::Plant& plant, const plant::Parameters& base,
                  std::string_view name, std::string_view words) {
  if (const auto instrument = findInstrument(name)) return setInstrument(w, *instrument, words);
  const Item item = *findItem(name);
  putItemCondition(w, plant, base, item, *findItemCondition(itemInfo(item), words));
}

ActionOutcome Actions::condition(const Action& a) {
  putCondition(w_, u_.plant_, u_.base_, a.object, a.argument);
  return {};
}

ActionOutcome Actions::fault(const Action& a) {
  setFault(w_, u_.plant_, a.object, *readFinite(a.argument));
  return {};
}

ActionOutcome Actions::tooth(const Action& a) {
  u_.plant_.setToothPhase(a.object == "1" ? 0 : 1, *readFinite(a.argument));
  return {};
}

ActionOutcome Actions::placeObject(const Action& a) {
  placeObjectAt(w_, *findObject(a.object), a.argument);
  return {};
}

std::optional<std::string> findObjectWordFault(Object o, std::string_view where) {
  const std::string name(objectInfo(o).name);
  if (where == "carried" || where == "none") return std::nullopt;
  std::string_view rest = where;
  if (firstWord(rest) == "lying") {
    if (findPlace(rest)) return std::nullopt;
    std::vector<std::string_view> places;
    for (const PlaceInfo& p : placeTable()) places.push_back(p.name);
    return name + ": " + unknownWord("place", rest, places);
  }
  std::vector<std::string_view> sockets;
  const bool fits_cab = o == Object::kBrakeHandle || o == Object::kReversingLever ||
                        o == Object::kControlKey || o == Object::kSpareKey;
  if (fits_cab) sockets = {"cab1", "cab2"};
  if (o == Object::kPadlock) sockets = {"engine1", "engine2"};
  if (std::find(sockets.begin(), sockets.end(), where) != sockets.end()) return std::nullopt;
  std::vector<std::string_view> known{"carried", "none", "lying PLACE"};
  known.insert(known.end(), sockets.begin(), sockets.end());
  return name + ": " + unknownWord("whereabouts", where, known);
}

void placeObjectAt(World& w, Object o, std::string_view where) {
  const std::size_t k = indexOf(o);
  w.object_exists[k] = where != "none";
  if (where == "carried") {
    w.object[k] = {ObjectState::kCarried, w.trainee.place};
  } else if (const auto socket = findPlace(where)) {
    w.object[k] = {ObjectState::kInserted, *socket};
  } else if (where != "none") {
    const bool lies = firstWord(where) == "lying";
    if (!lies) return;
    w.object[k] = {ObjectState::kLying, findPlace(where).value_or(Place::kBooking)};
  }
}

}  // namespace cabwright::unit
