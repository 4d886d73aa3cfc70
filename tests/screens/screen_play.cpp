// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen_play.h"

#include <cstdio>
#include <cstdlib>
#include <stdexcept>

#include "scenario/script.h"

namespace cabwright::screens {
namespace {

void pass(desktop::MainWindow& window, double seconds) {
  for (double t = 0; t < seconds - 1e-9; t += 0.1) window.passTime(0.1);
}

// Plays a script through the seat, so that the window sees every act.
void playScript(desktop::MainWindow& window, const std::string& exercise,
                const std::string& words) {
  const std::size_t colon = words.find(':');
  const std::string name = words.substr(0, colon);
  const double most = colon == std::string::npos ? 1e9 : std::atof(words.c_str() + colon + 1);
  const std::string path =
      std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios/" + exercise + "/" + name + ".txt";
  auto file = scenario::loadText(path);
  auto script =
      scenario::parseScript(std::get<scenario::SourceFile>(file), {}, scenario::neighboursOf(path));
  scenario::ScriptRunner runner(std::get<scenario::Script>(std::move(script)));
  cab::Seat& seat = *window.seat();
  while (!runner.isDone() && !runner.fault() &&
         static_cast<double>(seat.run().tick()) * 0.01 < most) {
    for (const auto& due : runner.advance(seat.frame())) {
      if (due.action.actor != unit::Actor::kTrainee) continue;
      seat.act(due.action.verb, due.action.object, due.action.argument);
    }
    window.passTime(0.0101);
  }
  if (runner.fault()) std::fprintf(stderr, "%s\n", scenario::toText(*runner.fault()).c_str());
}

}  // namespace

void play(desktop::MainWindow& window, const std::string& exercise, const std::string& words) {
  char* end = nullptr;
  const double seconds = std::strtod(words.c_str(), &end);
  if (words.starts_with("@")) {
    playScript(window, exercise, words.substr(1));
  } else if (words.starts_with("!")) {
    if (words == "!end") {
      window.endRun();
    } else {
      window.seatView()->useCommand(QString::fromStdString(words.substr(1)));
    }
  } else if (end != words.c_str() && *end == '\0') {
    pass(window, seconds);
  } else {
    const auto action = unit::parseAction(words);
    if (const auto* a = std::get_if<unit::Action>(&action)) {
      const cab::Answer answer = window.seat()->act(a->verb, a->object, a->argument);
      if (!answer.accepted)
        std::fprintf(stderr, "%s: %s\n", words.c_str(), qPrintable(answer.perceived));
    }
  }
}

void reach(desktop::MainWindow& window, const unit::PlaceInfo& place) {
  cab::Seat& seat = *window.seat();
  if (!seat.isCarried(unit::Object::kDoorKey)) seat.act("take", "door_key");
  if (seat.place() != place.id) seat.act("go", std::string(place.name), "skip");
  for (int k = 0; k < 100 && (seat.isWalking() || seat.place() != place.id); ++k)
    window.passTime(0.2);
  window.passTime(0.2);
  if (seat.place() != place.id)
    throw std::runtime_error(std::string(place.name) + " was not reached");
}

}  // namespace cabwright::screens
