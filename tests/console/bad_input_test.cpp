// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever is handed in as a file of some kind: clear faults and code 2, never a crash or a hang.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>

#include "exercise.h"

namespace cabwright::console_test {
namespace {

using testing::AllOf;
using testing::Each;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::StartsWith;

struct Kind {
  std::string name;  // where it stands beneath the folder, with % for the file's own name
  std::string good;  // a shipped one
};

const std::vector<Kind>& kinds() {
  static const std::vector<Kind> all{
      {"%/scenario.toml", "cold-preparation/scenario.toml"},
      {"vehicles/%.toml", "vehicles/long-gear-unit.toml"},
      {"routes/%.toml", "routes/quavelow-yard.toml"},
      {"rules/%.toml", "rules/preparation.toml"},
      {"exercise/%.txt", "cold-preparation/good.txt"},
      {"exercise/%.txt", "cold-preparation/bad-reverser-moving.txt"}};
  return all;
}

class BadInput : public testing::Test {
 protected:
  // Every kind of file, made bad in the same way.
  void forEachKind(const std::function<std::string(const std::string& good)>& change,
                   const std::function<void(const std::string& file, const Outcome&)>& expect) {
    int number = 0;
    for (const Kind& kind : kinds()) {
      std::string file = kind.name;
      file.replace(file.find('%'), 1, "x" + std::to_string(++number));
      const std::string path = folder_ / file;
      spill(folder_.path() / "exercise/good.txt",
            slurp(shippedScenarios() / "cold-preparation/good.txt"));
      spill(path, change(slurp(shippedScenarios() / kind.good)));
      const Outcome outcome = run({"check", path});
      EXPECT_EQ(outcome.signal, 0) << path;
      expect(path, outcome);
    }
  }
  void expectRefused(const std::function<std::string(const std::string& good)>& change,
                     const std::string& words = "") {
    forEachKind(change, [&](const std::string& file, const Outcome& outcome) {
      EXPECT_EQ(outcome.code, 2) << file;
      EXPECT_EQ(outcome.out, "") << file;
      EXPECT_THAT(outcome.errorLines(), Not(IsEmpty())) << file;
      EXPECT_THAT(outcome.errorLines(), Each(AllOf(StartsWith(file + ":"), HasSubstr(words))));
      EXPECT_LE(outcome.errorLines().size(), 201U) << file;
    });
  }
  Folder folder_;
};

TEST_F(BadInput, TheGoodOnesAreGoodAndMayComeFromElsewhere) {
  const auto expect_good = [](const std::string& file, const Outcome& outcome) {
    EXPECT_EQ(outcome.code, 0) << file << outcome.err;
  };
  forEachKind([](const std::string& good) { return good; }, expect_good);
  forEachKind([](const std::string& good) { return "\xEF\xBB\xBF" + good; }, expect_good);
  forEachKind(
      [](const std::string& good) {
        std::string text;
        for (char c : good) text += c == '\n' ? std::string("\r\n") : std::string(1, c);
        return text;
      },
      expect_good);
}

TEST_F(BadInput, NothingIsNotEnough) {
  expectRefused([](const std::string&) { return ""; });
  expectRefused([](const std::string&) { return "# only words\n"; });
}

TEST_F(BadInput, BytesThatAreNoText) {
  expectRefused([](const std::string& good) { return good + std::string("x\0y", 3); }, "NUL byte");
  expectRefused([](const std::string& good) { return good + "# \xE9t\xE9\n"; }, "no UTF-8");
  expectRefused([](const std::string&) { return "\xFF\xFE" + std::string("t\0i\0", 4); },
                "no UTF-8");
  expectRefused([](const std::string&) { return slurp(consoleProgram()).substr(0, 100'000); });
  expectRefused([](const std::string& good) { return good + "# old\r# end\n"; }, "carriage return");
}

TEST_F(BadInput, TooMuchOfIt) {
  expectRefused([](const std::string&) { return "#" + std::string(50'000'000, 'x'); },
                "larger than the 4 MiB allowed");
  expectRefused([](const std::string&) {
    std::string text;
    while (text.size() < 4'000'000) text += "[[rule]]\n";
    return text;
  });
}

TEST_F(BadInput, TooDeep) {
  expectRefused([](const std::string&) { return std::string(10'000, '['); });
  expectRefused([](const std::string&) {
    return "a = " + std::string(10'000, '[') + std::string(10'000, ']') + "\n";
  });
  expectRefused([](const std::string&) {
    std::string text = "a";
    for (int k = 0; k < 10'000; ++k) text += ".a";
    return text + " = 1\n";
  });
}

TEST_F(BadInput, CutOffInTheMiddleOfAWord) {
  // A file that ends between two lines is a shorter file; one that ends inside a line is not.
  expectRefused(
      [](const std::string& good) { return good.substr(0, good.size() / 2) + "\nx = \"ab"; });
}

}  // namespace
}  // namespace cabwright::console_test
