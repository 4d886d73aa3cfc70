// SPDX-License-Identifier: GPL-3.0-or-later
// mark for many sessions: all at once, resumable, whatever is broken among them.
#include <fmt/format.h>

#include <chrono>
#include <fstream>
#include <set>

#include "console_commands.h"
#include "console_stop.h"
#include "review/mark_many.h"

namespace cabwright::console {
namespace {

namespace fs = std::filesystem;

double nowSeconds() {
  return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

// The lines of an earlier run. A last line without an end was cut off and counts for nothing.
std::set<std::string> readDone(const std::string& file) {
  std::set<std::string> done;
  std::ifstream in(file);
  for (std::string line; std::getline(in, line) && !in.eof();)
    if (const auto name = review::readMarkedFile(line)) done.insert(*name);
  return done;
}

// Takes away a line that was cut off, so that the next one begins anew.
void dropHalfLine(const std::string& file) {
  std::ifstream in(file, std::ios::binary);
  const std::string text{std::istreambuf_iterator<char>(in), {}};
  const auto end = text.rfind('\n');
  std::error_code ignored;
  if (!text.empty() && text.back() != '\n')
    fs::resize_file(file, end == std::string::npos ? 0 : end + 1, ignored);
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
  return fmt::format("{}: {}, {:.0f} %{}", marked.file.string(), word, marked.percent, by);
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
  if (options.out) {
    const std::set<std::string> done = readDone(*options.out);
    count.before =
        std::erase_if(files, [&](const fs::path& file) { return done.contains(file.string()); });
    dropHalfLine(*options.out);
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
