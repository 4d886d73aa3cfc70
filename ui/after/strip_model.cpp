// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/strip_model.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "after/words.h"

namespace cabwright::after {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(StripChart)
};

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
      return state > 0 ? Words::tr("lit") : Words::tr("dark");
    case LaneKind::kFault:
    case LaneKind::kActions:
    case LaneKind::kSigns:
      return {};
    case LaneKind::kBrake:
      return state < 0 ? Words::tr("release") : state > 0 ? Words::tr("apply") : Words::tr("lap");
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
  return {makeLane(history, LaneKind::kPlace, kPlace, Words::tr("Place")),
          makeLane(history, LaneKind::kHand, kHandLeft, Words::tr("Left hand")),
          makeLane(history, LaneKind::kHand, kHandRight, Words::tr("Right hand")),
          makeLane(history, LaneKind::kLamp, ofCab(kCab1LampAir, cab), Words::tr("AIR lamp")),
          makeLane(history, LaneKind::kBrake, ofCab(kCab1Brake, cab), Words::tr("Brake"))};
}

std::vector<Plot> makePlots(const session::SignalHistory& history, int cab) {
  using drawing::Tone;
  using enum unit::Signal;
  const auto of = [cab](unit::Signal s) { return ofCab(s, cab); };
  std::vector<Plot> plots;
  plots.push_back({Words::tr("Vacuum"),
                   Words::tr("inHg"),
                   0,
                   30,
                   10,
                   1,
                   {21},
                   {{of(kCab1TrainPipe), Words::tr("train pipe"), Tone::kCurve2, {}},
                    {of(kCab1ReleasePipe), Words::tr("release pipe"), Tone::kCurve1, kDashes}}});
  plots.push_back({Words::tr("Control air"),
                   Words::tr("psi"),
                   0,
                   100,
                   50,
                   0,
                   {75, 95},
                   {{of(kCab1Air), {}, Tone::kCurve1, {}}}});
  plots.push_back({Words::tr("Engines"),
                   Words::tr("rev/min"),
                   0,
                   2000,
                   2000,
                   0,
                   {},
                   {{of(kCab1Rpm1), Words::tr("engine 1"), Tone::kCurve3, {}},
                    {of(kCab1Rpm2), Words::tr("engine 2"), Tone::kCurve4, kDashes}}});
  plots.push_back({Words::tr("Speed"),
                   Words::tr("mph"),
                   0,
                   20,
                   20,
                   0,
                   {},
                   {{of(kCab1Speed), {}, Tone::kCurve1, {}}}});
  plots.push_back({Words::tr("Levers"),
                   Words::tr("notch"),
                   0,
                   4,
                   2,
                   0,
                   {},
                   {{of(kCab1Throttle), Words::tr("throttle"), Tone::kCurve2, {}},
                    {of(kCab1Gear), Words::tr("gear"), Tone::kCurve1, kDashes}}});
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
  if (it == lane.segments.begin()) return {};
  // Faults go, and nothing comes in their place.
  if (lane.kind == LaneKind::kFault && std::prev(it)->to <= tick) return {};
  return std::prev(it)->words;
}

}  // namespace cabwright::after
