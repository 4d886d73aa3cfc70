// SPDX-License-Identifier: GPL-3.0-or-later
// A made-up run for the tests of recorder and store: what it shows is a function of the tick, so a
// test knows every value without keeping any.
#pragma once

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "session/recorder.h"
#include "session/session_error.h"
#include "session/store.h"

namespace cabwright::session {

/// A folder of its own for each test, gone afterwards.
class Folder {
 public:
  Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "cabwright-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no temporary folder");
    path_ = name;
  }
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  [[nodiscard]] std::filesystem::path operator/(const std::string& name) const {
    return path_ / name;
  }
  [[nodiscard]] std::vector<std::string> names() const {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(path_))
      names.push_back(entry.path().filename().string());
    return names;
  }

 private:
  std::filesystem::path path_;
};

inline SessionHeader sampleHeader() {
  SessionHeader header;
  header.session_id = "11111111-2222-4333-8444-555555555555";
  header.program_version = "0.1.0";
  header.started_utc = "2031-02-03T04:05:06Z";
  header.scenario = "A sample";
  header.seed = 0xfedcba9876543210U;
  header.sources = {{"scenario", "scenario.toml", "title = \"A sample\"\n"},
                    {"vehicle", "unit.toml", std::string("with a \0 in it", 14)}};
  header.people = {{"trainee", "P. Example"}};
  return header;
}

inline unit::Frame sampleFrame(std::int64_t tick) {
  unit::Frame frame;
  frame.tick = tick;
  for (std::size_t i = 0; i < frame.value.size(); ++i) {
    const bool moves = i % 10 == 1;
    frame.value[i] = static_cast<float>(i) + (moves ? static_cast<float>(tick) / 7.0F : 0.0F);
  }
  return frame;
}

/// Shows a witness ticks first..last: frames every 0.1 s, a hash each second, and an action with
/// its frame at each tick that ends in 37.
inline void showSample(Witness& witness, std::int64_t first, std::int64_t last,
                       std::int64_t& number) {
  for (std::int64_t tick = first; tick <= last; ++tick) {
    const bool acts = tick % 100 == 37;
    if (tick % kFrameTicks == 0 || acts) witness.seeFrame(sampleFrame(tick));
    if (tick % kHashTicks == 0)
      witness.seeHash({tick, 0x9e3779b97f4a7c15U * static_cast<std::uint64_t>(tick + 1)});
    if (!acts) continue;
    ++number;
    const unit::Actor actor = number % 2 == 0 ? unit::Actor::kGuard : unit::Actor::kTrainee;
    witness.seeAction({tick, number, number % 2 == 0, {actor, "say", "ready", "to start"}});
  }
}

inline Closing sampleClosing(std::int64_t tick) {
  return {tick,
          "finished",
          true,
          "{\"passed\":true}",
          {{"rule-1", "met", 100, 1.5, "psi", "because"},
           {"rule-2", "not exercised", 0, std::nullopt, "", "it did not come to that"}}};
}

/// Keeps all it is shown.
class Notebook final : public Witness {
 public:
  void seeFrame(const unit::Frame& frame) override { events.emplace_back(frame); }
  void seeAction(const TimedAction& action) override { events.emplace_back(action); }
  void seeHash(const StateHash& hash) override { events.emplace_back(hash); }
  std::vector<RecordedEvent> events;
};

inline bool same(const RecordedEvent& a, const RecordedEvent& b) {
  if (a.index() != b.index()) return false;
  if (const auto* frame = std::get_if<unit::Frame>(&a)) {
    const auto& other = std::get<unit::Frame>(b);
    return frame->tick == other.tick && frame->value == other.value;
  }
  if (const auto* action = std::get_if<TimedAction>(&a)) return *action == std::get<TimedAction>(b);
  return std::get<StateHash>(a) == std::get<StateHash>(b);
}

inline std::string slurp(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

inline void spill(const std::filesystem::path& file, const std::string& bytes) {
  std::ofstream(file, std::ios::binary | std::ios::trunc) << bytes;
}

/// The message of the SessionError thrown; empty when none was.
template <class Act>
std::string errorOf(Act act) {
  try {
    static_cast<void>(act());
  } catch (const SessionError& error) {
    return error.what();
  }
  return {};
}

/// Reads everything there is to read.
inline std::vector<RecordedEvent> readAll(const std::filesystem::path& file) {
  const Store store(file);
  Notebook notebook;
  store.show(notebook);
  return std::move(notebook.events);
}

}  // namespace cabwright::session
