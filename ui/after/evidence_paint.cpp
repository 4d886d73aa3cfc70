// SPDX-License-Identifier: GPL-3.0-or-later
// The small dials: too small for figures, so the value stands below in words.
#include <algorithm>

#include "after/evidence.h"

namespace cabwright::after {

using drawing::Anchor;
using drawing::Tone;

namespace {

constexpr double kDialRadius = 38, kDialCell = 128, kLampCell = 100, kLampRadius = 13;

void paintSmallNeedle(drawing::Pen& pen, QPointF c, double r, double degrees,
                      drawing::NeedleKind kind) {
  const bool solid = kind == drawing::NeedleKind::kSolid;
  pen.push(c, degrees);
  pen.polygon(
      {{{0, -0.82 * r}, {3.6, 0.05 * r}, {2.6, 0.24 * r}, {-2.6, 0.24 * r}, {-3.6, 0.05 * r}}},
      {1.5}, solid ? Tone::kInk : Tone::kFace);
  pen.pop();
}

void paintSmallDial(drawing::Pen& pen, QPointF c, double r, const EvidenceDial& dial) {
  pen.circle(c, r, {drawing::kNorm}, Tone::kFace);
  pen.arc(c, 0.9 * r, -135, 135, {drawing::kThin, Tone::kInk2});
  for (double v = dial.scale.low; v <= dial.scale.high + 1e-9; v += dial.scale.major) {
    const double a = drawing::dialAngle(dial.scale, v);
    pen.line(drawing::pointAt(c, 0.9 * r, a), drawing::pointAt(c, 0.74 * r, a), {drawing::kNorm});
  }
  for (const drawing::RimMark& mark : dial.scale.marks) {
    const double a = drawing::dialAngle(dial.scale, mark.value);
    pen.polygon({{drawing::pointAt(c, r + 1, a), drawing::pointAt(c, r + 10, a - 7),
                  drawing::pointAt(c, r + 10, a + 7)}},
                drawing::kNoLine, Tone::kInk);
  }
  for (const drawing::DialNeedle& needle : dial.needles)
    paintSmallNeedle(pen, c, r, drawing::dialAngle(dial.scale, needle.value), needle.kind);
  pen.circle(c, 4.5, {1.5}, Tone::kFace);
}

double paintValues(drawing::Pen& pen, QPointF at, double width, const Evidence& evidence) {
  double y = at.y();
  for (const EvidenceValue& value : evidence.values) {
    const double room = width - drawing::textWidth(value.value, drawing::kText, true) - 14;
    const QStringList lines = drawing::wrapText(value.name, room);
    for (const QString& line : lines) {
      pen.text({at.x(), y + 18}, line, {.tone = Tone::kInk2, .on = Tone::kFace});
      if (&line == &lines.front())
        pen.text({at.x() + width, y + 18}, value.value,
                 {.anchor = Anchor::kEnd, .bold = true, .on = Tone::kFace});
      y += 24;
    }
  }
  return y - at.y();
}

}  // namespace

double paintEvidence(drawing::Pen& pen, QPointF at, double width, const Evidence& evidence) {
  double y = at.y();
  double x = at.x();
  for (const EvidenceDial& dial : evidence.dials) {
    const QPointF c(x + kDialCell / 2 - 8, y + kDialRadius + 12);
    paintSmallDial(pen, c, kDialRadius, dial);
    pen.text({c.x(), c.y() + kDialRadius + 20}, dial.name,
             {.anchor = Anchor::kMiddle, .tone = Tone::kInk2, .on = Tone::kFace});
    pen.text({c.x(), c.y() + kDialRadius + 43}, dial.value,
             {.anchor = Anchor::kMiddle, .bold = true, .on = Tone::kFace});
    x += kDialCell;
  }
  if (!evidence.dials.empty()) y += 2 * kDialRadius + 66;
  x = at.x();
  for (const EvidenceLamp& lamp : evidence.lamps) {
    const QPointF c(x + kLampCell / 2 - 4, y + 22);
    drawing::paintLamp(pen, c, {.color = lamp.color, .lit = lamp.lit, .mixed = true}, lamp.word,
                       kLampRadius);
    x += kLampCell;
  }
  if (!evidence.lamps.empty()) y += 74;
  y += paintValues(pen, {at.x(), y}, width, evidence);
  return y - at.y();
}

}  // namespace cabwright::after
