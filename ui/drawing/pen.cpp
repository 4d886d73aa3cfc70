// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/pen.h"

#include <QFontMetricsF>
#include <QtMath>
#include <algorithm>
#include <cmath>

#include "drawing/face.h"

namespace cabwright::drawing {
namespace {

// Type is set in whole pixels of a finer grid and scaled back, so that a size of 18.5 u is 18.5 u
// on every device, whatever its resolution.
constexpr double kGrid = 8;

QFont makeFont(double size, bool bold, bool italic) {
  QFont font(faceName());
  font.setPixelSize(static_cast<int>(std::lround(size * kGrid)));
  font.setBold(bold);
  font.setItalic(italic);
  font.setHintingPreference(QFont::PreferNoHinting);
  font.setStyleStrategy(QFont::PreferAntialias);
  font.setKerning(true);
  return font;
}

double qtAngle(double clock_deg) { return 90.0 - clock_deg; }

constexpr QChar kSoftHyphen(0x00AD);

QString withoutSoftHyphens(const QString& text) {
  return text.contains(kSoftHyphen) ? QString(text).remove(kSoftHyphen) : text;
}

// Of a word that is too long, as many of its parts as fit, with a hyphen; empty: it fits, or cannot
// be parted.
QString takeHead(QString& word, double width, double size, bool bold) {
  if (textWidth(word, size, bold) <= width) return {};
  for (qsizetype at = word.lastIndexOf(kSoftHyphen); at > 0;
       at = word.lastIndexOf(kSoftHyphen, at - 1)) {
    QString head = withoutSoftHyphens(word.left(at)) + QLatin1Char('-');
    if (textWidth(head, size, bold) > width) continue;
    word.remove(0, at + 1);
    return head;
  }
  return {};
}

QRectF boxOf(QPointF centre, double r) { return {centre.x() - r, centre.y() - r, 2 * r, 2 * r}; }

}  // namespace

QPointF pointAt(QPointF centre, double r, double degrees) {
  const double a = qDegreesToRadians(degrees);
  return {centre.x() + r * std::sin(a), centre.y() - r * std::cos(a)};
}

double textWidth(const QString& text, double size, bool bold, bool italic) {
  return QFontMetricsF(makeFont(size, bold, italic)).horizontalAdvance(withoutSoftHyphens(text)) /
         kGrid;
}

QStringList wrapText(const QString& text, double width, double size, bool bold) {
  QStringList lines;
  for (const QString& part : text.split(QLatin1Char('\n'))) {
    QString line;
    for (QString word : part.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
      for (QString head = takeHead(word, width, size, bold); !head.isEmpty();
           head = takeHead(word, width, size, bold)) {
        if (!line.isEmpty()) lines << line;
        line.clear();
        lines << head;
      }
      const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
      if (!line.isEmpty() && textWidth(longer, size, bold) > width) {
        lines << line;
        line = word;
      } else {
        line = longer;
      }
    }
    lines << line;
  }
  return lines;
}

QString elideText(const QString& text, double width, double size, bool bold) {
  return QFontMetricsF(makeFont(size, bold, false))
      .elidedText(withoutSoftHyphens(text), Qt::ElideRight, width * kGrid);
}

Pen::Pen(QPainter& painter, Theme theme) : painter_(painter), theme_(theme) {
  painter_.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
}

QPen Pen::makePen(const Stroke& stroke) const {
  if (stroke.tone == Tone::kNone || stroke.width <= 0) return Qt::NoPen;
  QPen pen(color(stroke.tone), stroke.width, Qt::SolidLine,
           stroke.round_cap ? Qt::RoundCap : Qt::FlatCap, Qt::RoundJoin);
  const QTransform& t = painter_.worldTransform();
  const double scale =
      std::sqrt(std::abs(t.determinant())) * painter_.device()->devicePixelRatioF();
  double width = stroke.width;
  if (scale > 0 && width * scale < 1) pen.setWidthF(width = 1 / scale);
  if (!stroke.dash.empty()) {
    QList<qreal> pattern;  // in widths of the pen
    for (double length : stroke.dash) pattern << std::max(length, 0.01) / width;
    pen.setDashPattern(pattern);
  }
  return pen;
}

QBrush Pen::makeBrush(Tone fill) const {
  return fill == Tone::kNone ? QBrush(Qt::NoBrush) : QBrush(color(fill));
}

void Pen::line(QPointF from, QPointF to, const Stroke& stroke) {
  painter_.setPen(makePen(stroke));
  painter_.drawLine(from, to);
}

void Pen::path(const QPainterPath& path, const Stroke& stroke, Tone fill) {
  painter_.setPen(makePen(stroke));
  painter_.setBrush(makeBrush(fill));
  painter_.drawPath(path);
}

void Pen::polygon(const QPolygonF& points, const Stroke& stroke, Tone fill) {
  painter_.setPen(makePen(stroke));
  painter_.setBrush(makeBrush(fill));
  painter_.drawPolygon(points);
}

void Pen::polyline(const QPolygonF& points, const Stroke& stroke) {
  painter_.setPen(makePen(stroke));
  painter_.drawPolyline(points);
}

void Pen::circle(QPointF centre, double r, const Stroke& stroke, Tone fill) {
  ellipse(centre, r, r, stroke, fill);
}

void Pen::ellipse(QPointF centre, double rx, double ry, const Stroke& stroke, Tone fill) {
  painter_.setPen(makePen(stroke));
  painter_.setBrush(makeBrush(fill));
  painter_.drawEllipse(centre, rx, ry);
}

void Pen::rect(const QRectF& rect, const Stroke& stroke, Tone fill, double corner_r) {
  path(rectShape(rect, corner_r), stroke, fill);
}

void Pen::arc(QPointF centre, double r, double from_deg, double to_deg, const Stroke& stroke) {
  QPainterPath shape;
  shape.arcMoveTo(boxOf(centre, r), qtAngle(from_deg));
  shape.arcTo(boxOf(centre, r), qtAngle(from_deg), from_deg - to_deg);
  path(shape, stroke);
}

void Pen::sector(QPointF centre, double r_in, double r_out, double from_deg, double to_deg,
                 const Stroke& stroke, Tone fill) {
  path(sectorShape(centre, r_in, r_out, from_deg, to_deg), stroke, fill);
}

void Pen::hatch(const QPainterPath& shape, Tone tone, double gap, double degrees, double width) {
  painter_.save();
  painter_.setClipPath(shape, Qt::IntersectClip);
  const QRectF box = shape.boundingRect();
  const QPointF middle = box.center();
  const double reach = std::hypot(box.width(), box.height()) / 2 + gap;
  painter_.translate(middle);
  painter_.rotate(degrees);
  // Lines lie on a grid of the sheet, not of the shape, so that neighbours hatch alike.
  const double a = qDegreesToRadians(degrees);
  const double offset = -middle.x() * std::sin(a) + middle.y() * std::cos(a);
  const double first = -reach - std::fmod(offset - reach, gap);
  painter_.setPen(makePen({width, tone, {}, false}));
  for (double y = first; y <= reach; y += gap) painter_.drawLine(QPointF(-reach, y), {reach, y});
  painter_.restore();
}

void Pen::dots(const QPainterPath& shape, Tone tone, double gap, double r) {
  painter_.save();
  painter_.setClipPath(shape, Qt::IntersectClip);
  painter_.setPen(Qt::NoPen);
  painter_.setBrush(makeBrush(tone));
  const QRectF box = shape.boundingRect();
  const int first = static_cast<int>(std::floor(box.top() / gap));
  const int last = static_cast<int>(std::ceil(box.bottom() / gap));
  for (int row = first; row <= last; ++row) {
    const double shift = row % 2 == 0 ? 0 : gap / 2;
    for (double x = std::floor(box.left() / gap) * gap + shift; x <= box.right(); x += gap)
      painter_.drawEllipse(QPointF(x, row * gap), r, r);
  }
  painter_.restore();
}

double Pen::text(QPointF at, const QString& with_hyphens, const Words& words) {
  const QString text = withoutSoftHyphens(with_hyphens);
  const QFont font = makeFont(words.size, words.bold, words.italic);
  const double width = QFontMetricsF(font).horizontalAdvance(text) / kGrid;
  const double left = words.anchor == Anchor::kStart    ? at.x()
                      : words.anchor == Anchor::kMiddle ? at.x() - width / 2
                                                        : at.x() - width;
  if (noted_ != nullptr) {
    const QTransform& t = painter_.worldTransform();
    const QRectF box(left, at.y() - 0.74 * words.size, width, 0.94 * words.size);
    noted_->push_back({t.mapRect(box), text, words.size * std::sqrt(std::abs(t.determinant())),
                       words.tone, words.on, words.halo > 0});
  }
  if (words_left_out_) return width;
  painter_.save();
  painter_.translate(left, at.y());
  painter_.scale(1 / kGrid, 1 / kGrid);
  painter_.setFont(font);
  if (words.halo > 0) {
    QPainterPath outline;
    outline.addText(0, 0, font, text);
    painter_.strokePath(outline, QPen(color(words.on), words.halo * kGrid, Qt::SolidLine,
                                      Qt::RoundCap, Qt::RoundJoin));
  }
  painter_.setPen(color(words.tone));
  painter_.drawText(QPointF(0, 0), text);
  painter_.restore();
  return width;
}

double Pen::paragraph(QPointF at, const QString& text, double width, const Words& words,
                      double lead) {
  if (lead <= 0) lead = std::round(words.size * 1.36);
  for (const QString& line : wrapText(text, width, words.size, words.bold)) {
    this->text(at, line, words);
    at.ry() += lead;
  }
  return at.y();
}

void Pen::push(QPointF origin, double degrees, double sx, double sy) {
  painter_.save();
  painter_.translate(origin);
  painter_.rotate(degrees);
  painter_.scale(sx, sy);
}

QPainterPath sectorShape(QPointF centre, double r_in, double r_out, double from_deg,
                         double to_deg) {
  QPainterPath shape;
  shape.arcMoveTo(boxOf(centre, r_out), qtAngle(from_deg));
  shape.arcTo(boxOf(centre, r_out), qtAngle(from_deg), from_deg - to_deg);
  shape.arcTo(boxOf(centre, r_in), qtAngle(to_deg), to_deg - from_deg);
  shape.closeSubpath();
  return shape;
}

QPainterPath circleShape(QPointF centre, double r) {
  QPainterPath shape;
  shape.addEllipse(centre, r, r);
  return shape;
}

QPainterPath rectShape(const QRectF& rect, double corner_r) {
  QPainterPath shape;
  if (corner_r > 0) {
    shape.addRoundedRect(rect, corner_r, corner_r);
  } else {
    shape.addRect(rect);
  }
  return shape;
}

}  // namespace cabwright::drawing
