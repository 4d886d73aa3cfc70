// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/rater_model.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <map>

#include "after/words.h"
#include "review_room/marks_rows.h"
#include "review_room/marks_style.h"
#include "review_room/rating_scales.h"

namespace cabwright::review_room {

using drawing::Tone;
using review::Agreement;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Agreement)
};

constexpr double kInterval = 1.96;  ///< standard errors on either side of a 95 % interval
constexpr int kFew = 30;            ///< below so many pairs a kappa says little
constexpr double kRare = 0.9;       ///< share of one verdict from which on the others are rare

QString figure(double value) {
  const QString text = QString::number(std::abs(value), 'f', 2);
  return value < 0 && text != QLatin1String("0.00") ? QChar(0x2212) + text : text;
}

// Share of the verdict given most often, by both taken together.
double findCommonShare(const RaterView& view) {
  std::map<QString, int> times;
  for (const RaterLine& line : view.lines) {
    ++times[line.first];
    ++times[line.second];
  }
  int most = 0;
  for (const auto& [word, count] : times) most = std::max(most, count);
  return view.lines.empty() ? 0 : most / (2.0 * static_cast<double>(view.lines.size()));
}

FactGroup figureFacts(const RaterView& view, const QString& name) {
  FactGroup group{Words::tr("The sheet and %1").arg(name), {}};
  Fact alike{Words::tr("Alike"), Words::tr("%1 of %2 lines, po %3")
                                     .arg(view.alike)
                                     .arg(view.marks.count)
                                     .arg(figure(view.marks.plain))};
  alike.strong = true;
  group.facts.push_back(alike);
  Fact kappa{Words::tr("Kappa"), kappaText(view.marks)};
  kappa.strong = view.marks.kappa.has_value();
  group.facts.push_back(kappa);
  group.facts.push_back({Words::tr("By chance"), figure(view.marks.chance)});
  if (view.unmarked > 0)
    group.facts.push_back(
        {Words::tr("Left out"),
         Words::tr("%1 lines were not marked by %2").arg(view.unmarked).arg(name)});
  return group;
}

FactGroup lineFacts(const RaterView& view, const QString& name, bool same) {
  FactGroup group{same ? Words::tr("Marked alike") : Words::tr("Marked differently"), {}};
  for (const RaterLine& line : view.lines) {
    if (line.same != same) continue;
    const QString words =
        same ? line.first : Words::tr("sheet: %1; %2: %3").arg(line.first, name, line.second);
    Fact fact{QStringLiteral("%1. %2").arg(line.number).arg(line.title), words, line.tick};
    fact.wide = true;
    if (!same) fact.tone = Tone::kDoubt;
    group.facts.push_back(std::move(fact));
  }
  if (group.facts.empty() && !same) group.facts.push_back({{}, Words::tr("none"), {}, Tone::kInk2});
  return group;
}

FactGroup ratingFacts(const RaterView& view, const QString& name) {
  FactGroup group{Words::tr("Ratings from 1 to 5"), {}};
  if (view.scales.empty()) return group;
  for (const review::RatedScale& rated : view.scales)
    group.facts.push_back(
        {scaleTitle(rated.scale),
         Words::tr("first: %1; %2: %3").arg(rated.pair.first).arg(name).arg(rated.pair.second)});
  group.facts.push_back({Words::tr("Weighted kappa"), kappaText(view.ratings)});
  return group;
}

}  // namespace

std::vector<Rater> findRaters(const std::vector<review::Entry>& entries) {
  std::vector<Rater> raters;
  for (const review::Entry& entry : entries)
    if (std::holds_alternative<review::BlindMark>(entry.content) &&
        std::ranges::find(raters, entry.person, &Rater::person) == raters.end())
      raters.push_back({entry.person, personName(entry.by)});
  return raters;
}

RaterView makeRaterView(const marking::MarkSheet& sheet, const std::vector<review::Entry>& entries,
                        std::int64_t person) {
  std::map<std::string, marking::Outcome> marks;
  for (const review::Entry& entry : entries)
    if (const auto* mark = std::get_if<review::BlindMark>(&entry.content);
        mark != nullptr && entry.person == person)
      marks[mark->rule] = mark->outcome;
  RaterView view;
  view.marks = review::calcAgreement(review::pairMarks(sheet, entries, person));
  for (const marking::SheetLine& line : sheet.lines) {
    const auto mark = marks.find(line.id);
    if (mark == marks.end()) {
      ++view.unmarked;
      continue;
    }
    const bool same = line.outcome() == mark->second;
    view.alike += same ? 1 : 0;
    view.lines.push_back({line.number, after::sheetWords(line.title), outcomeWord(line.outcome()),
                          outcomeWord(mark->second), same, findMoment(line)});
  }
  view.scales = review::pairRatings(entries, person);
  std::vector<review::RatingPair> pairs;
  for (const review::RatedScale& rated : view.scales) pairs.push_back(rated.pair);
  view.ratings = review::calcWeightedAgreement(pairs, kRatingSteps);
  return view;
}

QString kappaText(const Agreement& agreement) {
  if (agreement.count == 0) return Words::tr("none: nothing was marked by both");
  if (!agreement.kappa)
    return Words::tr(
        "none: both used one and the same mark throughout, so chance alone would "
        "have them agree");
  if (!agreement.standard_error) return figure(*agreement.kappa);
  const double kappa = *agreement.kappa, wide = kInterval * *agreement.standard_error;
  return Words::tr("%1, standard error %2, 95 % interval %3 to %4")
      .arg(figure(kappa), figure(*agreement.standard_error), figure(std::max(-1.0, kappa - wide)),
           figure(std::min(1.0, kappa + wide)));
}

QStringList kappaNotes(const RaterView& view) {
  QStringList notes{
      Words::tr("Kappa is how far two agree beyond what chance would give: 1 is always, 0 is no "
                "more than chance. Read it beside the plain agreement, never alone.")};
  if (findCommonShare(view) >= kRare)
    notes << Words::tr(
        "Nearly all lines have the same mark here. Then kappa is low, or jumps with "
        "a single line, however well two agree: look at the lines that differ.");
  else
    notes << Words::tr(
        "The same plain agreement can give another kappa when the marks are spread "
        "differently; two sessions cannot be compared by kappa alone.");
  if (view.marks.count < kFew)
    notes << Words::tr("%1 lines are few: the interval is wide and itself only rough.")
                 .arg(view.marks.count);
  if (view.ratings.count > 0)
    notes << Words::tr(
                 "The ratings are compared with weights: two steps apart is worse than one. "
                 "With %1 scales it is a hint and no more.")
                 .arg(view.ratings.count);
  notes << Words::tr(
      "Words such as \u201C"  // parted: lupdate takes the f for a digit of the code
      "fair\u201D or \u201Cgood\u201D for a kappa are custom "
      "and not a measure; they are left out here.");
  return notes;
}

std::vector<FactGroup> makeRaterFacts(const RaterView& view, const QString& name) {
  FactGroup notes{Words::tr("To keep in mind"), {}};
  for (const QString& note : kappaNotes(view)) notes.facts.push_back({{}, note, {}, Tone::kInk2});
  return {figureFacts(view, name), lineFacts(view, name, false), ratingFacts(view, name), notes,
          lineFacts(view, name, true)};
}

}  // namespace cabwright::review_room
