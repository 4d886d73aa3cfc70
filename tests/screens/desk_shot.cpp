// SPDX-License-Identifier: GPL-3.0-or-later
// Plays a script of an exercise up to a second and draws a page of the instructor's desk, to look
// at:
//   desk_shot OUT.png PAGE SCENARIO SCRIPT SECOND day|night WIDTH HEIGHT [SECOND:ACTION ...]
// PAGE is strips, strips0 to strips6 (by preset), truth, person or verdicts; desk0 and so on is the
// whole desk with that page. At each SECOND the
// ACTION is done besides, "60:instructor: mark first start".
#include <QApplication>
#include <cstdio>
#include <memory>
#include <string>

#include "desk/desk_window.h"
#include "desk/live_strips.h"
#include "desk/person_view.h"
#include "desk/truth_view.h"
#include "desk/verdict_view.h"
#include "desk_play.h"
#include "shot.h"

namespace cabwright {
namespace {

std::unique_ptr<QWidget> makePage(desk::Desk& desk, const std::string& name) {
  if (name.starts_with("strips")) {
    auto page = std::make_unique<desk::LiveStrips>(desk);
    if (name.size() > 6) page->choosePreset(std::stoul(name.substr(6)));
    return page;
  }
  if (name == "truth") return std::make_unique<desk::TruthView>(desk);
  if (name == "person") return std::make_unique<desk::PersonView>(desk);
  if (name == "verdicts") return std::make_unique<desk::VerdictView>(desk);
  if (name.starts_with("desk")) {
    auto window = std::make_unique<desk::DeskWindow>(desk);
    if (name.size() > 4) window->tabs()->setCurrentIndex(std::stoi(name.substr(4)));
    return window;
  }
  return nullptr;
}

int run(int argc, char** argv) {
  if (argc < 9) return 2;
  const auto seat = tests::sitDown(argv[3]);
  desk::Desk desk;
  desk.setStyle({argv[6] == std::string("night") ? drawing::Theme::kNight : drawing::Theme::kDay,
                 desk.style().scale});
  const auto page = makePage(desk, argv[2]);
  if (page == nullptr) return 3;
  desk.setSeat(seat.get());
  std::multimap<double, std::string> notes;
  for (int k = 9; k < argc; ++k) {
    const std::string note = argv[k];
    notes.emplace(std::stod(note), note.substr(note.find(':') + 1));
  }
  tests::playScript(*seat, argv[3], argv[4], std::stod(argv[5]), notes);
  page->resize(std::stoi(argv[7]), std::stoi(argv[8]));
  page->show();
  for (int k = 0; k < 5; ++k) QApplication::processEvents();
  return screens::saveShot(*page, argv[1]);
}

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) { return cabwright::screens::runShot(argc, argv, cabwright::run); }
