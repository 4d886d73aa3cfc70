// SPDX-License-Identifier: GPL-3.0-or-later
// What the trainee's window costs: from a key to what is seen of it, a frame of each place, the
// start of the program, memory, and the work of a cab that stands with its engines idling. Drawn
// without a screen, unless QT_QPA_PLATFORM says on which.
//   cab_bench [--json]
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <QApplication>
#include <QBackingStore>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QProcess>
#include <QTemporaryDir>
#include <QTimer>
#include <QtTest>
#include <algorithm>
#include <fstream>
#include <functional>
#include <nlohmann/json.hpp>
#include <random>
#include <stdexcept>
#include <string>
#include <vector>

#include "../screens/screen_play.h"
#include "drawing/face.h"
#include "hearing/scene.h"
#include "hearing/synth.h"
#include "own_time.h"

namespace cabwright {
namespace {

using bench::milliseconds;
using bench::ProcessClock;
using bench::ThreadClock;
using bench::Times;

constexpr QSize kSmall(1280, 720), kLarge(1920, 1080);
constexpr double kFrame_s = 0.016;  ///< the window's own
constexpr int kFrames = 100, kStarts = 5, kPresses = 400, kIdle_ms = 10'000;

struct KeyOnPart {
  const char* command;
  Qt::Key key;
};
// What moves at once under a finger, whatever the machine does.
constexpr KeyOnPart kKeys[] = {{"cab.horn_low", Qt::Key_H}, {"cab.horn_high", Qt::Key_J}};

double peakMemory_mib() {
  std::ifstream status("/proc/self/status");
  for (std::string word; status >> word;)
    if (word == "VmHWM:") {
      double kib = 0;
      status >> kib;
      return kib / 1024;
    }
  throw std::runtime_error("this system does not say how much memory was used");
}

class Bench {
 public:
  Bench() : settings_(home_.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat) {
    settings_.setValue(QStringLiteral("preferences/sessions"), home_.filePath(QStringLiteral("s")));
    settings_.setValue(QStringLiteral("preferences/muted"), true);
    settings_.setValue(QStringLiteral("preferences/caution_read"), true);
    window_ = std::make_unique<desktop::MainWindow>(CABWRIGHT_SOURCE_DIR "/scenarios", settings_,
                                                    QStringLiteral("0"));
    window_->setClockRunning(false);
    window_->resize(kSmall);
    window_->show();
    window_->activateWindow();
    QApplication::processEvents();
  }

  nlohmann::json run() {
    nlohmann::json found;
    timeStart(found);
    timeFrames(kSmall, "", found);
    timeFrames(kLarge, "_1080", found);
    timeKeys(found);
    timeIdle(kSmall, "", found);
    timeIdle(kLarge, "_1080", found);
    playAll();
    found["peak_mib"] = peakMemory_mib();
    return found;
  }

 private:
  void begin(const std::string& exercise) {
    if (!window_->begin(exercise, scenario::Mode::kPractice, QStringLiteral("07")))
      throw std::runtime_error(exercise + " cannot be taken");
    window_->setClockRunning(false);
    window_->passTime(kFrame_s);
  }

  // The real program, from the moment it is asked for until its window can be used: with a home
  // that has nothing yet, and as it is every other day.
  void timeStart(nlohmann::json& found) {
    Times first, other;
    for (int k = 0; k < kStarts; ++k) {
      const QTemporaryDir home;
      first.ms.push_back(startOnce(home));
      other.ms.push_back(startOnce(home));
    }
    found["first_start_ms"] = first.share(0.5);
    found["start_ms"] = std::max(first.share(0.5), other.share(0.5));
  }

