// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/sheet_button.h"

#include <QKeyEvent>
#include <QPainter>
#include <cmath>

#include "drawing/pen.h"

namespace cabwright::after {

using drawing::Tone;

namespace {

constexpr double kHeight = 42, kPad = 15, kRim = 3;  // the rim is for the ring of focus

}  // namespace

SheetButton::SheetButton(const SheetLook& look, const QString& words, QWidget* parent)
    : QAbstractButton(parent), look_(look) {
  setText(words);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
}

void SheetButton::setStrong(bool strong) {
  strong_ = strong;
  update();
}

QSizeF SheetButton::sizeInSheet() const {
  return {std::ceil(drawing::textWidth(text(), drawing::kText, strong_)) + 2 * kPad, kHeight};
}

QSize SheetButton::sizeHint() const {
  const QSizeF size = sizeInSheet() * look_.scale;
  return {static_cast<int>(std::ceil(size.width())), static_cast<int>(std::ceil(size.height()))};
}

void SheetButton::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.scale(look_.scale, look_.scale);
  drawing::Pen pen(painter, look_.theme);
  const double w = width() / look_.scale, h = height() / look_.scale;
  const Tone fill = isDown() ? Tone::kHand : underMouse() ? Tone::kWash : Tone::kFace;
  const Tone ink = isDown() ? Tone::kPaper : isEnabled() ? Tone::kInk : Tone::kInk2;
  pen.rect({kRim, kRim, w - 2 * kRim, h - 2 * kRim},
           {strong_ ? drawing::kRing : drawing::kThin, isEnabled() ? Tone::kInk : Tone::kRule},
           fill, 4);
  pen.text({w / 2, h / 2 + 0.36 * drawing::kText}, text(),
           {.anchor = drawing::Anchor::kMiddle, .bold = strong_, .tone = ink, .on = fill});
  if (hasFocus())
    pen.rect({1.6, 1.6, w - 3.2, h - 3.2}, {drawing::kFocus, Tone::kHand}, Tone::kNone, 5);
}

void SheetButton::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

void SheetButton::enterEvent(QEnterEvent* event) {
  QAbstractButton::enterEvent(event);
  update();
}

void SheetButton::leaveEvent(QEvent* event) {
  QAbstractButton::leaveEvent(event);
  update();
}

}  // namespace cabwright::after
