// SPDX-License-Identifier: GPL-3.0-or-later
#include "console_program.h"

#include <CLI/CLI.hpp>
#include <functional>
#include <sstream>

#include "console_commands.h"
#include "console_help.h"

namespace cabwright::console {
namespace {

using Command = std::function<int(const Context&)>;

// One object per command, so that CLI11 has somewhere to put what it read.
struct Options {
  std::optional<std::string> data;
  CheckOptions check;
  RunOptions run;
  MarkOptions mark;
  ReplayOptions replay;
  TraceOptions trace;
  FaultsOptions faults;
  Command chosen;
};

void addCheck(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("check", "Reads files strictly and lists every fault");
  command->add_option("FILE", options.check.files, "scenario, vehicle, route, rules or script")
      ->required();
  command->footer(helpOfCheck());
  command->callback([&options] {
    options.chosen = [&](const Context& c) { return runCheck(c, options.check); };
  });
}

void addRun(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("run", "Runs a script in a scenario and marks it");
  command->add_option("SCENARIO", options.run.scenario, "a folder, a file or a shipped name")
      ->required();
  command->add_option("--script", options.run.script, "what is done: a file, or its name beside it")
      ->required();
  command->add_option("--record", options.run.record, "write the session to this new file");
  command->add_option("--seed", options.run.seed, "draws the hidden conditions anew");
  command->add_option("--trainee", options.run.trainee, "name to keep in the session file");
  command->add_flag("--json", options.run.json, "the mark sheet as JSON");
  command->add_flag("--log", options.run.log, "say each act and what came of it on standard error");
  command->footer(helpOfRun());
  command->callback(
      [&options] { options.chosen = [&](const Context& c) { return runRun(c, options.run); }; });
}

void addMark(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("mark", "Marks a recorded session again");
  command->add_option("SESSION", options.mark.session, "a .cabsession file")->required();
  command->add_flag("--json", options.mark.json, "the mark sheet as JSON");
  command->footer(helpOfMark());
  command->callback(
      [&options] { options.chosen = [&](const Context& c) { return runMark(c, options.mark); }; });
}

void addReplay(CLI::App& app, Options& options) {
  CLI::App* command =
      app.add_subcommand("replay", "Runs a session again from its actions and compares");
  command->add_option("SESSION", options.replay.session, "a .cabsession file")->required();
  command->footer(helpOfReplay());
  command->callback([&options] {
    options.chosen = [&](const Context& c) { return runReplay(c, options.replay); };
  });
}

void addTrace(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("trace", "Writes signals of a run as CSV");
  command->add_option("SCENARIO", options.trace.scenario, "as for run");
  command->add_option("--script", options.trace.script, "as for run");
  command
      ->add_option("--signals", options.trace.signals,
                   "names with commas between; \"help\" lists them all")
      ->required();
  command->add_option("--every", options.trace.every_s, "seconds of the run between two lines")
      ->capture_default_str();
  command->add_option("--seed", options.trace.seed, "as for run");
  command->footer(helpOfTrace());
  command->callback([&options] {
    options.chosen = [&](const Context& c) { return runTrace(c, options.trace); };
  });
}

void addFaults(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("faults", "Lists the catalogue of faults");
  command->add_flag("--json", options.faults.json, "as JSON");
  command->callback([&options] {
    options.chosen = [&](const Context& c) { return runFaults(c, options.faults); };
  });
}

// Empty when the command line was good and a command was chosen; the exit code otherwise.
std::optional<int> parse(CLI::App& app, Output& output, int count, char** words) {
  try {
    app.parse(count, words);
  } catch (const CLI::ParseError& error) {
    if (error.get_exit_code() != 0) {
      output.fault(std::string("cabwright-console: ") + error.what() + " (--help tells more)");
      return kBadInput;
    }
    std::ostringstream text, nothing;
    app.exit(error, text, nothing);
    output.put(text.str());
    return kPassed;
  }
  return std::nullopt;
}

}  // namespace

int runConsole(Output& output, int count, char** words) {
  CLI::App app(helpOfProgram(), "cabwright-console");
  Options options;
  app.set_version_flag("--version", "cabwright-console " CABWRIGHT_VERSION,
                       "Print the version and exit");
  app.add_option("--data", options.data,
                 "folder that holds scenarios/ (or the variable CABWRIGHT_DATA)");
  app.footer(helpWithExamples());
  app.require_subcommand(1);
  app.fallthrough();
  addCheck(app, options);
  addRun(app, options);
  addMark(app, options);
  addReplay(app, options);
  addTrace(app, options);
  addFaults(app, options);
  if (const auto code = parse(app, output, count, words)) return *code;
  const Places places(options.data);
  if (const auto fault = places.findFault()) {
    output.fault("cabwright-console: " + *fault);
    return kBadInput;
  }
  return options.chosen({output, places});
}

}  // namespace cabwright::console
