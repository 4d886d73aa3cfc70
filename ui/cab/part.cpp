// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/part.h"

#include <QAccessible>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <tuple>

namespace cabwright::cab {

Part::Part(Seat& seat, const SheetStyle& style, QWidget* parent)
    : QWidget(parent), seat_(seat), style_(style) {
  setAttribute(Qt::WA_NoSystemBackground);
}

void Part::setArea(const QRectF& area, const std::vector<QRectF>& hit) {
  area_ = area;
  hit_ = hit;
  restyle();
}

void Part::restyle() {
  const QTransform window = style_.frame.toWindow();
  setGeometry(window.mapRect(area_).toAlignedRect());
  if (!hit_.empty()) {
    QRegion region;
    for (const QRectF& piece : hit_)
      region += window.mapRect(piece).translated(-pos()).toAlignedRect();
    setMask(region);
  }
  update();
}

void Part::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.translate(-pos());
  painter.scale(style_.frame.scale, style_.frame.scale);
  drawing::Pen pen(painter, style_.theme);
  paint(pen);
  if (pointed_) paintPointer(pen);
}

void Part::setPointed(bool pointed) {
  if (pointed == pointed_) return;
  pointed_ = pointed;
  update();
}

void Part::paintPointerUnder(drawing::Pen& pen, QPointF name_middle, double width) const {
  const QPointF at = name_middle + QPointF(0, 8);
  pen.line(at - QPointF(width / 2, 0), at + QPointF(width / 2, 0),
           {drawing::kHeavy, drawing::Tone::kInfo, {}, false});
}

// Corners round the part, in the tone of advice.
void Part::paintPointer(drawing::Pen& pen) const {
  const QRectF box = area_.adjusted(3, 3, -3, -3);
  const double k = std::min({16.0, box.width() / 3, box.height() / 3});
  const drawing::Stroke stroke{drawing::kBold, drawing::Tone::kInfo, {}, false};
  for (const auto& [corner, dx, dy] :
       {std::tuple{box.topLeft(), k, k}, std::tuple{box.topRight(), -k, k},
        std::tuple{box.bottomLeft(), k, -k}, std::tuple{box.bottomRight(), -k, -k}})
    pen.polyline({QPolygonF{corner + QPointF(dx, 0), corner, corner + QPointF(0, dy)}}, stroke);
}

QPointF Part::toSheet(QPointF widget_position) const {
  return (widget_position + pos()) / style_.frame.scale;
}

void Part::announceValue() {
  if (!QAccessible::isActive()) return;
  const PartRole r = role();
  if (r.high > r.low) {
    QAccessibleValueChangeEvent event(this, r.number);
    QAccessible::updateAccessibility(&event);
  } else {
    QAccessibleEvent event(this, QAccessible::NameChanged);
    QAccessible::updateAccessibility(&event);
  }
}

}  // namespace cabwright::cab
