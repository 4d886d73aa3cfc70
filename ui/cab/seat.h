// SPDX-License-Identifier: GPL-3.0-or-later
// The trainee's seat as the parts of the sheet know it: what there is to be perceived, what can be
// done, and how time passes. Knows no rule and no physics; all of it is the run's.
//
// Time: a clock calls passRealTime(). As many ticks pass as the clock says, times the instructor's
// pace (LiveRun::pace, 1 unless somebody asks for another). Outside assessment time can be let pass
// until something changes; then it runs as fast as the machine is calculated, and stops by itself.
//
// Of a run to look at (LiveRun::toLookAt) it shows whatever moment it is given. Nothing can be done
// in it: to walk somewhere is to look from there.
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "session/changes.h"
#include "session/guide_walk.h"
#include "session/live_run.h"
#include "unit/controls.h"
#include "unit/items.h"
#include "unit/objects.h"

namespace cabwright::cab {

/// What came of something the trainee did.
struct Answer {
  bool accepted = true;
  QString perceived;  ///< what is seen or felt
  QString cause;      ///< why; empty in assessment
};

class Seat : public QObject {
  Q_OBJECT
 public:
  explicit Seat(std::unique_ptr<session::LiveRun> run, QObject* parent = nullptr);
  ~Seat() override;

  [[nodiscard]] const session::LiveRun& run() const { return *run_; }
  [[nodiscard]] const unit::Unit& unit() const { return run_->unit(); }
  [[nodiscard]] const unit::Frame& frame() const { return run_->frame(); }
  [[nodiscard]] double value(unit::Signal s) const { return run_->frame()[s]; }
  [[nodiscard]] double value(unit::Control c) const;
  [[nodiscard]] scenario::Mode mode() const { return run_->mode(); }
  [[nodiscard]] bool inAssessment() const { return mode() == scenario::Mode::kAssessment; }
  /// Where one is; of a run to look at, where it is looked from.
  [[nodiscard]] unit::Place place() const;
  [[nodiscard]] bool isWalking() const;
  /// Whether a shown signal can be read from here, in this light.
  [[nodiscard]] bool isPerceived(unit::Signal s) const;
  /// Whether a control can be reached from here.
  [[nodiscard]] bool isReachable(unit::Control c) const;
  /// 0 left, 1 right; empty: no hand is on it.
  [[nodiscard]] std::optional<int> handOn(unit::Control c) const;
  [[nodiscard]] bool isHere(unit::Object o) const;
  [[nodiscard]] bool isCarried(unit::Object o) const;
  /// What is being looked at; nothing while walking.
  [[nodiscard]] std::optional<unit::Item> itemLookedAt() const;
  /// The judgement of it that counts: the last one that was no empty entry; nullptr: none.
  [[nodiscard]] const unit::Judgement* findJudgement(unit::Item item) const;
  /// The last refusal of this control, while it still stands; empty otherwise.
  [[nodiscard]] QString refusalOf(unit::Control c) const;

  /// Everything a trainee can do, in the words of actions. Never throws; after the end of the run
  /// nothing is accepted.
  Answer act(std::string verb, std::string object, std::string argument = {});
  /// What somebody else does in this run: the instructor, the guard, the signaller. The trainee is
  /// told nothing but what the world shows.
  session::Taken takeFor(const unit::Action& action);
  Answer setControl(unit::Control c, double value);
  Answer hold(unit::Control c, std::optional<double> value = {});
  Answer release(unit::Control c);
  Answer walk(unit::Place to, bool under_the_unit = false);
  Answer look(unit::Item item);
  Answer judge(unit::Item item, unit::Verdict verdict, unit::DefectClass rank);

  /// Real seconds that went by. Long gaps (a machine that was asleep) count as a quarter second.
  void passRealTime(double seconds);
  void setFrozen(bool frozen);
  /// Stopped here or by the instructor's pace.
  [[nodiscard]] bool isFrozen() const { return frozen_ || !(run_->pace().rate > 0); }
  /// Lets time pass until something changes that matters, two minutes at most, and not past the
  /// last minute of the time allowed; no effect in assessment.
  void passUntilChange();
  void stopPassing();
  [[nodiscard]] bool isPassing() const { return passing_; }
  /// Simulated seconds that have passed so far in this go.
  [[nodiscard]] double passedSeconds() const;
  /// The exercise allows a time, and the run has gone on for longer.
  [[nodiscard]] bool isOverTime() const;

  /// The guide of the exercise, walked along; null in assessment and where there is none.
  [[nodiscard]] const session::GuideWalk* guide() const { return run_->guide(); }

  // A run to look at.

  [[nodiscard]] bool isToLookAt() const { return run_->isToLookAt(); }
  void showMoment(session::Run moment);
  /// From another place than the trainee's, in any light; empty: from where the trainee is.
  void lookFrom(std::optional<unit::Place> place);
  [[nodiscard]] std::optional<unit::Place> lookedFrom() const { return viewpoint_; }
  /// Shows again what came of a deed, or what was said, near that moment.
  void recall(const unit::Action& deed, const unit::ActionOutcome& outcome);
  void recall(const unit::Message& message);

  /// Ends the run; the sheet afterwards is run().sheet().
  void finish();
  [[nodiscard]] bool isFinished() const { return run_->isFinished(); }

 Q_SIGNALS:
  void frameChanged();
  void placeChanged();
  /// Something was done, and what came of it.
  void acted(const QString& what, const cabwright::cab::Answer& answer);
  /// Time that was let pass stopped, and why.
  void passed(const QString& why);
  /// A person said something.
  void said(const QString& who, const QString& words);
  void frozenChanged(bool frozen);
  /// Another moment of a run to look at is shown.
  void momentChanged();
  /// It is looked at from somewhere else.
  void viewpointChanged();
  /// Another step of the guide is the next one.
  void guideChanged();
  void finished();

 private:
  void advanceTicks(std::int64_t ticks);
  void advancePassing();
  [[nodiscard]] std::optional<std::string> whyNoLonger() const;
  [[nodiscard]] std::optional<std::int64_t> allowedTicks() const;
  void noteMessages();
  void say(const unit::Message& message);
  void noteRefusal(unit::Control c, const Answer& answer);
  void noticePlace();
  void noticeStep();

  struct Refusal {
    QString words;
    std::int64_t until = 0;
  };
  std::unique_ptr<session::LiveRun> run_;
  std::size_t seen_step_ = 0;
  std::optional<session::ChangeWatch> watch_;
  std::vector<Refusal> refusals_;
  unit::Place seen_place_{};
  bool seen_walking_ = false;
  std::optional<unit::Place> viewpoint_;
  double owed_s_ = 0;
  bool frozen_ = false, passing_ = false;
  std::int64_t passing_since_ = 0;
};

}  // namespace cabwright::cab
