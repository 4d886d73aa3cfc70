// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet's colours and type for the ordinary widgets of the desk, and small makers of them.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QString>

#include "desk/desk.h"
#include "drawing/boxes.h"

namespace cabwright::desk {

[[nodiscard]] QString deskStyleSheet(const DeskStyle& style);

using drawing::ChoiceBox;
using drawing::TickBox;

/// A word above a group of widgets.
[[nodiscard]] QLabel* makeHeading(const QString& words, QWidget* parent);
/// In the second tone, and wrapped.
[[nodiscard]] QLabel* makeSecond(const QString& words, QWidget* parent);
/// Flat, small, pressed by Enter as well; `name` for screen readers and tests.
[[nodiscard]] QPushButton* makeButton(const QString& words, const QString& object_name,
                                      QWidget* parent);

}  // namespace cabwright::desk
