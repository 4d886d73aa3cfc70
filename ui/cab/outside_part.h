// SPDX-License-Identifier: GPL-3.0-or-later
// The band above a cab's desk: what is seen to the left, ahead, to the right and behind. It lives
// from the Frame; the line itself is that of the exercise.
#pragma once

#include "cab/outside_view.h"
#include "cab/part.h"

namespace cabwright::cab {

class OutsidePart : public Part {
  Q_OBJECT
 public:
  /// `band`: of the sheet, u; it draws on its left part and leaves hearingArea(band) free.
  OutsidePart(Seat& seat, const SheetStyle& style, const QRectF& band, QWidget* parent);

  /// What is left of the band for others: at its right end, at least 420 u wide.
  [[nodiscard]] static QRectF hearingArea(const QRectF& band);

  /// One faces the back wall: nothing of the line is seen; the guard is heard as before.
  void setTurned(bool turned);
  void refresh() override;
  [[nodiscard]] PartRole role() const override;
  [[nodiscard]] const OutsideScene& scene() const { return scene_; }
  [[nodiscard]] const BehindScene& behind() const { return behind_; }

 protected:
  void paint(drawing::Pen& pen) const override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  struct Windows {
    QRectF left, ahead, right, behind;
  };
  [[nodiscard]] Windows windows() const;
  [[nodiscard]] OutsideScene makeScene() const;
  [[nodiscard]] BehindScene makeBehind() const;

  plant::GradeProfile profile_;
  QRectF band_;
  OutsideScene scene_;
  BehindScene behind_;
  bool turned_ = false;
};

}  // namespace cabwright::cab
