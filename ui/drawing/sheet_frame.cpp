// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/sheet_frame.h"

#include <algorithm>

namespace cabwright::drawing {
namespace {

constexpr double kWidth = 1600, kHeight = 1000;
constexpr double kMargin = 40, kGutter = 24, kTop = 36;
constexpr double kYouLeast = 316, kYouMost = 420;

}  // namespace

SheetFrame calcSheetFrame(QSizeF window) {
  SheetFrame frame;
  frame.scale = std::max(0.05, std::min(window.width() / kWidth, window.height() / kHeight));
  frame.width = std::max(kWidth, window.width() / frame.scale);
  frame.height = std::max(kHeight, window.height() / frame.scale);
  frame.spare = frame.height - kHeight;
  const double you = std::min(kYouMost, kYouLeast + frame.width - kWidth);
  const double content = frame.height - kTop - kMargin;
  frame.you = {frame.width - kMargin - you, kTop, you, content};
  frame.world = {kMargin, kTop, frame.you.left() - kGutter - kMargin, content};
  return frame;
}

}  // namespace cabwright::drawing
