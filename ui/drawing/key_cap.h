// SPDX-License-Identifier: GPL-3.0-or-later
// A key of the keyboard, drawn where it acts.
#pragma once

#include <QPointF>
#include <QString>

#include "drawing/pen.h"

namespace cabwright::drawing {

/// Returns the width in u; the cap is 25 u high.
double paintKeyCap(Pen& pen, QPointF centre, const QString& key);
[[nodiscard]] double keyCapWidth(const QString& key);

/// The bold name of a part with the key that serves it, both together in the middle. No key: empty.
/// Returns the width of both in u.
double paintNameLine(Pen& pen, QPointF middle_baseline, const QString& name, const QString& key,
                     bool dim = false, double size = kName);

}  // namespace cabwright::drawing
