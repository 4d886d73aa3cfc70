// SPDX-License-Identifier: GPL-3.0-or-later
// A list of cards that are as high as their words need at the width there is.
#pragma once

#include <QListView>

#include "after/sheet_look.h"

namespace cabwright::after {

class CardList : public QListView {
  Q_OBJECT
 public:
  /// The look must outlive it.
  CardList(const SheetLook& look, const QString& name, QWidget* parent);
  void restyle();
  /// What stands in it while it has no rows.
  void setEmptyWords(const QString& words) { empty_words_ = words; }

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  /// Enter on a card.
  virtual void enterCard(const QModelIndex& index) = 0;

 private:
  const SheetLook& look_;
  QString empty_words_;
};

}  // namespace cabwright::after
