// SPDX-License-Identifier: GPL-3.0-or-later
// Words of every page, in both themes, against what they really stand on: 4.5 to 1 at least.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <QImage>
#include <QPixmap>
#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "all_pages.h"

namespace cabwright {
namespace {

using drawing::Theme;
using testing_ui::PaintedWords;

constexpr double kLeast = 4.5;

// What most of the box shows, but for the letters themselves where those fill it (of a letter that
// is half outside there may be more to be seen than of its ground); null: nothing is to be seen.
QColor groundOf(const QImage& image, const PaintedWords& words) {
  const QRect box = (words.box & words.visible).toAlignedRect() & image.rect();
  std::map<QRgb, int> count;
  for (int y = box.top(); y <= box.bottom(); ++y)
    for (int x = box.left(); x <= box.right(); ++x) ++count[image.pixel(x, y)];
  if (count.empty()) return {};
  int all = 0;
  for (const auto& [pixel, times] : count) all += times;
  const auto letters = count.find(words.color.rgb());
  if (letters != count.end() && letters->second < all * 7 / 10) count.erase(letters);
  return QColor::fromRgb(
      std::ranges::max_element(count, {}, [](const auto& entry) { return entry.second; })->first);
}

// As it comes out where it is not opaque.
QColor laidOn(const QColor& ground, const QColor& color) {
  const double share = color.alphaF();
  const auto mix = [share](int over, int under) {
    return static_cast<int>(std::lround(share * over + (1 - share) * under));
  };
  return QColor(mix(color.red(), ground.red()), mix(color.green(), ground.green()),
                mix(color.blue(), ground.blue()));
}

// What is switched off for the moment may be pale (WCAG 2.2, 1.4.3); it says so by being off.
bool isOff(QWidget& page, const PaintedWords& words) {
  QWidget* there = page.childAt(words.box.center().toPoint());
  return there != nullptr && !there->isEnabled();
}

class ContrastOnScreens : public ::testing::TestWithParam<Theme> {};

TEST_P(ContrastOnScreens, AllWordsCanBeRead) {
  std::set<std::string> faults;
  int counted = 0;
  const auto look = [&](const std::string& what, QWidget& page) {
    const QImage image = page.grab().toImage();
    for (const PaintedWords& words : tests::wordsOf(page, GetParam())) {
      if (words.text.trimmed().isEmpty() || isOff(page, words)) continue;
      const QColor ground = groundOf(image, words);
      if (!ground.isValid()) continue;
      ++counted;
      const double contrast = drawing::calcContrast(laidOn(ground, words.color), ground);
      if (contrast < kLeast)
        faults.insert(fmt::format("{}: \"{}\" {:.1f} to 1 ({} on {})", what,
                                  words.text.toStdString(), contrast,
                                  words.color.name().toStdString(), ground.name().toStdString()));
    }
  };
  tests::lookAtAll({1280, 720}, look, GetParam());
  EXPECT_GT(counted, 600);
  for (const std::string& fault : faults) ADD_FAILURE() << fault;
}

INSTANTIATE_TEST_SUITE_P(Themes, ContrastOnScreens, ::testing::Values(Theme::kDay, Theme::kNight),
                         [](const auto& theme) {
                           return theme.param == Theme::kDay ? "Day" : "Night";
                         });

}  // namespace
}  // namespace cabwright
