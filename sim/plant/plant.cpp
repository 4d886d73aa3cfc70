// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/plant.h"

#include <stdexcept>
#include <utility>

#include "plant/named_numbers.h"
#include "plant/world.h"
#include "quantity/units.h"

namespace cabwright::plant {

Plant::Plant(const Parameters& parameters, const GradeProfile& grade,
             const StartConditions& start) {
  const std::vector<std::string> faults = findParameterFaults(parameters);
  if (!faults.empty()) throw std::invalid_argument(faults.front());
  world_ = std::make_unique<World>(parameters, grade, start, makeDopri5());
}

Plant::Plant(const Plant& other) : world_(std::make_unique<World>(*other.world_)) {}
Plant& Plant::operator=(const Plant& other) {
  if (this != &other) world_ = std::make_unique<World>(*other.world_);
  return *this;
}
Plant::Plant(Plant&&) noexcept = default;
Plant& Plant::operator=(Plant&&) noexcept = default;
Plant::~Plant() = default;

void Plant::advance(const PlantInputs& inputs) { world_->advance(inputs); }
const PlantReadings& Plant::readings() const { return world_->readings(); }
Accounts Plant::accounts() const { return calcAccounts(*world_); }
const Parameters& Plant::parameters() const { return world_->m.p; }

void Plant::setParameter(const ParameterInfo& which, double value) {
  if (!(value >= which.lowest && value <= which.highest)) {
    throw std::out_of_range(which.name + " = " + shortNumber(value) + " lies outside " +
                            shortNumber(which.lowest) + " .. " + shortNumber(which.highest));
  }
  Machine& m = world_->m;
  if (which.of(m.p) == value) return;
  const double before_j = calcStoredEnergy(*world_);
  which.of(m.p) = value;
  m.d = calcDerived(m.p, m.d.gas_k);
  world_->altered_j += calcStoredEnergy(*world_) - before_j;
  world_->restart = true;
}

void Plant::setToothPhase(int line, double degrees) {
  const auto n = static_cast<std::size_t>(line);
  if (n >= kLines) return;
  LineFlags& flag = world_->m.flags[n];
  if (flag.dog == DogState::kMeshed) return;
  State& x = world_->x;
  const double axle = flag.dog_side < 0 ? -x[stateOf(n, kWheelAngle)] : x[stateOf(n, kWheelAngle)];
  x[stateOf(n, kShaftAngle)] =
      (quantity::degToRad(degrees) + axle) * world_->m.p.final_drive[n].ratio;
  if (flag.dog == DogState::kEntering) flag.dog = DogState::kOnTooth;
  world_->restart = true;
}

std::uint64_t Plant::hash() const { return world_->hash(); }
const std::vector<PlantEvent>& Plant::lastEvents() const { return world_->events; }
bool Plant::failed() const { return world_->failed; }

}  // namespace cabwright::plant
