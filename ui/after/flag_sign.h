// SPDX-License-Identifier: GPL-3.0-or-later
// The numbered flag of a broken line. Its class is told by shape and by colour: critical is red,
// filled and pointed; serious is filled and cut like a swallow's tail; technique is that, hollow.
#pragma once

#include <QPointF>
#include <QRectF>

#include "drawing/pen.h"
#include "marking/rule.h"

namespace cabwright::after {

inline constexpr double kFlagHeight = 25;

struct FlagLook {
  marking::RuleClass rule_class = marking::RuleClass::kSerious;
  QString text = {};      ///< "12"; empty: a small one without a number
  bool selected = false;  ///< the keys or the cursor are at it
  bool mirrored = false;  ///< hangs to the left of its pole
};

/// `top` is the upper end of its pole; the flag hangs beside it.
void paintFlag(drawing::Pen& pen, QPointF top, const FlagLook& look);

[[nodiscard]] double flagWidth(const QString& text);

/// Tone of the number, and of what it stands on.
[[nodiscard]] drawing::Tone flagInk(marking::RuleClass c);
[[nodiscard]] drawing::Tone flagCloth(marking::RuleClass c);

}  // namespace cabwright::after
