// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/agreement.h"

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
