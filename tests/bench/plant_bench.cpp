// SPDX-License-Identifier: GPL-3.0-or-later
// How fast and how exact the plant is, beside SUNDIALS CVODE on the same equations with the same
// locks and events, all in one run: timings of different runs on a shared machine do not compare.
#include <fmt/format.h>
#include <sys/resource.h>

#include <algorithm>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <nlohmann/json.hpp>
#include <vector>

#include "cvode_step.h"
#include "golden_script.h"
#include "key_signals.h"

namespace {

using namespace cabwright;
using namespace cabwright::testing;

double cpuSeconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

constexpr double kSimulatedS = static_cast<double>(kGoldenTicks) * 0.01;

plant::World makeWorld(std::unique_ptr<plant::StepMethod> method) {
  return {plant::Parameters(), goldenLine(), goldenStart(), std::move(method)};
}

// The least of a few runs: what the machine's other work adds is left out, for all alike.
template <class Make>
double timeScript(int runs, const Make& make) {
  double best = 1e300;
  for (int k = 0; k < runs; ++k) {
    plant::World world = makeWorld(make());
    GoldenScript script;
    const double from = cpuSeconds();
    for (std::int64_t tick = 0; tick < kGoldenTicks; ++tick) world.advance(script.advanceTo(tick));
    best = std::min(best, cpuSeconds() - from);
  }
  return best;
}

struct WorstTick {
  double ms = 0;
  std::int64_t tick = 0;
};

// Every run does the same work in the same tick, so a tick's least time over the runs is its own.
WorstTick findWorstTick(int runs) {
  std::vector<double> least(kGoldenTicks, 1e300);
  for (int k = 0; k < runs; ++k) {
    plant::World world = makeWorld(plant::makeDopri5());
    GoldenScript script;
    for (std::int64_t tick = 0; tick < kGoldenTicks; ++tick) {
      const plant::PlantInputs& inputs = script.advanceTo(tick);
      const double from = cpuSeconds();
      world.advance(inputs);
      double& mine = least[static_cast<std::size_t>(tick)];
      mine = std::min(mine, cpuSeconds() - from);
    }
  }
  WorstTick worst;
  for (std::int64_t tick = 0; tick < kGoldenTicks; ++tick) {
    const double ms = least[static_cast<std::size_t>(tick)] * 1e3;
    if (ms > worst.ms) worst = {ms, tick};
  }
  return worst;
}

struct Foreign {
  double tolerance = 1.0, seconds = 0.0, error = 0.0, max_error = 0.0;
  plant::StepCounts counts;
};

// CVODE is given the loosest tolerance of this row with which it is as exact as the plant is.
Foreign findCvodeAtSameError(double error, const std::vector<KeyRow>& reference) {
  Foreign best;
  for (double tolerance : {100.0, 30.0, 10.0, 3.0, 1.0, 0.3, 0.1, 0.03, 0.01, 0.003}) {
    const GoldenRun run = runGolden(makeCvode(tolerance));
    const SignalError off = compareRuns(run.rows, reference);
    best = {tolerance, 0.0, off.worst_p99, off.worst, run.counts};
    std::fprintf(stderr, "  CVODE at tolerance %g: p99 error %.2e\n", tolerance, off.worst_p99);
    if (off.worst_p99 <= error) break;
  }
  best.seconds = timeScript(2, [&] { return makeCvode(best.tolerance); });
  return best;
}

double peakMib() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024.0;
}

void printSignals(const SignalError& e) {
  for (std::size_t s = 0; s < kKeySignals; ++s) {
    fmt::print("  {:<18} p99 {:.1e}  most {:.1e}\n", keySignalNames()[s], e.p99[s], e.most[s]);
  }
}

}  // namespace

int main(int argc, char** argv) {
  const bool json = argc > 1 && std::strcmp(argv[1], "--json") == 0;
  if (argc > 1 && !json) {
    std::fprintf(stderr, "usage: plant_bench [--json]\n");
    return 2;
  }
  // Memory first: the product runs alone in the process.
  const GoldenRun own = runGolden(plant::makeDopri5());
  const double peak_mib = peakMib();
  const GoldenRun reference = runGolden(plant::makeDopri5(1e-4));
  const SignalError error = compareRuns(own.rows, reference.rows);
  const Foreign cvode = findCvodeAtSameError(error.worst_p99, reference.rows);
  const double seconds = timeScript(3, [] { return plant::makeDopri5(); });
  const WorstTick worst = findWorstTick(3);
  const double ratio = cvode.seconds / seconds;

  if (json) {
    const nlohmann::json out{{"real_time_factor", kSimulatedS / seconds},
                             {"cvode_ratio", ratio},
                             {"error", error.worst_p99},
                             {"cvode_error", cvode.error},
                             {"worst_tick_ms", worst.ms},
                             {"peak_mib", peak_mib}};
    std::printf("%s\n", out.dump(2).c_str());
    return 0;
  }
  fmt::print("script                {:.0f} s simulated, {} changes of input\n", kSimulatedS,
             countGoldenChanges());
  fmt::print(
      "plant                 {:.0f} x real time ({:.3f} s CPU; {} steps, {} events, {} storms)\n",
      kSimulatedS / seconds, seconds, own.counts.steps, own.counts.events, own.counts.storms);
  fmt::print(
      "CVODE BDF             {:.0f} x real time ({:.3f} s CPU; {} steps; tolerance {:g} x)\n",
      kSimulatedS / cvode.seconds, cvode.seconds, cvode.counts.steps, cvode.tolerance);
  fmt::print("plant over CVODE      {:.1f}\n", ratio);
  fmt::print("error, p99 / most     plant {:.1e} / {:.1e} ({})   CVODE {:.1e} / {:.1e}\n",
             error.worst_p99, error.worst, keySignalNames()[error.worst_signal], cvode.error,
             cvode.max_error);
  fmt::print("worst tick            {:.3f} ms (tick {})\n", worst.ms, worst.tick);
  fmt::print("peak memory           {:.1f} MiB\n", peak_mib);
  printSignals(error);
  return 0;
}
