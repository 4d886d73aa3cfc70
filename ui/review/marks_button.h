// SPDX-License-Identifier: GPL-3.0-or-later
// A button of the mark sheet: words in a frame, with the key that does the same beside them. One
// that can be checked is filled with ink while it is. Space and Enter press it.
#pragma once

#include <QAbstractButton>

#include "after/sheet_look.h"

namespace cabwright::review_room {

class MarkButton : public QAbstractButton {
  Q_OBJECT
 public:
  MarkButton(const after::SheetLook& look, const QString& words, const QString& object_name,
             QWidget* parent);

  void setStrong(bool strong);
  /// For rows of many: as narrow as its words allow.
  void setSlim(bool slim);
  /// Drawn as a cap; whoever owns the button answers to the key.
  void setKey(const QString& key);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;

 private:
  [[nodiscard]] double wordsWidth() const;  ///< u, with the cap
  const after::SheetLook& look_;
  QString key_;
  bool strong_ = false, slim_ = false;
};

}  // namespace cabwright::review_room
