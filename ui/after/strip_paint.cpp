// SPDX-License-Identifier: GPL-3.0-or-later
// How the strip is drawn: what lies under the curves, and what lies over them.
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "after/flag_sign.h"
#include "after/strip_chart.h"
#include "after/words.h"
#include "drawing/furniture.h"
#include "drawing/key_cap.h"

namespace cabwright::after {

using drawing::Anchor;
using drawing::Tone;

namespace {

constexpr double kValueRight = 188, kScaleRight = 230, kCapHalf = 0.36 * drawing::kText;
constexpr double kTimeWidth = 112;
constexpr qsizetype kLeastLetters = 6;  // of a word cut short, with the ellipsis
constexpr double kLeastLead = 18;       // of the words of a plot, one below the other

}  // namespace

void StripChart::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), drawing::colorOf(look_.theme, Tone::kPaper));
  painter.scale(look_.scale, look_.scale);
  drawing::Pen pen(painter, look_.theme);
  if (history_ == nullptr) return;
  paintLanes(pen);
  if (!review_) paintActions(pen, layout_.actions_y);
  for (std::size_t k = 0; k < layout_.plots.size(); ++k) {
    paintPlot(pen, plots_[k], layout_.plots[k]);
    paintLegend(pen, plots_[k], layout_.plots[k]);
  }
  paintAxis(pen);
}

void StripChart::paintSegment(drawing::Pen& pen, const Lane& lane, const Segment& segment,
                              double y) const {
  const double x0 = std::max(layout_.left, layout_.xOf(segment.from, span_));
  const double x1 = std::min(layout_.right, layout_.xOf(segment.to, span_));
  const double width = std::max(2.0, x1 - x0 - 2);
  const QRectF bar(x0 + 1, y - kLaneBar / 2, width, kLaneBar);
  if (lane.kind == LaneKind::kFault) {
    paintFault(pen, segment, y);
    return;
  }
  const bool hand = lane.kind == LaneKind::kHand;
  const bool dark = lane.kind == LaneKind::kLamp && !segment.lit;
  const bool lap = lane.kind == LaneKind::kBrake && segment.value == 0;
  drawing::Stroke stroke{drawing::kThin,
                         hand          ? Tone::kHand
                         : segment.lit ? Tone::kGood
                                       : Tone::kInk,
                         {},
                         false};
  if (segment.lit) stroke.width = drawing::kNorm;
  if (dark || lap) stroke = {drawing::kThin, Tone::kRule, {4, 3}, false};
  if (width < 5) {
    pen.rect(bar, drawing::kNoLine, stroke.tone);
    return;
  }
  const Tone fill = hand ? Tone::kWash : dark || lap ? Tone::kPaper : Tone::kFace;
  pen.rect(bar, stroke, fill, 3);
  const double room = width - 14;
  const bool bold = segment.lit;
  const QString words = drawing::elideText(segment.words, room, drawing::kText, bold);
  if (words != segment.words && words.size() < kLeastLetters) return;
  pen.text({x0 + 8, y + kCapHalf}, words,
           {.bold = bold,
            .tone = segment.lit   ? Tone::kGood
                    : dark || lap ? Tone::kInk2
                                  : Tone::kInk,
            .on = fill});
}

void StripChart::paintLanes(drawing::Pen& pen) const {
  if (!review_)
    pen.text({0, layout_.flags_top + kFlagHeight / 2 + kCapHalf}, tr("Marks"),
             {.tone = Tone::kInk2});
  double y = layout_.lanes_top;
  for (const Lane& lane : lanes_) {
    const double name = pen.text({0, y + kCapHalf}, lane.name, {.tone = Tone::kInk2});
    pen.text({kScaleRight, y + kCapHalf},
             drawing::elideText(wordsAt(lane, cursor_), kScaleRight - name - 10, drawing::kText),
             {.anchor = Anchor::kEnd});
    pen.line({layout_.left, y}, {layout_.right, y}, {drawing::kHairline, Tone::kHair});
    for (const Segment& segment : lane.segments) {
      if (segment.to < span_.from || segment.from > span_.to || segment.words.isEmpty()) continue;
      if (lane.kind == LaneKind::kPlace && segment.value == 0) continue;  // nowhere: on the way
      paintSegment(pen, lane, segment, y);
    }
    if (lane.kind == LaneKind::kActions) paintActions(pen, y);
    paintSigns(pen, lane, y);
    y += kLanePitch;
  }
}

