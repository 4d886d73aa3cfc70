// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/entry.h"

#include <fmt/format.h>

#include <array>
#include <nlohmann/json.hpp>

namespace cabwright::review {
namespace {

using marking::Outcome;
using nlohmann::json;

constexpr std::array kOutcomes{Outcome::kNotExercised, Outcome::kPendingGood, Outcome::kPendingBad,
                               Outcome::kMet, Outcome::kBroken};
constexpr std::array kResults{Result::kPassed, Result::kNotYet, Result::kFailed};

std::optional<Outcome> findOutcome(std::string_view word) {
  for (const Outcome outcome : kOutcomes)
    if (marking::wordOf(outcome) == word) return outcome;
  return std::nullopt;
}

// Reads the fields of a body; remembers when one was missing or of another type, and holds that
// there is none beside those asked for.
class Fields {
 public:
  explicit Fields(std::string_view body) : body_(json::parse(body, nullptr, false)) {
    good_ = body_.is_object();
  }
  std::string text(const char* key) {
    const json* value = take(key);
    if (value == nullptr || !value->is_string()) return fail();
    std::string text = value->get<std::string>();
    return text.size() > kMostTextBytes ? fail() : text;
  }
  std::int64_t number(const char* key) {
    const json* value = take(key);
    if (value != nullptr && value->is_number_integer()) return value->get<std::int64_t>();
    good_ = false;
    return 0;
  }
  bool isNull(const char* key) const {
    return good_ && body_.contains(key) && body_.at(key).is_null();
  }
  int mark(const char* key) {
    const std::int64_t value = number(key);
    if (value < 1 || value > 5) good_ = false;
    return good_ ? static_cast<int>(value) : 0;
  }
  std::optional<Outcome> outcomeOrVoid(const char* key) {
    if (isNull(key)) {
      ++taken_;
      return std::nullopt;
    }
    return outcome(key);
  }
  Outcome outcome(const char* key) {
    const auto found = findOutcome(text(key));
    if (!found) good_ = false;
    return found.value_or(Outcome::kNotExercised);
  }
  std::optional<std::int64_t> tickOrNone(const char* key) {
    if (isNull(key)) {
      ++taken_;
      return std::nullopt;
    }
    return number(key);
  }
  Result result(const char* key) {
    const std::string word = text(key);
    for (const Result result : kResults)
      if (wordOf(result) == word) return result;
    good_ = false;
    return Result::kNotYet;
  }
  [[nodiscard]] bool areGood() const { return good_ && taken_ == body_.size(); }

