// SPDX-License-Identifier: GPL-3.0-or-later
#include "moment_bench.h"

#include <malloc.h>

#include <algorithm>
#include <chrono>
#include <memory>
#include <random>
#include <stdexcept>

#include "review/playback.h"
#include "scenario/script.h"
#include "session/live_run.h"
#ifdef CABWRIGHT_DESKTOP
#include <QApplication>
#include <QImage>

#include "cab/seat_view.h"
#include "session/replay.h"
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

// The good script, and then she stands with both engines running.
void recordTwoHours(const fs::path& file) {
  const fs::path scenarios = fs::path(CABWRIGHT_SOURCE_DIR) / "scenarios";
  const fs::path folder = scenarios / "cold-preparation";
  auto loaded = session::loadSituation((folder / "scenario.toml").string(), scenarios);
  session::LiveOptions options;
  options.record = file;
  session::LiveRun live(std::get<session::Situation>(loaded), options);
  const auto text =
      std::get<scenario::SourceFile>(scenario::loadText((folder / "good.txt").string()));
  scenario::ScriptRunner script(std::get<scenario::Script>(scenario::parseScript(text)));
  while (!script.isDone() && !script.fault() && !live.failed()) {
    for (const auto& due : script.advance(live.frame())) live.take(due.action);
    live.advance(1);
  }
  live.advance(kTwoHours - live.tick());
  live.finish("finished");
}

// What a window does for a moment, beside bringing the world there.
class Plate {
 public:
#ifdef CABWRIGHT_DESKTOP
  explicit Plate(const fs::path& file) : store_(file) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    app_ = std::make_unique<QApplication>(count_, words_);
    seat_ = std::make_unique<cab::Seat>(
        session::LiveRun::toLookAt(session::readSituation(store_), store_.header()));
    view_ = std::make_unique<cab::SeatView>(*seat_, shortcuts_);
    view_->setReducedMotion(true);
    view_->resize(1280, 720);
    view_->show();
    QApplication::processEvents();
  }
  void show(const session::Run& moment) {
    seat_->showMoment(moment);
    QApplication::processEvents();
    QImage image(view_->size(), QImage::Format_RGB32);
    view_->render(&image);
  }

 private:
  session::Store store_;
  int count_ = 1;
  char name_[7] = "moment";
  char* words_[2] = {name_, nullptr};
  std::unique_ptr<QApplication> app_;
  std::unique_ptr<cab::Seat> seat_;
  cab::Shortcuts shortcuts_;
  std::unique_ptr<cab::SeatView> view_;
#else
  explicit Plate(const fs::path&) {}
  void show(const session::Run&) {}
#endif
};

}  // namespace

void timeMoments(const fs::path& folder, nlohmann::json& found) {
  const fs::path file = folder / "two-hours.cabsession";
  recordTwoHours(file);
  const double held = heldMb();
  double began = now();
  review::Playback playback(file);
  while (playback.build(100'000)) {
  }
  if (playback.state().difference) throw std::runtime_error("run again, it was another session");
  found["rerun_times_real"] = static_cast<double>(kTwoHours) / 100 / (now() - began);
  found["rerun_mb_per_hour"] = (heldMb() - held) / 2;
  Plate plate(file);
  std::minstd_rand random(5);  // NOLINT: any moments do
  double worst = 0, sum = 0, worlds = 0;
  for (int k = 0; k < kSeeks; ++k) {
    const auto tick = static_cast<std::int64_t>(random() % kTwoHours);
    began = now();
    const auto moment = playback.findMoment(tick);
    if (!moment) throw std::runtime_error("no moment");
    worlds += (now() - began) * 1e3;
    plate.show(*moment);
    const double took = (now() - began) * 1e3;
    worst = std::max(worst, took);
    sum += took;
  }
  found["moment_ms"] = worlds / kSeeks;
  found["seek_ms"] = sum / kSeeks;
  found["seek_worst_ms"] = worst;
}

}  // namespace cabwright::bench