void StripChart::paintActions(drawing::Pen& pen, double y) const {
  if (!review_) pen.text({0, y + kCapHalf}, tr("Actions"), {.tone = Tone::kInk2});
  double last = -1;
  for (const session::TimedAction& timed : actions_) {
    if (timed.tick < span_.from || timed.tick > span_.to) continue;
    const double x = layout_.xOf(timed.tick, span_);
    if (x - last < 1.5) continue;  // no two can be told apart there
    pen.line({x, y - 8}, {x, y + 8}, {drawing::kThin, Tone::kInk});
    last = x;
  }
}

void StripChart::paintPlot(drawing::Pen& pen, const Plot& plot, const QRectF& box) const {
  const auto yOf = [&](double value) {
    return box.bottom() - box.height() * (value - plot.bottom()) / (plot.top() - plot.bottom());
  };
  pen.rect(box, drawing::kNoLine, Tone::kFace);
  for (const std::int64_t tick : axisTicks(layout_, span_, kTimeWidth)) {
    const double x = layout_.xOf(tick, span_);
    pen.line({x, box.top()}, {x, box.bottom()}, {drawing::kHairline, Tone::kHair});
  }
  for (double v = plot.low; v <= plot.high + 1e-9; v += plot.step) {
    pen.line({box.left() - 5, yOf(v)}, {box.left(), yOf(v)}, {drawing::kThin, Tone::kInk2});
    pen.text({kScaleRight, yOf(v) + kCapHalf}, QString::number(v),
             {.anchor = Anchor::kEnd, .tone = Tone::kInk2});
  }
  double above = 1e9;
  for (auto it = plot.limits.begin(); it != plot.limits.end(); ++it) {
    const double y = yOf(*it);
    pen.line({box.left(), y}, {box.right(), y}, {drawing::kThin, Tone::kRule, {7, 5}, false});
    // Figures keep clear of each other, the triangles stay at their lines.
    const double at = std::min(y + kCapHalf, above - 17);
    above = at;
    pen.polygon({{{box.right() + 3, y}, {box.right() + 12, y - 5}, {box.right() + 12, y + 5}}},
                drawing::kNoLine, Tone::kInk);
    pen.text({box.right() + 17, at}, QString::number(*it), {.bold = true});
  }
  pen.rect(box, {drawing::kThin, Tone::kInk});
}

void StripChart::paintLegend(drawing::Pen& pen, const Plot& plot, const QRectF& box) const {
  const bool several = plot.curves.size() > 1;
  // The lowest line of a low plot may reach into the gap below it.
  const double lead = std::clamp((box.height() - 4) / (several ? 3 : 2), kLeastLead, 25.0);
  double y = box.top() + 15;
  const double name = pen.text({0, y}, plot.name, {.bold = true});
  if (several) {
    pen.text({name + 8, y}, plot.unit, {.tone = Tone::kInk2});
  } else {
    y += lead;
    pen.text({0, y}, plot.unit, {.tone = Tone::kInk2});
    y -= lead;
  }
  for (const Curve& curve : plot.curves) {
    y += lead;
    if (several) {
      pen.line({0, y - 6}, {26, y - 6}, {2.6, curve.tone, curve.dash, false});
      pen.text({32, y}, curve.name, {.tone = Tone::kInk2});
    }
    const auto value = valueAtCursor(curve.signal);
    if (value && !review_)  // there it stands at the cursor
      pen.text({kValueRight, y}, QString::number(*value, 'f', plot.decimals),
               {.anchor = Anchor::kEnd, .bold = true});
  }
}

void StripChart::paintAxis(drawing::Pen& pen) const {
  const double y = layout_.axis_y, up = layout_.axis_above ? -1 : 1;
  const double words_y = layout_.axis_above ? y - 13 : y + 26;
  double x_key = pen.text({0, words_y}, tr("Time"), {.tone = Tone::kInk2}) + 30;
  for (const char* key : {"+", "\u2212", "0"}) {
    if (!look_.keys) break;
    const double wide = drawing::paintKeyCap(pen, {x_key, words_y - 6}, QString::fromUtf8(key));
    x_key += wide + 6;
  }
  if (layout_.axis_above) {
    pen.line({layout_.left, y}, {layout_.right, y}, {drawing::kThin, Tone::kInk});
    for (const std::int64_t tick : axisTicks(layout_, span_, kTimeWidth / 5)) {
      const double x = layout_.xOf(tick, span_);
      pen.line({x, y}, {x, y - 4}, {drawing::kThin, Tone::kInk2});
    }
  }
  const QRectF tag = cursorTag();
  for (const std::int64_t tick : axisTicks(layout_, span_, kTimeWidth)) {
    const double x = layout_.xOf(tick, span_);
    pen.line({x, y}, {x, y + up * 7}, {drawing::kThin, Tone::kInk2});
    const double half = drawing::textWidth(timeText(tick)) / 2 + 6;
    if (!tag.isNull() && x + half > tag.left() && x - half < tag.right()) continue;
    pen.text({x, words_y}, timeText(tick), {.anchor = Anchor::kMiddle, .tone = Tone::kInk2});
  }
}

