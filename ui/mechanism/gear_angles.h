// SPDX-License-Identifier: GPL-3.0-or-later
// How far each wheel of the drawing has turned, and where its teeth stand so that they mesh.
// Clock angles, degrees.
#pragma once

#include <array>

#include "mechanism/mechanism_state.h"

namespace cabwright::mechanism {

/// Angles of what turns. Of each train the sun turns with the input, its carrier with the annulus
/// of the train before (of the first: with the output).
struct MechanismTurn {
  double crank = 0, runner = 0, sun = 4, output = 40, wheel = 0, crown = 0;
  std::array<double, 3> drum{15, 25, 35};

  [[nodiscard]] double carrier(std::size_t train) const {
    return train == 0 ? output : drum[train - 1];
  }
};

/// The same after so many seconds of what is shown (real ones divided by the slowness).
[[nodiscard]] MechanismTurn calcTurn(MechanismTurn turn, const LineState& line, double seconds);

/// Clock angles of one tooth of a planet and of the annulus, when sun and carrier stand as given.
struct MeshAngles {
  double planet = 0;
  double annulus = 0;
};
[[nodiscard]] MeshAngles calcMesh(const TrainTeeth& teeth, double sun_deg, double carrier_deg);

/// Speed of the drum that Willis' equation asks for: sun * s + annulus * d = (sun + annulus) * c.
[[nodiscard]] double calcDrumSpeed(const TrainTeeth& teeth, double sun, double carrier);

}  // namespace cabwright::mechanism
