// SPDX-License-Identifier: GPL-3.0-or-later
// Loose things where they lie: one at its own peg, or all that lie at a place in a row.
#pragma once

#include <vector>

#include "cab/part.h"
#include "drawing/objects.h"

namespace cabwright::cab {

/// How a loose thing is drawn.
[[nodiscard]] drawing::LooseThing drawingOf(unit::Object object);

/// One thing at its peg. When it is not there, its outline is. A click or Enter takes it when it
/// lies here, and hangs it back when it is carried.
class ThingPart : public Part {
  Q_OBJECT
 public:
  /// `centre`: of the thing; its name stands below, in at most two lines `width` wide.
  ThingPart(Seat& seat, const SheetStyle& style, unit::Object object, QPointF centre, double width,
            QWidget* parent);

  [[nodiscard]] unit::Object object() const { return object_; }
  void refresh() override;
  [[nodiscard]] PartRole role() const override;
  bool activate() override;

 protected:
  void paint(drawing::Pen& pen) const override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  enum class Where : std::uint8_t { kHere, kCarried, kElsewhere };
  [[nodiscard]] Where where() const;
  unit::Object object_;
  QPointF centre_;
  double width_;
  Where shown_ = Where::kElsewhere;
};

/// What lies about at this place, in a row; nothing is drawn when nothing does. A click takes a
/// thing; with the keys, the arrows choose one and Enter takes it.
class ThingRow : public Part {
  Q_OBJECT
 public:
  /// `row`: 62 u high at least. `pegged`: things that have a peg of their own here.
  ThingRow(Seat& seat, const SheetStyle& style, const QRectF& row, std::vector<unit::Object> pegged,
           QWidget* parent);

  [[nodiscard]] const std::vector<unit::Object>& lying() const { return lying_; }
  void refresh() override;
  [[nodiscard]] PartRole role() const override;
  bool step(int by) override;
  bool activate() override;

 protected:
  void paint(drawing::Pen& pen) const override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  [[nodiscard]] std::vector<unit::Object> findLying() const;
  [[nodiscard]] double captionWidth() const;
  [[nodiscard]] QRectF boxOf(std::size_t which) const;
  void take(std::size_t which);
  QRectF row_;
  std::vector<unit::Object> pegged_, lying_;
  std::size_t chosen_ = 0;
};

}  // namespace cabwright::cab
