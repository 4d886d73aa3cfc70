// SPDX-License-Identifier: GPL-3.0-or-later
// Rules over signals against their words, written out over every tick of random runs.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <vector>

#include "rig.h"

namespace cabwright::marking {
namespace {

constexpr auto kAir = unit::Signal::kTrueAir;      // carries the condition: 1 or 0
constexpr auto kRelay = unit::Signal::kTrueRelay;  // carries `during`

struct Item {
  std::int64_t tick;
  char what;  ///< 'f' a Frame; 'a' or 'b' with a Frame right before, as sessions have it
  bool holds, during;
};

struct World {
  std::vector<Item> items;
  std::int64_t end = 0;

  // The item whose Frame holds at a tick.
  [[nodiscard]] const Item& at(std::int64_t tick) const {
    const Item* found = &items.front();
    for (const Item& item : items) {
      if (item.tick <= tick) found = &item;
    }
    return *found;
  }
  [[nodiscard]] bool holdsThroughout(std::int64_t first, std::int64_t last) const {
    for (std::int64_t t = first; t <= last; ++t) {
      if (!at(t).holds) return false;
    }
    return true;
  }
};

// One thing a tick: what happens at the same tick is tested by example.
World makeWorld() {
  World world;
  std::int64_t tick = 0;
  bool holds = *rc::gen::arbitrary<bool>(), during = *rc::gen::arbitrary<bool>();
  const int length = *rc::gen::inRange(1, 30);
  world.items.push_back({0, 'f', holds, during});
  for (int k = 0; k < length; ++k) {
    tick += *rc::gen::inRange(1, 4);
    if (*rc::gen::inRange(0, 3) == 0) holds = !holds;
    if (*rc::gen::inRange(0, 4) == 0) during = !during;
    world.items.push_back({tick, *rc::gen::element('f', 'f', 'f', 'a', 'b'), holds, during});
  }
  world.end = tick + *rc::gen::inRange(0, 3);
  return world;
}

Outcome play(const RuleSpec& spec, const World& world) {
  Story story(spec);
  for (const Item& item : world.items) {
    story.set(kRelay, item.during ? 1 : 0).frame(item.tick, kAir, item.holds ? 1 : 0);
    if (item.what != 'f') story.act(item.tick, item.what);
  }
  story.finish(world.end);
  return story.outcome();
}

RuleSpec makeSignalRule(RuleKind kind) {
  RuleSpec spec = makeRule(kind);
  spec.condition = "true.air >= 0.5 psi";
  return spec;
}

struct Window {
  std::int64_t lo;
  std::optional<std::int64_t> hi;
  [[nodiscard]] bool has(std::int64_t distance) const {
    return distance >= lo && (!hi || distance <= *hi);
  }
};
Window makeWindow(RuleSpec& spec) {
  Window window{*rc::gen::inRange(0, 6), std::nullopt};
  if (*rc::gen::inRange(0, 4) > 0) window.hi = window.lo + *rc::gen::inRange(0, 10);
  spec.from_s = static_cast<double>(window.lo) / 100.0;
  if (window.hi) spec.to_s = static_cast<double>(*window.hi) / 100.0;
  return window;
}

Outcome expectedFor(bool exercised, bool kept) {
  if (!exercised) return Outcome::kNotExercised;
  return kept ? Outcome::kMet : Outcome::kBroken;
}

RC_GTEST_PROP(SustainedRule, NeverWhileAndLimitAgree, ()) {
  const World world = makeWorld();
  const bool limit = *rc::gen::arbitrary<bool>();
  const std::int64_t hold = *rc::gen::inRange(0, 6);
  RuleSpec spec = makeSignalRule(limit ? RuleKind::kLimit : RuleKind::kNeverWhile);
  spec.during = "true.relay";
  spec.for_s = static_cast<double>(hold) / 100.0;
  bool exercised = false, kept = true;
  const auto bad = [&](std::int64_t t) { return world.at(t).during && world.at(t).holds != limit; };
  for (const Item& item : world.items) {
    exercised |= item.during;
    // Seen at a Frame: it has been so for the whole time back to `hold` ticks ago.
    bool all = item.tick >= hold;
    for (std::int64_t t = item.tick - hold; all && t <= item.tick; ++t) all = bad(t);
    kept &= !all;
  }
  RC_ASSERT(play(spec, world) == expectedFor(exercised, kept));
}

RC_GTEST_PROP(HoldFor, Agrees, ()) {
  const World world = makeWorld();
  const std::int64_t hold = *rc::gen::inRange(0, 8);
  RuleSpec spec = makeSignalRule(RuleKind::kHoldFor);
  spec.b = {kB, "B"};
  spec.for_s = static_cast<double>(hold) / 100.0;
  bool exercised = false, kept = true;
  for (const Item& item : world.items) {
    if (item.what != 'b') continue;
    exercised = true;
    kept &= item.tick >= hold && world.holdsThroughout(item.tick - hold, item.tick);
  }
  RC_ASSERT(play(spec, world) == expectedFor(exercised, kept));
}

RC_GTEST_PROP(OnceWithin, Agrees, ()) {
  const World world = makeWorld();
  RuleSpec spec = makeSignalRule(RuleKind::kOnceWithin);
  spec.b = {kB, "B"};
  const Window window = makeWindow(spec);
  bool exercised = false, kept = true;
  for (const Item& item : world.items) {
    if (item.what != 'b') continue;
    exercised = true;
    bool seen = false;
    for (std::int64_t t = 0; t <= item.tick; ++t) {
      seen |= window.has(item.tick - t) && world.at(t).holds;
    }
    kept &= seen;
  }
  RC_ASSERT(play(spec, world) == expectedFor(exercised, kept));
}

RC_GTEST_PROP(HeldSince, Agrees, ()) {
  const World world = makeWorld();
  RuleSpec spec = makeSignalRule(RuleKind::kHeldSince);
  spec.a = {kA, "A"};
  spec.b = {kB, "B"};
  const Window window = makeWindow(spec);
  bool exercised = false, kept = true;
  for (const Item& item : world.items) {
    if (item.what != 'b') continue;
    exercised = true;
    bool found = false;
    for (const Item& start : world.items) {
      if (start.what != 'a' || start.tick >= item.tick) continue;
      // The Frame right before an act says nothing of what the act brings.
      bool all = true;
      for (std::int64_t t = start.tick; t <= item.tick; ++t) {
        all &= world.at(t).tick <= start.tick || world.at(t).holds;
      }
      found |= window.has(item.tick - start.tick) && all;
    }
    kept &= found;
  }
  RC_ASSERT(play(spec, world) == expectedFor(exercised, kept));
}

RC_GTEST_PROP(ReachWithin, Agrees, ()) {
  const World world = makeWorld();
  RuleSpec spec = makeSignalRule(RuleKind::kReachWithin);
  spec.a = {kA, "A"};
  const Window window = makeWindow(spec);
  bool exercised = false, kept = true;
  for (const Item& item : world.items) {
    if (item.what != 'a') continue;
    exercised = true;
    bool reached = false;
    for (std::int64_t t = item.tick; t <= world.end; ++t) {
      reached |= window.has(t - item.tick) && world.at(t).holds;
    }
    kept &= reached;
  }
  RC_ASSERT(play(spec, world) == expectedFor(exercised, kept));
}

// The Frame that holds at a tick, if it came after a tick.
bool keptAfter(const World& world, std::int64_t act, std::int64_t tick) {
  const Item& item = world.at(tick);
  return item.tick <= act || item.holds;
}

RC_GTEST_PROP(HoldAfter, Agrees, ()) {
  const World world = makeWorld();
  RuleSpec spec = makeSignalRule(RuleKind::kHoldAfter);
  spec.a = {kA, "A"};
  const Window window = makeWindow(spec);
  bool exercised = false, kept = true;
  for (const Item& item : world.items) {
    if (item.what != 'a') continue;
    exercised = true;
    for (std::int64_t t = item.tick; t <= world.end; ++t) {
      if (window.has(t - item.tick)) kept &= keptAfter(world, item.tick, t);
    }
  }
  RC_ASSERT(play(spec, world) == expectedFor(exercised, kept));
}

RC_GTEST_PROP(HoldUntil, Agrees, ()) {
  const World world = makeWorld();
  RuleSpec spec = makeSignalRule(RuleKind::kHoldUntil);
  spec.a = {kA, "A"};
  spec.b = {kB, "B"};
  const Window window = makeWindow(spec);
  bool exercised = false, kept = true;
  std::size_t next = 0;
  while (next < world.items.size()) {
    const std::size_t start = next++;
    if (world.items[start].what != 'a') continue;
    exercised = true;
    // Goes through what follows until this a is answered one way or the other.
    bool met = false;
    for (; next < world.items.size(); ++next) {
      const Item& item = world.items[next];
      const std::int64_t distance = item.tick - world.items[start].tick;
      if (window.hi && distance > *window.hi) break;
      if (!item.holds) break;
      met = item.what == 'b' && window.has(distance);
      if (met) break;
    }
    if (!met) {
      kept = false;
      break;
    }
    ++next;  // the b itself
  }
  RC_ASSERT(play(spec, world) == expectedFor(exercised, kept));
}

}  // namespace
}  // namespace cabwright::marking
