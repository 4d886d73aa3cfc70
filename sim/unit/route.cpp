// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/route.h"

#include <cmath>
#include <initializer_list>

namespace cabwright::unit {

namespace {

bool isName(const std::string& text) {
  if (text.empty() || text.size() > 40) return false;
  for (char c : text) {
    const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    if (!letter && !(c >= '0' && c <= '9') && c != '_') return false;
  }
  return true;
}

bool allFinite(std::initializer_list<double> numbers) {
  for (double v : numbers) {
    if (!std::isfinite(v) || std::abs(v) > 1e7) return false;
  }
  return true;
}

void checkSignals(const Route& route, std::vector<std::string>& faults) {
  for (std::size_t k = 0; k < route.signals.size(); ++k) {
    const RouteSignal& s = route.signals[k];
    const std::string who = "signal '" + s.name + "'";
    if (!isName(s.name)) faults.push_back(who + ": a name is letters, digits and underscores");
    if (!allFinite({s.position_m, s.sighting_m})) {
      faults.push_back(who + ": position and sighting must be finite");
    }
    if (s.direction != 1 && s.direction != -1) faults.push_back(who + ": direction is 1 or -1");
    if (!(s.sighting_m > 0.0)) faults.push_back(who + ": sighting must be above 0");
    for (std::size_t j = 0; j < k; ++j) {
      if (route.signals[j].name == s.name) faults.push_back(who + ": there are two of that name");
    }
  }
}

void checkPlatforms(const Route& route, std::vector<std::string>& faults) {
  for (const Platform& p : route.platforms) {
    const std::string who = "platform '" + p.name + "'";
    if (!allFinite({p.from_m, p.to_m, p.mark_up_m, p.mark_down_m})) {
      faults.push_back(who + ": positions must be finite");
      continue;
    }
    if (!(p.from_m < p.to_m)) faults.push_back(who + ": must begin before it ends");
    for (double mark : {p.mark_up_m, p.mark_down_m}) {
      if (mark < p.from_m || mark > p.to_m) {
        faults.push_back(who + ": a stopping mark lies outside it");
      }
    }
    if (p.side != 1 && p.side != 2) faults.push_back(who + ": side is 1 or 2");
  }
}

}  // namespace

std::vector<std::string> findRouteFaults(const Route& route) {
  std::vector<std::string> faults;
  for (std::size_t k = 0; k < route.grades.size(); ++k) {
    const plant::GradePoint& g = route.grades[k];
    const std::string who = "gradient " + std::to_string(k + 1);
    if (!allFinite({g.from_m, g.gradient, g.curve_n_t})) {
      faults.push_back(who + ": numbers must be finite");
    } else if (std::abs(g.gradient) > 0.1) {
      faults.push_back(who + ": steeper than 1 in 10");
    } else if (g.curve_n_t < 0.0) {
      faults.push_back(who + ": curve resistance below 0");
    }
    if (k > 0 && !(route.grades[k - 1].from_m < g.from_m)) {
      faults.push_back(who + ": must lie behind the one before it");
    }
  }
  if (!(route.easing_m >= 1.0 && route.easing_m <= 1000.0)) {
    faults.push_back("easing must lie between 1 and 1000 m");
  }
  checkSignals(route, faults);
  checkPlatforms(route, faults);
  for (std::size_t k = 0; k < route.limits.size(); ++k) {
    const SpeedLimit& l = route.limits[k];
    const std::string who = "speed limit " + std::to_string(k + 1);
    if (!allFinite({l.from_m, l.mph}) || !(l.mph > 0.0)) {
      faults.push_back(who + ": must be finite and above 0");
    }
    if (k > 0 && !(route.limits[k - 1].from_m < l.from_m)) {
      faults.push_back(who + ": must lie behind the one before it");
    }
  }
  if (route.display < 0 || route.display > 9) faults.push_back("display must be 0 to 9");
  return faults;
}

}  // namespace cabwright::unit
