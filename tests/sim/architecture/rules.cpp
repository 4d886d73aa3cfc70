// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <regex>
#include <set>

namespace cabwright::architecture {

namespace {

using Rooms = std::set<std::string, std::less<>>;

// What a room may know, all the way down.
const std::map<std::string, Rooms, std::less<>>& allowed() {
  static const std::map<std::string, Rooms, std::less<>> table{
      {"quantity", {}},
      {"plant", {"quantity"}},
      {"unit", {"plant", "quantity"}},
      {"fault", {"unit", "plant", "quantity"}},
      {"scenario", {"fault", "unit", "plant", "quantity"}},
      {"marking", {"unit", "plant", "quantity"}},
      {"session", {"marking", "scenario", "fault", "unit", "plant", "quantity"}},
      {"review", {"session", "marking", "scenario", "fault", "unit", "plant", "quantity"}}};
  return table;
}

bool mayKnow(const std::string& room, const std::string& other) {
  if (room == other) return true;
  const auto row = allowed().find(room);
  return row != allowed().end() && row->second.contains(other);
}

bool isHouse(const std::string& folder) {
  return allowed().contains(folder) || folder == "app" || folder == "ui";
}

std::string matched(std::string_view line, const std::regex& pattern, int group = 0) {
  std::match_results<std::string_view::const_iterator> match;
  if (!std::regex_search(line.begin(), line.end(), match, pattern)) return "";
  return match[static_cast<std::size_t>(group)].str();
}

// Applies a rule to the bare code (no comments, no strings) of the C++ files a test chooses.
template <typename Choose>
Offences findInCode(const Sources& files, Choose choose, const LineRule& rule) {
  Offences offences;
  for (const SourceFile& file : files) {
    if (!isCpp(file.path) || !choose(file)) continue;
    addOffences(file, blankCommentsAndStrings(file.text), rule, offences);
  }
  return offences;
}

const std::regex& includePattern() {
  static const std::regex pattern(R"re(^\s*#\s*include\s*[<"]([^>"]+)[>"])re");
  return pattern;
}

bool needsLicence(std::string_view path) {
  if (isCpp(path) || path.ends_with(".cmake") || path.ends_with(".toml")) return true;
  if (path.ends_with("CMakeLists.txt")) return true;
  return isIn(path, "scenarios") && path.ends_with(".txt");
}

}  // namespace

Offences findArrowsUp(const Sources& files) {
  Offences offences;
  for (const SourceFile& file : files) {
    const std::string room = roomOf(file.path);
    if (!isCpp(file.path) || room.empty()) continue;
    addOffences(
        file, file.text,
        [&](std::string_view line) -> std::string {
          const std::string header = matched(line, includePattern(), 1);
          const std::size_t slash = header.find('/');
          if (header.find("..") != std::string::npos) return room + " leaves its room: " + header;
          if (slash == std::string::npos) return "";
          const std::string other = header.substr(0, slash);
          if (!isHouse(other) || mayKnow(room, other)) return "";
          return room + " must not know " + other;
        },
        offences);
  }
  return offences;
}

Offences findLinksUp(const Sources& files) {
  static const std::regex call(R"((?:^|\n)cabwright_room\(\s*(\w+)([^)]*)\))");
  static const std::regex uses(R"(USES((\s+[a-z]+)+))");
  static const std::regex word(R"([a-z]+)");
  Offences offences;
  for (const SourceFile& file : files) {
    if (file.path != "sim/CMakeLists.txt") continue;
    for (std::sregex_iterator it(file.text.begin(), file.text.end(), call), end; it != end; ++it) {
      const std::string room = (*it)[1].str();
      const std::string arguments = (*it)[2].str();
      std::smatch list;
      if (!std::regex_search(arguments, list, uses)) continue;
      const std::string others = list[1].str();
      for (std::sregex_iterator w(others.begin(), others.end(), word); w != end; ++w) {
        if (!mayKnow(room, w->str())) {
          offences.push_back(file.path + ": " + room + " links " + w->str());
        }
      }
    }
  }
  return offences;
}

Offences findQtInSim(const Sources& files) {
  static const std::regex include(
      R"re(^\s*#\s*include\s*[<"](Q[A-Z]\w*|Qt\w*/\S+|q[a-z]+\.h)[>"])re");
  static const std::regex link(R"(\bQt[56]?\b)");
  Offences offences;
  for (const SourceFile& file : files) {
    if (!isIn(file.path, "sim")) continue;
    const bool build = file.path.ends_with("CMakeLists.txt") || file.path.ends_with(".cmake");
    if (!build && !isCpp(file.path)) continue;
    addOffences(
        file, file.text,
        [&](std::string_view line) {
          return matched(line, build ? link : include).empty() ? "" : "Qt in sim/";
        },
        offences);
  }
  return offences;
}

Offences findUnsteadyArithmetic(const Sources& files) {
  // A call by name, not a member of something and not one of the project's own namespaces.
  static const std::regex call(
      R"((^|[^\w.:>]|std::)(exp|exp2|expm1|log|log2|log10|log1p|pow|sin|cos|tan|asin|acos|atan)"
      R"(|atan2|sinh|cosh|tanh|asinh|acosh|atanh|cbrt|hypot|erf|erfc|tgamma|lgamma|fma)[fl]?\s*\()");
  static const std::regex other(
      R"(\bunordered_(map|set|multimap|multiset)\b|_distribution\b|\bmt19937|\bs?rand\s*\()"
      R"(|FP_CONTRACT|pragma\s+GCC\s+optimize|\bfesetround\b|\boptimize\s*\()");
  static const std::regex device(R"(\brandom_device\b)");
  const auto simulation = [](const SourceFile& f) { return isIn(f.path, "sim"); };
  // A session may draw its own name; nothing in the world may.
  const auto world = [](const SourceFile& f) {
    return isIn(f.path, "sim") && !isIn(f.path, "sim/session");
  };
  Offences offences = findInCode(files, simulation, [](std::string_view line) -> std::string {
    const std::string libm = matched(line, call, 2);
    if (!libm.empty()) return libm + "() of the C library: use quantity/elementary.h";
    const std::string unsteady = matched(line, other);
    return unsteady.empty() ? "" : unsteady + " gives other results elsewhere";
  });
  std::ranges::copy(findInCode(files, world,
                               [](std::string_view line) {
                                 return matched(line, device).empty() ? ""
                                                                      : "chance without a seed";
                               }),
                    std::back_inserter(offences));
  return offences;
}

Offences findWallClocks(const Sources& files) {
  static const std::regex clock(
      R"(\b(system_clock|steady_clock|high_resolution_clock|gettimeofday|clock_gettime)\b)"
      R"(|(^|[^\w.:>]|std::)(time|clock)\s*\(\s*(NULL|nullptr|0)?\s*\))");
  return findInCode(
      files,
      [](const SourceFile& f) {
        return isIn(f.path, "sim/quantity") || isIn(f.path, "sim/plant") ||
               isIn(f.path, "sim/unit");
      },
      [](std::string_view line) {
        return matched(line, clock).empty() ? "" : "time is the tick, not the clock on the wall";
      });
}

Offences findMissingLicences(const Sources& files) {
  Offences offences;
  for (const SourceFile& file : files) {
    const bool script = file.text.starts_with("#!");
    if (!needsLicence(file.path) && !script) continue;
    std::size_t end = 0;
    for (int line = 0; line < 3 && end != std::string::npos; ++line) {
      end = file.text.find('\n', end == 0 ? 0 : end + 1);
    }
    const std::string top = file.text.substr(0, end);
    if (top.find("SPDX-License-Identifier: GPL-3.0-or-later") == std::string::npos) {
      offences.push_back(file.path + ": no licence line in the first three");
    }
  }
  return offences;
}

Offences findUnguardedHeaders(const Sources& files) {
  Offences offences;
  for (const SourceFile& file : files) {
    if (!file.path.ends_with(".h")) continue;
    if (file.text.find("#pragma once\n") == std::string::npos) {
      offences.push_back(file.path + ": no #pragma once");
    }
  }
  return offences;
}

Offences findLongFiles(const Sources& files) {
  constexpr auto kMostLines = 600;
  Offences offences;
  for (const SourceFile& file : files) {
    if (!isCpp(file.path)) continue;
    const auto lines = std::ranges::count(file.text, '\n');
    if (lines > kMostLines) {
      offences.push_back(file.path + ": " + std::to_string(lines) + " lines; cut it in two");
    }
  }
  return offences;
}

Offences findLeftOpen(const Sources& files) {
  // Put together here, so that this file does not offend.
  static const std::regex open(std::string(R"(\b(TO)") + "DO|FIX" + R"(ME|X)" + R"(XX)\b)");
  Offences offences;
  for (const SourceFile& file : files) {
    if (!needsLicence(file.path) && !file.text.starts_with("#!")) continue;
    addOffences(
        file, file.text,
        [](std::string_view line) {
          return matched(line, open).empty() ? "" : "something is left open here";
        },
        offences);
  }
  return offences;
}

}  // namespace cabwright::architecture
