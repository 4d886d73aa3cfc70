// SPDX-License-Identifier: GPL-3.0-or-later
// A push-button.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QString>
#include <cstdint>

#include "drawing/pen.h"

namespace cabwright::drawing {

enum class ButtonSign : std::uint8_t {
  kNone,
  kStart,  ///< a bar
  kStop,   ///< a ring
  kHorn,
  kBell,
  kLamp,
  kFire,
  kPlus,
  kMinus,
};

enum class ButtonState : std::uint8_t {
  kUp,
  kPressed,
  kBlocked,  ///< pressing it does nothing, for a reason
  kDead,     ///< no current
};

struct ButtonLook {
  ButtonSign sign = ButtonSign::kNone;
  ButtonState state = ButtonState::kUp;
  bool focus = false;
  double held_share = 0;  ///< 0 to 1 of the time it has to be held: an arc that fills
};

/// `r`: outer ring, u. The label's baseline is r + 24 below the centre.
void paintButton(Pen& pen, QPointF centre, double r, const ButtonLook& look,
                 const QString& label = {});

/// All that it may paint on.
[[nodiscard]] QRectF buttonBounds(QPointF centre, double r, const QString& label = {});

}  // namespace cabwright::drawing
