// SPDX-License-Identifier: GPL-3.0-or-later
// How quick it is to look at sessions: any moment of two hours, a shelf of ten thousand files,
// marking many, the report; and what recording costs. The sessions are a shipped exercise, played
// here; the two hours are that run shown to a recorder over and over.
//   usage: review_bench [--json] [--files N]
#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <nlohmann/json.hpp>
#include <random>
#include <string>
#include <vector>

#include "moment_bench.h"
#include "review/html_report.h"
#include "review/mark_many.h"
#include "review/shelf.h"
#include "scenario/script.h"
#include "session/marking_witness.h"
#include "session/recorder.h"
#include "session/run.h"
#include "session/session_writer.h"
#include "session/situation.h"

namespace {

using namespace cabwright;
namespace fs = std::filesystem;

double now() {
  return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

// Keeps all it is shown.
class Notebook final : public session::Witness {
 public:
  void seeFrame(const unit::Frame& frame) override { events.emplace_back(frame); }
  void seeAction(const session::TimedAction& action) override { events.emplace_back(action); }
  void seeHash(const session::StateHash& hash) override { events.emplace_back(hash); }
  std::vector<session::RecordedEvent> events;
};

class Bench {
 public:
  Bench() {
    std::string name = (fs::temp_directory_path() / "review-bench-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no temporary folder");
    folder_ = name;
  }
  ~Bench() {
    std::error_code ignored;
    fs::remove_all(folder_, ignored);
  }
  Bench(const Bench&) = delete;
  Bench& operator=(const Bench&) = delete;

  nlohmann::json run(int files) {
    play();
    nlohmann::json found;
    found["record_us_per_event"] = timeRecording();
    timeSeeking(found);
    bench::timeMoments(folder_, found);
    timeShelf(files, found);
    timeMarking(found);
    const double began = now();
    const auto report = review::makeHtmlReport(review::loadReport(one_));
    found["html_report_s"] = now() - began;
    found["html_report_bytes"] = report.size();
    return found;
  }

 private:
  void play() {
    const fs::path scenarios = fs::path(CABWRIGHT_SOURCE_DIR) / "scenarios";
    const fs::path folder = scenarios / "cold-preparation";
    auto loaded = session::loadSituation((folder / "scenario.toml").string(), scenarios);
    auto& situation = std::get<session::Situation>(loaded);
    const auto setup = scenario::makeSetup(situation.loaded, situation.loaded.scenario.seed);
    const auto text =
        std::get<scenario::SourceFile>(scenario::loadText((folder / "good.txt").string()));
    scenario::ScriptRunner script(std::get<scenario::Script>(scenario::parseScript(text)));
    header_ = session::makeHeader(situation, situation.loaded.scenario.seed, "bench");
    session::MarkingWitness marking(session::makeTerms(situation, setup));
    session::Run run(setup);
    session::Recorder recorder(one_ = folder_ / "one.cabsession", header_);
    for (session::Witness* witness : std::vector<session::Witness*>{&marking, &recorder, &book_})
      run.addWitness(*witness);
    run.begin();
    while (!script.isDone() && !script.fault() && !run.failed()) {
      for (const auto& due : script.advance(run.frame())) run.take(due.action);
      run.advance();
    }
    marking.finish(run.tick());
    auto head = session::makeHead(situation, header_);
    head.last_tick = last_ = run.tick();
    recorder.close(session::makeClosing(last_, "finished", marking.makeSheet(head)));
  }

  double timeRecording() {
    double best = 1e9;
    for (int k = 0; k < 3; ++k) {
      const fs::path file = folder_ / fmt::format("write{}", k);
      session::SessionWriter writer(file, header_, 0);
      const double began = now();
      std::size_t count = 0;
      writer.begin();
      for (const auto& event : book_.events) {
        std::visit([&](const auto& e) { writer.write(e); }, event);
        if (++count % 6 != 0) continue;
        writer.commit();
        writer.begin();
      }
      writer.commit();
      best = std::min(best, (now() - began) * 1e6 / static_cast<double>(count));
    }
    return best;
  }

  // The run over and over, until two hours are full.
  fs::path makeLong() {
    const fs::path file = folder_ / "long.cabsession";
    session::Recorder recorder(file, header_);
    std::int64_t number = 0, end = 0;
    for (std::int64_t from = 0; from < 720'000; from += last_ + 10, end = from)
      for (session::RecordedEvent event : book_.events) {
        std::visit([&](auto& e) { e.tick += from; }, event);
        if (auto* action = std::get_if<session::TimedAction>(&event)) {
          action->number = ++number;
          recorder.seeAction(*action);
        } else if (auto* frame = std::get_if<unit::Frame>(&event)) {
          recorder.seeFrame(*frame);
        } else {
          recorder.seeHash(std::get<session::StateHash>(event));
        }
      }
    recorder.close({end, "finished", true, "{}", {}});
    return file;
  }

  void timeSeeking(nlohmann::json& found) {
    const session::Store store(makeLong());
    std::minstd_rand random(5);  // NOLINT: any moments do
    double worst = 0, sum = 0;
    constexpr int kSeeks = 200;
    for (int k = 0; k < kSeeks; ++k) {
      const auto tick = static_cast<std::int64_t>(random() % 720'000);
      const double began = now();
      if (!store.findFrame(tick)) throw std::runtime_error("no frame");
      const double took = (now() - began) * 1e3;
      worst = std::max(worst, took);
      sum += took;
    }
    found["frame_seek_ms"] = sum / kSeeks;
    found["frame_seek_worst_ms"] = worst;
  }

  void timeShelf(int files, nlohmann::json& found) {
    const fs::path shelf = folder_ / "shelf";
    for (int k = 0; k < files; ++k) {
      const fs::path part = shelf / fmt::format("{:02}", k % 50);
      fs::create_directories(part);
      // Another name for the same file: the disk of this machine is not what is measured.
      fs::create_hard_link(one_, part / fmt::format("{:05}.cabsession", k));
    }
    review::ShelfOptions options;
    options.cache_folder = folder_ / "cache";
    double began = now();
    const std::size_t opened = review::openShelf({shelf}, options).opened;
    found["shelf_first_s"] = now() - began;
    began = now();
    const auto again = review::openShelf({shelf}, options);
    found["shelf_10000_s"] = (now() - began) * 10'000 / files;
    if (opened != static_cast<std::size_t>(files) || again.opened != 0)
      throw std::runtime_error("the shelf's cache does not work");
    found["shelf_files"] = files;
  }

  void timeMarking(nlohmann::json& found) {
    const std::vector<fs::path> files(12, one_);
    const double began = now();
    std::size_t passed = 0;
    review::markMany(files, [&](const review::MarkedSession& marked) {
      passed += marked.passed ? 1 : 0;
      return true;
    });
    found["marks_per_s"] = static_cast<double>(files.size()) / (now() - began);
    found["marked_minutes_each"] = static_cast<double>(last_) / 6000;
    if (passed != files.size()) throw std::runtime_error("a session was not marked as passed");
  }

  fs::path folder_, one_;
  session::SessionHeader header_;
  Notebook book_;
  std::int64_t last_ = 0;
};

}  // namespace

int main(int count, char** words) {
  bool json = false;
  int files = 10'000;
  for (int k = 1; k < count; ++k) {
    if (std::strcmp(words[k], "--json") == 0) json = true;
    if (std::strcmp(words[k], "--files") == 0 && k + 1 < count) files = std::atoi(words[++k]);
  }
  try {
    const nlohmann::json found = Bench().run(std::max(files, 1));
    if (json) {
      fmt::print("{}\n", found.dump(2));
      return 0;
    }
    for (const auto& [key, value] : found.items()) fmt::print("{:<22} {}\n", key, value.dump());
    return 0;
  } catch (const std::exception& error) {
    fmt::print(stderr, "review_bench: {}\n", error.what());
    return 1;
  }
}
