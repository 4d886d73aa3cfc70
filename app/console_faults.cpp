// SPDX-License-Identifier: GPL-3.0-or-later
// faults: the catalogue an instructor or course author chooses from.
#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "console_commands.h"
#include "fault/fault.h"

namespace cabwright::console {
namespace {

nlohmann::json toJson(const fault::FaultSpec& spec) {
  nlohmann::json json{{"name", spec.name},       {"system", spec.system},
                      {"where", spec.where},     {"text", spec.text},
                      {"symptom", spec.symptom}, {"decision", spec.decision},
                      {"gradual", spec.gradual}, {"numbers", nlohmann::json::array()},
                      {"size", nlohmann::json()}};
  if (spec.size.exists())
    json["size"] = {{"unit", spec.size.unit},
                    {"lowest", spec.size.lowest},
                    {"highest", spec.size.highest},
                    {"usual", spec.size.usual},
                    {"whole", spec.size.whole}};
  for (const fault::NumberEffect& effect : spec.numbers)
    json["numbers"].push_back(fault::nameOf(effect.parameter));
  return json;
}

void putText(const Context& context, const fault::FaultSpec& spec) {
  context.output.putLine(spec.name);
  context.output.putLine("    " + spec.where + ": " + spec.text);
  if (spec.size.exists())
    context.output.putLine(fmt::format(
        "    size      {:g} to {:g} {}, usually {:g}{}", spec.size.lowest, spec.size.highest,
        spec.size.unit, spec.size.usual, spec.gradual ? "; can come bit by bit" : ""));
  context.output.putLine("    symptom   " + spec.symptom);
  context.output.putLine("    decision  " + spec.decision);
}

}  // namespace

int runFaults(const Context& context, const FaultsOptions& options) {
  if (options.json) {
    nlohmann::json all = nlohmann::json::array();
    for (const fault::FaultSpec& spec : fault::faultCatalogue()) all.push_back(toJson(spec));
    context.output.putLine(all.dump(2));
    return kPassed;
  }
  std::string_view system;
  for (const fault::FaultSpec& spec : fault::faultCatalogue()) {
    if (spec.system != system) context.output.putLine(fmt::format("== {} ==", spec.system));
    system = spec.system;
    putText(context, spec);
  }
  return kPassed;
}

}  // namespace cabwright::console
