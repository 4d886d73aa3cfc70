// SPDX-License-Identifier: GPL-3.0-or-later
// run: a script in a scenario, recorded if wanted, and its mark sheet.
#include <fmt/format.h>

#include <memory>
#include <nlohmann/json.hpp>

#include "console_exercise.h"
#include "console_sheet.h"
#include "console_stop.h"
#include "session/recorder.h"
#include "session/session_error.h"

namespace cabwright::console {
namespace {

session::SessionHeader makeHeader(const Exercise& exercise, const RunOptions& options) {
  session::SessionHeader header =
      session::makeHeader(exercise.situation, exercise.setup.seed, CABWRIGHT_VERSION);
  session::addScript(header, exercise.script);
  // Without a session the sheet of the same run is the same text every time.
  if (!options.record) {
    header.session_id.clear();
    header.started_utc.clear();
  }
  header.trainee_number = options.trainee_number;
  if (options.trainee) header.people.push_back({"trainee", *options.trainee});
  return header;
}

// What is not in the file is said, and the run counts as unrecorded.
bool closeRecorder(const Context& context, session::Recorder& recorder,
                   const session::Closing& closing) {
  try {
    recorder.close(closing);
  } catch (const session::SessionError& error) {
    context.output.fault(error.what());
    return false;
  }
  return true;
}

// For the author of a script: what would not go, and why.
EachAct makeLog(const Context& context, bool wanted) {
  if (!wanted) return {};
  return [&context](std::int64_t tick, const auto& due, const session::Taken& taken) {
    std::string line = fmt::format("{} {}:{}: {}", toClock(tick), due.at.file, due.at.line,
                                   unit::toText(due.action));
    const unit::ActionOutcome& outcome = taken.outcome;
    if (!outcome.accepted) line += " -- refused";
    if (!outcome.perceived.empty()) line += ": " + outcome.perceived;
    if (!outcome.cause.empty()) line += " (" + outcome.cause + ")";
    context.output.remark(line);
  };
}

}  // namespace

int runRun(const Context& context, const RunOptions& options) {
  const auto exercise = loadExercise(context, options.scenario, options.script, options.seed);
  if (!exercise) return kBadInput;
  const session::SessionHeader header = makeHeader(*exercise, options);
  std::unique_ptr<session::Recorder> recorder;
  try {
    session::RecorderOptions recording;
    recording.seals = options.seals;
    if (options.record)
      recorder = std::make_unique<session::Recorder>(*options.record, header, recording);
  } catch (const session::SessionError& error) {
    context.output.fault(error.what());
    return kBadInput;
  }
  watchForStop();
  session::MarkingWitness marking(session::makeTerms(exercise->situation, exercise->setup));
  session::Run run(exercise->setup);
  run.addWitness(marking);
  if (recorder) run.addWitness(*recorder);
  run.begin();
  ProgressLine progress(context.output);
  const PlayEnd end = play(
      run, exercise->script,
      [&](const session::Run& at) {
        progress.show(at.tick());
        return true;
      },
      makeLog(context, options.log));
  context.output.clearProgress();
  marking.finish(run.tick());
  marking::SheetHead head = session::makeHead(exercise->situation, header);
  head.last_tick = run.tick();
  const marking::MarkSheet sheet = marking.makeSheet(head);
  const bool recorded =
      !recorder ||
      closeRecorder(context, *recorder, session::makeClosing(run.tick(), end.reason, sheet));
  sayEnd(context, end, run);
  if (end.fault || run.failed()) return kBadInput;
  putSheet(context, sheet, options.json);
  if (!recorded) return kBadInput;
  if (end.stop_signal != 0) return 128 + end.stop_signal;
  return sheet.decision.passed ? kPassed : kFailed;
}

}  // namespace cabwright::console
