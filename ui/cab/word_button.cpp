// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/word_button.h"

#include "drawing/furniture.h"
#include "drawing/key_cap.h"

namespace cabwright::cab {

using drawing::Tone;

WordButton::WordButton(Seat& seat, const SheetStyle& style, QString word, QWidget* parent)
    : Part(seat, style, parent), word_(std::move(word)) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setAccessibleName(word_);
}

void WordButton::setWord(const QString& word) {
  if (word == word_) return;
  word_ = word;
  setAccessibleName(word);
  update();
}

void WordButton::setKey(const QString& key) {
  if (key == key_) return;
  key_ = key;
  update();
}

void WordButton::setSign(drawing::VerdictSign sign) {
  sign_ = sign;
  update();
}

void WordButton::setUsable(bool usable) {
  if (usable == usable_) return;
  usable_ = usable;
  setFocusPolicy(usable ? Qt::StrongFocus : Qt::NoFocus);
  update();
}

void WordButton::setMarked(bool marked) {
  if (marked == marked_) return;
  marked_ = marked;
  update();
}

PartRole WordButton::role() const {
  PartRole r;
  r.kind = PartRole::Kind::kButton;
  r.name = accessibleName();
  r.value = usable_ ? QString() : tr("not now");
  r.description = description_;
  if (!key_.isEmpty()) r.description += tr(". Key: %1").arg(key_);
  return r;
}

bool WordButton::activate() {
  if (!usable_) return false;
  Q_EMIT pressed();
  return true;
}

void WordButton::paint(drawing::Pen& pen) const {
  const QRectF box = area().adjusted(5, 4, -5, -4);
  const Tone tone = down_ ? Tone::kHand : usable_ ? Tone::kInk : Tone::kRule;
  pen.rect(box, {marked_ ? drawing::kBold : drawing::kThin, tone, {}, false},
           down_ || marked_ ? Tone::kWash : Tone::kFace, 4);
  double x = box.left() + 10;
  const double y = box.center().y();
  if (sign_ != drawing::VerdictSign::kNone) {
    drawing::paintVerdict(pen, {x + 8, y}, sign_, 8);
    x += 24;
  }
  const bool cap = style().show_keys && !key_.isEmpty();
  const double key_room = cap ? drawing::keyCapWidth(key_) + 12 : 0;
  const double room = box.right() - 8 - key_room - x;
  pen.text({x, y + 6.5}, drawing::elideText(word_, room, drawing::kText, marked_),
           {.bold = marked_,
            .tone = usable_ ? Tone::kInk : Tone::kInk2,
            .on = down_ || marked_ ? Tone::kWash : Tone::kFace});
  if (cap) drawing::paintKeyCap(pen, {box.right() - 6 - drawing::keyCapWidth(key_) / 2, y}, key_);
  if (hasFocus()) drawing::paintFocusRing(pen, box.adjusted(-1, -1, 1, 1), 5);
}

void WordButton::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !usable_) return;
  down_ = true;
  update();
}

void WordButton::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !down_) return;
  down_ = false;
  update();
  if (rect().contains(event->position().toPoint())) activate();
}

void WordButton::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space || event->key() == Qt::Key_Return ||
      event->key() == Qt::Key_Enter) {
    activate();
  } else {
    event->ignore();
  }
}

void WordButton::focusInEvent(QFocusEvent* event) {
  Part::focusInEvent(event);
  Q_EMIT pointedAt(true);
  update();
}

void WordButton::focusOutEvent(QFocusEvent* event) {
  Part::focusOutEvent(event);
  Q_EMIT pointedAt(false);
  update();
}

void WordButton::enterEvent(QEnterEvent* event) {
  Part::enterEvent(event);
  Q_EMIT pointedAt(true);
}

void WordButton::leaveEvent(QEvent* event) {
  Part::leaveEvent(event);
  Q_EMIT pointedAt(false);
}

}  // namespace cabwright::cab
