// SPDX-License-Identifier: GPL-3.0-or-later
// A picture to paint on in sheet units, and questions to ask of it.
#pragma once

#include <QImage>
#include <functional>

#include "drawing/pen.h"

namespace cabwright::testing_ui {

/// Background is paper. Positions are in u; `px_per_u` device pixels make one u.
class Canvas {
 public:
  Canvas(QSizeF size_u, double px_per_u, drawing::Theme theme = drawing::Theme::kDay);

  Canvas& paint(const std::function<void(drawing::Pen&)>& draw);

  [[nodiscard]] QColor at(QPointF u) const;
  /// How far the colour of a point is from a tone, largest difference of a channel, 0 to 255.
  [[nodiscard]] int distance(QPointF u, drawing::Tone tone) const;
  [[nodiscard]] bool is(QPointF u, drawing::Tone tone, int tolerance = 24) const;
  /// Share of the pixels of a shape that are near a tone, 0 to 1.
  [[nodiscard]] double share(const QPainterPath& shape, drawing::Tone tone,
                             int tolerance = 60) const;
  /// Box around everything that is not bare paper, in u; null when nothing was painted.
  [[nodiscard]] QRectF painted() const;
  [[nodiscard]] const QImage& image() const { return image_; }
  [[nodiscard]] double pxPerU() const { return px_per_u_; }

 private:
  double px_per_u_;
  drawing::Theme theme_;
  QImage image_;
};

}  // namespace cabwright::testing_ui
