// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/outside_view.h"

#include <algorithm>
#include <cmath>

namespace cabwright::cab {

using drawing::Pen;
using drawing::Tone;

namespace {

constexpr double kFocal = 400, kEyeM = 1.35, kSteeper = 3;
constexpr double kNearM = 7, kClearM = 1500, kFogM = 130, kHeadlightM = 55;
constexpr double kGaugeHalf = 0.72, kSleeperHalf = 1.2, kSleeperM = 0.65;
constexpr double kOtherLineM = 4.75;
constexpr double kPlatformEdgeM = 1.8, kPlatformUp = 0.62, kPlatformBackM = 6.5;
constexpr double kPoleM = 50, kPoleAtM = 7.0, kPoleUp = 4.6;
constexpr double kFrameS = 1.0 / 30;

double otherLine(const OutsideScene& scene) { return -kOtherLineM * rightSign(scene.cab); }

// Distances for lines that follow the ground: close ones near, far ones far.
std::vector<double> groundSteps(const Perspective& view) {
  std::vector<double> steps;
  for (double z = view.nearest(); z < view.farthest(); z = z * 1.09 + 0.2) steps.push_back(z);
  steps.push_back(view.farthest());
  return steps;
}

// A line along the ground, broken where a summit hides it.
void paintAlong(Pen& pen, const Perspective& view, const std::vector<double>& steps, double right_m,
                const drawing::Stroke& stroke, double up_m = 0) {
  QPolygonF run;
  for (double z : steps) {
    if (view.isVisible(z)) {
      run << view.at(right_m, z, up_m);
    } else if (!run.isEmpty()) {
      pen.polyline(run, stroke);
      run.clear();
    }
  }
  if (run.size() > 1) pen.polyline(run, stroke);
}

void paintRails(Pen& pen, const Perspective& view, const std::vector<double>& steps,
                double middle_m, Tone tone) {
  for (double side : {-kGaugeHalf, kGaugeHalf}) {
    QPolygonF left, right;
    for (double z : steps) {
      if (!view.isVisible(z)) break;
      left << view.at(middle_m + side - 0.05, z);
      right.prepend(view.at(middle_m + side + 0.05, z));
    }
    if (left.size() < 2) continue;
    pen.polygon(left + right, {0.8, tone, {}, false}, tone);
  }
}

// Sleepers where they lie. Only every 2nd, 4th ... is drawn far away, and all along when they
// would pass so quickly that they seem to stand or to run back.
void paintSleepers(Pen& pen, const Perspective& view, const OutsideScene& scene, double middle_m,
                   Tone tone, double as_far_m, double weight = 1) {
  const double f = facingOf(scene.cab);
  int least = 1;
  while (scene.speed_mps * kFrameS > 0.3 * kSleeperM * least && least < 64) least *= 2;
  const auto first =
      static_cast<std::int64_t>(std::ceil((f * scene.front_m + view.nearest()) / kSleeperM));
  for (std::int64_t n = first;; ++n) {
    const double z = static_cast<double>(n) * kSleeperM - f * scene.front_m;
    if (z > as_far_m) break;
    int every = least;
    while (kFocal * kEyeM * kSleeperM * every / (z * z) < 2.6 && every < 64) every *= 2;
    if (n % every != 0 || !view.isVisible(z)) continue;
    pen.line(view.at(middle_m - kSleeperHalf, z), view.at(middle_m + kSleeperHalf, z),
             {std::clamp(26 * weight / z, 0.8, 3.4 * weight), tone, {}, false});
  }
}

void paintPlatform(Pen& pen, const Perspective& view, const OutsideScene& scene,
                   const unit::Platform& p, const OutsideTones& tones) {
  const double f = facingOf(scene.cab);
  double from = f * (p.from_m - scene.front_m), to = f * (p.to_m - scene.front_m);
  if (from > to) std::swap(from, to);
  from = std::max(from, view.nearest() * 0.7);
  to = std::min(to, view.farthest());
  if (to <= from || !view.isVisible(std::max(from, view.nearest()))) return;
  const double side = rightSign(scene.cab) * (p.side == 1 ? 1 : -1);
  const double edge = side * kPlatformEdgeM;
  QPolygonF face, coping, top;
  constexpr int kParts = 12;
  for (int k = 0; k <= kParts; ++k) {
    const double z = from * std::pow(to / from, static_cast<double>(k) / kParts);
    face << view.at(edge, z, kPlatformUp);
    face.prepend(view.at(edge, z));
    coping << view.at(edge, z, kPlatformUp);
    coping.prepend(view.at(edge + side * 0.4, z, kPlatformUp));
    top << view.at(edge, z, kPlatformUp);
    top.prepend(view.at(side * kPlatformBackM, z, kPlatformUp));
  }
  const drawing::Stroke thin{drawing::kThin, tones.line, {}, false};
  pen.polygon(top, {drawing::kHairline, tones.pale, {}, false}, tones.ground);
  pen.polygon(face, thin, tones.ground);
  if (!scene.dark) {
    QPainterPath shape;
    shape.addPolygon(face);
    pen.hatch(shape, Tone::kRule, 5, 90, 1);
  }
  pen.polygon(coping, thin, scene.dark ? tones.ground : Tone::kPaper);
}

// Poles along the cess: they tell the speed.
void paintPoles(Pen& pen, const Perspective& view, const OutsideScene& scene,
                const OutsideTones& tones, double as_far_m) {
  const double f = facingOf(scene.cab), x = kPoleAtM * rightSign(scene.cab);
  const auto first = static_cast<std::int64_t>(std::ceil((f * scene.front_m + 9) / kPoleM));
  const auto last = static_cast<std::int64_t>(std::floor((f * scene.front_m + as_far_m) / kPoleM));
  QPolygonF wire;
  for (std::int64_t n = last; n >= first; --n) {
    const double z = static_cast<double>(n) * kPoleM - f * scene.front_m;
    if (!view.isVisible(z)) continue;
    const QPointF top = view.at(x, z, kPoleUp);
    const double width = std::clamp(70 / z, 0.8, 2.4), arm = 0.7 * view.scaleAt(z);
    pen.line(view.at(x, z), top, {width, tones.pale, {}, false});
    pen.line(top + QPointF(-arm, arm * 0.4), top + QPointF(arm, arm * 0.4),
             {width, tones.pale, {}, false});
    wire << top;
  }
  if (wire.size() > 1) pen.polyline(wire, {0.8, tones.pale, {}, false});
}

// Ticks of the quarter miles, on a white post at the side of the other line.
void paintQuarterPosts(Pen& pen, const Perspective& view, const OutsideScene& scene,
                       const OutsideTones& tones, double as_far_m) {
  constexpr double kQuarterM = 402.336;
  const double f = facingOf(scene.cab), x = -2.4 * rightSign(scene.cab);
  const auto first = static_cast<std::int64_t>(std::ceil((f * scene.front_m + 9) / kQuarterM));
  for (std::int64_t n = first; n < first + 2; ++n) {
    const double z = static_cast<double>(n) * kQuarterM - f * scene.front_m;
    if (z > as_far_m || !view.isVisible(z)) continue;
    const QPointF foot = view.at(x, z);
    const double h = std::max(9.0, 1.1 * view.scaleAt(z));
    pen.rect({foot.x() - 2.5, foot.y() - h, 5, h}, {drawing::kThin, tones.line, {}, false},
             scene.dark ? tones.ground : Tone::kPaper);
    const auto world = static_cast<std::int64_t>(f) * n;
    const auto quarter = static_cast<int>(((world % 4) + 4) % 4);
    for (int k = 0; k < quarter; ++k)
      pen.line(foot + QPointF(-2.5, -h + 3 + 3 * k), foot + QPointF(2.5, -h + 3 + 3 * k),
               {drawing::kThin, tones.line, {}, false});
  }
}

void paintFarLand(Pen& pen, const Perspective& view, const OutsideTones& tones) {
  const QRectF& w = view.window();
  const double y = view.horizonY();
  QPainterPath hills({w.left(), y - 8});
  const double d = w.width();
  hills.cubicTo(w.left() + .10 * d, y - 24, w.left() + .20 * d, y - 22, w.left() + .33 * d, y - 6);
  hills.cubicTo(w.left() + .42 * d, y - 1, w.left() + .52 * d, y - 14, w.left() + .66 * d, y - 6);
  hills.cubicTo(w.left() + .80 * d, y - 1, w.left() + .92 * d, y - 12, w.right(), y - 9);
  pen.path(hills, {drawing::kThin, tones.pale, {}, false});
  pen.line({w.left(), y}, {w.right(), y}, {drawing::kHairline, tones.pale, {}, false});
}

// Rain and snow as a few strokes and flakes that stand still; where the wiper goes it is clear.
void paintWeather(Pen& pen, const QRectF& w, const OutsideScene& scene) {
  const QPointF pivot(w.center().x() + 0.06 * w.width(), w.bottom() + 30);
  const double reach = w.height() + 22;
  const bool wiped = scene.wiper >= 0;
  for (int k = 0; k < 90; ++k) {
    const double x = w.left() + std::fmod(k * 61.8034 + 11, w.width());
    const double y = w.top() + std::fmod(k * 38.1966 + 7, w.height());
    const QPointF at(x, y), from = at - pivot;
    const bool in_sweep =
        std::hypot(from.x(), from.y()) < reach && std::abs(from.x()) < reach * 0.8;
    if (wiped && in_sweep) continue;
    if (scene.weather == Weather::kRain)
      pen.line(at, at + QPointF(-2.5, 9), {1.0, Tone::kRule, {}, false});
    if (scene.weather == Weather::kSnow)
      pen.circle(at, 1.2 + 0.5 * (k % 3), drawing::kNoLine, Tone::kRule);
  }
  if (!wiped) return;
  const double angle = -52 + 104 * scene.wiper;
  const Tone tone = scene.dark ? Tone::kRule : Tone::kInk2;
  pen.line(drawing::pointAt(pivot, 34, angle), drawing::pointAt(pivot, reach, angle),
           {drawing::kBold, tone, {}, true});
}

}  // namespace

Weather weatherOf(const std::string& word) {
  if (word == "rain") return Weather::kRain;
  if (word == "snow") return Weather::kSnow;
  if (word == "fog") return Weather::kFog;
  return Weather::kClear;
}

OutsideTones tonesOf(bool dark) {
  if (dark) return {Tone::kBezel, Tone::kRule, Tone::kRule, Tone::kWhite, Tone::kWhite};
  return {Tone::kFace, Tone::kInk, Tone::kRule, Tone::kInk, Tone::kInk2};
}

Perspective::Perspective(const QRectF& window, const OutsideScene& scene)
    : window_(window),
      scene_(scene),
      vanishing_(window.center().x(), window.top() + 0.53 * window.height()),
      nearest_m_(kNearM),
      farthest_m_(scene.weather == Weather::kFog ? kFogM : kClearM) {
  slope_ = facingOf(scene.cab) * scene.profile->calcGradient(scene.front_m);
}

// Above the plane the cab stands on.
double Perspective::calcRise(double ahead_m) const {
  const double at = scene_.front_m + facingOf(scene_.cab) * ahead_m;
  const double rise = scene_.profile->calcHeight(at) - scene_.profile->calcHeight(scene_.front_m);
  return kSteeper * (rise - slope_ * ahead_m);
}

double Perspective::scaleAt(double ahead_m) const { return kFocal / ahead_m; }

QPointF Perspective::at(double right_m, double ahead_m, double up_m) const {
  const double k = scaleAt(ahead_m);
  return {vanishing_.x() + k * right_m, vanishing_.y() + k * (kEyeM - up_m - calcRise(ahead_m))};
}

bool Perspective::isVisible(double ahead_m) const {
  if (ahead_m > farthest_m_) return false;
  const double y = at(0, ahead_m).y();
  for (double z = std::max(nearest_m_, ahead_m / 8); z < ahead_m; z *= 1.25) {
    if (at(0, z).y() < y - 0.6) return false;
  }
  return true;
}

double Perspective::horizonY() const {
  return std::clamp(vanishing_.y() + kFocal * kSteeper * slope_, window_.top() + 26,
                    window_.bottom() - 8);
}

void paintAhead(Pen& pen, const QRectF& window, const OutsideScene& scene) {
  const OutsideTones tones = tonesOf(scene.dark);
  const Perspective view(window, scene);
  pen.push();
  pen.painter().setClipRect(window, Qt::IntersectClip);
  pen.rect(window, drawing::kNoLine, tones.ground);
  const bool lit = !scene.dark || scene.headlit;
  const double as_far = scene.dark ? kHeadlightM : view.farthest();
  std::vector<double> steps = groundSteps(view);
  if (scene.dark) std::erase_if(steps, [&](double z) { return z > as_far; });
  if (!scene.dark && scene.weather != Weather::kFog) paintFarLand(pen, view, tones);
  if (lit) {
    const double other = otherLine(scene), right = rightSign(scene.cab);
    const drawing::Stroke hair{drawing::kHairline, tones.pale, {}, false};
    if (!scene.dark) {
      for (double x : {-2.6 * right, 2.6 * right, 4.4 * right, other - 2.4 * right})
        paintAlong(pen, view, steps, x, hair);
      paintSleepers(pen, view, scene, other, tones.pale, std::min(as_far, 70.0), 0.4);
      paintRails(pen, view, steps, other, Tone::kInk2);
    }
    paintSleepers(pen, view, scene, 0, scene.dark ? tones.pale : Tone::kInk2,
                  std::min(as_far, 220.0));
    paintRails(pen, view, steps, 0, tones.line);
    paintPoles(pen, view, scene, tones, std::min(as_far, 420.0));
    for (const unit::Platform& p : scene.line->route.platforms)
      paintPlatform(pen, view, scene, p, tones);
    paintQuarterPosts(pen, view, scene, tones, std::min(as_far, 500.0));
  }
  paintWeather(pen, window, scene);
  paintThingsAhead(pen, view, scene);
  pen.pop();
  pen.rect(window, {}, Tone::kNone, 2);
}

}  // namespace cabwright::cab
