// SPDX-License-Identifier: GPL-3.0-or-later
// Draws a recorded session as an assessor has it before them, to look at:
//   review_shot OUT.png SESSION SECOND strips|both|plate day|night WIDTH HEIGHT [PLACE]
// PLACE is one of the unit's ("engine1"); without it it is looked at from where the trainee was.
#include <QApplication>
#include <cstdio>
#include <exception>
#include <memory>
#include <string>

#include "review_room/review_view.h"
#include "shot.h"

namespace cabwright {
namespace {

using review_room::Share;

int run(int argc, char** argv) {
  if (argc < 8) return 2;
  review_room::ReviewView view(std::make_unique<review_room::Opened>(argv[2]));
  view.setTheme(argv[5] == std::string("night") ? drawing::Theme::kNight : drawing::Theme::kDay);
  view.resize(std::stoi(argv[6]), std::stoi(argv[7]));
  view.show();
  const std::string share = argv[4];
  view.setShare(share == "strips"  ? Share::kStrips
                : share == "plate" ? Share::kPlate
                                   : Share::kBoth);
  view.rerun().wait();
  view.jumpTo(static_cast<qint64>(std::stod(argv[3]) * 100));
  if (argc > 8) view.moment().seat().lookFrom(unit::findPlace(argv[8]));
  for (int k = 0; k < 5; ++k) QApplication::processEvents();
  return screens::saveShot(view, argv[1]);
}

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) { return cabwright::screens::runShot(argc, argv, cabwright::run); }
