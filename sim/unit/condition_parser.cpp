// SPDX-License-Identifier: GPL-3.0-or-later
// From the text of a condition to its steps: recursive descent, numbers and truths kept apart.
#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <string>

#include "unit/condition_program.h"
#include "unit/nearest_name.h"

namespace cabwright::unit {
namespace {

constexpr std::size_t kDeepest = 40;
constexpr std::size_t kLongestText = 10'000;

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_'; }
bool isWordPart(char c) { return isLetter(c) || isDigit(c) || c == '.'; }

// Longest first, so that "m/s2" is not read as metres.
const std::vector<std::string_view>& unitsInUse() {
  static const std::vector<std::string_view> units = [] {
    std::vector<std::string_view> found;
    for (const SignalInfo& info : signalTable()) {
      if (info.unit.empty()) continue;
      if (std::find(found.begin(), found.end(), info.unit) == found.end()) {
        found.push_back(info.unit);
      }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](std::string_view a, std::string_view b) { return a.size() > b.size(); });
    return found;
  }();
  return units;
}

std::string describeUnit(std::string_view unit) {
  return unit.empty() ? "a number without unit" : fmt::format("'{}'", unit);
}

// What has been read: a truth, or a number with its unit.
struct Term {
  std::size_t at = 0;
  bool truth = false;
  bool adapts = false;  ///< made of bare numbers only: takes the unit of the other side
  std::string_view unit;
  std::optional<Signal> lone_signal;
};

class Parser {
 public:
  explicit Parser(std::string_view text) : text_(text) {}

  ParsedCondition parse() {
    if (text_.size() > kLongestText) fail(0, "a condition of more than 10000 characters");
    skipBlanks();
    if (atEnd()) fail(at_, "an empty condition");
    requireTruth(parseOr());
    if (!atEnd()) {
      fail(at_, "unexpected " + describeHere() + "; after a condition only and / or can follow");
    }
    return std::move(result_);
  }

 private:
  [[noreturn]] void fail(std::size_t at, std::string what) const {
    throw ConditionFault{at, std::move(what)};
  }
  [[nodiscard]] bool atEnd() const { return at_ >= text_.size(); }
  [[nodiscard]] char here() const { return atEnd() ? '\0' : text_[at_]; }
  void skipBlanks() {
    while (!atEnd() && (here() == ' ' || here() == '\t' || here() == '\n' || here() == '\r')) ++at_;
  }
  [[nodiscard]] std::string_view peekWord() const {
    std::size_t end = at_;
    if (end < text_.size() && isLetter(text_[end])) {
      while (end < text_.size() && isWordPart(text_[end])) ++end;
    }
    return text_.substr(at_, end - at_);
  }
  bool takeWord(std::string_view word) {
    if (peekWord() != word) return false;
    at_ += word.size();
    skipBlanks();
    return true;
  }
  bool takeSign(std::string_view sign) {
    if (text_.substr(at_, sign.size()) != sign) return false;
    at_ += sign.size();
    skipBlanks();
    return true;
  }
  [[nodiscard]] std::string describeHere() const {
    if (atEnd()) return "end of the condition";
    const std::string_view word = peekWord();
    if (!word.empty()) return fmt::format("'{}'", word.substr(0, 40));
    const auto byte = static_cast<unsigned char>(here());
    if (byte < 0x20 || byte >= 0x7f) return "character that is not allowed here";
    return fmt::format("'{}'", here());
  }
  void put(Step step) { result_.steps.push_back({step, {}, 0, {}, Step::kLess}); }

  // A truth as it is; a bare signal made one.
  void requireTruth(const Term& term) {
    if (term.truth) return;
    if (!term.lone_signal) {
      fail(term.at, "a number where a condition is needed; compare it: < <= > >= == != near");
    }
    put(Step::kTruth);
  }
  void requireNumber(const Term& term) const {
    if (term.truth) fail(term.at, "a condition where a number is needed");
  }
  Term makeTruth(std::size_t at) const { return {at, true, false, {}, std::nullopt}; }

  Term parseOr() {
    const Deeper level(*this);
    Term left = parseAnd();
    while (takeWord("or")) {
      requireTruth(left);
      requireTruth(parseAnd());
      put(Step::kOr);
      left = makeTruth(left.at);
    }
    return left;
  }

  Term parseAnd() {
    Term left = parseNot();
    while (takeWord("and")) {
      requireTruth(left);
      requireTruth(parseNot());
      put(Step::kAnd);
      left = makeTruth(left.at);
    }
    return left;
  }

