// SPDX-License-Identifier: GPL-3.0-or-later
#include "console_output.h"

#include <fmt/format.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <system_error>

namespace cabwright::console {
namespace {

constexpr std::size_t kBufferBytes = 1 << 16;
constexpr std::string_view kProgram = "cabwright-console: ";

// All of it, or the errno that stopped it.
int writeAll(int file, std::string_view text) {
  while (!text.empty()) {
    const ssize_t written = ::write(file, text.data(), text.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return errno;
    text.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

}  // namespace

std::string toOneLine(std::string_view text) {
  std::string line;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte < 0x20 || byte == 0x7f)
      line += fmt::format("\\x{:02x}", byte);
    else
      line += c;
  }
  return line;
}

std::string toClock(std::int64_t ticks) {
  return fmt::format("{:02}:{:02}:{:02}.{}", ticks / 360'000, ticks / 6'000 % 60, ticks / 100 % 60,
                     ticks / 10 % 10);
}

Output::Output() : is_terminal_(::isatty(STDERR_FILENO) == 1) {
  // Writing fails with EPIPE or EFBIG instead of ending the program in the middle of a session.
  std::signal(SIGPIPE, SIG_IGN);
  std::signal(SIGXFSZ, SIG_IGN);
}

Output::~Output() { flush(); }

void Output::put(std::string_view text) {
  waiting_ += text;
  if (waiting_.size() >= kBufferBytes) flush();
}

void Output::putLine(std::string_view text) {
  put(text);
  put("\n");
}

void Output::flush() {
  // After the first failure nothing more: what is written later would hide that something is
  // missing.
  if (!isReaderGone() && write_error_ == 0) {
    const int error = writeAll(STDOUT_FILENO, waiting_);
    if (error == EPIPE)
      reader_gone_ = true;
    else
      write_error_ = error;
  }
  waiting_.clear();
}

void Output::fault(std::string_view text) {
  flush();  // keeps the order of the two streams on a terminal
  remark(text);
}

void Output::remark(std::string_view text) {
  clearProgress();
  writeAll(STDERR_FILENO, toOneLine(text) + "\n");
}

void Output::progress(std::string_view text) {
  if (!is_terminal_) return;
  writeAll(STDERR_FILENO, fmt::format("\r\x1b[K{}", toOneLine(text)));
  has_progress_ = true;
}

void Output::clearProgress() {
  if (has_progress_) writeAll(STDERR_FILENO, "\r\x1b[K");
  has_progress_ = false;
}

int Output::finish(int code) {
  clearProgress();
  flush();
  if (write_error_ == 0) return code;
  remark(fmt::format("{}standard output: {}", kProgram,
                     std::generic_category().message(write_error_)));
  return kBadInput;
}

}  // namespace cabwright::console
