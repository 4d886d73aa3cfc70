// SPDX-License-Identifier: GPL-3.0-or-later
// What an assessor rates beside the lines: things no rule can see, each from 1 to 5, with words for
// every step so that two people mean the same by a figure.
#pragma once

#include <QString>
#include <array>
#include <span>

namespace cabwright::review_room {

inline constexpr int kRatingSteps = 5;

struct RatingScale {
  const char* id;     ///< as it is recorded: "communication"
  const char* title;  ///< in context "Rating", as all its words
  const char* asks;
  std::array<const char*, kRatingSteps> anchors;  ///< from 1 (poor) to 5 (very good)
};
[[nodiscard]] std::span<const RatingScale> ratingScales();
/// What the trainee says of the own run.
[[nodiscard]] const RatingScale& selfScale();

[[nodiscard]] QString ratingWord(const char* english);
/// Title of a recorded scale; one that is not known as it stands.
[[nodiscard]] QString scaleTitle(const std::string& id);

}  // namespace cabwright::review_room
