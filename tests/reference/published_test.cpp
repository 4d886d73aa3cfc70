// SPDX-License-Identifier: GPL-3.0-or-later
#include "published.h"

#include <algorithm>
#include <cctype>
#include <cstdio>
#include <map>
#include <set>
#include <string>
#include <utility>

namespace cabwright::reference {
namespace {

// Figures of the machine's physics; those of the integration method alone do not count among them.
bool isOfTheMachine(const PublishedFigure& f) {
  return f.file.find("step_method") == std::string_view::npos;
}

TEST(Published, AtLeastFortyFiveFiguresOfPrintedSourcesAreChecked) {
  std::set<std::pair<std::string_view, std::string_view>> different;
  std::map<std::string, int> by_file;
  for (const PublishedFigure& f : publishedFigures()) {
    if (!isOfTheMachine(f) || !different.insert({f.source, f.figure}).second) continue;
    ++by_file[std::string(f.file.substr(f.file.rfind('/') + 1))];
  }
  for (const auto& [file, count] : by_file)
    std::printf("PUBLISHED | %s: %d\n", file.c_str(), count);
  std::printf("PUBLISHED | %zu different figures\n", different.size());
  EXPECT_GE(different.size(), 45u);
}

TEST(Published, EveryFigureNamesItsSourceAndIsANumber) {
  for (const PublishedFigure& f : publishedFigures()) {
    EXPECT_GT(f.source.size(), 8u) << f.file << ":" << f.line;
    EXPECT_EQ(f.source.find("ommon practice"), std::string_view::npos) << f.file << ":" << f.line;
    EXPECT_EQ(f.source.find("omputed"), std::string_view::npos) << f.file << ":" << f.line;
    // No figure of the plant's own: digits, and what divides or signs them.
    const bool number = std::all_of(f.figure.begin(), f.figure.end(), [](char c) {
      return std::isdigit(static_cast<unsigned char>(c)) ||
             std::string_view(".e-+/ ").find(c) != std::string_view::npos;
    });
    EXPECT_TRUE(number) << f.figure << " in " << f.file << ":" << f.line;
  }
}

}  // namespace
}  // namespace cabwright::reference
