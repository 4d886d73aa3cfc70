// SPDX-License-Identifier: GPL-3.0-or-later
// Checks against figures that somebody printed. Each enters itself in a list before any test runs,
// so that they can be counted; rules of thumb and figures computed from a law do not belong here.
#pragma once

#include <gtest/gtest.h>

#include <string_view>
#include <vector>

namespace cabwright::reference {

struct PublishedFigure {
  std::string_view source;  ///< author or document and where in it
  std::string_view figure;  ///< as written in the check
  std::string_view file;
  int line = 0;
};

/// All of this program, in no order.
inline std::vector<PublishedFigure>& publishedFigures() {
  static std::vector<PublishedFigure> all;
  return all;
}

/// One check: its static member is made with the program's others, before main.
template <class Check>
struct Entered {
  static const bool done;
};
template <class Check>
const bool Entered<Check>::done = [] {
  publishedFigures().push_back(Check::what());
  return true;
}();

}  // namespace cabwright::reference

/// EXPECT_NEAR of what the plant's code gives against a printed figure.
#define EXPECT_PUBLISHED(from, got, printed, tolerance)        \
  do {                                                         \
    struct Check {                                             \
      static ::cabwright::reference::PublishedFigure what() {  \
        return {from, #printed, __FILE__, __LINE__};           \
      }                                                        \
    };                                                         \
    EXPECT_TRUE(::cabwright::reference::Entered<Check>::done); \
    EXPECT_NEAR(got, printed, tolerance) << from;              \
  } while (false)
