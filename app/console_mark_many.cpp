// SPDX-License-Identifier: GPL-3.0-or-later
// mark for many sessions: all at once, resumable, whatever is broken among them.
#include <fmt/format.h>

#include <chrono>
#include <fstream>
#include <optional>
#include <set>

#include "console_commands.h"
#include "console_stop.h"
#include "marking/sheet.h"
#include "review/mark_many.h"

namespace cabwright::console {
namespace {

namespace fs = std::filesystem;

double nowSeconds() {
  return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

// Why nothing may be added to this file: what is there may be dear to somebody, a session even.
std::optional<std::string> findOutFault(const std::string& file, std::string& text) {
  std::error_code unknown;
  const fs::file_status status = fs::status(file, unknown);
  if (!fs::exists(status)) return std::nullopt;  // whether it can be made is seen then
  if (!fs::is_regular_file(status)) return file + ": not a regular file";
  std::ifstream in(file, std::ios::binary);
  text.assign(std::istreambuf_iterator<char>(in), {});
  if (!in.good() && !in.eof()) return file + ": cannot be read";
  if (!review::areMarkLines(text))
    return file + ": holds something else than marks of sessions; nothing is added to it";
  return std::nullopt;
}

// The lines of an earlier run. A last line without an end was cut off and counts for nothing.
std::set<std::string> readDone(std::string_view text) {
  std::set<std::string> done;
  for (auto end = text.find('\n'); end != std::string_view::npos; end = text.find('\n')) {
    if (const auto name = review::readMarkedFile(std::string(text.substr(0, end))))
      done.insert(*name);
    text.remove_prefix(end + 1);
  }
  return done;
}

// Takes away a line that was cut off, so that the next one begins anew.
void dropHalfLine(const std::string& file, std::string_view text) {
  const auto end = text.rfind('\n');
  std::error_code ignored;
  if (!text.empty() && text.back() != '\n')
    fs::resize_file(file, end == std::string_view::npos ? 0 : end + 1, ignored);
}

struct Count {
  std::size_t marked = 0, broken = 0, before = 0;
  bool has_room = true;
};

std::string textOf(const review::MarkedSession& marked) {
  if (!marked.fault.empty()) return marked.file.string() + ": broken: " + marked.fault;
  const char* word = !marked.complete ? "cut off" : marked.passed ? "passed" : "failed";
  std::string by;
  for (const std::string& id : marked.failed_by) by += " " + id;
  return fmt::format("{}: {}, {} %{}", marked.file.string(), word,
                     marking::describePercent(marked.percent), by);
}

void sayEnd(const Context& context, const Count& count, std::size_t all, double seconds) {
  const std::size_t done = count.marked + count.broken;
  context.output.remark(fmt::format(
      "{} of {} sessions marked in {:.1f} s ({:.1f} per second), {} broken{}", count.marked, all,
      seconds, seconds > 0 ? static_cast<double>(done) / seconds : 0.0, count.broken,
      count.before > 0 ? fmt::format(", {} were marked before", count.before) : ""));
}

}  // namespace

int runMarkMany(const Context& context, const MarkOptions& options) {
  const std::vector<fs::path> places(options.sessions.begin(), options.sessions.end());
  std::vector<fs::path> files = review::findSessions(places);
  const std::size_t all = files.size();
  Count count;
  std::ofstream results;
  if (all == 0)
    context.output.fault("cabwright-console: no session there; their names end in .cabsession");
  if (options.out) {
    std::string text;
    if (const auto fault = findOutFault(*options.out, text)) {
      context.output.fault(*fault);
      return kBadInput;
    }
    const std::set<std::string> done = readDone(text);
    count.before = std::erase_if(
        files, [&](const fs::path& file) { return done.contains(review::nameInLine(file)); });
    dropHalfLine(*options.out, text);
    results.open(*options.out, std::ios::binary | std::ios::app);
    if (!results) {
      context.output.fault(*options.out + ": cannot be written");
      return kBadInput;
    }
  }
  watchForStop();
  const double began = nowSeconds();
  const auto each = [&](const review::MarkedSession& marked) {
    ++(marked.fault.empty() ? count.marked : count.broken);
    if (options.out) {
      results << review::toJsonLine(marked) << '\n' << std::flush;
      count.has_room = static_cast<bool>(results);
    } else {
      context.output.putLine(options.json ? review::toJsonLine(marked) : toOneLine(textOf(marked)));
    }
    context.output.progress(fmt::format("{} of {}", count.marked + count.broken, files.size()));
    return findStopSignal() == 0 && count.has_room && !context.output.isReaderGone();
  };
  review::markMany(files, each);
  context.output.clearProgress();
  sayEnd(context, count, all, nowSeconds() - began);
  if (!count.has_room) context.output.fault(*options.out + ": the disk is full");
  if (findStopSignal() != 0) return 128 + findStopSignal();
  return count.broken > 0 || !count.has_room || all == 0 ? kBadInput : kPassed;
}

}  // namespace cabwright::console
