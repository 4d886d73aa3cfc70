// SPDX-License-Identifier: GPL-3.0-or-later
// The program as installed: it finds its exercises from its own place, wherever that was moved to.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <string>

#include "program.h"

namespace cabwright::console_test {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

class Installed : public testing::Test {
 protected:
  void SetUp() override {
    const std::string command = "cmake --install '" CABWRIGHT_BINARY_DIR "' --strip --prefix '" +
                                prefix_.string() + "' > '" + (folder_ / "log") + "' 2>&1";
    ASSERT_EQ(std::system(command.c_str()), 0) << slurp(folder_ / "log");
  }
  static Program::Settings at(const fs::path& prefix) {
    Program::Settings settings;
    settings.program = prefix / "bin" / "cabwright-console";
    settings.folder = "/";
    return settings;
  }
  Folder folder_;
  fs::path prefix_ = folder_.path() / "first";
};

TEST_F(Installed, FindsItsExercisesByName) {
  const Outcome outcome = run({"run", "cold-preparation", "--script", "none"}, at(prefix_));
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.err, HasSubstr("no such script"));
}

TEST_F(Installed, FindsThemWhenItIsMoved) {
  const fs::path moved = folder_.path() / "second";
  fs::rename(prefix_, moved);
  const Outcome outcome = run({"run", "cold-preparation", "--script", "none"}, at(moved));
  EXPECT_EQ(outcome.code, 2);
  EXPECT_THAT(outcome.err, HasSubstr("no such script"));
}

TEST_F(Installed, ItsShippedFilesAreGood) {
  const fs::path scenarios = prefix_ / "share" / "cabwright" / "scenarios";
  std::vector<std::string> words{"check"};
  for (const auto& entry : fs::recursive_directory_iterator(scenarios))
    if (entry.path().extension() == ".toml") words.push_back(entry.path().string());
  ASSERT_GT(words.size(), 5U);
  const Outcome outcome = run(words, at(prefix_));
  EXPECT_EQ(outcome.code, 0) << outcome.err;
}

// Assertions and sanitizers name their source files.
#if defined(NDEBUG) && !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
TEST_F(Installed, HoldsNoPathOfTheSourceTree) {
  EXPECT_THAT(slurp(prefix_ / "bin" / "cabwright-console"),
              testing::Not(HasSubstr(CABWRIGHT_SOURCE_DIR "/")));
}
#endif

}  // namespace
}  // namespace cabwright::console_test
