// SPDX-License-Identifier: GPL-3.0-or-later
#include "review_room/recency_day.h"

#include <QDateTime>
#include <QLocale>

#include "review_room/recency_page.h"

namespace cabwright::review_room {

using review::Day;

Day toDay(const QDate& date) {
  return {std::chrono::year(date.year()), std::chrono::month(static_cast<unsigned>(date.month())),
          std::chrono::day(static_cast<unsigned>(date.day()))};
}

QString dayText(Day day) {
  const QDate date(static_cast<int>(day.year()),
                   static_cast<int>(static_cast<unsigned>(day.month())),
                   static_cast<int>(static_cast<unsigned>(day.day())));
  return QLocale().toString(date, RecencyPage::tr("d MMM yyyy"));
}

std::optional<Day> localDay(const review::ShelfItem& item) {
  const QDateTime begun =
      QDateTime::fromString(QString::fromStdString(item.started_utc), Qt::ISODate);
  if (!begun.isValid()) return std::nullopt;
  return toDay(begun.toLocalTime().date());
}

}  // namespace cabwright::review_room
