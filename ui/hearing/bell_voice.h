// SPDX-License-Identifier: GPL-3.0-or-later
// The two bells of a cab: the guard's, one blow for each stroke, and the fire bell, which hammers
// without a break and is pitched higher.
#pragma once

#include "hearing/modal_body.h"
#include "hearing/scene.h"
#include "hearing/voice.h"

namespace cabwright::hearing {

class BellVoice {
 public:
  BellVoice();
  void prepare(double sample_rate);
  void set(const HeardScene& scene);
  void addTo(Block block);

  /// Lowest partials, Hz, and blows of the fire bell a second.
  static constexpr double kGuardHz = 1170.0, kFireHz = 2030.0, kFireBlowsHz = 15.0;

 private:
  double sample_rate_ = 48000.0;
  ModalBody guard_, fire_;
  bool bell_ = false, fire_rings_ = false;
  double fire_phase_ = 0.0;
};

}  // namespace cabwright::hearing
