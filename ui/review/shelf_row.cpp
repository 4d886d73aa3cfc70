// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/shelf_row.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <map>

#include "after/words.h"
#include "cab/you_parts.h"
#include "scenario/scenario.h"
#include "session/record.h"

namespace cabwright::review_room {

using drawing::VerdictSign;
using review::ShelfOutcome;

namespace {

QString fromText(const std::string& text) { return QString::fromStdString(text); }

VerdictSign signOf(ShelfOutcome outcome) {
  switch (outcome) {
    case ShelfOutcome::kPassed:
      return VerdictSign::kGood;
    case ShelfOutcome::kFailed:
      return VerdictSign::kDefect;
    case ShelfOutcome::kCutOff:
      return VerdictSign::kSeen;
    case ShelfOutcome::kBroken:
      break;
  }
  return VerdictSign::kUnsure;
}

QString modeName(const std::string& word) {
  const auto mode = scenario::findMode(word);
  return mode ? cab::modeText(*mode) : QString();
}

// "passed, 92": the points in hundredths, as far as there were any.
QString outcomeText(const review::ShelfItem& item) {
  QString words = outcomeName(item.outcome);
  if (item.sheet.possible > 0)
    words += QStringLiteral(", %1").arg(std::floor(item.sheet.percent), 0, 'f', 0);
  return words;
}

QString sealText(const review::ShelfItem& item) {
  if (item.outcome == ShelfOutcome::kBroken) return {};
  return item.sealed ? QCoreApplication::translate("Shelf", "sealed")
                     : QCoreApplication::translate("Shelf", "none");
}

ShelfRow makeRow(review::ShelfItem item, const QString& exercise) {
  ShelfRow row;
  const bool broken = item.outcome == ShelfOutcome::kBroken;
  row.started = QDateTime::fromString(fromText(item.started_utc), Qt::ISODate).toLocalTime();
  row.sign = signOf(item.outcome);
  row.cells = {fromText(session::traineeWords(item.number, item.trainee)),
               exercise,
               momentText(row.started),
               modeName(item.mode),
               broken ? QString() : lengthText(item.last_tick),
               outcomeText(item),
               decisionName(item.decision),
               sealText(item),
               fromText(item.file.filename().string())};
  row.searched = (row.cells.join(QLatin1Char('\n')) + QLatin1Char('\n') +
                  fromText(item.file.string()) + QLatin1Char('\n') + fromText(item.why_broken))
                     .toLower();
  row.item = std::move(item);
  return row;
}

}  // namespace

QString outcomeName(ShelfOutcome outcome) {
  switch (outcome) {
    case ShelfOutcome::kPassed:
      return QCoreApplication::translate("Shelf", "passed");
    case ShelfOutcome::kFailed:
      return QCoreApplication::translate("Shelf", "not passed");
    case ShelfOutcome::kCutOff:
      return QCoreApplication::translate("Shelf", "cut off");
    case ShelfOutcome::kBroken:
      break;
  }
  return QCoreApplication::translate("Shelf", "cannot be read");
}

QString decisionName(const std::string& word) {
  if (word.empty()) return {};
  if (word == "passed") return QCoreApplication::translate("Shelf", "passed");
  if (word == "failed") return QCoreApplication::translate("Shelf", "failed");
  return QCoreApplication::translate("Shelf", "not yet");
}

QString lengthText(std::int64_t ticks) { return after::timeText(ticks); }

QString momentText(const QDateTime& local) {
  if (!local.isValid()) return {};
  static const QLocale words;
  return words.toString(local, QCoreApplication::translate("Shelf", "d MMM yyyy, HH:mm"));
}

std::vector<ShelfRow> makeRows(std::vector<review::ShelfItem> items) {
  std::map<std::string, QString> exercises;
  std::vector<ShelfRow> rows;
  rows.reserve(items.size());
  for (review::ShelfItem& item : items) {
    auto known = exercises.find(item.scenario);
    if (known == exercises.end())
      known = exercises.emplace(item.scenario, after::exerciseWords(item.scenario)).first;
    rows.push_back(makeRow(std::move(item), known->second));
  }
  return rows;
}

bool passes(const ShelfRow& row, const ShelfFilter& filter) {
  const review::ShelfItem& item = row.item;
  if (!filter.trainee.isEmpty() && fromText(review::traineeKey(item)) != filter.trainee)
    return false;
  if (!filter.exercise.isEmpty() && fromText(item.scenario) != filter.exercise) return false;
  if (!filter.mode.isEmpty() && fromText(item.mode) != filter.mode) return false;
  if (filter.outcome && item.outcome != *filter.outcome) return false;
  const QDate day = row.started.date();
  if (filter.from.isValid() && (!day.isValid() || day < filter.from)) return false;
  if (filter.to.isValid() && (!day.isValid() || day > filter.to)) return false;
  if (filter.text.isEmpty()) return true;
  const QStringList words = filter.text.toLower().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  return std::ranges::all_of(words,
                             [&row](const QString& word) { return row.searched.contains(word); });
}

}  // namespace cabwright::review_room
