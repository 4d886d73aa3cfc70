// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanism/gear_angles.h"

#include <cmath>

namespace cabwright::mechanism {

MechanismTurn calcTurn(MechanismTurn turn, const LineState& line, double seconds) {
  const auto go = [seconds](double& angle, double rpm) {
    angle = std::fmod(angle + 6.0 * rpm * seconds, 360.0);
  };
  go(turn.crank, line.engine);
  go(turn.runner, line.runner);
  go(turn.sun, line.input);
  go(turn.output, line.output);
  go(turn.wheel, line.wheel);
  go(turn.crown, line.crown);
  for (std::size_t k = 0; k < 3; ++k) go(turn.drum[k], line.drum[k]);
  return turn;
}

// A tooth of one wheel stands in a gap of the other where they touch: at the carrier's arm between
// sun and planet, beyond the planet between planet and annulus. Mesh of an outer pair at clock
// angle a: Zs (a - sun) + Zp (a + 180 - planet) = 180 (mod 360).
MeshAngles calcMesh(const TrainTeeth& t, double sun_deg, double carrier_deg) {
  const double at_sun = t.sun * (carrier_deg - sun_deg);
  MeshAngles mesh;
  mesh.planet = carrier_deg + 180.0 - (180.0 - at_sun) / t.planet;
  const double at_rim = t.planet * (carrier_deg - mesh.planet);
  mesh.annulus = carrier_deg - (at_rim - 180.0) / t.annulus;
  return mesh;
}

double calcDrumSpeed(const TrainTeeth& t, double sun, double carrier) {
  return ((t.sun + t.annulus) * carrier - t.sun * sun) / t.annulus;
}

}  // namespace cabwright::mechanism
