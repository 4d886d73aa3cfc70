// SPDX-License-Identifier: GPL-3.0-or-later
// Shows why: words in a panel and the thread beside it, for a lamp that is dark or a lever that was
// refused. While the mouse rests on it, and as long as it stays; by key or click until it is
// closed; guided, of itself when something is refused. Never in assessment.
#pragma once

#include <QPointer>
#include <QTimer>

#include "cab/plate.h"
#include "cab/why_panel.h"
#include "cab/why_thread.h"
#include "cab/you_parts.h"

namespace cabwright::cab {

class WhyGuide : public QObject {
  Q_OBJECT
 public:
  WhyGuide(Seat& seat, const SheetStyle& style, const PlanPart& plan,
           const std::vector<CarriedPart*>& things, QWidget* sheet);

  /// The mouse is looked after on its lamps and levers; what was shown of the last one goes.
  void watch(Plate* plate);
  /// What the key asks about: the part that has the focus, else what was refused last here, else
  /// the first dark lamp there is something to say about. Empty: nothing.
  [[nodiscard]] Part* findAsked(QWidget* focus) const;
  [[nodiscard]] static std::optional<WhyAsked> askedOf(const Part* part);
  /// Puts a panel beside its part, and draws the thread.
  void place(WhyPanel* panel, Part* part);
  /// The facts as they are now.
  void refresh();
  /// Nothing is shown any more.
  void clear();
  /// Something was refused; guided, it shows why by itself.
  void noteRefusal(unit::Control control);
  [[nodiscard]] const WhyThread& thread() const { return *thread_; }
  /// The panel that is there as long as the mouse is; nullptr: none.
  [[nodiscard]] WhyPanel* passing() const { return passing_; }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  [[nodiscard]] bool wantsHover(const Part* part) const;
  void showPassing(Part* part);
  void hidePassing();
  void layOut();
  [[nodiscard]] std::vector<QRectF> areas() const;
  /// `free`: what must stay visible, whatever else is covered.
  [[nodiscard]] QRectF findRoom(QSizeF size, const std::vector<QRectF>& free) const;
  /// The part that the missing fact points at, if it is on this plate.
  [[nodiscard]] Part* findMissingPart(const unit::WhyFact& fact) const;
  [[nodiscard]] std::optional<QPointF> findEnd(const unit::WhyFact& fact) const;
  [[nodiscard]] static QPointF startOf(const Part* part);

  Seat& seat_;
  const SheetStyle& style_;
  const PlanPart& plan_;
  const std::vector<CarriedPart*>& things_;
  QWidget* sheet_;
  WhyThread* thread_;
  QPointer<Plate> plate_;
  QPointer<Part> part_, hovered_;
  QPointer<WhyPanel> panel_, passing_;
  QTimer rest_, leave_;
  bool put_ = false;  ///< the panel was moved by hand, and stays there
  std::optional<unit::Control> refused_;
};

}  // namespace cabwright::cab
