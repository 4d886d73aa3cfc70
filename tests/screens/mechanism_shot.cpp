// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the mechanism to a file, to look at:
//   mechanism_shot OUT.png SCENARIO day|night WIDTH HEIGHT LINE [ACTION ...]
// after the actions given, all of them the instructor's (a number of seconds lets time pass).
#include <QPainter>
#include <cstdio>
#include <string>

#include "mechanism/paint_mechanism.h"
#include "session/live_run.h"
#include "session/situation.h"
#include "shot.h"

namespace cabwright {
namespace {

int run(int argc, char** argv) {
  if (argc < 7) return 2;
  auto loaded = session::loadSituation(std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios/" + argv[2] +
                                       "/scenario.toml");
  session::LiveOptions options;
  options.mode = scenario::Mode::kGuided;
  session::LiveRun live(std::get<session::Situation>(loaded), options);
  mechanism::MechanismLook look;
  look.line = std::stoi(argv[6]) - 1;
  mechanism::MechanismTurn turn;
  for (int k = 7; k < argc; ++k) {
    char* end = nullptr;
    const double seconds = std::strtod(argv[k], &end);
    if (end != argv[k] && *end == '\0') {
      live.advance(static_cast<int>(seconds * 100));
      continue;
    }
    auto action = std::get<unit::Action>(unit::parseAction(argv[k]));
    action.actor = unit::Actor::kInstructor;
    const session::Taken taken = live.take(action);
    if (taken.fault) std::fprintf(stderr, "%s: %s\n", argv[k], taken.fault->c_str());
  }
  const drawing::Theme theme =
      std::string(argv[3]) == "night" ? drawing::Theme::kNight : drawing::Theme::kDay;
  QImage image(std::stoi(argv[4]), std::stoi(argv[5]), QImage::Format_RGB32);
  image.fill(drawing::colorOf(theme, drawing::Tone::kPaper));
  QPainter painter(&image);
  drawing::Pen pen(painter, theme);
  mechanism::paintMechanism(pen, QRectF(image.rect()), mechanism::readMechanism(live.unit()), turn,
                            look);
  return image.save(QString::fromLocal8Bit(argv[1])) ? 0 : 1;
}

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) { return cabwright::screens::runShot(argc, argv, cabwright::run); }
