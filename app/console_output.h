// SPDX-License-Identifier: GPL-3.0-or-later
// What the console program says: results on standard output, one line for each error on standard
// error, progress on a terminal only.
#pragma once

#include <string>
#include <string_view>

namespace cabwright::console {

/// The exit codes. A run that a signal ended exits with 128 + its number, as shells expect.
enum ExitCode : int {
  kPassed = 0,
  kFailed = 1,
  kBadInput = 2,
  kAltered = 3,    ///< of verify
  kNotSealed = 4,  ///< of verify
  kBroken = 70
};

/// Buffers standard output itself, so that a reader who goes away (| head) or a full disk is
/// noticed and said rather than killing the program or being lost.
class Output {
 public:
  Output();
  ~Output();
  Output(const Output&) = delete;
  Output& operator=(const Output&) = delete;

  /// To standard output, as it is.
  void put(std::string_view text);
  void putLine(std::string_view text);
  void flush();

  /// Whatever is written now nobody reads: a long listing may stop.
  [[nodiscard]] bool isReaderGone() const { return reader_gone_ || write_error_ != 0; }

  /// One line on standard error; characters that would break the line or steer a terminal are
  /// shown as \xNN. Text that does not begin with a file's name gets the program's in front.
  void fault(std::string_view text);
  void remark(std::string_view text);

  /// Replaces the progress line, on a terminal only; clearProgress() takes it away.
  void progress(std::string_view text);
  void clearProgress();
  [[nodiscard]] bool showsProgress() const { return is_terminal_; }

  /// Flushes. The exit code to end with: `code`, or kBadInput (with its line) when standard output
  /// could not be written. A reader who went away is no error.
  [[nodiscard]] int finish(int code);

 private:
  std::string waiting_;
  bool reader_gone_ = false;
  int write_error_ = 0;
  bool is_terminal_ = false;
  bool has_progress_ = false;
};

/// Without characters that break a line or steer a terminal; UTF-8 stays.
[[nodiscard]] std::string toOneLine(std::string_view text);

/// "00:12:34.5" from ticks of 10 ms.
[[nodiscard]] std::string toClock(std::int64_t ticks);

}  // namespace cabwright::console
