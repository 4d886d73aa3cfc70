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
  bool json = false;
  bool log = false;  ///< each act and what came of it, on standard error
};
int runRun(const Context& context, const RunOptions& options);

struct MarkOptions {
  std::string session;
  bool json = false;
};
int runMark(const Context& context, const MarkOptions& options);

struct ReplayOptions {
  std::string session;
};
int runReplay(const Context& context, const ReplayOptions& options);

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
