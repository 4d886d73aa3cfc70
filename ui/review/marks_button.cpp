// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/marks_button.h"

#include <QKeyEvent>
#include <QPainter>
#include <cmath>

#include "drawing/key_cap.h"

namespace cabwright::review_room {

using drawing::Tone;

namespace {

constexpr double kHeight = 40, kPad = 14, kRim = 2.5, kGap = 9;
constexpr double kSlimHeight = 36, kSlimPad = 9;

}  // namespace

MarkButton::MarkButton(const after::SheetLook& look, const QString& words,
                       const QString& object_name, QWidget* parent)
    : QAbstractButton(parent), look_(look) {
  setText(words);
  setObjectName(object_name);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
}

void MarkButton::setStrong(bool strong) {
  strong_ = strong;
  updateGeometry();
  update();
}

void MarkButton::setSlim(bool slim) {
  slim_ = slim;
  updateGeometry();
  update();
}

void MarkButton::setKey(const QString& key) {
  key_ = key;
  updateGeometry();
  update();
}

double MarkButton::wordsWidth() const {
  const double words = drawing::textWidth(text(), drawing::kText, strong_);
  return words + (key_.isEmpty() ? 0 : kGap + drawing::keyCapWidth(key_));
}

QSize MarkButton::sizeHint() const {
  const double width = std::ceil(wordsWidth()) + 2 * (slim_ ? kSlimPad : kPad);
  const double height = slim_ ? kSlimHeight : kHeight;
  return {static_cast<int>(std::ceil(std::max(width, height) * look_.scale)),
          static_cast<int>(std::ceil(height * look_.scale))};
}

void MarkButton::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.scale(look_.scale, look_.scale);
  drawing::Pen pen(painter, look_.theme);
  const double w = width() / look_.scale, h = height() / look_.scale;
  const bool inked = isChecked();
  const Tone fill = isDown()       ? Tone::kHand
                    : inked        ? Tone::kInk
                    : underMouse() ? Tone::kWash
                                   : Tone::kFace;
  const Tone ink = isDown() || inked ? Tone::kPaper : isEnabled() ? Tone::kInk : Tone::kInk2;
  pen.rect({kRim, kRim, w - 2 * kRim, h - 2 * kRim},
           {strong_ ? drawing::kRing : drawing::kThin, isEnabled() ? Tone::kInk : Tone::kRule},
           fill, 4);
  const double all = wordsWidth(), left = (w - all) / 2;
  const double words = pen.text({left, h / 2 + 0.36 * drawing::kText}, text(),
                                {.bold = strong_, .tone = ink, .on = fill});
  if (!key_.isEmpty()) {
    const double cap = drawing::keyCapWidth(key_);
    drawing::paintKeyCap(pen, {left + words + kGap + cap / 2, h / 2}, key_);
  }
  if (hasFocus())
    pen.rect({1.6, 1.6, w - 3.2, h - 3.2}, {drawing::kFocus, Tone::kHand}, Tone::kNone, 5);
}

void MarkButton::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

void MarkButton::enterEvent(QEnterEvent* event) {
  QAbstractButton::enterEvent(event);
  update();
}

void MarkButton::leaveEvent(QEvent* event) {
  QAbstractButton::leaveEvent(event);
  update();
}

}  // namespace cabwright::review_room
