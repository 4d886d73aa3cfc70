// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/personal_key.h"

#include <fmt/format.h>
#include <sys/stat.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <system_error>

#include "session/digest.h"
#include "session/session_error.h"

namespace cabwright::session {
namespace fs = std::filesystem;
namespace {

constexpr std::string_view kFolder = "people", kEnding = ".key";

bool canStand(char c, bool first) {
  const auto byte = static_cast<unsigned char>(c);
  return byte >= 0x20 && byte != 0x7f && c != '/' && c != '%' && !(first && c == '.');
}

std::string fileNameOf(std::string_view name) {
  std::string file;
  for (const char c : name)
    file += canStand(c, file.empty()) ? std::string(1, c)
                                      : fmt::format("%{:02x}", static_cast<unsigned char>(c));
  return file;
}

std::string nameOfFile(std::string_view file) {
  std::string name;
  for (std::size_t k = 0; k < file.size(); ++k) {
    std::array<std::uint8_t, 1> byte{};
    if (file[k] == '%' && k + 2 < file.size() && readHex(file.substr(k + 1, 2), byte)) {
      name += static_cast<char>(byte[0]);
      k += 2;
    } else {
      name += file[k];
    }
  }
  return name;
}

// "  R. Who " and "R. Who" are one person.
std::string_view trimmed(std::string_view name) {
  constexpr std::string_view kBlank = " \t\r\n";
  const auto from = name.find_first_not_of(kBlank);
  if (from == std::string_view::npos) return {};
  return name.substr(from, name.find_last_not_of(kBlank) - from + 1);
}

}  // namespace

fs::path personalKeyFile(const fs::path& data_folder, std::string_view name) {
  name = trimmed(name);
  if (name.empty()) throw SessionError("a personal key is somebody's: a name is needed");
  if (name.size() > kLongestKeyName)
    throw SessionError(
        fmt::format("a name of more than {} bytes cannot have a key", kLongestKeyName));
  if (data_folder.empty()) throw SessionError("personal key: no place for it (HOME is not set)");
  return data_folder / kFolder / (fileNameOf(name) + std::string(kEnding));
}

SigningKey loadOrMakePersonalKey(const fs::path& data_folder, std::string_view name) {
  const fs::path file =
      personalKeyFile(data_folder.empty() ? fs::path() : fs::absolute(data_folder), name);
  const fs::path folder = file.parent_path().parent_path();
  std::error_code failed;
  fs::create_directories(folder.parent_path(), failed);
  if (!failed && ::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST)
    failed = {errno, std::generic_category()};
  if (failed) throw SessionError(file.string() + ": " + failed.message());
  return SigningKey::loadOrMakeFile(file);
}

PersonalKeys findPersonalKeys(const fs::path& data_folder) {
  PersonalKeys found;
  std::error_code failed;
  std::vector<fs::path> files;
  for (fs::directory_iterator at(data_folder / kFolder, failed), end; !failed && at != end;
       at.increment(failed)) {
    const std::string name = at->path().filename().string();
    if (name.ends_with(kEnding) && !name.starts_with('.')) files.push_back(at->path());
  }
  std::sort(files.begin(), files.end());
  for (const fs::path& file : files) {
    try {
      found.keys.push_back({nameOfFile(file.stem().string()), SigningKey::load(file).publicKey()});
    } catch (const SessionError& error) {
      found.faults.emplace_back(error.what());
    }
  }
  return found;
}

std::string fingerprintOf(const PublicKey& key) {
  const std::string hex = toHex(key);
  const std::string_view all = hex;
  return fmt::format("{} {} {} {}", all.substr(0, 4), all.substr(4, 4), all.substr(8, 4),
                     all.substr(12, 4));
}

}  // namespace cabwright::session
