// SPDX-License-Identifier: GPL-3.0-or-later
// Where the parts of the sheet afterwards stand.
#include <QPainter>
#include <QScrollArea>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "after/after_view.h"
#include "drawing/furniture.h"

namespace cabwright::after {

using drawing::Tone;

namespace {

constexpr double kSide = 40, kTop = 34, kGutter = 24, kFoot = 74, kBar = 14;
constexpr double kColumn = 452, kWidestColumn = 560, kBetween = 12;

QRect toPixels(const QRectF& u, double k) {
  return QRectF(u.topLeft() * k, u.size() * k).toAlignedRect();
}

// A wider window gives width to the words first, then to the strip.
double columnWidth(const drawing::SheetFrame& frame) {
  return std::min(kWidestColumn, kColumn + std::max(0.0, frame.width - 1600) * 0.5);
}

}  // namespace

void AfterView::resizeEvent(QResizeEvent*) { arrange(); }

void AfterView::arrange() {
  frame_ = drawing::calcSheetFrame(size());
  look_.scale = frame_.scale;
  const double k = look_.scale, width = frame_.width - 2 * kSide;
  head_->takeWidth(width);
  head_->move(static_cast<int>(std::lround(kSide * k)), static_cast<int>(std::lround(kTop * k)));
  head_bottom_ = kTop + head_->height() / k;
  const double top = head_bottom_ + 22, bottom = frame_.height - kFoot - 24;
  const double column = columnWidth(frame_);
  strip_->setGeometry(toPixels({kSide, top, width - column - kGutter, bottom - top}, k));
  strip_->restyle();
  scroll_->setGeometry(toPixels({kSide + width - column, top, column, bottom - top}, k));
  restyleScrollBar();
  arrangeColumn();
  arrangeFoot();
  update();
}

void AfterView::arrangeColumn() {
  const double k = look_.scale, width = columnWidth(frame_) - kBar - 6;
  double y = 0;
  for (SheetBlock* block : blocks_) {
    block->move(0, static_cast<int>(std::lround(y)));
    y += block->takeWidth(width) + kBetween * k;
  }
  column_->setFixedSize(static_cast<int>(std::lround(width * k)), static_cast<int>(std::lround(y)));
}

void AfterView::arrangeFoot() {
  const double k = look_.scale;
  double right = frame_.width - kSide;
  for (auto it = buttons_.rbegin(); it != buttons_.rend(); ++it) {
    const QSizeF size = (*it)->sizeInSheet();
    right -= size.width();
    (*it)->setGeometry(toPixels({right, frame_.height - kFoot, size.width(), size.height()}, k));
    right -= 10;
  }
}

void AfterView::restyleScrollBar() {
  const auto name = [this](Tone tone) { return drawing::colorOf(look_.theme, tone).name(); };
  const int wide = std::max(8, static_cast<int>(std::lround(kBar * look_.scale)));
  scroll_->setStyleSheet(
      QStringLiteral("QScrollArea, QScrollArea > QWidget > QWidget { background: %1; }"
                     "QScrollBar:vertical { background: %1; width: %3px; margin: 0; }"
                     "QScrollBar::handle:vertical { background: %2; border-radius: %4px;"
                     " min-height: 32px; }"
                     "QScrollBar::add-line:vertical, QScrollBar::sub-line:vertical { height: 0; }"
                     "QScrollBar::add-page:vertical, QScrollBar::sub-page:vertical"
                     " { background: %5; border-radius: %4px; }")
          .arg(name(Tone::kPaper), name(Tone::kRule), QString::number(wide),
               QString::number(wide / 2 - 1), name(Tone::kShade)));
}

void AfterView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), drawing::colorOf(look_.theme, Tone::kPaper));
  painter.scale(look_.scale, look_.scale);
  drawing::Pen pen(painter, look_.theme);
  drawing::paintFrame(pen, frame_);
  const double foot = frame_.height - kFoot - 14;
  for (const double y : {head_bottom_ + 8, foot})
    pen.line({kSide, y}, {frame_.width - kSide, y}, {drawing::kHairline, Tone::kRule});
  pen.text({kSide, foot + (said_.isEmpty() ? 42 : 29)},
           tr("A training aid only: the rule book and a licensed instructor decide."),
           {.tone = Tone::kInk2});
  if (!said_.isEmpty()) {
    const double room = buttons_.front()->x() / look_.scale - kSide - 20;
    pen.text({kSide, foot + 56}, drawing::elideText(said_, room));
  }
}

}  // namespace cabwright::after
