// SPDX-License-Identifier: GPL-3.0-or-later
// The thing that is missing, enlarged in a circle: the end of the thread that leads to it from a
// dark lamp or a lever that does not answer. Drawn by the state of the moment.
#pragma once

#include <QPointF>
#include <cstdint>
#include <optional>

#include "cab/seat.h"
#include "drawing/pen.h"
#include "unit/why.h"

namespace cabwright::cab {

enum class WhySketch : std::uint8_t {
  kContact,   ///< a contact that is open
  kDogs,      ///< `value`: how far the sleeve is from the crown, 0 touching to 1; `on_tooth`
  kAir,       ///< `value`: psi
  kEngine,    ///< stands; with `value` > 0 it turns
  kKey,       ///< key switch; `present`: a key is in it
  kSocket,    ///< a lever's socket, empty
  kReverser,  ///< `value`: where it stands, -1 to 1
  kNotches,   ///< throttle or gear; `value`: its notch
  kBrake,     ///< `value`: -1 to 1
  kDevice,    ///< the handle is up
  kPawl,      ///< in the ratchet; `value`: how hard the brake is on
  kButton,    ///< not pressed
  kBreaker,   ///< out
  kLamp,      ///< the lamp itself
  kPin,       ///< locking pin in the sleeve
};

struct WhyDetail {
  WhySketch kind = WhySketch::kContact;
  double value = 0;
  bool on_tooth = false, present = false;
  bool operator==(const WhyDetail&) const = default;
};

inline constexpr double kWhyCircle = 54;  ///< radius, u

[[nodiscard]] WhyDetail calcWhyDetail(const Seat& seat, const unit::WhyFact& fact);
/// A loose thing whose absence the fact is; empty: none.
[[nodiscard]] std::optional<unit::Object> findMissingThing(const Seat& seat,
                                                           const unit::WhyFact& fact);
/// `rim`: tone of the circle.
void paintWhyDetail(drawing::Pen& pen, QPointF centre, const WhyDetail& detail, drawing::Tone rim);

}  // namespace cabwright::cab
