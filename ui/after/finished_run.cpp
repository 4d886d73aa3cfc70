// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/finished_run.h"

#include <algorithm>
#include <string>

namespace cabwright::after {

FinishedRun makeFinishedRun(const session::LiveRun& run) {
  FinishedRun finished;
  finished.sheet = run.sheet();
  finished.marks = run.marker().marks();
  finished.actions = run.actions();
  finished.history = &run.history();
  finished.frame_at = [&run](std::int64_t tick) { return run.frameAt(tick); };
  finished.may_take_again = run.mode() != scenario::Mode::kAssessment;
  return finished;
}

int findLeadingCab(const session::SignalHistory& history) {
  const auto count = [&](unit::Signal signal) {
    return std::ranges::count_if(history.series(signal), [](float v) { return v != 0; });
  };
  return count(unit::Signal::kCab2Reverser) > count(unit::Signal::kCab1Reverser) ? 2 : 1;
}

unit::Signal ofCab(unit::Signal of_cab1, int cab) {
  std::string name(unit::signalInfo(of_cab1).name);
  if (cab != 2 || !name.starts_with("cab1.")) return of_cab1;
  name[3] = '2';
  return unit::findSignal(name).value_or(of_cab1);
}

bool neverCame(const marking::SheetLine& line) {
  return line.verdict.tick == 0 && line.verdict.times_exercised == 0;
}

std::int64_t momentOf(const marking::MarkSheet& sheet, const marking::SheetLine& line) {
  return neverCame(line) ? sheet.head.last_tick : line.verdict.tick;
}

std::optional<std::int64_t> findTakeAgainTick(const FinishedRun& run,
                                              const marking::SheetLine& line) {
  if (!run.may_take_again || neverCame(line)) return std::nullopt;
  return std::max<std::int64_t>(0, line.verdict.tick - kLeadTicks);
}

std::vector<const marking::SheetLine*> findBrokenLines(const marking::MarkSheet& sheet) {
  std::vector<const marking::SheetLine*> lines;
  for (const marking::SheetLine& line : sheet.lines) {
    if (line.outcome() == marking::Outcome::kBroken && !line.follows_line &&
        line.void_reason.empty())
      lines.push_back(&line);
  }
  return lines;
}

std::vector<const marking::SheetLine*> findFollowing(const marking::MarkSheet& sheet, int line) {
  std::vector<const marking::SheetLine*> lines;
  for (const marking::SheetLine& other : sheet.lines) {
    if (other.outcome() == marking::Outcome::kBroken && other.follows_line == line &&
        other.void_reason.empty())
      lines.push_back(&other);
  }
  return lines;
}

}  // namespace cabwright::after
