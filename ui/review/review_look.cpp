// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/review_look.h"

#include <algorithm>
#include <cmath>

#include "drawing/face.h"

namespace cabwright::review_room {

using drawing::Tone;

namespace {

constexpr double kLeastScale = 0.72, kMostScale = 1.7;

}  // namespace

double reviewScale(int width, int height) {
  return std::clamp(std::min(width / 1600.0, height / 1000.0), kLeastScale, kMostScale);
}

QString reviewStyleSheet(const after::SheetLook& look) {
  const auto tone = [&look](Tone t) { return drawing::colorOf(look.theme, t).name(); };
  const auto px = [&look](double u) { return QString::number(std::lround(u * look.scale)); };
  return QStringLiteral(
             "QWidget { color: %2; font-family: '%8'; font-size: %9px; }"
             "QMainWindow, QMenuBar, QMenu, QStatusBar { background: %1; }"
             "QMenuBar::item:selected, QMenu::item:selected { background: %4; color: %2; }"
             "QMenu::item:disabled { color: %3; }"
             "QLabel#second { color: %3; } QLabel#heading { font-weight: bold; }"
             "QLabel#bad { color: %6; font-weight: bold; } QLabel#good { color: %7; }"
             "QLabel#doubt { color: %5; }")
             .arg(tone(Tone::kPaper), tone(Tone::kInk), tone(Tone::kInk2), tone(Tone::kWash),
                  tone(Tone::kDoubt), tone(Tone::kBad), tone(Tone::kGood), drawing::faceName(),
                  px(drawing::kText)) +
         QStringLiteral(
             "QLabel#title { font-size: %1px; } QLabel#clock { font-weight: bold; }"
             "QComboBox { background: %2; border: 1px solid %3; border-radius: 3px;"
             " padding: 2px 22px 2px 6px; }"
             "QComboBox:focus { border: 2px solid %4; padding: 1px 21px 1px 5px; }"
             "QComboBox::drop-down { border: none; width: 18px; }"
             "QComboBox QAbstractItemView { background: %2; selection-background-color: %5;"
             " selection-color: %6; }"
             "QPushButton { background: %2; border: 1px solid %6; border-radius: 4px;"
             " padding: 4px 14px; }"
             "QPushButton:checked { background: %6; color: %7; }"
             "QPushButton:hover:!checked, QPushButton:pressed { background: %5; }"
             "QPushButton:focus { border: 3px solid %4; padding: 2px 12px; }"
             "QProgressBar { background: %2; border: 1px solid %6; border-radius: 3px; }"
             "QProgressBar::chunk { background: %4; }"
             "QSplitter::handle { background: transparent; }"
             "QSplitter::handle:hover { background: %5; }"
             "QToolTip { background: %2; color: %6; border: 1px solid %6; }")
             .arg(px(drawing::kTitle), tone(Tone::kFace), tone(Tone::kRule), tone(Tone::kHand),
                  tone(Tone::kWash), tone(Tone::kInk), tone(Tone::kPaper));
}

}  // namespace cabwright::review_room
