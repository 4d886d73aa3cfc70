// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/desk_look.h"

#include "drawing/face.h"

namespace cabwright::desk {

using drawing::Tone;

QString deskStyleSheet(const DeskStyle& style) {
  const auto tone = [&style](Tone t) { return drawing::colorOf(style.theme, t).name(); };
  const int px = style.textPx();
  return QStringLiteral(
             "QWidget { color: %3; font-family: '%9'; font-size: %10px; }"
             "QLabel#second { color: %11; } QLabel#heading { font-weight: bold; }"
             "QLabel#title { font-size: %8px; }"
             "QLabel#clock { font-weight: bold; font-size: %8px; }"
             "QLabel#bad { color: %6; }"
             "QListWidget, QLineEdit, QComboBox, QAbstractSpinBox, QPlainTextEdit { background: %2;"
             " border: 1px solid %7; border-radius: 3px; padding: 3px;"
             " selection-background-color: %4; selection-color: %3; }"
             "QListWidget:focus, QLineEdit:focus, QComboBox:focus, QAbstractSpinBox:focus,"
             " QPlainTextEdit:focus { border: 2px solid %5; padding: 2px; }"
             "QComboBox:disabled, QAbstractSpinBox:disabled { color: %11; }"
             "QListWidget::item { padding: 3px 1px; border-bottom: 1px solid %12; }"
             "QListWidget::item:selected { background: %4; color: %3; }"
             "QComboBox::drop-down { border: none; width: 20px; }"
             "QComboBox::down-arrow { image: none; }"
             "QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { width: 0;"
             " border: none; }"
             "QComboBox QAbstractItemView { background: %2; color: %3;"
             " selection-background-color: %4; selection-color: %3; }"
             "QPushButton { background: %2; border: 1px solid %3; border-radius: 4px;"
             " padding: 3px 9px; }"
             "QPushButton:default { font-weight: bold; }"
             "QPushButton:disabled { color: %11; border-color: %7; }"
             "QPushButton:checked { background: %3; color: %1; }"
             "QPushButton:hover:!checked, QPushButton:pressed { background: %4; color: %3; }"
             "QPushButton:focus { border: 3px solid %5; padding: 1px 7px; }")
             .arg(tone(Tone::kPaper), tone(Tone::kFace), tone(Tone::kInk), tone(Tone::kWash),
                  tone(Tone::kHand), tone(Tone::kBad), tone(Tone::kRule),
                  QString::number(px * 13 / 10), drawing::faceName())
             .arg(QString::number(px), tone(Tone::kInk2), tone(Tone::kHair)) +
         QStringLiteral(
             "QTabBar::tab { background: %1; color: %3; padding: 4px 12px; margin-right: 2px;"
             " border: 1px solid %5; border-bottom: 2px solid %3; }"
             "QTabBar::tab:selected { background: %2; font-weight: bold;"
             " border: 2px solid %3; border-bottom: 2px solid %2; }"
             "QTabBar::tab:focus { color: %4; }"
             "QScrollArea, QScrollArea > QWidget > QWidget { background: transparent;"
             " border: none; }"
             "QScrollBar:vertical { background: %1; width: 12px; margin: 0; }"
             "QScrollBar::handle:vertical { background: %5; border-radius: 4px;"
             " min-height: 32px; }"
             "QScrollBar:horizontal { background: %1; height: 12px; margin: 0; }"
             "QScrollBar::handle:horizontal { background: %5; border-radius: 4px;"
             " min-width: 32px; }"
             "QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }"
             "QScrollBar::add-page, QScrollBar::sub-page { background: none; }"
             "QSplitter::handle { background: transparent; }"
             "QCheckBox { spacing: 7px; }"
             "QCheckBox::indicator { width: 14px; height: 14px; border: 2px solid %6;"
             " border-radius: 3px; background: %2; }"
             "QCheckBox::indicator:checked { background: %4; border-color: %4; }"
             "QCheckBox::indicator:focus { border-color: %4; }"
             "QToolTip { background: %2; color: %3; border: 1px solid %3; }")
             .arg(tone(Tone::kPaper), tone(Tone::kFace), tone(Tone::kInk), tone(Tone::kHand),
                  tone(Tone::kRule), tone(Tone::kInk2));
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
