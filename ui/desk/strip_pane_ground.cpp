// SPDX-License-Identifier: GPL-3.0-or-later
// What of the live strips stands still while time goes on: names, scales, frames.
#include <algorithm>
#include <cmath>

#include "desk/strip_groups.h"
#include "desk/strip_pane.h"
#include "desk/strip_pane_look.h"

namespace cabwright::desk {

using drawing::Anchor;
using drawing::Tone;

void StripPane::paintGround(drawing::Pen& pen) const {
  const QString names[] = {tr("Actions"), tr("Faults"), tr("Verdicts"), tr("Marks")};
  for (int lane = 0; lane < 4; ++lane) {
    const double y = laneY(lane);
    pen.text({0, y + kCapHalf}, names[lane], {.tone = Tone::kInk2});
    pen.line({layout_.left, y}, {layout_.right, y}, {drawing::kHairline, Tone::kHair});
  }
  for (std::size_t k = 0; k < plots_.size(); ++k) {
    paintFrame(pen, plots_[k], layout_.plots[k]);
    paintNames(pen, plots_[k], layout_.plots[k]);
  }
  pen.text({0, layout_.axis_y + 26}, tr("Time"), {.tone = Tone::kInk2});
  if (plots_.empty())
    pen.text({layout_.left, laneY(3) + 60}, tr("Choose what is to be shown from the list."),
             {.tone = Tone::kInk2});
}

void StripPane::paintFrame(drawing::Pen& pen, const after::Plot& plot, const QRectF& box) const {
  pen.rect(box, drawing::kNoLine, Tone::kFace);
  paintScale(pen, plot, box);
  pen.rect(box, {drawing::kThin, Tone::kInk});
  pen.text({0, box.top() + 17}, plot.name, {.bold = true});
  if (!plot.unit.isEmpty() && box.height() > 40)
    pen.text({0, box.top() + 40}, plot.unit, {.tone = Tone::kInk2});
}

void StripPane::paintScale(drawing::Pen& pen, const after::Plot& plot, const QRectF& box) const {
  const auto y_of = [&](double value) {
    return box.bottom() - box.height() * (value - plot.bottom()) / (plot.top() - plot.bottom());
  };
  const double per_step = box.height() * plot.step / (plot.top() - plot.bottom());
  const double every = std::max(1.0, std::ceil(22 / per_step)) * plot.step;
  // Figures at whole multiples, so that zero is among them.
  const double first = std::ceil(plot.low / every - 1e-6) * every;
  for (double v = first; v <= plot.high + plot.step * 1e-6; v += every) {
    const double y = y_of(v);
    pen.line({box.left() - 5, y}, {box.left(), y}, {drawing::kThin, Tone::kInk2});
    const double shown = std::abs(v) < plot.step * 1e-6 ? 0.0 : v;
    QString figure = QString::number(std::abs(shown), 'g', 5);
    if (shown < 0) figure.prepend(QChar(0x2212));
    pen.text({kScaleRight, std::clamp(y + kCapHalf, box.top() + 13, box.bottom())}, figure,
             {.anchor = Anchor::kEnd, .tone = Tone::kInk2});
  }
  double above = 1e9;  // figures keep clear of each other, the triangles stay at their lines
  for (const double limit : plot.limits) {
    const double y = y_of(limit);
    pen.line({box.left(), y}, {box.right(), y}, {drawing::kThin, Tone::kRule, {7, 5}, false});
    pen.polygon({{{box.right() + 3, y}, {box.right() + 12, y - 5}, {box.right() + 12, y + 5}}},
                drawing::kNoLine, Tone::kInk);
    above = std::min(y + kCapHalf, above - 18);
    pen.text({box.right() + 16, above}, QString::number(limit), {.bold = true});
  }
}

// Where there is no room for all of it, what tells it from its neighbours stays: "... train pipe"
// beside "... release pipe", "Engine 1, ..." beside "Engine 2, ...".
QString StripPane::shortName(const after::Plot& plot, const QString& name, double room) {
  if (drawing::textWidth(name) <= room) return name;
  const QStringList words = name.split(QLatin1Char(' '));
  qsizetype same = plot.curves.size() > 1 ? words.size() - 1 : 0;
  for (const after::Curve& curve : plot.curves) {
    if (curve.name == name) continue;
    const QStringList others = curve.name.split(QLatin1Char(' '));
    qsizetype k = 0;
    while (k < std::min(same, others.size()) && words[k] == others[k]) ++k;
    same = k;
  }
  const QString dots(QChar(0x2026));
  if (same == 0 || drawing::textWidth(words.mid(0, same + 1).join(QLatin1Char(' ')) + dots) <= room)
    return drawing::elideText(name, room);
  return drawing::elideText(dots + QLatin1Char(' ') + words.mid(same).join(QLatin1Char(' ')), room);
}

void StripPane::paintNames(drawing::Pen& pen, const after::Plot& plot, const QRectF& box) const {
  const double left = box.right() + kLimits, lead = legendLead(plot, box);
  const double room = width() / look_.scale - kEdge - kValue - left - 50;
  double y = box.top() + 16;
  for (const after::Curve& curve : plot.curves) {
    pen.line({left, y - 6}, {left + 34, y - 6}, {2.6, curve.tone, curve.dash, false});
    pen.text({left + 42, y}, shortName(plot, curve.name, room), {.tone = Tone::kInk2});
    y += lead;
  }
}

}  // namespace cabwright::desk
