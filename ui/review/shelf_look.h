// SPDX-License-Identifier: GPL-3.0-or-later
// Colours, type and small parts that the pages about many sessions share.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QString>

#include "after/sheet_look.h"
#include "drawing/boxes.h"

namespace cabwright::review_room {

/// Scale for a page of this size: type of 18.5 u is never below 13 pixels.
[[nodiscard]] double scaleOf(const QSize& page);
/// Height of common words, pixels.
[[nodiscard]] int textPx(const after::SheetLook& look);
/// For the ordinary widgets of a page.
[[nodiscard]] QString shelfStyle(const after::SheetLook& look);

/// In the second tone, and wrapped.
[[nodiscard]] QLabel* makeSecondLabel(const QString& words, QWidget* parent);
[[nodiscard]] QPushButton* makeShelfButton(const QString& words, const QString& object_name,
                                           QWidget* parent);

}  // namespace cabwright::review_room
