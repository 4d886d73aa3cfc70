// SPDX-License-Identifier: GPL-3.0-or-later
// Signals, boards and marks of the line ahead. They are drawn larger than they are when they are
// far away, so that their shape can be read; where they stand is true.
#include <algorithm>
#include <cmath>

#include "cab/names.h"
#include "cab/outside_view.h"
#include "drawing/furniture.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Pen;
using drawing::Tone;

namespace {

constexpr double kSignalAtM = 2.7, kSignalUpM = 4.3;
constexpr double kSeenFarther = 2.2;  // a head is seen from so much farther than it can be read
constexpr double kLeastScale = 9, kMostScale = 19, kMostWithinM = 45;
constexpr double kAtTheMarkM = 1;
constexpr double kWordsMargin = 12, kLead = 23;
constexpr double kNoMarkM = 9000, kNoLimitMph = 900;
constexpr double kMarkSeenM = 600, kLimitSeenM = 500, kBoardSeenM = 110, kHeadlightM = 55;

// As far as an eye tells it.
QString distanceText(double m) {
  const double step = m > 100 ? 10 : m > 20 ? 5 : 1;
  return Outside::tr("%1 m").arg(std::round(m / step) * step, 0, 'f', 0);
}

double aheadOf(const OutsideScene& scene, double position_m) {
  return facingOf(scene.cab) * (position_m - scene.front_m);
}

struct NextLimit {
  double mph = 0, ahead_m = 1e9;
};

// Where the limit changes next; what holds behind that board, as one comes to it.
NextLimit findNextLimit(const OutsideScene& scene) {
  NextLimit next;
  const auto& limits = scene.line->route.limits;
  for (std::size_t k = 1; k < limits.size(); ++k) {
    const double ahead = aheadOf(scene, limits[k].from_m);
    if (ahead < 0 || ahead > next.ahead_m) continue;
    next = {scene.cab == 0 ? limits[k].mph : limits[k - 1].mph, ahead};
  }
  return next;
}

QString signalWords(const OutsideScene& scene) {
  return scene.signal > 0.5 ? Outside::tr("clear") : Outside::tr("at danger");
}

QString markWords(const OutsideScene& scene) {
  if (std::abs(scene.mark_m) < kAtTheMarkM) return Outside::tr("at the mark");
  if (scene.mark_m < 0) return Outside::tr("past the mark, %1").arg(distanceText(-scene.mark_m));
  return Outside::tr("stopping mark %1").arg(distanceText(scene.mark_m));
}

QString limitWords(const OutsideScene& scene) {
  return Outside::tr("limit %1 mph").arg(scene.limit_mph, 0, 'f', 0);
}

struct Head {
  QPointF foot;
  double scale = 1;                              // u for a metre of it
  double top_y = 0;                              // of the head
  [[nodiscard]] QPointF lens(int which) const {  // 0 upper, 1 lower
    return {foot.x(), top_y + (which == 0 ? 0.48 : 1.22) * scale};
  }
};

Head placeHead(const Perspective& view, double right_m, double ahead_m) {
  const QRectF& w = view.window();
  Head head;
  head.foot = view.at(right_m, std::max(ahead_m, view.nearest()));
  // The outer part of the window is for its word.
  const double most = std::max(30.0, w.width() / 2 - 142);
  const double x = std::clamp(head.foot.x() - w.center().x(), -most, most);
  head.foot = {w.center().x() + x, std::min(head.foot.y(), w.bottom() - 6)};
  // As the root of the distance: it grows as one comes, and can be read from afar.
  const double near = std::sqrt(kMostWithinM / std::max(ahead_m, 1.0));
  head.scale = std::clamp(kMostScale * near, kLeastScale, kMostScale);
  head.top_y = std::max(w.top() + 7, head.foot.y() - kSignalUpM * head.scale);
  return head;
}

void paintPost(Pen& pen, const Head& head, bool dark) {
  const Tone tone = dark ? Tone::kRule : Tone::kInk;
  const double y = head.top_y + 1.7 * head.scale;
  pen.rect({head.foot.x() - 1.6, y, 3.2, std::max(0.0, head.foot.y() - y)},
           {drawing::kThin, tone, {}, false}, dark ? Tone::kBezel : Tone::kFace);
  pen.line(head.foot - QPointF(7, 0), head.foot + QPointF(7, 0), {drawing::kNorm, tone, {}, false});
}

// A signal too far to be read, or one for trains the other way: a shape and no more.
void paintFarHead(Pen& pen, const Head& head, bool from_behind) {
  paintPost(pen, head, false);
  const double k = head.scale * 0.8;
  const QRectF box(head.foot.x() - 0.42 * k, head.top_y, 0.84 * k, 1.7 * head.scale);
  pen.rect(box, {drawing::kThin, Tone::kInk2, {}, false}, Tone::kPaper, 3);
  if (from_behind) {
    pen.hatch(drawing::rectShape(box, 3), Tone::kRule, 4);
    return;
  }
  for (int k2 = 0; k2 < 2; ++k2)
    pen.circle(head.lens(k2), 0.24 * head.scale, {drawing::kHairline, Tone::kInk2, {}, false});
}

void paintReadHead(Pen& pen, const Head& head, bool clear, bool dark) {
  paintPost(pen, head, dark);
  const double k = head.scale;
  const QRectF box(head.foot.x() - 0.62 * k, head.top_y - 1, 1.24 * k, 1.7 * k + 2);
  pen.rect(box, {drawing::kNorm, dark ? Tone::kRule : Tone::kInk, {}, false}, Tone::kBezel, 5);
  for (int which = 0; which < 2; ++which) {
    const bool lit = (which == 0) == clear;
    const QPointF c = head.lens(which);
    if (!lit) {
      pen.circle(c, 0.3 * k, {drawing::kHairline, Tone::kRule, {}, false});
      continue;
    }
    pen.circle(c, 0.36 * k, drawing::kNoLine, clear ? Tone::kGreen : Tone::kRed);
    for (double a : {60.0, 90.0, 120.0, 240.0, 270.0, 300.0})
      pen.line(drawing::pointAt(c, 0.76 * k, a), drawing::pointAt(c, 1.06 * k, a),
               {drawing::kNorm, dark ? Tone::kWhite : Tone::kInk, {}, false});
  }
}

// Other heads along the line, as shapes: readable ones are the Frame's.
void paintOtherHeads(Pen& pen, const Perspective& view, const OutsideScene& scene) {
  if (scene.dark) return;
  const double right = rightSign(scene.cab);
  for (const unit::RouteSignal& s : scene.line->route.signals) {
    const double ahead = aheadOf(scene, s.position_m);
    const bool ours = s.direction == static_cast<int>(facingOf(scene.cab));
    const bool read = ours && scene.signal > -0.5 && std::abs(ahead - scene.signal_m) < 1;
    const double reach = ours ? s.sighting_m * kSeenFarther : 250;
    if (ahead < 25 || ahead > std::min(reach, view.farthest()) || read) continue;
    if (!view.isVisible(ahead)) continue;
    paintFarHead(pen, placeHead(view, ours ? kSignalAtM * right : -7.6 * right, ahead), !ours);
  }
}

void paintSignal(Pen& pen, const Perspective& view, const OutsideScene& scene) {
  if (scene.signal < -0.5) return;
  const double right = rightSign(scene.cab);
  const Head head = placeHead(view, kSignalAtM * right, scene.signal_m);
  const bool clear = scene.signal > 0.5;
  paintReadHead(pen, head, clear, scene.dark);
  const OutsideTones tones = tonesOf(scene.dark);
  const QRectF& w = view.window();
  const QString first = Outside::tr("Signal %1").arg(distanceText(scene.signal_m));
  const QString second = signalWords(scene);
  const double width =
      std::max(drawing::textWidth(first), drawing::textWidth(second, drawing::kText + 0.5, true));
  const double inner =
      right > 0 ? w.right() - kWordsMargin - width : w.left() + kWordsMargin + width;
  const double x = right > 0 ? inner : w.left() + kWordsMargin;
  const double y = w.top() + 22;
  const QPointF from = head.lens(clear ? 0 : 1) + QPointF(right * (1.2 * head.scale), -2);
  const QPointF to(inner - right * 6, y + kLead - 6);
  const QPointF bend(to.x() - right * std::min(10.0, std::abs(to.x() - from.x()) / 2), to.y());
  if (right * (to.x() - from.x()) > 4)
    pen.polyline({{from, bend, to}}, {drawing::kThin, tones.second, {}, false});
  pen.text({x, y}, first, {.tone = tones.second, .on = tones.ground, .halo = 3});
  pen.text({x, y + kLead}, second,
           {.size = drawing::kText + 0.5,
            .bold = true,
            .tone = tones.word,
            .on = tones.ground,
            .halo = 3});
}

// A round board with its figure, on the side of the other line.
void paintLimitBoard(Pen& pen, const Perspective& view, const OutsideScene& scene) {
  const NextLimit next = findNextLimit(scene);
  if (next.ahead_m > kLimitSeenM || next.ahead_m < 6 || scene.dark) return;
  if (!view.isVisible(next.ahead_m)) return;
  const QRectF& w = view.window();
  QPointF foot = view.at(-2.5 * rightSign(scene.cab), std::max(next.ahead_m, view.nearest()));
  foot.setY(std::min(foot.y(), w.bottom() - 5));
  if (next.ahead_m > 160) {
    pen.line(foot, foot - QPointF(0, 10), {drawing::kThin, Tone::kInk2, {}, false});
    pen.circle(foot - QPointF(0, 12), 4.5, {drawing::kThin, Tone::kInk, {}, false}, Tone::kFace);
    return;
  }
  const QPointF c(foot.x(), std::max(foot.y() - 24, view.at(0, 1e6).y() - 2));
  pen.line(foot, c, {drawing::kNorm, Tone::kInk, {}, false});
  pen.circle(c, 16, {drawing::kRing, Tone::kInk, {}, false}, Tone::kFace);
  pen.text(c + QPointF(0, 0.36 * drawing::kText), QString::number(next.mph, 'f', 0),
           {.anchor = Anchor::kMiddle, .bold = true, .on = Tone::kFace});
}

// The plate where the front should stand, on the platform's side.
std::optional<QPointF> paintMark(Pen& pen, const Perspective& view, const OutsideScene& scene) {
  if (scene.mark_m < view.nearest() || scene.mark_m > kMarkSeenM) return {};
  const double at = scene.front_m + facingOf(scene.cab) * scene.mark_m;
  double side = rightSign(scene.cab);
  for (const unit::Platform& p : scene.line->route.platforms) {
    if (at > p.from_m - 1 && at < p.to_m + 1 && p.side == 2) side = -side;
  }
  if (!view.isVisible(scene.mark_m)) return {};
  if (scene.dark && (scene.mark_m > kHeadlightM || !scene.headlit)) return {};
  const QPointF foot = view.at(side * 2.1, scene.mark_m, 0.62);
  const double k = std::clamp(view.scaleAt(scene.mark_m), 5.0, 14.0);
  const QPointF c = foot - QPointF(0, 1.5 * k);
  const OutsideTones tones = tonesOf(scene.dark);
  pen.line(foot, c, {drawing::kThin, tones.line, {}, false});
  pen.polygon({{c + QPointF(0, -k), c + QPointF(k, 0), c + QPointF(0, k), c + QPointF(-k, 0)}},
              {drawing::kNorm, tones.line, {}, false}, scene.dark ? Tone::kBezel : Tone::kPaper);
  pen.line(c - QPointF(0.5 * k, 0), c + QPointF(0.5 * k, 0),
           {drawing::kBold, tones.line, {}, false});
  return c;
}

// A board that says something, at its distance; its words stand at the foot of the window.
void paintNotice(Pen& pen, const Perspective& view, const OutsideScene& scene) {
  const OutsideTones tones = tonesOf(scene.dark);
  const QRectF& w = view.window();
  const double right = rightSign(scene.cab);
  for (const scenario::Board& board : scene.line->boards) {
    const double ahead = aheadOf(scene, board.at_m);
    const double reach = !scene.dark ? kBoardSeenM : scene.headlit ? kHeadlightM : 0;
    if (ahead < 4 || ahead > reach) continue;
    const QPointF foot = view.at(4.8 * right, std::max(ahead, view.nearest()));
    const QRectF plate(foot.x() - 11, foot.y() - 30, 22, 15);
    pen.line(foot, foot - QPointF(0, 16), {drawing::kNorm, tones.line, {}, false});
    pen.rect(plate, {drawing::kNorm, tones.line, {}, false},
             scene.dark ? Tone::kBezel : Tone::kPaper, 2);
    for (double y : {5.0, 10.0})
      pen.line(plate.topLeft() + QPointF(4, y), plate.topLeft() + QPointF(18, y),
               {drawing::kHairline, tones.line, {}, false});
    const QString words = drawing::elideText(exerciseWords(board.says), w.width() * 0.42);
    const double x = right > 0 ? w.right() - kWordsMargin : w.left() + kWordsMargin;
    pen.text({x, w.bottom() - 10}, words,
             {.anchor = right > 0 ? Anchor::kEnd : Anchor::kStart,
              .italic = true,
              .tone = tones.word,
              .on = tones.ground,
              .halo = 3.5});
    return;
  }
}

void paintRows(Pen& pen, const Perspective& view, const OutsideScene& scene,
               const std::optional<QPointF>& mark) {
  const OutsideTones tones = tonesOf(scene.dark);
  const QRectF& w = view.window();
  const double right = rightSign(scene.cab);  // the signal's words are there, these opposite
  const Anchor anchor = right > 0 ? Anchor::kStart : Anchor::kEnd;
  const double x = right > 0 ? w.left() + kWordsMargin : w.right() - kWordsMargin;
  double y = w.top() + 22;
  if (scene.limit_mph < kNoLimitMph) {
    pen.text({x, y}, limitWords(scene),
             {.anchor = anchor, .tone = tones.second, .on = tones.ground, .halo = 3});
    y += kLead;
  }
  if (scene.mark_m > kMarkSeenM) return;
  const QString words = markWords(scene);
  if (mark && !scene.dark) {
    const QPointF from(x + right * (drawing::textWidth(words) + 6), y - 6);
    const QPointF bend(from.x() + right * 10, from.y());
    if (right * (mark->x() - bend.x()) > 0)
      pen.polyline({{from, bend, *mark}}, {drawing::kThin, tones.second, {}, false});
  }
  pen.text({x, y}, words, {.anchor = anchor, .tone = tones.word, .on = tones.ground, .halo = 3});
}

}  // namespace

void paintThingsAhead(Pen& pen, const Perspective& view, const OutsideScene& scene) {
  paintOtherHeads(pen, view, scene);
  paintLimitBoard(pen, view, scene);
  const std::optional<QPointF> mark = paintMark(pen, view, scene);
  paintNotice(pen, view, scene);
  paintSignal(pen, view, scene);
  paintRows(pen, view, scene, mark);
}

QStringList describeAhead(const OutsideScene& scene) {
  QStringList words;
  if (scene.signal < -0.5) {
    words << Outside::tr("no signal in sight");
  } else {
    words << Outside::tr("signal %1, %2").arg(signalWords(scene), distanceText(scene.signal_m));
  }
  if (scene.limit_mph < kNoLimitMph) words << limitWords(scene);
  const NextLimit next = findNextLimit(scene);
  if (next.ahead_m < kLimitSeenM && !scene.dark)
    words << Outside::tr("board %1 mph in %2")
                 .arg(next.mph, 0, 'f', 0)
                 .arg(distanceText(next.ahead_m));
  if (scene.mark_m < kNoMarkM && scene.mark_m <= kMarkSeenM) words << markWords(scene);
  return words;
}

}  // namespace cabwright::cab
