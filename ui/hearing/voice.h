// SPDX-License-Identifier: GPL-3.0-or-later
// What all voices have in common.
//
// A voice has three functions: prepare(sample_rate), set(scene), which costs little and may be
// called before each block, and addTo(block), which adds its samples. All start silent.
#pragma once

#include <span>

namespace cabwright::hearing {

struct Stereo {
  double left = 0.0, right = 0.0;
};
using Block = std::span<Stereo>;

/// Samples in a block at most: parameters that are not glided per sample move once a block.
inline constexpr int kBlockSamples = 64;

/// Gains of a mono source at a bearing, -1 left .. 1 right; 1 each straight ahead.
struct Pan {
  double left = 1.0, right = 1.0;
  Pan() = default;
  explicit Pan(double bearing)
      : left(bearing > 0.0 ? 1.0 - bearing : 1.0), right(bearing < 0.0 ? 1.0 + bearing : 1.0) {}
};

inline void addMono(Stereo& sample, double value) {
  sample.left += value;
  sample.right += value;
}

}  // namespace cabwright::hearing
