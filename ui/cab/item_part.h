// SPDX-License-Identifier: GPL-3.0-or-later
// A thing on a plate that can be looked at and judged. Sound and defective things look alike until
// they are looked at: nothing is highlighted but what the trainee has done with it himself.
#pragma once

#include "cab/part.h"

namespace cabwright::cab {

struct ItemShape {
  QRectF thing = {};        ///< where it is on the drawing, u
  QPointF label = {};       ///< baseline of its name
  bool label_ends = false;  ///< the name ends there instead of beginning
  QPointF bend = {};        ///< of the leader from name to thing; null: straight
  bool leader = true;
};

class ItemPart : public Part {
  Q_OBJECT
 public:
  ItemPart(Seat& seat, const SheetStyle& style, unit::Item item, ItemShape shape, QWidget* parent);

  [[nodiscard]] unit::Item item() const { return item_; }
  [[nodiscard]] const ItemShape& shape() const { return shape_; }
  /// The thin line from its name to the thing: drawn with the ground, under all parts.
  void paintLeader(drawing::Pen& pen) const;
  void refresh() override;
  [[nodiscard]] PartRole role() const override;
  bool activate() override;  ///< looks at it

 protected:
  void paint(drawing::Pen& pen) const override;
  void paintPointer(drawing::Pen& pen) const override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool event(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;

 private:
  void paintLook(drawing::Pen& pen, const QRectF& around) const;
  [[nodiscard]] QRectF labelBox() const;
  [[nodiscard]] QString label() const;
  struct Said {
    unit::Verdict verdict;
    unit::DefectClass rank;
  };
  /// What a key says of the thing, while it is looked at and the judgement is not complete.
  [[nodiscard]] std::optional<Said> findSaid(int key) const;
  /// Looked at, and not judged since, or a defect with no class yet.
  [[nodiscard]] bool isToBeJudged() const;

  unit::Item item_;
  ItemShape shape_;
  bool hovered_ = false;
  std::size_t asked_from_ = 0;  ///< judgements there were when it was last looked at from here
  struct Shown {
    bool looking = false, looked = false;
    int share = 0;  ///< of the time a look takes, in twentieths
    unit::Verdict verdict = unit::Verdict::kNone;
    bool operator==(const Shown&) const = default;
  } shown_;
};

}  // namespace cabwright::cab
