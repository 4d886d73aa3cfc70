// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/review.h"

#include <fmt/format.h>

#include <algorithm>

#include "session/replay.h"
#include "session/session_error.h"

namespace cabwright::review {
namespace {

using session::SessionError;

bool isBlank(const std::string& text) {
  return text.find_first_not_of(" \t\r\n") == std::string::npos;
}

const session::VerdictRow* findLine(const session::Closing& closing, const std::string& rule) {
  const auto line = std::ranges::find(closing.verdicts, rule, &session::VerdictRow::rule);
  return line == closing.verdicts.end() ? nullptr : &*line;
}

template <class Kind>
bool holdsAny(const std::vector<Entry>& entries) {
  return std::ranges::any_of(
      entries, [](const Entry& entry) { return std::holds_alternative<Kind>(entry.content); });
}

// Whether each kind may be added; the words when it may not.
struct Gate {
  const session::Closing& closing;
  const std::vector<Entry>& before;
  const session::Person& by;
  using Fault = std::optional<std::string>;

  [[nodiscard]] Fault needLine(const std::string& rule) const {
    if (findLine(closing, rule) != nullptr) return std::nullopt;
    return "the sheet has no line " + rule;
  }
  [[nodiscard]] Fault needAssessor(const std::string& what) const {
    if (by.role == "assessor") return std::nullopt;
    return what + " is for an assessor";
  }
  Fault operator()(const Override& e) const {
    if (isBlank(e.reason)) return "an override needs a reason";
    if (auto fault = needAssessor("an override")) return fault;
    return needLine(e.rule);
  }
  Fault operator()(const Rating& e) const {
    if (e.value < 1 || e.value > 5) return "a rating is from 1 to 5";
    if (isBlank(e.scale)) return "a rating says what it rates";
    return needAssessor("a rating");
  }
  Fault operator()(const Comment& e) const {
    if (isBlank(e.text)) return "a comment says something";
    return e.rule.empty() ? std::nullopt : needLine(e.rule);
  }
  Fault operator()(const SelfRating& e) const {
    if (by.role != "trainee") return "a self-rating is by the trainee";
    if (e.value < 1 || e.value > 5) return "a rating is from 1 to 5";
    if (holdsAny<SelfRating>(before)) return "there is a self-rating already";
    if (holdsAny<ScoreShown>(before) || holdsAny<Decision>(before))
      return "a self-rating comes before the score is seen";
    return std::nullopt;
  }
  Fault operator()(const ScoreShown&) const { return std::nullopt; }
  Fault operator()(const BlindMark& e) const {
    if (auto fault = needAssessor("a mark")) return fault;
    return needLine(e.rule);
  }
  Fault operator()(const Decision& e) const {
    const bool as_marked = closing.passed == (e.result == Result::kPassed);
    if (!as_marked && isBlank(e.reason))
      return "a decision that is not what the sheet says needs a reason";
    return needAssessor("a decision");
  }
  Fault operator()(const SignOff&) const {
    if (by.role == "assessor" && !holdsAny<Decision>(before))
      return "an assessor decides before signing";
    return std::nullopt;
  }
  Fault operator()(const Unknown&) const { return "an entry of no known kind"; }
};

Entry toEntry(const session::ReviewRow& row, Content content) {
  return {row.seq, row.utc, row.by, row.person, row.key, std::move(content)};
}

}  // namespace

std::vector<Entry> readEntries(const session::Store& store) {
  std::vector<Entry> entries;
  for (const session::ReviewRow& row : store.review()) {
    auto content = readContent(row.kind, row.body);
    if (!content)
      throw SessionError(fmt::format("{}: entry {} of those added after the seal is no {}",
                                     store.name(), row.seq, row.kind.substr(0, 40)));
    entries.push_back(toEntry(row, std::move(*content)));
  }
  return entries;
}

std::optional<std::string> findEntryFault(const session::Closing& closing,
                                          const std::vector<Entry>& before,
                                          const session::Person& by, const Content& content) {
  if (isBlank(by.name) || isBlank(by.role)) return "an entry says who made it";
  if (auto fault = std::visit(Gate{closing, before, by}, content)) return fault;
  if (!readContent(kindOf(content), bodyOf(content))) return "a text is too long";
  return std::nullopt;
}

void addEntries(const std::filesystem::path& file, const session::Person& by,
                std::vector<Content> contents, const session::SigningKey& key,
                const std::string& utc) {
  const std::string name = file.string();
  const auto make_rows = [&](const session::Store& store) {
    if (!store.closing()) throw SessionError(name + ": was cut off and has no sheet to add to");
    std::vector<session::NewReviewRow> rows;
    std::vector<Entry> before = readEntries(store);
    for (Content& content : contents) {
      if (const auto fault = findEntryFault(*store.closing(), before, by, content))
        throw SessionError(name + ": " + *fault);
      if (auto* given = std::get_if<Override>(&content))
        given->old_verdict = findLine(*store.closing(), given->rule)->verdict;
      rows.push_back({utc, kindOf(content), bodyOf(content), by});
      before.push_back({0, utc, by, 0, {}, content});
    }
    return rows;
  };
  session::appendReview(file, make_rows, key);
}

void applyOverrides(marking::MarkSheet& sheet, const marking::RuleSet& rules,
                    const std::vector<Entry>& entries) {
  for (const Entry& entry : entries) {
    const auto* given = std::get_if<Override>(&entry.content);
    if (given == nullptr) continue;
    const auto line = std::ranges::find(sheet.lines, given->rule, &marking::SheetLine::id);
    if (line == sheet.lines.end()) continue;
    line->override_record =
        marking::Override{entry.by.name, entry.utc, given->reason, given->outcome};
    line->void_reason = given->outcome ? "" : given->reason;
  }
  marking::settleSheet(sheet, rules);
}

std::optional<Entry> findDecision(const std::vector<Entry>& entries) {
  for (auto entry = entries.rbegin(); entry != entries.rend(); ++entry)
    if (std::holds_alternative<Decision>(entry->content)) return *entry;
  return std::nullopt;
}

Reviewed reviewSession(const session::Store& store) {
  session::Remarked marked = session::markAgain(store);
  Reviewed reviewed{std::move(marked.sheet), marked.complete, readEntries(store)};
  const session::Situation situation = session::readSituation(store);
  if (!reviewed.entries.empty()) applyOverrides(reviewed.sheet, *situation.rules, reviewed.entries);
  return reviewed;
}

}  // namespace cabwright::review
