// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/items.h"

#include <charconv>
#include <limits>
#include <stdexcept>

#include "unit/item_tables.h"

namespace cabwright::unit {

namespace {

constexpr std::string_view kNumbers = "0123456789";

std::string fillIn(std::string_view text, std::string_view place, int number, int cylinder) {
  std::string out;
  for (char c : text) {
    if (c == '#') {
      out += kNumbers[static_cast<std::size_t>(number)];
    } else if (c == '@') {
      out += kNumbers[static_cast<std::size_t>(cylinder)];
    } else if (c == '%') {
      out += number == 1 ? "main" : "control";
    } else if (c == '&') {
      out += place;
    } else {
      out += c;
    }
  }
  return out;
}

std::vector<std::string> splitEffects(const std::string& text) {
  std::vector<std::string> parts;
  std::size_t from = 0;
  while (from < text.size()) {
    const std::size_t end = std::min(text.find("; ", from), text.size());
    parts.push_back(text.substr(from, end - from));
    from = end + 2;
  }
  return parts;
}

double readLimit(std::string_view text) {
  double value = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size()) {
    throw std::logic_error("item tables: no number: " + std::string(text));
  }
  return value;
}

std::vector<std::string> splitWords(const std::string& text) {
  std::vector<std::string> words;
  std::size_t from = 0;
  while (from < text.size()) {
    const std::size_t end = std::min(text.find(' ', from), text.size());
    words.push_back(text.substr(from, end - from));
    from = end + 1;
  }
  return words;
}

LiveTest readInstrument(const std::vector<std::string>& words, const std::string& text) {
  const auto instrument = words.size() == 3 ? findInstrument(words[1]) : std::nullopt;
  if (!instrument) throw std::logic_error("item tables: no such instrument: " + text);
  const InstrumentInfo& info = instrumentTable()[indexOf(*instrument)];
  const auto condition = findInstrumentCondition(info, words[2]);
  if (!condition) throw std::logic_error("item tables: no such condition: " + text);
  LiveTest test;
  test.of = LiveTest::Of::kInstrument;
  test.instrument = *instrument;
  test.condition = *condition;
  return test;
}

void findFigure(const std::string& name, const std::string& text, LiveTest& test) {
  if (test.of == LiveTest::Of::kSignal) {
    const auto signal = findSignal(name);
    if (!signal) throw std::logic_error("item tables: no such signal: " + text);
    test.signal = *signal;
    return;
  }
  const auto of_plant = plant::findParameters(name);
  const auto of_unit = findUnitParameters(name);
  if (of_plant.size() + of_unit.size() != 1) {
    throw std::logic_error("item tables: no single parameter: " + text);
  }
  if (!of_plant.empty()) test.of_plant = of_plant.front();
  if (!of_unit.empty()) test.of_unit = of_unit.front();
}

// The tables are ours: a mistake in them is a mistake of the program and is thrown as one.
std::optional<LiveTest> readLive(const std::string& text) {
  if (text.empty()) return std::nullopt;
  std::vector<std::string> words = splitWords(text);
  if (words[0] == "instrument") return readInstrument(words, text);
  LiveTest test;
  if (words[0] == "number") test.of = LiveTest::Of::kNumber;
  if (words[0] == "share") test.of = LiveTest::Of::kShare;
  if (words[0] == "added") test.of = LiveTest::Of::kAdded;
  if (test.of != LiveTest::Of::kSignal) words.erase(words.begin());
  const bool range = words.size() == 5;
  if (!range && words.size() != 3) throw std::logic_error("item tables: " + text);
  findFigure(range ? words[2] : words[0], text, test);
  constexpr double kAny = std::numeric_limits<double>::infinity();
  test.low = range ? readLimit(words[0]) : words[1] == ">" ? readLimit(words[2]) : -kAny;
  test.high = range ? readLimit(words[4]) : words[1] == "<" ? readLimit(words[2]) : kAny;
  return test;
}

class TableBuilder {
 public:
  TableBuilder() {
#define CABWRIGHT_ITEM(Y, id, name, place, text) \
  table_.push_back({Item::k##id, name, Place::k##place, text, {}, {}});
    CABWRIGHT_ITEMS(CABWRIGHT_ITEM, )
#undef CABWRIGHT_ITEM
  }

  void add(const std::string& prefix, int number, int cylinder, const std::vector<ItemRow>& rows) {
    std::string place = prefix;  // "end1." of the place end1
    if (!place.empty()) place.pop_back();
    for (const ItemRow& row : rows) {
      addRow(prefix + std::string(row.name), place, number, cylinder, row);
    }
  }

  std::vector<ItemInfo> take() {
    std::size_t tests = 0;
    for (ItemInfo& info : table_) {
      if (info.good.empty()) {
        throw std::logic_error("item tables: nothing about " + std::string(info.name));
      }
      for (ItemCondition& c : info.conditions) {
        if (c.live) c.test = tests++;
      }
    }
    return std::move(table_);
  }

 private:
  void addRow(const std::string& name, const std::string& place, int number, int cylinder,
              const ItemRow& row) {
    const auto fill = [&](std::string_view text) { return fillIn(text, place, number, cylinder); };
    for (ItemInfo& info : table_) {
      if (info.name != name) continue;
      info.good = row.good;
      info.dip = row.trait == Trait::kDip;
      info.look_s = row.look_s;
      info.by = row.by;
      info.bookable = row.trait != Trait::kNotBooked;
      for (const ConditionRow& c : row.conditions) {
        info.conditions.push_back({std::string(c.name), c.rank, std::string(c.seen),
                                   splitEffects(fill(c.effect)), readLive(fill(c.live)), c.by});
      }
      return;
    }
    throw std::logic_error("item tables: no such item: " + name);
  }

  std::vector<ItemInfo> table_;
};

std::vector<ItemInfo> makeTable() {
  TableBuilder table;
  for (int n = 1; n <= 2; ++n) {
    const std::string no = std::to_string(n);
    table.add("end" + no + ".", n, n, endItems());
    table.add("side" + no + ".", n, n, carItems());
    table.add("side" + no + ".", n, n, motorCarItems());
    table.add("trailer" + no + ".", n, n + 2, carItems());
    table.add("trailer" + no + ".", n, n + 2, trailerItems());
    table.add("engine" + no + ".", n, n, engineItems());
    table.add("cab" + no + ".", n, n, cabItems());
  }
  table.add("between.", 0, 0, betweenItems());
  table.add("", 0, 0, otherItems());
  return table.take();
}

}  // namespace

std::string_view letterOf(DefectClass c) {
  switch (c) {
    case DefectClass::kTechnical:
      return "T";
    case DefectClass::kSerious:
      return "S";
    case DefectClass::kCritical:
      return "C";
    case DefectClass::kNone:
      break;
  }
  return "";
}

std::optional<DefectClass> findDefectClass(std::string_view letter) {
  for (DefectClass c : {DefectClass::kTechnical, DefectClass::kSerious, DefectClass::kCritical}) {
    if (letter == letterOf(c)) return c;
  }
  return std::nullopt;
}

const std::vector<ItemInfo>& itemTable() {
  static const std::vector<ItemInfo> table = makeTable();
  return table;
}

const ItemInfo& itemInfo(Item i) { return itemTable()[indexOf(i)]; }

std::optional<Item> findItem(std::string_view name) {
  for (const ItemInfo& info : itemTable()) {
    if (info.name == name) return info.id;
  }
  return std::nullopt;
}

std::optional<int> findItemCondition(const ItemInfo& item, std::string_view name) {
  if (name == "good") return 0;
  for (std::size_t k = 0; k < item.conditions.size(); ++k) {
    if (item.conditions[k].name == name) return static_cast<int>(k) + 1;
  }
  return std::nullopt;
}

std::string_view wordOf(Verdict v) {
  switch (v) {
    case Verdict::kGood:
      return "good";
    case Verdict::kDefect:
      return "defect";
    case Verdict::kUnsure:
      return "unsure";
    case Verdict::kNone:
      break;
  }
  return "";
}

std::optional<Verdict> findVerdict(std::string_view word) {
  for (Verdict v : {Verdict::kGood, Verdict::kDefect, Verdict::kUnsure}) {
    if (word == wordOf(v)) return v;
  }
  return std::nullopt;
}

}  // namespace cabwright::unit
