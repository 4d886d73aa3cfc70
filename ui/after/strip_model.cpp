// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/strip_model.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "after/words.h"

namespace cabwright::after {
namespace {

QString tr(const char* english) { return QCoreApplication::translate("StripChart", english); }

// What a value of a lane counts as: the same number, the same stretch.
int stateOf(LaneKind kind, float value) {
  if (kind != LaneKind::kBrake) return static_cast<int>(std::lround(value));
  return value < -0.02F ? -1 : value > 0.02F ? 1 : 0;
}

QString wordsOf(LaneKind kind, int state) {
  switch (kind) {
    case LaneKind::kPlace:
      return placeName(state);
    case LaneKind::kHand:
      return controlName(state);
    case LaneKind::kLamp:
      return state > 0 ? tr("lit") : tr("dark");
    case LaneKind::kBrake:
      return state < 0 ? tr("release") : state > 0 ? tr("apply") : tr("lap");
  }
  return {};
}

Lane makeLane(const session::SignalHistory& history, LaneKind kind, unit::Signal signal,
              const QString& name) {
  Lane lane{kind, signal, name, {}};
  const auto values = history.series(signal);
  const std::vector<std::int64_t>& ticks = history.ticks();
  for (std::size_t k = 0; k < values.size(); ++k) {
    const int state = stateOf(kind, values[k]);
    if (lane.segments.empty() || lane.segments.back().value != state) {
      if (!lane.segments.empty()) lane.segments.back().to = ticks[k];
      lane.segments.push_back(
          {ticks[k], ticks[k], state, wordsOf(kind, state), kind == LaneKind::kLamp && state > 0});
    }
    lane.segments.back().to = ticks[k];
  }
  return lane;
}

// The end of the scale that holds all of it, a whole number of steps.
double calcHigh(const session::SignalHistory& history, const std::vector<Curve>& curves,
                double least, double step) {
  double high = least;
  for (const Curve& curve : curves)
    for (const float v : history.series(curve.signal))
      high = std::max(high, static_cast<double>(v));
  return std::ceil(high / step - 1e-9) * step;
}

const std::vector<double> kDashes{9, 5};

}  // namespace

std::vector<Lane> makeLanes(const session::SignalHistory& history, int cab) {
  using enum unit::Signal;
  return {makeLane(history, LaneKind::kPlace, kPlace, tr("Place")),
          makeLane(history, LaneKind::kHand, kHandLeft, tr("Left hand")),
          makeLane(history, LaneKind::kHand, kHandRight, tr("Right hand")),
          makeLane(history, LaneKind::kLamp, ofCab(kCab1LampAir, cab), tr("AIR lamp")),
          makeLane(history, LaneKind::kBrake, ofCab(kCab1Brake, cab), tr("Brake"))};
}

std::vector<Plot> makePlots(const session::SignalHistory& history, int cab) {
  using drawing::Tone;
  using enum unit::Signal;
  const auto of = [cab](unit::Signal s) { return ofCab(s, cab); };
  std::vector<Plot> plots;
  plots.push_back({tr("Control air"),
                   tr("psi"),
                   0,
                   100,
                   50,
                   0,
                   {75, 95},
                   {{of(kCab1Air), {}, Tone::kCurve1, {}}}});
  plots.push_back({tr("Vacuum"),
                   tr("inHg"),
                   0,
                   30,
                   10,
                   1,
                   {21},
                   {{of(kCab1TrainPipe), tr("train pipe"), Tone::kCurve2, {}},
                    {of(kCab1ReleasePipe), tr("release pipe"), Tone::kCurve1, kDashes}}});
  plots.push_back({tr("Engines"),
                   tr("rev/min"),
                   0,
                   2000,
                   2000,
                   0,
                   {},
                   {{of(kCab1Rpm1), tr("engine 1"), Tone::kCurve3, {}},
                    {of(kCab1Rpm2), tr("engine 2"), Tone::kCurve4, kDashes}}});
  plots.push_back(
      {tr("Speed"), tr("mph"), 0, 20, 20, 0, {}, {{of(kCab1Speed), {}, Tone::kCurve1, {}}}});
  plots.push_back({tr("Levers"),
                   tr("notch"),
                   0,
                   4,
                   2,
                   0,
                   {},
                   {{of(kCab1Throttle), tr("throttle"), Tone::kCurve2, {}},
                    {of(kCab1Gear), tr("gear"), Tone::kCurve1, kDashes}}});
  for (Plot& plot : plots) plot.high = calcHigh(history, plot.curves, plot.high, plot.step);
  if (plots[3].high > 40) plots[3].step = 40;
  return plots;
}

std::vector<Flag> makeFlags(const FinishedRun& run) {
  std::vector<Flag> flags;
  for (const marking::SheetLine& line : run.sheet.lines) {
    if (line.outcome() != marking::Outcome::kBroken || !line.void_reason.empty()) continue;
    const marking::RuleClass c = line.verdict.outcome == marking::Outcome::kBroken
                                     ? line.verdict.judged_as
                                     : line.rule_class;
    const QString title = sheetWords(line.title);
    flags.push_back({momentOf(run.sheet, line), line.number, c, title, false});
    for (const marking::Mark& mark : run.marks)
      if (mark.rule == line.rule && !mark.met && mark.tick != line.verdict.tick)
        flags.push_back({mark.tick, line.number, c, title, true});
  }
  // The heavier first where several fell at once.
  std::ranges::stable_sort(flags, [](const Flag& a, const Flag& b) {
    return a.tick != b.tick ? a.tick < b.tick : a.rule_class > b.rule_class;
  });
  return flags;
}

QString wordsAt(const Lane& lane, std::int64_t tick) {
  auto it = std::ranges::upper_bound(lane.segments, tick, {}, &Segment::from);
  return it == lane.segments.begin() ? QString() : std::prev(it)->words;
}

}  // namespace cabwright::after
