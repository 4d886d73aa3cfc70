// SPDX-License-Identifier: GPL-3.0-or-later
// Blows: the thump of a final drive going into mesh, the rattle of dog teeth, the click of relays.
#pragma once

#include "hearing/filters.h"
#include "hearing/modal_body.h"
#include "hearing/scene.h"
#include "hearing/voice.h"

namespace cabwright::hearing {

class KnockVoice {
 public:
  KnockVoice();
  void prepare(double sample_rate);
  /// A thump and a click sound once, at the scene in which they are first heard.
  void set(const HeardScene& scene);
  void addTo(Block block);

 private:
  double sample_rate_ = 48000.0;
  Noise noise_{0x90};
  ModalBody drive_, teeth_, relay_;
  bool thump_ = false, click_ = false, rattle_ = false;
  double rattle_hz_ = 0.0, rattle_phase_ = 0.0;
};

}  // namespace cabwright::hearing
