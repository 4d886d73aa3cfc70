// SPDX-License-Identifier: GPL-3.0-or-later
// Runs the real console program and keeps what it said, as a shell would see it.
#pragma once

#include <sys/types.h>

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace cabwright::console_test {

struct Outcome {
  int code = -1;   ///< exit code, or -1 when a signal ended it
  int signal = 0;  ///< that signal
  std::string out, err;
  [[nodiscard]] std::vector<std::string> errorLines() const;
};

/// A program under way.
class Program {
 public:
  struct Settings {
    std::map<std::string, std::string> environment;  ///< added to the test's own
    std::filesystem::path folder;                    ///< working folder; empty: the test's own
    std::filesystem::path program;                   ///< empty: the one of this build
    std::string out_file;                            ///< standard output goes there instead
    std::size_t read_out = SIZE_MAX;  ///< stop reading standard output after this much and shut it
    std::size_t most_file_bytes = 0;  ///< RLIMIT_FSIZE: a disk with no more room; 0: no limit
  };
  explicit Program(const std::vector<std::string>& words) : Program(words, Settings{}) {}
  Program(const std::vector<std::string>& words, const Settings& settings);
  ~Program();
  Program(const Program&) = delete;
  Program& operator=(const Program&) = delete;

  void send(int signal) const;
  /// Reads all it says and waits for its end.
  Outcome wait();

 private:
  void read();
  Settings settings_;
  pid_t child_ = -1;
  int out_ = -1, err_ = -1;
  Outcome outcome_;
};

/// Start, read, wait.
Outcome run(const std::vector<std::string>& words);
Outcome run(const std::vector<std::string>& words, const Program::Settings& settings);

/// The program of this build.
std::filesystem::path consoleProgram();
/// The shipped scenarios in the source tree.
std::filesystem::path shippedScenarios();

/// A folder of its own, gone afterwards.
class Folder {
 public:
  Folder();
  ~Folder();
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  [[nodiscard]] std::string operator/(const std::string& name) const;
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

std::string slurp(const std::filesystem::path& file);
void spill(const std::filesystem::path& file, const std::string& text);

}  // namespace cabwright::console_test
