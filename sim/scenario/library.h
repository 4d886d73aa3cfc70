// SPDX-License-Identifier: GPL-3.0-or-later
// Where vehicles, routes, shared rules and guides are found by name: in a folder, or in a session
// file that carries its own.
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "scenario/file_fault.h"

namespace cabwright::scenario {

enum class Shelf : std::uint8_t { kVehicles, kRoutes, kRules, kGuides };
/// "vehicle", "route", "rules", "guide": also the role of such a text in a session file.
[[nodiscard]] std::string_view wordOf(Shelf shelf);

/// Names are letters, digits, '-' and '_': a name can never lead out of the folder.
[[nodiscard]] bool isShelfName(std::string_view name);

class Library {
 public:
  virtual ~Library() = default;
  /// The text of that name, or what hinders (without a place).
  [[nodiscard]] virtual std::variant<SourceFile, std::string> find(Shelf shelf,
                                                                   std::string_view name) const = 0;
  /// All names there are, sorted.
  [[nodiscard]] virtual std::vector<std::string> names(Shelf shelf) const = 0;

 protected:
  Library() = default;
  Library(const Library&) = default;
  Library& operator=(const Library&) = default;
};

/// vehicles/NAME.toml, routes/NAME.toml, rules/NAME.toml, guides/NAME.toml beneath one folder
/// (scenarios/); what is not there is looked for beneath `shipped`, unless that is empty.
class FolderLibrary : public Library {
 public:
  explicit FolderLibrary(std::filesystem::path scenarios, std::filesystem::path shipped = {});
  [[nodiscard]] std::variant<SourceFile, std::string> find(Shelf shelf,
                                                           std::string_view name) const override;
  [[nodiscard]] std::vector<std::string> names(Shelf shelf) const override;

 private:
  std::filesystem::path folder_, shipped_;
};

/// Texts given by hand.
class TextLibrary : public Library {
 public:
  void add(Shelf shelf, std::string name, std::string text);
  [[nodiscard]] std::variant<SourceFile, std::string> find(Shelf shelf,
                                                           std::string_view name) const override;
  [[nodiscard]] std::vector<std::string> names(Shelf shelf) const override;

 private:
  std::map<std::pair<Shelf, std::string>, std::string, std::less<>> texts_;
};

/// The folder with vehicles/, routes/ and rules/ that belongs to a scenario file: the nearest one
/// above it that has a vehicles/ folder; its own parent's parent otherwise.
[[nodiscard]] std::filesystem::path findLibraryFolder(const std::filesystem::path& scenario_file);

}  // namespace cabwright::scenario
