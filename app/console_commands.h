// SPDX-License-Identifier: GPL-3.0-or-later
// What each command of the console program is given. Each returns the exit code and says its
// faults itself.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "console_output.h"
#include "console_places.h"

namespace cabwright::console {

struct Context {
  Output& output;
  const Places& places;
};

struct CheckOptions {
  std::vector<std::string> files;
};
int runCheck(const Context& context, const CheckOptions& options);

struct RunOptions {
  std::string scenario;
  std::string script;
  std::optional<std::string> record;
  std::optional<std::uint64_t> seed;
  std::optional<std::string> trainee;
  std::string trainee_number;
  bool json = false;
  bool seals = false;  ///< seal the session when it ends, whatever its mode
  bool log = false;    ///< each act and what came of it, on standard error
};
int runRun(const Context& context, const RunOptions& options);

struct MarkOptions {
  std::vector<std::string> sessions;  ///< files and folders
  bool json = false;
  std::optional<std::string> out;  ///< results of many, a line of JSON each; those there are kept
};
int runMark(const Context& context, const MarkOptions& options);
/// Of more than one file, or of folders.
int runMarkMany(const Context& context, const MarkOptions& options);

struct ExportOptions {
  std::string session;
  std::optional<std::string> csv;                        ///< a folder
  std::optional<std::string> html;                       ///< a new file
  std::optional<std::string> xapi;                       ///< likewise
  std::optional<std::string> pdf;                        ///< likewise
  double every_s = 1;                                    ///< between two lines of signals.csv
  std::string home = "http://cabwright.invalid/people";  ///< of the trainee's account, for xAPI
};
int runExport(const Context& context, const ExportOptions& options);
/// The report on paper, drawn by the desktop program, which stands beside this one. Gives why it
/// was not written, in one line; empty: it was.
[[nodiscard]] std::optional<std::string> exportPdf(const std::string& session,
                                                   const std::string& out);

struct ReplayOptions {
  std::string session;
};
int runReplay(const Context& context, const ReplayOptions& options);

struct VerifyOptions {
  std::string session;
  std::optional<std::string> trust;  ///< a file of public keys
};
int runVerify(const Context& context, const VerifyOptions& options);

struct SealOptions {
  std::string session;
};
int runSeal(const Context& context, const SealOptions& options);

struct EraseOptions {
  std::string session;
  bool is_sure = false;
};
int runErase(const Context& context, const EraseOptions& options);

/// The public keys of this station and of those who sign at it.
int runKey(const Context& context);

struct TraceOptions {
  std::string scenario;
  std::string script;
  std::string signals;  ///< names with commas between, or "help"
  double every_s = 1.0;
  std::optional<std::uint64_t> seed;
};
int runTrace(const Context& context, const TraceOptions& options);

struct FaultsOptions {
  bool json = false;
};
int runFaults(const Context& context, const FaultsOptions& options);

}  // namespace cabwright::console
