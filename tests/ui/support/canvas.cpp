// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace cabwright::testing_ui {
namespace {

int apart(QRgb a, QRgb b) {
  return std::max({std::abs(qRed(a) - qRed(b)), std::abs(qGreen(a) - qGreen(b)),
                   std::abs(qBlue(a) - qBlue(b))});
}

}  // namespace

Canvas::Canvas(QSizeF size_u, double px_per_u, drawing::Theme theme)
    : px_per_u_(px_per_u),
      theme_(theme),
      image_((size_u * px_per_u).toSize(), QImage::Format_RGB32) {
  image_.fill(drawing::colorOf(theme, drawing::Tone::kPaper));
}

Canvas& Canvas::paint(const std::function<void(drawing::Pen&)>& draw) {
  QPainter painter(&image_);
  painter.scale(px_per_u_, px_per_u_);
  drawing::Pen pen(painter, theme_);
  draw(pen);
  return *this;
}

QColor Canvas::at(QPointF u) const {
  const QPoint p(static_cast<int>(std::floor(u.x() * px_per_u_)),
                 static_cast<int>(std::floor(u.y() * px_per_u_)));
  return image_.valid(p) ? image_.pixelColor(p) : QColor();
}

int Canvas::distance(QPointF u, drawing::Tone tone) const {
  return apart(at(u).rgb(), drawing::colorOf(theme_, tone).rgb());
}

bool Canvas::is(QPointF u, drawing::Tone tone, int tolerance) const {
  return distance(u, tone) <= tolerance;
}

double Canvas::share(const QPainterPath& shape, drawing::Tone tone, int tolerance) const {
  const QRectF box = shape.boundingRect();
  const double step = 1 / px_per_u_;
  int inside = 0, near_tone = 0;
  for (double y = box.top(); y < box.bottom(); y += step)
    for (double x = box.left(); x < box.right(); x += step) {
      if (!shape.contains(QPointF(x, y))) continue;
      ++inside;
      if (is({x, y}, tone, tolerance)) ++near_tone;
    }
  return inside == 0 ? 0 : static_cast<double>(near_tone) / inside;
}

QRectF Canvas::painted() const {
  const QRgb paper = drawing::colorOf(theme_, drawing::Tone::kPaper).rgb();
  int left = image_.width(), right = -1, top = image_.height(), bottom = -1;
  for (int y = 0; y < image_.height(); ++y) {
    const auto* row = reinterpret_cast<const QRgb*>(image_.constScanLine(y));
    for (int x = 0; x < image_.width(); ++x) {
      if (apart(row[x], paper) < 8) continue;
      left = std::min(left, x), right = std::max(right, x);
      top = std::min(top, y), bottom = std::max(bottom, y);
    }
  }
  if (right < 0) return {};
  return {left / px_per_u_, top / px_per_u_, (right + 1 - left) / px_per_u_,
          (bottom + 1 - top) / px_per_u_};
}

}  // namespace cabwright::testing_ui
