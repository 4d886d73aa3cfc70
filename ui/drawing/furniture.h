// SPDX-License-Identifier: GPL-3.0-or-later
// What every sheet has: border, captions, title block, leaders, centre lines, the notebook's paper,
// the ring of focus and the thread from a hand to what it holds.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QString>
#include <vector>

#include "drawing/pen.h"
#include "drawing/sheet_frame.h"

namespace cabwright::drawing {

/// Border 20 u from the edge, with four centring marks.
void paintFrame(Pen& pen, const SheetFrame& frame);

/// Words, then a thin rule to the edge of the region; `right` stands at its end. `at`: baseline.
void paintCaption(Pen& pen, QPointF at, double width, const QString& words,
                  const QString& right = {});

/// A cell takes `share` (0 to 1) of its row.
struct TitleCell {
  double share = 1;
  QString text = {};
  bool bold = false;
};
void paintTitleBlock(Pen& pen, const QRectF& box, const std::vector<std::vector<TitleCell>>& rows);

/// Dot on the thing, one bend, then to where the words begin.
void paintLeader(Pen& pen, QPointF thing, QPointF bend, QPointF end, Tone tone = Tone::kInk2);
void paintCentreLine(Pen& pen, QPointF from, QPointF to);
/// Paper and stitched head; writing begins 44 u below the top, 18 u from the sides.
void paintNotebookPage(Pen& pen, const QRectF& box);
/// 5 u clear of what it goes around.
void paintFocusRing(Pen& pen, const QRectF& around, double corner_r = 6);
/// Dotted line from a hand to what it holds.
void paintThread(Pen& pen, QPointF hand, QPointF thing);

}  // namespace cabwright::drawing
