// SPDX-License-Identifier: GPL-3.0-or-later
// A scenario with its rules made ready: what can be run and marked. It comes from files, or from
// the texts a session carries, and gives the same either way.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "marking/rule_set.h"
#include "marking/sheet.h"
#include "scenario/scenario.h"
#include "scenario/script.h"
#include "session/marking_witness.h"
#include "session/record.h"

namespace cabwright::session {

struct Situation {
  scenario::LoadedScenario loaded;
  std::shared_ptr<const marking::RuleSet> rules;
};

/// All faults of the scenario, of the files it names and of its rules at once.
[[nodiscard]] std::variant<Situation, scenario::FileFaults> loadSituation(
    const std::string& path, const std::filesystem::path& shipped = {});

/// From the sources of a session.
[[nodiscard]] std::variant<Situation, scenario::FileFaults> readSituation(
    const std::vector<SourceText>& sources);

/// In another mode than the scenario's own, if one is given and it is another one: sets it in the
/// situation and in the header of the session, so that a replay is run in it as well. What
/// scenario::findModeFault finds is left to the caller.
void chooseMode(Situation& situation, SessionHeader& header, std::optional<scenario::Mode> mode);

/// The head of a new session file. The scenario's file is called by its last folder and name, so
/// that no path of this machine gets into the record.
[[nodiscard]] SessionHeader makeHeader(const Situation& situation, std::uint64_t seed,
                                       const std::string& program_version);

/// Puts the texts of the script that is played among the sources, with the one it stands on: for
/// who reads the session. A replay needs none of them, it has the actions.
void addScript(SessionHeader& header, const scenario::Script& script);

/// What the sheet of such a session says at its head; the same for a run and for its recording.
[[nodiscard]] marking::SheetHead makeHead(const Situation& situation, const SessionHeader& header);

/// What a marker needs. The setup is that of the session's seed.
[[nodiscard]] MarkingTerms makeTerms(const Situation& situation, const scenario::Setup& setup);

/// A sheet as sessions keep it: JSON on one line.
[[nodiscard]] std::string sheetText(const marking::MarkSheet& sheet);

/// The end of a session with its sheet, which is kept without the names of people.
[[nodiscard]] Closing makeClosing(std::int64_t tick, const std::string& reason,
                                  const marking::MarkSheet& sheet);

}  // namespace cabwright::session
