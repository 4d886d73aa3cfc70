// SPDX-License-Identifier: GPL-3.0-or-later
// Rules that are judged when b comes, on several things that had to be done before it.
#include <fmt/format.h>

#include <algorithm>

#include "marking/monitors.h"

namespace cabwright::marking {
namespace {

std::string listText(const std::vector<std::string_view>& names) {
  std::string text;
  for (std::size_t k = 0; k < names.size(); ++k) {
    if (k > 0) text += k + 1 == names.size() ? " and " : ", ";
    text += names[k];
  }
  return text;
}

}  // namespace

// A step that comes while another is waited for says nothing: what is asked is that these come one
// after the other, not that nothing else comes between.
void SequenceMonitor::follow(const CompiledRule& rule, const Scene& scene) {
  if (!rule.reset.ways.empty() && findWay(rule.reset, scene)) next_ = 0;
  if (!findWay(rule.steps[next_], scene)) return;
  ++next_;
  furthest_ = std::max(furthest_, next_);
  if (next_ < rule.steps.size()) return;
  complete_at_ = scene.tick;
  next_ = 0;
}

Ruling SequenceMonitor::judge(const CompiledRule& rule, const Scene& scene) const {
  Ruling ruling;
  ruling.tick = scene.tick;
  ruling.reason = fmt::format("{} at {}", startOf(rule.b), clockText(scene.tick));
  if (!complete_at_) {
    ruling.met = false;
    ruling.inside = isInside(rule, scene);
    ruling.reason += ". Not done before it, in this order: ";
    std::vector<std::string_view> names;
    for (std::size_t k = furthest_; k < rule.steps.size(); ++k) {
      names.emplace_back(rule.steps[k].name);
    }
    ruling.reason += listText(names) + '.';
    return ruling;
  }
  const std::int64_t distance = scene.tick - *complete_at_;
  const auto room = calcRoom(distance, rule.lo, rule.hi);
  ruling.met = !room || *room >= 0;
  ruling.inside = !ruling.met && (*room >= -rule.slack || isInside(rule, scene));
  setRoom(room, ruling);
  ruling.reason += fmt::format(", {} {} before", rule.steps.back().name, secondsText(distance));
  ruling.reason += ruling.met ? "." : fmt::format("; asked: {}.", allowedText(rule));
  return ruling;
}

void SequenceMonitor::advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  follow(rule, scene);
  if (!findWay(rule.b, scene) || (rule.spec.first_only && judged_)) return;
  judged_ = true;
  ledger.add(rule, scene, judge(rule, scene));
}

// Of each step the time that suits best: the nearest that is old enough.
Ruling AllBeforeMonitor::judge(const CompiledRule& rule, const Scene& scene) {
  Ruling ruling;
  ruling.tick = scene.tick;
  std::vector<std::string_view> missing;
  std::optional<std::int64_t> least;  // room
  for (std::size_t k = 0; k < done_.size(); ++k) {
    const std::int64_t latest = scene.tick - rule.lo;
    done_[k].ripen(latest);
    const auto when = done_[k].oldest();
    if (!when) {
      missing.emplace_back(rule.steps[k].name);
      continue;
    }
    const auto room = calcRoom(scene.tick - *when, rule.lo, rule.hi);
    if (room && *room < 0) missing.emplace_back(rule.steps[k].name);
    if (room) least = least ? std::min(*least, *room) : *room;
  }
  ruling.met = missing.empty();
  const bool all_there = std::all_of(done_.begin(), done_.end(),
                                     [](const RecentTimes& t) { return t.oldest().has_value(); });
  ruling.inside =
      !ruling.met && ((all_there && least && *least >= -rule.slack) || isInside(rule, scene));
  ruling.reason = fmt::format("{} at {}", startOf(rule.b), clockText(scene.tick));
  if (ruling.met) {
    ruling.reason += ". All was done before it.";
  } else {
    ruling.reason +=
        fmt::format(". Not done before it{}: {}.",
                    rule.hi || rule.lo > 0 ? ", " + allowedText(rule) : "", listText(missing));
  }
  return ruling;
}

void AllBeforeMonitor::advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger) {
  for (std::size_t k = 0; k < done_.size(); ++k) {
    if (!findWay(rule.steps[k], scene)) continue;
    done_[k].ripen(scene.tick - rule.lo);
    done_[k].push(scene.tick);
  }
  if (!findWay(rule.b, scene) || (rule.spec.first_only && judged_)) return;
  judged_ = true;
  ledger.add(rule, scene, judge(rule, scene));
}

}  // namespace cabwright::marking
