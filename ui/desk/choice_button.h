// SPDX-License-Identifier: GPL-3.0-or-later
// One of several words to choose from, or a word that is on or off: chosen it stands in ink.
#pragma once

#include <QAbstractButton>
#include <vector>

#include "after/sheet_look.h"

namespace cabwright::desk {

class ChoiceButton : public QAbstractButton {
  Q_OBJECT
 public:
  ChoiceButton(const after::SheetLook& look, const QString& words, QWidget* parent);

  /// Width and height in u, the ring of focus with it.
  [[nodiscard]] QSizeF sizeInSheet() const;
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;

 private:
  const after::SheetLook& look_;
};

/// Sets them side by side from `left` on, all in u; returns where the last one ends.
double placeInRow(const std::vector<ChoiceButton*>& buttons, double left, double top, double scale);

}  // namespace cabwright::desk
