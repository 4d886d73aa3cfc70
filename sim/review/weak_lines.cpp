// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/weak_lines.h"

#include <algorithm>
#include <functional>
#include <map>
#include <tuple>

namespace cabwright::review {
namespace {

void count(WeakLine& line, char letter, const ShelfItem& item) {
  const bool broken = letter == kLineBroken || letter == kLineFails;
  if (broken) {
    ++line.broken;
    line.broken_in.push_back(&item);
  }
  line.exercised += broken || letter == kLineMet ? 1 : 0;
  line.not_exercised += letter == kLineNotExercised ? 1 : 0;
}

}  // namespace

WeakLines findWeakLines(const std::vector<const ShelfItem*>& items) {
  std::map<std::pair<std::string, std::string>, WeakLine> lines;
  // The names of a list are looked up once for all sessions that share it.
  std::map<const LineNames*, std::vector<WeakLine*>> known;
  WeakLines found;
  for (const ShelfItem* item : items) {
    const SheetGlance& sheet = item->sheet;
    if (!sheet.names) continue;
    ++found.sessions;
    std::vector<WeakLine*>& own = known[sheet.names.get()];
    if (own.empty())
      for (const LineName& name : *sheet.names) {
        WeakLine& line = lines[{name.id, name.title}];
        line.id = name.id;
        line.title = name.title;
        line.critical = line.critical || name.critical;
        own.push_back(&line);
      }
    for (std::size_t k = 0; k < own.size(); ++k) count(*own[k], sheet.letters[k], *item);
  }
  for (auto& [key, line] : lines) {
    std::ranges::stable_sort(line.broken_in, std::greater<>(), &ShelfItem::started_utc);
    (line.exercised > 0 ? found.exercised : found.never).push_back(std::move(line));
  }
  std::ranges::sort(found.exercised, [](const WeakLine& a, const WeakLine& b) {
    return std::tuple(-a.share(), -a.broken, std::tie(a.title)) <
           std::tuple(-b.share(), -b.broken, std::tie(b.title));
  });
  std::ranges::sort(found.never, {}, &WeakLine::title);
  return found;
}

}  // namespace cabwright::review
