// SPDX-License-Identifier: GPL-3.0-or-later
// What one engine drives, heard beside it: the hum of the exhauster's vanes, the knock of the
// compressor's valves while it delivers, and the puff of its unloader.
#pragma once

#include <cstddef>

#include "hearing/filters.h"
#include "hearing/glide.h"
#include "hearing/modal_body.h"
#include "hearing/scene.h"
#include "hearing/voice.h"

namespace cabwright::hearing {

class MachineVoice {
 public:
  explicit MachineVoice(std::size_t line);
  void prepare(double sample_rate);
  void set(const HeardScene& scene);
  void addTo(Block block);

  /// Vanes that pass a port in one turn of the crank (house value): the hum is at rpm / 60 times
  /// this.
  static constexpr double kVanesPerTurn = 12.0;
  /// Strokes of the compressor in one turn of the crank (house value).
  static constexpr double kStrokesPerTurn = 1.0;

 private:
  double nextHum();
  double nextKnock();
  double nextPuff();

  std::size_t line_;
  double sample_rate_ = 48000.0;
  Noise noise_;
  Glide rpm_{0.05}, hum_{0.1}, knock_{0.02};
  double hum_phase_ = 0.0, stroke_phase_ = 0.0;
  ModalBody casting_;
  double puff_ = 0.0, puff_rise_ = 0.0, puff_decay_ = 0.0, puff_rise_share_ = 0.0;
  BandPass air_;
  Compressor was_ = Compressor::kNotHeard;
};

}  // namespace cabwright::hearing
