// SPDX-License-Identifier: GPL-3.0-or-later
// What lies at either side of the cab, and the guard's strokes from behind.
#include <algorithm>
#include <cmath>

#include "cab/names.h"
#include "cab/outside_view.h"

namespace cabwright::cab {

using drawing::Anchor;
using drawing::Pen;
using drawing::Tone;

namespace {

constexpr double kFocal = 90, kEyeM = 1.35;
constexpr double kPlatformUp = 0.62;
constexpr double kRingR = 6.5, kRingPitch = 17;
constexpr double kLongAgoS = 60;

// Straight out of a side window; forward lies on the side of the window ahead.
class SideView {
 public:
  SideView(const QRectF& window, const OutsideScene& scene, int side)
      : window_(window), front_m_(scene.front_m), facing_(facingOf(scene.cab)) {
    const bool right = (side == 1) == (scene.cab == 0);
    forward_ = right ? -1 : 1;
  }
  [[nodiscard]] double y(double away_m, double up_m = 0) const {
    return horizon() + kFocal * (kEyeM - up_m) / away_m;
  }
  [[nodiscard]] double x(double away_m, double ahead_m) const {
    return window_.center().x() + forward_ * kFocal * ahead_m / away_m;
  }
  [[nodiscard]] double horizon() const { return window_.top() + 0.53 * window_.height(); }
  void level(Pen& pen, double away_m, double up_m, const drawing::Stroke& stroke) const {
    pen.line({window_.left(), y(away_m, up_m)}, {window_.right(), y(away_m, up_m)}, stroke);
  }
  /// What stands every so many metres along the line.
  template <class Draw>
  void forEach(double away_m, double every_m, Draw draw) const {
    const double reach = (window_.width() / 2 + 20) * away_m / kFocal;
    const double along = facing_ * front_m_;
    const auto first = static_cast<std::int64_t>(std::ceil((along - reach) / every_m));
    const auto last = static_cast<std::int64_t>(std::floor((along + reach) / every_m));
    for (std::int64_t n = first; n <= last; ++n)
      draw(x(away_m, static_cast<double>(n) * every_m - along));
  }

