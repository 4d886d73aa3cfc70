// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/spot_button.h"

#include <QKeyEvent>
#include <QPainter>

#include "drawing/furniture.h"

namespace cabwright::desk {

using drawing::Pen;
using drawing::Tone;

namespace {

constexpr double kSmall = 8, kLarge = 15;

QPolygonF diamond(QPointF at, double half) {
  return QPolygonF({at + QPointF(0, -half), at + QPointF(half, 0), at + QPointF(0, half),
                    at + QPointF(-half, 0)});
}

}  // namespace

void drawSpotMark(Pen& pen, QPointF at, const SpotState& state) {
  using Kind = SpotState::Kind;
  if (state.kind == Kind::kSound) {
    pen.polygon(diamond(at, kSmall), {drawing::kNorm, Tone::kInk, {}, false}, Tone::kPaper);
    return;
  }
  const bool there = state.kind == Kind::kThere;
  const drawing::Stroke edge{
      drawing::kBold, Tone::kBad,
      state.kind == Kind::kArmed ? std::vector<double>{4, 3} : std::vector<double>{}, false};
  pen.polygon(diamond(at, kLarge), drawing::kNoLine, Tone::kPaper);
  if (state.kind == Kind::kGrowing) {
    QPolygonF lower({at + QPointF(kLarge, 0), at + QPointF(0, kLarge), at + QPointF(-kLarge, 0)});
    pen.polygon(lower, drawing::kNoLine, Tone::kBad);
  }
  pen.polygon(diamond(at, kLarge), edge, there ? Tone::kBad : Tone::kNone);
  if (state.kind == Kind::kGrowing) return;  // half ink, half paper: no room for a figure
  pen.text(at + QPointF(0, 0.365 * drawing::kText), QString::number(state.count),
           {.anchor = drawing::Anchor::kMiddle,
            .bold = true,
            .tone = there ? Tone::kPaper : Tone::kBad,
            .on = there ? Tone::kBad : Tone::kPaper});
}

SpotButton::SpotButton(UnitView& view, std::size_t spot)
    : QAbstractButton(&view), view_(view), spot_(spot), faults_(faultsAt(spot).size()) {
  setFocusPolicy(Qt::ClickFocus);
  setObjectName(QString::fromUtf8(spotTable()[spot].id.data(),
                                  static_cast<qsizetype>(spotTable()[spot].id.size())));
  describe();
}

void SpotButton::describe() {
  setAccessibleName(nameOf(spotTable()[spot_]));
  QString words = tr("%n fault(s) can be put in here", nullptr, static_cast<int>(faults_));
  if (state_.count > 0) words += tr("; %1: %2").arg(wordOf(state_.kind)).arg(state_.count);
  setAccessibleDescription(words);
}

void SpotButton::setState(const SpotState& state) {
  if (state == state_) return;
  state_ = state;
  describe();
  update();
}

void SpotButton::setChosen(bool chosen) {
  if (chosen == chosen_) return;
  chosen_ = chosen;
  update();
}

void SpotButton::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.translate(QRectF(rect()).center());
  painter.scale(view_.scale_, view_.scale_);
  Pen pen(painter, view_.desk_.style().theme);
  if (isDown() || underMouse()) pen.circle({0, 0}, kHalf - 1, drawing::kNoLine, Tone::kWash);
  if (chosen_)
    pen.circle({0, 0}, kHalf - 1.6, {drawing::kRing, Tone::kHand, {}, false}, Tone::kWash);
  drawSpotMark(pen, {0, 0}, state_);
  if (hasFocus())
    pen.rect(QRectF(-kHalf + 2, -kHalf + 2, 2 * kHalf - 4, 2 * kHalf - 4),
             {drawing::kFocus, Tone::kHand, {}, false}, Tone::kNone, 6);
}

void SpotButton::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
      view_.step(spot_, static_cast<Qt::Key>(event->key()));
      return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      click();
      return;
    default:
      QAbstractButton::keyPressEvent(event);
  }
}

void SpotButton::focusInEvent(QFocusEvent* event) {
  QAbstractButton::focusInEvent(event);
  view_.setCurrent(spot_);
  view_.setPointed(spot_);
}

void SpotButton::enterEvent(QEnterEvent* event) {
  QAbstractButton::enterEvent(event);
  view_.setPointed(spot_);
  update();
}

}  // namespace cabwright::desk
