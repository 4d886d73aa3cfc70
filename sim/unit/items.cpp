// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/items.h"

#include <charconv>
#include <limits>
#include <stdexcept>

#include "unit/item_tables.h"

namespace cabwright::unit {

namespace {

constexpr std::string_view kNumbers = "0123456789";

std::string fillIn(std::string_view text, int number, int cylinder) {
  std::string out;
  for (char c : text) {
    if (c == '#') {
      out += kNumbers[static_cast<std::size_t>(number)];
    } else if (c == '@') {
      out += kNumbers[static_cast<std::size_t>(cylinder)];
    } else if (c == '%') {
      out += number == 1 ? "main" : "control";
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

// "SIGNAL < 1", "SIGNAL > 1", "1 < SIGNAL < 2". The tables are ours: a mistake in them is a mistake
// of the program and is thrown as one.
std::optional<LiveTest> readLive(const std::string& text) {
  if (text.empty()) return std::nullopt;
  std::vector<std::string> words;
  std::size_t from = 0;
  while (from < text.size()) {
    const std::size_t end = std::min(text.find(' ', from), text.size());
    words.push_back(text.substr(from, end - from));
    from = end + 1;
  }
  constexpr double kAny = std::numeric_limits<double>::infinity();
  const bool range = words.size() == 5;
  if (!range && words.size() != 3) throw std::logic_error("item tables: " + text);
  const auto signal = findSignal(range ? words[2] : words[0]);
  if (!signal) throw std::logic_error("item tables: no such signal: " + text);
  if (range) return LiveTest{*signal, readLimit(words[0]), readLimit(words[4])};
  const double limit = readLimit(words[2]);
  return words[1] == ">" ? LiveTest{*signal, limit, kAny} : LiveTest{*signal, -kAny, limit};
}

class TableBuilder {
 public:
  TableBuilder() {
#define CABWRIGHT_ITEM(Y, id, name, place, text) \
  table_.push_back({Item::k##id, name, Place::k##place, text, {}, {}, false, true});
    CABWRIGHT_ITEMS(CABWRIGHT_ITEM, )
#undef CABWRIGHT_ITEM
  }

  void add(const std::string& prefix, int number, int cylinder, const std::vector<ItemRow>& rows) {
    for (const ItemRow& row : rows) addRow(prefix + std::string(row.name), number, cylinder, row);
  }

  std::vector<ItemInfo> take() {
    for (const ItemInfo& info : table_) {
      if (info.good.empty()) {
        throw std::logic_error("item tables: nothing about " + std::string(info.name));
      }
    }
    return std::move(table_);
  }

 private:
  void addRow(const std::string& name, int number, int cylinder, const ItemRow& row) {
    for (ItemInfo& info : table_) {
      if (info.name != name) continue;
      info.good = row.good;
      info.dip = row.trait == Trait::kDip;
      info.look_s = row.look_s;
      info.bookable = row.trait != Trait::kNotBooked;
      for (const ConditionRow& c : row.conditions) {
        info.conditions.push_back({std::string(c.name), c.rank, std::string(c.seen),
                                   splitEffects(fillIn(c.effect, number, cylinder)),
                                   readLive(fillIn(c.live, number, cylinder))});
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
