// SPDX-License-Identifier: GPL-3.0-or-later
// A small session that was really run, sealed, ready to be reviewed.
#pragma once

#include "review/review.h"
#include "sample_scenario.h"
#include "sealed_session.h"

namespace cabwright::review {

using session::Folder;

inline const std::vector<session::Deed> kBadDeeds{
    {120, "set cab1.pawl out"}, {200, "set cab1.gear 1"}, {253, "set cab1.handbrake off"}};

inline void recordAndSeal(const std::filesystem::path& file,
                          const std::vector<session::Deed>& deeds) {
  session::record(file, deeds);
  session::sealSession(file, session::sampleKey(), session::SealHow::kOnRequest);
}

inline const session::Person kAssessor{"assessor", "R. Who"};
inline const session::Person kTrainee{"trainee", "P. Example"};
inline const std::string kUtc = "2031-02-04T08:00:00Z";

}  // namespace cabwright::review
