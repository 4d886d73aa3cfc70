// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/unit.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "plant/named_numbers.h"
#include "quantity/units.h"
#include "unit/actions.h"
#include "unit/frame_fill.h"
#include "unit/hands.h"
#include "unit/item_state.h"
#include "unit/people.h"
#include "unit/tick.h"

namespace cabwright::unit {

namespace q = cabwright::quantity;

namespace {

constexpr double kLongAgoS = 1e9;  // every lag has settled when a run begins

void refuse(const std::vector<std::string>& faults) {
  if (!faults.empty()) throw std::invalid_argument(faults.front());
}

// Refuses before the plant is built of it.
const plant::Parameters& checked(const plant::Parameters& parameters, const Route& route,
                                 const UnitStart& start) {
  refuse(plant::findParameterFaults(parameters));
  refuse(findRouteFaults(route));
  refuse(findStartFaults(start));
  return parameters;
}

void setUp(World& w, const UnitStart& start) {
  w.assessment = start.assessment;
  w.dark = start.dark;
  w.guard_present = start.guard_present;
  w.second_person = start.second_person;
  w.pressed_until.fill(kNever);
  w.object_exists.fill(true);
  w.object_exists[indexOf(Object::kSpareKey)] = false;
  w.trainee.place = *findPlace(start.place);
  for (const NumberSetting& s : start.parameters) {
    for (const UnitParameterInfo* info : findUnitParameters(s.name)) {
      info->of(w.parameters) = s.value;
    }
  }
  for (const Setting& s : start.controls) {
    const Control c = *findControl(s.name);
    const ControlInfo& info = controlInfo(c);
    w.control[c] = *findPosition(info, s.value);
    // What would spring back is in the trainee's hand, if he can reach it.
    const bool out = w.control[c] != info.positions.front().value;
    if (info.spring == ControlSpring::kSprings && out && contains(info.places, w.trainee.place))
      reach(w, c);
  }
  for (const Setting& s : start.objects) placeObjectAt(w, *findObject(s.name), s.value);
}

}  // namespace

Unit::Unit(const plant::Parameters& parameters, const Route& route, const UnitStart& start)
    : route_(route),
      plant_(checked(parameters, route, start), route.profile(), start.plant),
      base_(parameters) {
  setUp(w_, start);
  // Needles stand where a sound gauge would put them before any of them is stuck there.
  advanceInstruments(w_, plant_.readings(), kLongAgoS);
  for (const Setting& s : start.conditions) putCondition(w_, plant_, base_, s.name, s.value);
  for (int cab = 0; cab < plant::kCabs; ++cab) {
    w_.wheel_target[static_cast<std::size_t>(cab)] =
        w_.control[ofCab(Control::kCab1Handbrake, cab)];
  }
  for (const RouteSignal& s : route_.signals) w_.signal_clear.push_back(s.clear);
  const plant::PlantReadings& r = plant_.readings();
  w_.last_position_m = r.position_m;
  const InterlockInputs in = senseCircuits(w_, r);
  w_.memory = calcMemory({}, in, w_.parameters, kLongAgoS);
  w_.result = calcInterlocks(in, w_.memory, w_.parameters);
  w_.inputs = calcPlantInputs(in, w_.result, w_.parameters);
  advanceInstruments(w_, r, kLongAgoS);
  updateNumberTests(w_, plant_.parameters(), base_);
  fillFrame(w_, plant_, route_);
}

ActionOutcome Unit::apply(const Action& action) {
  if (auto fault = findActionFault(action)) {
    if (action.actor == Actor::kTrainee) ++w_.trainee.refused;
    return {false, *fault, ""};
  }
  ActionOutcome outcome = Actions(*this).apply(action);
  if (action.actor == Actor::kTrainee && action.verb != "remark") {
    ++(outcome.accepted ? w_.trainee.acts : w_.trainee.refused);
  }
  return outcome;
}

void Unit::advance() {
  w_.messages.clear();
  const plant::PlantReadings& before = plant_.readings();
  advanceTrainee(w_);
  advanceHands(w_);
  advancePeople(w_, {std::abs(q::mpsToMph(before.speed_mps)), before.block_force_n});
  advanceFires(w_);

  const InterlockInputs in = senseCircuits(w_, before);
  const InterlockResult last = w_.result;
  w_.memory = calcMemory(w_.memory, in, w_.parameters, q::kTickSeconds);
  w_.result = calcInterlocks(in, w_.memory, w_.parameters);
  w_.inputs = calcPlantInputs(in, w_.result, w_.parameters);
  const std::array<bool, plant::kLines> meshed{before.line[0].dog == plant::DogState::kMeshed,
                                               before.line[1].dog == plant::DogState::kMeshed};
  plant_.advance(w_.inputs);
  ++w_.tick;

  const plant::PlantReadings& after = plant_.readings();
  w_.mode_changes += static_cast<std::int64_t>(plant_.lastEvents().size());
  noteSounds(w_, last, after, meshed);
  noteStarts(w_, last, after);
  noteMovement(w_, after, route_);
  noteExposure(w_, after);
  advanceInstruments(w_, after, q::kTickSeconds);
  if (w_.numbers_changed) updateNumberTests(w_, plant_.parameters(), base_);
  fillFrame(w_, plant_, route_);
}

void Unit::setParameter(const plant::ParameterInfo& which, double value) {
  plant_.setParameter(which, value);
  w_.numbers_changed = true;
}

void Unit::setParameter(const UnitParameterInfo& which, double value) {
  if (!(value >= which.lowest && value <= which.highest)) {
    throw std::out_of_range(which.name + " cannot be " + plant::shortNumber(value));
  }
  which.of(w_.parameters) = value;
  w_.numbers_changed = true;
}

}  // namespace cabwright::unit
