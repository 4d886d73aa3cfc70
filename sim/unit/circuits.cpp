// SPDX-License-Identifier: GPL-3.0-or-later
// What the circuits sense of the world.
#include <cmath>

#include "quantity/units.h"
#include "unit/actions.h"

namespace cabwright::unit {

namespace q = cabwright::quantity;

namespace {

// Within this of the middle the pin meets its hole.
constexpr double kPinPlayM = 0.002;

}  // namespace

bool isInserted(const World& w, Object o, Place place) {
  const ObjectPlace& at = w.object[indexOf(o)];
  return w.object_exists[indexOf(o)] && at.state == ObjectState::kInserted && at.place == place;
}

InterlockInputs senseCircuits(const World& w, const plant::PlantReadings& r) {
  InterlockInputs in;
  in.control = w.control;
  for (std::size_t c = 0; c < plant::kCabs; ++c) {
    const Place place = cabPlace(static_cast<int>(c));
    in.has_key[c] =
        isInserted(w, Object::kControlKey, place) || isInserted(w, Object::kSpareKey, place);
    in.has_reverser[c] = isInserted(w, Object::kReversingLever, place);
    in.has_brake_handle[c] = isInserted(w, Object::kBrakeHandle, place);
  }
  in.bus_v = r.bus_v;
  in.control_psi = q::paToPsiGauge(r.control_reservoir_pa);
  for (std::size_t n = 0; n < plant::kLines; ++n) {
    const plant::LineReadings& line = r.line[n];
    in.rpm[n] = q::radPerSecToRpm(line.crank_rad_per_s);
    in.oil_psi[n] = line.oil_pressure_pa / q::kPaPerPsi;
    in.meshed[n] = line.dog == plant::DogState::kMeshed ? line.dog_side : 0;
    in.sleeve_in_middle[n] = std::abs(line.sleeve_m) < kPinPlayM;
    in.burning[n] = isBurning(w, n);
  }
  return in;
}

}  // namespace cabwright::unit
