// SPDX-License-Identifier: GPL-3.0-or-later
// Marking rules as files say them: keys with values and places, names and types checked, words not.
// What they mean is the marker's business; who makes them ready there can point back at each word.
//
// A rule is a [[rule]] of a scenario file or of a shared file on the rules shelf. Its keys:
//
//   id, title, reason            text, required
//   kind                         text, required: a kind of the marker
//   phase, advice                text
//   class                        "C" "S" "T" or the word; serious if left out
//   weight                       points, 0 or more; 1 if left out
//   reads                        "shown" or "true"
//   a, b                         an event, as text
//   a_name, b_name               words to call it by in sentences
//   steps, step_names            lists of texts of the same length (names may be left out)
//   reset, reset_name            of a sequence: the event that starts it anew
//   condition, during            conditions
//   condition_name, during_name  words to call them by in sentences
//   within                       [lo, hi] or [lo] (from lo on), or one number: [0, hi]; seconds
//   for                          seconds
//   times                        a whole number, 0 or more
//   measure, by                  a signal, and how far off what is told of it may be
//   tolerance                    in words
//   inside                       a condition
//   slack                        seconds
//   falls_to                     a class, lower than the rule's
//   follows                      ids of rules this one can follow from
//   repeated, repeated_class     so many breaches count as that class
//   first_only                   true: judged at the first b and never again
//   must_occur                   true: not exercised counts as broken
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "scenario/file_fault.h"

namespace cabwright::scenario {

/// Times are in seconds whatever they were written in; whole numbers are doubles; "within" is
/// always a list of one or two numbers.
using RuleValue =
    std::variant<std::string, double, bool, std::vector<std::string>, std::vector<double>>;

/// A place in the rule's own file.
struct TextPlace {
  std::size_t line = 0, column = 0;
};

struct RuleField {
  std::string key;
  RuleValue value;
  FilePlace at;                  ///< of the value
  std::vector<FilePlace> items;  ///< of the items of a list
  /// Places of the bytes of the text (of item k of a list), and of its end. Empty for numbers.
  std::vector<std::vector<TextPlace>> inside;
};

struct RuleText {
  std::string id;
  FilePlace at;  ///< of the id
  std::vector<RuleField> fields;
  /// Nothing was wrong when it was read. Of one that is not whole keys may be missing that the file
  /// has: what is missing in it says nothing.
  bool is_whole = true;

  [[nodiscard]] const RuleField* find(std::string_view key) const;
  /// The text of a field, "" if it is not there.
  [[nodiscard]] std::string text(std::string_view key) const;
  [[nodiscard]] std::optional<double> number(std::string_view key) const;
  [[nodiscard]] bool flag(std::string_view key) const;
  [[nodiscard]] std::vector<std::string> texts(std::string_view key) const;
  [[nodiscard]] std::vector<double> numbers(std::string_view key) const;
  /// The place of byte `offset` inside text `item` of a field; of the field, or of the rule, when
  /// there is nothing nearer.
  [[nodiscard]] FilePlace placeOf(std::string_view key, std::size_t item = 0,
                                  std::size_t offset = 0) const;
};

/// Says what is wrong with what rules mean; may be empty. The reader itself knows their form only.
using RuleCheck = std::function<FileFaults(const std::vector<RuleText>&)>;

/// What could be read of a shared file of rules, and all that is wrong in it.
struct RuleFile {
  std::vector<RuleText> rules;
  FileFaults faults;
};
[[nodiscard]] RuleFile readRuleFile(const SourceFile& file);

/// A shared file of rules: nothing but [[rule]]s and a title. All faults at once, those of the
/// check included.
[[nodiscard]] std::variant<std::vector<RuleText>, FileFaults> parseRules(
    const SourceFile& file, const RuleCheck& check = {});

}  // namespace cabwright::scenario
