// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing/style.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QPushButton>
#include <set>

namespace cabwright::drawing {
namespace {

// The border says the focus; no second frame of the system's stands inside it.
TEST(Style, TheFocusOfAButtonIsItsBorderAlone) {
  QWidget window;
  window.setStyleSheet(commonStyle(Theme::kDay, 16));
  auto* button = new QPushButton(&window);
  button->setGeometry(10, 10, 140, 40);
  window.resize(160, 60);
  window.show();
  window.activateWindow();
  QApplication::processEvents();
  button->setFocus(Qt::TabFocusReason);
  window.setAttribute(Qt::WA_KeyboardFocusChange);  // as after Tab
  ASSERT_TRUE(button->hasFocus());
  QImage image(button->size(), QImage::Format_RGB32);
  button->render(&image);
  std::set<QRgb> inside;
  for (int y = 5; y < image.height() - 5; ++y)
    for (int x = 5; x < image.width() - 5; ++x) inside.insert(image.pixel(x, y));
  EXPECT_EQ(inside.size(), 1U);
  EXPECT_FALSE(inside.contains(image.pixel(1, image.height() / 2)));
}

}  // namespace
}  // namespace cabwright::drawing
