// SPDX-License-Identifier: GPL-3.0-or-later
// mark and replay: what can be done with a recorded session.
#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "console_exercise.h"
#include "console_sheet.h"
#include "console_stop.h"
#include "session/replay.h"
#include "session/session_error.h"

namespace cabwright::console {

void putSheet(const Context& context, const marking::MarkSheet& sheet, bool as_json) {
  if (as_json)
    context.output.putLine(
        marking::sheetToJson(sheet).dump(2, ' ', false, nlohmann::json::error_handler_t::replace));
  else
    context.output.put(marking::printSheet(sheet));
}

int runMark(const Context& context, const MarkOptions& options) {
  std::error_code unknown;
  const bool is_one = options.sessions.size() == 1 && !options.out &&
                      !std::filesystem::is_directory(options.sessions.front(), unknown);
  if (!is_one) return runMarkMany(context, options);
  try {
    const session::Store store(options.sessions.front());
    const session::Remarked marked = session::markAgain(store);
    putSheet(context, marked.sheet, options.json);
    if (!marked.complete)
      context.output.remark(fmt::format("{}: was cut off at {}, marked as far as it goes",
                                        store.name(), toClock(store.lastTick())));
    if (marked.as_recorded == false)
      context.output.remark(fmt::format("{}: the sheet differs from the one recorded by version {}",
                                        store.name(), store.header().program_version));
    return marked.complete && marked.sheet.decision.passed ? kPassed : kFailed;
  } catch (const session::SessionError& error) {
    context.output.fault(error.what());
    return kBadInput;
  }
}

namespace {

void sayDifference(const Context& context, const session::Difference& difference) {
  const std::string others =
      difference.others > 0 ? fmt::format(" (and {} more)", difference.others) : std::string();
  context.output.putLine(
      toOneLine(fmt::format("differs first at tick {} ({}): {}: recorded {}, now {}{}",
                            difference.tick, toClock(difference.tick), difference.quantity,
                            difference.recorded, difference.replayed, others)));
}

void sayVersion(const Context& context, const session::Store& store) {
  if (store.header().program_version != CABWRIGHT_VERSION)
    context.output.remark(fmt::format("{}: recorded by version {}, this is {}", store.name(),
                                      store.header().program_version, CABWRIGHT_VERSION));
  if (!store.closing())
    context.output.remark(fmt::format("{}: was cut off at {}, compared as far as it goes",
                                      store.name(), toClock(store.lastTick())));
}

}  // namespace

int runReplay(const Context& context, const ReplayOptions& options) {
  try {
    const session::Store store(options.session);
    sayVersion(context, store);
    watchForStop();
    ProgressLine progress(context.output);
    const session::Replayed replayed = session::replay(store, [&](std::int64_t tick) {
      progress.show(tick, store.lastTick());
      return findStopSignal() == 0;
    });
    context.output.clearProgress();
    if (findStopSignal() != 0) return 128 + findStopSignal();
    if (replayed.difference) {
      sayDifference(context, *replayed.difference);
      return kFailed;
    }
    context.output.putLine(fmt::format("identical ({}: {} frames, {} actions, {} states)",
                                       toClock(replayed.last_tick), replayed.frames,
                                       replayed.actions, replayed.hashes));
    return kPassed;
  } catch (const session::SessionError& error) {
    context.output.fault(error.what());
    return kBadInput;
  }
}

}  // namespace cabwright::console
