// SPDX-License-Identifier: GPL-3.0-or-later
// The programs as installed: they find their exercises from their own place, wherever that was
// moved to, and what else is installed is what a desktop expects.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>

#include <cstdlib>
#include <regex>
#include <set>
#include <string>

#include "exercise.h"

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
  // The desktop program, without a screen and with a home of its own.
  [[nodiscard]] Program::Settings desktop() const {
    Program::Settings settings;
    settings.program = prefix_ / "bin" / "cabwright";
    settings.folder = "/";
    settings.environment = {{"QT_QPA_PLATFORM", "offscreen"},
                            {"HOME", folder_.path().string()},
                            {"XDG_CONFIG_HOME", folder_ / "config"},
                            {"LC_ALL", "C.UTF-8"}};
    return settings;
  }
  [[nodiscard]] fs::path share() const { return prefix_ / "share"; }
  // Runs a checker of the system's over a file; empty when it finds nothing.
  [[nodiscard]] std::string complaints(const std::string& checker, const fs::path& file) const {
    const std::string command =
        checker + " '" + file.string() + "' > '" + (folder_ / "check") + "' 2>&1";
    return std::system(command.c_str()) == 0 ? "" : slurp(folder_ / "check") + "\nnot good";
  }
  static bool isThere(const std::string& program) {
    return std::system(("command -v " + program + " > /dev/null").c_str()) == 0;
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
  for (const auto& entry : fs::directory_iterator(prefix_ / "bin"))
    EXPECT_THAT(slurp(entry.path()).find(CABWRIGHT_SOURCE_DIR "/"), std::string::npos)
        << entry.path();
}
#endif

#ifdef CABWRIGHT_DESKTOP
TEST_F(Installed, TheDesktopProgramSaysWhatItIs) {
  const Outcome version = run({"--version"}, desktop());
  EXPECT_EQ(version.code, 0) << version.err;
  EXPECT_THAT(version.out, testing::MatchesRegex("[Cc]abwright [0-9.]+\n"));
  const Outcome help = run({"--help"}, desktop());
  EXPECT_EQ(help.code, 0) << help.err;
  EXPECT_THAT(help.out, HasSubstr("--data"));
  const Outcome nowhere = run({"--data", "/nowhere"}, desktop());
  EXPECT_EQ(nowhere.code, 2);
  EXPECT_THAT(nowhere.err, HasSubstr("/nowhere/scenarios"));
}

TEST_F(Installed, TheDesktopProgramStartsWithAnEmptyHomeAndWithSettingsThatAreNone) {
  const Outcome first = run({"--try-start"}, desktop());
  EXPECT_EQ(first.code, 0) << first.err;
  EXPECT_THAT(first.out, HasSubstr("can be used"));
  const fs::path settings = fs::path(folder_ / "config") / "cabwright" / "cabwright.ini";
  fs::create_directories(settings.parent_path());
  std::ofstream(settings) << std::string("\0\xff[preferences\ntheme", 20)
                          << "=}}\nwindow=@Variant(";
  const Outcome second = run({"--try-start"}, desktop());
  EXPECT_EQ(second.code, 0) << second.err;
  EXPECT_THAT(second.out, HasSubstr("can be used"));
}

TEST_F(Installed, TheDesktopProgramStartsWithoutAnyTypeface) {
  std::ofstream(folder_ / "fonts.conf") << "<?xml version=\"1.0\"?><fontconfig></fontconfig>";
  Program::Settings settings = desktop();
  settings.environment["FONTCONFIG_FILE"] = folder_ / "fonts.conf";
  const Outcome outcome = run({"--try-start"}, settings);
  EXPECT_EQ(outcome.code, 0) << outcome.err;
  EXPECT_THAT(outcome.out, HasSubstr("can be used"));
}

TEST_F(Installed, TheMenuEntryLeadsToTheProgramAndItsIcon) {
  const std::string entry = slurp(share() / "applications/cabwright.desktop");
  const auto value = [&entry](const std::string& key) {
    std::smatch match;
    return std::regex_search(entry, match, std::regex("\n" + key + "=(.*)\n")) ? match[1].str()
                                                                               : std::string();
  };
  ASSERT_FALSE(value("Exec").empty());
  EXPECT_TRUE(fs::exists(prefix_ / "bin" / value("Exec")));
  ASSERT_FALSE(value("Icon").empty());
  EXPECT_TRUE(fs::exists(share() / "icons/hicolor/scalable/apps" / (value("Icon") + ".svg")));
  EXPECT_EQ(value("Categories"), "Education;");
  ASSERT_TRUE(isThere("desktop-file-validate")) << "tests/run installs it";
  EXPECT_EQ(complaints("desktop-file-validate", share() / "applications/cabwright.desktop"), "");
}

TEST_F(Installed, TheCatalogueEntryIsGoodAndNamesWhatIsInstalled) {
  const fs::path file = share() / "metainfo/invalid.cabwright.cabwright.metainfo.xml";
  const std::string text = slurp(file);
  EXPECT_THAT(text, HasSubstr("<id>invalid.cabwright.cabwright</id>"));
  std::smatch match;
  ASSERT_TRUE(std::regex_search(text, match, std::regex("desktop-id\">([^<]+)<")));
  EXPECT_TRUE(fs::exists(share() / "applications" / match[1].str()));
  // The newest release is the one that is built.
  ASSERT_TRUE(std::regex_search(text, match, std::regex("<release version=\"([^\"]+)\"")));
  EXPECT_THAT(run({"--version"}, desktop()).out, HasSubstr(" " + match[1].str() + "\n"));
  ASSERT_TRUE(isThere("appstreamcli")) << "tests/run installs it";
  EXPECT_EQ(complaints("appstreamcli validate --no-net", file), "");
}

TEST_F(Installed, TheKindOfFileIsThatOfASession) {
  const std::string text = slurp(share() / "mime/packages/cabwright-session.xml");
  std::smatch number;
  ASSERT_TRUE(std::regex_search(
      text, number, std::regex("type=\"big32\" value=\"(0x[0-9a-f]+)\" offset=\"68\"")));
  const ExerciseFolder exercise;
  const std::string session = folder_ / "a.cabsession";
  run({"run", exercise.exercise().string(), "--script", exercise.script("bad-gear.txt"), "--record",
       session});
  const std::string bytes = slurp(session);
  ASSERT_GT(bytes.size(), 100U);
  EXPECT_THAT(bytes, testing::StartsWith("SQLite format 3"));
  unsigned long found = 0;
  for (std::size_t k = 68; k < 72; ++k) found = found * 256 + static_cast<unsigned char>(bytes[k]);
  EXPECT_EQ(found, std::stoul(number[1].str(), nullptr, 16));
}

// What is to be translated comes along translated: a catalogue for each text.
TEST_F(Installed, EveryLanguageIsThere) {
  const auto names = [](const fs::path& folder, const std::string& ending) {
    std::set<std::string> found;
    if (!fs::exists(folder)) return found;
    for (const auto& entry : fs::directory_iterator(folder))
      if (entry.path().extension() == ending) found.insert(entry.path().stem().string());
    return found;
  };
  const auto texts = names(CABWRIGHT_SOURCE_DIR "/assets/translations", ".ts");
  EXPECT_EQ(names(share() / "cabwright/translations", ".qm"), texts);
  EXPECT_EQ(names(CABWRIGHT_BINARY_DIR "/app/translations", ".qm"), texts);
}
#endif

}  // namespace
}  // namespace cabwright::console_test
