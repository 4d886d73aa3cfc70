// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the plate of one place to a file, to look at:
//   plate_shot OUT.png PLACE day|night|dark WIDTH HEIGHT [ACTION ...]
// (dark: the night theme, and no daylight either)
// ("cab1+" is what is seen there when one turns round)
// in the exercise "cold preparation", after the actions given (a number of seconds lets time pass).
// Actions with a plus before them are the instructor's, and come first: "+condition engine1.cover
// off".
#include <QPainter>
#include <cstdio>
#include <string>

#include "cab/outside_part.h"
#include "cab/plate.h"
#include "drawing/furniture.h"
#include "session/situation.h"
#include "shot.h"

namespace cabwright {
namespace {

class Paper : public QWidget {
 public:
  explicit Paper(const cab::SheetStyle& style) : style_(style) {}

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.fillRect(rect(), drawing::colorOf(style_.theme, drawing::Tone::kPaper));
    painter.scale(style_.frame.scale, style_.frame.scale);
    drawing::Pen pen(painter, style_.theme);
    drawing::paintFrame(pen, style_.frame);
  }

 private:
  const cab::SheetStyle& style_;
};

void play(cab::Seat& seat, const std::string& words) {
  char* end = nullptr;
  const double seconds = std::strtod(words.c_str(), &end);
  if (end != words.c_str() && *end == '\0') {
    for (double t = 0; t < seconds; t += 0.2) seat.passRealTime(0.2);
    return;
  }
  const auto action = unit::parseAction(words);
  if (const auto* fault = std::get_if<std::string>(&action)) {
    std::fprintf(stderr, "%s\n", fault->c_str());
    return;
  }
  const auto& a = std::get<unit::Action>(action);
  const cab::Answer answer = seat.act(a.verb, a.object, a.argument);
  if (!answer.accepted)
    std::fprintf(stderr, "%s: %s\n", words.c_str(), qPrintable(answer.perceived));
}

void instruct(session::LiveRun& run, const std::string& words) {
  const auto action = unit::parseAction(words);
  if (const auto* fault = std::get_if<std::string>(&action)) {
    std::fprintf(stderr, "%s\n", fault->c_str());
    return;
  }
  auto done = std::get<unit::Action>(action);
  done.actor = unit::Actor::kInstructor;
  const session::Taken taken = run.take(done);
  if (taken.fault) std::fprintf(stderr, "%s: %s\n", words.c_str(), taken.fault->c_str());
}

int run(int argc, char** argv) {
  if (argc < 6) return 2;
  auto loaded = session::loadSituation(std::string(CABWRIGHT_SOURCE_DIR) +
                                       "/scenarios/cold-preparation/scenario.toml");
  const std::string light = argv[3];
  if (light == "dark") std::get<session::Situation>(loaded).loaded.scenario.start.dark = true;
  session::LiveOptions options;
  options.mode = scenario::Mode::kGuided;
  auto run = std::make_unique<session::LiveRun>(std::get<session::Situation>(loaded), options);
  for (int k = 6; k < argc; ++k) {
    if (argv[k][0] == '+') instruct(*run, argv[k] + 1);
  }
  cab::Seat seat(std::move(run));
  std::string name = argv[2];
  const bool second = name.ends_with('+');
  if (second) name.pop_back();
  const auto place = unit::findPlace(name);
  if (!place) return 2;
  play(seat, "take door_key");
  play(seat, "go " + name + " skip");
  play(seat, "0.2");
  for (int k = 6; k < argc; ++k) {
    if (argv[k][0] != '+') play(seat, argv[k]);
  }
  cab::SheetStyle style;
  style.theme = light != "day" ? drawing::Theme::kNight : drawing::Theme::kDay;
  const QSize size(std::stoi(argv[4]), std::stoi(argv[5]));
  style.frame = drawing::calcSheetFrame(size);
  const cab::Shortcuts shortcuts;
  const QRectF world = style.frame.world;
  const double top = world.top() + cab::Plate::bandHeight(*place);
  const cab::PlateContext context{
      seat, style, shortcuts,
      QRectF(world.left(), top, world.width(), 836 + style.frame.spare - top),
      QRectF(world.left(), world.top(), world.width(), top - world.top())};
  Paper paper(style);
  paper.resize(size);
  const auto plate = second ? cab::makeSecondPlate(*place, context, &paper)
                            : cab::makePlate(*place, context, &paper);
  if (!plate) return 3;
  plate->setGeometry(paper.rect());
  plate->refresh();
  std::unique_ptr<cab::OutsidePart> outside;
  if (unit::cabOf(*place) >= 0)
    outside = std::make_unique<cab::OutsidePart>(seat, style, context.above, &paper);
  QImage image(size, QImage::Format_RGB32);
  paper.render(&image);
  return image.save(QString::fromLocal8Bit(argv[1])) ? 0 : 1;
}

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) { return cabwright::screens::runShot(argc, argv, cabwright::run); }