  Term parseNot() {
    const std::size_t at = at_;
    if (!takeWord("not")) return parseComparison();
    const Deeper level(*this);
    requireTruth(parseNot());
    put(Step::kNot);
    return makeTruth(at);
  }

  std::optional<Step> takeComparison() {
    if (takeSign("<=")) return Step::kLessEqual;
    if (takeSign(">=")) return Step::kGreaterEqual;
    if (takeSign("==")) return Step::kEqual;
    if (takeSign("!=")) return Step::kNotEqual;
    if (takeSign("<")) return Step::kLess;
    if (takeSign(">")) return Step::kGreater;
    if (here() == '=') fail(at_, "a single '='; equality is written ==");
    return std::nullopt;
  }

  Term parseComparison() {
    const Term left = parseSum();
    if (takeWord("near")) return parseNear(left);
    const std::optional<Step> step = takeComparison();
    if (!step) return left;
    requireNumber(left);
    const Term right = parseRightSide(left);
    requireNumber(right);
    const std::string_view unit = joinUnits(left, right, "compared with");
    result_.steps.push_back({*step, {}, 0, unit, Step::kLess});
    if (takeComparison()) fail(at_, "a second comparison in a row; join two with 'and'");
    return makeTruth(left.at);
  }

  Term parseNear(const Term& value) {
    requireNumber(value);
    const Term centre = parseSum();
    requireNumber(centre);
    if (!takeWord("by")) fail(at_, "found " + describeHere() + " where 'by' and a reach belong");
    const Term reach = parseSum();
    requireNumber(reach);
    std::string_view unit = joinUnits(value, centre, "compared with");
    const Term both{value.at, false, value.adapts && centre.adapts, unit, std::nullopt};
    unit = joinUnits(both, reach, "compared with");
    result_.steps.push_back({Step::kNear, {}, 0, unit, Step::kLess});
    return makeTruth(value.at);
  }

  // A word of the signal on the left ("forward", "defect"), or any number.
  Term parseRightSide(const Term& left) {
    const std::string_view word = peekWord();
    const bool plain = !word.empty() && word.find('.') == word.npos && word != "abs" &&
                       word != "not" && !findSignal(word);
    if (!plain || !left.lone_signal) return parseSum();
    std::vector<std::string_view> allowed;
    const auto value = findSignalWord(*left.lone_signal, word, allowed);
    if (!value && allowed.empty()) return parseSum();
    if (!value) {
      const std::string of = fmt::format("word for {}", signalInfo(*left.lone_signal).name);
      fail(at_, unknownWord(of, word, allowed));
    }
    const std::size_t at = at_;
    at_ += word.size();
    skipBlanks();
    result_.steps.push_back({Step::kNumber, {}, *value, {}, Step::kLess});
    return {at, false, true, {}, std::nullopt};
  }

  // The common unit of two numbers; a fault if they have different ones.
  std::string_view joinUnits(const Term& a, const Term& b, std::string_view how) const {
    if (a.adapts) return b.unit;
    if (b.adapts || a.unit == b.unit) return a.unit;
    fail(b.at, describeUnit(b.unit) + " " + std::string(how) + " " + describeUnit(a.unit) +
                   "; both sides need the same unit");
  }

  Term parseSum() {
    Term left = parseProduct();
    while (here() == '+' || here() == '-') {
      const Step step = here() == '+' ? Step::kAdd : Step::kSubtract;
      ++at_;
      skipBlanks();
      requireNumber(left);
      const Term right = parseProduct();
      requireNumber(right);
      const std::string_view unit = joinUnits(left, right, "added to");
      put(step);
      left = {left.at, false, left.adapts && right.adapts, unit, std::nullopt};
    }
    return left;
  }

  Term parseProduct() {
    Term left = parseUnary();
    while (here() == '*' || here() == '/') {
      const bool times = here() == '*';
      ++at_;
      skipBlanks();
      requireNumber(left);
      const Term right = parseUnary();
      requireNumber(right);
      const std::string_view unit = times ? multiplyUnits(left, right) : divideUnits(left, right);
      put(times ? Step::kMultiply : Step::kDivide);
      left = {left.at, false, left.adapts && right.adapts, unit, std::nullopt};
    }
    return left;
  }

  std::string_view multiplyUnits(const Term& a, const Term& b) const {
    if (a.unit.empty()) return b.unit;
    if (b.unit.empty()) return a.unit;
    fail(b.at, "a product of two quantities with units; one of them must be a plain number");
  }
  std::string_view divideUnits(const Term& a, const Term& b) const {
    if (b.unit.empty()) return a.unit;
    if (a.unit == b.unit) return {};
    fail(b.at, describeUnit(a.unit) + " divided by " + describeUnit(b.unit) +
                   "; only the same unit or a plain number can divide");
  }