 private:
  QRectF window_;
  double front_m_, facing_, forward_ = 1;
};

const unit::Platform* findPlatform(const OutsideScene& scene, int side) {
  for (const unit::Platform& p : scene.line->route.platforms) {
    if (p.side == side && scene.front_m >= p.from_m && scene.front_m <= p.to_m) return &p;
  }
  return nullptr;
}

void paintPlatform(Pen& pen, const SideView& view, const QRectF& w) {
  const double edge = view.y(1.8, kPlatformUp), back = view.y(6.5, kPlatformUp);
  pen.rect({w.left(), back, w.width(), edge - back}, drawing::kNoLine, Tone::kPaper);
  const QRectF face(w.left(), edge, w.width(), w.bottom() - edge);
  pen.hatch(drawing::rectShape(face), Tone::kRule, 5, 90, 1);
  for (double y : {edge, view.y(2.3, kPlatformUp)})
    pen.line({w.left(), y}, {w.right(), y}, {drawing::kNorm, Tone::kInk, {}, false});
  pen.line({w.left(), back}, {w.right(), back}, {drawing::kThin, Tone::kRule, {}, false});
  // A fence behind, and a lamp now and then.
  view.level(pen, 6.5, kPlatformUp + 1.0, {drawing::kThin, Tone::kInk2, {}, false});
  view.forEach(6.5, 2.0, [&](double x) {
    pen.line({x, back}, {x, view.y(6.5, kPlatformUp + 1.0)},
             {drawing::kThin, Tone::kInk2, {}, false});
  });
  view.forEach(5.0, 20.0, [&](double x) {
    pen.line({x, view.y(5.0, kPlatformUp)}, {x, view.y(5.0, kPlatformUp + 3.2)},
             {drawing::kNorm, Tone::kInk2, {}, false});
    pen.circle({x, view.y(5.0, kPlatformUp + 3.3)}, 4, {drawing::kThin, Tone::kInk2, {}, false},
               Tone::kFace);
  });
}

void paintOtherLine(Pen& pen, const SideView& view) {
  for (double away : {4.75 - 0.72, 4.75 + 0.72})
    view.level(pen, away, 0, {drawing::kNorm, Tone::kInk2, {}, false});
  for (double away : {3.2, 6.4})
    view.level(pen, away, 0, {drawing::kHairline, Tone::kRule, {}, false});
  view.forEach(4.75, 0.65 * 2, [&](double x) {
    pen.line({x, view.y(5.6)}, {x, view.y(3.9)}, {drawing::kThin, Tone::kRule, {}, false});
  });
}

void paintPath(Pen& pen, const SideView& view, const QRectF& w) {
  view.level(pen, 2.6, 0, {drawing::kThin, Tone::kInk2, {}, false});
  view.level(pen, 4.0, 0, {drawing::kThin, Tone::kInk2, {}, false});
  const double fence_top = view.y(8, 1.1);
  pen.line({w.left(), fence_top}, {w.right(), fence_top}, {drawing::kThin, Tone::kRule, {}, false});
  view.level(pen, 8, 0.6, {drawing::kHairline, Tone::kRule, {}, false});
  view.forEach(8, 4.0, [&](double x) {
    pen.line({x, view.y(8)}, {x, fence_top - 2}, {drawing::kNorm, Tone::kRule, {}, false});
  });
  view.forEach(7, 50.0, [&](double x) {
    pen.line({x, view.y(7)}, {x, w.top() + 32}, {drawing::kRing, Tone::kInk2, {}, false});
  });
}

void paintPerson(Pen& pen, const SideView& view, double away_m, double up_m) {
  const double x = view.x(away_m, 0.3), foot = view.y(away_m, up_m);
  const double h = kFocal * 1.75 / away_m;
  QPainterPath body({x - 0.13 * h, foot});
  body.lineTo(x - 0.13 * h, foot - 0.45 * h);
  body.lineTo(x - 0.19 * h, foot - 0.5 * h);
  body.lineTo(x - 0.15 * h, foot - 0.82 * h);
  body.lineTo(x + 0.15 * h, foot - 0.82 * h);
  body.lineTo(x + 0.19 * h, foot - 0.5 * h);
  body.lineTo(x + 0.13 * h, foot - 0.45 * h);
  body.lineTo(x + 0.13 * h, foot);
  body.closeSubpath();
  pen.path(body, {}, Tone::kPaper);
  pen.line({x, foot}, {x, foot - 0.42 * h}, {drawing::kThin, Tone::kInk, {}, false});
  for (double up : {0.62, 0.7})
    pen.line({x - 0.16 * h, foot - up * h}, {x + 0.16 * h, foot - up * h}, {});
  pen.circle({x, foot - 0.91 * h}, 0.085 * h, {}, Tone::kPaper);
}

std::vector<int> groupsOf(int code) {
  std::vector<int> groups;
  for (; code > 0; code /= 10) groups.insert(groups.begin(), code % 10);
  return groups;
}

QString codeText(int code) {
  QStringList groups;
  for (int strokes : groupsOf(code)) groups << QString::number(strokes);
  return groups.join(QLatin1Char('-'));
}

bool isFresh(const BehindScene& scene) {
  return scene.code > 0 && (scene.stands || scene.age_s < kLongAgoS);
}

void paintBell(Pen& pen, QPointF c, bool ringing) {
  QPainterPath bell({c.x() - 13, c.y() + 9});
  bell.cubicTo(c.x() - 8, c.y() + 4, c.x() - 10, c.y() - 13, c.x(), c.y() - 13);
  bell.cubicTo(c.x() + 10, c.y() - 13, c.x() + 8, c.y() + 4, c.x() + 13, c.y() + 9);
  bell.closeSubpath();
  pen.path(bell, {}, ringing ? Tone::kInk : Tone::kPaper);
  pen.circle(c + QPointF(0, 13), 3, drawing::kNoLine, Tone::kInk);
  if (!ringing) return;
  for (double a : {-70.0, -50.0, 50.0, 70.0})
    pen.line(drawing::pointAt(c, 19, a), drawing::pointAt(c, 25, a), {});
}

}  // namespace

QString describeBeside(const OutsideScene& scene, int side) {
  const unit::Platform* platform = findPlatform(scene, side);
  QString words = platform != nullptr
                      ? Outside::tr("platform, %1").arg(exerciseWords(platform->name))
                  : side == 1 ? Outside::tr("path")
                              : Outside::tr("other line");
  if (scene.person[side == 1 ? 0 : 1]) words += Outside::tr(", somebody stands there");
  return words;
}

void paintBeside(Pen& pen, const QRectF& window, const OutsideScene& scene, int side,
                 const QString& bearing) {
  const SideView view(window, scene, side);
  const bool platform = findPlatform(scene, side) != nullptr;
  pen.push();
  pen.painter().setClipRect(window, Qt::IntersectClip);
  pen.rect(window, drawing::kNoLine, tonesOf(scene.dark).ground);
  if (!scene.dark) {
    const double y = view.horizon();
    if (scene.weather != Weather::kFog) {
      QPainterPath hill({window.left(), y - 7});
      hill.cubicTo(window.left() + 20, y - 18, window.right() - 24, y - 2, window.right(), y - 9);
      pen.path(hill, {drawing::kThin, Tone::kRule, {}, false});
      pen.line({window.left(), y}, {window.right(), y},
               {drawing::kHairline, Tone::kRule, {}, false});
    }
    if (platform) {
      paintPlatform(pen, view, window);
    } else if (side == 2) {
      paintOtherLine(pen, view);
    } else {
      paintPath(pen, view, window);
    }
  }
  if (scene.person[side == 1 ? 0 : 1])
    paintPerson(pen, view, platform || side == 1 ? 3.0 : 3.4, platform ? kPlatformUp : 0);
  const OutsideTones tones = tonesOf(scene.dark);
  pen.text(window.topLeft() + QPointF(10, 22), bearing,
           {.tone = tones.second, .on = tones.ground, .halo = 3});
  pen.pop();
  pen.rect(window, {}, Tone::kNone, 2);
}

QString describeBehind(const BehindScene& scene) {
  if (!scene.guard) return Outside::tr("nobody");
  if (!isFresh(scene)) return Outside::tr("silent");
  return codeText(scene.code);
}

// A group of strokes is a row of rings: filled while it stands, open when it is past.
void paintBehind(Pen& pen, const QRectF& window, const BehindScene& scene) {
  pen.rect(window, {}, Tone::kFace, 2);
  const double x = window.center().x();
  // A longer word stands under the bell instead of beside it.
  const QString guard = Outside::tr("guard");
  const bool under = 48 + drawing::textWidth(guard) + 4 > window.width();
  paintBell(pen, {under ? x : window.left() + 26, window.top() + (under ? 19 : 22)}, scene.ringing);
  pen.text(
      {under ? x : window.left() + 48, window.top() + (under ? 54 : 28)}, guard,
      {.anchor = under ? Anchor::kMiddle : Anchor::kStart, .tone = Tone::kInk2, .on = Tone::kFace});
  const bool fresh = isFresh(scene) && scene.guard;
  std::vector<int> groups = fresh ? groupsOf(scene.code) : std::vector<int>{2};
  double y = window.top() + (under ? 66 : groups.size() > 1 ? 52 : 60);
  for (int strokes : groups) {
    const double pitch = std::min(kRingPitch, (window.width() - 22) / std::max(1, strokes));
    for (int k = 0; k < strokes; ++k) {
      const QPointF c(x + (k - (strokes - 1) / 2.0) * pitch, y);
      const double r = std::min(under ? 5.5 : kRingR, pitch / 2 - 1.5);
      if (!fresh) {
        pen.circle(c, r, {drawing::kThin, Tone::kRule, {3, 2.5}, false});
      } else {
        pen.circle(c, r, {}, scene.stands ? Tone::kInk : Tone::kNone);
      }
    }
    y += under ? 13 : 17;
  }
  const QString words = describeBehind(scene);
  const double foot = window.bottom() - 11;
  pen.text(
      {x, foot - (fresh && scene.answered ? 23 : 8)}, words,
      {.size = drawing::kText + 0.5, .anchor = Anchor::kMiddle, .bold = true, .on = Tone::kFace});
  if (fresh && scene.answered)
    pen.text({x, foot}, Outside::tr("answered"),
             {.anchor = Anchor::kMiddle, .tone = Tone::kInk2, .on = Tone::kFace});
}

}  // namespace cabwright::cab
