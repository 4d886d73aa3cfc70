// SPDX-License-Identifier: GPL-3.0-or-later
// How far a second assessor, who marked without having seen the first marks, agrees with them: the
// figures, who said what, and what the figures do not say.
#pragma once

#include <QString>
#include <QStringList>
#include <cstdint>
#include <string>
#include <vector>

#include "marking/sheet.h"
#include "review/agreement.h"
#include "review_room/marks_facts.h"

namespace cabwright::review_room {

struct Rater {
  std::int64_t person = 0;
  QString name;
  bool operator==(const Rater&) const = default;
};
/// Those who have handed in blind marks, in the order in which they did.
[[nodiscard]] std::vector<Rater> findRaters(const std::vector<review::Entry>& entries);

struct RaterLine {
  int number = 0;
  QString title;
  QString first, second;
  bool same = false;
  std::optional<std::int64_t> tick;
};
struct RaterView {
  review::Agreement marks;
  review::Agreement ratings;  ///< weighted
  std::vector<RaterLine> lines;
  std::vector<review::RatedScale> scales;
  int alike = 0;     ///< of the lines
  int unmarked = 0;  ///< lines the second one left out
};
/// Of the sheet as its overrides left it and the last blind marks of that person.
[[nodiscard]] RaterView makeRaterView(const marking::MarkSheet& sheet,
                                      const std::vector<review::Entry>& entries,
                                      std::int64_t person);

/// Figures, lines that differ, all lines, ratings, and the cautions.
[[nodiscard]] std::vector<FactGroup> makeRaterFacts(const RaterView& view, const QString& name);
/// "0.40, standard error 0.13, 95 % interval 0.15 to 0.65"; or why there is none.
[[nodiscard]] QString kappaText(const review::Agreement& agreement);
/// What to keep in mind, one thing each, those that matter for these figures.
[[nodiscard]] QStringList kappaNotes(const RaterView& view);

}  // namespace cabwright::review_room
