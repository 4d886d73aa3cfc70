// SPDX-License-Identifier: GPL-3.0-or-later
// Tests of windows and drawings run in a Qt program without a screen, unless QT_QPA_PLATFORM says
// on which.
#include <gtest/gtest.h>

#include <QApplication>

#include "drawing/face.h"
#include "drawing/hints.h"

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  cabwright::drawing::prepareFaces();
  QApplication app(argc, argv);
  cabwright::drawing::keepHintsReadable();
  ::testing::InitGoogleTest(&argc, argv);
  return RUN_ALL_TESTS();
}
