// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet's colours and type for the ordinary widgets of the desk, and small makers of them.
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QString>

#include "desk/desk.h"

namespace cabwright::desk {

[[nodiscard]] QString deskStyleSheet(const DeskStyle& style);

/// A choice that draws its own arrow, in the ink of the sheet.
class ChoiceBox : public QComboBox {
 public:
  using QComboBox::QComboBox;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

/// A word above a group of widgets.
[[nodiscard]] QLabel* makeHeading(const QString& words, QWidget* parent);
/// In the second tone, and wrapped.
[[nodiscard]] QLabel* makeSecond(const QString& words, QWidget* parent);
/// Flat, small, pressed by Enter as well; `name` for screen readers and tests.
[[nodiscard]] QPushButton* makeButton(const QString& words, const QString& object_name,
                                      QWidget* parent);

}  // namespace cabwright::desk
