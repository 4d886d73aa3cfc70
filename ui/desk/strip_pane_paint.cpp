// SPDX-License-Identifier: GPL-3.0-or-later
// How the live strips are drawn: what lies under the curves, and the cursor over them.
#include <QPaintEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "after/words.h"
#include "desk/strip_groups.h"
#include "desk/strip_pane.h"
#include "drawing/furniture.h"
#include "drawing/verdict.h"

namespace cabwright::desk {

using after::kLanePitch;
using after::timeText;
using drawing::Anchor;
using drawing::Tone;
using drawing::VerdictSign;

namespace {

constexpr double kScaleRight = 182, kCapHalf = 0.36 * drawing::kText, kTimeWidth = 116;
constexpr double kFlagHeight = 22, kMostFlag = 150, kSignRoom = 21, kNear = 7, kLimits = 52;

VerdictSign signOf(EventKind kind) {
  return kind == EventKind::kMet        ? VerdictSign::kGood
         : kind == EventKind::kForgiven ? VerdictSign::kUnsure
                                        : VerdictSign::kDefect;
}

bool isVerdict(EventKind kind) {
  return kind == EventKind::kMet || kind == EventKind::kForgiven || kind == EventKind::kBroken;
}

// Pole on the left, cloth with a swallow's tail; what was done by stepping in is filled red.
double paintMarkFlag(drawing::Pen& pen, QPointF top, const QString& name, bool stepped_in) {
  const QString words = drawing::elideText(name, kMostFlag, drawing::kText, true);
  const double width = drawing::textWidth(words, drawing::kText, true) + 20;
  const Tone cloth = stepped_in ? Tone::kBad : Tone::kInk;
  pen.polygon({{top, top + QPointF(width, 0), top + QPointF(width - 7, kFlagHeight / 2),
                top + QPointF(width, kFlagHeight), top + QPointF(0, kFlagHeight)}},
              drawing::kNoLine, cloth);
  pen.text(top + QPointF(6, kFlagHeight / 2 + kCapHalf), words,
           {.bold = true, .tone = Tone::kPaper, .on = cloth});
  return width;
}

// A slip of paper with two lines of writing.
void paintRemark(drawing::Pen& pen, QPointF centre) {
  pen.rect({centre.x() - 8, centre.y() - 9, 16, 18}, {drawing::kNorm, Tone::kInk}, Tone::kFace, 2);
  for (const double dy : {-3.0, 2.5})
    pen.line(centre + QPointF(-4.5, dy), centre + QPointF(4.5, dy), {drawing::kThin, Tone::kInk});
}

}  // namespace

void StripPane::paintEvent(QPaintEvent* event) {
  QPainter painter(this);
  painter.fillRect(event->rect(), drawing::colorOf(look_.theme, Tone::kPaper));
  painter.scale(look_.scale, look_.scale);
  drawing::Pen pen(painter, look_.theme);
  const double legend = layout_.right * look_.scale;
  if (event->rect().left() < legend) {
    paintLanes(pen);
    for (std::size_t k = 0; k < plots_.size(); ++k) paintPlot(pen, plots_[k], layout_.plots[k]);
    paintPoles(pen);
    paintAxis(pen);
  }
  for (std::size_t k = 0; k < plots_.size(); ++k) paintLegend(pen, plots_[k], layout_.plots[k]);
  if (plots_.empty())
    pen.text({layout_.left, laneY(3) + 60}, tr("Choose what is to be shown from the list."),
             {.tone = Tone::kInk2});
}

void StripPane::paintLanes(drawing::Pen& pen) const {
  const QString names[] = {tr("Actions"), tr("Faults"), tr("Verdicts"), tr("Marks")};
  for (int lane = 0; lane < 4; ++lane) {
    const double y = laneY(lane);
    pen.text({0, y + kCapHalf}, names[lane], {.tone = Tone::kInk2});
    pen.line({layout_.left, y}, {layout_.right, y}, {drawing::kHairline, Tone::kHair});
  }
  paintActs(pen);
  paintFaults(pen);
  paintVerdicts(pen);
  paintMarks(pen);
}

// Those of the trainee stand on the line, those of others hang below it.
void StripPane::paintActs(drawing::Pen& pen) const {
  const double y = laneY(0);
  double last_own = -9, last_other = -9;
  for (const RunEvent* event : eventsShown()) {
    const bool own = event->kind == EventKind::kAct;
    if (!own && event->kind != EventKind::kOther) continue;
    const double x = xIn(event->tick);
    double& last = own ? last_own : last_other;
    if (x - last < 1.5) continue;  // no two can be told apart there
    last = x;
    if (own) {
      pen.line({x, y - 11}, {x, y}, {drawing::kNorm, Tone::kInk});
    } else {
      pen.polygon({{{x, y + 1}, {x + 5, y + 11}, {x - 5, y + 11}}}, drawing::kNoLine, Tone::kInk);
    }
  }
}

void StripPane::paintFaults(drawing::Pen& pen) const {
  const after::Span shown = span();
  for (const FaultBar& bar : faultBars()) {
    const double y = laneY(1) + bar.row * kLanePitch;
    const bool begins = bar.stay->from >= shown.from;
    const bool ends = bar.stay->to && *bar.stay->to <= shown.to;
    const double x0 = begins ? xIn(bar.stay->from) : layout_.left;
    const double x1 = ends ? xIn(*bar.stay->to) : layout_.right;
    const QRectF box(x0, y - after::kLaneBar / 2, std::max(3.0, x1 - x0), after::kLaneBar);
    pen.rect(box, drawing::kNoLine, Tone::kPaper);
    pen.hatch(drawing::rectShape(box), Tone::kBad, bar.stay->growing ? 9 : 6);
    const drawing::Stroke edge{drawing::kNorm, Tone::kBad};
    pen.line(box.topLeft(), box.topRight(), edge);
    pen.line(box.bottomLeft(), box.bottomRight(), edge);
    if (begins) pen.line(box.topLeft(), box.bottomLeft(), {drawing::kBold, Tone::kBad});
    if (ends) pen.line(box.topRight(), box.bottomRight(), edge);
    const QString words = drawing::elideText(bar.stay->name, box.width() - 24);
    if (words.size() < 6 && words != bar.stay->name) continue;
    const double wide = drawing::textWidth(words);
    pen.rect({x0 + 6, y - 10.5, wide + 10, 21}, drawing::kNoLine, Tone::kPaper);
    pen.text({x0 + 11, y + kCapHalf}, words, {.tone = Tone::kBad});
  }
}

// Where several fell close together the worst is seen.
void StripPane::paintVerdicts(drawing::Pen& pen) const {
  const double y = laneY(2);
  std::vector<double> taken;
  for (const EventKind kind : {EventKind::kBroken, EventKind::kForgiven, EventKind::kMet}) {
    for (const RunEvent* event : eventsShown()) {
      if (event->kind != kind) continue;
      const double x = xIn(event->tick);
      if (std::ranges::any_of(taken, [x](double t) { return std::abs(t - x) < kSignRoom; }))
        continue;
      taken.push_back(x);
      pen.circle({x, y}, 12, drawing::kNoLine, Tone::kPaper);
      drawing::paintVerdict(pen, {x, y}, signOf(kind), 9.5, Tone::kPaper);
      if (event->critical) pen.circle({x, y}, 14, {drawing::kNorm, Tone::kBad});
    }
  }
}

void StripPane::paintMarks(drawing::Pen& pen) const {
  const double y = laneY(3);
  double free_from = layout_.left;
  for (const RunEvent* event : eventsShown()) {
    const double x = xIn(event->tick);
    if (event->kind == EventKind::kRemark) {
      paintRemark(pen, {x, y});
      continue;
    }
    if (event->kind != EventKind::kMark && event->kind != EventKind::kIntervene) continue;
    const bool in = event->kind == EventKind::kIntervene;
    if (x < free_from) {
      pen.line({x, y - kFlagHeight / 2}, {x, y + kFlagHeight / 2},
               {drawing::kBold, in ? Tone::kBad : Tone::kInk});
      continue;
    }
    free_from = x + 4 + paintMarkFlag(pen, {x, y - kFlagHeight / 2}, event->words, in);
  }
}

void StripPane::paintPoles(drawing::Pen& pen) const {
  for (const RunEvent* event : eventsShown()) {
    const bool mark = event->kind == EventKind::kMark || event->kind == EventKind::kIntervene;
    if (!mark && event->kind != EventKind::kBroken) continue;
    const double x = xIn(event->tick), from = mark ? laneY(3) - kFlagHeight / 2 : laneY(2) + 12;
    if (mark) {
      pen.line({x, from}, {x, layout_.axis_y}, {drawing::kThin, Tone::kInk});
    } else {
      pen.line({x, from}, {x, layout_.axis_y}, {drawing::kThin, Tone::kBad, {3, 5}, false});
    }
  }
}

void StripPane::paintPlot(drawing::Pen& pen, const after::Plot& plot, const QRectF& box) const {
  // Paper before the run began.
  const double begin = std::clamp(xIn(0), box.left(), box.right());
  pen.rect({QPointF(begin, box.top()), box.bottomRight()}, drawing::kNoLine, Tone::kFace);
  for (const std::int64_t tick : after::axisTicks(layout_, span(), kTimeWidth)) {
    const double x = xIn(tick);
    if (tick >= 0) pen.line({x, box.top()}, {x, box.bottom()}, {drawing::kHairline, Tone::kHair});
  }
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
  double lowest = 1e9;
  for (double v = plot.low; v <= plot.high + plot.step * 1e-6; v += every) {
    const double y = y_of(v);
    lowest = std::min(lowest, y);
    pen.line({box.left() - 5, y}, {box.left(), y}, {drawing::kThin, Tone::kInk2});
    const QString figure = QString::number(std::abs(v) < plot.step * 1e-6 ? 0.0 : v, 'g', 5);
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

void StripPane::paintLegend(drawing::Pen& pen, const after::Plot& plot, const QRectF& box) const {
  const double left = box.right() + kLimits, right = width() / look_.scale - 4;
  const auto n = static_cast<double>(plot.curves.size());
  const double lead = std::min(25.0, (box.height() + 4) / n);
  double y = box.top() + 16;
  for (const after::Curve& curve : plot.curves) {
    pen.line({left, y - 6}, {left + 34, y - 6}, {2.6, curve.tone, curve.dash, false});
    const auto value = shownValue(curve.signal);
    const QString figure = value ? curveValueText(plot, curve.signal, *value) : tr("not known");
    const double wide = drawing::textWidth(figure, drawing::kText, true);
    pen.text({right, y}, figure,
             {.anchor = Anchor::kEnd, .bold = true, .tone = value ? Tone::kInk : Tone::kInk2});
    pen.text({left + 42, y}, drawing::elideText(curve.name, right - wide - left - 54),
             {.tone = Tone::kInk2});
    y += lead;
  }
}

void StripPane::paintAxis(drawing::Pen& pen) const {
  const double y = layout_.axis_y;
  pen.text({0, y + 26}, tr("Time"), {.tone = Tone::kInk2});
  const double end = layout_.right - drawing::textWidth(timeText(span().to), drawing::kText, true);
  for (const std::int64_t tick : after::axisTicks(layout_, span(), kTimeWidth)) {
    if (tick < 0) continue;
    const double x = xIn(tick);
    pen.line({x, y}, {x, y + 6}, {drawing::kThin, Tone::kInk2});
    const double half = drawing::textWidth(timeText(tick)) / 2;
    if (x - half < layout_.left - 30 || x + half > end - 12) continue;
    pen.text({x, y + 26}, timeText(tick), {.anchor = Anchor::kMiddle, .tone = Tone::kInk2});
  }
  pen.text({layout_.right, y + 26}, timeText(span().to), {.anchor = Anchor::kEnd, .bold = true});
  pen.text({layout_.right + kLimits, y + 26},
           isHeld() ? tr("held, %1 ago").arg(timeText(tape_.lastTick() - *held_to_)) : tr("now"),
           {.tone = isHeld() ? Tone::kHand : Tone::kInk2});
}

void StripPane::paintOver(drawing::Pen& pen) const {
  const double wide = width() / look_.scale, high = height() / look_.scale;
  if (hasFocus())
    pen.rect({1.6, 1.6, wide - 3.2, high - 3.2}, {drawing::kFocus, Tone::kHand}, Tone::kNone, 5);
  // What happened last, or at the cursor.
  const RunEvent* said = nullptr;
  for (const RunEvent* event : eventsShown()) {
    const bool near = cursor_ && std::abs(xIn(event->tick) - xIn(*cursor_)) < kNear;
    if (near && (said == nullptr || event->kind > said->kind)) said = event;
    if (!cursor_ && !isVerdict(event->kind)) said = event;
  }
  const double y = layout_.axis_y + 60;
  if (said != nullptr) {
    const double at = pen.text({0, y}, timeText(said->tick, true), {.tone = Tone::kInk2}) + 16;
    pen.text({at, y}, drawing::elideText(said->words, wide - at - 8),
             {.tone = isVerdict(said->kind) ? drawing::toneOf(signOf(said->kind)) : Tone::kInk});
  }
  if (!cursor_) return;
  const double x = xIn(*cursor_);
  pen.line({x, laneY(0) - 12}, {x, layout_.axis_y + 8}, {drawing::kNorm, Tone::kHand});
  for (std::size_t k = 0; k < plots_.size(); ++k) {
    const after::Plot& plot = plots_[k];
    const QRectF& box = layout_.plots[k];
    for (const after::Curve& curve : plot.curves) {
      const auto value = shownValue(curve.signal);
      if (!value) continue;
      const double share = (*value - plot.bottom()) / (plot.top() - plot.bottom());
      pen.circle({x, box.bottom() - box.height() * std::clamp(share, 0.0, 1.0)}, 4.2,
                 {drawing::kNorm, Tone::kHand}, Tone::kFace);
    }
  }
  const QRectF tag = cursorTag();
  pen.rect(tag, drawing::kNoLine, Tone::kHand, 3);
  pen.text({tag.left() + 8, tag.center().y() + kCapHalf}, timeText(*cursor_, true),
           {.bold = true, .tone = Tone::kPaper, .on = Tone::kHand});
}

QRectF StripPane::cursorTag() const {
  const double wide = drawing::textWidth(timeText(*cursor_, true), drawing::kText, true) + 16;
  const double left = std::clamp(xIn(*cursor_) - wide / 2, layout_.left - 40, layout_.right - wide);
  return {left, layout_.axis_y + 8, wide, 26};
}

}  // namespace cabwright::desk
