// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/desk.h"

#include <algorithm>
#include <cmath>

#include "after/words.h"
#include "cab/names.h"
#include "session/desk_actions.h"

namespace cabwright::desk {
namespace {

constexpr int kLeastTextPx = 13;

QString text(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

QString translated(std::string_view words) { return cab::translateSeen(text(words)); }

}  // namespace

int DeskStyle::textPx() const {
  return std::max(kLeastTextPx, static_cast<int>(std::lround(drawing::kText * scale)));
}

Desk::Desk(QObject* parent) : QObject(parent) {}

void Desk::setSeat(cab::Seat* seat) {
  if (seat == seat_) return;
  if (seat_) disconnect(seat_, nullptr, this, nullptr);
  seat_ = seat;
  if (seat_) {
    connect(seat_, &cab::Seat::frameChanged, this, &Desk::changed);
    connect(seat_, &cab::Seat::frozenChanged, this, &Desk::changed);
    connect(seat_, &cab::Seat::finished, this, &Desk::changed);
    connect(seat_, &QObject::destroyed, this, [this] {
      Q_EMIT runChanged();
      Q_EMIT changed();
    });
  }
  Q_EMIT runChanged();
  Q_EMIT changed();
}

const session::LiveRun* Desk::run() const { return seat_ ? &seat_->run() : nullptr; }

bool Desk::isLive() const { return seat_ && !seat_->isFinished(); }

bool Desk::inAssessment() const { return seat_ && seat_->inAssessment(); }

bool Desk::isStopped() const { return seat_ && seat_->isFrozen(); }

std::int64_t Desk::tick() const { return seat_ ? seat_->run().tick() : 0; }

std::string_view Desk::exercise() const {
  return seat_ ? std::string_view(seat_->run().situation().loaded.scenario.title)
               : std::string_view();
}

bool Desk::take(const unit::Action& action) {
  if (!isLive()) {
    Q_EMIT fault(tr("No run goes on."));
    return false;
  }
  const session::Taken answer = seat_->takeFor(action);
  if (answer.fault) {
    Q_EMIT fault(translated(*answer.fault));
    return false;
  }
  if (!answer.outcome.accepted) {
    Q_EMIT fault(
        text(answer.outcome.cause.empty() ? answer.outcome.perceived : answer.outcome.cause));
    return false;
  }
  Q_EMIT taken(after::actText(unit::toText(action)));
  return true;
}

bool Desk::take(std::string verb, std::string object, std::string argument) {
  return take(unit::Action{unit::Actor::kInstructor, std::move(verb), std::move(object),
                           std::move(argument)});
}

QString Desk::findGoBackFault() const {
  if (!seat_) return tr("No run goes on.");
  const auto words = session::findGoBackFault(seat_->mode());
  return words ? translated(*words) : QString();
}

void Desk::goBack(const session::TimeMark& mark) {
  const QString words = findGoBackFault();
  words.isEmpty() ? Q_EMIT backAsked(mark) : Q_EMIT fault(words);
}

void Desk::goBackTo(std::int64_t tick) {
  const QString words = findGoBackFault();
  words.isEmpty() ? Q_EMIT momentAsked(tick) : Q_EMIT fault(words);
}

void Desk::setGoingBack(bool going) {
  if (going == going_back_) return;
  going_back_ = going;
  if (going) left_off_ = false;
  Q_EMIT goingBackChanged(going);
}

void Desk::refuse(const QString& words) { Q_EMIT fault(cab::translateSeen(words)); }

void Desk::setStyle(const DeskStyle& style) {
  if (style == style_) return;
  style_ = style;
  Q_EMIT restyled();
}

}  // namespace cabwright::desk
