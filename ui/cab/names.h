// SPDX-License-Identifier: GPL-3.0-or-later
// What the trainee reads for the names the machine uses: "end1.tail_lamp" is "Tail lamp". All of it
// goes through translation, in the contexts Control, Position, Item, Place, Thing, Phrase,
// Signal, Scenario, Seen.
#pragma once

#include <QString>
#include <string_view>

#include "unit/controls.h"
#include "unit/items.h"
#include "unit/objects.h"
#include "unit/places.h"

namespace cabwright::cab {

/// "Brake", "Reversing lever"; of engines and cabs without their number.
[[nodiscard]] QString nameOf(unit::Control c);
/// What it is for, one line.
[[nodiscard]] QString textOf(unit::Control c);
/// How a position is called: "lap", "fast idle", "3", "45 %".
[[nodiscard]] QString positionText(unit::Control c, double value);
/// "Tail lamp".
[[nodiscard]] QString nameOf(unit::Item i);
/// "Cab 1", "End 1", "Engine 2".
[[nodiscard]] QString nameOf(unit::Place p);
/// "On the ground, before end 1".
[[nodiscard]] QString textOf(unit::Place p);
[[nodiscard]] QString nameOf(unit::Object o);
[[nodiscard]] QString nameOf(unit::Phrase p);
/// "critical", "serious", "technical"; empty for none.
[[nodiscard]] QString nameOf(unit::DefectClass c);
/// What they are, one line.
[[nodiscard]] QString textOf(unit::Object o);
[[nodiscard]] QString textOf(unit::Signal s);
[[nodiscard]] QString textOf(const unit::PhraseInfo& phrase);
/// Title of an exercise, step of a guide, name on the route.
[[nodiscard]] QString exerciseWords(std::string_view english);
/// What the trainee is told that is seen, heard or answered, in the reader's language.
[[nodiscard]] QString translateSeen(const QString& words);

}  // namespace cabwright::cab
