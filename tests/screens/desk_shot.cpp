// SPDX-License-Identifier: GPL-3.0-or-later
// Plays a script of an exercise up to a second and draws a page of the instructor's desk, to look
// at:
//   desk_shot OUT.png PAGE SCENARIO SCRIPT SECOND day|night WIDTH HEIGHT [NUMBER]
// PAGE is strips, truth, person or verdicts; NUMBER the preset of the strips.
#include <QApplication>
#include <QImage>
#include <cstdio>
#include <memory>
#include <string>

#include "desk/live_strips.h"
#include "drawing/face.h"
#include "played_run.h"

namespace cabwright {
namespace {

std::unique_ptr<desk::LivePage> makePage(const std::string& name, const std::string& number) {
  if (name == "strips") {
    auto page = std::make_unique<desk::LiveStrips>();
    if (!number.empty()) page->choosePreset(std::stoul(number));
    return page;
  }
  return nullptr;
}

int run(int argc, char** argv) {
  if (argc < 9) return 2;
  const std::string name = argv[2];
  const auto page = makePage(name, argc > 9 ? argv[9] : "");
  if (page == nullptr) return 3;
  const session::LiveRun* seen = nullptr;
  const auto live = tests::playLive(CABWRIGHT_SOURCE_DIR, argv[3], argv[4], {},
                                    std::stoll(argv[5]) * session::kTicksPerSecond,
                                    [&](session::LiveRun& run) {
                                      if (seen == nullptr) page->setRun(seen = &run);
                                      page->refresh();
                                    });
  if (live == nullptr) return 3;
  page->setTheme(std::string(argv[6]) == "night" ? drawing::Theme::kNight : drawing::Theme::kDay);
  page->resize(std::stoi(argv[7]), std::stoi(argv[8]));
  page->show();
  for (int k = 0; k < 5; ++k) QApplication::processEvents();
  QImage image(page->size(), QImage::Format_RGB32);
  page->render(&image);
  return image.save(QString::fromLocal8Bit(argv[1])) ? 0 : 1;
}

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  cabwright::drawing::prepareFaces();
  const QApplication app(argc, argv);
  return cabwright::run(argc, argv);
}
