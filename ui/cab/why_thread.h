// SPDX-License-Identifier: GPL-3.0-or-later
// The thread from what does not answer to the one thing that is missing: to a circle that shows it
// enlarged, and on to where it is. Lies over the whole sheet and takes no mouse.
#pragma once

#include <QPainterPath>
#include <QPolygonF>
#include <QWidget>
#include <optional>

#include "cab/draw_why.h"
#include "cab/part.h"

namespace cabwright::cab {

struct ThreadPath {
  QPolygonF to_circle, onward;  ///< corners; empty: no thread there
  std::optional<QPointF> circle = {};
  QRectF card = {};  ///< what the circle stands on, beside the words; null: nothing
  WhyDetail detail = {};
  std::optional<QPointF> end = {};  ///< a cross stands there: it is missing here
  bool operator==(const ThreadPath&) const = default;
};

/// From one to the other with one corner: first up or down, or first sideways.
[[nodiscard]] QPolygonF cornered(QPointF from, QPointF to, bool upright_first);
/// With its corners rounded off.
[[nodiscard]] QPainterPath roundedPath(const QPolygonF& corners);
/// How much of a path lies in a box, u.
[[nodiscard]] double lengthWithin(const QPolygonF& path, const QRectF& box);
/// Shortened at its end so that it stops `by` u before it.
[[nodiscard]] QPolygonF shortened(QPolygonF path, double by);

class WhyThread : public QWidget {
  Q_OBJECT
 public:
  WhyThread(const SheetStyle& style, QWidget* sheet);
  void show(const ThreadPath& path);
  [[nodiscard]] const ThreadPath& path() const { return path_; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  const SheetStyle& style_;
  ThreadPath path_;
};

}  // namespace cabwright::cab
