// SPDX-License-Identifier: GPL-3.0-or-later
// Draws what is seen from the cab at many places of the line to one file, to look at:
//   outside_shot OUT.png day|night SCALE
#include <QApplication>
#include <QImage>
#include <QPainter>
#include <cmath>
#include <cstdio>
#include <string>

#include "cab/outside_view.h"
#include "session/situation.h"
#include "shot.h"

namespace cabwright {
namespace {

struct Shot {
  double front_m;
  int cab = 0;
  double signal = -1, signal_m = 9999, limit = 40, mark = 9999;
  bool dark = false;
  cab::Weather weather = cab::Weather::kClear;
  double wiper = -1;
  std::array<bool, 2> person{};
};

int run(int argc, char** argv) {
  if (argc < 4) return 2;
  const auto loaded = session::loadSituation(std::string(CABWRIGHT_SOURCE_DIR) +
                                             "/scenarios/cold-preparation/scenario.toml");
  const auto& line = std::get<session::Situation>(loaded).loaded.route;
  const plant::GradeProfile profile = line.route.profile();
  const bool night = std::string(argv[2]) == "night";
  const double scale = std::stod(argv[3]);
  using enum cab::Weather;
  const std::vector<Shot> shots{
      {0, 0, 0, 60, 10},
      {36, 0, 1, 24, 10},
      {53, 0, 0, 7, 10},
      {1400, 0, 1, 260, 40, 200},
      {1560, 0, 1, 100, 40, 40, false, kRain, 0.4, {true, false}},
      {1597, 0, 0, 63, 40, 3, false, kClear, -1, {true, true}},
      {1640, 0, -1, 9999, 40},
      {3850, 0, 1, 345, 30, 370},
      {4250, 0, 0, 80, 30, -30, false, kSnow},
      {7750, 0, 0, 150, 50, 730, false, kFog},
      {4200, 1, 1, 160, 30, 80},
      {1750, 1, -1, 9999, 40, 230},
      {0, 0, 0, 60, 10, 9999, true},
      {1560, 0, 1, 100, 40, 40, true, kRain, 0.8},
  };
  const int rows = static_cast<int>((shots.size() + 1) / 2);
  QImage image(static_cast<int>(1260 * scale), static_cast<int>((20 + rows * 150) * scale),
               QImage::Format_RGB32);
  const auto theme = night ? drawing::Theme::kNight : drawing::Theme::kDay;
  image.fill(drawing::colorOf(theme, drawing::Tone::kPaper));
  QPainter painter(&image);
  painter.scale(scale, scale);
  drawing::Pen pen(painter, theme);
  for (std::size_t k = 0; k < shots.size(); ++k) {
    const Shot& s = shots[k];
    cab::OutsideScene scene;
    scene.line = &line;
    scene.profile = &profile;
    scene.cab = s.cab;
    scene.front_m = s.front_m;
    scene.signal = s.signal;
    scene.signal_m = s.signal_m;
    scene.limit_mph = s.limit;
    scene.mark_m = s.mark;
    scene.dark = s.dark;
    scene.headlit = s.dark && k % 2 == 1;
    scene.weather = s.weather;
    scene.wiper = s.wiper;
    scene.person = s.person;
    const double x = 20 + 620 * static_cast<double>(k % 2),
                 y = 20 + 150 * static_cast<double>(k / 2);
    const int left = cab::rightSign(s.cab) > 0 ? 2 : 1;
    cab::paintBeside(pen, {x, y, 80, 126}, scene, left, QStringLiteral("left"));
    cab::paintAhead(pen, {x + 92, y, k % 2 == 0 ? 428.0 : 502.0 - 92, 126}, scene);
    if (k % 2 == 0)
      cab::paintBeside(pen, {x + 532, y, 80, 126}, scene, 3 - left, QStringLiteral("right"));
    cab::BehindScene behind;
    behind.code = k % 4 == 1 ? 2 : 33;
    behind.age_s = k < 8 ? 4 : 9999;
    behind.stands = k % 4 == 1;
    behind.answered = k % 8 == 1;
    behind.ringing = k == 3;
    if (k % 2 == 1) cab::paintBehind(pen, {x + 514, y, 96, 126}, behind);
  }
  return image.save(QString::fromLocal8Bit(argv[1])) ? 0 : 1;
}

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) { return cabwright::screens::runShot(argc, argv, cabwright::run); }
