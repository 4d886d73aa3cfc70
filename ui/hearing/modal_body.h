// SPDX-License-Identifier: GPL-3.0-or-later
// A body that rings when struck: a bell, a casting, a rail. A sum of decaying partials, each a
// two-pole resonator driven by blows.
#pragma once

#include <cstddef>
#include <vector>

#include "hearing/voice.h"

namespace cabwright::hearing {

struct Partial {
  double frequency_hz = 0.0;
  double decay_s = 0.1;  ///< time to fall by 60 dB
  double gain = 1.0;     ///< amplitude after a blow of strength 1
};

class ModalBody {
 public:
  explicit ModalBody(std::vector<Partial> partials);
  void prepare(double sample_rate);
  /// A blow now; it adds to what still rings. Every partial starts from zero height, so a blow does
  /// not click by itself.
  void strike(double strength);
  /// Damped, everything dies within about 80 ms.
  void setDamped(bool damped) { damped_ = damped; }
  [[nodiscard]] bool isSilent() const { return silent_; }
  double next();

 private:
  struct Ring {
    double free_a1 = 0, free_a2 = 0, damped_a1 = 0, damped_a2 = 0;
    double push = 0, y1 = 0, y2 = 0;
  };
  std::vector<Partial> partials_;
  std::vector<Ring> rings_;
  double blow_ = 0.0;
  bool damped_ = false, silent_ = true;
};

}  // namespace cabwright::hearing
