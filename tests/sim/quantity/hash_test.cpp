// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/hash.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace cabwright::quantity {
namespace {

std::uint64_t hashOf(std::string_view text) {
  Fnv1a64 hash;
  hash.addText(text);
  return hash.value();
}

std::uint64_t hashOf(double number) {
  Fnv1a64 hash;
  hash.addDouble(number);
  return hash.value();
}

// Vectors of the FNV authors' own test suite (64-bit FNV-1a, strings without the closing zero).
TEST(Fnv1a64, AgreesWithThePublishedVectors) {
  EXPECT_EQ(hashOf(""), 0xcbf29ce484222325u);
  EXPECT_EQ(hashOf("a"), 0xaf63dc4c8601ec8cu);
  EXPECT_EQ(hashOf("b"), 0xaf63df4c8601f1a5u);
  EXPECT_EQ(hashOf("fo"), 0x08985907b541d342u);
  EXPECT_EQ(hashOf("foo"), 0xdcb27518fed9d577u);
  EXPECT_EQ(hashOf("foob"), 0xdd120e790c2512afu);
  EXPECT_EQ(hashOf("fooba"), 0xcac165afa2fef40au);
  EXPECT_EQ(hashOf("foobar"), 0x85944171f73967e8u);
}

TEST(Fnv1a64, TakesNumbersAsTheirBytesLowestFirst) {
  Fnv1a64 number;
  number.addInt(std::int64_t{0x0102030405060708});
  EXPECT_EQ(number.value(), hashOf(std::string_view("\x08\x07\x06\x05\x04\x03\x02\x01", 8)));
  Fnv1a64 real;
  real.addDouble(1.0);  // bits 3ff0 0000 0000 0000
  EXPECT_EQ(real.value(), hashOf(std::string_view("\0\0\0\0\0\0\xf0\x3f", 8)));
}

TEST(Fnv1a64, SeesTheSameWholeNumberInEveryType) {
  Fnv1a64 small;
  small.addInt(static_cast<std::int8_t>(-5));
  Fnv1a64 large;
  large.addInt(std::int64_t{-5});
  EXPECT_EQ(small.value(), large.value());
}

TEST(Fnv1a64, CountsBothZerosAsOneAndEveryNanAsOne) {
  EXPECT_EQ(hashOf(-0.0), hashOf(0.0));
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_EQ(hashOf(-nan), hashOf(nan));
}

TEST(Fnv1a64, SeesADifferenceInTheLastPlaceAndInTheOrder) {
  EXPECT_NE(hashOf(std::nextafter(1.0, 2.0)), hashOf(1.0));
  Fnv1a64 one;
  one.addDouble(1.0);
  one.addDouble(2.0);
  Fnv1a64 other;
  other.addDouble(2.0);
  other.addDouble(1.0);
  EXPECT_NE(one.value(), other.value());
}

}  // namespace
}  // namespace cabwright::quantity
