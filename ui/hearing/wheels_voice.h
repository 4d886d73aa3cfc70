// SPDX-License-Identifier: GPL-3.0-or-later
// Wheels on rails: rolling, the joints under the bogies, and brake blocks that rub and, slowly,
// squeal.
#pragma once

#include "hearing/filters.h"
#include "hearing/glide.h"
#include "hearing/modal_body.h"
#include "hearing/scene.h"
#include "hearing/voice.h"

namespace cabwright::hearing {

class WheelsVoice {
 public:
  WheelsVoice();
  void prepare(double sample_rate);
  void set(const HeardScene& scene);
  void addTo(Block block);

  /// Length of a rail and where on it, in metres from the first, the axles that are heard stand.
  static constexpr double kRailM = 18.3;
  static constexpr double kAxlesM[4] = {0.0, 2.6, 13.6, 16.2};
  /// How loud blocks squeal at a speed, 0..1: not when standing, most at walking pace, not when
  /// fast.
  [[nodiscard]] static double calcSqueal(double speed_mph);

 private:
  void advanceJoints();
  double nextSqueal();

  double sample_rate_ = 48000.0;
  Noise noise_{0x77}, wander_noise_{0x55};
  Glide speed_{0.1}, rolling_{0.1}, rubbing_{0.1}, squeal_{0.08};
  LowPass roll1_, roll2_, wall_, wander_;
  BandPass rub_;
  ModalBody rail_;
  double metres_ = 0.0, phase1_ = 0.0, phase2_ = 0.0;
  std::size_t next_axle_ = 0;
  double nearness_ = 1.0;
};

}  // namespace cabwright::hearing
