// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/transport_bar.h"

#include <QBoxLayout>
#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "drawing/furniture.h"
#include "drawing/key_cap.h"
#include "review_room/review_look.h"

namespace cabwright::review_room {

using drawing::Tone;

namespace {

constexpr double kHigh = 40, kRing = 16, kSideU = 6, kCapGap = 5;
constexpr std::size_t kStandardRate = 3;

struct StepInfo {
  Step step;
  const char* key;
  const char* what;
};

// Arrows, Space and the page keys; what goes by with a second key has no cap.
constexpr std::array<StepInfo, kSteps> kStepTable{
    {{Step::kVerdictBack, "PgUp", QT_TRANSLATE_NOOP("TransportBar", "Verdict before")},
     {Step::kActBack, "", QT_TRANSLATE_NOOP("TransportBar", "Action before (Ctrl+Left)")},
     {Step::kSecondBack, "", QT_TRANSLATE_NOOP("TransportBar", "One second back (Shift+Left)")},
     {Step::kFrameBack, "\u2190", QT_TRANSLATE_NOOP("TransportBar", "One recorded moment back")},
     {Step::kPlay, "Space", QT_TRANSLATE_NOOP("TransportBar", "Play and stop")},
     {Step::kFrameOn, "\u2192", QT_TRANSLATE_NOOP("TransportBar", "One recorded moment on")},
     {Step::kSecondOn, "", QT_TRANSLATE_NOOP("TransportBar", "One second on (Shift+Right)")},
     {Step::kActOn, "", QT_TRANSLATE_NOOP("TransportBar", "Next action (Ctrl+Right)")},
     {Step::kVerdictOn, "PgDn", QT_TRANSLATE_NOOP("TransportBar", "Next verdict")}}};

bool isBack(Step step) { return step < Step::kPlay; }

QPolygonF triangle(QPointF tip, double side, double way) {
  return {{tip, tip + QPointF(-way * side, -side * 0.62), tip + QPointF(-way * side, side * 0.62)}};
}

}  // namespace

TransportButton::TransportButton(Step step, const QString& key, const after::SheetLook& look,
                                 QWidget* parent)
    : QAbstractButton(parent), step_(step), key_(key), look_(look) {
  setCheckable(step == Step::kPlay);
  setFocusPolicy(Qt::TabFocus);
  setCursor(Qt::PointingHandCursor);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void TransportButton::setRoomForKey(bool room) {
  if (room == room_for_key_) return;
  room_for_key_ = room;
  updateGeometry();
  update();
}

QSize TransportButton::sizeHint() const {
  const double cap = showsKey() ? drawing::keyCapWidth(key_) + kCapGap : 0;
  const QSizeF u(2 * kRing + 2 * kSideU + cap, kHigh);
  return (u * look_.scale).toSize() + QSize(1, 1);
}

// What it does as a drawing: an arrow for a moment, two for a second, a bar where an action is the
// end of it, and the sign of a verdict.
void TransportButton::paintSign(drawing::Pen& pen, QPointF at) const {
  const double way = isBack(step_) ? -1 : 1;
  switch (step_) {
    case Step::kPlay:
      if (isChecked()) {
        for (const double dx : {-4.0, 4.0})
          pen.line(at + QPointF(dx, -6), at + QPointF(dx, 6), {3.4, Tone::kInk});
      } else {
        pen.polygon(triangle(at + QPointF(8, 0), 13, 1), drawing::kNoLine, Tone::kInk);
      }
      return;
    case Step::kFrameBack:
    case Step::kFrameOn:
      pen.polygon(triangle(at + QPointF(way * 4, 0), 9, way), drawing::kNoLine, Tone::kInk);
      pen.line(at + QPointF(way * 6, -6), at + QPointF(way * 6, 6), {drawing::kNorm, Tone::kInk});
      return;
    case Step::kSecondBack:
    case Step::kSecondOn:
      pen.polygon(triangle(at, 8, way), drawing::kNoLine, Tone::kInk);
      pen.polygon(triangle(at + QPointF(way * 8, 0), 8, way), drawing::kNoLine, Tone::kInk);
      return;
    case Step::kActBack:
    case Step::kActOn:
      pen.polygon(triangle(at + QPointF(way * 2, 0), 8, way), drawing::kNoLine, Tone::kInk);
      for (const double dx : {5.0, 9.0})
        pen.line(at + QPointF(way * dx, -7), at + QPointF(way * dx, 7),
                 {drawing::kThin, Tone::kInk});
      return;
    case Step::kVerdictBack:
    case Step::kVerdictOn:
      pen.polygon(triangle(at + QPointF(way * -2, 0), 8, way), drawing::kNoLine, Tone::kInk);
      pen.circle(at + QPointF(way * 5, 0), 4.6, {drawing::kNorm, Tone::kInk});
      return;
  }
}

void TransportButton::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.scale(look_.scale, look_.scale);
  drawing::Pen pen(painter, look_.theme);
  const QPointF at(kSideU + kRing, kHigh / 2);
  const bool hot = underMouse() || isDown();
  pen.circle(at, kRing,
             {hasFocus() ? drawing::kFocus : drawing::kNorm, hasFocus() ? Tone::kHand : Tone::kInk},
             hot ? Tone::kWash : Tone::kFace);
  paintSign(pen, at);
  if (showsKey())
    drawing::paintKeyCap(
        pen, {at.x() + kRing + kCapGap + drawing::keyCapWidth(key_) / 2, kHigh / 2}, key_);
}

void TransportButton::enterEvent(QEnterEvent*) { update(); }

void TransportButton::leaveEvent(QEvent*) { update(); }

TransportBar::TransportBar(const after::SheetLook& look, QWidget* parent)
    : QWidget(parent),
      events_(new QLabel(this)),
      time_(new QLabel(this)),
      rates_(new drawing::ChoiceBox(this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(2);
  row->setSizeConstraint(QLayout::SetNoConstraint);  // narrower, it goes without the keys
  for (const StepInfo& info : kStepTable) {
    const QString key = QString::fromUtf8(info.key);
    auto* button = new TransportButton(info.step, key, look, this);
    const QString what = QCoreApplication::translate("TransportBar", info.what);
    button->setAccessibleName(what);
    button->setToolTip(key.isEmpty() ? what : tr("%1: key %2").arg(what, key));
    connect(button, &QAbstractButton::clicked, this,
            [this, step = info.step] { Q_EMIT stepAsked(step); });
    buttons_[static_cast<std::size_t>(info.step)] = button;
    row->addWidget(button);
  }
  rates_->setAccessibleName(tr("How fast it plays"));
  rates_->setToolTip(tr("How fast it plays: keys up and down"));
  rates_->setFocusPolicy(Qt::TabFocus);
  for (const double rate : kRates) rates_->addItem(QStringLiteral("×") + QString::number(rate));
  rates_->setCurrentIndex(kStandardRate);
  row->addSpacing(8);
  row->addWidget(rates_);
  row->addSpacing(12);
  events_->setTextFormat(Qt::PlainText);
  events_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  events_->setAccessibleName(tr("What is at this moment"));
  row->addWidget(events_, 1);
  row->addSpacing(12);
  time_->setObjectName(QStringLiteral("clock"));
  time_->setAccessibleName(tr("Moment of the session"));
  row->addWidget(time_);
}

TransportButton* TransportBar::button(Step step) const {
  return buttons_[static_cast<std::size_t>(step)];
}

void TransportBar::setPlaying(bool playing) { button(Step::kPlay)->setChecked(playing); }

void TransportBar::setEvents(const QString& words) {
  happens_ = words;
  events_->setToolTip(words);
  fit();
}

// Words that are cut say so: "Line 1" of "Line 10, ..." would be another line.
void TransportBar::fit() {
  events_->setText(events_->fontMetrics().elidedText(happens_, Qt::ElideRight, events_->width()));
}

// What the keys stand beside can be pressed, and the time be read, before the keys have room.
void TransportBar::arrange() {
  for (TransportButton* button : buttons_) button->setRoomForKey(true);
  if (layout()->minimumSize().width() > width())
    for (TransportButton* button : buttons_) button->setRoomForKey(false);
  layout()->activate();
  fit();
}

void TransportBar::setTime(const QString& now, const QString& end) {
  time_->setText(tr("%1 of %2").arg(now, end));
}

void TransportBar::restyle() {
  for (TransportButton* button : buttons_) {
    button->updateGeometry();
    button->update();
  }
  arrange();
}

void TransportBar::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

double TransportBar::rate() const {
  return kRates[static_cast<std::size_t>(std::max(0, rates_->currentIndex()))];
}

void TransportBar::changeRate(int by) {
  rates_->setCurrentIndex(std::clamp(rates_->currentIndex() + by, 0, rates_->count() - 1));
}

}  // namespace cabwright::review_room
