// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/marks_facts.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <algorithm>

#include "after/words.h"
#include "review_room/marks_rows.h"
#include "review_room/marks_style.h"
#include "session/digest.h"

namespace cabwright::review_room {

using drawing::Tone;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(MarkSheet)
};

// Long words have to be cut somewhere: a width of nothing after every eighth character.
QString cuttable(QString word, int every) {
  for (qsizetype at = word.size() - word.size() % every; at > 0; at -= every)
    if (at < word.size()) word.insert(at, QLatin1Char(' '));
  return word;
}

QString escaped(const QString& words) {
  QString html = words.toHtmlEscaped();
  return html.replace(QLatin1Char('\n'), QLatin1String("<br>"));
}

}  // namespace

QString fileDigest(const std::filesystem::path& file) {
  const auto digest = session::digestOfFile(file);
  return digest ? cuttable(toQt(session::toHex(*digest)), 8) : QString();
}

QString personName(const session::Person& by) {
  return by.name.empty() ? Words::tr("somebody whose name was erased") : toQt(by.name);
}

QString utcText(const std::string& utc) {
  const QDateTime time = QDateTime::fromString(toQt(utc), Qt::ISODate);
  if (!time.isValid()) return toQt(utc);
  return Words::tr("%1 UTC").arg(
      QLocale().toString(time.toUTC(), QStringLiteral("d MMM yyyy, HH:mm")));
}

namespace {

struct EntryWords {
  QString operator()(const review::Override& e) const {
    const QString old = after::sheetWords(e.old_verdict), reason = toQt(e.reason);
    if (!e.outcome) return Words::tr("%1: void (recorded: %2): %3").arg(toQt(e.rule), old, reason);
    return Words::tr("%1 counts as %2 (recorded: %3): %4")
        .arg(toQt(e.rule), outcomeWord(*e.outcome), old, reason);
  }
  QString operator()(const review::Rating& e) const {
    const QString words = Words::tr("%1: %2 of 5").arg(after::sheetWords(e.scale)).arg(e.value);
    return e.comment.empty() ? words : words + QLatin1String(": ") + toQt(e.comment);
  }
  QString operator()(const review::Comment& e) const {
    QStringList parts;
    if (!e.rule.empty()) parts << Words::tr("on %1").arg(toQt(e.rule));
    if (e.tick) parts << Words::tr("at %1").arg(after::timeText(*e.tick));
    const QString text = QChar(0x201C) + toQt(e.text) + QChar(0x201D);
    return parts.isEmpty() ? text : parts.join(QLatin1String(", ")) + QLatin1String(": ") + text;
  }
  QString operator()(const review::SelfRating& e) const {
    const QString words = Words::tr("%1 of 5, before the score was seen").arg(e.value);
    return e.text.empty() ? words : words + QLatin1String(": ") + toQt(e.text);
  }
  QString operator()(const review::ScoreShown&) const {
    return Words::tr("from now on the trainee knows the score");
  }
  QString operator()(const review::BlindMark& e) const {
    return Words::tr("%1: %2").arg(toQt(e.rule), outcomeWord(e.outcome));
  }
  QString operator()(const review::Decision& e) const {
    QString words = after::sheetWords(review::wordOf(e.result));
    if (!e.reason.empty()) words += QLatin1String(": ") + toQt(e.reason);
    if (!e.next.empty()) words += QLatin1String("; ") + Words::tr("next: %1").arg(toQt(e.next));
    return words;
  }
  QString operator()(const review::SignOff& e) const { return toQt(e.statement); }
  QString operator()(const review::Unknown& e) const {
    return Words::tr("\u201C%1\u201D, which this program does not know").arg(toQt(e.kind));
  }
};

QString kindWord(const review::Content& content) {
  return after::sheetWords(review::kindOf(content));
}

std::optional<std::int64_t> tickOf(const review::Content& content) {
  const auto* comment = std::get_if<review::Comment>(&content);
  return comment == nullptr ? std::nullopt : comment->tick;
}

}  // namespace

QString entryText(const review::Content& content) { return std::visit(EntryWords(), content); }

FactGroup makeEntryFacts(const std::vector<review::Entry>& entries) {
  FactGroup group{Words::tr("Added after the seal"), {}};
  int blind_marks = 0;
  for (const review::Entry& entry : entries) {
    if (std::holds_alternative<review::BlindMark>(entry.content)) {
      ++blind_marks;  // the page of two assessors says which
      continue;
    }
    const QString by =
        Words::tr("%1, %2, %3")
            .arg(personName(entry.by), after::sheetWords(entry.by.role), utcText(entry.utc));
    group.facts.push_back({kindWord(entry.content),
                           entryText(entry.content) + QLatin1Char('\n') + by,
                           tickOf(entry.content)});
  }
  if (blind_marks > 0)
    group.facts.push_back({Words::tr("blind marks"), QString::number(blind_marks)});
  if (group.facts.empty()) group.facts.push_back({{}, Words::tr("nothing"), {}, Tone::kInk2});
  return group;
}

namespace {

QString rowHtml(const Fact& fact, bool named, const after::SheetLook& look) {
  const auto tone = [&look](Tone t) { return drawing::colorOf(look.theme, t).name(); };
  QString name = escaped(fact.name);
  if (fact.tick)
    name = QStringLiteral("<a href='tick:%1' style='color:%2'>%3</a>")
               .arg(*fact.tick)
               .arg(tone(Tone::kHand), name);
  QString value = escaped(fact.value);
  if (fact.strong) value = QStringLiteral("<b>%1</b>").arg(value);
  const QString head =
      QStringLiteral("style='color:%1; padding:2px 8px 2px 0'").arg(tone(Tone::kInk2));
  const QString body = QStringLiteral("style='color:%1; padding:2px 0 2px 0'").arg(tone(fact.tone));
  if (fact.wide)
    return QStringLiteral("<tr><td colspan='2' %1>%2</td></tr><tr><td colspan='2' %3>%4</td></tr>")
        .arg(head, name, body, value);
  if (!named) return QStringLiteral("<tr><td %1>%2</td></tr>").arg(body, value);
  return QStringLiteral("<tr><td width='32%' %1>%2</td><td %3>%4</td></tr>")
      .arg(head, name, body, value);
}

}  // namespace

QString toHtml(const std::vector<FactGroup>& groups, const after::SheetLook& look) {
  QString html;
  for (const FactGroup& group : groups) {
    if (group.facts.empty()) continue;
    if (!group.caption.isEmpty())
      html += QStringLiteral("<p style='margin-top:%1px; margin-bottom:3px'><b>%2</b></p>")
                  .arg(html.isEmpty() ? 0 : toPixels(12, look))
                  .arg(escaped(group.caption));
    const bool named = std::ranges::any_of(
        group.facts, [](const Fact& fact) { return !fact.name.isEmpty() && !fact.wide; });
    html += QStringLiteral("<table width='100%' cellspacing='0' cellpadding='0'>");
    for (const Fact& fact : group.facts) html += rowHtml(fact, named, look);
    html += QStringLiteral("</table>");
  }
  return html;
}

std::optional<std::int64_t> tickOfLink(const QString& link) {
  const QString head = QStringLiteral("tick:");
  if (!link.startsWith(head)) return std::nullopt;
  bool good = false;
  const qlonglong tick = link.mid(head.size()).toLongLong(&good);
  return good ? std::optional<std::int64_t>(tick) : std::nullopt;
}

}  // namespace cabwright::review_room
