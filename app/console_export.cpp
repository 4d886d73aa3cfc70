// SPDX-License-Identifier: GPL-3.0-or-later
// export: a session for other programs and for paper.
#include <fmt/format.h>

#include <cerrno>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <system_error>

#include "console_commands.h"
#include "review/csv.h"
#include "review/html_report.h"
#include "review/xapi.h"
#include "session/session_error.h"

namespace cabwright::console {
namespace {

namespace fs = std::filesystem;
using session::SessionError;

void refuseIfThere(const fs::path& file) {
  std::error_code ignored;
  if (fs::exists(fs::symlink_status(file, ignored)))
    throw SessionError(file.string() + ": exists already and is not overwritten");
}

// A new file, complete under its name or not there.
class NewFile {
 public:
  explicit NewFile(fs::path file) : file_(std::move(file)), hidden_(file_) {
    refuseIfThere(file_);
    hidden_ += ".part";
    out_.open(hidden_, std::ios::binary | std::ios::trunc);
    if (!out_)
      throw SessionError(fmt::format("{}: cannot be written: {}", file_.string(),
                                     std::generic_category().message(errno)));
  }
  ~NewFile() {
    std::error_code ignored;
    fs::remove(hidden_, ignored);
  }
  NewFile(const NewFile&) = delete;
  NewFile& operator=(const NewFile&) = delete;
  std::ostream& out() { return out_; }
  // All of it on the disk, and not under its name yet.
  void close() {
    out_.close();
    if (!out_) throw SessionError(file_.string() + ": the disk is full");
  }
  void finish() {
    if (out_.is_open()) close();
    std::error_code failed;
    fs::rename(hidden_, file_, failed);
    if (failed) throw SessionError(file_.string() + ": " + failed.message());
  }

 private:
  fs::path file_, hidden_;
  std::ofstream out_;
};

void exportText(const std::string& file, const std::string& text) {
  NewFile made(file);
  made.out() << text;
  made.finish();
}

void exportCsv(const session::Store& store, const std::string& folder, double every_s) {
  std::error_code failed;
  fs::create_directories(folder, failed);
  if (failed) throw SessionError(folder + ": " + failed.message());
  NewFile actions(fs::path(folder) / "actions.csv"), signals(fs::path(folder) / "signals.csv");
  review::writeActionsCsv(store, actions.out());
  review::writeSignalsCsv(store, signals.out(), std::llround(every_s * 100));
  actions.close();
  signals.close();  // two halves of one thing: both or none
  actions.finish();
  signals.finish();
}

std::string xapiText(const session::Store& store, const ExportOptions& options) {
  const review::Reviewed reviewed = review::reviewSession(store);
  return review::makeXapi(store, reviewed.sheet, reviewed.entries, {options.home})
             .dump(2, ' ', false, nlohmann::json::error_handler_t::replace) +
         "\n";
}

// All of it before the first is written: half of what was asked for helps nobody, and hinders the
// next try.
void refuseIfAnyIsThere(const ExportOptions& options) {
  if (options.csv)
    for (const char* name : {"actions.csv", "signals.csv"})
      refuseIfThere(fs::path(*options.csv) / name);
  for (const auto& file : {options.html, options.xapi, options.pdf})
    if (file) refuseIfThere(*file);
}

std::optional<std::string> findFault(const ExportOptions& options) {
  for (const auto& name : {options.csv, options.html, options.xapi, options.pdf})
    if (name && name->empty()) return "the name of what is to be written is empty";
  if (!options.csv && !options.html && !options.xapi && !options.pdf)
    return "say what to export: --pdf FILE, --csv FOLDER, --html FILE or --xapi FILE";
  if (options.every_s < 0.1 || options.every_s > 86'400 || std::isnan(options.every_s))
    return "--every is from 0.1 to 86400 seconds";
  return options.xapi ? review::findXapiFault({options.home}) : std::nullopt;
}

}  // namespace

int runExport(const Context& context, const ExportOptions& options) {
  if (const auto fault = findFault(options)) {
    context.output.fault("cabwright-console: " + *fault);
    return kBadInput;
  }
  try {
    const session::Store store(options.session);
    refuseIfAnyIsThere(options);
    const auto say = [&](const std::string& what) {
      context.output.putLine(toOneLine(what + " written"));
    };
    if (options.csv) {
      exportCsv(store, *options.csv, options.every_s);
      say(*options.csv + "/actions.csv and signals.csv");
    }
    if (options.html) {
      review::ReportInput report = review::loadReport(options.session);
      report.attempt = review::findAttempt(options.session);
      report.program = CABWRIGHT_VERSION;
      exportText(*options.html, review::makeHtmlReport(report));
      say(*options.html);
    }
    if (options.xapi) {
      exportText(*options.xapi, xapiText(store, options));
      say(*options.xapi);
    }
    if (options.pdf) {
      if (const auto fault = exportPdf(options.session, *options.pdf)) throw SessionError(*fault);
      say(*options.pdf);
    }
    return kPassed;
  } catch (const SessionError& error) {
    context.output.fault(error.what());
    return kBadInput;
  }
}

}  // namespace cabwright::console
