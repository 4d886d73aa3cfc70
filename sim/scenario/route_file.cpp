// SPDX-License-Identifier: GPL-3.0-or-later
#include "scenario/route_file.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "plant/named_numbers.h"
#include "scenario/quantity_text.h"
#include "scenario/table_reader.h"

namespace cabwright::scenario {

namespace {

constexpr Bounds kPositions{-1e6, 1e6};
constexpr double kSteepest = 0.1;
constexpr std::size_t kMostThings = 2000;
constexpr std::string_view kSlopeHelp =
    "allowed: \"level\", \"rise 1 in 80\", \"fall 1 in 200\", \"rise 12.5 permille\"";

// Rise over run; nothing if the words are none of the allowed.
std::optional<double> readSlope(std::string_view words) {
  words = trimmed(words);
  if (words == "level") return 0.0;
  double sign = 1.0;
  if (words.starts_with("fall ")) {
    sign = -1.0;
  } else if (!words.starts_with("rise ")) {
    return std::nullopt;
  }
  words = trimmed(words.substr(5));
  if (words.starts_with("1 in ")) {
    const auto run = readNumber(trimmed(words.substr(5)));
    if (!run || !(*run >= 1.0)) return std::nullopt;
    return sign / *run;
  }
  if (!words.ends_with("permille")) return std::nullopt;
  words.remove_suffix(8);
  const auto rise = readNumber(trimmed(words));
  if (!rise || !(*rise >= 0.0)) return std::nullopt;
  return sign * *rise / 1000.0;
}

class RouteReader {
 public:
  RouteReader(const std::string& name, const SourceFile& file) : sink_(file) {
    result_.route.name = name;
  }

  std::variant<RouteFile, FileFaults> read() {
    const TomlFile toml = parseToml(sink_.file(), sink_);
    TableReader root(toml.root, sink_, "a route file", toml.broken);
    unit::Route& r = result_.route;
    r.title = root.text("title", Need::kMust).value_or("");
    result_.text = root.text("text").value_or("");
    r.easing_m = root.number("easing", "m", {1.0, 1000.0}).value_or(r.easing_m);
    r.display = static_cast<int>(root.whole("display", 0, 9).value_or(0));
    readAll(root, "grade", &RouteReader::readGrade);
    readAll(root, "signal", &RouteReader::readSignal);
    readAll(root, "platform", &RouteReader::readPlatform);
    readAll(root, "limit", &RouteReader::readLimit);
    readAll(root, "board", &RouteReader::readBoard);
    readAll(root, "berth", &RouteReader::readBerth);
    root.finish();
    if (r.grades.empty() && !toml.broken && !root.has("grade")) {
      sink_.add(1, 1, "a route file needs one [[grade]] at least");
    }
    if (sink_.isEmpty()) checkWhole();
    if (!sink_.isEmpty()) return sink_.take();
    return std::move(result_);
  }

 private:
  void readAll(TableReader& root, std::string_view key, void (RouteReader::*one)(TableReader&)) {
    std::vector<TableReader> tables = root.tables(key);
    if (tables.size() > kMostThings) {
      sink_.add(root.placeOfKey(key), "more than 2000 of [[" + std::string(key) + "]]");
      return;
    }
    for (TableReader& table : tables) {
      (this->*one)(table);
      table.finish();
    }
  }

  std::optional<double> position(TableReader& table, std::string_view key,
                                 Need need = Need::kMust) {
    return table.number(key, "m", kPositions, need);
  }

  // Things that hold from a point on are written in order.
  void checkOrder(TableReader& table, std::optional<double> from, std::optional<double>& last) {
    if (!from) return;
    if (last && !(*from > *last)) {
      sink_.add(table.placeOfValue("from"), "'from' is " + plant::shortNumber(*from) +
                                                "; allowed: more than the " +
                                                plant::shortNumber(*last) + " m before it");
    }
    last = *from;
  }

  void readGrade(TableReader& table) {
    plant::GradePoint point;
    const auto from = position(table, "from");
    checkOrder(table, from, last_grade_);
    point.from_m = from.value_or(0.0);
    if (const auto words = table.text("slope", Need::kMust)) {
      const auto slope = readSlope(*words);
      if (!slope) {
        sink_.add(table.placeOfValue("slope"),
                  "'" + printable(*words) + "' is no slope; " + std::string(kSlopeHelp));
      } else if (std::abs(*slope) > kSteepest) {
        sink_.add(table.placeOfValue("slope"),
                  "'" + printable(*words) + "' is steeper than the 1 in 10 allowed");
      }
      point.gradient = slope.value_or(0.0);
    }
    if (const auto radius = table.number("curve_radius", "m", {80.0, 1e5})) {
      point.curve_n_t = calcCurveResistance(*radius);
    }
    result_.route.grades.push_back(point);
  }

