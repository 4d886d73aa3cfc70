// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/desk_look.h"

#include "cab/panels.h"

namespace cabwright::desk {

using drawing::Tone;

QString deskStyleSheet(const DeskStyle& style) {
  const auto tone = [&style](Tone t) { return drawing::colorOf(style.theme, t).name(); };
  const int px = style.textPx();
  return cab::panelStyle(style.theme, px) +
         QStringLiteral(
             "QWidget { background: %1; }"
             "QLabel#title { font-size: %8px; font-weight: normal; }"
             "QLabel#heading { font-weight: bold; }"
             "QLabel#clock { font-weight: bold; font-size: %8px; }"
             "QLabel#bad { color: %6; }"
             "QListWidget, QLineEdit, QComboBox, QAbstractSpinBox { background: %2; }"
             "QListWidget::item { padding: 2px 1px; border-bottom: 1px solid %7; }"
             "QComboBox QAbstractItemView { background: %2; color: %3;"
             " selection-background-color: %4; selection-color: %3; }"
             "QPushButton { padding: 3px 9px; }"
             "QPushButton:checked { background: %3; color: %1; }"
             "QPushButton:hover:!checked { background: %4; }"
             "QPushButton:focus { border: 3px solid %5; padding: 1px 7px; }"
             "QTabBar { background: %1; }"
             "QTabBar::tab { background: %1; color: %3; padding: 4px 12px; margin-right: 2px;"
             " border: 1px solid %7; border-bottom: 2px solid %3; }"
             "QTabBar::tab:selected { background: %2; font-weight: bold;"
             " border: 2px solid %3; border-bottom: 2px solid %2; }"
             "QTabBar::tab:focus { color: %5; }"
             "QScrollArea { border: none; }"
             "QScrollBar:vertical { background: %1; width: 12px; margin: 0; }"
             "QScrollBar::handle:vertical { background: %7; border-radius: 4px;"
             " min-height: 32px; }"
             "QScrollBar::add-line, QScrollBar::sub-line { height: 0; }"
             "QToolTip { background: %2; color: %3; border: 1px solid %3; }")
             .arg(tone(Tone::kPaper), tone(Tone::kFace), tone(Tone::kInk), tone(Tone::kWash),
                  tone(Tone::kHand), tone(Tone::kBad), tone(Tone::kRule),
                  QString::number(px * 13 / 10));
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