 private:
  const json* take(const char* key) {
    if (!good_ || !body_.contains(key)) {
      good_ = false;
      return nullptr;
    }
    ++taken_;
    return &body_.at(key);
  }
  std::string fail() {
    good_ = false;
    return {};
  }
  json body_;
  bool good_ = false;
  std::size_t taken_ = 0;
};

Content readKnown(std::string_view kind, Fields& fields) {
  if (kind == "override") {
    Override override_entry;
    override_entry.rule = fields.text("rule");
    override_entry.old_verdict = fields.text("old_verdict");
    override_entry.outcome = fields.outcomeOrVoid("outcome");
    override_entry.reason = fields.text("reason");
    return override_entry;
  }
  if (kind == "rating")
    return Rating{fields.text("scale"), fields.mark("value"), fields.text("comment")};
  if (kind == "comment")
    return Comment{fields.text("rule"), fields.tickOrNone("tick"), fields.text("text")};
  if (kind == "self-rating") return SelfRating{fields.mark("value"), fields.text("text")};
  if (kind == "score-shown") return ScoreShown{};
  if (kind == "blind-mark") return BlindMark{fields.text("rule"), fields.outcome("outcome")};
  if (kind == "decision")
    return Decision{fields.result("result"), fields.text("reason"), fields.text("next")};
  return SignOff{fields.text("statement")};
}

constexpr std::array<std::string_view, 8> kKinds{"override",    "rating",      "comment",
                                                 "self-rating", "score-shown", "blind-mark",
                                                 "decision",    "signature"};

json outcomeOrNull(const std::optional<Outcome>& outcome) {
  return outcome ? json(marking::wordOf(*outcome)) : json(nullptr);
}

struct ToJson {
  json operator()(const Override& e) const {
    return {{"rule", e.rule},
            {"old_verdict", e.old_verdict},
            {"outcome", outcomeOrNull(e.outcome)},
            {"reason", e.reason}};
  }
  json operator()(const Rating& e) const {
    return {{"scale", e.scale}, {"value", e.value}, {"comment", e.comment}};
  }
  json operator()(const Comment& e) const {
    return {{"rule", e.rule}, {"tick", e.tick ? json(*e.tick) : json(nullptr)}, {"text", e.text}};
  }
  json operator()(const SelfRating& e) const { return {{"value", e.value}, {"text", e.text}}; }
  json operator()(const ScoreShown&) const { return json::object(); }
  json operator()(const BlindMark& e) const {
    return {{"rule", e.rule}, {"outcome", marking::wordOf(e.outcome)}};
  }
  json operator()(const Decision& e) const {
    return {{"result", wordOf(e.result)}, {"reason", e.reason}, {"next", e.next}};
  }
  json operator()(const SignOff& e) const { return {{"statement", e.statement}}; }
  json operator()(const Unknown&) const { return json::object(); }
};

std::string because(const std::string& reason) { return reason.empty() ? "" : ": " + reason; }

struct ToWords {
  std::string operator()(const Override& e) const {
    if (!e.outcome)
      return fmt::format("line {} is void (recorded: {}): {}", e.rule, e.old_verdict, e.reason);
    return fmt::format("line {} counts as {} (recorded: {}): {}", e.rule,
                       marking::wordOf(*e.outcome), e.old_verdict, e.reason);
  }
  std::string operator()(const Rating& e) const {
    return fmt::format("{}: {} of 5{}", e.scale, e.value, because(e.comment));
  }
  std::string operator()(const Comment& e) const {
    std::string of = e.rule.empty() ? "" : "on line " + e.rule + ", ";
    if (e.tick) of += "at " + marking::clockText(*e.tick) + ", ";
    return of + "\"" + e.text + "\"";
  }
  std::string operator()(const SelfRating& e) const {
    return fmt::format("{} of 5 before the score was seen{}", e.value, because(e.text));
  }
  std::string operator()(const ScoreShown&) const { return "the trainee has seen the score"; }
  std::string operator()(const BlindMark& e) const {
    return fmt::format("line {}: {}", e.rule, marking::wordOf(e.outcome));
  }
  std::string operator()(const Decision& e) const {
    return std::string(wordOf(e.result)) + because(e.reason) +
           (e.next.empty() ? "" : "; next: " + e.next);
  }
  std::string operator()(const SignOff& e) const { return e.statement; }
  std::string operator()(const Unknown& e) const {
    return "\"" + e.kind + "\", which this program does not know";
  }
};

}  // namespace

std::string_view wordOf(Result result) {
  switch (result) {
    case Result::kPassed:
      return "passed";
    case Result::kNotYet:
      return "not yet";
    case Result::kFailed:
      break;
  }
  return "failed";
}

std::string kindOf(const Content& content) {
  if (const auto* unknown = std::get_if<Unknown>(&content)) return unknown->kind;
  return std::string(kKinds[content.index()]);
}

std::string bodyOf(const Content& content) {
  return std::visit(ToJson(), content).dump(-1, ' ', false, json::error_handler_t::replace);
}

std::optional<Content> readContent(std::string_view kind, std::string_view body) {
  bool is_known = false;
  for (const std::string_view known : kKinds) is_known = is_known || known == kind;
  if (!is_known) return Unknown{std::string(kind)};
  if (body.size() > 4 * kMostTextBytes) return std::nullopt;
  Fields fields(body);
  Content content = readKnown(kind, fields);
  if (!fields.areGood()) return std::nullopt;
  return content;
}

std::string describe(const Content& content) { return std::visit(ToWords(), content); }

}  // namespace cabwright::review
