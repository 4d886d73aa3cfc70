// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/frame_code.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <bit>
#include <cmath>
#include <limits>

namespace cabwright::session {
namespace {

std::vector<std::uint32_t> bitsOf(const std::vector<float>& values) {
  std::vector<std::uint32_t> bits;
  for (const float value : values) bits.push_back(std::bit_cast<std::uint32_t>(value));
  return bits;
}

TEST(FrameCode, KeepsEveryBitOfAKeyFrameIncludingOddValues) {
  const std::vector<float> values{0.0F,
                                  -0.0F,
                                  1.5F,
                                  std::numeric_limits<float>::infinity(),
                                  std::numeric_limits<float>::denorm_min(),
                                  std::nanf("17")};
  std::vector<float> read(values.size());
  ASSERT_FALSE(decodeKeyFrame(encodeKeyFrame(values), read));
  EXPECT_EQ(bitsOf(read), bitsOf(values));
}

TEST(FrameCode, AnUnchangedFrameTakesNoRoom) {
  const std::vector<float> values{1.0F, 2.0F, std::nanf("")};
  EXPECT_TRUE(encodeDeltaFrame(values, values).empty());
}

TEST(FrameCode, ASmallChangeOfOneValueTakesAFewBytes) {
  std::vector<float> before(200, 91.25F);
  std::vector<float> after = before;
  after[150] = std::nextafter(after[150], 100.0F);
  EXPECT_LE(encodeDeltaFrame(before, after).size(), 3U);
}

RC_GTEST_PROP(FrameCode, GivesBackAnySequenceOfBits, (std::vector<std::uint32_t> first)) {
  const auto second = *rc::gen::container<std::vector<std::uint32_t>>(
      first.size(), rc::gen::oneOf(rc::gen::just(7U), rc::gen::arbitrary<std::uint32_t>()));
  std::vector<float> before, after;
  for (const auto bits : first) before.push_back(std::bit_cast<float>(bits));
  for (const auto bits : second) after.push_back(std::bit_cast<float>(bits));
  std::vector<float> read(before.size());
  RC_ASSERT(!decodeKeyFrame(encodeKeyFrame(before), read));
  RC_ASSERT(bitsOf(read) == first);
  RC_ASSERT(!decodeDeltaFrame(encodeDeltaFrame(before, after), read));
  RC_ASSERT(bitsOf(read) == second);
}

RC_GTEST_PROP(FrameCode, RefusesOrReadsAnyBytesWithoutLeavingTheFrame,
              (std::vector<std::uint8_t> bytes)) {
  std::vector<float> values(5, 1.0F);
  const auto fault = decodeDeltaFrame(bytes, values);
  if (fault) RC_ASSERT(!fault->empty());
  // One value has one spelling: what was read is written the same way again.
  if (!fault) RC_ASSERT(encodeDeltaFrame(std::vector<float>(5, 1.0F), values) == bytes);
}

TEST(FrameCode, RefusesAKeyFrameOfAnotherSize) {
  std::vector<float> values(3, 8.0F);
  EXPECT_TRUE(decodeKeyFrame(Bytes(11), values));
  EXPECT_TRUE(decodeKeyFrame(Bytes(16), values));
  EXPECT_EQ(values, std::vector<float>(3, 8.0F));
}

TEST(FrameCode, RefusesADeltaBeyondTheLastSignalOrCutShort) {
  std::vector<float> values(2);
  EXPECT_TRUE(decodeDeltaFrame(Bytes{2, 1}, values));
  EXPECT_TRUE(decodeDeltaFrame(Bytes{0}, values));
  EXPECT_TRUE(decodeDeltaFrame(Bytes{0, 0x80}, values));
  EXPECT_TRUE(decodeDeltaFrame(Bytes{0, 0}, values));           // a change that is none
  EXPECT_TRUE(decodeDeltaFrame(Bytes{0, 0x81, 0x00}, values));  // longer than needed
  EXPECT_TRUE(decodeDeltaFrame(Bytes{0, 0xff, 0xff, 0xff, 0xff, 0x7f}, values));  // over 32 bits
}

}  // namespace
}  // namespace cabwright::session
