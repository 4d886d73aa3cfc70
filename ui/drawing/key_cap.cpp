// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/key_cap.h"

#include <algorithm>

namespace cabwright::drawing {
namespace {

constexpr double kHeight = 25, kGap = 9;

}  // namespace

double keyCapWidth(const QString& key) { return std::max(kHeight, textWidth(key) + 11); }

double paintKeyCap(Pen& pen, QPointF centre, const QString& key) {
  const double width = keyCapWidth(key);
  pen.rect({centre.x() - width / 2, centre.y() - kHeight / 2, width, kHeight},
           {kHairline, Tone::kInk2}, Tone::kPaper, 4);
  pen.text(centre + QPointF(0, 0.36 * kText), key,
           {.anchor = Anchor::kMiddle, .tone = Tone::kInk2});
  return width;
}

double paintNameLine(Pen& pen, QPointF middle_baseline, const QString& name, const QString& key,
                     bool dim, double size) {
  const double name_width = textWidth(name, size, true);
  const double cap_width = key.isEmpty() ? 0 : keyCapWidth(key);
  const double width = name_width + (key.isEmpty() ? 0 : cap_width + kGap);
  const double left = middle_baseline.x() - width / 2;
  pen.text({left, middle_baseline.y()}, name,
           {.size = size, .bold = true, .tone = dim ? Tone::kInk2 : Tone::kInk});
  if (!key.isEmpty())
    paintKeyCap(pen, {left + name_width + kGap + cap_width / 2, middle_baseline.y() - 7.2}, key);
  return width;
}

}  // namespace cabwright::drawing
