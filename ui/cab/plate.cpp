// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/plate.h"

#include <QPaintEvent>
#include <QPainter>
#include <algorithm>

#include "cab/show_parts.h"

namespace cabwright::cab {
namespace {

constexpr double kBandOfCab = 160, kBandElsewhere = 64;
constexpr double kRow = 60;  // what lies within so much, u, is read as one row

// Rows from the top down, each begun by the highest part that is left.
void inReadingOrder(std::vector<Part*>& parts) {
  const auto x = [](const Part* p) { return p->area().center().x(); };
  const auto y = [](const Part* p) { return p->area().center().y(); };
  std::ranges::stable_sort(parts, {}, y);
  for (auto row = parts.begin(); row != parts.end();) {
    const double end = y(*row) + kRow;
    const auto next = std::find_if(row, parts.end(), [&](const Part* p) { return y(p) > end; });
    std::ranges::stable_sort(row, next, {}, x);
    row = next;
  }
}

}  // namespace

Plate::Plate(const PlateContext& context, QWidget* parent) : QWidget(parent), context_(context) {
  setAttribute(Qt::WA_NoSystemBackground);
}

double Plate::bandHeight(unit::Place place) {
  return unit::cabOf(place) >= 0 ? kBandOfCab : kBandElsewhere;
}

void Plate::keep(Part* part) {
  parts_.push_back(part);
  if (auto* item = qobject_cast<ItemPart*>(part)) items_.push_back(item);
  if (auto* lamp = qobject_cast<LampPart*>(part)) {
    connect(lamp, &LampPart::asked, this, [this](LampPart* asked) { Q_EMIT whyAsked(asked); });
  }
  part->show();
}

ItemPart* Plate::addItem(unit::Item item, const ItemShape& shape) {
  auto* part = new ItemPart(context_.seat, context_.style, item, shape, this);
  keep(part);
  return part;
}

ControlPart* Plate::findControl(const QString& command) const {
  for (Part* part : parts_) {
    auto* control = qobject_cast<ControlPart*>(part);
    if (control != nullptr && control->command() == command) return control;
  }
  return nullptr;
}

Part* Plate::findPart(const QString& object_name) const {
  for (Part* part : parts_) {
    if (part->objectName() == object_name) return part;
  }
  return nullptr;
}

std::vector<Part*> Plate::focusOrder() const {
  std::vector<Part*> controls, things;
  for (Part* part : parts_) {
    if ((part->focusPolicy() & Qt::TabFocus) == 0) continue;
    (qobject_cast<ItemPart*>(part) != nullptr ? things : controls).push_back(part);
  }
  inReadingOrder(controls);
  inReadingOrder(things);
  controls.insert(controls.end(), things.begin(), things.end());
  return controls;
}

void Plate::refresh() {
  for (Part* part : parts_) part->refresh();
  const QRectF changed = findLiveChange();
  if (!changed.isNull())
    update(context_.style.frame.toWindow().mapRect(changed).toAlignedRect().adjusted(-2, -2, 2, 2));
}

void Plate::restyle() {
  ground_ = {};
  for (Part* part : parts_) part->restyle();
  update();
}

QPixmap Plate::groundForTest() { return ground_; }

void Plate::paintEvent(QPaintEvent* event) {
  const double ratio = devicePixelRatioF();
  const QSize wanted = size() * ratio;
  if (ground_.size() != wanted) {
    ground_ = QPixmap(wanted);
    ground_.setDevicePixelRatio(ratio);
    ground_.fill(Qt::transparent);
    QPainter painter(&ground_);
    painter.scale(context_.style.frame.scale, context_.style.frame.scale);
    drawing::Pen pen(painter, context_.style.theme);
    paintGround(pen);
    for (const ItemPart* item : items_) item->paintLeader(pen);
  }
  QPainter painter(this);
  const QRectF target(event->rect());
  painter.drawPixmap(target, ground_, QRectF(target.topLeft() * ratio, target.size() * ratio));
  painter.setClipRect(event->rect());
  painter.scale(context_.style.frame.scale, context_.style.frame.scale);
  drawing::Pen pen(painter, context_.style.theme);
  paintLive(pen);
}

}  // namespace cabwright::cab
