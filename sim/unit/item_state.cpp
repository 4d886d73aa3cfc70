// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/item_state.h"

namespace cabwright::unit {

namespace {

constexpr std::size_t kBits = 64;

struct LiveEntry {
  std::size_t item;
  int condition;
  const LiveTest* test;
};

// All tests of the item table in one row, so that a tick need not walk the whole table.
struct LiveTable {
  std::vector<LiveEntry> all;          // by their number
  std::vector<std::size_t> of_frame;   // those to be made at each tick
  std::vector<std::size_t> of_number;  // and those only when a number has changed
};

LiveTable makeLiveTable() {
  LiveTable table;  // as many as ItemTests has bits, or fewer: a test counts them
  for (const ItemInfo& info : itemTable()) {
    for (std::size_t k = 0; k < info.conditions.size(); ++k) {
      const auto& live = info.conditions[k].live;
      if (!live) continue;
      const bool of_frame = live->of == LiveTest::Of::kSignal;
      (of_frame ? table.of_frame : table.of_number).push_back(table.all.size());
      table.all.push_back({indexOf(info.id), static_cast<int>(k) + 1, &*live});
    }
  }
  return table;
}

const LiveTable& liveTable() {
  static const LiveTable table = makeLiveTable();
  return table;
}

void setBit(ItemTests& bits, std::size_t k) { bits[k / kBits] |= std::uint64_t{1} << (k % kBits); }
bool hasBit(const ItemTests& bits, std::size_t k) {
  return (bits[k / kBits] >> (k % kBits) & 1) != 0;
}

bool holdsNumber(const LiveTest& test, const World& w, const plant::Parameters& now,
                 const plant::Parameters& sound) {
  if (test.of == LiveTest::Of::kInstrument) {
    return w.instrument[indexOf(test.instrument)].condition == test.condition;
  }
  const double value = test.of_plant ? test.of_plant->of(now) : test.of_unit->of(w.parameters);
  const double base = test.of_plant ? test.of_plant->of(sound) : test.of_unit->standard;
  if (test.of == LiveTest::Of::kAdded) return test.contains(value - base);
  if (test.of == LiveTest::Of::kShare) return base > 0.0 && test.contains(value / base);
  return test.contains(value);
}

}  // namespace

void updateNumberTests(World& w, const plant::Parameters& now, const plant::Parameters& sound) {
  w.numbers_changed = false;
  w.number_tests = {};
  for (std::size_t k : liveTable().of_number) {
    if (holdsNumber(*liveTable().all[k].test, w, now, sound)) setBit(w.number_tests, k);
  }
}

ItemTests findHolding(const World& w) {
  ItemTests bits = w.number_tests;
  for (std::size_t k : liveTable().of_frame) {
    const LiveTest& test = *liveTable().all[k].test;
    if (test.contains(w.frame[test.signal])) setBit(bits, k);
  }
  return bits;
}

bool holdsNow(const World& w, const ItemCondition& condition) {
  if (!condition.live) return false;
  if (condition.live->of != LiveTest::Of::kSignal) return hasBit(w.number_tests, condition.test);
  return condition.live->contains(w.frame[condition.live->signal]);
}

int findPresentCondition(const World& w, Item item) {
  const int hidden = w.item[indexOf(item)].hidden;
  if (hidden > 0) return hidden;
  const ItemInfo& info = itemInfo(item);
  for (std::size_t k = 0; k < info.conditions.size(); ++k) {
    if (holdsNow(w, info.conditions[k])) return static_cast<int>(k) + 1;
  }
  return 0;
}

std::array<int, kItemCount> findAllPresent(const World& w, const ItemTests& holding) {
  std::array<int, kItemCount> present{};
  for (std::size_t k = 0; k < kItemCount; ++k) present[k] = w.item[k].hidden;
  const std::vector<LiveEntry>& entries = liveTable().all;
  for (std::size_t k = 0; k < entries.size(); ++k) {
    if (!hasBit(holding, k) || present[entries[k].item] != 0) continue;
    present[entries[k].item] = entries[k].condition;
  }
  return present;
}

}  // namespace cabwright::unit
