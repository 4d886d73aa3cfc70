// SPDX-License-Identifier: GPL-3.0-or-later
// Signatures against the vectors of RFC 8032, and the key file.
#include "session/signing_key.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <sys/wait.h>

#include <cstdlib>
#include <optional>

#include "sample_session.h"

namespace cabwright::session {
namespace {

using testing::HasSubstr;

SigningKey keyOf(std::string_view seed_hex) {
  Seed seed{};
  EXPECT_TRUE(readHex(seed_hex, seed));
  return SigningKey(seed);
}

std::string keyHex(const SigningKey& key) { return toHex(key.publicKey()); }

// RFC 8032, 7.1, tests 1 and 2.
constexpr std::string_view kSeed1 =
    "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60";
constexpr std::string_view kSeed2 =
    "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb";

TEST(SigningKey, GivesThePublishedSignatures) {
  const SigningKey first = keyOf(kSeed1);
  EXPECT_EQ(keyHex(first), "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a");
  EXPECT_EQ(toHex(first.sign({})),
            "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39"
            "701cf9b46bd25bf5f0595bbe24655141438e7a100b");
  const SigningKey second = keyOf(kSeed2);
  const std::array<std::uint8_t, 1> message{0x72};
  EXPECT_EQ(keyHex(second), "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c");
  EXPECT_EQ(toHex(second.sign(message)),
            "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f36"
            "13d0f11d8c387b2eaeb4302aeeb00d291612bb0c00");
}

TEST(SigningKey, TellsAnyFlippedBitOfMessageSignatureAndKey) {
  const SigningKey key = keyOf(kSeed2);
  std::vector<std::uint8_t> message{0xaf, 0x82, 0x10};
  Signature signature = key.sign(message);
  PublicKey who = key.publicKey();
  EXPECT_TRUE(isSignedBy(who, message, signature));
  const auto flipped = [&](auto& bytes, std::size_t bit) {
    bytes[bit / 8] ^= static_cast<std::uint8_t>(1U << (bit % 8));
    const bool good = isSignedBy(who, message, signature);
    bytes[bit / 8] ^= static_cast<std::uint8_t>(1U << (bit % 8));
    return good;
  };
  for (std::size_t bit = 0; bit < 24; ++bit) EXPECT_FALSE(flipped(message, bit)) << bit;
  for (std::size_t bit = 0; bit < 512; ++bit) EXPECT_FALSE(flipped(signature, bit)) << bit;
  for (std::size_t bit = 0; bit < 256; ++bit) EXPECT_FALSE(flipped(who, bit)) << bit;
}

TEST(StationKey, IsMadeOnceForItsOwnerAlone) {
  const Folder folder;
  const auto place = folder / "data/cabwright";
  const SigningKey made = SigningKey::loadOrMake(place);
  struct stat status {};
  ASSERT_EQ(::stat((place / "station.key").c_str(), &status), 0);
  EXPECT_EQ(status.st_mode & 0777U, 0600U);
  ASSERT_EQ(::stat(place.c_str(), &status), 0);
  EXPECT_EQ(status.st_mode & 0777U, 0700U);
  EXPECT_EQ(SigningKey::loadOrMake(place).publicKey(), made.publicKey());
  EXPECT_EQ(SigningKey::load(place / "station.key").publicKey(), made.publicKey());
  const Folder other;
  EXPECT_NE(SigningKey::loadOrMake(other / "x").publicKey(), made.publicKey());
}

TEST(StationKey, IsTheSameForProgramsThatMakeItAtOnce) {
  for (int round = 0; round < 20; ++round) {
    const Folder folder;
    std::vector<pid_t> children;
    for (int child = 0; child < 4; ++child) {
      const pid_t pid = ::fork();
      ASSERT_GE(pid, 0);
      if (pid == 0) {
        int code = 1;
        try {
          const auto name = "key" + std::to_string(child);
          const SigningKey key = SigningKey::loadOrMake(folder / "data");
          spill(folder / name, toHex(key.publicKey()));
          code = 0;
        } catch (const SessionError&) {
        }
        ::_exit(code);
      }
      children.push_back(pid);
    }
    for (const pid_t pid : children) {
      int status = -1;
      ASSERT_EQ(::waitpid(pid, &status, 0), pid);
      EXPECT_EQ(status, 0);
    }
    for (int child = 1; child < 4; ++child)
      EXPECT_EQ(slurp(folder / ("key" + std::to_string(child))), slurp(folder / "key0"));
    for (const auto& entry : std::filesystem::directory_iterator(folder / "data"))
      EXPECT_EQ(entry.path().filename(), "station.key");
  }
}

TEST(StationKey, IsRefusedWhenOthersCanReadItOrItIsNone) {
  const Folder folder;
  const auto file = folder / "station.key";
  static_cast<void>(SigningKey::loadOrMake(folder / ""));
  const std::string good = slurp(file);
  ::chmod(file.c_str(), 0640);
  EXPECT_THAT(errorOf([&] { return SigningKey::load(file); }), HasSubstr("give it mode 600"));
  ::chmod(file.c_str(), 0600);
  for (const std::string& bad :
       {std::string(), good.substr(0, good.size() - 2), good + "x", "other key 1\n" + good}) {
    spill(file, bad);
    EXPECT_THAT(errorOf([&] { return SigningKey::load(file); }), HasSubstr("not a key file"));
  }
  EXPECT_NE(errorOf([&] { return SigningKey::load(folder / "none"); }), "");
  EXPECT_NE(errorOf([&] { return SigningKey::load("/"); }), "");
  EXPECT_NE(errorOf([&] { return SigningKey::loadOrMake("/proc/none"); }), "");
  EXPECT_NE(errorOf([&] { return SigningKey::loadOrMake({}); }), "");
}

TEST(TrustedKeys, NameThoseTheyKnow) {
  const Folder folder;
  const SigningKey one = keyOf(kSeed1), two = keyOf(kSeed2);
  spill(folder / "keys",
        "# stations\n\n" + keyHex(one) + " depot, room 2\n  " + keyHex(two) + "\r\n");
  const TrustedKeys keys = TrustedKeys::load(folder / "keys");
  EXPECT_EQ(keys.findName(one.publicKey()), "depot, room 2");
  EXPECT_EQ(keys.findName(two.publicKey()), "");
  EXPECT_EQ(keys.findName(PublicKey{}), std::nullopt);
  spill(folder / "keys", "\n" + keyHex(one).substr(1) + " short\n");
  EXPECT_THAT(errorOf([&] { return TrustedKeys::load(folder / "keys"); }),
              HasSubstr("keys:2: no public key"));
  EXPECT_NE(errorOf([&] { return TrustedKeys::load(folder / "none"); }), "");
}

// A variable as it was, for whatever runs after this in the same program.
class KeptVariable {
 public:
  explicit KeptVariable(const char* name) : name_(name) {
    if (const char* value = std::getenv(name)) value_ = value;
  }
  ~KeptVariable() { value_ ? ::setenv(name_, value_->c_str(), 1) : ::unsetenv(name_); }
  KeptVariable(const KeptVariable&) = delete;
  KeptVariable& operator=(const KeptVariable&) = delete;

 private:
  const char* name_;
  std::optional<std::string> value_;
};

TEST(UserDataFolder, FollowsTheVariables) {
  const KeptVariable data("XDG_DATA_HOME"), home("HOME");
  ASSERT_EQ(::setenv("XDG_DATA_HOME", "/x/y", 1), 0);
  EXPECT_EQ(userDataFolder(), "/x/y/cabwright");
  ASSERT_EQ(::setenv("XDG_DATA_HOME", "relative", 1), 0);
  ASSERT_EQ(::setenv("HOME", "/h", 1), 0);
  EXPECT_EQ(userDataFolder(), "/h/.local/share/cabwright");
  ::unsetenv("HOME");
  EXPECT_EQ(userDataFolder(), "");
}

}  // namespace
}  // namespace cabwright::session