void StripChart::paintOver(drawing::Pen& pen) const {
  if (history_ == nullptr) return;
  paintFlags(pen);
  paintCursor(pen);
  if (!hasFocus()) return;
  // The keys move the cursor: the ring is round its time.
  if (const QRectF tag = cursorTag(); !tag.isNull()) {
    drawing::paintFocusRing(pen, tag.adjusted(2, 2, -2, -2), 3);
  } else {
    const double top = layout_.lanes_top - kLaneBar / 2;
    drawing::paintFocusRing(
        pen, {layout_.left, top, layout_.right - layout_.left, layout_.end - top}, 3);
  }
}

void StripChart::paintFlags(drawing::Pen& pen) const {
  for (const PlacedFlag& placed : placed_) {
    const Flag& flag = flags_[placed.flag];
    const double y = layout_.flags_top + placed.row * kFlagPitch;
    const bool critical = flag.rule_class == marking::RuleClass::kCritical;
    const drawing::Stroke pole{
        critical ? drawing::kNorm : drawing::kThin, toneOf(flag.rule_class), {}, false};
    drawing::Stroke on_plots = pole;
    if (!critical || flag.again) on_plots.dash = {3, 5};
    const double lanes_end = layout_.actions_y + kLanePitch / 2;
    pen.line({placed.x, y}, {placed.x, lanes_end}, flag.again ? on_plots : pole);
    pen.line({placed.x, lanes_end}, {placed.x, layout_.end}, on_plots);
  }
  for (const PlacedFlag& placed : placed_) {
    const Flag& flag = flags_[placed.flag];
    const double y = layout_.flags_top + placed.row * kFlagPitch;
    const QString text = flag.again ? QString() : QString::number(flag.line);
    paintFlag(pen, {placed.x, y},
              {flag.rule_class, text, flag.line == selected_line_, placed.mirrored});
    if (placed.merged > 0)
      pen.text(
          {placed.x + (placed.mirrored ? 0 : flagWidth(text)) + 4, y + kFlagHeight / 2 + kCapHalf},
          QStringLiteral("+%1").arg(placed.merged), {.tone = Tone::kInk2});
  }
}

void StripChart::paintCursor(drawing::Pen& pen) const {
  if (cursor_ < span_.from || cursor_ > span_.to) return;
  const double x = layout_.xOf(cursor_, span_);
  const double top = layout_.axis_above ? layout_.axis_y - 9 : layout_.lanes_top - kLaneBar / 2 - 4;
  pen.line({x, top}, {x, layout_.end + 8}, {drawing::kNorm, Tone::kHand});
  for (std::size_t k = 0; k < layout_.plots.size(); ++k) {
    const Plot& plot = plots_[k];
    const QRectF& box = layout_.plots[k];
    double free_y = box.top() - 40;
    for (const Curve& curve : plot.curves) {
      const auto value = valueAtCursor(curve.signal);
      if (!value) continue;
      const double share = (*value - plot.bottom()) / (plot.top() - plot.bottom());
      const QPointF at(x, box.bottom() - box.height() * std::clamp(share, 0.0, 1.0));
      pen.circle(at, 4.2, {drawing::kNorm, Tone::kHand}, Tone::kFace);
      if (review_) paintValue(pen, at, QString::number(*value, 'f', plot.decimals), box, free_y);
    }
  }
  const QRectF tag = cursorTag();
  pen.rect(tag, drawing::kNoLine, Tone::kHand, 3);
  if (layout_.axis_above)
    pen.polygon({{{x - 6, tag.bottom()}, {x + 6, tag.bottom()}, {x, layout_.axis_y}}},
                drawing::kNoLine, Tone::kHand);
  pen.text({tag.left() + 8, tag.center().y() + kCapHalf}, timeText(cursor_, true),
           {.bold = true, .tone = Tone::kPaper, .on = Tone::kHand});
}

// Where the time of the cursor stands; null while it is out of sight.
QRectF StripChart::cursorTag() const {
  if (cursor_ < span_.from || cursor_ > span_.to) return {};
  const double wide = drawing::textWidth(timeText(cursor_, true), drawing::kText, true) + 16;
  const double x = layout_.xOf(cursor_, span_), right = width() / look_.scale;
  const double left = std::clamp(x - wide / 2, layout_.left - 40, std::max(0.0, right - wide));
  return {left, layout_.axis_above ? layout_.axis_y - 35 : layout_.axis_y + 8, wide, 26};
}

}  // namespace cabwright::after
