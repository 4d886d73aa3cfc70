// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/caution_view.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "cab/panels.h"
#include "drawing/furniture.h"
#include "drawing/sheet_frame.h"
#include "drawing/verdict.h"

namespace cabwright::desktop {

using drawing::Tone;

namespace {

constexpr double kColumn = 900;

}  // namespace

CautionView::CautionView(QWidget* parent)
    : QWidget(parent), read_(new QPushButton(tr("I have read this"), this)) {
  setAccessibleName(tr("Cautions"));
  setAccessibleDescription(cautions().join(QLatin1Char('\n')));
  connect(read_, &QPushButton::clicked, this, &CautionView::accepted);
  read_->setDefault(true);
}

QStringList CautionView::cautions() {
  return {
      tr("This is a training aid. It is generic, models no particular vehicle, and gives no "
         "authority to drive or to work on one."),
      tr("The operator's rule book, the vehicle's own manual and local instructions come before "
         "anything that is shown here. A licensed instructor or assessor decides."),
      tr("Working around stabled trains, rotating shafts, compressed air and moving vehicles kills "
         "people. Nothing is to be tried on a real unit because it worked here."),
      tr("Much of what is marked is common practice in the trade, without a published source; "
         "other "
         "railways do some of it otherwise."),
  };
}

void CautionView::setTheme(drawing::Theme theme) {
  theme_ = theme;
  setStyleSheet(cab::panelStyle(theme, std::max(14, fontInfo().pixelSize())));
  update();
}

void CautionView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  const drawing::SheetFrame frame = drawing::calcSheetFrame(size());
  read_->adjustSize();
  const double left = (frame.width - kColumn) / 2;
  read_->move(static_cast<int>(left * frame.scale), static_cast<int>(800 * frame.scale));
}

void CautionView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  read_->setFocus();
}

void CautionView::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.fillRect(rect(), drawing::colorOf(theme_, Tone::kPaper));
  const drawing::SheetFrame frame = drawing::calcSheetFrame(size());
  painter.scale(frame.scale, frame.scale);
  drawing::Pen pen(painter, theme_);
  drawing::paintFrame(pen, frame);
  const double left = (frame.width - kColumn) / 2;
  pen.text({left, 210}, tr("Before you begin"), {.size = 44});
  double y = 290;
  for (const QString& words : cautions()) {
    drawing::paintVerdict(pen, {left + 12, y - 8}, drawing::VerdictSign::kUnsure, 11, Tone::kPaper);
    y = pen.paragraph({left + 48, y}, words, kColumn - 48, {.size = 24}, 34) + 28;
  }
}

}  // namespace cabwright::desktop
