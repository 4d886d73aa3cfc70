// SPDX-License-Identifier: GPL-3.0-or-later
// A key of one's own: made once, for its owner alone, and found again by the name.
#include "session/personal_key.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <fstream>

#include "sample_session.h"
#include "session/session_error.h"

namespace cabwright::session {
namespace {

mode_t modeOf(const std::filesystem::path& file) {
  struct stat status {};
  EXPECT_EQ(::stat(file.c_str(), &status), 0) << file;
  return status.st_mode & 0777U;
}

TEST(PersonalKey, IsMadeOnceForItsOwnerAlone) {
  const Folder folder;
  const auto data = folder / "share" / "cabwright";
  const SigningKey made = loadOrMakePersonalKey(data, "R. Who");
  EXPECT_EQ(loadOrMakePersonalKey(data, " R. Who ").publicKey(), made.publicKey());
  EXPECT_NE(loadOrMakePersonalKey(data, "S. Second").publicKey(), made.publicKey());
  const auto file = personalKeyFile(data, "R. Who");
  EXPECT_EQ(modeOf(file), 0600U);
  EXPECT_EQ(modeOf(file.parent_path()), 0700U);
  EXPECT_EQ(modeOf(data), 0700U);
}

TEST(PersonalKey, IsListedUnderTheNameWhateverTheNameIs) {
  const Folder folder;
  const auto data = folder / "data";
  const std::vector<std::string> names{"%41", "..", "A/B", "\xC3\x84nne Muster", "R. Who"};
  for (const std::string& name : names) {
    const auto file = personalKeyFile(data, name);
    EXPECT_EQ(file.parent_path(), data / "people") << name;
    (void)loadOrMakePersonalKey(data, name);
  }
  std::vector<std::string> listed;
  for (const PersonalKey& key : findPersonalKeys(data).keys) {
    listed.push_back(key.name);
    EXPECT_EQ(loadOrMakePersonalKey(data, key.name).publicKey(), key.key);
  }
  EXPECT_THAT(listed, testing::UnorderedElementsAreArray(names));
}

TEST(PersonalKey, TellsAFileThatIsNone) {
  const Folder folder;
  const auto data = folder / "data";
  EXPECT_TRUE(findPersonalKeys(data).keys.empty());
  (void)loadOrMakePersonalKey(data, "R. Who");
  std::ofstream(data / "people" / "Else.key") << "nothing";
  std::filesystem::permissions(data / "people" / "Else.key", std::filesystem::perms::owner_read);
  const PersonalKeys found = findPersonalKeys(data);
  EXPECT_EQ(found.keys.size(), 1U);
  ASSERT_EQ(found.faults.size(), 1U);
  EXPECT_THAT(found.faults[0], testing::HasSubstr("Else.key"));
}

TEST(PersonalKey, NeedsANameAndAPlace) {
  const Folder folder;
  EXPECT_THROW((void)personalKeyFile(folder / "data", "  "), SessionError);
  EXPECT_THROW((void)personalKeyFile(folder / "data", std::string(81, 'x')), SessionError);
  EXPECT_THROW((void)loadOrMakePersonalKey({}, "R. Who"), SessionError);
}

TEST(PersonalKey, HasAFingerprintThatCanBeRead) {
  PublicKey key{};
  for (std::size_t k = 0; k < key.size(); ++k) key[k] = static_cast<std::uint8_t>(k);
  EXPECT_EQ(fingerprintOf(key), "0001 0203 0405 0607");
}

}  // namespace
}  // namespace cabwright::session
