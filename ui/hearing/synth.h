// SPDX-License-Identifier: GPL-3.0-or-later
// The synthesiser: from a scene to samples. Knows neither a device nor a clock; the same calls give
// the same samples.
#pragma once

#include <array>
#include <span>

#include "hearing/air_voice.h"
#include "hearing/bell_voice.h"
#include "hearing/engine_voice.h"
#include "hearing/glide.h"
#include "hearing/horn_voice.h"
#include "hearing/knock_voice.h"
#include "hearing/limiter.h"
#include "hearing/machine_voice.h"
#include "hearing/scene.h"
#include "hearing/starter_voice.h"
#include "hearing/voice.h"
#include "hearing/wheels_voice.h"

namespace cabwright::hearing {

class Synth {
 public:
  Synth();

  /// What is heard from now on. Values outside their ranges are taken as the nearest inside. It
  /// glides there: nothing clicks. Bells, thumps and clicks begin where a scene has them and the
  /// one before did not, so every scene should be given, and at least every 50 ms.
  void setScene(const HeardScene& scene);

  /// 0..1; fades within about 0.1 s. Starts at 1.
  void setVolume(double volume);
  /// As volume 0, and back.
  void setMuted(bool muted);

  /// Fills whole pairs left, right; a lone sample at the end becomes 0. sample_rate in Hz, 8000 to
  /// 192000, others taken as the nearest of these; another rate than before starts all voices'
  /// filters anew, which may click. Every sample is finite and at most 0.9.
  void render(std::span<float> interleaved_stereo, int sample_rate);

 private:
  void prepare(int sample_rate);
  void renderBlock(Block block);
  template <typename Do>
  void forEachVoice(const Do& act);

  HeardScene scene_;
  std::array<EngineVoice, 2> engines_{EngineVoice{0}, EngineVoice{1}};
  std::array<StarterVoice, 2> starters_{StarterVoice{0}, StarterVoice{1}};
  std::array<MachineVoice, 2> machines_{MachineVoice{0}, MachineVoice{1}};
  AirVoice air_;
  KnockVoice knocks_;
  BellVoice bells_;
  HornVoice horn_;
  WheelsVoice wheels_;
  Limiter limiter_;
  Glide volume_gain_{0.025};
  double volume_ = 1.0;
  bool muted_ = false;
  int sample_rate_ = 0;
};

}  // namespace cabwright::hearing
