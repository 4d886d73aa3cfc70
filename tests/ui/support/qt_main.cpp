// SPDX-License-Identifier: GPL-3.0-or-later
// Tests of windows and drawings run in a Qt program without a screen.
#include <gtest/gtest.h>

#include <QApplication>

#include "drawing/face.h"

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  cabwright::drawing::prepareFaces();
  QApplication app(argc, argv);
  ::testing::InitGoogleTest(&argc, argv);
  return RUN_ALL_TESTS();
}
