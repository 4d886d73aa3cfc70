// SPDX-License-Identifier: GPL-3.0-or-later
#include "program.h"

#include <fcntl.h>
#include <poll.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <sstream>
#include <stdexcept>

namespace cabwright::console_test {
namespace fs = std::filesystem;
namespace {

// In the child, between fork and exec.
void becomeProgram(const std::vector<std::string>& words, const Program::Settings& settings,
                   int out, int err) {
  if (!settings.out_file.empty()) out = ::open(settings.out_file.c_str(), O_WRONLY | O_CREAT, 0600);
  ::dup2(::open("/dev/null", O_RDONLY), STDIN_FILENO);
  ::dup2(out, STDOUT_FILENO);
  ::dup2(err, STDERR_FILENO);
  if (!settings.folder.empty() && ::chdir(settings.folder.c_str()) != 0) ::_exit(126);
  for (const auto& [name, value] : settings.environment) ::setenv(name.c_str(), value.c_str(), 1);
  if (settings.most_file_bytes > 0) {
    const rlimit limit{settings.most_file_bytes, settings.most_file_bytes};
    ::setrlimit(RLIMIT_FSIZE, &limit);
  }
  const fs::path program = settings.program.empty() ? consoleProgram() : settings.program;
  std::vector<std::string> copies{program.string()};
  copies.insert(copies.end(), words.begin(), words.end());
  std::vector<char*> pointers;
  for (std::string& copy : copies) pointers.push_back(copy.data());
  pointers.push_back(nullptr);
  ::execv(program.c_str(), pointers.data());
  ::_exit(127);
}

// False at the end of the stream.
bool readSome(int file, std::string& text) {
  std::array<char, 65536> buffer{};
  const ssize_t size = ::read(file, buffer.data(), buffer.size());
  if (size > 0) text.append(buffer.data(), static_cast<std::size_t>(size));
  return size > 0;
}

}  // namespace

std::vector<std::string> Outcome::errorLines() const {
  std::vector<std::string> lines;
  std::istringstream in(err);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

Program::Program(const std::vector<std::string>& words, const Settings& settings)
    : settings_(settings) {
  std::array<int, 2> out{}, err{};
  if (::pipe2(out.data(), O_CLOEXEC) != 0 || ::pipe2(err.data(), O_CLOEXEC) != 0)
    throw std::runtime_error("no pipe");
  child_ = ::fork();
  if (child_ < 0) throw std::runtime_error("no fork");
  if (child_ == 0) becomeProgram(words, settings, out[1], err[1]);
  ::close(out[1]);
  ::close(err[1]);
  out_ = out[0];
  err_ = err[0];
}

Program::~Program() {
  if (child_ > 0) {
    ::kill(child_, SIGKILL);
    ::waitpid(child_, nullptr, 0);
  }
  if (out_ >= 0) ::close(out_);
  if (err_ >= 0) ::close(err_);
}

void Program::send(int signal) const { ::kill(child_, signal); }

void Program::read() {
  while (out_ >= 0 || err_ >= 0) {
    std::array<pollfd, 2> files{pollfd{out_, POLLIN, 0}, pollfd{err_, POLLIN, 0}};
    if (::poll(files.data(), files.size(), -1) < 0) continue;
    if (files[0].revents != 0) {
      const bool more = readSome(out_, outcome_.out);
      if (!more || outcome_.out.size() >= settings_.read_out) {
        ::close(out_);
        out_ = -1;
      }
    }
    if (files[1].revents != 0 && !readSome(err_, outcome_.err)) {
      ::close(err_);
      err_ = -1;
    }
  }
}

Outcome Program::wait() {
  read();
  int status = 0;
  ::waitpid(child_, &status, 0);
  child_ = -1;
  outcome_.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
  outcome_.signal = WIFSIGNALED(status) ? WTERMSIG(status) : 0;
  return outcome_;
}

Outcome run(const std::vector<std::string>& words) { return Program(words).wait(); }

Outcome run(const std::vector<std::string>& words, const Program::Settings& settings) {
  return Program(words, settings).wait();
}

fs::path consoleProgram() { return fs::path(CABWRIGHT_BINARY_DIR) / "app" / "cabwright-console"; }

fs::path shippedScenarios() { return fs::path(CABWRIGHT_SOURCE_DIR) / "scenarios"; }

Folder::Folder() {
  std::string name = (fs::temp_directory_path() / "cabwright-XXXXXX").string();
  if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no temporary folder");
  path_ = name;
}

Folder::~Folder() {
  std::error_code ignored;
  fs::remove_all(path_, ignored);
}

std::string Folder::operator/(const std::string& name) const { return (path_ / name).string(); }

std::string slurp(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

void spill(const fs::path& file, const std::string& text) {
  if (file.has_parent_path()) fs::create_directories(file.parent_path());
  std::ofstream(file, std::ios::binary | std::ios::trunc) << text;
}

}  // namespace cabwright::console_test
