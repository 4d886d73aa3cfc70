// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/live_run.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

#include "session/session_error.h"

namespace cabwright::session {
namespace {

constexpr std::int64_t kCopyTicks = 30 * kTicksPerSecond;

unit::Action makeTakenAgain(const std::string& words) {
  return {unit::Actor::kInstructor, "remark", std::string(kTakenAgain), words};
}

}  // namespace

struct LiveRun::Parts {
  Situation situation;
  SessionHeader header;
  scenario::Setup setup;
  std::unique_ptr<Recorder> recorder;
  std::string record_fault;
  std::filesystem::path record_file;
  scenario::Mode own_mode;
};

LiveRun::Parts LiveRun::makeParts(const Situation& situation, const LiveOptions& options) {
  const scenario::Scenario& scenario = situation.loaded.scenario;
  Parts parts{situation, {}, {}, nullptr, {}, {}, scenario.mode};
  if (const auto fault = scenario::findModeFault(scenario, options.mode.value_or(scenario.mode)))
    throw std::invalid_argument(*fault);
  parts.header =
      makeHeader(situation, options.seed.value_or(scenario.seed), options.program_version);
  chooseMode(parts.situation, parts.header, options.mode);
  parts.header.trainee_number = options.trainee_number;
  if (!options.trainee_name.empty())
    parts.header.people.push_back({"trainee", options.trainee_name});
  parts.setup = scenario::makeSetup(parts.situation.loaded, parts.header.seed);
  if (!options.record) return parts;
  try {
    parts.recorder = std::make_unique<Recorder>(*options.record, parts.header);
    parts.record_file = *options.record;
  } catch (const SessionError& error) {
    parts.record_fault = error.what();
  }
  return parts;
}

std::unique_ptr<LiveRun> LiveRun::toLookAt(const Situation& situation,
                                           const SessionHeader& header) {
  Parts parts{situation,
              header,
              scenario::makeSetup(situation.loaded, header.seed),
              nullptr,
              {},
              {},
              situation.loaded.scenario.mode};
  std::unique_ptr<LiveRun> run(new LiveRun(std::move(parts)));
  run->finished_ = run->to_look_at_ = true;
  return run;
}

void LiveRun::showMoment(Run moment) {
  if (to_look_at_) run_ = std::move(moment);
}

LiveRun::LiveRun(const Situation& situation, const LiveOptions& options)
    : LiveRun(makeParts(situation, options)) {}

LiveRun::LiveRun(Parts parts)
    : situation_(std::move(parts.situation)),
      header_(std::move(parts.header)),
      marking_(makeTerms(situation_, parts.setup)),
      history_(chartSignals()),
      guide_(situation_.loaded.scenario.guide),
      recorder_(std::move(parts.recorder)),
      record_fault_(std::move(parts.record_fault)),
      record_file_(std::move(parts.record_file)),
      own_mode_(parts.own_mode),
      run_(parts.setup) {
  addWitnesses();
  for (const fault::ArmedFault& fault : run_.faults().armed())
    desk_.fault_log.push_back(
        {0, fault.id, fault.spec, fault.size, fault::FaultStage::kArmed, unit::Actor::kScenario});
  run_.begin();
  keepCopy();
}

void LiveRun::addWitnesses() {
  run_.addWitness(marking_);
  run_.addWitness(history_);
  run_.addWitness(guide_);
  if (recorder_) run_.addWitness(*recorder_);
}

void LiveRun::keepCopy() { copies_.emplace(tick(), run_.copyAlone()); }

Taken LiveRun::take(const unit::Action& action) {
  if (finished_) {
    Taken taken;
    taken.fault = "the run is over";
    return taken;
  }
  Taken taken;
  if ((taken.fault = findDeskFault(action))) return taken;
  taken = run_.take(action);
  if (taken.fault) return taken;
  actions_.push_back({tick(), taken.number, false, action});
  noteAction(actions_.back());
  noteFaults();
  return taken;
}

std::int64_t LiveRun::advance(std::int64_t ticks) {
  std::int64_t done = 0;
  for (; done < ticks && !finished_ && !failed(); ++done) {
    run_.advance();
    for (const TimedAction& timed : run_.lastScheduled()) noteAction(timed);
    noteFaults();
    if (tick() % kCopyTicks == 0) keepCopy();
  }
  return done;
}

marking::MarkSheet LiveRun::sheet() const {
  marking::SheetHead head = makeHead(situation_, header_);
  head.last_tick = tick();
  return marking_.makeSheet(head);
}

marking::MarkSheet LiveRun::finish(const std::string& reason) {
  if (finished_) return sheet();
  finished_ = true;
  marking_.finish(tick());
  marking::MarkSheet sheet = this->sheet();
  if (recorder_) {
    try {
      recorder_->close(makeClosing(tick(), reason, sheet));
    } catch (const SessionError& error) {
      record_fault_ = error.what();
    }
  }
  return sheet;
}

std::optional<std::string> LiveRun::recordFault() const {
  if (!record_fault_.empty()) return record_fault_;
  return recorder_ ? recorder_->findFault() : std::nullopt;
}

bool LiveRun::repeat(const LiveRun& before, std::int64_t tick, std::int64_t number,
                     const BringProgress& progress) {
  auto next = before.actions_.begin();
  while (this->tick() < tick && !failed()) {
    for (; next != before.actions_.end() && next->tick == this->tick(); ++next) take(next->action);
    advance(1);
    if (progress && this->tick() % kTicksPerSecond == 0 && !progress(this->tick())) return false;
  }
  for (; next != before.actions_.end() && next->number <= number; ++next) take(next->action);
  return true;
}

// The constructor compares with the scenario's own mode, which this run may have changed.
Situation LiveRun::originalSituation() const {
  Situation original = situation_;
  scenario::chooseMode(original.loaded.scenario, own_mode_);
  return original;
}

void LiveRun::completeOptions(LiveOptions& options) const {
  if (!options.mode) options.mode = mode();
  options.seed = header_.seed;
  if (options.trainee_number.empty() && options.trainee_name.empty()) {
    options.trainee_number = header_.trainee_number;
    options.trainee_name = traineeName(header_);
  }
  if (options.program_version.empty()) options.program_version = header_.program_version;
}

std::unique_ptr<LiveRun> LiveRun::takenAgainFrom(std::int64_t tick, LiveOptions options,
                                                 const BringProgress& progress) const {
  completeOptions(options);
  if (findGoBackFault(mode()) || findGoBackFault(*options.mode)) return nullptr;
  auto again = std::make_unique<LiveRun>(originalSituation(), options);
  const std::int64_t wanted = std::clamp<std::int64_t>(tick, 0, this->tick());
  if (!again->repeat(*this, wanted, 0, progress)) return nullptr;
  again->take(makeTakenAgain("from " + marking::clockText(wanted)));
  return again;
}

const GuideWalk* LiveRun::guide() const {
  const bool is_silent =
      mode() == scenario::Mode::kAssessment || to_look_at_ || guide_.steps().empty();
  return is_silent ? nullptr : &guide_;
}

unit::Frame LiveRun::frameAt(std::int64_t tick) const {
  const std::int64_t wanted = std::clamp<std::int64_t>(tick, 0, this->tick());
  if (wanted == this->tick()) return frame();
  Run run = std::prev(copies_.upper_bound(wanted))->second;
  auto next = std::ranges::lower_bound(actions_, run.tick(), {}, &TimedAction::tick);
  while (run.tick() < wanted) {
    for (; next != actions_.end() && next->tick == run.tick(); ++next) run.take(next->action);
    run.advance();
  }
  return run.frame();
}

}  // namespace cabwright::session
