// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/seat.h"

#include <algorithm>
#include <cmath>

#include "unit/nearest_name.h"
#include "unit/perception.h"

namespace cabwright::cab {
namespace {

constexpr double kLongestStepS = 0.25;
constexpr double kTickS = 0.01;
constexpr std::int64_t kRefusalTicks = 400;  // how long the reason of a refusal stands at least
// One go of passing time: so much that the picture keeps moving, and a key is heard soon.
constexpr std::int64_t kPassingTicks = 200;
constexpr std::int64_t kLongestPassTicks = 2 * 60 * session::kTicksPerSecond;
constexpr std::int64_t kLastMinuteTicks = 60 * session::kTicksPerSecond;

QString text(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

QString nameOf(unit::Actor who) {
  switch (who) {
    case unit::Actor::kGuard:
      return Seat::tr("Guard");
    case unit::Actor::kSignaller:
      return Seat::tr("Signaller");
    case unit::Actor::kHelper:
      return Seat::tr("Second person");
    case unit::Actor::kInstructor:
      return Seat::tr("Instructor");
    case unit::Actor::kTrainee:
      return Seat::tr("You see");
    default:
      return Seat::tr("Somebody");
  }
}

}  // namespace

Seat::Seat(std::unique_ptr<session::LiveRun> run, QObject* parent)
    : QObject(parent), run_(std::move(run)), refusals_(unit::kControlCount) {
  seen_place_ = place();
  noticeStep();
}

Seat::~Seat() = default;

double Seat::value(unit::Control c) const { return run_->frame()[unit::controlInfo(c).signal]; }

unit::Place Seat::place() const { return viewpoint_.value_or(unit().world().trainee.place); }

bool Seat::isWalking() const { return !viewpoint_ && unit().world().trainee.walking; }

bool Seat::isPerceived(unit::Signal s) const {
  if (!unit::isPerceivedAt(s, place()) || isWalking()) return false;
  return viewpoint_ || !unit::needsLight(s) || unit::hasLight(unit().world());
}

bool Seat::isReachable(unit::Control c) const {
  if (isWalking()) return false;
  if (c == unit::Control::kHandLamp) return isCarried(unit::Object::kLamp);
  return unit::contains(unit::controlInfo(c).places, place());
}

std::optional<int> Seat::handOn(unit::Control c) const {
  const auto& hands = unit().world().trainee.hands;
  for (int k = 0; k < 2; ++k) {
    if (hands[static_cast<std::size_t>(k)].on == c) return k;
  }
  return std::nullopt;
}

bool Seat::isHere(unit::Object o) const {
  const unit::World& w = unit().world();
  if (!w.object_exists[unit::indexOf(o)]) return false;
  const unit::ObjectPlace& at = w.object[unit::indexOf(o)];
  return at.state != unit::ObjectState::kCarried && at.place == place() && !isWalking();
}

bool Seat::isCarried(unit::Object o) const {
  const unit::World& w = unit().world();
  return w.object_exists[unit::indexOf(o)] &&
         w.object[unit::indexOf(o)].state == unit::ObjectState::kCarried;
}

std::optional<unit::Item> Seat::itemLookedAt() const {
  return isWalking() ? std::nullopt : unit().world().trainee.looking;
}

const unit::Judgement* Seat::findJudgement(unit::Item item) const {
  const auto& all = unit().world().judgements;
  const auto last = std::find_if(all.rbegin(), all.rend(), [item](const unit::Judgement& j) {
    return j.item == item && !j.empty;
  });
  return last == all.rend() ? nullptr : &*last;
}

QString Seat::refusalOf(unit::Control c) const {
  const Refusal& refusal = refusals_[unit::indexOf(c)];
  return run_->tick() < refusal.until ? refusal.words : QString();
}

Answer Seat::act(std::string verb, std::string object, std::string argument) {
  if (isToLookAt()) return {false, tr("this is a recording: it can only be looked at"), {}};
  if (run_->isFinished()) return {false, tr("the run has ended"), {}};
  stopPassing();
  const unit::Action action{unit::Actor::kTrainee, std::move(verb), std::move(object),
                            std::move(argument)};
  const session::Taken taken = run_->take(action);
  Answer answer;
  if (taken.fault) {
    answer = {false, text(*taken.fault), {}};
  } else {
    answer = {taken.outcome.accepted, text(taken.outcome.perceived), text(taken.outcome.cause)};
  }
  noticeStep();
  Q_EMIT acted(text(unit::toText(action)), answer);
  Q_EMIT frameChanged();
  return answer;
}

session::Taken Seat::takeFor(const unit::Action& action) {
  const bool was_frozen = isFrozen();
  const session::Taken taken = run_->take(action);
  noticeStep();
  if (isFrozen() != was_frozen) Q_EMIT frozenChanged(isFrozen());
  Q_EMIT frameChanged();
  return taken;
}

Answer Seat::setControl(unit::Control c, double value) {
  const unit::ControlInfo& info = unit::controlInfo(c);
  const Answer answer = act("set", std::string(info.name), unit::positionName(info, value));
  Refusal& refusal = refusals_[unit::indexOf(c)];
  refusal = {};
  if (!answer.accepted && !isToLookAt()) {
    noteRefusal(c, answer);
    Q_EMIT frameChanged();
  }
  return answer;
}

void Seat::noteRefusal(unit::Control c, const Answer& answer) {
  refusals_[unit::indexOf(c)] = {answer.cause.isEmpty() ? answer.perceived : answer.cause,
                                 run_->tick() + kRefusalTicks};
}

Answer Seat::hold(unit::Control c, std::optional<double> value) {
  const unit::ControlInfo& info = unit::controlInfo(c);
  return act("hold", std::string(info.name),
             value ? unit::positionName(info, *value) : std::string());
}

Answer Seat::release(unit::Control c) {
  return act("release", std::string(unit::controlInfo(c).name));
}

Answer Seat::walk(unit::Place to, bool under_the_unit) {
  if (isToLookAt()) {
    lookFrom(to);
    return {};
  }
  const std::string way = under_the_unit ? "under" : "";
  const Answer answer = act("go", std::string(unit::placeInfo(to).name), way);
  noticePlace();
  return answer;
}

Answer Seat::look(unit::Item item) { return act("look", std::string(unit::itemInfo(item).name)); }

Answer Seat::judge(unit::Item item, unit::Verdict verdict, unit::DefectClass rank) {
  std::string words(unit::wordOf(verdict));
  if (rank != unit::DefectClass::kNone) words += " " + std::string(unit::letterOf(rank));
  return act("judge", std::string(unit::itemInfo(item).name), words);
}

void Seat::passRealTime(double seconds) {
  if (isFrozen() || run_->isFinished() || !(seconds > 0)) return;
  if (passing_) {
    advancePassing();
    return;
  }
  owed_s_ += std::min(seconds, kLongestStepS) * run_->pace().rate;
  const auto ticks = static_cast<std::int64_t>(std::floor(owed_s_ / kTickS + 1e-9));
  if (ticks <= 0) return;
  owed_s_ -= static_cast<double>(ticks) * kTickS;
  advanceTicks(ticks);
}

// Tick by tick, since people speak in one of them and are not heard in the next.
void Seat::advanceTicks(std::int64_t ticks) {
  for (std::int64_t k = 0; k < ticks && !run_->failed(); ++k) {
    run_->advance(1);
    noteMessages();
  }
  noticeStep();
  noticePlace();
  Q_EMIT frameChanged();
}

void Seat::noteMessages() {
  for (const unit::Message& message : unit().lastMessages()) say(message);
}

void Seat::say(const unit::Message& message) {
  if (message.reply == unit::Reply::kNone) return;
  QString words = text(unit::wordsOf(message.reply));
  if (message.reply == unit::Reply::kRearReading)
    words = tr("%1: %2 inHg").arg(words).arg(message.value, 0, 'f', 1);
  Q_EMIT said(nameOf(message.who), words);
}

void Seat::showMoment(session::Run moment) {
  if (!isToLookAt()) return;
  run_->showMoment(std::move(moment));
  refusals_.assign(unit::kControlCount, {});
  noticePlace();
  Q_EMIT momentChanged();
  Q_EMIT frameChanged();
}

void Seat::lookFrom(std::optional<unit::Place> place) {
  if (!isToLookAt() || place == viewpoint_) return;
  viewpoint_ = place;
  noticePlace();
  Q_EMIT viewpointChanged();
  Q_EMIT frameChanged();
}

void Seat::recall(const unit::Action& deed, const unit::ActionOutcome& outcome) {
  if (!isToLookAt()) return;
  const Answer answer{outcome.accepted, text(outcome.perceived), text(outcome.cause)};
  const auto control = unit::findControl(deed.object);
  if (deed.verb == "set" && control && !answer.accepted) noteRefusal(*control, answer);
  Q_EMIT acted(text(unit::toText(deed)), answer);
  Q_EMIT frameChanged();
}

void Seat::recall(const unit::Message& message) {
  if (isToLookAt()) say(message);
}

void Seat::noticePlace() {
  if (place() == seen_place_ && isWalking() == seen_walking_) return;
  seen_place_ = place();
  seen_walking_ = isWalking();
  Q_EMIT placeChanged();
}

void Seat::setFrozen(bool frozen) {
  if (frozen == frozen_ || inAssessment()) return;
  const bool was_frozen = isFrozen();
  frozen_ = frozen;
  stopPassing();
  if (isFrozen() != was_frozen) Q_EMIT frozenChanged(isFrozen());
}

void Seat::passUntilChange() {
  if (inAssessment() || run_->isFinished() || isFrozen()) return;
  watch_.emplace(unit());
  passing_ = true;
  passing_since_ = run_->tick();
  Q_EMIT frameChanged();
}

void Seat::stopPassing() {
  if (!passing_) return;
  passing_ = false;
  watch_.reset();
  Q_EMIT passed({});
}

double Seat::passedSeconds() const {
  return passing_ ? static_cast<double>(run_->tick() - passing_since_) * kTickS : 0;
}

void Seat::advancePassing() {
  for (std::int64_t k = 0; k < kPassingTicks && passing_; ++k) {
    run_->advance(1);
    noteMessages();
    if (run_->tick() % session::kFrameTicks != 0) continue;
    noticeStep();
    std::optional<std::string> what = watch_->see(unit());
    if (!what) what = whyNoLonger();
    if (!what && run_->failed()) what = std::string();
    if (!what) continue;
    passing_ = false;
    watch_.reset();
    Q_EMIT passed(text(*what));
  }
  noticePlace();
  Q_EMIT frameChanged();
}

// Nobody is to lose the time allowed by one key.
std::optional<std::string> Seat::whyNoLonger() const {
  const std::int64_t now = run_->tick();
  if (const auto end = allowedTicks()) {
    const std::int64_t last_minute = *end - kLastMinuteTicks;
    if (passing_since_ < last_minute && now >= last_minute)
      return tr("One minute of the time allowed is left.").toStdString();
    if (passing_since_ < *end && now >= *end) return tr("The time allowed is over.").toStdString();
  }
  if (now - passing_since_ >= kLongestPassTicks)
    return tr("Two minutes have passed and nothing changed.").toStdString();
  return std::nullopt;
}

std::optional<std::int64_t> Seat::allowedTicks() const {
  const auto& allowed = run_->situation().loaded.scenario.time_allowed_s;
  if (!allowed) return std::nullopt;
  return std::llround(*allowed * static_cast<double>(session::kTicksPerSecond));
}

bool Seat::isOverTime() const {
  const auto allowed = allowedTicks();
  return allowed && run_->tick() > *allowed;
}

void Seat::noticeStep() {
  const std::size_t step = guide() != nullptr ? guide()->behind() : 0;
  if (step == seen_step_) return;
  seen_step_ = step;
  Q_EMIT guideChanged();
}

void Seat::finish() {
  if (run_->isFinished()) return;
  stopPassing();
  run_->finish("finished");
  Q_EMIT finished();
}

}  // namespace cabwright::cab
