// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/word_button.h"

#include "drawing/furniture.h"
#include "drawing/key_cap.h"

namespace cabwright::cab {

using drawing::Tone;

namespace {

constexpr double kSide = 5;  // of the area, for the ring that says the focus

}  // namespace

// Beside the word, u.
struct WordButton::Gaps {
  double left, sign, before_key, after_key, right;

  static const Gaps kWide, kNarrow;
};
constexpr WordButton::Gaps WordButton::Gaps::kWide{10, 24, 14, 6, 8};
constexpr WordButton::Gaps WordButton::Gaps::kNarrow{6, 19, 5, 4, 4};

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

bool WordButton::hasCap() const { return style().show_keys && !key_.isEmpty(); }

double WordButton::boxWidth(const Gaps& gaps, bool cap, bool bold) const {
  const double sign = sign_ == drawing::VerdictSign::kNone ? 0 : gaps.sign;
  const double end =
      cap ? gaps.before_key + drawing::keyCapWidth(key_) + gaps.after_key : gaps.right;
  return gaps.left + sign + drawing::textWidth(word_, drawing::kText, bold) + end;
}

double WordButton::neededWidth(bool with_key, bool bold) const {
  return boxWidth(Gaps::kNarrow, with_key && hasCap(), bold) + 2 * kSide;
}

void WordButton::paint(drawing::Pen& pen) const {
  const QRectF box = area().adjusted(kSide, 4, -kSide, -4);
  const Tone tone = down_ ? Tone::kHand : usable_ ? Tone::kInk : Tone::kRule;
  pen.rect(box, {marked_ ? drawing::kBold : drawing::kThin, tone, {}, false},
           down_ || marked_ ? Tone::kWash : Tone::kFace, 4);
  // The word comes first: a small window leaves less beside it, and then no key.
  bool cap = hasCap();
  const Gaps& gaps = boxWidth(Gaps::kWide, cap, true) <= box.width() ? Gaps::kWide : Gaps::kNarrow;
  cap = cap && boxWidth(gaps, cap, marked_) <= box.width();
  const bool bold = marked_ && boxWidth(gaps, cap, true) <= box.width();
  double x = box.left() + gaps.left;
  const double y = box.center().y();
  if (sign_ != drawing::VerdictSign::kNone) {
    drawing::paintVerdict(pen, {x + 8, y}, sign_, 8);
    x += gaps.sign;
  }
  const double key_room =
      cap ? gaps.before_key + drawing::keyCapWidth(key_) + gaps.after_key : gaps.right;
  pen.text({x, y + 6.5},
           drawing::elideText(word_, box.right() - key_room - x + 0.5, drawing::kText, bold),
           {.bold = bold,
            .tone = usable_ ? Tone::kInk : Tone::kInk2,
            .on = down_ || marked_ ? Tone::kWash : Tone::kFace});
  if (cap)
    drawing::paintKeyCap(pen, {box.right() - gaps.after_key - drawing::keyCapWidth(key_) / 2, y},
                         key_);
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
  update();
}

void WordButton::focusOutEvent(QFocusEvent* event) {
  Part::focusOutEvent(event);
  update();
}

}  // namespace cabwright::cab
