// SPDX-License-Identifier: GPL-3.0-or-later
#include "fault/moment.h"

namespace cabwright::fault {

bool MomentWatch::advance(const Moment& moment, const unit::Frame& frame) {
  if (come_) return true;
  if (!moment.when) {
    held_at_ = 0;
  } else if (!held_at_ && moment.when->holds(frame)) {
    held_at_ = frame.tick;
  }
  come_ = held_at_ && frame.tick - *held_at_ >= moment.ticks;
  return come_;
}

void MomentWatch::addTo(quantity::Fnv1a64& hash) const {
  hash.addInt(held_at_.value_or(-1));
  hash.addInt(come_);
}

}  // namespace cabwright::fault
