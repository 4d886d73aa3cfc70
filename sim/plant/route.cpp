// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/route.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace cabwright::plant {

GradeProfile::GradeProfile(std::vector<GradePoint> points, double easing_m)
    : points_(std::move(points)), easing_m_(std::max(easing_m, 1.0)) {
  height_m_.assign(points_.size(), 0.0);
  for (std::size_t k = 1; k < points_.size(); ++k) {
    height_m_[k] =
        height_m_[k - 1] + points_[k - 1].gradient * (points_[k].from_m - points_[k - 1].from_m);
  }
}

std::size_t GradeProfile::findSegment(double position_m) const {
  std::size_t k = 0;
  while (k + 1 < points_.size() && points_[k + 1].from_m <= position_m) ++k;
  return k;
}

// Around each change of gradient the value goes over in a straight line, half the easing before
// and half behind: a vertical curve of constant radius.
double GradeProfile::calcGradient(double position_m) const {
  if (points_.empty()) return 0.0;
  const double half = 0.5 * easing_m_;
  const std::size_t k = findSegment(position_m);
  const double here = points_[k].gradient;
  if (k > 0 && position_m < points_[k].from_m + half) {
    const double share = (position_m - points_[k].from_m + half) / easing_m_;
    return points_[k - 1].gradient + share * (here - points_[k - 1].gradient);
  }
  if (k + 1 < points_.size() && position_m > points_[k + 1].from_m - half) {
    const double share = (position_m - points_[k + 1].from_m + half) / easing_m_;
    return here + share * (points_[k + 1].gradient - here);
  }
  return here;
}

double GradeProfile::calcCurve(double position_m) const {
  return points_.empty() ? 0.0 : points_[findSegment(position_m)].curve_n_t;
}

double GradeProfile::calcHeight(double position_m) const {
  if (points_.empty()) return 0.0;
  const double half = 0.5 * easing_m_;
  const std::size_t k = findSegment(position_m);
  double height = height_m_[k] + points_[k].gradient * (position_m - points_[k].from_m);
  // The parabola of the easing against the corner it replaces.
  const auto parabola = [&](std::size_t at) {
    const double step = points_[at].gradient - points_[at - 1].gradient;
    const double inside = half - std::abs(position_m - points_[at].from_m);
    return inside > 0.0 ? step * inside * inside / (2.0 * easing_m_) : 0.0;
  };
  if (k > 0) height += parabola(k);
  if (k + 1 < points_.size()) height += parabola(k + 1);
  return height;
}

}  // namespace cabwright::plant
