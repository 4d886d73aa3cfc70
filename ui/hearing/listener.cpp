// SPDX-License-Identifier: GPL-3.0-or-later
#include "hearing/listener.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace cabwright::hearing {

namespace {

constexpr double kEveryS = 0.1;     // notes are kept this often
constexpr double kSwingRpm = 25.0;  // a swing that is heard as one
constexpr int kSwings = 2;          // turns of the note, there and back, that make it hunt
constexpr double kMovesRpmS = 15.0;

}  // namespace

void Listener::hear(const HeardScene& scene, double time_s) {
  if (time_s < time_s_) *this = Listener{};
  time_s_ = time_s;
  for (std::size_t n = 0; n < notes_.size(); ++n) {
    hearNote(n, scene.engine[n].note_rpm, time_s);
    trend_.note[n] = calcNoteTrend(n);
  }
  hearEvents(scene, time_s);
  before_ = scene;
}

void Listener::hearNote(std::size_t n, double rpm, double time_s) {
  std::deque<Heard>& heard = notes_[n];
  if (rpm <= 0.0) {
    heard.clear();
    return;
  }
  while (!heard.empty() && heard.front().time_s < time_s - kNoteS) heard.pop_front();
  if (heard.empty() || time_s - heard.back().time_s > kEveryS * 0.99)
    heard.push_back({time_s, rpm});
}

void Listener::hearEvents(const HeardScene& scene, double time_s) {
  if (scene.thump && !before_.thump) thump_s_ = time_s;
  if (scene.click && !before_.click) click_s_ = time_s;
  if (scene.bell && !before_.bell) {
    trend_.strokes = time_s - stroke_s_ > kCodeS ? 1 : trend_.strokes + 1;
    stroke_s_ = time_s;
  }
  if (time_s - stroke_s_ > kCodeS) trend_.strokes = 0;
  trend_.thump_just_now = time_s - thump_s_ < kJustNowS;
  trend_.click_just_now = time_s - click_s_ < kJustNowS;
}

NoteTrend Listener::calcNoteTrend(std::size_t n) const {
  const std::deque<Heard>& heard = notes_[n];
  if (heard.size() < 5) return NoteTrend::kSteady;
  // Turns of the note, each more than a swing away from the one before.
  double extreme = heard.front().rpm;
  int turns = 0, way = 0;
  for (const Heard& h : heard) {
    const double moved = h.rpm - extreme;
    if (way == 0 && std::abs(moved) > kSwingRpm) {
      way = moved > 0.0 ? 1 : -1;
      extreme = h.rpm;
    } else if (way * moved > 0.0) {
      extreme = h.rpm;
    } else if (way != 0 && way * moved < -kSwingRpm) {
      way = -way;
      extreme = h.rpm;
      ++turns;
    }
  }
  if (turns >= kSwings) return NoteTrend::kHunting;
  // Which way it goes now: over the last second.
  const Heard& last = heard.back();
  const auto since =
      std::ranges::find_if(heard, [&](const Heard& h) { return h.time_s > last.time_s - 1.0; });
  const double seconds = last.time_s - since->time_s;
  if (seconds <= 0.0) return NoteTrend::kSteady;
  const double rate = (last.rpm - since->rpm) / seconds;
  if (std::abs(rate) < kMovesRpmS) return NoteTrend::kSteady;
  return rate > 0.0 ? NoteTrend::kRising : NoteTrend::kFalling;
}

}  // namespace cabwright::hearing
