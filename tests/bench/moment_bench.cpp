// SPDX-License-Identifier: GPL-3.0-or-later
#include "moment_bench.h"

#include <malloc.h>

#include <algorithm>
#include <chrono>
#include <memory>
#include <random>
#include <stdexcept>
#include <string>
#include <tuple>

#include "own_time.h"
#include "review/playback.h"
#include "scenario/script.h"
#include "session/live_run.h"
#ifdef CABWRIGHT_DESKTOP
#include <QApplication>
#include <QMouseEvent>

#include "drawing/face.h"
#include "review_room/review_window.h"
#include "review_room/take_out.h"
#endif

namespace cabwright::bench {
namespace {

namespace fs = std::filesystem;

constexpr std::int64_t kTwoHours = 720'000;
constexpr int kSeeks = 200;

double now() {
  return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

double heldMb() { return static_cast<double>(::mallinfo2().uordblks) / 1e6; }

// A script of the exercise, and then she stands with both engines running up to this tick. Gives
// when the script was done.
std::int64_t record(const fs::path& file, const char* name, std::int64_t until) {
  const fs::path scenarios = fs::path(CABWRIGHT_SOURCE_DIR) / "scenarios";
  const fs::path folder = scenarios / "cold-preparation";
  auto loaded = session::loadSituation((folder / "scenario.toml").string(), scenarios);
  session::LiveOptions options;
  options.record = file;
  session::LiveRun live(std::get<session::Situation>(loaded), options);
  const auto text = std::get<scenario::SourceFile>(scenario::loadText((folder / name).string()));
  scenario::ScriptRunner script(std::get<scenario::Script>(
      scenario::parseScript(text, {}, scenario::neighboursOf(folder / name))));
  while (!script.isDone() && !script.fault() && !live.failed()) {
    for (const auto& due : script.advance(live.frame())) live.take(due.action);
    live.advance(1);
  }
  const std::int64_t done = live.tick();
  live.advance(std::max<std::int64_t>(0, until - done));
  live.finish("finished");
  return done;
}

#ifdef CABWRIGHT_DESKTOP
// The assessor's window with that session in it, and a hand with a mouse.
class Desk {
 public:
  explicit Desk(const fs::path& file) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    drawing::prepareFaces();
    app_ = std::make_unique<QApplication>(count_, words_);
    window_ = std::make_unique<review_room::ReviewWindow>();
    window_->resize(1280, 720);
    window_->show();
    window_->open(file);
    while (window_->isOpening()) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    if (window_->view() == nullptr) throw std::runtime_error(window_->said().toStdString());
    view().rerun().wait();
    settle();
  }

  void resize(int wide, int high) {
    window_->resize(wide, high);
    settle();
  }

  // From the button of the mouse until what is on the screen is of that moment: milliseconds. All
  // of it is done in this thread, which waits for nothing; others who use the machine do not count.
  double click(std::int64_t tick) {
    after::StripChart& strip = view().strip();
    const QPointF at(strip.xOf(tick), strip.height() / 2.0);
    const QPointF on_screen = strip.mapToGlobal(at);
    const auto send = [&](QEvent::Type type, Qt::MouseButtons held) {
      QMouseEvent event(type, at, on_screen, Qt::LeftButton, held, Qt::NoModifier);
      QApplication::sendEvent(&strip, &event);
    };
    const auto began = ThreadClock::now();
    send(QEvent::MouseButtonPress, Qt::LeftButton);
    settle();
    const double took = milliseconds(began);
    if (!view().moment().isWhole() ||
        view().moment().seat().run().tick() != view().opened().cursor())
      throw std::runtime_error("the moment is not seen");
    send(QEvent::MouseButtonRelease, Qt::NoButton);
    return took;
  }

 private:
  [[nodiscard]] review_room::ReviewView& view() { return *window_->view(); }
  // The moment comes when there is time for it, and what it changes is drawn after that.
  static void settle() {
    for (int k = 0; k < 4; ++k) QApplication::processEvents();
  }
  int count_ = 1;
  char name_[7] = "moment";
  char* words_[2] = {name_, nullptr};
  std::unique_ptr<QApplication> app_;
  std::unique_ptr<review_room::ReviewWindow> window_;
};

// A session of half an hour with many lines not kept, from the file to the last page: seconds.
double timeReport(const fs::path& folder) {
  const fs::path file = folder / "laziest.cabsession";
  record(file, "bad-laziest.txt", 0);
  const double began = now();
  const review_room::Opened opened(file);
  const auto fault =
      review_room::takeOut(review_room::TakeOut::kPaper, opened,
                           QString::fromStdString((folder / "laziest.pdf").string()));
  if (fault) throw std::runtime_error(fault->toStdString());
  return now() - began;
}
#endif

// The world of a moment, without anything drawn.
void timeWorlds(const fs::path& file, nlohmann::json& found) {
  const double held = heldMb();
  const double began = now();
  review::Playback playback(file);
  while (playback.build(100'000)) {
  }
  if (playback.state().difference) throw std::runtime_error("run again, it was another session");
  found["rerun_times_real"] = static_cast<double>(kTwoHours) / 100 / (now() - began);
  found["rerun_mb_per_hour"] = (heldMb() - held) / 2;
  Times worlds;
  std::minstd_rand random(5);  // NOLINT: any moments do
  for (int k = 0; k < kSeeks; ++k) {
    const auto start = ThreadClock::now();
    if (!playback.findMoment(static_cast<std::int64_t>(random() % kTwoHours)))
      throw std::runtime_error("no moment");
    worlds.ms.push_back(milliseconds(start));
  }
  found["moment_ms"] = worlds.mean();
  found["moment_worst_ms"] = worlds.share(1);
}

}  // namespace

void timeMoments(const fs::path& folder, nlohmann::json& found) {
  const fs::path file = folder / "two-hours.cabsession";
  const std::int64_t done = record(file, "good.txt", kTwoHours);
  timeWorlds(file, found);
#ifdef CABWRIGHT_DESKTOP
  Desk desk(file);
  std::minstd_rand random(7);  // NOLINT: any moments do
  for (const auto& [suffix, wide, high] :
       {std::tuple{"", 1280, 720}, std::tuple{"_1080", 1920, 1080}}) {
    desk.resize(wide, high);
    Times seeks;
    for (int k = 0; k < kSeeks; ++k)
      seeks.ms.push_back(desk.click(static_cast<std::int64_t>(random() % kTwoHours)));
    // Where the trainee was about: each click another place, which is another plate.
    for (int k = 0; k < kSeeks; ++k)
      seeks.ms.push_back(desk.click(static_cast<std::int64_t>(random() % done)));
    found[std::string("seek") + suffix + "_ms"] = seeks.mean();
    found[std::string("seek") + suffix + "_worst_ms"] = seeks.share(1);
  }
  found["report_s"] = timeReport(folder);
#endif
}

}  // namespace cabwright::bench
