// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanism/mechanism_view.h"

#include <QPaintEvent>
#include <QPainter>
#include <algorithm>
#include <array>

#include "cab/panels.h"
#include "drawing/boxes.h"

namespace cabwright::mechanism {
namespace {

constexpr std::array<double, 5> kSlowness{1, 5, 20, 100, 0};
constexpr std::int64_t kTicksPerPicture = 4;
constexpr int kControlsHeight = 58, kEdge = 12;  // px
constexpr double kMargin = 40;                   // u, left of the drawing

}  // namespace

MechanismView::MechanismView(cab::Seat& seat, const cab::SheetStyle& style, QWidget* parent)
    : QWidget(parent),
      seat_(seat),
      style_(style),
      which_(new drawing::ChoiceBox(this)),
      slow_(new QSlider(Qt::Horizontal, this)),
      slowness_(new QLabel(this)) {
  setAccessibleName(tr("Mechanism"));
  which_->addItems({tr("Drive line 1"), tr("Drive line 2")});
  which_->setAccessibleName(tr("Drive line"));
  slow_->setRange(0, static_cast<int>(kSlowness.size()) - 1);
  slow_->setPageStep(1);
  slow_->setTickPosition(QSlider::TicksBelow);
  slow_->setTickInterval(1);
  slow_->setValue(2);
  slow_->setAccessibleName(tr("Slowness: as it is, 1 to 5, 1 to 20, 1 to 100, still"));
  connect(which_, &QComboBox::currentIndexChanged, this, &MechanismView::setLine);
  connect(slow_, &QSlider::valueChanged, this, &MechanismView::setSlownessStep);
  connect(&seat_, &cab::Seat::frameChanged, this, &MechanismView::follow);
  slowness_->setObjectName(QStringLiteral("second"));
  sayHowSlow();
  dress();
  tick_ = seat_.run().tick();
  if (isOpen()) state_ = readMechanism(seat_.unit());
  which_->setEnabled(isOpen());
  slow_->setEnabled(isOpen());
}

void MechanismView::dress() {
  dressed_ = style_.theme;
  setStyleSheet(cab::panelStyle(style_.theme, std::max(14, fontInfo().pixelSize())) +
                QStringLiteral("QSlider, QLabel { background: transparent; }"));
}

void MechanismView::setLine(int line) {
  look_.line = std::clamp(line, 0, 1);
  which_->setCurrentIndex(look_.line);
  update();
}

void MechanismView::setSlownessStep(int step) {
  const auto k = static_cast<std::size_t>(std::clamp(step, 0, slow_->maximum()));
  look_.slowness = kSlowness[k];
  slow_->setValue(static_cast<int>(k));
  sayHowSlow();
  update();
}

void MechanismView::sayHowSlow() {
  slowness_->setText(look_.slowness <= 0 ? tr("Standing still")
                     : look_.slowness <= 1
                         ? tr("As fast as it turns")
                         : tr("%1 times slower than it turns").arg(look_.slowness));
}

void MechanismView::follow() {
  if (!isOpen()) return;
  const std::int64_t tick = seat_.run().tick();
  if (tick >= tick_ && tick - tick_ < kTicksPerPicture) return;
  // After a jump in time nothing whirls past to catch up.
  const double seconds = std::clamp(static_cast<double>(tick - tick_) * 0.01, 0.0, 0.25);
  tick_ = tick;
  state_ = readMechanism(seat_.unit());
  if (look_.slowness > 0 && !style_.reduced_motion)
    turn_ = calcTurn(turn_, state_.line[static_cast<std::size_t>(look_.line)],
                     seconds / look_.slowness);
  update();
}

void MechanismView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  const QRectF area = drawingArea();
  const double k = std::min(area.width() / kSheetWidth, area.height() / kSheetHeight);
  const int left =
      std::max(2 * kEdge, static_cast<int>(area.center().x() - (kSheetWidth / 2 - kMargin) * k));
  const int y = height() - kControlsHeight, room = width() - left - kEdge;
  which_->setGeometry(left, y, 160, 32);
  const int bar = std::clamp(room - 176 - 260, 80, 360);
  slow_->setGeometry(left + 176, y, bar, 32);
  slowness_->setGeometry(left + 176 + bar + 16, y, std::max(0, room - 176 - bar - 16), 32);
}

QRectF MechanismView::drawingArea() const {
  return QRectF(0, 0, width(), height() - kControlsHeight);
}

void MechanismView::paintEvent(QPaintEvent* event) {
  // A sheet of style set while painting would paint anew without end but for this.
  if (dressed_ != style_.theme)
    QMetaObject::invokeMethod(this, &MechanismView::dress, Qt::QueuedConnection);
  QPainter painter(this);
  painter.fillRect(event->rect(), drawing::colorOf(style_.theme, drawing::Tone::kPaper));
  drawing::Pen pen(painter, style_.theme);
  if (!isOpen()) {
    pen.text({24, 40}, tr("The mechanism is not shown in assessment."));
    return;
  }
  pen.rect(QRectF(rect()).adjusted(kEdge, kEdge - 2, -kEdge, 2 - kEdge),
           {1.5, drawing::Tone::kInk, {}, false});
  paintMechanism(pen, drawingArea(), state_, turn_, look_);
}

}  // namespace cabwright::mechanism
