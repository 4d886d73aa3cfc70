// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/review_look.h"

#include <algorithm>

#include "drawing/style.h"

namespace cabwright::review_room {

namespace {

constexpr double kLeastScale = 0.72, kMostScale = 1.7;

}  // namespace

double reviewScale(int width, int height) {
  return std::clamp(std::min(width / 1600.0, height / 1000.0), kLeastScale, kMostScale);
}

QString reviewStyleSheet(const after::SheetLook& look) {
  const int px = after::toPixels(drawing::kText, look);
  return drawing::commonStyle(look.theme, px) +
         drawing::fillStyle(
             QStringLiteral(
                 "QMainWindow, QMenuBar, QMenu, QStatusBar { background: @paper; }"
                 "QMenuBar::item:selected, QMenu::item:selected { background: @wash; color: @ink; }"
                 "QMenu { border: 1px solid @ink; } QMenu::item:disabled { color: @ink2; }"
                 "QLabel#bad { font-weight: bold; } QLabel#good { color: @good; }"
                 "QLabel#doubt { color: @doubt; } QLabel#clock { font-weight: bold; }"
                 "QSplitter::handle:hover { background: @wash; }"),
             look.theme, px);
}

}  // namespace cabwright::review_room
