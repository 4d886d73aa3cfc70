// SPDX-License-Identifier: GPL-3.0-or-later
// Days of passes, as the shelf and the report say them.
#pragma once

#include <QDate>
#include <QString>
#include <optional>

#include "review/recency.h"

namespace cabwright::review_room {

[[nodiscard]] review::Day toDay(const QDate& date);
/// "3 Mar 2031", in the reader's language.
[[nodiscard]] QString dayText(review::Day day);
/// The day on the wall where it is looked at: a pass late in the evening counts for that evening.
/// Empty when the session does not say when it began.
[[nodiscard]] std::optional<review::Day> localDay(const review::ShelfItem& item);

}  // namespace cabwright::review_room
