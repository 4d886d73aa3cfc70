// SPDX-License-Identifier: GPL-3.0-or-later
// Random changes to the files that ship: what is written says what was meant, to the reader of
// scenarios too, and nothing else in the file is other than it was.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <functional>
#include <sstream>

#include "draft_texts.h"
#include "fault/fault.h"
#include "scenario/draft_text.h"
#include "scenario/draft_writer.h"
#include "scenario/scenario_writer.h"
#include "unit/controls.h"
#include "unit/items.h"
#include "unit/objects.h"

namespace cabwright::scenario {
namespace {

using namespace cabwright::testing;
using S = DraftSection;

template <class T>
T pick(const std::vector<T>& from) {
  return from[static_cast<std::size_t>(*rc::gen::inRange<int>(0, static_cast<int>(from.size())))];
}
int below(int limit) { return *rc::gen::inRange(0, limit); }

std::string anyText() {
  return pick<std::string>({"Plain words", "With \"marks\" and \\", "# no comment", "a = [b",
                            "\u00fcber \u2014 all", "two\nlines", "it's", "]] }"});
}

DraftTable anyHidden() {
  DraftTable table;
  const auto items = unit::itemTable();
  while (true) {
    const auto& info = items[static_cast<std::size_t>(below(static_cast<int>(items.size())))];
    for (const auto& c : info.conditions) {
      if (!unit::findConditionFaults({std::string(info.name), std::string(c.name)}).empty())
        continue;
      table.set("item", info.name);
      table.set("condition", c.name);
      return table;
    }
  }
}

DraftTable anyFault() {
  const auto& catalogue = fault::faultCatalogue();
  const auto& spec = catalogue[static_cast<std::size_t>(below(static_cast<int>(catalogue.size())))];
  DraftTable table;
  table.set("fault", spec.name);
  if (spec.size.exists()) table.set("size", quantityValue(spec.size.highest, spec.size.unit));
  switch (below(3)) {
    case 0:
      table.set("at", timeText(100 * (1 + below(50))));
      break;
    case 1:
      table.set("when", "cab1.air >= 20 psi");
      table.set("after", timeText(1 + below(5000)));
      break;
    default:
      break;
  }
  if (spec.gradual && below(2) == 0) table.set("ramp", "20 s");
  return table;
}

DraftTable anyEvent() {
  DraftTable table;
  table.set("who", "guard");
  table.set("at", timeText(100 * (1 + below(60))));
  table.set("do", std::vector<std::string>(static_cast<std::size_t>(1 + below(6)), "ring bell 2"));
  return table;
}

void changeList(Draft& draft, S section, const std::function<DraftTable()>& make) {
  std::vector<DraftTable>& list = draft.list(section);
  const int what = below(4);
  const auto at = list.begin() + below(static_cast<int>(list.size()) + 1);
  if (what == 0 || list.empty()) {
    list.insert(at, make());
  } else if (what == 1) {
    list.erase(at == list.end() ? at - 1 : at);
  } else if (what == 2) {
    std::rotate(list.begin(), at, list.end());
  } else {
    DraftTable& table = at == list.end() ? list.back() : *at;
    const std::size_t origin = table.origin;
    table = make();
    table.origin = origin;
  }
}

void changeOne(Draft& draft) {
  switch (below(12)) {
    case 0:
      return draft.table(S::kHead).set(pick<std::string>({"title", "purpose", "summary"}),
                                       anyText());
    case 1:
      return draft.table(S::kHead).set("seed", 1 + below(100));
    case 2:
      return draft.table(S::kHead).remove(pick<std::string>({"level", "time_allowed", "teaches"}));
    case 3:
      return draft.table(S::kConditions).set("temperature", quantityValue(below(30) - 5, "C"));
    case 4:
      return draft.table(S::kStart).set(
          pick<std::string>({"main_psi", "line.coolant_c", "line2.coolant_c", "chamber_inhg"}),
          0.25 * below(80));
    case 5: {
      const auto controls = unit::controlTable();
      const auto& info =
          controls[static_cast<std::size_t>(below(static_cast<int>(controls.size())))];
      const auto& positions = info.positions;
      return draft.table(S::kControls)
          .set(info.name,
               positions[static_cast<std::size_t>(below(static_cast<int>(positions.size())))].name);
    }
    case 6: {
      const auto& entries = draft.table(S::kControls).entries;
      if (!entries.empty()) draft.table(S::kControls).remove(pick(entries).key);
      return;
    }
    case 7:
      return changeList(draft, S::kHidden, anyHidden);
    case 8:
      return changeList(draft, S::kFault, anyFault);
    case 9:
      return changeList(draft, S::kEvent, anyEvent);
    case 10: {
      DraftTable& use = draft.list(S::kUse).front();
      std::vector<std::string> rules = use.texts("rules");
      if (rules.empty()) rules = {"access"};
      if (below(2) == 0 && rules.size() > 1) {
        rules.erase(rules.begin() + below(static_cast<int>(rules.size())));
      } else if (std::find(rules.begin(), rules.end(), "warn") == rules.end()) {
        rules.insert(rules.begin() + below(static_cast<int>(rules.size())), "warn");
      }
      return use.set("rules", rules);
    }
    default:
      draft.table(S::kObjects)
          .set(pick<std::string>({"vest", "hand_lamp", "padlock"}),
               pick<std::string>({"carried", "lying cab2", "lying saloon"}));
  }
}

std::vector<std::string> linesOf(const std::string& text) {
  std::vector<std::string> all;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) all.push_back(line);
  return all;
}

/// Lines of `was` that are not in `now` in their order, by the longest that both have in common.
std::size_t linesLost(const std::vector<std::string>& was, const std::vector<std::string>& now) {
  std::vector<std::size_t> row(now.size() + 1, 0);
  for (const std::string& line : was) {
    std::size_t corner = 0;
    for (std::size_t j = 0; j < now.size(); ++j) {
      const std::size_t above = row[j + 1];
      row[j + 1] = line == now[j] ? corner + 1 : std::max(row[j], above);
      corner = above;
    }
  }
  return was.size() - row.back();
}

const std::vector<std::string>& texts() {
  static const std::vector<std::string> all = [] {
    std::vector<std::string> read;
    for (const std::string& path : shippedFiles()) read.push_back(textOf(path));
    return read;
  }();
  return all;
}

RC_GTEST_PROP(WriterProperty, WhatIsWrittenMeansWhatWasMeant, ()) {
  const std::string text = pick(texts());
  Draft draft = draftOf(text);
  const int changes = 1 + below(8);
  for (int k = 0; k < changes; ++k) changeOne(draft);
  const std::string out = changedText(draft, draft.original);
  RC_LOG() << out;
  RC_ASSERT(draftOf(out).saysTheSame(draft));
  RC_ASSERT(out == writeDraft(draft));
  RC_ASSERT(meaningOf(out) == meaningOf(writeDraft(freshOf(draft))));
  // Written once more nothing changes, and a second change builds upon the first.
  RC_ASSERT(writeDraft(draftOf(out)) == out);
}

RC_GTEST_PROP(WriterProperty, OneChangeTouchesItsOwnLinesOnly, ()) {
  const std::string text = pick(texts());
  Draft draft = draftOf(text);
  const Draft before = draft;
  changeOne(draft);
  const std::string out = writeDraft(draft);
  RC_LOG() << out;
  if (draft.saysTheSame(before)) {
    RC_ASSERT(out == text);
    return;
  }
  const auto was = linesOf(text), now = linesOf(out);
  std::size_t own = 0;  // lines of what was changed in lists, in the file as it was
  for (const S section : {S::kHidden, S::kFault, S::kEvent}) {
    if (draft.list(section) == before.list(section)) continue;
    own = 40;
  }
  RC_ASSERT(linesLost(was, now) <= std::max<std::size_t>(own, 2));
  const auto isComment = [](const std::string& line) { return line.starts_with("#"); };
  if (own == 0) {
    std::vector<std::string> comments, kept;
    std::copy_if(was.begin(), was.end(), std::back_inserter(comments), isComment);
    std::copy_if(now.begin(), now.end(), std::back_inserter(kept), isComment);
    RC_ASSERT(kept == comments);
  }
  for (std::size_t k = 1; k < now.size(); ++k) RC_ASSERT(!(now[k].empty() && now[k - 1].empty()));
  RC_ASSERT(now.back() != "");
}

// A thing put in and taken out again leaves the file as it was, to the byte.
RC_GTEST_PROP(WriterProperty, PutInAndTakenOutLeavesNoTrace, ()) {
  const std::string text = pick(texts());
  Draft draft = draftOf(text);
  const S section = pick<S>({S::kHidden, S::kFault, S::kEvent});
  const auto make = section == S::kHidden ? anyHidden : section == S::kFault ? anyFault : anyEvent;
  const std::size_t at =
      static_cast<std::size_t>(below(static_cast<int>(draft.list(section).size()) + 1));
  draft.list(section).insert(draft.list(section).begin() + static_cast<std::ptrdiff_t>(at), make());
  const std::string with = writeDraft(draft);
  RC_ASSERT(linesLost(linesOf(text), linesOf(with)) == 0U);
  Draft again = draftOf(with);
  again.list(section).erase(again.list(section).begin() + static_cast<std::ptrdiff_t>(at));
  const std::string out = writeDraft(again);
  RC_LOG() << with << "\n----\n" << out;
  RC_ASSERT(out == text);
}

}  // namespace
}  // namespace cabwright::scenario
