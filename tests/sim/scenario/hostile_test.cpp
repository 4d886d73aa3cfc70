// SPDX-License-Identifier: GPL-3.0-or-later
// Files that were cut, scratched and shuffled: they are refused with a place, or what is read is
// what stands in them.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <charconv>
#include <map>
#include <optional>
#include <sstream>

#include "scenario_texts.h"
#include "unit/unit.h"

namespace cabwright::scenario {
namespace {

using cabwright::testing::kHead;
using cabwright::testing::testLibrary;

// Each fault has a place inside the text (or speaks of the whole file) and words in one line.
void checkFaults(const FileFaults& faults, const std::string& text) {
  RC_ASSERT(!faults.empty());
  const auto line_count = 1u + static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
  for (const FileFault& f : faults) {
    RC_ASSERT(f.at.line <= line_count);
    RC_ASSERT(f.at.line == 0 || f.at.column >= 1);
    RC_ASSERT(!f.what.empty());
    RC_ASSERT(f.what.find('\n') == std::string::npos);
  }
}

std::string mutate(std::string text) {
  const auto times = *rc::gen::inRange(1, 5);
  for (int k = 0; k < times && !text.empty(); ++k) {
    const auto at = *rc::gen::inRange<std::size_t>(0, text.size());
    const auto length =
        std::min<std::size_t>(*rc::gen::inRange<std::size_t>(1, 20), text.size() - at);
    switch (*rc::gen::inRange(0, 7)) {
      case 0:
        text[at] = static_cast<char>(*rc::gen::inRange(0, 256));
        break;
      case 1:
        text.resize(at);
        break;
      case 2:
        text.erase(at, length);
        break;
      case 3:
        text.insert(at, text.substr(text.size() - length));
        break;
      case 4:
        text[at] = *rc::gen::elementOf(std::string("\"'[]{}=.,#\n0123456789e-_ "));
        break;
      case 5:
        text.insert(at, *rc::gen::elementOf(std::vector<std::string>{
                            "\"\"\"", "'''", "[[", "]]", "{}", "\n", "= ", "1e999", "nan", "-inf",
                            "99999999999999999999", "0x10", "\\u0000", "true"}));
        break;
      default:
        std::swap(text[at], text[text.size() - 1 - at]);
        break;
    }
  }
  return text;
}

// A reader of its own for plain lines: [group], name = number, comments. None when there is
// anything else in the file.
std::optional<std::map<std::string, double>> readPlainly(const std::string& text) {
  std::map<std::string, double> values;
  std::istringstream in(text);
  std::string line, group;
  while (std::getline(in, line)) {
    if (const auto hash = line.find('#'); hash != std::string::npos) line.resize(hash);
    while (!line.empty() && line.back() == ' ') line.pop_back();
    if (line.empty() || line.starts_with("title = \"") || line.starts_with("text = \"")) continue;
    if (line.front() == '[') {
      if (line.back() != ']' || line.find_first_of("[]", 1) != line.size() - 1) return {};
      group = line.substr(1, line.size() - 2) + ".";
      continue;
    }
    const auto equals = line.find(" = ");
    if (equals == std::string::npos) return {};
    double value = 0;
    const char* end = line.data() + line.size();
    const auto read = std::from_chars(line.data() + equals + 3, end, value);
    if (read.ec != std::errc() || read.ptr != end) return {};
    values[group + line.substr(0, equals)] = value;
  }
  return values;
}

RC_GTEST_PROP(HostileVehicle, IsRefusedOrSaysWhatItHolds, ()) {
  Vehicle standard;
  standard.title = "x";
  static const std::string whole = vehicleText(standard);
  const auto from = *rc::gen::inRange<std::size_t>(0, whole.size() / 2);
  const bool all = *rc::gen::inRange(0, 4) == 0;
  // Mostly a part of it, so that the mutations hit something that matters.
  const std::string start = "title = \"x\"\n";
  const std::size_t group = whole.find("\n[", from);
  const std::size_t next = whole.find("\n[", group + 2);
  const std::string text = mutate(all ? whole : start + whole.substr(group, next - group));
  const auto read = parseVehicle({"v.toml", text});
  if (const auto* faults = std::get_if<FileFaults>(&read)) {
    checkFaults(*faults, text);
    return;
  }
  const Vehicle& v = std::get<Vehicle>(read);
  RC_ASSERT(plant::findParameterFaults(v.plant).empty());
  const auto plain = readPlainly(text);
  if (!plain) RC_DISCARD("not plain lines any more");
  plant::Parameters expected;
  for (const bool exact : {false, true}) {
    for (const auto& [name, value] : *plain) {
      const auto infos = plant::findParameters(name);
      if ((infos.size() == 1) != exact) continue;
      for (const auto* info : infos) info->of(expected) = value;
    }
  }
  for (const auto& info : plant::parameterTable()) RC_ASSERT(info.of(v.plant) == info.of(expected));
}

const std::string kScenario = kHead + R"(time_allowed = "50 min"
[conditions]
temperature = 2
stood_hours = 0.5
[start]
place = "cab1"
line1.coolant_c = 40
[start.controls]
cab1.gear = 1
[[hidden]]
item = "end2.hoses"
condition = "hanging"
[[draw]]
name = "d"
from = [ { nothing = true }, { item = "end1.window", condition = "cracked" } ]
[[fault]]
fault = "vacuum.train_pipe_leak"
size = 2
at = 60
[[event]]
who = "guard"
when = "cab1.air > 75 psi"
do = "ring bell 2"
[[rule]]
id = "r"
title = "t"
reason = "w"
kind = "existence"
a = "did set cab1.brake full"
within = [1, 2]
)";

// Whatever is accepted can be run.
void checkScenario(const std::string& text) {
  const auto read = cabwright::testing::parseScenarioText(text);
  if (const auto* faults = std::get_if<FileFaults>(&read)) {
    for (const FileFault& f : *faults) {
      if (f.at.file == "x.toml") checkFaults({f}, text);
    }
    return;
  }
  const LoadedScenario& loaded = std::get<LoadedScenario>(read);
  auto setup = makeSetup(loaded, loaded.scenario.seed);
  unit::Unit unit(setup.parameters, setup.route, setup.start);
  setup.faults.advance(unit);
  for (const unit::Action& a : setup.timeline.advance(unit.frame())) unit.apply(a);
  unit.advance();
  for (const fault::ArmedFault& f : loaded.scenario.faults) {
    RC_ASSERT(!fault::findSizeFault(*f.spec, f.size));
  }
}

TEST(HostileScenario, TheWholeOneIsGood) {
  (void)cabwright::testing::good(cabwright::testing::parseScenarioText(kScenario));
}

TEST(HostileScenario, CutAnywhereItIsRefusedOrCanBeRun) {
  for (std::size_t k = 0; k < kScenario.size(); k += 3) checkScenario(kScenario.substr(0, k));
}

RC_GTEST_PROP(HostileScenario, ScratchedItIsRefusedOrCanBeRun, ()) {
  checkScenario(mutate(kScenario));
}

RC_GTEST_PROP(HostileRoute, ScratchedItIsRefusedOrSound, ()) {
  const std::string text = mutate(cabwright::testing::kRouteText);
  const auto read = parseRoute("r", {"r.toml", text});
  if (const auto* faults = std::get_if<FileFaults>(&read)) {
    checkFaults(*faults, text);
  } else {
    RC_ASSERT(unit::findRouteFaults(std::get<RouteFile>(read).route).empty());
  }
}

RC_GTEST_PROP(HostileScript, ScratchedItIsRefusedOrInOrder, ()) {
  const std::string text = mutate(
      "# breaks: r\nat 1.5 s: set cab1.key on\nset cab1.gear 1\nafter 2 s: set cab1.throttle 1\n"
      "wait until cab1.air >= 75 psi at most 90 s\nwait 1 min 30 s\nguard: ring bell 2\n");
  const auto read = parseScript({"s.txt", text});
  if (const auto* faults = std::get_if<FileFaults>(&read)) {
    checkFaults(*faults, text);
    return;
  }
  std::size_t last = 0;
  for (const ScriptStep& step : std::get<Script>(read).steps) {
    RC_ASSERT(step.line > last);
    RC_ASSERT(step.ticks >= 0);
    last = step.line;
  }
}

RC_GTEST_PROP(HostileScript, ScratchedEditsAreRefusedOrComeFromTheTwoFiles, ()) {
  static const std::string good =
      "set cab1.key on\nwait 2 s\nlook cab1.seal\nwait 2 s\nset cab1.gear 1\nwait 2 s\n";
  const std::string text = mutate(
      "# breaks: r\nas good\nwithout \"look cab1.seal\" to \"set cab1.gear 1\"\n"
      "instead of last \"wait 2 s\":\n  wait 3 s\nend\nafter \"set cab1.key on\":\n  wait 1 "
      "s\nend\n");
  Neighbours beside;
  beside.find = [](const std::string& name) -> std::optional<std::variant<SourceFile, FileFault>> {
    if (name == "good") return SourceFile{"good.txt", good};
    return std::nullopt;
  };
  const auto read = parseScript({"s.txt", text}, {}, beside);
  if (const auto* faults = std::get_if<FileFaults>(&read)) {
    checkFaults(*faults, text);
    return;
  }
  const Script& script = std::get<Script>(read);
  for (const ScriptStep& step : script.steps) {
    RC_ASSERT(step.file < script.files.size());
    const std::string& from = script.files[step.file].text;
    RC_ASSERT(step.line <=
              1u + static_cast<std::size_t>(std::count(from.begin(), from.end(), '\n')));
  }
}

RC_GTEST_PROP(HostileText, RandomBytesAreNeverAVehicle, ()) {
  const auto text = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
  const auto read = parseVehicle({"v.toml", text});
  RC_ASSERT(std::holds_alternative<FileFaults>(read));
  checkFaults(std::get<FileFaults>(read), text);
}

}  // namespace
}  // namespace cabwright::scenario
