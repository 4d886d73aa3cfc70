// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet's colours and type for the ordinary widgets of a review.
#pragma once

#include <QComboBox>
#include <QString>

#include "after/sheet_look.h"

namespace cabwright::review_room {

/// For a window that shows a sheet at this scale.
[[nodiscard]] QString reviewStyleSheet(const after::SheetLook& look);

/// A choice that draws its own arrow, in the ink of the sheet.
class LookChoice : public QComboBox {
 public:
  using QComboBox::QComboBox;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

/// The scale of a sheet that fills a window of this size.
[[nodiscard]] double reviewScale(int width, int height);

}  // namespace cabwright::review_room
