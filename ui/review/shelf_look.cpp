// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/shelf_look.h"

#include <algorithm>
#include <cmath>

#include "drawing/face.h"

namespace cabwright::review_room {

using drawing::Tone;

namespace {

constexpr double kLeastScale = 0.72, kMostScale = 1.4;

}  // namespace

double scaleOf(const QSize& page) {
  return std::clamp(std::min(page.width() / 1600.0, page.height() / 880.0), kLeastScale,
                    kMostScale);
}

int toPixels(double u, const after::SheetLook& look) {
  return static_cast<int>(std::lround(u * look.scale));
}

int textPx(const after::SheetLook& look) { return std::max(13, toPixels(drawing::kText, look)); }

QString shelfStyle(const after::SheetLook& look) {
  const auto tone = [&look](Tone t) { return drawing::colorOf(look.theme, t).name(); };
  const int px = textPx(look);
  return QStringLiteral(
             "QWidget { background: %1; color: %3; font-family: '%9'; font-size: %10px; }"
             "QLabel, QCheckBox { background: transparent; }"
             "QLabel#second { color: %11; } QLabel#heading { font-weight: bold; }"
             "QLabel#title { font-size: %8px; } QLabel#bad { color: %6; }"
             "QFrame#panel { background: %2; border: 1px solid %3; border-radius: 4px; }"
             "QFrame#panel QLabel, QFrame#panel QCheckBox { background: transparent; }"
             "QListWidget, QLineEdit, QComboBox, QAbstractSpinBox { background: %2;"
             " border: 1px solid %7; border-radius: 3px; padding: 3px 5px;"
             " selection-background-color: %4; selection-color: %3; }"
             "QListWidget:focus, QLineEdit:focus, QComboBox:focus, QAbstractSpinBox:focus {"
             " border: 2px solid %5; padding: 2px 4px; }"
             "QListWidget::item { padding: 3px 1px; }"
             "QListWidget::item:selected { background: %4; color: %3; }"
             "QComboBox::drop-down { border: none; width: 20px; }"
             "QComboBox::down-arrow { image: none; }"
             "QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { width: 0; border: none; "
             "}"
             "QComboBox QAbstractItemView { background: %2; color: %3;"
             " selection-background-color: %4; selection-color: %3; }"
             "QPushButton { background: %2; border: 1px solid %3; border-radius: 4px;"
             " padding: 4px 12px; }"
             "QPushButton#open, QPushButton#lock-open { border-width: 2px; padding: 3px 11px;"
             " font-weight: bold; }"
             "QPushButton:disabled { color: %11; border-color: %7; }"
             "QPushButton:hover, QPushButton:pressed { background: %4; }"
             "QPushButton:focus, QPushButton#open:focus, QPushButton#lock-open:focus {"
             " border: 3px solid %5; padding: 2px 10px; }")
             .arg(tone(Tone::kPaper), tone(Tone::kFace), tone(Tone::kInk), tone(Tone::kWash),
                  tone(Tone::kHand), tone(Tone::kBad), tone(Tone::kRule),
                  QString::number(px * 16 / 10), drawing::faceName())
             .arg(QString::number(px), tone(Tone::kInk2)) +
         QStringLiteral(
             "QTabBar { background: transparent; }"
             "QTabBar::tab { background: %1; color: %3; padding: 4px 14px; margin-right: 2px;"
             " border: 1px solid %5; border-bottom: 2px solid %3; }"
             "QTabBar::tab:selected { background: %2; font-weight: bold;"
             " border: 2px solid %3; border-bottom: 2px solid %2; }"
             "QTabBar::tab:focus { color: %4; }"
             "QTableView { background: %2; border: 1px solid %3; border-radius: 3px; }"
             "QTableView:focus { border: 2px solid %4; }"
             "QHeaderView, QHeaderView::section { background: %2; color: %7; border: none; }"
             "QHeaderView::section { padding: 5px 6px; border-bottom: 1px solid %3; }"
             "QHeaderView::up-arrow, QHeaderView::down-arrow { image: none; width: 0; }"
             "QCheckBox::indicator { width: 14px; height: 14px; border: 2px solid %7;"
             " border-radius: 3px; background: %2; }"
             "QCheckBox::indicator:checked { background: %4; border-color: %4; }"
             "QCheckBox::indicator:focus { border-color: %4; }"
             "QScrollArea, QScrollArea > QWidget > QWidget { background: transparent;"
             " border: none; }"
             "QScrollBar:vertical { background: %2; width: 12px; margin: 0; border: none; }"
             "QScrollBar::handle:vertical { background: %5; border-radius: 4px; min-height: 32px;"
             " margin: 2px; }"
             "QScrollBar::add-line, QScrollBar::sub-line { height: 0; width: 0; }"
             "QScrollBar::add-page, QScrollBar::sub-page { background: none; }"
             "QProgressBar { background: %2; border: 1px solid %5; border-radius: 3px;"
             " text-align: center; }"
             "QProgressBar::chunk { background: %6; }"
             "QToolTip { background: %2; color: %3; border: 1px solid %3; }")
             .arg(tone(Tone::kPaper), tone(Tone::kFace), tone(Tone::kInk), tone(Tone::kHand),
                  tone(Tone::kRule), tone(Tone::kWash), tone(Tone::kInk2));
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
