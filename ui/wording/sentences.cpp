// SPDX-License-Identifier: GPL-3.0-or-later
#include "wording/sentences.h"

#include <QCoreApplication>
#include <QStringList>
#include <utility>
#include <vector>

namespace cabwright::wording {
namespace {

constexpr int kDeepest = 8;  // a list of some members in a pattern in a sentence

// "Asked: %1, for %2." is "Asked: ", ", for ", ".".
QStringList piecesOf(const QString& english) {
  QStringList pieces{QString()};
  for (qsizetype k = 0; k < english.size(); ++k) {
    if (english[k] == QLatin1Char('%') && k + 1 < english.size() && english[k + 1].isDigit()) {
      pieces << QString();
      ++k;
    } else {
      pieces.last() += english[k];
    }
  }
  return pieces;
}

bool isFigure(const QString& words) {
  const QChar first = words.isEmpty() ? QChar() : words[0];
  if (!first.isDigit() && first != QLatin1Char('-')) return false;
  for (const QChar c : words) {
    const bool belongs = c.isDigit() || c == QLatin1Char('.') || c == QLatin1Char(':') ||
                         c == QLatin1Char('-') || c == QLatin1Char('+') || c == QLatin1Char('e');
    if (!belongs) return false;
  }
  return true;
}

bool holdsFigure(const Pattern& pattern, qsizetype place) {
  return QLatin1String(pattern.figures).contains(QChar(static_cast<char16_t>(u'1' + place)));
}

// Fills the places up to number `k`, which ends at `end`. The nearest piece in front of a place may
// be part of a name ("the release, train pipe"): then what stands further in front does not fit,
// and the one before it is tried.
bool matchBefore(const Pattern& pattern, const QStringList& pieces, qsizetype k, qsizetype end,
                 const QString& english, QStringList& values) {
  if (k < 0) return end == 0;
  const qsizetype length = pieces[k].size();
  qsizetype at = k == 0             ? 0
                 : end - length < 1 ? -1
                                    : english.lastIndexOf(pieces[k], end - length - 1);
  for (; at >= 0 && at + length < end;
       at = k == 0 || at == 0 ? -1 : english.lastIndexOf(pieces[k], at - 1)) {
    const QString value = english.mid(at + length, end - at - length);
    // A longer figure would hold the same wrong letters.
    if (holdsFigure(pattern, k) && !isFigure(value)) return false;
    const bool rest = k == 0 || matchBefore(pattern, pieces, k - 1, at, english, values);
    if (!rest) continue;
    values << value;
    return true;
  }
  return false;
}

// The places of a translation may stand in another order.
QString fill(const QString& words, const QStringList& values) {
  QString filled;
  for (qsizetype k = 0; k < words.size(); ++k) {
    const bool place =
        words[k] == QLatin1Char('%') && k + 1 < words.size() && words[k + 1].isDigit();
    const int number = place ? words[k + 1].digitValue() : 0;
    if (place && number >= 1 && number <= values.size()) {
      filled += values[number - 1];
      ++k;
    } else {
      filled += words[k];
    }
  }
  return filled;
}

QString translateDeep(const char* context, const QString& english, int depth);
QString translateStart(const char* context, const QString& english);

QString translateByPattern(const char* context, const QString& english, int depth) {
  for (const Pattern& pattern : patternTable()) {
    if (qstrcmp(pattern.context, context) != 0) continue;
    QStringList values = matchPattern(pattern, english);
    if (values.isEmpty()) continue;
    for (qsizetype k = 0; k < values.size(); ++k)
      if (!holdsFigure(pattern, k)) values[k] = translateDeep(context, values[k], depth + 1);
    return fill(QCoreApplication::translate(context, pattern.english), values);
  }
  return {};
}

// What joins the members of a list, and the pattern that says it.
struct Joint {
  QLatin1String words;
  const char* pattern;
};
constexpr Joint kJoints[]{{QLatin1String(", "), "%1, %2"}, {QLatin1String(" and "), "%1 and %2"}};
constexpr qsizetype kMostJoints = 24;

// Where a joint stands; size: none.
std::pair<qsizetype, const Joint*> findJoint(const QString& english, qsizetype from) {
  std::pair<qsizetype, const Joint*> first{english.size(), nullptr};
  for (const Joint& joint : kJoints) {
    const qsizetype at = english.indexOf(joint.words, from);
    if (at >= 0 && at < first.first) first = {at, &joint};
  }
  return first;
}

// A list of entries of the catalogue, each as long as can be, so that a name with a comma stays
// one; empty when something in it is none.
QString translateList(const char* context, const QString& english) {
  std::vector<std::pair<qsizetype, const Joint*>> joints;
  for (auto joint = findJoint(english, 0); joint.second != nullptr;
       joint = findJoint(english, joint.first + joint.second->words.size()))
    joints.push_back(joint);
  if (joints.empty() || static_cast<qsizetype>(joints.size()) > kMostJoints) return {};
  joints.emplace_back(english.size(), nullptr);
  QString all;
  const Joint* before = nullptr;
  qsizetype from = 0;
  for (std::size_t next = 0; next < joints.size();) {
    std::size_t last = joints.size();
    QString found;
    while (found.isEmpty() && last-- > next) {
      const QString member = english.mid(from, joints[last].first - from);
      const QString words = translateStart(context, member);
      if (words != member) found = words;
    }
    if (found.isEmpty()) return {};
    all = before == nullptr
              ? found
              : fill(QCoreApplication::translate(context, before->pattern), {all, found});
    before = joints[last].second;
    if (before != nullptr) from = joints[last].first + before->words.size();
    next = last + 1;
  }
  return all;
}

// Cut behind every full stop that a blank follows.
QStringList sentencesOf(const QString& english) {
  QStringList sentences;
  qsizetype from = 0;
  for (qsizetype at = english.indexOf(QLatin1String(". ")); at >= 0;
       at = english.indexOf(QLatin1String(". "), from)) {
    sentences << english.mid(from, at + 1 - from);
    from = at + 2;
  }
  return sentences << english.mid(from);
}

// At the beginning of a sentence words are written large that the catalogue has small.
QString translateStart(const char* context, const QString& english) {
  const QString whole = translateEntry(context, english);
  if (whole != english || english.isEmpty() || !english[0].isUpper()) return whole;
  QString small = english;
  small[0] = small[0].toLower();
  QString found = translateEntry(context, small);
  if (found == small) return english;
  if (!found.isEmpty()) found[0] = found[0].toUpper();
  return found;
}

QString translateDeep(const char* context, const QString& english, int depth) {
  const QString entry = translateStart(context, english);
  if (entry != english || depth >= kDeepest) return entry;
  const QStringList sentences = sentencesOf(english);
  if (sentences.size() > 1) {
    QStringList translated;
    for (const QString& sentence : sentences)
      translated << translateDeep(context, sentence, depth + 1);
    return translated.join(QLatin1Char(' '));
  }
  if (const QString list = translateList(context, english); !list.isEmpty()) return list;
  const QString put_together = translateByPattern(context, english, depth);
  return put_together.isEmpty() ? english : put_together;
}

}  // namespace

QString translateEntry(const char* context, const QString& english) {
  return QCoreApplication::translate(context, english.toUtf8().constData());
}

QString translateSentence(const char* context, const QString& english) {
  return translateDeep(context, english, 0);
}

QString insideSentence(QString name) {
  //: How the first letter of a name is written inside a sentence: "small" or "large", untranslated.
  const QString letter = QCoreApplication::translate("Sentence", "small");
  const bool plain = name.size() > 1 && name[0].isUpper() && name[1].isLower();
  if (plain && letter == QLatin1String("small")) name[0] = name[0].toLower();
  return name;
}

QStringList matchPattern(const Pattern& pattern, const QString& english) {
  const QStringList pieces = piecesOf(QString::fromUtf8(pattern.english));
  if (!english.startsWith(pieces.first()) || !english.endsWith(pieces.last())) return {};
  QStringList values;
  const bool fits = matchBefore(pattern, pieces, pieces.size() - 2,
                                english.size() - pieces.last().size(), english, values);
  return fits ? values : QStringList();
}

}  // namespace cabwright::wording
