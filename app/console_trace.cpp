// SPDX-License-Identifier: GPL-3.0-or-later
// trace: signals of a run as comma-separated values (RFC 4180, with line feeds).
#include <fmt/format.h>

#include "console_exercise.h"
#include "console_plant_signals.h"
#include "console_stop.h"
#include "marking/event.h"
#include "unit/nearest_name.h"

namespace cabwright::console {
namespace {

struct Column {
  std::string heading;
  std::function<std::string(const session::Run&)> value;
};

// Everything there is to choose from: the signals of a frame, then the machine's own values.
struct Catalogue {
  std::vector<PlantSignal> plant = makePlantSignals();

  [[nodiscard]] std::vector<std::string_view> names() const {
    std::vector<std::string_view> names;
    for (const unit::SignalInfo& info : unit::signalTable()) names.push_back(info.name);
    for (const PlantSignal& signal : plant) names.push_back(signal.name);
    return names;
  }
};

std::string heading(std::string_view name, std::string_view unit) {
  return unit.empty() ? std::string(name) : fmt::format("{} [{}]", name, unit);
}

// As many digits as tell any two values apart, so that nothing is lost on the way to a chart.
void addColumns(const Catalogue& catalogue, std::string_view pattern,
                std::vector<Column>& columns) {
  for (const unit::SignalInfo& info : unit::signalTable())
    if (marking::fitsPattern(pattern, info.name))
      columns.push_back({heading(info.name, info.unit), [id = info.id](const session::Run& run) {
                           return fmt::format("{}", run.frame()[id]);
                         }});
  for (const PlantSignal& signal : catalogue.plant)
    if (marking::fitsPattern(pattern, signal.name))
      columns.push_back({heading(signal.name, signal.unit), [&signal](const session::Run& run) {
                           return fmt::format("{}", signal.of(run.unit().readings()));
                         }});
}

std::vector<std::string> splitAtCommas(std::string_view text) {
  std::vector<std::string> parts;
  while (true) {
    const std::size_t comma = text.find(',');
    std::string part(text.substr(0, comma));
    std::erase(part, ' ');
    if (!part.empty()) parts.push_back(std::move(part));
    if (comma == std::string_view::npos) return parts;
    text.remove_prefix(comma + 1);
  }
}

std::optional<std::vector<Column>> chooseColumns(const Context& context, const Catalogue& catalogue,
                                                 const std::string& words) {
  std::vector<Column> columns;
  bool sound = true;
  for (const std::string& word : splitAtCommas(words)) {
    if (word == "time") continue;  // always the first column
    const std::size_t before = columns.size();
    addColumns(catalogue, word, columns);
    if (columns.size() > before) continue;
    context.output.fault("--signals: " + unit::unknownWord("signal", word, catalogue.names()) +
                         " (--signals help lists them)");
    sound = false;
  }
  if (sound && columns.empty()) {
    context.output.fault("--signals: names no signal (--signals help lists them)");
    sound = false;
  }
  if (!sound) return std::nullopt;
  return columns;
}

int listSignals(const Context& context, const Catalogue& catalogue) {
  const auto put = [&](std::string_view name, std::string_view unit, std::string_view text) {
    context.output.putLine(fmt::format("{:<28} {:<9} {}", name, unit, text));
  };
  put("time", "s", "time of the run, always the first column");
  for (const unit::SignalInfo& info : unit::signalTable()) put(info.name, info.unit, info.text);
  for (const PlantSignal& signal : catalogue.plant) put(signal.name, signal.unit, signal.text);
  return kPassed;
}

// Whole ticks, or nothing.
std::optional<std::int64_t> toTicks(double seconds) {
  if (!(seconds >= 0.01 && seconds <= 86'400.0)) return std::nullopt;
  const auto ticks = static_cast<std::int64_t>(seconds * 100.0 + 0.5);
  const double off = seconds * 100.0 - static_cast<double>(ticks);
  if (off > 1e-6 || off < -1e-6) return std::nullopt;
  return ticks;
}

void putRow(const Context& context, const std::vector<Column>& columns, const session::Run& run) {
  std::string row = fmt::format("{}.{:02}", run.tick() / 100, run.tick() % 100);
  for (const Column& column : columns) (row += ',') += column.value(run);
  context.output.putLine(row);
}

void putHeading(const Context& context, const std::vector<Column>& columns) {
  std::string row = "time [s]";
  for (const Column& column : columns) (row += ',') += column.heading;
  context.output.putLine(row);
}

}  // namespace

int runTrace(const Context& context, const TraceOptions& options) {
  const Catalogue catalogue;
  if (options.signals == "help") return listSignals(context, catalogue);
  const auto columns = chooseColumns(context, catalogue, options.signals);
  const auto every = toTicks(options.every_s);
  if (!every)
    context.output.fault(
        "--every: takes 0.01 to 86400 seconds, in whole hundredths of a second (a tick)");
  if (options.scenario.empty() || options.script.empty())
    context.output.fault("cabwright-console: trace needs SCENARIO and --script");
  if (!columns || !every || options.scenario.empty() || options.script.empty()) return kBadInput;
  auto exercise = loadExercise(context, options.scenario, options.script, options.seed);
  if (!exercise) return kBadInput;
  watchForStop();
  session::Run run(exercise->setup);
  run.begin();
  putHeading(context, *columns);
  const PlayEnd end = play(run, std::move(exercise->script), [&](const session::Run& at) {
    if (at.tick() % *every == 0) putRow(context, *columns, at);
    return !context.output.isReaderGone();
  });
  sayEnd(context, end, run);
  if (end.fault || run.failed()) return kBadInput;
  return end.stop_signal != 0 ? 128 + end.stop_signal : kPassed;
}

}  // namespace cabwright::console
