// SPDX-License-Identifier: GPL-3.0-or-later
// Writes the sheet of all parts as a picture, to be looked at.
//   usage: drawing_sheet OUT.png day|night WIDTH HEIGHT [SCALE]
#include <QApplication>
#include <QImage>
#include <cstdio>

#include "drawing/face.h"
#include "drawing/parts_sheet.h"

namespace {

using namespace cabwright::drawing;

bool writeSheet(const QString& path, Theme theme, QSizeF window, double scale) {
  QImage image((window * scale).toSize(), QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(scale);
  image.fill(colorOf(theme, Tone::kPaper));
  QPainter painter(&image);
  const SheetFrame frame = calcSheetFrame(window);
  painter.setTransform(frame.toWindow(), true);
  Pen pen(painter, theme);
  paintPartsSheet(pen, frame);
  painter.end();
  return image.save(path);
}

}  // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  cabwright::drawing::prepareFaces();
  const QApplication app(argc, argv);
  const QStringList words = QApplication::arguments();
  const double width = words.value(3).toDouble(), height = words.value(4).toDouble();
  const double scale = words.value(5, QStringLiteral("1")).toDouble();
  const bool night = words.value(2) == QLatin1String("night");
  if (words.size() < 5 || (!night && words.value(2) != QLatin1String("day")) || width < 1 ||
      height < 1 || scale <= 0) {
    std::fputs("usage: drawing_sheet OUT.png day|night WIDTH HEIGHT [SCALE]\n", stderr);
    return 2;
  }
  if (!writeSheet(words.value(1), night ? Theme::kNight : Theme::kDay, {width, height}, scale)) {
    std::fprintf(stderr, "%s cannot be written\n", qPrintable(words.value(1)));
    return 1;
  }
  return 0;
}
