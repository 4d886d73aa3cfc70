// SPDX-License-Identifier: GPL-3.0-or-later
// The head of the mark sheet: record, people, exercise, and what was done to the run.
#include <QCoreApplication>

#include "after/words.h"
#include "review_room/marks_facts.h"
#include "review_room/marks_style.h"
#include "session/personal_key.h"

namespace cabwright::review_room {

using drawing::Tone;
using marking::SheetHead;
using marking::SheetNote;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(MarkSheet)
};

void put(FactGroup& group, const QString& name, const QString& value) {
  if (!value.isEmpty()) group.facts.push_back({name, value});
}

Fact standingFact(const session::Verification& found) {
  const QString name = Words::tr("Record");
  switch (found.standing) {
    case session::Standing::kWhole:
      return {name,
              Words::tr("sealed %1, and whole").arg(after::sheetWords(wordOf(found.seal->how))),
              {},
              Tone::kGood};
    case session::Standing::kNotSealed:
      return {
          name, Words::tr("not sealed: nothing proves that it was not changed"), {}, Tone::kDoubt};
    case session::Standing::kAltered:
    case session::Standing::kNoSession:
      break;
  }
  return {name, Words::tr("altered"), {}, Tone::kBad, true};
}

FactGroup recordFacts(const Opened& opened, const QString& file_sha256) {
  const session::Verification& found = opened.verification();
  FactGroup group{Words::tr("Record"), {}};
  group.facts.push_back(
      {.name = Words::tr("Session"), .value = toQt(opened.sheet().head.session_id), .wide = true});
  put(group, Words::tr("File"), toQt(opened.file().filename().string()));
  if (!file_sha256.isEmpty())
    group.facts.push_back(
        {.name = Words::tr("SHA-256 of the file"), .value = file_sha256, .wide = true});
  group.facts.push_back(standingFact(found));
  for (const std::string& finding : found.findings)
    group.facts.push_back({{}, after::sheetWords(finding), {}, Tone::kBad});
  if (!opened.readFault().empty())
    group.facts.push_back({{}, toQt(opened.readFault()), {}, Tone::kBad});
  if (!found.has_end)
    group.facts.push_back(
        {{}, Words::tr("was cut off: it has no end and no sheet of its own"), {}, Tone::kDoubt});
  if (found.seal)
    put(group, Words::tr("Station key"), toQt(session::fingerprintOf(found.seal->station)));
  if (found.erased_people > 0)
    put(group, Words::tr("Names erased"), QString::number(found.erased_people));
  return group;
}

FactGroup signatureFacts(const Opened& opened) {
  FactGroup group{Words::tr("Signatures"), {}};
  std::size_t after_last = 0;
  for (const review::Entry& entry : opened.entries()) {
    ++after_last;
    if (!std::holds_alternative<review::SignOff>(entry.content)) continue;
    after_last = 0;
    group.facts.push_back(
        {after::sheetWords(entry.by.role), Words::tr("%1, %2, key %3")
                                               .arg(personName(entry.by), utcText(entry.utc),
                                                    toQt(session::fingerprintOf(entry.key)))});
  }
  if (group.facts.empty())
    group.facts.push_back({{}, Words::tr("not signed yet"), {}, Tone::kInk2});
  else if (after_last > 0)
    group.facts.push_back(
        {{}, Words::tr("something was added since the last signature"), {}, Tone::kDoubt});
  return group;
}

FactGroup peopleFacts(const Opened& opened) {
  const SheetHead& head = opened.sheet().head;
  FactGroup group{Words::tr("Who"), {}};
  for (const session::Person& person : opened.store().header().people) {
    QString role = after::sheetWords(person.role);
    if (!role.isEmpty()) role[0] = role[0].toUpper();
    put(group, role, personName(person));
  }
  put(group, Words::tr("Attempt"), toQt(head.attempt));
  QStringList assessors;
  for (const review::Entry& entry : opened.entries())
    if (entry.by.role == "assessor" && !assessors.contains(personName(entry.by)))
      assessors << personName(entry.by);
  put(group, Words::tr("Assessed by"), assessors.join(QLatin1String(", ")));
  put(group, Words::tr("Mode"), after::sheetWords(head.mode));
  put(group, Words::tr("Purpose"), after::exerciseWords(head.purpose));
  return group;
}

FactGroup exerciseFacts(const SheetHead& head) {
  FactGroup group{Words::tr("Exercise"), {}};
  put(group, Words::tr("Exercise"), after::exerciseWords(head.title));
  put(group, Words::tr("File"), toQt(head.scenario));
  put(group, Words::tr("Check value"), toQt(head.scenario_hash));
  put(group, Words::tr("Vehicle"), after::exerciseWords(head.vehicle));
  put(group, Words::tr("Route"), after::exerciseWords(head.route));
  put(group, Words::tr("Told beforehand"), after::exerciseWords(head.conditions_told));
  put(group, Words::tr("Seed"), head.seed ? QString::number(*head.seed) : QString());
  put(group, Words::tr("Machine"), toQt(head.plant_version));
  put(group, Words::tr("Program"), toQt(head.program_version));
  put(group, Words::tr("Begun"), utcText(head.started_utc));
  put(group, Words::tr("Length"), after::timeText(head.last_tick));
  if (head.time_allowed_s)
    put(group, Words::tr("Time allowed"),
        after::timeText(static_cast<std::int64_t>(*head.time_allowed_s * 100)));
  return group;
}

FactGroup noteFacts(const QString& caption, const std::vector<SheetNote>& notes,
                    const QString& none) {
  FactGroup group{caption, {}};
  for (const SheetNote& note : notes)
    group.facts.push_back({after::timeText(note.tick), after::sheetWords(note.text), note.tick});
  if (notes.empty() && !none.isEmpty()) group.facts.push_back({{}, none, {}, Tone::kInk2});
  return group;
}

FactGroup unaidedFacts(const SheetHead& head) {
  FactGroup group{Words::tr("Unaided part"), {}};
  if (head.unaided_until)
    group.facts.push_back({after::timeText(*head.unaided_until),
                           Words::tr("The instructor stepped in; only what came before counts."),
                           head.unaided_until});
  else
    group.facts.push_back({{}, Words::tr("the whole run"), {}, Tone::kInk2});
  return group;
}

}  // namespace

std::vector<FactGroup> makeHeadFacts(const Opened& opened, const QString& file_sha256) {
  const SheetHead& head = opened.sheet().head;
  const QString none = Words::tr("none");
  return {recordFacts(opened, file_sha256),
          signatureFacts(opened),
          peopleFacts(opened),
          exerciseFacts(head),
          unaidedFacts(head),
          noteFacts(Words::tr("Pace of time"), head.paces, Words::tr("never changed")),
          noteFacts(Words::tr("Freezes"), head.freezes, none),
          noteFacts(Words::tr("Taken again from a moment"), head.taken_again, none),
          noteFacts(Words::tr("Faults put in"), head.faults, none),
          noteFacts(Words::tr("Prompts"), head.prompts, none),
          noteFacts(Words::tr("The instructor stepped in"), head.interventions, none),
          noteFacts(Words::tr("Remarks of the instructor"), head.remarks, {}),
          noteFacts(Words::tr("Known limits of the model that were met"), head.limits_met, none)};
}

}  // namespace cabwright::review_room
