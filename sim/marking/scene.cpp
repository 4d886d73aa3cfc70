// SPDX-License-Identifier: GPL-3.0-or-later
#include "marking/scene.h"

namespace cabwright::marking {
namespace {

bool fits(const CompiledWay& way, const Scene& scene) {
  switch (way.way.trigger) {
    case EventWay::Trigger::kAct:
      if (scene.act == nullptr || !way.way.act.fits(*scene.act)) return false;
      break;
    case EventWay::Trigger::kBegins:
      if (scene.act != nullptr || !scene.pool.begins(*way.condition)) return false;
      break;
    case EventWay::Trigger::kEnds:
      if (scene.act != nullptr || !scene.pool.ends(*way.condition)) return false;
      break;
  }
  return !way.guard || scene.pool.value(*way.guard).holds;
}

}  // namespace

std::optional<std::size_t> findWay(const CompiledEvent& event, const Scene& scene) {
  for (std::size_t k = 0; k < event.ways.size(); ++k) {
    if (fits(event.ways[k], scene)) return k;
  }
  return std::nullopt;
}

Robust calcStrict(const CompiledRule& rule, const Scene& scene) {
  return scene.pool.value(*rule.condition);
}

Robust calcLoose(const CompiledRule& rule, const Scene& scene) {
  const Robust strict = calcStrict(rule, scene);
  if (!rule.inside) return strict;
  return calcOr(strict, scene.pool.value(*rule.inside));
}

}  // namespace cabwright::marking
