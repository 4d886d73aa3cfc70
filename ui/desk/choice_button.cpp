// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/choice_button.h"

#include <QKeyEvent>
#include <QPainter>
#include <cmath>

#include "drawing/pen.h"

namespace cabwright::desk {

using drawing::Tone;

namespace {

constexpr double kHeight = 38, kPad = 12, kRim = 3;  // the rim is for the ring of focus

}  // namespace

ChoiceButton::ChoiceButton(const after::SheetLook& look, const QString& words, QWidget* parent)
    : QAbstractButton(parent), look_(look) {
  setText(words);
  setCheckable(true);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
}

// As for the bold word, so that nothing moves when it is chosen.
QSizeF ChoiceButton::sizeInSheet() const {
  return {std::ceil(drawing::textWidth(text(), drawing::kText, true)) + 2 * (kPad + kRim), kHeight};
}

QSize ChoiceButton::sizeHint() const {
  const QSizeF size = sizeInSheet() * look_.scale;
  return {static_cast<int>(std::ceil(size.width())), static_cast<int>(std::ceil(size.height()))};
}

void ChoiceButton::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.scale(look_.scale, look_.scale);
  drawing::Pen pen(painter, look_.theme);
  const double w = width() / look_.scale, h = height() / look_.scale;
  const bool strong = isChecked() && isEnabled();
  const Tone fill = isDown()       ? Tone::kHand
                    : strong       ? Tone::kInk
                    : underMouse() ? Tone::kWash
                                   : Tone::kFace;
  const Tone word = isDown() || strong ? Tone::kPaper : isEnabled() ? Tone::kInk : Tone::kInk2;
  pen.rect({kRim, kRim, w - 2 * kRim, h - 2 * kRim},
           {drawing::kThin, isEnabled() ? Tone::kInk : Tone::kRule}, fill, 4);
  pen.text({w / 2, h / 2 + 0.36 * drawing::kText}, text(),
           {.anchor = drawing::Anchor::kMiddle, .bold = strong, .tone = word, .on = fill});
  if (hasFocus())
    pen.rect({1.6, 1.6, w - 3.2, h - 3.2}, {drawing::kFocus, Tone::kHand}, Tone::kNone, 5);
}

void ChoiceButton::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

void ChoiceButton::enterEvent(QEnterEvent* event) {
  QAbstractButton::enterEvent(event);
  update();
}

void ChoiceButton::leaveEvent(QEvent* event) {
  QAbstractButton::leaveEvent(event);
  update();
}

double placeInRow(const std::vector<ChoiceButton*>& buttons, double left, double top,
                  double scale) {
  for (ChoiceButton* button : buttons) {
    const QSizeF size = button->sizeInSheet();
    button->setGeometry(
        QRectF(left * scale, top * scale, size.width() * scale, size.height() * scale)
            .toAlignedRect());
    left += size.width() + 2;
  }
  return left - 2;
}

}  // namespace cabwright::desk
