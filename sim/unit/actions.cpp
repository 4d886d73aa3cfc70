// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/actions.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace cabwright::unit {

Actions::Actions(Unit& unit)
    : u_(unit),
      w_(unit.w_),
      facts_(
          calcFacts(senseCircuits(unit.w_, unit.readings()), unit.w_.memory, unit.w_.parameters)) {}

ActionOutcome Actions::apply(const Action& a) {
  if (a.verb == "set") return set(a);
  if (a.verb == "hold") return hold(a);
  if (a.verb == "release") return release(a);
  if (a.verb == "press") return press(a);
  if (a.verb == "ring") return ring(a);
  if (a.verb == "go") return go(a);
  if (a.verb == "take") return take(a);
  if (a.verb == "insert") return insert(a);
  if (a.verb == "put") return put(a);
  if (a.verb == "look") return look(a);
  if (a.verb == "judge") return judge(a);
  if (a.verb == "book") return book(a);
  if (a.verb == "note") return note(a);
  if (a.verb == "decide") return decide(a);
  if (a.verb == "say" || a.verb == "do") return utterPhrase(a);
  if (a.verb == "condition") return condition(a);
  if (a.verb == "fault") return fault(a);
  if (a.verb == "tooth") return tooth(a);
  if (a.verb == "place") return placeObject(a);
  return {};  // arm and clear work on the machine from outside; the rest changes nothing
}

ActionOutcome Actions::refuse(std::string_view perceived, std::string_view cause) const {
  return {false, std::string(perceived), w_.assessment ? std::string() : std::string(cause)};
}

ActionOutcome Actions::refuseRow(Outcome o, int cab, int line) const {
  const std::vector<Fact> missing = facts_.findMissing(o, cab, line);
  return refuse(interlockRow(o).refused,
                missing.empty() ? std::string_view() : missingWords(missing.front()));
}

int cabOfControl(Control c) {
  const std::size_t k = indexOf(c);
  if (k < indexOf(Control::kCab2Key)) return 0;
  return k < indexOf(Control::kEngine1Start) ? 1 : -1;
}

int engineOfControl(Control c) {
  const std::size_t k = indexOf(c);
  if (k < indexOf(Control::kEngine1Start) || k >= indexOf(Control::kBatterySwitch)) return -1;
  return k < indexOf(Control::kEngine2Start) ? 0 : 1;
}

Control asOfFirst(Control c) {
  const auto back = [](Control from, Control first, Control second) {
    return static_cast<Control>(indexOf(from) - (indexOf(second) - indexOf(first)));
  };
  if (cabOfControl(c) == 1) return back(c, Control::kCab1Key, Control::kCab2Key);
  if (engineOfControl(c) == 1) return back(c, Control::kEngine1Start, Control::kEngine2Start);
  return c;
}

std::string_view firstWord(std::string_view& text) {
  const std::size_t end = std::min(text.find(' '), text.size());
  const std::string_view word = text.substr(0, end);
  text.remove_prefix(end);
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  return word;
}

std::optional<double> readFinite(std::string_view text) {
  if (!text.empty() && text.front() == '+') text.remove_prefix(1);
  double value = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value)) {
    return std::nullopt;
  }
  return value;
}

}  // namespace cabwright::unit
