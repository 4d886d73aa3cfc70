// SPDX-License-Identifier: GPL-3.0-or-later
// Guides: what comes next and why, for whoever is led through an exercise. A guide is a list of
// steps in the order in which they are best done. scenarios/README.txt shows the format.
//
// A step, [[step]] in a file of guides/ and [[guide.step]] in a scenario:
//
//   id             text, required, once in the exercise
//   do             what to do, short and as an order; required
//   why            one or two sentences; required
//   done           the condition that says it has been done, over what is shown and done; required
//   acts           phrases that have to be said or done while it is the next step, however often
//                  they were before: look_both_ways
//   meanwhile      a condition that has to hold at some moment while it is the next step: a warning
//   past           a condition: too late for it if so when its turn comes, for whoever took another
//                  order; it is passed over, with all that `acts` and `meanwhile` ask
//   place          where it is done
//   points         names of what to point at: controls, items, places, loose things, shown signals
//   phase          a heading; the one of the step before if left out
//   when           a condition: the step is passed over unless it holds when the step's turn comes
//   anytime        true: it counts whenever it was done before
//   alternative    what else to do, if it does not go
//   before, after  id of the step it is put beside; of a scenario's own steps only
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "scenario/file_fault.h"
#include "unit/condition.h"
#include "unit/controls.h"
#include "unit/items.h"
#include "unit/objects.h"
#include "unit/places.h"

namespace cabwright::scenario {

/// What a screen can point at.
using GuidePoint = std::variant<unit::Control, unit::Item, unit::Place, unit::Object, unit::Signal>;
/// Of a name that is several of these, the first in the order above; of signals only shown ones.
[[nodiscard]] std::optional<GuidePoint> findGuidePoint(std::string_view name);

struct GuideStep {
  std::string id, phase;
  std::string act;  ///< "do" of the file
  std::string why, alternative;
  std::optional<unit::Place> place;
  std::vector<GuidePoint> points;
  unit::Condition done;
  std::vector<unit::Phrase> acts;
  std::optional<unit::Condition> meanwhile, past, when;
  bool anytime = false;
};

/// The signal that counts how often this was said or done.
[[nodiscard]] unit::Signal countOf(unit::Phrase phrase);

struct Guide {
  std::vector<GuideStep> steps;
};

/// What could be read of a file of guides/, and all that is wrong in it.
struct GuideFile {
  Guide guide;
  FileFaults faults;
};
[[nodiscard]] GuideFile readGuideFile(const SourceFile& file);

/// The same, or all faults at once.
[[nodiscard]] std::variant<Guide, FileFaults> parseGuide(const SourceFile& file);

}  // namespace cabwright::scenario
