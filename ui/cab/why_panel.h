// SPDX-License-Identifier: GPL-3.0-or-later
// Why a lamp is dark or a lever does not answer, in words: all facts behind it and how each stands.
// The thread that is drawn beside it goes to the first that is missing. Never in assessment. It is
// moved out of the way with the mouse or the arrow keys.
#pragma once

#include <variant>

#include "cab/panels.h"
#include "unit/why.h"

namespace cabwright::cab {

/// What is asked about: a lamp, or something a hand moves.
using WhyAsked = std::variant<unit::Signal, unit::Control>;

class WhyPanel : public Panel {
  Q_OBJECT
 public:
  WhyPanel(Seat& seat, const SheetStyle& style, WhyAsked asked, QWidget* parent);
  void takeFocus() override { setFocus(); }
  [[nodiscard]] const WhyAsked& asked() const { return asked_; }
  /// The first fact that is missing; nullptr: all are there.
  [[nodiscard]] const unit::WhyFact* missing() const;
  /// The facts as they are now; true: they are others.
  bool refresh();

 Q_SIGNALS:
  /// Somebody has put it elsewhere.
  void moved();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;

 private:
  /// Pixels; not over the edge of the sheet.
  void moveBy(QPoint way);
  [[nodiscard]] QString question() const;
  WhyAsked asked_;
  std::vector<unit::WhyFact> facts_;
  QLabel* words_;
  QString shown_;
  QPoint held_;  ///< where the mouse has it
};

/// Whether there is anything to be said about it.
[[nodiscard]] bool hasWhy(const WhyAsked& asked);

}  // namespace cabwright::cab
