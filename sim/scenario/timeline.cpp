// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/timeline.h"

namespace cabwright::scenario {

Timeline::Timeline(std::vector<Happening> happenings)
    : happenings_(std::move(happenings)), watches_(happenings_.size()) {}

std::vector<unit::Action> Timeline::advance(const unit::Frame& frame) {
  std::vector<unit::Action> due;
  for (std::size_t k = 0; k < happenings_.size(); ++k) {
    if (watches_[k].hasCome() || !watches_[k].advance(happenings_[k].at, frame)) continue;
    due.insert(due.end(), happenings_[k].actions.begin(), happenings_[k].actions.end());
  }
  return due;
}

void Timeline::addTo(quantity::Fnv1a64& hash) const {
  for (const fault::MomentWatch& watch : watches_) watch.addTo(hash);
}

}  // namespace cabwright::scenario