  static double startOnce(const QTemporaryDir& home) {
    QProcess program;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
      environment.insert(QString::fromLatin1(name), home.filePath(QString::fromLatin1(name)));
    program.setProcessEnvironment(environment);
    QElapsedTimer clock;
    clock.start();
    program.start(QStringLiteral(CABWRIGHT_PROGRAM), {QStringLiteral("--try-start")});
    if (!program.waitForReadyRead(60'000)) throw std::runtime_error("the program did not start");
    const double ms = static_cast<double>(clock.nsecsElapsed()) * 1e-6;
    program.waitForFinished();
    if (program.exitCode() != 0) throw std::runtime_error("the program did not end well");
    return ms;
  }

  // Of each place with the engines running, and of a cab under way: reading the frame, drawing what
  // is another, and bringing it to the screen. The machine itself is not counted.
  void timeFrames(QSize size, const std::string& suffix, nlohmann::json& found) {
    window_->resize(size);
    std::string busiest;
    double most = 0, worst = 0;
    Times turns;
    const auto take = [&](const std::string& name) {
      const Times times = timeFrame();
      worst = std::max(worst, times.share(0.99));
      if (times.mean() <= most) return;
      most = times.mean();
      busiest = name;
    };
    begin("hill-start");
    screens::play(*window_, "hill-start", "@good:135");
    take("cab1 under way");
    begin("hill-start");
    for (const unit::PlaceInfo& place : unit::placeTable()) {
      screens::reach(*window_, place);
      take(std::string(place.name));
      if (unit::cabOf(place.id) < 0) continue;
      turns.ms.push_back(timeTurn());
      take(std::string(place.name) + " turned round");
      turns.ms.push_back(timeTurn());
    }
    found["frame" + suffix + "_ms"] = most;
    found["frame" + suffix + "_p99_ms"] = worst;
    found["busiest" + suffix] = busiest;
    found["new_plate" + suffix + "_ms"] = turns.share(1);
  }

  // Another plate, made and drawn from nothing.
  double timeTurn() {
    const auto start = ThreadClock::now();
    window_->seatView()->turnRound();
    QApplication::processEvents();
    return milliseconds(start);
  }

  Times timeFrame() {
    Times times;
    cab::Seat& seat = *window_->seat();
    QApplication::processEvents();
    for (int k = 0; k < kFrames; ++k) {
      seat.blockSignals(true);
      seat.passRealTime(kFrame_s);
      seat.blockSignals(false);
      const auto start = ThreadClock::now();
      Q_EMIT seat.frameChanged();
      QApplication::processEvents();
      times.ms.push_back(milliseconds(start));
    }
    return times;
  }

  // A key as the system delivers it, the machine and the clock going on meanwhile, until what it
  // moves looks different in what is given to the screen.
  void timeKeys(nlohmann::json& found) {
    window_->resize(kSmall);
    begin("hill-start");
    screens::play(*window_, "hill-start", "@good:135");
    window_->seatView()->setFocus();
    window_->setClockRunning(true);
    std::minstd_rand random(7);  // NOLINT: any moments do
    Times times;
    for (int k = 0; k < kPresses / 2; ++k) {
      const KeyOnPart& one = kKeys[k % std::size(kKeys)];
      cab::ControlPart* part =
          window_->seatView()->plate()->findControl(QString::fromLatin1(one.command));
      if (part == nullptr) throw std::runtime_error("the key moves nothing here");
      const auto press = [&] { QTest::keyPress(window_->windowHandle(), one.key); };
      const auto lift = [&] { QTest::keyRelease(window_->windowHandle(), one.key); };
      for (const std::function<void()>& key :
           {std::function<void()>(press), std::function<void()>(lift)}) {
        wait(60 + static_cast<int>(random() % 40));
        times.ms.push_back(untilSeen(*part, key));
      }
    }
    window_->setClockRunning(false);
    found["key_to_pixels_ms"] = times.mean();
    found["key_to_pixels_p99_ms"] = times.share(0.99);
  }

  static void wait(int ms) {
    QEventLoop loop;
    QTimer::singleShot(ms, &loop, &QEventLoop::quit);
    loop.exec();
  }

  [[nodiscard]] QImage pixelsOf(const QWidget& part) const {
    const auto* all = dynamic_cast<const QImage*>(window_->backingStore()->paintDevice());
    if (all == nullptr) throw std::runtime_error("this screen does not let its pixels be read");
    const qreal scale = window_->devicePixelRatio();
    const QPointF corner = part.mapTo(window_.get(), QPoint(0, 0));
    return all->copy(QRectF(corner * scale, QSizeF(part.size()) * scale).toAlignedRect());
  }

  double untilSeen(const QWidget& part, const std::function<void()>& key) const {
    const QImage before = pixelsOf(part);
    QElapsedTimer clock;
    clock.start();
    key();
    while (pixelsOf(part) == before) {
      if (clock.elapsed() > 2000) throw std::runtime_error("nothing was seen of a key");
      QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    return static_cast<double>(clock.nsecsElapsed()) * 1e-6;
  }

  // All of the process, plant and recording with it, and the sound as if there were a device.
  void timeIdle(QSize size, const std::string& suffix, nlohmann::json& found) {
    window_->resize(size);
    begin("hill-start");
    window_->setClockRunning(true);
    wait(500);
    QElapsedTimer clock;
    clock.start();
    const auto start = ProcessClock::now();
    wait(kIdle_ms);
    const double share = milliseconds(start) / static_cast<double>(clock.elapsed());
    window_->setClockRunning(false);
    found["idle_cpu" + suffix + "_percent"] = 100 * (share + soundShare());
  }

  [[nodiscard]] double soundShare() const {
    constexpr int kRate = 48'000, kPerSecond = 50, kSeconds = 5;
    hearing::Synth synth;
    std::vector<float> samples(2 * kRate / kPerSecond);
    const auto scene = hearing::calcScene(window_->seat()->frame(), window_->seat()->place());
    const auto start = ThreadClock::now();
    for (int k = 0; k < kSeconds * kPerSecond; ++k) {
      synth.setScene(scene);
      synth.render(samples, kRate);
    }
    return milliseconds(start) / (1000.0 * kSeconds);
  }

  // The longest exercise to its end and the page after it, in the larger window: for the memory.
  void playAll() {
    window_->resize(kLarge);
    begin("cold-preparation");
    screens::play(*window_, "cold-preparation", "@good");
    window_->endRun();
    QApplication::processEvents();
  }

  QTemporaryDir home_;
  QSettings settings_;
  std::unique_ptr<desktop::MainWindow> window_;
};

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  cabwright::drawing::prepareFaces();
  const QApplication app(argc, argv);
  const nlohmann::json found = cabwright::Bench().run();
  if (argc > 1 && std::string_view(argv[1]) == "--json") {
    fmt::print("{}\n", found.dump());
    return 0;
  }
  for (const auto& [name, value] : found.items())
    fmt::print("{:<28} {}\n", name,
               value.is_string() ? value.get<std::string>()
                                 : fmt::format("{:10.3f}", value.get<double>()));
  return 0;
}
