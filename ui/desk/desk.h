// SPDX-License-Identifier: GPL-3.0-or-later
// The run as the instructor's desk knows it: what there is to be seen of it, and everything the
// instructor does, as Actions. Knows no rule and no physics; whether something is allowed, and why
// not, is asked of the run.
//
// A page of the desk is a QWidget whose constructor takes (Desk&, QWidget* parent). It reads
// desk.run(), which is null while nothing goes on, draws anew on changed(), forgets what it kept
// on runChanged(), and takes theme and size of type from desk.style(), again on restyled().
#pragma once

#include <QObject>
#include <QPointer>
#include <QString>
#include <string>

#include "cab/seat.h"
#include "drawing/ink.h"

namespace cabwright::desk {

/// What all pages of the desk share.
struct DeskStyle {
  drawing::Theme theme = drawing::Theme::kDay;
  double scale = 0.72;  ///< device-independent pixels for one sheet unit; type is at least 18.5 u
  [[nodiscard]] int textPx() const;  ///< of common words; never below 13
  bool operator==(const DeskStyle&) const = default;
};

class Desk : public QObject {
  Q_OBJECT
 public:
  explicit Desk(QObject* parent = nullptr);

  /// Another run is begun, gone back to, or (null) left. The seat is not owned; the desk lets go of
  /// it by itself when it is deleted.
  void setSeat(cab::Seat* seat);
  [[nodiscard]] cab::Seat* seat() const { return seat_; }
  /// Null while there is no run. After its end it can still be looked at, see isLive().
  [[nodiscard]] const session::LiveRun* run() const;
  /// There is a run, and it goes on: something can be done in it.
  [[nodiscard]] bool isLive() const;
  [[nodiscard]] bool inAssessment() const;
  /// Time stands still, whoever has stopped it.
  [[nodiscard]] bool isStopped() const;
  /// Of the run, 10 ms each; 0 without one.
  [[nodiscard]] std::int64_t tick() const;
  [[nodiscard]] std::string_view exercise() const;

  /// Does it now, whoever is meant to have done it. False: it was refused, and fault() has said
  /// why. Never throws.
  bool take(const unit::Action& action);
  /// The same, by the instructor: take("mark", "first start").
  bool take(std::string verb, std::string object, std::string argument = {});

  /// Asks for this run to be taken again from one of its marks; refused in assessment, and then
  /// fault() says why. Answered by runChanged().
  void goBack(const session::TimeMark& mark);
  /// The same for any moment up to now; then what was done at that tick itself is not done.
  void goBackTo(std::int64_t tick);
  /// Why this run is not gone back in; empty: it may be.
  [[nodiscard]] QString findGoBackFault() const;
  /// Whoever takes the run again says so before and after. What was gone to may be given up
  /// meanwhile, by leaveOffGoingBack().
  void setGoingBack(bool going);
  [[nodiscard]] bool isGoingBack() const { return going_back_; }
  void leaveOffGoingBack() { left_off_ = going_back_; }
  [[nodiscard]] bool wasLeftOff() const { return left_off_; }
  /// Says that something was refused, in English words of the simulation.
  void refuse(const QString& words);

  [[nodiscard]] const DeskStyle& style() const { return style_; }
  void setStyle(const DeskStyle& style);

 Q_SIGNALS:
  /// Time has passed or something was done; as often as the screen is drawn.
  void changed();
  /// Another run, or none.
  void runChanged();
  /// Something was done here, in the words of the record.
  void taken(const QString& words);
  /// Something goes on that takes its time: how far it is.
  void told(const QString& words);
  /// Something was refused, and why.
  void fault(const QString& words);
  /// Theme or size of type is another.
  void restyled();
  /// Whoever owns the run is to take it again from there.
  void backAsked(const cabwright::session::TimeMark& mark);
  void momentAsked(qint64 tick);
  /// It is being taken again, or is no more.
  void goingBackChanged(bool going);

 private:
  QPointer<cab::Seat> seat_;
  DeskStyle style_;
  bool going_back_ = false, left_off_ = false;
};

}  // namespace cabwright::desk
