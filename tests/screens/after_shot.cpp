// SPDX-License-Identifier: GPL-3.0-or-later
// Plays a script of an exercise and draws what the trainee sees right after it, to look at:
//   after_shot OUT.png SCENARIO SCRIPT day|night WIDTH HEIGHT [MODE] [SCROLL]
// MODE is guided, practice or assessment (the exercise's own if left out); SCROLL, in pixels, moves
// the marks upwards.
#include <QApplication>
#include <QScrollArea>
#include <QScrollBar>
#include <cstdio>
#include <string>

#include "after/after_view.h"
#include "played_run.h"
#include "shot.h"

namespace cabwright {
namespace {

int run(int argc, char** argv) {
  if (argc < 7) return 2;
  const auto mode = argc > 7 ? scenario::findMode(argv[7]) : std::nullopt;
  const auto live = tests::playRun(CABWRIGHT_SOURCE_DIR, argv[2], argv[3], mode);
  if (!live) return 3;
  after::AfterView view(*live);
  view.setTheme(std::string(argv[4]) == "night" ? drawing::Theme::kNight : drawing::Theme::kDay);
  view.resize(std::stoi(argv[5]), std::stoi(argv[6]));
  view.show();
  QApplication::processEvents();
  if (argc > 8) view.findChild<QScrollArea*>()->verticalScrollBar()->setValue(std::stoi(argv[8]));
  QApplication::processEvents();
  return screens::saveShot(view, argv[1]);
}

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) { return cabwright::screens::runShot(argc, argv, cabwright::run); }
