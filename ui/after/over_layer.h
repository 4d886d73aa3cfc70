// SPDX-License-Identifier: GPL-3.0-or-later
// The layer above curves: Qt Charts would cover what the widget itself paints there.
#pragma once

#include <QPainter>
#include <QWidget>
#include <functional>
#include <utility>

#include "after/sheet_look.h"
#include "drawing/pen.h"

namespace cabwright::after {

class OverLayer : public QWidget {
 public:
  using Paint = std::function<void(drawing::Pen&)>;

  OverLayer(const SheetLook& look, QWidget* parent, Paint paint)
      : QWidget(parent), look_(look), paint_(std::move(paint)) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.scale(look_.scale, look_.scale);
    drawing::Pen pen(painter, look_.theme);
    paint_(pen);
  }

 private:
  const SheetLook& look_;
  Paint paint_;
};

}  // namespace cabwright::after
