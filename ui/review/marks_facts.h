// SPDX-License-Identifier: GPL-3.0-or-later
// What the mark sheet says beside its lines, as names and values: the head, all of one line, the
// totals. A value may lead to a moment of the session. Nothing is said that the record does not.
#pragma once

#include <QString>
#include <cstdint>
#include <optional>
#include <vector>

#include "after/sheet_look.h"
#include "review_room/opened.h"

namespace cabwright::review_room {

struct Fact {
  QString name;
  QString value;
  std::optional<std::int64_t> tick = {};  ///< the name leads to this moment
  drawing::Tone tone = drawing::Tone::kInk;
  bool strong = false;
  bool wide = false;  ///< long and without breaks: below its name, over the whole width
};
struct FactGroup {
  QString caption;
  std::vector<Fact> facts;
};

/// Record and signatures; who; the exercise; what was done to the run; judgements of items.
/// `file_sha256`: of the file as it is now.
[[nodiscard]] std::vector<FactGroup> makeHeadFacts(const Opened& opened,
                                                   const QString& file_sha256);
/// Hexadecimal, in groups of eight; empty when the file cannot be read.
[[nodiscard]] QString fileDigest(const std::filesystem::path& file);

/// All of one line, with what was said of it.
[[nodiscard]] std::vector<FactGroup> makeLineFacts(const Opened& opened,
                                                   const marking::SheetLine& line);
/// Points, pass mark, lines by verdict, and what the marks come to.
[[nodiscard]] std::vector<FactGroup> makeTotalFacts(const marking::MarkSheet& sheet);
/// All that was added after the seal, in order.
[[nodiscard]] FactGroup makeEntryFacts(const std::vector<review::Entry>& entries);
[[nodiscard]] FactGroup makeJudgementFacts(const marking::MarkSheet& sheet);

/// "R. Who", or that the name was erased.
[[nodiscard]] QString personName(const session::Person& by);
/// One entry in a sentence, in the reader's language.
[[nodiscard]] QString entryText(const review::Content& content);
/// "4 Feb 2031, 08:00 UTC"; what is no time stays as it is.
[[nodiscard]] QString utcText(const std::string& utc);

/// For a QTextBrowser; links have the form "tick:4520".
[[nodiscard]] QString toHtml(const std::vector<FactGroup>& groups, const after::SheetLook& look);
/// The moment behind such a link.
[[nodiscard]] std::optional<std::int64_t> tickOfLink(const QString& link);

}  // namespace cabwright::review_room
