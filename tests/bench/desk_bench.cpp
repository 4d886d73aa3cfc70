// SPDX-License-Identifier: GPL-3.0-or-later
// What the live strips cost: twelve signals over five minutes at 1280x720, drawn anew ten times a
// second, and the cab's sheet of the same run beside it. The machine itself is not counted.
//   desk_bench [--json]
#include <fmt/format.h>

#include <QApplication>
#include <algorithm>
#include <functional>
#include <string_view>
#include <vector>

#include "cab/seat_view.h"
#include "desk/live_strips.h"
#include "desk/strip_groups.h"
#include "desk_play.h"
#include "drawing/face.h"
#include "own_time.h"

namespace cabwright {
namespace {

using Clock = bench::ThreadClock;
using bench::milliseconds;
using bench::Times;

constexpr int kFrames = 300;
constexpr QSize kWindow(1280, 720);
constexpr double kSamplesPerSecond = 10;

// Lets the run go on by a tenth of a second, unseen, and times what seeing it takes.
Times measure(cab::Seat& seat) {
  Times times;
  QApplication::processEvents();
  for (int k = 0; k < kFrames; ++k) {
    seat.blockSignals(true);
    tests::passSeconds(seat, 0.1);
    seat.blockSignals(false);
    const auto start = Clock::now();
    Q_EMIT seat.frameChanged();
    QApplication::processEvents();
    times.ms.push_back(milliseconds(start));
  }
  return times;
}

// What the tape takes at each refresh, drawn or not.
double measureTape(cab::Seat& seat) {
  desk::SignalTape tape;
  double spent = 0;
  for (int k = 0; k < kFrames; ++k) {
    seat.blockSignals(true);
    tests::passSeconds(seat, 0.1);
    seat.blockSignals(false);
    const auto start = Clock::now();
    tape.sample(seat.run());
    spent += milliseconds(start);
  }
  return spent / kFrames;
}

int run(bool json) {
  const auto seat = tests::sitDown("warm-tooth");
  desk::Desk desk;
  desk::LiveStrips strips(desk);
  desk.setSeat(seat.get());
  strips.resize(kWindow);
  tests::playScript(*seat, "warm-tooth", "good", 420);  // five minutes of past, and more
  const std::vector<desk::Preset>& presets = desk::presets();
  const auto fullest =
      std::ranges::max_element(presets, {}, [](const desk::Preset& p) { return p.signals.size(); });
  strips.choose(fullest->signals);
  strips.setMinutes(5);
  strips.show();
  const Times shown = measure(*seat);
  const std::size_t signals = strips.chosen().size();
  strips.hide();
  const Times hidden = measure(*seat);
  desk.setSeat(nullptr);

  const cab::Shortcuts shortcuts;
  cab::SeatView cab(*seat, shortcuts);
  cab.resize(kWindow);
  cab.show();
  const Times alone = measure(*seat);
  cab.hide();
  const double tape = measureTape(*seat);

  const double per_second = shown.mean() * kSamplesPerSecond / 1000;
  if (json) {
    fmt::print(
        "{{\"frame_ms\": {:.3f}, \"frame_p99_ms\": {:.3f}, \"signals\": {}, \"hidden_ms\": {:.4f}, "
        "\"cab_alone_ms\": {:.3f}, \"cab_alone_p99_ms\": {:.3f}, \"tape_ms\": {:.4f}, "
        "\"core_share\": {:.4f}, \"tape_bytes\": {}}}\n",
        shown.mean(), shown.share(0.99), signals, hidden.mean(), alone.mean(), alone.share(0.99),
        tape, per_second, strips.tape().bytes());
    return 0;
  }
  fmt::print("strips, {} signals, 5 min   {:7.3f} ms a frame, 99 % within {:.3f} ms\n", signals,
             shown.mean(), shown.share(0.99));
  fmt::print("  share of one core         {:7.3f} % at ten a second\n", 100 * per_second);
  fmt::print("strips, hidden              {:7.4f} ms\n", hidden.mean());
  fmt::print("the tape by itself          {:7.4f} ms, {:.1f} MB\n", tape,
             static_cast<double>(strips.tape().bytes()) / 1e6);
  fmt::print("the cab alone               {:7.3f} ms a frame, 99 % within {:.3f} ms\n",
             alone.mean(), alone.share(0.99));
  return 0;
}

}  // namespace
}  // namespace cabwright

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  cabwright::drawing::prepareFaces();
  const QApplication app(argc, argv);
  return cabwright::run(argc > 1 && std::string_view(argv[1]) == "--json");
}
