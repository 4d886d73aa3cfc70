// SPDX-License-Identifier: GPL-3.0-or-later
// The plate of a place: a drawing that has come alive, with the parts that can be moved, read and
// looked at there. Made anew whenever the place or the shape of the window changes.
#pragma once

#include <QPixmap>
#include <QWidget>
#include <memory>
#include <vector>

#include "cab/control_part.h"
#include "cab/item_part.h"
#include "cab/part.h"

namespace cabwright::cab {

struct PlateContext {
  Seat& seat;
  const SheetStyle& style;
  const Shortcuts& shortcuts;
  QRectF area;   ///< for the plate itself, u: between what comes in and the hands
  QRectF above;  ///< the band above it, for what comes in, u
};

class Plate : public QWidget {
  Q_OBJECT
 public:
  Plate(const PlateContext& context, QWidget* parent);

  [[nodiscard]] const std::vector<Part*>& parts() const { return parts_; }
  [[nodiscard]] const std::vector<ItemPart*>& items() const { return items_; }
  /// The part whose command this is; nullptr: not on this plate.
  [[nodiscard]] ControlPart* findControl(const QString& command) const;
  [[nodiscard]] Part* findPart(const QString& object_name) const;

  /// What the keys come to, in the order in which they do: controls and gauges as they are read,
  /// left to right and from the top down, then likewise the things to look at.
  [[nodiscard]] std::vector<Part*> focusOrder() const;

  void refresh();
  /// The window has another size, or the theme changed.
  void restyle();
  /// How much of the band above a plate of this place wants, u.
  [[nodiscard]] static double bandHeight(unit::Place place);

  /// Words of everything that was drawn in the last full picture, for tests.
  [[nodiscard]] QPixmap groundForTest();

 Q_SIGNALS:
  /// Of a lamp somebody asks why it is as it is.
  void whyAsked(cabwright::cab::Part* lamp);
  /// Whoever is in the cab wants to turn round.
  void turnAsked();

 protected:
  /// What stands still: drawn once for each size and theme.
  virtual void paintGround(drawing::Pen& pen) const = 0;
  /// What moves by itself and is no part (turning engines, smoke); drawn over the ground each time
  /// isLive() says so.
  virtual void paintLive(drawing::Pen& pen) const { Q_UNUSED(pen) }
  /// Whether what paintLive() draws has changed since it was asked last, and where; null: not.
  virtual QRectF findLiveChange() { return {}; }

  void paintEvent(QPaintEvent* event) override;

  [[nodiscard]] const PlateContext& context() const { return context_; }
  [[nodiscard]] Seat& seat() const { return context_.seat; }
  [[nodiscard]] const QRectF& area() const { return context_.area; }

  template <class P, class... A>
  P* add(const QRectF& area, A&&... arguments) {
    auto* part = new P(std::forward<A>(arguments)..., this);
    part->setArea(area);
    keep(part);
    return part;
  }
  /// Controls: seat, style and shortcuts are put in front.
  template <class P, class... A>
  P* addControl(const QRectF& area, A&&... arguments) {
    return add<P>(area, context_.seat, context_.style, context_.shortcuts,
                  std::forward<A>(arguments)...);
  }
  template <class P, class... A>
  P* addShown(const QRectF& area, A&&... arguments) {
    return add<P>(area, context_.seat, context_.style, std::forward<A>(arguments)...);
  }
  ItemPart* addItem(unit::Item item, const ItemShape& shape);

 private:
  void keep(Part* part);
  PlateContext context_;
  std::vector<Part*> parts_;
  std::vector<ItemPart*> items_;
  QPixmap ground_;
};

/// The plate of a place.
[[nodiscard]] std::unique_ptr<Plate> makePlate(unit::Place place, const PlateContext& context,
                                               QWidget* parent);
/// What is seen there when one turns round: of a cab its back wall and door side. nullptr: the
/// place has one plate only.
[[nodiscard]] std::unique_ptr<Plate> makeSecondPlate(unit::Place place, const PlateContext& context,
                                                     QWidget* parent);

}  // namespace cabwright::cab
