// SPDX-License-Identifier: GPL-3.0-or-later
// From a scenario and a seed to what a run is made of.
#include "quantity/random.h"
#include "scenario/scenario.h"
#include "unit/unit.h"

namespace cabwright::scenario {

namespace {

std::string inWords(const Hidden& hidden) {
  if (hidden.condition) return hidden.condition->name + " " + hidden.condition->value;
  if (hidden.fault) return hidden.fault->spec->name;
  return "nothing";
}

void putIn(const Hidden& hidden, Setup& setup) {
  if (hidden.condition) setup.start.conditions.push_back(*hidden.condition);
  if (hidden.fault) setup.faults.arm(*hidden.fault);
}

// Each draw has a stream of its own: another draw in the file does not change what this one gives.
void drawOne(const Draw& draw, Setup& setup) {
  quantity::Random random(setup.seed, "draw " + draw.name);
  std::vector<double> weights = draw.weights;
  for (int n = 0; n < draw.count; ++n) {
    const auto k = random.pickWeighted(weights);
    if (!k) return;
    weights[*k] = 0.0;
    putIn(draw.choices[*k], setup);
    setup.drawn.push_back(draw.name + ": " + inWords(draw.choices[*k]));
  }
}

void turnTeeth(Setup& setup) {
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    quantity::Random random(setup.seed, "teeth " + std::to_string(n + 1));
    const double pitch = 360.0 / setup.parameters.final_drive[n].teeth;
    setup.start.plant.line[n].tooth_phase_deg = random.uniform01() * pitch;
  }
}

// What was wrong or left on from the start has been so all the while it stood: where the start was
// that of a sound unit, and not one the scenario asked for, it becomes that of this one.
void letStandWithFaults(const Scenario& s, Setup& setup) {
  if (!s.stood_hours) return;
  constexpr double kNominalV = 24.0;
  const double hours = *s.stood_hours, ambient_c = s.start.plant.ambient_c;
  unit::Unit stood(setup.parameters, setup.route, setup.start);
  fault::ActiveFaults faults = setup.faults;
  faults.advance(stood);
  const plant::LeftOn on{stood.world().control.on(unit::Control::kBatterySwitch),
                         stood.parameters().load.extra_w / (kNominalV * kNominalV)};
  const auto sound = plant::StartConditions::afterStanding(hours, ambient_c, setup.parameters);
  const auto left =
      plant::StartConditions::afterStanding(hours, ambient_c, stood.plant().parameters(), on);
  for (const plant::StartInfo& info : plant::startTable()) {
    double& now = info.of(setup.start.plant);
    if (now == info.of(sound)) now = info.of(left);
  }
}

}  // namespace

Setup makeSetup(const LoadedScenario& loaded, std::uint64_t seed) {
  const Scenario& s = loaded.scenario;
  Setup setup;
  setup.seed = seed;
  setup.parameters = loaded.vehicle.plant;
  for (const unit::NumberSetting& change : s.plant_parameters) {
    for (const plant::ParameterInfo* info : plant::findParameters(change.name)) {
      info->of(setup.parameters) = change.value;
    }
  }
  setup.route = loaded.route.route;
  setup.start = s.start;
  if (s.random_teeth) turnTeeth(setup);
  for (const fault::ArmedFault& fault : s.faults) setup.faults.arm(fault);
  for (const Hidden& hidden : s.hidden) putIn(hidden, setup);
  for (const Draw& draw : s.draws) drawOne(draw, setup);
  letStandWithFaults(s, setup);
  setup.timeline = Timeline(s.happenings);
  return setup;
}

}  // namespace cabwright::scenario
