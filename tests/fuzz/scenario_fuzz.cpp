// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a scenario (with a vehicle and a route that are good), as a vehicle, a route, a set
// of rules and a script. The first byte says which.
#include <cstddef>
#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "scenario/script.h"
#include "session/rule_reader.h"
#include "session/situation.h"

namespace {

using namespace cabwright;
using session::SourceText;

const SourceText kVehicle{"vehicle", "plain", "title = \"Plain\"\n"};
const SourceText kRoute{"route", "line",
                        "title = \"Line\"\n[[grade]]\nfrom = 0\nslope = \"level\"\n"};
const SourceText kScenario{"scenario", "fuzz/scenario.toml",
                           "title = \"F\"\npurpose = \"p\"\nsummary = \"s\"\nvehicle = \"plain\"\n"
                           "route = \"line\"\nseed = 7\n[conditions]\ntemperature = \"8 C\"\n"
                           "stood_hours = 10\n[start]\nplace = \"cab1\"\n"};

// What can be read can be made a setup of, too.
void readSources(const std::vector<SourceText>& sources) {
  const auto read = session::readSituation(sources);
  if (const auto* situation = std::get_if<session::Situation>(&read))
    static_cast<void>(scenario::makeSetup(situation->loaded, 7));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const std::string text(reinterpret_cast<const char*>(data) + 1, size - 1);
  switch (data[0] % 5) {
    case 0:
      readSources({{"scenario", "fuzz/scenario.toml", text}, kVehicle, kRoute});
      break;
    case 1:
      readSources({kScenario, {"vehicle", "plain", text}, kRoute});
      break;
    case 2:
      readSources({kScenario, kVehicle, {"route", "line", text}});
      break;
    case 3: {
      const auto rules = scenario::parseRules({"rules.toml", text});
      if (const auto* good = std::get_if<std::vector<scenario::RuleText>>(&rules))
        static_cast<void>(session::readRules(*good));
      break;
    }
    default:
      static_cast<void>(scenario::parseScript(
          {"script.txt", text}, [](const unit::Action&) { return std::optional<std::string>(); },
          {}));
  }
  return 0;
}
