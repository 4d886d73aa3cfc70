// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/card_list.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>

#include "drawing/pen.h"

namespace cabwright::after {

CardList::CardList(const SheetLook& look, const QString& name, QWidget* parent)
    : QListView(parent), look_(look) {
  setAccessibleName(name);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);  // its coming and going would wrap anew
  setVerticalScrollMode(ScrollPerPixel);
  setEditTriggers(NoEditTriggers);
  setSelectionMode(SingleSelection);
  setResizeMode(Adjust);
  connect(
      verticalScrollBar(), &QScrollBar::rangeChanged, verticalScrollBar(),
      [bar = verticalScrollBar()](int lowest, int highest) { bar->setEnabled(highest > lowest); });
}

void CardList::restyle() {
  scheduleDelayedItemsLayout();
  viewport()->update();
}

void CardList::resizeEvent(QResizeEvent* event) {
  QListView::resizeEvent(event);
  scheduleDelayedItemsLayout();
}

void CardList::paintEvent(QPaintEvent* event) {
  QListView::paintEvent(event);
  if (empty_words_.isEmpty() || model() == nullptr || model()->rowCount() > 0) return;
  QPainter painter(viewport());
  painter.scale(look_.scale, look_.scale);
  drawing::Pen pen(painter, look_.theme);
  pen.text({12, 30}, empty_words_, {.tone = drawing::Tone::kInk2, .on = drawing::Tone::kFace});
}

void CardList::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
    enterCard(currentIndex());
  else
    QListView::keyPressEvent(event);
}

}  // namespace cabwright::after
