// SPDX-License-Identifier: GPL-3.0-or-later
// Outlines written down in the path notation of SVG 2 (chapter 9.3): a line of letters and numbers
// is easier to compare with a drawing than a page of calls.
#pragma once

#include <QPainterPath>
#include <QPointF>
#include <string_view>

namespace cabwright::drawing {

/// Understands M L H V Q C A Z and their relative forms. Arcs are of circles, with one radius and
/// no rotation: A r large clockwise x y. Anything else is an error of the writer (assertion) and
/// ends the outline.
[[nodiscard]] QPainterPath outlineOf(std::string_view notation);

/// A line with round ends, as thick as a finger of radius r.
[[nodiscard]] QPainterPath capsuleShape(QPointF from, QPointF to, double r);

}  // namespace cabwright::drawing
