// SPDX-License-Identifier: GPL-3.0-or-later
#include <QKeyEvent>
#include <QMouseEvent>

#include "cab/plate_cab_round.h"
#include "drawing/furniture.h"
#include "drawing/key_cap.h"

namespace cabwright::cab {

using drawing::Tone;

namespace {

constexpr double kArrow = 32, kGap = 10;

}  // namespace

TurnPart::TurnPart(Seat& seat, const SheetStyle& style, const Shortcuts& shortcuts, QString words,
                   QPointF right_baseline, QWidget* parent)
    : Part(seat, style, parent),
      shortcuts_(shortcuts),
      words_(std::move(words)),
      at_(right_baseline) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setAccessibleName(words_);
  setObjectName(command());
}

QString TurnPart::keyText() const {
  return style().show_keys ? shortcuts_.text(command()) : QString();
}

double TurnPart::width() const {
  const double cap = keyText().isEmpty() ? 0 : kGap + drawing::keyCapWidth(keyText());
  return kArrow + drawing::textWidth(words_, drawing::kText, true) + cap;
}

PartRole TurnPart::role() const {
  PartRole r;
  r.kind = PartRole::Kind::kButton;
  r.name = words_;
  if (!keyText().isEmpty()) r.description = tr("Key: %1").arg(keyText());
  return r;
}

bool TurnPart::activate() {
  Q_EMIT turned();
  return true;
}

void TurnPart::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) activate();
}

void TurnPart::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter) {
    activate();
  } else {
    event->ignore();
  }
}

void TurnPart::focusInEvent(QFocusEvent* event) {
  Part::focusInEvent(event);
  update();
}

void TurnPart::focusOutEvent(QFocusEvent* event) {
  Part::focusOutEvent(event);
  update();
}

void TurnPart::paint(drawing::Pen& pen) const {
  const QPointF from(at_.x() - width(), at_.y());
  const QPointF c = from + QPointF(12, -6.5);
  pen.arc(c, 9, -60, 200, {});
  const QPointF tip = drawing::pointAt(c, 9, -60);
  pen.polygon({{tip + QPointF(-4, -3), tip + QPointF(5, -5), tip + QPointF(1, 5)}},
              drawing::kNoLine, Tone::kInk);
  const double w = pen.text(from + QPointF(kArrow, 0), words_, {.bold = true});
  if (!keyText().isEmpty())
    drawing::paintKeyCap(
        pen, from + QPointF(kArrow + w + kGap + drawing::keyCapWidth(keyText()) / 2, -6.5),
        keyText());
  if (hasFocus())
    pen.rect({from.x() - 2, at_.y() - 23, width() + 4, 33},
             {drawing::kFocus, Tone::kHand, {}, false}, Tone::kNone, 6);
}

}  // namespace cabwright::cab
