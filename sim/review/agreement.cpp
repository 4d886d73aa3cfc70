// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/agreement.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace cabwright::review {

Agreement calcAgreement(const std::vector<MarkPair>& pairs) {
  Agreement result;
  result.count = static_cast<int>(pairs.size());
  if (pairs.empty()) return result;
  const auto n = static_cast<double>(pairs.size());
  std::map<std::string, double> first, second;
  double same = 0;
  for (const MarkPair& pair : pairs) {
    ++first[pair.first];
    ++second[pair.second];
    if (pair.first == pair.second) ++same;
  }
  result.plain = same / n;
  for (const auto& [mark, times] : first) result.chance += times / n * (second[mark] / n);
  const double room = 1 - result.chance;
  if (room < 1e-12) return result;
  result.kappa = (result.plain - result.chance) / room;
  result.standard_error = std::sqrt(result.plain * (1 - result.plain) / (n * room * room));
  return result;
}

namespace {

// Shares of the pairs, row by the first rating and column by the second, and their margins.
struct ShareTable {
  int steps = 0;
  std::vector<double> cell, row, column;

  [[nodiscard]] double weight(int i, int j) const {
    return 1.0 - static_cast<double>(i > j ? i - j : j - i) / (steps - 1);
  }
  [[nodiscard]] double at(int i, int j) const {
    return cell[static_cast<std::size_t>(i * steps + j)];
  }
};

ShareTable makeShares(const std::vector<RatingPair>& pairs, int steps) {
  const auto size = static_cast<std::size_t>(steps);
  ShareTable table{steps, std::vector<double>(size * size), std::vector<double>(size),
                   std::vector<double>(size)};
  const double share = 1.0 / static_cast<double>(pairs.size());
  for (const RatingPair& pair : pairs) {
    const auto i = static_cast<std::size_t>(pair.first - 1);
    const auto j = static_cast<std::size_t>(pair.second - 1);
    table.cell[i * size + j] += share;
    table.row[i] += share;
    table.column[j] += share;
  }
  return table;
}

double calcVariance(const ShareTable& table, const Agreement& a) {
  const auto n = static_cast<std::size_t>(table.steps);
  std::vector<double> of_row(n), of_column(n);
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j) {
      const double w = table.weight(static_cast<int>(i), static_cast<int>(j));
      of_row[i] += w * table.column[j];
      of_column[j] += w * table.row[i];
    }
  const double left = 1 - *a.kappa;
  double sum = 0;
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j) {
      const double w = table.weight(static_cast<int>(i), static_cast<int>(j));
      const double d = w - (of_row[i] + of_column[j]) * left;
      sum += table.at(static_cast<int>(i), static_cast<int>(j)) * d * d;
    }
  const double middle = *a.kappa - a.chance * left, room = 1 - a.chance;
  return std::max(0.0, sum - middle * middle) / (a.count * room * room);
}

}  // namespace

Agreement calcWeightedAgreement(const std::vector<RatingPair>& all, int steps) {
  Agreement result;
  std::vector<RatingPair> pairs;
  for (const RatingPair& pair : all)
    if (pair.first >= 1 && pair.first <= steps && pair.second >= 1 && pair.second <= steps)
      pairs.push_back(pair);
  result.count = static_cast<int>(pairs.size());
  if (pairs.empty() || steps < 2) return result;
  const ShareTable table = makeShares(pairs, steps);
  for (int i = 0; i < steps; ++i)
    for (int j = 0; j < steps; ++j) {
      result.plain += table.weight(i, j) * table.at(i, j);
      result.chance += table.weight(i, j) * table.row[static_cast<std::size_t>(i)] *
                       table.column[static_cast<std::size_t>(j)];
    }
  if (1 - result.chance < 1e-12) return result;
  result.kappa = (result.plain - result.chance) / (1 - result.chance);
  result.standard_error = std::sqrt(calcVariance(table, result));
  return result;
}

std::vector<RatedScale> pairRatings(const std::vector<Entry>& entries, std::int64_t person) {
  std::map<std::string, RatingPair> pairs;
  for (const Entry& entry : entries)
    if (const auto* rating = std::get_if<Rating>(&entry.content))
      (entry.person == person ? pairs[rating->scale].second : pairs[rating->scale].first) =
          rating->value;
  std::vector<RatedScale> rated;
  for (const auto& [scale, pair] : pairs)
    if (pair.first > 0 && pair.second > 0) rated.push_back({scale, pair});
  return rated;
}

std::vector<MarkPair> pairMarks(const marking::MarkSheet& sheet, const std::vector<Entry>& entries,
                                std::int64_t person) {
  std::map<std::string, std::string> marks;
  for (const Entry& entry : entries)
    if (const auto* mark = std::get_if<BlindMark>(&entry.content); mark && entry.person == person)
      marks[mark->rule] = marking::wordOf(mark->outcome);
  std::vector<MarkPair> pairs;
  for (const marking::SheetLine& line : sheet.lines)
    if (const auto mark = marks.find(line.id); mark != marks.end())
      pairs.push_back({std::string(marking::wordOf(line.outcome())), mark->second});
  return pairs;
}

}  // namespace cabwright::review
