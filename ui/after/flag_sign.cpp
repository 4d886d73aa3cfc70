// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/flag_sign.h"

#include "after/words.h"

namespace cabwright::after {

using drawing::Tone;
using marking::RuleClass;

namespace {

constexpr double kTail = 9, kPad = 6, kSmallHeight = 12, kSmallWidth = 13;

QPolygonF clothShape(QPointF top, double width, double height, bool pointed) {
  const double x = top.x(), y = top.y(), tail = std::min(kTail, height / 2);
  const double tip = x + width, inner = tip - tail;
  return pointed
             ? QPolygonF{{top,
                          {inner, y},
                          {tip, y + height / 2},
                          {inner, y + height},
                          {x, y + height}}}
             : QPolygonF{
                   {top, {tip, y}, {inner, y + height / 2}, {tip, y + height}, {x, y + height}}};
}

}  // namespace

double flagWidth(const QString& text) {
  if (text.isEmpty()) return kSmallWidth;
  return drawing::textWidth(text, drawing::kText, true) + 2 * kPad + kTail - 2;
}

Tone flagInk(RuleClass c) { return c == RuleClass::kTechnique ? Tone::kDoubt : Tone::kPaper; }

Tone flagCloth(RuleClass c) { return c == RuleClass::kTechnique ? Tone::kPaper : toneOf(c); }

void paintFlag(drawing::Pen& pen, QPointF top, const FlagLook& look) {
  const bool small = look.text.isEmpty();
  const double height = small ? kSmallHeight : kFlagHeight, width = flagWidth(look.text);
  QPolygonF cloth = clothShape(top, width, height, look.rule_class == RuleClass::kCritical);
  if (look.mirrored)
    for (QPointF& point : cloth) point.setX(2 * top.x() - point.x());
  pen.polygon(cloth, {drawing::kNorm, toneOf(look.rule_class)}, flagCloth(look.rule_class));
  if (look.selected)
    pen.rect(cloth.boundingRect().adjusted(-4, -4, 4, 4), {drawing::kBold, Tone::kHand},
             Tone::kNone, 3);
  if (small) return;
  const double left = look.mirrored
                          ? top.x() - kPad - drawing::textWidth(look.text, drawing::kText, true)
                          : top.x() + kPad;
  pen.text({left, top.y() + height / 2 + 0.36 * drawing::kText}, look.text,
           {.bold = true, .tone = flagInk(look.rule_class), .on = flagCloth(look.rule_class)});
}

}  // namespace cabwright::after
