// SPDX-License-Identifier: GPL-3.0-or-later
// An instructor in a script: run, recorded, run again, marked again, traced.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "exercise.h"

namespace cabwright::console_test {
namespace {

using testing::Contains;
using testing::HasSubstr;

class DeskScripts : public testing::Test {
 protected:
  DeskScripts() {
    spill(folder_.exercise() / "desk.txt",
          "set cab1.pawl out\n"
          "instructor: mark the pawl is out\n"
          "instructor: arm vacuum.train_pipe_leak size 2 mm ramp 1 s after 1 s as leak\n"
          "set cab1.handbrake off\n"
          "instructor: pace 0.5\n"
          "wait 3 s\n"
          "instructor: clear leak\n"
          "instructor: pace 1\n"
          "instructor: remark general calmly done\n"
          "wait 1 s\n"
          "instructor: intervene that will do\n"
          "wait 2 s\n");
  }
  [[nodiscard]] std::vector<std::string> words(const std::string& command,
                                               const std::string& script) const {
    return {command, folder_.exercise().string(), "--script", folder_.script(script)};
  }
  ExerciseFolder folder_;
};

TEST_F(DeskScripts, AreRunRecordedRunAgainAndMarkedAgain) {
  const std::string session = folder_ / "desk.cabsession";
  std::vector<std::string> command = words("run", "desk.txt");
  command.insert(command.end(), {"--record", session});
  const Outcome outcome = run(command);
  EXPECT_EQ(outcome.err, "");
  for (const std::string line :
       {"0:00:00.0 instructor: arm vacuum.train_pipe_leak size 2 mm", "'leak' there",
        "'leak' cleared", "Remark            0:00:03.0 calmly done",
        "Stepped in        0:00:04.0 that will do", "Unaided           up to 0:00:04.0"})
    EXPECT_THAT(outcome.out, HasSubstr(line));
  EXPECT_THAT(run({"replay", session}).out, HasSubstr("identical"));
  const Outcome marked = run({"mark", session, "--json"});
  const auto head = nlohmann::json::parse(marked.out).at("head");
  EXPECT_EQ(head.at("paces").size(), 2U);
  EXPECT_EQ(head.at("remarks").at(0).at("text"), "calmly done");
  EXPECT_EQ(head.at("interventions").at(0).at("tick"), 400);
}

TEST_F(DeskScripts, AreCheckedWithTheNearestName) {
  spill(folder_.exercise() / "wrong.txt",
        "instructor: arm vacuum.train_pipe_leek\ninstructor: pace 3\nguard: clear leak\n");
  const Outcome outcome = run({"check", folder_.script("wrong.txt")});
  EXPECT_NE(outcome.code, 0);
  EXPECT_THAT(outcome.errorLines(),
              Contains(HasSubstr("wrong.txt:1:17: unknown fault 'vacuum.train_pipe_leek'; did you "
                                 "mean 'vacuum.train_pipe_leak'?")));
  EXPECT_THAT(outcome.errorLines(), Contains(HasSubstr("unknown pace '3'; allowed: frozen, 0.1,")));
  EXPECT_THAT(outcome.errorLines(), Contains(HasSubstr("for the instructor and the scenario")));
}

TEST_F(DeskScripts, StopWhereWhatIsClearedIsNotThere) {
  spill(folder_.exercise() / "none.txt", "wait 1 s\ninstructor: clear leak\n");
  const Outcome outcome = run(words("run", "none.txt"));
  EXPECT_NE(outcome.code, 0);
  EXPECT_THAT(outcome.err, HasSubstr("there is no fault 'leak'"));
}

TEST_F(DeskScripts, AreTraced) {
  std::vector<std::string> command = words("trace", "desk.txt");
  command.insert(command.end(), {"--signals", "cab1.pawl", "--every", "1"});
  const Outcome outcome = run(command);
  EXPECT_EQ(outcome.code, 0) << outcome.err;
  EXPECT_THAT(outcome.out, HasSubstr("cab1.pawl"));
}

}  // namespace
}  // namespace cabwright::console_test
