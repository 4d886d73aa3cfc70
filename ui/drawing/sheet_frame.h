// SPDX-License-Identifier: GPL-3.0-or-later
// How a sheet fills a window. It is 1000 u high and 1600 u wide at least; a wider window gives its
// width first to the right block, then to the world; a taller one gives its height to the gaps
// between the bands. No part is ever stretched.
#pragma once

#include <QRectF>
#include <QSizeF>
#include <QTransform>

namespace cabwright::drawing {

struct SheetFrame {
  double width = 1600, height = 1000;  ///< u
  double scale = 1;                    ///< device-independent pixels for one u
  QRectF world{40, 36, 1180, 924};     ///< left block: what comes in, the plate, the hands
  QRectF you{1244, 36, 316, 924};      ///< right block: place and plan, notebook, carried
  double spare = 0;                    ///< height over 1000 u, to be shared out between bands

  /// u to pixels of the window.
  [[nodiscard]] QTransform toWindow() const { return QTransform::fromScale(scale, scale); }
  bool operator==(const SheetFrame&) const = default;
};

/// For a window of this size in device-independent pixels.
[[nodiscard]] SheetFrame calcSheetFrame(QSizeF window);

}  // namespace cabwright::drawing
