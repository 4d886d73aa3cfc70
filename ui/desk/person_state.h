// SPDX-License-Identifier: GPL-3.0-or-later
// Where the trainee is and what the trainee is at: plain values for the desk.
#pragma once

#include <QString>
#include <QStringList>
#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "cab/hands_part.h"
#include "hearing/listener.h"
#include "marking/judgement.h"
#include "session/live_run.h"

namespace cabwright::desk {

struct PersonState {
  unit::Place place = unit::Place::kBooking;  ///< while walking: the one that was left
  bool walking = false;
  unit::Place heading = unit::Place::kBooking;
  int arrives_in_s = 0;
  std::array<cab::Hold, 2> hands;  ///< left, right
  std::vector<unit::Object> carried;
  std::optional<unit::Item> looking;
  int looked_tenths = 0, needed_tenths = 0;  ///< s / 10
  QString shows;                             ///< what is there to be seen of it
  bool shows_defect = false;
  QStringList sounds;  ///< "Engine 1: even, idling"
  QString words;       ///< last said to the trainee; empty: nothing yet
  int words_age_s = 0;
  int bell_code = 0;  ///< last one that reached the trainee's ear; 0: none
  int bell_age_s = 0;
  bool moving = false, forward_is_right = true;
  int acts = 0, refused = 0;
  bool operator==(const PersonState&) const = default;
};

[[nodiscard]] PersonState calcPerson(const session::LiveRun& run, const hearing::HeardTrend& trend);

/// What became of a judgement, in words: "right", "missed", "false alarm" ...
[[nodiscard]] QString resultText(const marking::JudgementRow& row);
/// What was said: "good", "defect, S", "not sure".
[[nodiscard]] QString judgedText(const marking::JudgementRow& row);
/// "critical", "serious", "technical"; empty: sound.
[[nodiscard]] QString defectText(const std::optional<marking::RuleClass>& defect);

}  // namespace cabwright::desk
