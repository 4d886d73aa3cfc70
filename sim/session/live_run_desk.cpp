// SPDX-License-Identifier: GPL-3.0-or-later
// The instructor's side of a run: faults as they come and go, marks, and going back to one.
#include <fmt/format.h>

#include <algorithm>

#include "session/live_run.h"

namespace cabwright::session {

std::optional<std::string> LiveRun::findDeskFault(const unit::Action& action) const {
  DeskSituation situation;
  situation.mode = mode();
  situation.tick = tick();
  situation.intervened_at = desk_.intervened_at;
  situation.pace = desk_.pace;
  situation.unit = &unit();
  return session::findDeskFault(situation, action);
}

std::vector<FaultNow> LiveRun::faultsNow() const {
  std::vector<FaultNow> all;
  const fault::ActiveFaults& faults = run_.faults();
  for (std::size_t k = 0; k < faults.armed().size(); ++k) {
    const fault::ArmedFault& fault = faults.armed()[k];
    all.push_back({fault.id, fault.spec, fault.size, faults.stage(k), faults.share(k),
                   run_.armerOf(fault.id)});
  }
  return all;
}

void LiveRun::noteFaults() {
  const auto& events = run_.lastFaultEvents();
  desk_.fault_log.insert(desk_.fault_log.end(), events.begin(), events.end());
}

void LiveRun::noteAction(const TimedAction& timed) {
  if (const auto pace = findPaceOf(timed.action)) desk_.pace = *pace;
  if (findIntervention(timed.action)) desk_.intervened_at = timed.tick;
  if (const auto name = findMarkName(timed.action)) {
    desk_.marks.push_back({timed.tick, timed.number, *name});
    if (!timed.scheduled) keepMoment();
  }
}

void LiveRun::keepMoment() {
  moments_.insert_or_assign(desk_.marks.back().number,
                            Moment{run_.copyAlone(), marking_, guide_, desk_, actions_.size()});
}

// From here on this run is the other one as it was then. The charts' past and the copies are cut
// from what the other has kept since its start.
void LiveRun::resume(const LiveRun& before, const Moment& moment) {
  run_ = moment.run;
  marking_ = moment.marking;
  guide_ = moment.guide;
  desk_ = moment.desk;
  history_ = before.history_;
  history_.cutAfter(tick());
  const auto end = before.actions_.begin() + static_cast<std::ptrdiff_t>(moment.actions);
  actions_.assign(before.actions_.begin(), end);
  copies_.clear();
  for (const auto& [tick, copy] : before.copies_)
    if (tick <= this->tick()) copies_.emplace(tick, copy);
  for (const auto& [number, kept] : before.moments_)
    if (number <= desk_.marks.back().number) moments_.emplace(number, kept);
  addWitnesses();
}

GoneBack LiveRun::goBackTo(const TimeMark& mark, LiveOptions options,
                           const BringProgress& progress) const {
  completeOptions(options);
  for (const scenario::Mode mode : {this->mode(), *options.mode})
    if (auto fault = findGoBackFault(mode)) return {nullptr, std::move(fault)};
  if (std::ranges::find(desk_.marks, mark) == desk_.marks.end())
    return {nullptr, fmt::format("this run has no mark '{}'", mark.name)};
  auto again = std::make_unique<LiveRun>(originalSituation(), options);
  const auto moment = moments_.find(mark.number);
  if (moment != moments_.end() && !options.record) {
    again->resume(*this, moment->second);
  } else if (!again->repeat(*this, mark.tick, mark.number, progress)) {
    return {nullptr, std::string("given up")};
  }
  again->take({unit::Actor::kInstructor, "remark", std::string(kTakenAgain),
               fmt::format("from {}, mark '{}'", marking::clockText(mark.tick), mark.name)});
  return {std::move(again), std::nullopt};
}

}  // namespace cabwright::session
