// SPDX-License-Identifier: GPL-3.0-or-later
// How the sheet of the seat fills its window, and where everything stands on it but the plate.
#include <QApplication>
#include <algorithm>

#include "cab/seat_view.h"

namespace cabwright::cab {
namespace {

constexpr double kHandsTop = 868, kHandsEnd = 976;
constexpr double kDeedWidth = 178, kDeedHeight = 42;
constexpr double kCaptionRoom = 210;  // threads run to the hands beside the caption, not through it
constexpr double kWorldWidth = 1260;  // of a sheet without its right block, u
// The system's font, of which so much is as large to the eye as the sheet's; and how far running
// text may outgrow the sheet it stands on.
constexpr double kFaceShare = 0.95, kLargestReading = 1.35;

// The left block alone; the right one stands beyond the edge.
drawing::SheetFrame calcWorldFrame(QSizeF window) {
  drawing::SheetFrame frame = drawing::calcSheetFrame(window);
  frame.scale = std::max(0.05, std::min(window.width() / kWorldWidth, window.height() / 1000));
  frame.width = std::max(kWorldWidth, window.width() / frame.scale);
  frame.height = std::max(1000.0, window.height() / frame.scale);
  frame.spare = frame.height - 1000;
  frame.world = {40, 36, frame.width - 80, frame.height - 76};
  frame.you = QRectF(frame.width + 40, 36, 316, frame.height - 76);
  return frame;
}

}  // namespace

void SeatView::arrange() {
  const drawing::SheetFrame& f = style_.frame;
  const QRectF& you = f.you;
  const double s = f.spare;
  plan_->setPlan(QRectF(you.left(), you.top() + 72, you.width(), 124));
  plan_->setArea(QRectF(you.left() - 4, you.top() - 6, you.width() + 8, 214));
  for (BalloonPart* b : balloons_) {
    const QPointF at = drawing::planPosition(plan_->plan(), static_cast<int>(b->place()));
    b->setArea(QRectF(at.x() - 17, at.y() - 17, 34, 34));
  }
  const QRectF page(you.left(), you.top() + 212, you.width(), 468 + s);
  notebook_->setArea(page);
  judging_->arrange(page, style_.reading);
  for (int k = 0; k < 3; ++k)
    foot_[static_cast<std::size_t>(k)]->setArea(NotebookPart::footArea(page, k));
  const double things_top = page.bottom() + 36;
  const double column = you.width() / 5;
  for (std::size_t k = 0; k < things_.size(); ++k) {
    const auto col = static_cast<double>(k % 5), row = static_cast<double>(k / 5);
    things_[k]->setArea(QRectF(you.left() + column * col, things_top + 48 * row, column, 48));
  }
  title_->setArea(QRectF(you.left(), f.height - 40 - 100, you.width(), 100));
  const double x = f.world.left();
  for (std::size_t k = 0; k < deeds_.size(); ++k) {
    const auto col = static_cast<double>(k % 2), row = static_cast<double>(k / 2);
    deeds_[k]->setArea(QRectF(x - 5 + kDeedWidth * col, kHandsTop + s + 6 + kDeedHeight * row,
                              kDeedWidth, kDeedHeight));
  }
  const double hands_left = x + (deeds_.empty() ? kCaptionRoom : 2 * kDeedWidth + 20);
  const double width = (f.world.right() - hands_left) / 2;
  for (std::size_t k = 0; k < 2; ++k)
    hands_[k]->setArea(QRectF(hands_left + width * static_cast<double>(k), kHandsTop + s,
                              width - 10, kHandsEnd - kHandsTop));
}

void SeatView::setWorldOnly(bool only) {
  if (only == world_only_) return;
  world_only_ = only;
  for (Part* part : std::vector<Part*>{plan_, notebook_, title_}) part->setVisible(!only);
  for (BalloonPart* balloon : balloons_) balloon->setVisible(!only);
  for (CarriedPart* thing : things_) thing->setVisible(!only);
  fitSheet();
}

void SeatView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitSheet();
}

// The sheet is as large as the window lets it be; what is read on it, as the system's font wants
// it.
void SeatView::fitSheet() {
  style_.frame = world_only_ ? calcWorldFrame(size()) : drawing::calcSheetFrame(size());
  const double own = drawing::kText * style_.frame.scale;
  const double wanted = QFontInfo(QApplication::font()).pixelSize() * kFaceShare;
  style_.reading = own > 0 ? std::clamp(wanted / own, 1.0, kLargestReading) : 1;
  closePanel();
  arrange();
  makePlateAnew();
}

}  // namespace cabwright::cab
