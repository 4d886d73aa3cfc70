// SPDX-License-Identifier: GPL-3.0-or-later
// Digests against the published vectors of FIPS 180-4, and the chain of rows against values worked
// out by another program from the formulas in FORMAT.md.
#include "session/digest.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "session/row_chain.h"
#include "session/schema.h"

namespace cabwright::session {
namespace {

std::string sha(std::string_view text) { return toHex(Sha256().add(text).finish()); }

TEST(Sha256, GivesThePublishedDigests) {
  EXPECT_EQ(sha(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  EXPECT_EQ(sha("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(sha("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
            "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  Sha256 million;
  for (int i = 0; i < 1000; ++i) million.add(std::string(1000, 'a'));
  EXPECT_EQ(toHex(million.finish()),
            "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST(Hex, IsReadBackAndNothingElseIs) {
  std::array<std::uint8_t, 3> bytes{};
  EXPECT_TRUE(readHex("00ff7a", bytes));
  EXPECT_EQ(toHex(bytes), "00ff7a");
  for (const std::string bad : {"", "00ff7", "00ff7a0", "00FF7A", "00fg7a", "0x0f7a"})
    EXPECT_FALSE(readHex(bad, bytes)) << bad;
}

TEST(RowChain, OfFormatTwoIsSha256OverFieldsAsWrittenDown) {
  RowChain chain(2, "11111111-2222-4333-8444-555555555555");
  addAbout(chain, "seed", "7");
  EXPECT_EQ(chain.text(), "8a1aeedde3940423eb80be6b31fea7395e481e4d8466b210db40432f4a8d0bb3");
  addAction(chain, 1, {10, 1, false, {}}, "set cab1.pawl out");
  EXPECT_EQ(toHex(chain.digest()),
            "b136d7fbfdd82fb5f550eae901264ef2463ab6256683c152c9efcf9e866c9980");
  EXPECT_EQ(chain.stored(), -5390851643575683407);
  const std::array<std::uint8_t, 4> data{1, 2, 3, 4};
  addFrame(chain, 2, 10, true, data);
  EXPECT_EQ(toHex(chain.digest()),
            "6ecd0f3d4f5d04d766d6756c4372a45aa3daa72f94a271a4eb2c95bb7fb87a1b");
}

TEST(RowChain, KeepsKindsNeighboursAndPlacesApart) {
  const auto after = [](auto add) {
    RowChain chain(2, "11111111-2222-4333-8444-555555555555");
    add(chain);
    return chain.text();
  };
  const std::array<std::uint8_t, 2> data{1, 2};
  const auto key = after([&](RowChain& c) { addFrame(c, 1, 0, true, data); });
  EXPECT_NE(key, after([&](RowChain& c) { addFrame(c, 1, 0, false, data); }));
  EXPECT_NE(key, after([&](RowChain& c) { addFrame(c, 2, 0, true, data); }));
  EXPECT_NE(key, after([&](RowChain& c) { addFrame(c, 1, 1, true, data); }));
  EXPECT_NE(after([](RowChain& c) { addAbout(c, "ab", "c"); }),
            after([](RowChain& c) { addAbout(c, "a", "bc"); }));
  EXPECT_NE(after([](RowChain& c) {
              addSource(c, {"a", "bc", ""});
            }),
            after([](RowChain& c) {
              addSource(c, {"a", "b", "c"});
            }));
}

TEST(PersonMark, IsWhatIsWrittenDownAndDependsOnAllOfIt) {
  Salt salt{};
  for (std::size_t i = 0; i < salt.size(); ++i) salt[i] = static_cast<std::uint8_t>(i);
  const Digest mark = calcPersonMark(salt, {"trainee", "P. Example"});
  EXPECT_EQ(toHex(mark), "0620c91effd9bae21e3bba324706b9b8ad7cf5e8782c9771ac0b66a64026d42f");
  EXPECT_NE(mark, calcPersonMark(salt, {"trainee", "P. Exampl"}));
  EXPECT_NE(mark, calcPersonMark(salt, {"traineeP", ". Example"}));
  salt[3] ^= 1;
  EXPECT_NE(mark, calcPersonMark(salt, {"trainee", "P. Example"}));
}

TEST(Sha256, OfAFileIsThatOfItsBytes) {
  const auto file = std::filesystem::path(testing::TempDir()) / "cabwright-digest";
  const std::string text(200'001, 'a');  // more than one piece
  std::ofstream(file, std::ios::binary) << text;
  const auto digest = digestOfFile(file);
  ASSERT_TRUE(digest);
  EXPECT_EQ(toHex(*digest), toHex(Sha256().add(std::string_view(text)).finish()));
  std::filesystem::remove(file);
  EXPECT_FALSE(digestOfFile(file));
  EXPECT_FALSE(digestOfFile(testing::TempDir()));  // a folder
}

}  // namespace
}  // namespace cabwright::session