  void readSignal(TableReader& table) {
    constexpr std::array<std::string_view, 2> kWays{"up", "down"};
    constexpr std::array<std::string_view, 2> kAspects{"danger", "clear"};
    unit::RouteSignal s;
    s.name = readName(table, signals_, "signal");
    s.position_m = position(table, "at").value_or(0.0);
    s.direction = table.word("faces", kWays, Need::kMust).value_or(0) == 0 ? 1 : -1;
    s.sighting_m = table.number("sighting", "m", {1.0, 5000.0}).value_or(s.sighting_m);
    s.clear = table.word("shows", kAspects).value_or(0) == 1;
    result_.route.signals.push_back(std::move(s));
  }

  void readPlatform(TableReader& table) {
    unit::Platform p;
    p.name = table.text("name", Need::kMust).value_or("");
    if (!p.name.empty() && !platforms_.insert(p.name).second) {
      sink_.add(table.placeOfValue("name"),
                "there is a platform '" + printable(p.name) + "' already");
    }
    const auto from = position(table, "from"), to = position(table, "to");
    if (from && to && !(*to > *from)) {
      sink_.add(table.placeOfValue("to"), "'to' is " + plant::shortNumber(*to) +
                                              "; allowed: more than 'from', which is " +
                                              plant::shortNumber(*from) + " m");
    }
    p.from_m = from.value_or(0.0);
    p.to_m = to.value_or(1.0);
    p.mark_up_m = readMark(table, "mark_up", p, p.to_m);
    p.mark_down_m = readMark(table, "mark_down", p, p.from_m);
    p.side = static_cast<int>(table.whole("side", 1, 2, Need::kMust).value_or(1));
    result_.route.platforms.push_back(std::move(p));
  }

  double readMark(TableReader& table, std::string_view key, const unit::Platform& p,
                  double standard) {
    const auto mark = position(table, key);
    if (!mark) return standard;
    if (p.to_m > p.from_m && (*mark < p.from_m || *mark > p.to_m)) {
      sink_.add(table.placeOfValue(key),
                "'" + std::string(key) + "' is " + plant::shortNumber(*mark) +
                    "; allowed: inside the platform, " + plant::shortNumber(p.from_m) + " to " +
                    plant::shortNumber(p.to_m) + " m");
    }
    return *mark;
  }

  void readLimit(TableReader& table) {
    const auto from = position(table, "from");
    checkOrder(table, from, last_limit_);
    const auto speed = table.number("speed", "mph", {1.0, 150.0}, Need::kMust);
    result_.route.limits.push_back({from.value_or(0.0), speed.value_or(10.0)});
  }

  void readBoard(TableReader& table) {
    const double at = position(table, "at").value_or(0.0);
    result_.boards.push_back({at, table.text("says", Need::kMust).value_or("")});
  }

  void readBerth(TableReader& table) {
    std::string name = readName(table, berths_, "berth");
    result_.berths.push_back({std::move(name), position(table, "at").value_or(0.0)});
  }

  std::string readName(TableReader& table, std::set<std::string>& taken, const char* what) {
    const auto name = table.text("name", Need::kMust);
    if (!name) return "";
    const bool good = name->size() <= 40 && std::all_of(name->begin(), name->end(), [](char c) {
                        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                               (c >= '0' && c <= '9') || c == '_';
                      });
    if (!good) {
      sink_.add(table.placeOfValue("name"),
                "'" + printable(*name) + "' found; allowed: letters, digits and '_'");
    } else if (!taken.insert(*name).second) {
      sink_.add(table.placeOfValue("name"),
                std::string("there is a ") + what + " '" + *name + "' already");
    }
    return *name;
  }

  void checkWhole() {
    for (const std::string& what : unit::findRouteFaults(result_.route)) sink_.add(1, 1, what);
  }

  FaultSink sink_;
  RouteFile result_;
  std::optional<double> last_grade_, last_limit_;
  std::set<std::string> signals_, platforms_, berths_;
};

}  // namespace

double calcCurveResistance(double radius_m) {
  constexpr double kGravity = 9.80665;
  const double n_per_kn = radius_m >= 300.0 ? 650.0 / (radius_m - 55.0) : 500.0 / (radius_m - 30.0);
  return n_per_kn * kGravity;  // one tonne weighs 9.80665 kN
}

std::variant<RouteFile, FileFaults> parseRoute(const std::string& name, const SourceFile& file) {
  return RouteReader(name, file).read();
}

}  // namespace cabwright::scenario
