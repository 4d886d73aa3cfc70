// SPDX-License-Identifier: GPL-3.0-or-later
// How far two assessors agree on the same session: plainly, and beyond what chance would give.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "marking/sheet.h"
#include "review/entry.h"

namespace cabwright::review {

/// One line as two people marked it, in words: "met", "broken" ...
struct MarkPair {
  std::string first, second;
};

/// Cohen's kappa [J. Cohen, Educational and Psychological Measurement 20 (1960) 37-46]. It says
/// little without the plain agreement beside it: with rare breaches both agree on nearly all lines
/// and kappa is low all the same.
struct Agreement {
  int count = 0;      ///< lines both marked
  double plain = 0;   ///< share of them on which they agree
  double chance = 0;  ///< share that two would agree on who mark at random as often as these did
  /// (plain - chance) / (1 - chance); empty when chance is 1: then nothing can be told.
  std::optional<double> kappa;
  std::optional<double> standard_error;  ///< of kappa
};
[[nodiscard]] Agreement calcAgreement(const std::vector<MarkPair>& pairs);

/// One thing as two people rated it, from 1 to `steps`.
struct RatingPair {
  int first = 0, second = 0;
};

/// Weighted kappa [J. Cohen, Psychological Bulletin 70 (1968) 213-220] with equal steps: two that
/// lie k apart agree to 1 - k / (steps - 1). plain and chance are weighted likewise. The standard
/// error is that of J. L. Fleiss, J. Cohen and B. S. Everitt, Psychological Bulletin 72 (1969)
/// 323-327. Pairs outside the steps are left out.
[[nodiscard]] Agreement calcWeightedAgreement(const std::vector<RatingPair>& pairs, int steps);

/// The lines of the sheet, as its overrides left them, beside the last blind mark of that person.
[[nodiscard]] std::vector<MarkPair> pairMarks(const marking::MarkSheet& sheet,
                                              const std::vector<Entry>& entries,
                                              std::int64_t person);

/// The last rating by that person on each scale beside the last one by any other.
struct RatedScale {
  std::string scale;
  RatingPair pair;
};
[[nodiscard]] std::vector<RatedScale> pairRatings(const std::vector<Entry>& entries,
                                                  std::int64_t person);

}  // namespace cabwright::review
