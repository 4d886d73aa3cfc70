// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/person_state.h"

#include <QCoreApplication>
#include <cmath>

#include "cab/names.h"
#include "hearing/captions.h"

namespace cabwright::desk {

using marking::JudgementResult;
using marking::RuleClass;
using unit::Signal;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(PersonView)
};

QString toQt(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

// "C", "S", "T" of a judgement.
QString letterText(const std::string& letter) {
  return letter == "C"   ? Words::tr("critical")
         : letter == "S" ? Words::tr("serious")
         : letter == "T" ? Words::tr("technical")
                         : QString();
}

void lookOver(const unit::Unit& unit, PersonState& state) {
  const auto value = [&unit](Signal s) { return static_cast<double>(unit.frame()[s]); };
  state.looking = unit.world().trainee.looking;
  if (!state.looking) return;
  state.looked_tenths = static_cast<int>(std::floor(value(Signal::kLookSeconds) * 10));
  state.needed_tenths = static_cast<int>(std::lround(value(Signal::kLookNeeded) * 10));
  const unit::ItemInfo& info = unit::itemInfo(*state.looking);
  const int condition = unit.presentCondition(*state.looking);
  if (condition <= 0) {
    state.shows = cab::translateSeen(QString::fromStdString(info.good));
    return;
  }
  const unit::ItemCondition& there = info.conditions[static_cast<std::size_t>(condition - 1)];
  state.shows = cab::translateSeen(QString::fromStdString(there.seen));
  state.shows_defect = there.rank != unit::DefectClass::kNone;
}

void listen(const session::LiveRun& run, const hearing::HeardTrend& trend, PersonState& state) {
  const unit::Frame& frame = run.frame();
  const hearing::HeardScene scene = hearing::calcScene(frame, state.place);
  for (const hearing::HeardLine& line : hearing::calcHeardLines(scene, trend))
    if (line.trace != hearing::HeardTrace::kNone)
      state.sounds << Words::tr("%1: %2").arg(line.name, line.words);
  const auto reply = static_cast<unit::Reply>(std::lround(frame[Signal::kHeardWords]));
  if (reply != unit::Reply::kNone) {
    state.words = cab::translateSeen(toQt(unit::wordsOf(reply)));
    state.words_age_s = static_cast<int>(frame[Signal::kHeardWordsAge]);
  }
  state.bell_code = static_cast<int>(std::lround(frame[Signal::kHeardBell]));
  if (state.bell_code != 0) state.bell_age_s = static_cast<int>(frame[Signal::kHeardBellAge]);
}

}  // namespace

PersonState calcPerson(const session::LiveRun& run, const hearing::HeardTrend& trend) {
  const unit::Unit& unit = run.unit();
  const unit::TraineeState& trainee = unit.world().trainee;
  const auto value = [&unit](Signal s) { return static_cast<double>(unit.frame()[s]); };
  PersonState state;
  state.place = trainee.place;
  state.walking = trainee.walking;
  state.heading = trainee.heading;
  state.arrives_in_s = static_cast<int>(std::ceil(value(Signal::kWalkLeft)));
  for (int side = 0; side < 2; ++side)
    state.hands[static_cast<std::size_t>(side)] = cab::findHold(unit, side);
  for (std::size_t k = 0; k < unit::kObjectCount; ++k)
    if (unit.world().object_exists[k] &&
        unit.world().object[k].state == unit::ObjectState::kCarried)
      state.carried.push_back(static_cast<unit::Object>(k));
  lookOver(unit, state);
  listen(run, trend, state);
  state.moving = value(Signal::kSeenMoving) > 0.5;
  state.forward_is_right = value(Signal::kTrueControlledBy) != 2;
  state.acts = trainee.acts;
  state.refused = trainee.refused;
  return state;
}

QString resultText(const marking::JudgementRow& row) {
  if (row.empty_entry) return Words::tr("looked too short");
  switch (row.result) {
    case JudgementResult::kHit:
      return Words::tr("right: found");
    case JudgementResult::kMiss:
      return Words::tr("missed");
    case JudgementResult::kFalseAlarm:
      return Words::tr("false alarm");
    case JudgementResult::kRight:
      return Words::tr("right");
    case JudgementResult::kUnsure:
      return Words::tr("not sure");
    case JudgementResult::kNotJudged:
      break;
  }
  return Words::tr("not found yet");
}

QString judgedText(const marking::JudgementRow& row) {
  const QString words = row.judged == "good"     ? Words::tr("good")
                        : row.judged == "defect" ? Words::tr("defect")
                                                 : Words::tr("not sure");
  const QString rank = letterText(row.judged_class);
  return rank.isEmpty() ? words : Words::tr("%1, %2").arg(words, rank);
}

QString defectText(const std::optional<RuleClass>& defect) {
  if (!defect) return {};
  return letterText(*defect == RuleClass::kCritical  ? "C"
                    : *defect == RuleClass::kSerious ? "S"
                                                     : "T");
}

}  // namespace cabwright::desk