  Term parseUnary() {
    const std::size_t at = at_;
    if (here() != '-') return parsePrimary();
    ++at_;
    skipBlanks();
    const Deeper level(*this);
    Term term = parseUnary();
    requireNumber(term);
    put(Step::kNegate);
    term.at = at;
    term.lone_signal.reset();
    return term;
  }

  Term parsePrimary() {
    const std::size_t at = at_;
    if (takeSign("(")) {
      Term inner = parseOr();
      if (!takeSign(")")) fail(at_, "found " + describeHere() + " where ')' belongs");
      inner.at = at;
      return inner;
    }
    if (isDigit(here()) || here() == '.') return parseNumber();
    const std::string_view word = peekWord();
    if (word.empty()) fail(at_, "found " + describeHere() + " where a signal or number belongs");
    if (word == "abs") return parseAbs();
    if (word == "and" || word == "or" || word == "not" || word == "near" || word == "by") {
      fail(at_, fmt::format("found '{}' where a signal or number belongs", word));
    }
    return parseSignal(word);
  }

  Term parseAbs() {
    const std::size_t at = at_;
    takeWord("abs");
    if (!takeSign("(")) fail(at_, "found " + describeHere() + " where '(' belongs after abs");
    Term inner = parseOr();
    requireNumber(inner);
    if (!takeSign(")")) fail(at_, "found " + describeHere() + " where ')' belongs");
    put(Step::kAbs);
    inner.at = at;
    inner.lone_signal.reset();
    return inner;
  }

  Term parseSignal(std::string_view word) {
    const auto signal = findSignal(word);
    if (!signal) failUnknown(word);
    const std::size_t at = at_;
    at_ += word.size();
    skipBlanks();
    result_.steps.push_back({Step::kSignal, *signal, 0, {}, Step::kLess});
    auto& seen = result_.signals;
    if (std::find(seen.begin(), seen.end(), *signal) == seen.end()) seen.push_back(*signal);
    return {at, false, false, signalInfo(*signal).unit, signal};
  }

  [[noreturn]] void failUnknown(std::string_view word) const {
    std::vector<std::string_view> names;
    for (const SignalInfo& info : signalTable()) names.push_back(info.name);
    fail(at_, unknownWord("signal", word, names));
  }

  Term parseNumber() {
    const std::size_t at = at_;
    double value = 0;
    const char* begin = text_.data() + at_;
    const char* end = text_.data() + text_.size();
    const auto [next, error] = std::from_chars(begin, end, value);
    if (error != std::errc{} || !std::isfinite(static_cast<float>(value))) {
      fail(at, "a number that cannot be read");
    }
    at_ += static_cast<std::size_t>(next - begin);
    if (here() == '.') fail(at, "a number with two points");
    skipBlanks();
    result_.steps.push_back({Step::kNumber, {}, value, {}, Step::kLess});
    const std::string_view unit = takeUnit();
    return {at, false, unit.empty(), unit, std::nullopt};
  }

  std::string_view takeUnit() {
    for (std::string_view unit : unitsInUse()) {
      if (text_.substr(at_, unit.size()) != unit) continue;
      const std::size_t end = at_ + unit.size();
      if (unit != "%" && end < text_.size() && isWordPart(text_[end])) continue;
      at_ = end;
      skipBlanks();
      return unit;
    }
    const std::string_view word = peekWord();
    if (word.empty() || word == "and" || word == "or" || word == "by" || word == "near") return {};
    fail(at_, unknownWord("unit", word, unitsInUse()));
  }

  // Counts nesting, so that hostile text cannot use up the stack.
  class Deeper {
   public:
    explicit Deeper(Parser& parser) : parser_(parser) {
      if (++parser_.depth_ > kDeepest) parser_.fail(parser_.at_, "nested more than 40 deep");
    }
    ~Deeper() { --parser_.depth_; }
    Deeper(const Deeper&) = delete;
    Deeper& operator=(const Deeper&) = delete;

   private:
    Parser& parser_;
  };

  std::string_view text_;
  std::size_t at_ = 0;
  std::size_t depth_ = 0;
  ParsedCondition result_;
};

}  // namespace

ParsedCondition parseCondition(std::string_view text) { return Parser(text).parse(); }

}  // namespace cabwright::unit
