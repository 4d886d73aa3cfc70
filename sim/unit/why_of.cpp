// SPDX-License-Identifier: GPL-3.0-or-later
// Which row of the interlock table stands behind a lamp, a lever, a button.
#include <array>

#include "unit/actions.h"
#include "unit/frame_fill.h"
#include "unit/why.h"

namespace cabwright::unit {

std::optional<WhyOf> findWhyOf(Signal lamp) {
  for (int cab = 0; cab < plant::kCabs; ++cab) {
    const auto is = [&](Signal first, Signal second) {
      return lamp == ofNumber(first, second, static_cast<std::size_t>(cab));
    };
    if (is(Signal::kCab1LampEngine1, Signal::kCab2LampEngine1))
      return WhyOf{Outcome::kLampEngine, cab, 0};
    if (is(Signal::kCab1LampEngine2, Signal::kCab2LampEngine2))
      return WhyOf{Outcome::kLampEngine, cab, 1};
    if (is(Signal::kCab1LampAir, Signal::kCab2LampAir)) return WhyOf{Outcome::kLampAir, cab, 0};
    if (is(Signal::kCab1LampDevice, Signal::kCab2LampDevice))
      return WhyOf{Outcome::kLampDevice, cab, 0};
    if (is(Signal::kCab1LampCharge, Signal::kCab2LampCharge))
      return WhyOf{Outcome::kLampCharge, cab, 0};
    if (is(Signal::kCab1LampFire, Signal::kCab2LampFire)) return WhyOf{Outcome::kLampFire, cab, 0};
  }
  return std::nullopt;
}

std::optional<WhyOf> findWhyOf(Control control) {
  struct Row {
    Control of_first;
    Outcome outcome;
    int line = 0;
  };
  static constexpr std::array kRows{
      Row{Control::kCab1Key, Outcome::kDeskAlive},
      Row{Control::kCab1Reverser, Outcome::kMoveReverser},
      Row{Control::kCab1Throttle, Outcome::kThrottleStays},
      Row{Control::kCab1Device, Outcome::kDeviceInCircuit},
      Row{Control::kCab1Brake, Outcome::kBrakeValve},
      Row{Control::kCab1Gear, Outcome::kGear},
      Row{Control::kCab1Start1, Outcome::kCabStart, 0},
      Row{Control::kCab1Start2, Outcome::kCabStart, 1},
      Row{Control::kCab1Stop1, Outcome::kCabStop, 0},
      Row{Control::kCab1Stop2, Outcome::kCabStop, 1},
      Row{Control::kCab1Handbrake, Outcome::kTurnHandbrakeOff},
      Row{Control::kCab1White, Outcome::kWhite},
      Row{Control::kCab1Red, Outcome::kRed},
      Row{Control::kCab1CabLight, Outcome::kLights},
      Row{Control::kCab1Wiper, Outcome::kLights},
      Row{Control::kCab1Bell, Outcome::kBell},
      Row{Control::kCab1LampTest, Outcome::kLampTest},
      Row{Control::kCab1FireTest, Outcome::kFireBellTest},
      Row{Control::kEngine1Start, Outcome::kGroundStart},
      Row{Control::kEngine1Stop, Outcome::kGroundStop},
      Row{Control::kEngine1Pin, Outcome::kPin},
  };
  const Control first = asOfFirst(control);
  const int cab = cabOfControl(control), engine = engineOfControl(control);
  for (const Row& row : kRows) {
    if (row.of_first != first) continue;
    return WhyOf{row.outcome, cab < 0 ? 0 : cab, engine < 0 ? row.line : engine};
  }
  return std::nullopt;
}

std::vector<WhyFact> calcWhyOfLamp(const Unit& unit, Signal lamp) {
  const auto of = findWhyOf(lamp);
  if (!of) return {};
  std::vector<WhyFact> facts = calcWhy(unit, of->outcome, of->cab, of->line);
  const bool fed = unit.world().result.facts.fulfils(of->outcome, of->cab, of->line);
  if (!fed || unit.frame()[lamp] > 0.5F) return facts;
  WhyFact bulb;
  bulb.fact = Fact::kLampBreakerIn;
  bulb.when_missing = "the lamp has its current and stays dark: it is the lamp itself";
  bulb.place = cabPlace(of->cab);
  bulb.points = lamp;
  facts.push_back(std::move(bulb));
  return facts;
}

}  // namespace cabwright::unit
