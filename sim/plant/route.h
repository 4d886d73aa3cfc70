// SPDX-License-Identifier: GPL-3.0-or-later
// The line as the train feels it: gradient and curvature over distance. Positions are metres along
// the line; the gradient is rise over run, positive when it rises towards growing position.
#pragma once

#include <cstddef>
#include <vector>

namespace cabwright::plant {

struct GradePoint {
  double from_m = 0;     ///< the gradient holds from here to the next point
  double gradient = 0;   ///< rise/run, e.g. 1.0/80
  double curve_n_t = 0;  ///< curve resistance, N per tonne
};

/// A profile with constant gradient between its points, rounded over `easing_m` at each change so
/// that the force on the train has no step.
class GradeProfile {
 public:
  GradeProfile() = default;
  /// Points in order of from_m; before the first and behind the last the end values hold.
  explicit GradeProfile(std::vector<GradePoint> points, double easing_m = 40.0);
  [[nodiscard]] double calcGradient(double position_m) const;
  [[nodiscard]] double calcCurve(double position_m) const;
  /// Height above position 0, m: the integral of calcGradient.
  [[nodiscard]] double calcHeight(double position_m) const;

 private:
  [[nodiscard]] std::size_t findSegment(double position_m) const;
  std::vector<GradePoint> points_;
  std::vector<double> height_m_;  // at each point's from_m, relative to the first
  double easing_m_ = 40.0;
};

}  // namespace cabwright::plant
