// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/mark_difference.h"

#include <exception>
#include <map>

#include "session/store.h"

namespace cabwright::review {
namespace {

void compare(const session::Closing& recorded, const MarkedSession& marked, MarkDifference& found) {
  std::map<std::string, LineDifference> lines;
  for (const session::VerdictRow& row : recorded.verdicts)
    lines[row.rule] = {row.rule, row.verdict, ""};
  for (const auto& [rule, verdict] : marked.verdicts) {
    lines[rule].rule = rule;
    lines[rule].now = verdict;
  }
  for (auto& [rule, line] : lines)
    if (line.recorded != line.now) found.lines.push_back(std::move(line));
  found.decision_differs = recorded.passed != marked.passed;
}

}  // namespace

MarkDifference findMarkDifference(const MarkedSession& marked) {
  MarkDifference found;
  found.file = marked.file;
  found.fault = marked.fault;
  found.complete = marked.complete;
  found.same = marked.as_recorded.value_or(false);
  found.passed_now = marked.passed;
  if (!found.fault.empty() || !found.complete || found.same) return found;
  try {
    const session::Store store(marked.file);
    if (store.closing()) compare(*store.closing(), marked, found);
  } catch (const std::exception& error) {
    found.fault = error.what();
  }
  return found;
}

}  // namespace cabwright::review
