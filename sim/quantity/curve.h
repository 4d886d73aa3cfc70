// SPDX-License-Identifier: GPL-3.0-or-later
// A smooth curve through given points that never swings beyond them: piecewise cubic, with the
// slopes limited so that it rises where the points rise and falls where they fall
// [F. N. Fritsch, R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246].
// Its first derivative is continuous, so it may stand in an equation of motion.
#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <stdexcept>

namespace cabwright::quantity {

/// What the curve does beyond its first and last point.
enum class CurveEnds {
  kClamp,   ///< stays at the end's value
  kLinear,  ///< goes on with the end's slope
};

/// Curve through N points, N >= 2. A value type; the one made by default is zero everywhere.
template <std::size_t N>
class Curve {
  static_assert(N >= 2, "a curve needs two points");

 public:
  Curve() = default;

  /// x strictly rising, all values finite; else std::invalid_argument.
  Curve(const std::array<double, N>& x, const std::array<double, N>& y,
        CurveEnds ends = CurveEnds::kClamp)
      : x_(x), y_(y), ends_(ends) {
    check();
    limitSlopes(calcSecants());
    for (std::size_t k = 0; k + 1 < N; ++k) {
      const double h = x_[k + 1] - x_[k];
      const double secant = (y_[k + 1] - y_[k]) / h;
      second_[k] = (3.0 * secant - 2.0 * slope_[k] - slope_[k + 1]) / h;
      third_[k] = (slope_[k] + slope_[k + 1] - 2.0 * secant) / (h * h);
    }
  }

  /// Value at x; exact at the given points; NaN for NaN.
  [[nodiscard]] double calc(double x) const noexcept {
    if (x < x_[0]) return beyond(x, 0);
    if (x >= x_[N - 1]) return beyond(x, N - 1);
    const std::size_t k = findSegment(x);
    const double t = x - x_[k];
    return y_[k] + t * (slope_[k] + t * (second_[k] + t * third_[k]));
  }

 private:
  using Points = std::array<double, N>;

  void check() const {
    for (std::size_t k = 0; k < N; ++k) {
      if (!std::isfinite(x_[k]) || !std::isfinite(y_[k])) {
        throw std::invalid_argument("curve: a point is not a finite number");
      }
      if (k > 0 && !(x_[k] > x_[k - 1])) {
        throw std::invalid_argument("curve: the points do not go from left to right");
      }
    }
  }

  // Slopes of the parabola through each point and its neighbours, and the secants between points.
  Points calcSecants() {
    Points secant{};
    for (std::size_t k = 0; k + 1 < N; ++k) secant[k] = (y_[k + 1] - y_[k]) / (x_[k + 1] - x_[k]);
    slope_[0] = secant[0];
    slope_[N - 1] = secant[N - 2];
    for (std::size_t k = 1; k + 1 < N; ++k) {
      const double left = x_[k] - x_[k - 1];
      const double right = x_[k + 1] - x_[k];
      slope_[k] = (secant[k - 1] * right + secant[k] * left) / (left + right);
    }
    return secant;
  }

  // The circle of radius 3 in the plane of (slope / secant) at both ends is the paper's region S2.
  void limitSlopes(const Points& secant) {
    for (std::size_t k = 1; k + 1 < N; ++k) {
      if (!(secant[k - 1] * secant[k] > 0.0)) slope_[k] = 0.0;
    }
    for (std::size_t k = 0; k + 1 < N; ++k) {
      if (secant[k] == 0.0) {
        slope_[k] = slope_[k + 1] = 0.0;
        continue;
      }
      const double a = slope_[k] / secant[k];
      const double b = slope_[k + 1] / secant[k];
      const double square = a * a + b * b;
      if (square > 9.0) {
        const double shrink = 3.0 / std::sqrt(square);
        slope_[k] = shrink * a * secant[k];
        slope_[k + 1] = shrink * b * secant[k];
      }
    }
  }

  [[nodiscard]] double beyond(double x, std::size_t end) const noexcept {
    return ends_ == CurveEnds::kClamp ? y_[end] : y_[end] + slope_[end] * (x - x_[end]);
  }

  // Few points: counting is quicker than halving, as it needs no branch.
  [[nodiscard]] std::size_t findSegment(double x) const noexcept {
    std::size_t k = 0;
    if constexpr (N <= 24) {
      for (std::size_t n = 1; n + 1 < N; ++n) k += x >= x_[n] ? 1U : 0U;
    } else {
      std::size_t above = N - 1;
      while (above - k > 1) {
        const std::size_t middle = k + (above - k) / 2;
        (x >= x_[middle] ? k : above) = middle;
      }
    }
    return k;
  }

  Points x_{};
  Points y_{};
  Points slope_{};
  Points second_{};
  Points third_{};
  CurveEnds ends_ = CurveEnds::kClamp;
};

}  // namespace cabwright::quantity
