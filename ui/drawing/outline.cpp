// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/outline.h"

#include <QtMath>
#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace cabwright::drawing {
namespace {

// Reads one notation from left to right.
class Reader {
 public:
  explicit Reader(std::string_view text) : text_(text) {}

  bool atEnd() {
    skip();
    return text_.empty();
  }
  bool atNumber() {
    skip();
    return !text_.empty() &&
           (std::string_view("+-.0123456789").find(text_.front()) != std::string_view::npos);
  }
  char letter() {
    skip();
    const char c = text_.front();
    text_.remove_prefix(1);
    return c;
  }
  double number() {
    skip();
    double value = 0;
    const auto [end, error] = std::from_chars(text_.data(), text_.data() + text_.size(), value);
    Q_ASSERT(error == std::errc());
    text_.remove_prefix(static_cast<std::size_t>(end - text_.data()));
    return value;
  }
  QPointF point(QPointF from) {
    const double x = number();
    return from + QPointF(x, number());
  }

 private:
  void skip() {
    while (!text_.empty() && (text_.front() == ' ' || text_.front() == ',')) text_.remove_prefix(1);
  }
  std::string_view text_;
};

// From the two ends of an arc to its centre; a radius that is too small grows until it reaches.
void addArc(QPainterPath& path, double r, bool large, bool clockwise, QPointF to) {
  const QPointF from = path.currentPosition();
  const QPointF half = (to - from) / 2;
  const double reach = std::hypot(half.x(), half.y());
  if (reach <= 0) return;
  r = std::max(r, reach);
  const double aside = std::sqrt(r * r - reach * reach) / reach * (large == clockwise ? -1 : 1);
  const QPointF centre = (from + to) / 2 + QPointF(-half.y(), half.x()) * aside;
  const auto angle = [&](QPointF p) {
    return qRadiansToDegrees(std::atan2(centre.y() - p.y(), p.x() - centre.x()));
  };
  double sweep = angle(to) - angle(from);
  if (clockwise && sweep > 0) sweep -= 360;
  if (!clockwise && sweep < 0) sweep += 360;
  path.arcTo(centre.x() - r, centre.y() - r, 2 * r, 2 * r, angle(from), sweep);
}

// One command with its numbers. False: not a command.
bool addStep(QPainterPath& path, char command, Reader& reader) {
  const bool relative = command >= 'a';
  const QPointF here = path.currentPosition();
  const QPointF from = relative ? here : QPointF();
  switch (relative ? static_cast<char>(command - 'a' + 'A') : command) {
    case 'M':
      path.moveTo(reader.point(from));
      return true;
    case 'L':
      path.lineTo(reader.point(from));
      return true;
    case 'H':
      path.lineTo(from.x() + reader.number(), here.y());
      return true;
    case 'V':
      path.lineTo(here.x(), from.y() + reader.number());
      return true;
    case 'Q': {
      const QPointF bend = reader.point(from);
      path.quadTo(bend, reader.point(from));
      return true;
    }
    case 'C': {
      const QPointF first = reader.point(from), second = reader.point(from);
      path.cubicTo(first, second, reader.point(from));
      return true;
    }
    case 'A': {
      const double r = reader.number();
      const bool large = reader.number() > 0, clockwise = reader.number() > 0;
      addArc(path, r, large, clockwise, reader.point(from));
      return true;
    }
    default:
      return false;
  }
}

}  // namespace

QPainterPath outlineOf(std::string_view notation) {
  QPainterPath path;
  Reader reader(notation);
  char command = 'M';
  while (!reader.atEnd()) {
    if (!reader.atNumber()) command = reader.letter();
    if (command == 'Z' || command == 'z') {
      path.closeSubpath();
      continue;
    }
    const bool known = addStep(path, command, reader);
    Q_ASSERT(known);
    if (!known) break;
  }
  return path;
}

QPainterPath capsuleShape(QPointF from, QPointF to, double r) {
  QPainterPath line(from);
  line.lineTo(to);
  QPainterPathStroker stroker;
  stroker.setWidth(2 * r);
  stroker.setCapStyle(Qt::RoundCap);
  stroker.setCurveThreshold(0.05);
  return stroker.createStroke(line);
}

}  // namespace cabwright::drawing
