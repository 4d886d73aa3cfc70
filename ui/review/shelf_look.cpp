// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/shelf_look.h"

#include <algorithm>
#include <cmath>

#include "drawing/style.h"

namespace cabwright::review_room {

namespace {

constexpr double kLeastScale = 0.72, kMostScale = 1.4;

}  // namespace

double scaleOf(const QSize& page) {
  return std::clamp(std::min(page.width() / 1600.0, page.height() / 880.0), kLeastScale,
                    kMostScale);
}

int textPx(const after::SheetLook& look) { return std::max(13, toPixels(drawing::kText, look)); }

QString shelfStyle(const after::SheetLook& look) {
  const int px = textPx(look);
  const auto fill = [&](const char* words) {
    return drawing::fillStyle(QString::fromLatin1(words), look.theme, px);
  };
  // In front of what is common: what has a ground of its own comes later and keeps it.
  return fill("QWidget { background: @paper; }") + drawing::commonStyle(look.theme, px) +
         fill(
             "QLabel, QCheckBox { background: transparent; }"
             "QFrame#panel { background: @face; border: 1px solid @ink; border-radius: 4px; }"
             "QFrame#panel QLabel, QFrame#panel QCheckBox { background: transparent; }"
             "QPushButton#open, QPushButton#lock-open { border-width: 2px; padding: 3px 11px;"
             " font-weight: bold; }"
             "QPushButton#open:focus, QPushButton#lock-open:focus { border: 3px solid @hand;"
             " padding: 2px 10px; }"
             "QTableView { background: @face; border: 1px solid @ink; border-radius: 3px; }"
             "QTableView:focus { border: 2px solid @hand; }"
             "QHeaderView, QHeaderView::section { background: @face; color: @ink2; border: none; }"
             "QHeaderView::section { padding: 5px 6px; border-bottom: 1px solid @ink; }"
             "QHeaderView::up-arrow, QHeaderView::down-arrow { image: none; width: 0; }");
}

QLabel* makeSecondLabel(const QString& words, QWidget* parent) {
  auto* label = new QLabel(words, parent);
  label->setObjectName(QStringLiteral("second"));
  label->setWordWrap(true);
  return label;
}

QPushButton* makeShelfButton(const QString& words, const QString& object_name, QWidget* parent) {
  auto* button = new QPushButton(words, parent);
  button->setObjectName(object_name);
  button->setAutoDefault(true);
  return button;
}

}  // namespace cabwright::review_room
