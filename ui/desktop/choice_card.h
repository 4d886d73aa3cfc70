// SPDX-License-Identifier: GPL-3.0-or-later
// A card that is chosen among others: an exercise, or a way to take it. A button like any other to
// keyboard and screen reader, drawn by the hand of the sheets.
#pragma once

#include <QAbstractButton>

#include "drawing/pen.h"

namespace cabwright::desktop {

struct CardWords {
  QString title, text, foot;
  int level = 0;                    ///< how hard: 1 to 5; 0: not said
  bool done = false, good = false;  ///< taken before; passed
};

class ChoiceCard : public QAbstractButton {
  Q_OBJECT
 public:
  ChoiceCard(CardWords words, QWidget* parent);
  void setTheme(drawing::Theme theme);
  [[nodiscard]] const CardWords& words() const { return words_; }
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  [[nodiscard]] double scale() const;  ///< pixels for one u, by the system's font
  double paintWords(drawing::Pen* pen, double width) const;
  [[nodiscard]] QString levelText() const;
  CardWords words_;
  drawing::Theme theme_ = drawing::Theme::kDay;
};

}  // namespace cabwright::desktop
