// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/rating_row.h"

#include <QEvent>
#include <QVBoxLayout>

#include "review_room/marks_button.h"
#include "review_room/marks_flow.h"

namespace cabwright::review_room {

RatingRow::RatingRow(const after::SheetLook& look, const RatingScale& scale, const QString& prefix,
                     QWidget* parent)
    : QWidget(parent), scale_(scale), group_(new QButtonGroup(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(makeWords(ratingWord(scale.title), WordsKind::kHeading, this));
  column->addWidget(makeWords(ratingWord(scale.asks), WordsKind::kSecond, this));
  auto* row = new FlowRow;
  for (int step = 1; step <= kRatingSteps; ++step) {
    auto* button = new MarkButton(look, QString::number(step),
                                  prefix + QLatin1String(scale.id) + QString::number(step), this);
    button->setCheckable(true);
    const QString means = ratingWord(scale.anchors[static_cast<std::size_t>(step - 1)]);
    button->setAccessibleName(
        tr("%1: %2 of %3, %4").arg(ratingWord(scale.title)).arg(step).arg(kRatingSteps).arg(means));
    button->setToolTip(means);
    button->installEventFilter(this);
    group_->addButton(button, step);
    row->addWidget(button);
  }
  column->addLayout(row);
  anchor_ = makeWords({}, WordsKind::kPlain, this);
  column->addWidget(anchor_);
  connect(group_, &QButtonGroup::idClicked, this, [this](int step) {
    showAnchor(step);
    Q_EMIT changed();
  });
  showAnchor(0);
}

// What a step means can be read before it is taken.
bool RatingRow::eventFilter(QObject* watched, QEvent* event) {
  auto* button = qobject_cast<QAbstractButton*>(watched);
  if (button != nullptr && (event->type() == QEvent::Enter || event->type() == QEvent::FocusIn))
    showAnchor(group_->id(button));
  if (event->type() == QEvent::Leave || event->type() == QEvent::FocusOut) showAnchor(value());
  return QWidget::eventFilter(watched, event);
}

void RatingRow::showAnchor(int step) {
  if (step < 1) {
    anchor_->setText(tr("Not rated yet; 1 is the worst, 5 the best"));
    return;
  }
  anchor_->setText(
      tr("%1: %2").arg(step).arg(ratingWord(scale_.anchors[static_cast<std::size_t>(step - 1)])));
}

void RatingRow::clear() {
  group_->setExclusive(false);
  for (QAbstractButton* button : group_->buttons()) button->setChecked(false);
  group_->setExclusive(true);
  showAnchor(0);
}

}  // namespace cabwright::review_room
