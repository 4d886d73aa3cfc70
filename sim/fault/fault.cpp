// SPDX-License-Identifier: GPL-3.0-or-later
#include "fault/fault.h"

#include <array>
#include <cmath>
#include <stdexcept>

#include "fault/catalogue_rows.h"
#include "plant/named_numbers.h"
#include "unit/nearest_name.h"

namespace cabwright::fault {

namespace {

// The text with the numbers put in.
std::string fill(std::string_view text, int hash, int at) {
  constexpr std::array<std::string_view, 4> kSides{"side1", "side2", "trailer1", "trailer2"};
  std::string filled;
  for (char c : text) {
    if (c == '#') {
      filled += std::to_string(hash);
    } else if (c == '@') {
      filled += std::to_string(at);
    } else if (c == '&') {
      filled += kSides.at(static_cast<std::size_t>(at - 1));
    } else {
      filled += c;
    }
  }
  return filled;
}

FaultSpec makeSpec(const FaultSystem& system, const FaultRow& row, int hash, int at) {
  FaultSpec spec;
  spec.name = fill(row.name, hash, at);
  spec.family = row.name;
  spec.system = system.name;
  spec.where = fill(row.where, hash, at);
  spec.text = row.text;
  spec.symptom = row.symptom;
  spec.decision = row.decision;
  spec.size = row.size;
  spec.gradual = row.gradual;
  for (const RowNumber& n : row.numbers) {
    const auto parameter = findParameter(fill(n.parameter, hash, at));
    if (!parameter) {
      throw std::logic_error(spec.name + ": no parameter " + fill(n.parameter, hash, at));
    }
    spec.numbers.push_back({*parameter, n.how, n.value});
  }
  for (const RowAct& a : row.acts) {
    spec.acts.push_back({fill(a.act, hash, at), fill(a.undo, hash, at)});
  }
  return spec;
}

void addSystem(const FaultSystem& system, std::vector<FaultSpec>& all) {
  for (const FaultRow& row : system.rows) {
    const int hashes = row.name.find('#') == std::string_view::npos ? 1 : system.hashes;
    const int ats = row.name.find('@') == std::string_view::npos ? 1 : system.ats;
    for (int h = 1; h <= hashes; ++h) {
      for (int a = 1; a <= ats; ++a) all.push_back(makeSpec(system, row, h, a));
    }
  }
}

std::vector<FaultSpec> makeCatalogue() {
  std::vector<FaultSpec> all;
  for (const auto& make : {driveFaults, gearFaults, engineFaults, startingFaults, airFaults,
                           vacuumFaults, runningFaults, deviceFaults, cabFaults}) {
    for (const FaultSystem& system : make()) addSystem(system, all);
  }
  for (FaultSpec& spec : instrumentFaults()) all.push_back(std::move(spec));
  return all;
}

}  // namespace

const std::string& nameOf(const ParameterRef& parameter) {
  return std::visit([](const auto* info) -> const std::string& { return info->name; }, parameter);
}
std::string_view unitOf(const ParameterRef& parameter) {
  return std::visit([](const auto* info) { return info->unit; }, parameter);
}
double lowestOf(const ParameterRef& parameter) {
  return std::visit([](const auto* info) { return info->lowest; }, parameter);
}
double highestOf(const ParameterRef& parameter) {
  return std::visit([](const auto* info) { return info->highest; }, parameter);
}

std::optional<ParameterRef> findParameter(std::string_view name) {
  for (const plant::ParameterInfo& info : plant::parameterTable()) {
    if (info.name == name) return &info;
  }
  for (const unit::UnitParameterInfo& info : unit::unitParameterTable()) {
    if (info.name == name) return &info;
  }
  return std::nullopt;
}

const std::vector<FaultSpec>& faultCatalogue() {
  static const std::vector<FaultSpec> catalogue = makeCatalogue();
  return catalogue;
}

const FaultSpec* findFault(std::string_view name) {
  for (const FaultSpec& spec : faultCatalogue()) {
    if (spec.name == name) return &spec;
  }
  return nullptr;
}

std::string unknownFault(std::string_view name) {
  std::vector<std::string_view> names;
  for (const FaultSpec& spec : faultCatalogue()) names.push_back(spec.name);
  return unit::unknownWord("fault", name, names);
}

std::optional<std::string> findSizeFault(const FaultSpec& spec, double size) {
  const SizeRange& range = spec.size;
  if (!range.exists()) {
    if (size == 0.0) return std::nullopt;
    return "'" + spec.name + "' has no size: it is there or it is not";
  }
  const std::string allowed = "; allowed: " + plant::shortNumber(range.lowest) + " to " +
                              plant::shortNumber(range.highest) + " " + std::string(range.unit) +
                              (range.of.empty() ? "" : " " + std::string(range.of));
  if (!(size >= range.lowest && size <= range.highest)) {
    return "'" + spec.name + "' cannot be of size " + plant::shortNumber(size) + allowed;
  }
  if (range.whole && size != std::floor(size)) {
    return "'" + spec.name + "' is counted in whole " + std::string(range.unit) + ", not " +
           plant::shortNumber(size) + allowed;
  }
  return std::nullopt;
}

}  // namespace cabwright::fault
