// SPDX-License-Identifier: GPL-3.0-or-later
// Rules that hold what somebody says against what the gauge did.
#include <fmt/format.h>

#include <charconv>
#include <cmath>

#include "marking/monitors.h"

namespace cabwright::marking {
namespace {

constexpr double kMinuteS = 60.0;

// The number an act tells: its argument.
std::optional<double> findFigure(const Scene& scene) {
  const std::string& words = scene.act->argument;
  double figure = 0;
  const auto read = std::from_chars(words.data(), words.data() + words.size(), figure);
  return read.ec == std::errc{} && std::isfinite(figure) ? std::optional(figure) : std::nullopt;
}

}  // namespace

Ruling FallToldMonitor::judge(const CompiledRule& rule, const Scene& scene) const {
  Ruling ruling;
  ruling.tick = scene.tick;
  ruling.met = false;
  ruling.reason = fmt::format("{} at {}", startOf(rule.b), clockText(scene.tick));
  const auto figure = findFigure(scene);
  const std::int64_t watched = start_ ? scene.tick - start_->tick : 0;
  if (!figure || watched == 0) {
    ruling.inside = isInside(rule, scene);
    ruling.reason += figure
                         ? fmt::format(". Nothing was watched up to it: {}.", conditionWords(rule))
                         : ". No number was told.";
    return ruling;
  }
  const double fallen = start_->value - static_cast<double>(scene.frame[*rule.measure]);
  const double in_a_minute = fallen * kMinuteS / toSeconds(watched);
  const double margin = rule.spec.by - std::abs(*figure - in_a_minute);
  ruling.met = margin >= 0;
  ruling.inside = !ruling.met && isInside(rule, scene);
  ruling.margin = margin;
  ruling.unit = unit::signalInfo(*rule.measure).unit;
  ruling.reason +=
      fmt::format(": {:g}. It fell {:.2f} {} in {}, {:.2f} in a minute; asked: within {:g}.",
                  *figure, fallen, ruling.unit, secondsText(watched), in_a_minute, rule.spec.by);
  return ruling;
}

void FallToldMonitor::advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  if (scene.act == nullptr) {
    if (!scene.pool.value(*rule.condition).holds) {
      start_.reset();
    } else if (!start_) {
      start_ = {scene.tick, static_cast<double>(scene.frame[*rule.measure])};
    }
  }
  if (!findWay(rule.b, scene) || (rule.spec.first_only && judged_)) return;
  judged_ = true;
  ledger.add(rule, scene, judge(rule, scene));
}

}  // namespace cabwright::marking
