// SPDX-License-Identifier: GPL-3.0-or-later
// A button of the sheet: a word in a frame. Reached by Tab, pressed by Space or Enter.
#pragma once

#include <QAbstractButton>

#include "after/sheet_look.h"

namespace cabwright::after {

class SheetButton : public QAbstractButton {
  Q_OBJECT
 public:
  SheetButton(const SheetLook& look, const QString& words, QWidget* parent);

  void setStrong(bool strong);
  [[nodiscard]] QSize sizeHint() const override;
  /// Width and height in u.
  [[nodiscard]] QSizeF sizeInSheet() const;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;

 private:
  const SheetLook& look_;
  bool strong_ = false;
};

}  // namespace cabwright::after
