// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/desk_look.h"

#include "drawing/style.h"

namespace cabwright::desk {

QString deskStyleSheet(const DeskStyle& style) {
  const int px = style.textPx();
  return drawing::commonStyle(style.theme, px) +
         QStringLiteral(
             "QLabel#title, QLabel#clock { font-size: %1px; } QLabel#clock { font-weight: bold; }"
             "QPushButton { padding: 3px 9px; } QPushButton:focus { padding: 1px 7px; }")
             .arg(px * 13 / 10);
}

QLabel* makeHeading(const QString& words, QWidget* parent) {
  auto* label = new QLabel(words, parent);
  label->setObjectName(QStringLiteral("heading"));
  return label;
}

QLabel* makeSecond(const QString& words, QWidget* parent) {
  auto* label = new QLabel(words, parent);
  label->setObjectName(QStringLiteral("second"));
  label->setWordWrap(true);
  return label;
}

QPushButton* makeButton(const QString& words, const QString& object_name, QWidget* parent) {
  auto* button = new QPushButton(words, parent);
  button->setObjectName(object_name);
  button->setAutoDefault(true);
  return button;
}

}  // namespace cabwright::desk
