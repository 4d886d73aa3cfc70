// SPDX-License-Identifier: GPL-3.0-or-later
#include "console_program.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <charconv>
#include <functional>
#include <sstream>

#include "console_commands.h"
#include "console_help.h"
#include "unit/nearest_name.h"

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
  VerifyOptions verify;
  ExportOptions session_export;
  SealOptions seal;
  EraseOptions erase;
  TraceOptions trace;
  FaultsOptions faults;
  Command chosen;
};

// What the library reads of a number by itself lets -1 and 1e30 pass for the greatest there is.
std::string findSeedFault(const std::string& text) {
  std::uint64_t seed = 0;
  const char* end = text.data() + text.size();
  const auto [read, error] = std::from_chars(text.data(), end, seed);
  if (error == std::errc() && read == end) return {};
  return "takes a whole number from 0 to 18446744073709551615";
}

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
  command->add_option("--seed", options.run.seed, "draws the hidden conditions anew")
      ->check(findSeedFault);
  command->add_option("--trainee", options.run.trainee, "name to keep in the session file");
  command->add_option("--trainee-number", options.run.trainee_number,
                      "number to keep in it; stays when names are erased");
  command->add_flag("--seal", options.run.seals, "seal the session when it ends");
  command->add_flag("--json", options.run.json, "the mark sheet as JSON");
  command->add_flag("--log", options.run.log, "say each act and what came of it on standard error");
  command->footer(helpOfRun());
  command->callback(
      [&options] { options.chosen = [&](const Context& c) { return runRun(c, options.run); }; });
}

void addMark(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("mark", "Marks recorded sessions again");
  command->add_option("SESSION", options.mark.sessions, "a .cabsession file; or many, or folders")
      ->required();
  command->add_flag("--json", options.mark.json, "the mark sheet as JSON; of many a line for each");
  command->add_option("--out", options.mark.out,
                      "of many: add the lines to this file, and leave out those it has");
  command->footer(helpOfMark());
  command->callback(
      [&options] { options.chosen = [&](const Context& c) { return runMark(c, options.mark); }; });
}

void addExport(CLI::App& app, Options& options) {
  ExportOptions& given = options.session_export;
  CLI::App* command = app.add_subcommand("export", "Writes a session for other programs and paper");
  command->add_option("SESSION", given.session, "a .cabsession file")->required();
  command->add_option("--csv", given.csv, "actions.csv and signals.csv in this folder");
  command->add_option("--html", given.html, "the report as one page, to this new file");
  command->add_option("--pdf", given.pdf, "the report on paper, with pictures, likewise");
  command->add_option("--xapi", given.xapi, "statements for a learning record store, likewise");
  command->add_option("--every", given.every_s, "of --csv: seconds between two lines of signals")
      ->capture_default_str();
  command->add_option("--home", given.home, "of --xapi: address of the system that knows trainees")
      ->capture_default_str();
  command->footer(helpOfExport());
  command->callback([&options] {
    options.chosen = [&](const Context& c) { return runExport(c, options.session_export); };
  });
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

void addVerify(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("verify", "Tells whether a session is what was sealed");
  command->add_option("SESSION", options.verify.session, "a .cabsession file")->required();
  command->add_option("--trust", options.verify.trust,
                      "file of public keys one knows, as the command key prints them");
  command->footer(helpOfVerify());
  command->callback([&options] {
    options.chosen = [&](const Context& c) { return runVerify(c, options.verify); };
  });
}

void addSeal(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("seal", "Seals a session that was not sealed at its end");
  command->add_option("SESSION", options.seal.session, "a .cabsession file")->required();
  command->footer(helpOfSeal());
  command->callback(
      [&options] { options.chosen = [&](const Context& c) { return runSeal(c, options.seal); }; });
}

void addErase(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("erase", "Takes the names of people out of a session");
  command->add_option("SESSION", options.erase.session, "a .cabsession file")->required();
  command->add_flag("--erase-names-for-good", options.erase.is_sure,
                    "say that you are sure: it cannot be undone");
  command->footer(helpOfErase());
  command->callback([&options] {
    options.chosen = [&](const Context& c) { return runErase(c, options.erase); };
  });
}

void addKey(CLI::App& app, Options& options) {
  CLI::App* command =
      app.add_subcommand("key", "Prints the public keys this station and its people sign with");
  command->footer(helpOfKey());
  command->callback([&options] { options.chosen = [](const Context& c) { return runKey(c); }; });
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
  command->add_option("--seed", options.trace.seed, "as for run")->check(findSeedFault);
  command->footer(helpOfTrace());
  command->callback([&options] {
    options.chosen = [&](const Context& c) { return runTrace(c, options.trace); };
  });
}

void addFaults(CLI::App& app, Options& options) {
  CLI::App* command = app.add_subcommand("faults", "Lists the catalogue of faults");
  command->add_flag("--json", options.faults.json, "as JSON");
  command->footer(helpOfFaults());
  command->callback([&options] {
    options.chosen = [&](const Context& c) { return runFaults(c, options.faults); };
  });
}

// A word that nothing takes is the cause when something else is missing after it.
std::string whyWrong(const CLI::App& app, const CLI::ParseError& error) {
  const std::vector<std::string> unknown = app.remaining(true);
  const bool is_missing = dynamic_cast<const CLI::RequiredError*>(&error) != nullptr;
  if (!is_missing || unknown.empty()) return error.what();
  const auto chosen = app.get_subcommands();
  const CLI::App& at = chosen.empty() ? app : *chosen.front();
  const bool is_option = unknown.front().starts_with("-");
  std::vector<std::string> names;
  if (is_option)
    for (const CLI::Option* option : at.get_options())
      if (!option->get_positional()) names.push_back(option->get_name());
  if (!is_option && chosen.empty())
    for (const CLI::App* command : at.get_subcommands({})) names.push_back(command->get_name());
  return unit::unknownWord(is_option ? "option" : "command", unknown.front(),
                           std::vector<std::string_view>(names.begin(), names.end()));
}

// Empty when the command line was good and a command was chosen; the exit code otherwise.
std::optional<int> parse(CLI::App& app, Output& output, int count, char** words) {
  try {
    app.parse(count, words);
  } catch (const CLI::ParseError& error) {
    if (error.get_exit_code() != 0) {
      output.fault("cabwright-console: " + whyWrong(app, error) + " (--help tells more)");
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
  addVerify(app, options);
  addExport(app, options);
  addSeal(app, options);
  addErase(app, options);
  addKey(app, options);
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
