// SPDX-License-Identifier: GPL-3.0-or-later
// How a program that draws one picture begins and ends.
#pragma once

#include <QApplication>
#include <QImage>
#include <QWidget>
#include <cstdio>
#include <exception>

#include "drawing/face.h"
#include "drawing/hints.h"

namespace cabwright::screens {

/// Draws a widget as it is now. Gives the exit code.
inline int saveShot(QWidget& widget, const char* file) {
  QImage image(widget.size(), QImage::Format_RGB32);
  widget.render(&image);
  return image.save(QString::fromLocal8Bit(file)) ? 0 : 1;
}

/// Runs it with an application that needs no screen. Gives the exit code.
inline int runShot(int argc, char** argv, int (*run)(int argc, char** argv)) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  drawing::prepareFaces();
  const QApplication app(argc, argv);
  drawing::keepHintsReadable();
  try {
    return run(argc, argv);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "%s: %s\n", argv[0], error.what());
    return 1;
  }
}

}  // namespace cabwright::screens
