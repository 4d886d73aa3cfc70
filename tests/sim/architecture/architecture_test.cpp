// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "rules.h"

namespace cabwright::architecture {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

const Sources& tree() {
  static const Sources sources = loadSources();
  return sources;
}

// The rules over the real tree.

TEST(Tree, IsFoundAtAll) {
  const auto has = [](std::string_view path) {
    return std::ranges::any_of(tree(), [&](const SourceFile& f) { return f.path == path; });
  };
  EXPECT_TRUE(has("CMakeLists.txt"));
  EXPECT_TRUE(has("sim/CMakeLists.txt"));
  EXPECT_TRUE(has("sim/plant/plant.h"));
  EXPECT_TRUE(has("tests/run"));
}

TEST(Tree, LetsArrowsPointDownOnly) {
  EXPECT_THAT(findArrowsUp(tree()), IsEmpty());
  EXPECT_THAT(findLinksUp(tree()), IsEmpty());
}

TEST(Tree, KeepsTheScreenOutOfTheSimulation) { EXPECT_THAT(findQtInSim(tree()), IsEmpty()); }

TEST(Tree, CalculatesTheSameEverywhere) {
  EXPECT_THAT(findUnsteadyArithmetic(tree()), IsEmpty());
  EXPECT_THAT(findWallClocks(tree()), IsEmpty());
}

TEST(Tree, SaysItsLicenceInEachFile) { EXPECT_THAT(findMissingLicences(tree()), IsEmpty()); }

TEST(Tree, KeepsHeadersGuardedAndFilesSmall) {
  EXPECT_THAT(findUnguardedHeaders(tree()), IsEmpty());
  EXPECT_THAT(findLongFiles(tree()), IsEmpty());
}

TEST(Tree, LeavesNothingForLater) { EXPECT_THAT(findLeftOpen(tree()), IsEmpty()); }

// The rules over files that offend, so that an empty list means something.

TEST(Rules, SeeAnArrowThatPointsUp) {
  EXPECT_THAT(findArrowsUp({{"sim/plant/a.cpp", "#include <cmath>\n#include \"unit/frame.h\"\n"}}),
              ElementsAre("sim/plant/a.cpp:2: plant must not know unit"));
  EXPECT_THAT(findArrowsUp({{"sim/marking/a.h", "#  include <scenario/scenario.h>\n"}}), SizeIs(1));
  EXPECT_THAT(findArrowsUp({{"sim/session/a.h", "#include \"ui/cab/dial.h\"\n"}}), SizeIs(1));
  EXPECT_THAT(findArrowsUp({{"sim/unit/a.h", "#include \"../session/store.h\"\n"}}), SizeIs(1));
  EXPECT_THAT(findArrowsUp({{"sim/unit/a.h", "#include \"plant/plant.h\"\n#include <sys/x.h>\n"}}),
              IsEmpty());
}

TEST(Rules, SeeALinkThatPointsUp) {
  EXPECT_THAT(findLinksUp({{"sim/CMakeLists.txt",
                            "cabwright_room(plant USES quantity\n   unit LINKS Boost::headers)\n"
                            "cabwright_room(unit USES plant)\n"}}),
              ElementsAre("sim/CMakeLists.txt: plant links unit"));
}

TEST(Rules, SeeQt) {
  EXPECT_THAT(findQtInSim({{"sim/unit/a.h", "#include <QString>\n"},
                           {"sim/unit/b.h", "#include <QtCore/QString>\n"},
                           {"sim/CMakeLists.txt", "target_link_libraries(x Qt6::Core)\n"},
                           {"ui/c.h", "#include <QWidget>\n"}}),
              SizeIs(3));
}

TEST(Rules, SeeTheLibrarysOwnFunctions) {
  const auto offences = [](std::string line) {
    return findUnsteadyArithmetic({{"sim/plant/a.cpp", line + "\n"}});
  };
  EXPECT_THAT(offences("y = std::exp(x);"), ElementsAre(HasSubstr("exp()")));
  EXPECT_THAT(offences("y = 2 * pow (x, 2);"), SizeIs(1));
  EXPECT_THAT(offences("return sinf(x);"), SizeIs(1));
  EXPECT_THAT(offences("std::unordered_map<int, int> m;"), SizeIs(1));
  EXPECT_THAT(offences("std::normal_distribution<> d;"), SizeIs(1));
  EXPECT_THAT(offences("y = q::detExp(x) + std::sqrt(x);"), IsEmpty());
  EXPECT_THAT(offences("book.log(x); page->log(x); calcLog(x);"), IsEmpty());
  EXPECT_THAT(offences("// exp(x) is slow"), IsEmpty());
  EXPECT_THAT(offences("say(\"exp(x)\");"), IsEmpty());
  EXPECT_THAT(offences("std::random_device device;"), SizeIs(1));
  EXPECT_THAT(findUnsteadyArithmetic({{"sim/session/a.cpp", "std::random_device device;\n"}}),
              IsEmpty());
  EXPECT_THAT(findUnsteadyArithmetic({{"tests/a.cpp", "y = std::exp(x);\n"}}), IsEmpty());
}

TEST(Rules, SeeTheClockOnTheWall) {
  EXPECT_THAT(findWallClocks({{"sim/unit/a.cpp", "std::chrono::steady_clock::now();\n"},
                              {"sim/plant/b.cpp", "std::time(nullptr);\n"},
                              {"sim/session/c.cpp", "std::chrono::system_clock::now();\n"}}),
              SizeIs(2));
}

TEST(Rules, SeeAMissingLicence) {
  const std::string line = "SPDX-License-Identifier: GPL-3.0-or-later\n";
  EXPECT_THAT(findMissingLicences({{"sim/a.h", "// " + line},
                                   {"sim/b.h", "#pragma once\n"},
                                   {"sim/late.h", "\n\n\n\n// " + line},
                                   {"tests/run", "#!/bin/sh\n# " + line},
                                   {"tests/walk", "#!/bin/sh\n"},
                                   {"README.md", "# Name\n"}}),
              SizeIs(3));
}

TEST(Rules, SeeBareHeadersLongFilesAndWhatIsLeftOpen) {
  EXPECT_THAT(findUnguardedHeaders({{"sim/a.h", "int a;\n"}}), SizeIs(1));
  EXPECT_THAT(findLongFiles({{"sim/a.cpp", std::string(601, '\n')}}), SizeIs(1));
  EXPECT_THAT(findLongFiles({{"sim/a.cpp", std::string(600, '\n')}}), IsEmpty());
  EXPECT_THAT(findLeftOpen({{"sim/a.cpp", std::string("// TO") + "DO: all of it\n"}}), SizeIs(1));
}

TEST(Blanking, TakesOutCommentsAndStringsButKeepsTheLines) {
  EXPECT_EQ(blankCommentsAndStrings("a /* b\nc */ d // e\nf"), "a     \n     d     \nf");
  EXPECT_EQ(blankCommentsAndStrings("x(\"a\\\"b\") + 1'000 + '\"' + y"),
            "x(      ) + 1'000 +     + y");
}

}  // namespace
}  // namespace cabwright::architecture
