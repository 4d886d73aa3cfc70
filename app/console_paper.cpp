// SPDX-License-Identifier: GPL-3.0-or-later
// export --pdf: pages are drawn by the desktop program. This one knows no window, and the desktop
// program may not be there.
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <filesystem>
#include <system_error>

#include "console_commands.h"
#include "console_places.h"

extern char** environ;  // NOLINT(readability-redundant-declaration)

namespace cabwright::console {
namespace {

namespace fs = std::filesystem;

// What a program said on standard error, and how it ended.
struct Said {
  int code = -1;  ///< -1: it could not be begun, or was killed
  std::string words;
};

Said runQuietly(const std::string& program, std::array<const char*, 5> words) {
  std::array<int, 2> pipe{};
  if (::pipe2(pipe.data(), O_CLOEXEC) != 0) return {};
  posix_spawn_file_actions_t actions;
  ::posix_spawn_file_actions_init(&actions);
  ::posix_spawn_file_actions_adddup2(&actions, pipe[1], STDERR_FILENO);
  pid_t child = 0;
  const int failed = ::posix_spawn(&child, program.c_str(), &actions, nullptr,
                                   const_cast<char* const*>(words.data()), environ);
  ::posix_spawn_file_actions_destroy(&actions);
  ::close(pipe[1]);
  Said said;
  std::array<char, 4096> buffer{};
  for (ssize_t n = 0; failed == 0;) {
    n = ::read(pipe[0], buffer.data(), buffer.size());
    if (n < 0 && errno == EINTR) continue;
    if (n <= 0) break;
    if (said.words.size() < 100'000) said.words.append(buffer.data(), static_cast<std::size_t>(n));
  }
  ::close(pipe[0]);
  if (failed != 0) return said;
  int status = 0;
  while (::waitpid(child, &status, 0) < 0 && errno == EINTR) continue;
  if (WIFEXITED(status)) said.code = WEXITSTATUS(status);
  return said;
}

// Its own last line; what libraries remark about a system without a screen comes before.
std::string lastLine(const std::string& words) {
  const std::size_t end = words.find_last_not_of('\n');
  if (end == std::string::npos) return {};
  const std::size_t before = words.rfind('\n', end);
  std::string line =
      words.substr(before == std::string::npos ? 0 : before + 1, end - (before + 1) + 1);
  constexpr std::string_view kName = "cabwright: ";
  if (line.starts_with(kName)) line.erase(0, kName.size());
  return line;
}

// A name that begins with a dash would be taken for an option.
std::string asName(const std::string& file) { return file.starts_with('-') ? "./" + file : file; }

}  // namespace

std::optional<std::string> exportPdf(const std::string& session, const std::string& out) {
  const std::string program = (programFolder() / "cabwright").string();
  std::error_code ignored;
  if (!fs::exists(program, ignored))
    return out + ": the desktop program, which draws pages, is not installed beside this one";
  const std::string from = asName(session), to = asName(out);
  const Said said =
      runQuietly(program, {program.c_str(), "--report", from.c_str(), to.c_str(), nullptr});
  if (said.code == 0) return std::nullopt;
  const std::string why = lastLine(said.words);
  return why.empty() ? out + ": the desktop program did not write it" : why;
}

}  // namespace cabwright::console
