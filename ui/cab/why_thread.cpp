// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/why_thread.h"

#include <QLineF>
#include <QPainter>
#include <algorithm>

#include "drawing/verdict.h"

namespace cabwright::cab {
namespace {

using drawing::Tone;

constexpr double kCornerR = 10;
constexpr Tone kMissing = Tone::kDoubt;

}  // namespace

QPainterPath roundedPath(const QPolygonF& corners) {
  QPainterPath path(corners.front());
  for (qsizetype k = 1; k + 1 < corners.size(); ++k) {
    const QLineF in(corners[k], corners[k - 1]), out(corners[k], corners[k + 1]);
    const double r = std::min({kCornerR, in.length() / 2, out.length() / 2});
    if (r < 0.5) continue;
    path.lineTo(in.pointAt(r / in.length()));
    path.quadTo(corners[k], out.pointAt(r / out.length()));
  }
  path.lineTo(corners.back());
  return path;
}

QPolygonF cornered(QPointF from, QPointF to, bool upright_first) {
  const QPointF corner = upright_first ? QPointF(from.x(), to.y()) : QPointF(to.x(), from.y());
  return {{from, corner, to}};
}

double lengthWithin(const QPolygonF& path, const QRectF& box) {
  double sum = 0;
  for (qsizetype k = 0; k + 1 < path.size(); ++k) {
    // Its legs are upright or level, so that what lies within is a box again.
    const QRectF leg = QRectF(path[k], path[k + 1]).normalized().adjusted(-0.5, -0.5, 0.5, 0.5);
    const QRectF both = leg.intersected(box);
    if (both.isValid()) sum += std::max(both.width(), both.height());
  }
  return sum;
}

QPolygonF shortened(QPolygonF path, double by) {
  while (path.size() > 1) {
    const QLineF leg(path[path.size() - 1], path[path.size() - 2]);
    if (leg.length() > by) {
      path.back() = leg.pointAt(by / leg.length());
      return path;
    }
    by -= leg.length();
    path.removeLast();
  }
  return path;
}

WhyThread::WhyThread(const SheetStyle& style, QWidget* sheet) : QWidget(sheet), style_(style) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setAttribute(Qt::WA_NoSystemBackground);
  setFocusPolicy(Qt::NoFocus);
  hide();
}

void WhyThread::show(const ThreadPath& path) {
  path_ = path;
  setGeometry(parentWidget()->rect());
  setVisible(path.circle.has_value());
  raise();
  update();
}

void WhyThread::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.scale(style_.frame.scale, style_.frame.scale);
  drawing::Pen pen(painter, style_.theme);
  const auto thread = [&](const QPolygonF& corners) {
    if (corners.size() < 2) return;
    const QPainterPath line = roundedPath(corners);
    pen.path(line, {drawing::kFocus + 5, Tone::kPaper, {}, true});  // clear of what it crosses
    pen.path(line, {drawing::kFocus, kMissing, {9, 5}, false});
    pen.circle(corners.front(), 4.5, drawing::kNoLine, kMissing);
  };
  if (path_.circle && !path_.card.isNull())
    pen.rect(path_.card, {drawing::kNorm, Tone::kInk}, Tone::kFace, 4);
  thread(path_.to_circle);
  thread(path_.onward);
  if (path_.circle) paintWhyDetail(pen, *path_.circle, path_.detail, kMissing);
  if (!path_.end) return;
  pen.circle(*path_.end, 19, {drawing::kFocus, kMissing});
  drawing::paintVerdict(pen, *path_.end + QPointF(17, -17), drawing::VerdictSign::kDefect, 8,
                        Tone::kPaper);
}

}  // namespace cabwright::cab
