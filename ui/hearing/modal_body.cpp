// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/modal_body.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "hearing/filters.h"

namespace cabwright::hearing {

namespace {
constexpr double kLog1000 = 6.907755;  // 60 dB
constexpr double kDampedDecayS = 0.08;
constexpr double kAudible = 1e-6;
}  // namespace

ModalBody::ModalBody(std::vector<Partial> partials)
    : partials_(std::move(partials)), rings_(partials_.size()) {}

void ModalBody::prepare(double sample_rate) {
  for (std::size_t k = 0; k < partials_.size(); ++k) {
    const Partial& p = partials_[k];
    Ring& r = rings_[k];
    const double w = 2.0 * std::numbers::pi * std::min(p.frequency_hz / sample_rate, 0.45);
    const auto radius = [&](double decay_s) {
      return std::exp(-kLog1000 / (decay_s * sample_rate));
    };
    const double free = radius(p.decay_s);
    const double damped = radius(std::min(kDampedDecayS, p.decay_s));
    r.free_a1 = 2.0 * free * std::cos(w);
    r.free_a2 = free * free;
    r.damped_a1 = 2.0 * damped * std::cos(w);
    r.damped_a2 = damped * damped;
    r.push = p.gain * std::sin(w);
  }
}

void ModalBody::strike(double strength) {
  blow_ += strength;
  silent_ = false;
}

double ModalBody::next() {
  if (silent_) return 0.0;
  double sum = 0.0, most = 0.0;
  for (Ring& r : rings_) {
    const double a1 = damped_ ? r.damped_a1 : r.free_a1;
    const double a2 = damped_ ? r.damped_a2 : r.free_a2;
    const double y = a1 * r.y1 - a2 * r.y2 + r.push * blow_;
    r.y2 = r.y1;
    r.y1 = dropInaudible(y);
    sum += y;
    most = std::max({most, std::abs(r.y1), std::abs(r.y2)});
  }
  blow_ = 0.0;
  if (most < kAudible) {
    for (Ring& r : rings_) r.y1 = r.y2 = 0.0;
    silent_ = true;
  }
  return sum;
}

}  // namespace cabwright::hearing
