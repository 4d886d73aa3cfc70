// SPDX-License-Identifier: GPL-3.0-or-later
// What a list of many sessions needs of a mark sheet: points, and what each line came to. Ten
// thousand of them are kept at once, so lines are letters, and their names are shared.
#pragma once

#include <compare>
#include <memory>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace cabwright::review {

struct Override;

struct LineName {
  std::string id, title;
  bool critical = false;
  // clang-tidy 14 takes the default for a 0.  NOLINTNEXTLINE(modernize-use-nullptr)
  auto operator<=>(const LineName&) const = default;
};
/// By id: the same for all sessions of one exercise.
using LineNames = std::vector<LineName>;

/// What a line came to, as a letter.
inline constexpr char kLineMet = 'm', kLineBroken = 'b', kLineFollows = 'f', kLineVoid = 'v',
                      kLineNotExercised = 'n', kLinePending = 'p';
/// Broken, and the run failed by it: a critical line, past its tolerance.
inline constexpr char kLineFails = 'F';

struct SheetGlance {
  double earned = 0, possible = 0, percent = 0;  ///< as the program marked it when it ended
  std::string letters;                           ///< one for each line, overrides included
  std::shared_ptr<const LineNames> names;        ///< as many; null: there are no lines
  /// By what the lines say, not by where their names stand.
  bool operator==(const SheetGlance& other) const;
};

/// Makes equal lists of names one: of some hundred sheets of an exercise all have the same.
class NameLists {
 public:
  void share(SheetGlance& sheet);

 private:
  struct Less {
    bool operator()(const std::shared_ptr<const LineNames>& a,
                    const std::shared_ptr<const LineNames>& b) const {
      return *a < *b;
    }
  };
  std::set<std::shared_ptr<const LineNames>, Less> lists_;
};

/// Of a sheet as a session holds it (marking::printSheetJson). What is no sheet gives an empty one.
[[nodiscard]] SheetGlance readGlance(std::string_view sheet_json);
/// Counts a line as an assessor has it. One that is not there changes nothing.
void overrideLine(SheetGlance& sheet, const Override& given);
/// By which the run failed.
[[nodiscard]] int countBrokenCriticals(const SheetGlance& sheet);

}  // namespace cabwright::review
