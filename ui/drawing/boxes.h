// SPDX-License-Identifier: GPL-3.0-or-later
// Boxes of ordinary pages that draw their own signs, in the ink of the sheet: a style sheet can
// take its pictures only from files.
#pragma once

#include <QCheckBox>
#include <QComboBox>

namespace cabwright::drawing {

/// A choice with its arrow. The style sheet says `QComboBox::drop-down { border: none; }`.
class ChoiceBox : public QComboBox {
 public:
  using QComboBox::QComboBox;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

/// A box with a tick when it is chosen, so that colour is not the only thing that says it.
class TickBox : public QCheckBox {
 public:
  using QCheckBox::QCheckBox;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace cabwright::drawing
