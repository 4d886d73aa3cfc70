// SPDX-License-Identifier: GPL-3.0-or-later
#include "session/changes.h"

#include <fmt/format.h>

#include <algorithm>

#include "session/live_run.h"
#include "unit/frame_fill.h"
#include "unit/perception.h"

namespace cabwright::session {
namespace {

using unit::Signal;

constexpr int kMostSentences = 3;  // of one moment; a lamp test lights them all

std::string readingText(float value, bool whole, const std::string& unit) {
  const double step = whole ? 1.0 : 0.5;
  const auto steps = static_cast<std::int64_t>(static_cast<double>(value) / step + 0.5);
  return fmt::format("{:g} {}", static_cast<double>(steps) * step, unit);
}

// "3-3" of 33.
std::string codeText(float code) {
  std::string text;
  for (const char digit : fmt::format("{:.0f}", code)) {
    if (!text.empty()) text += '-';
    text += digit;
  }
  return text;
}

}  // namespace

ChangeWatch::ChangeWatch(const unit::Unit& unit) { settle(unit); }

// All that can be perceived here is taken as it is now.
void ChangeWatch::settle(const unit::Unit& unit) {
  const unit::Frame& frame = unit.frame();
  place_ = unit.world().trainee.place;
  walking_ = unit.world().trainee.walking;
  light_ = unit::hasLight(unit.world());
  words_age_ = frame[Signal::kHeardWordsAge];
  bell_age_ = frame[Signal::kHeardBellAge];
  look_item_ = frame[Signal::kLookItem];
  look_done_ = frame[Signal::kLookSeconds] >= frame[Signal::kLookNeeded];
  edges_.clear();
  needles_.clear();
  perceivable_.clear();
  if (!walking_) perceivable_ = unit.perceivable(place_).signals;
  watchOutside();
  watchCab();
  watchEngines();
  const std::string said = said_;
  const int count = count_;
  signal_ = -1;
  signal_name_.clear();
  seeSignal(unit);
  for (Edge& edge : edges_) edge.on = frame[edge.signal] >= edge.on_from;
  for (Needle& needle : needles_) seeNeedle(needle, frame);
  said_ = said;
  count_ = count;
}

void ChangeWatch::addEdge(const std::string& name, float on_from, float off_below,
                          std::string begins, std::string ends) {
  const auto signal = unit::findSignal(name);
  const bool by_hand = signal && unit::signalInfo(*signal).layer == unit::Layer::kDone;
  if (!signal || (!by_hand && std::ranges::find(perceivable_, *signal) == perceivable_.end()))
    return;
  edges_.push_back({*signal, on_from, off_below, std::move(begins), std::move(ends)});
}

void ChangeWatch::addNeedle(const std::string& name, Needle needle) {
  const auto signal = unit::findSignal(name);
  if (!signal || std::ranges::find(perceivable_, *signal) == perceivable_.end()) return;
  needle.signal = *signal;
  needles_.push_back(std::move(needle));
}

void ChangeWatch::watchOutside() {
  addEdge("heard.fire_bell", 0.5F, 0.5F, "The fire bell rings.", "The fire bell is silent again.");
  addEdge("heard.thump", 0.5F, 0.5F, "A thump: a final drive goes into mesh.", "");
  addEdge("heard.rattle", 0.5F, 0.5F, "Dog teeth rattle.", "The rattle stops.");
  addEdge("heard.hiss", 0.4F, 0.1F, "Air hisses.", "The hissing stops.");
  addEdge("smelled.hot", 0.3F, 0.1F, "It smells of hot lining.", "");
  addEdge("seen.moving", 0.5F, 0.5F, "The unit moves.", "The unit comes to a stand.");
  for (const char* side : {"side1", "side2", "trailer1", "trailer2"})
    addEdge(std::string(side) + ".blocks_on", 0.5F, 0.1F, "The blocks here go on.",
            "The blocks here come off.");
}

void ChangeWatch::watchCab() {
  if (walking_ || unit::cabOf(place_) < 0) return;
  const std::string cab(unit::placeInfo(place_).name);
  const auto lamp = [&](const char* name, const char* words) {
    addEdge(cab + name, 0.5F, 0.5F, fmt::format("The {} is lit.", words),
            fmt::format("The {} goes out.", words));
  };
  lamp(".lamp_fire", "fire lamp");
  lamp(".lamp_engine1", "lamp of engine 1");
  lamp(".lamp_engine2", "lamp of engine 2");
  lamp(".lamp_air", "air lamp");
  lamp(".lamp_device", "device lamp");
  lamp(".lamp_charge", "charge lamp");
  addEdge(cab + ".handbrake", 0.98F, 0.02F, "The handbrake is hard on.", "The handbrake is off.");
  addNeedle(cab + ".air", {"Control air", "psi", true, 0.25F, 0.06F, 5, {{75, 0, 1}, {95, 0, 1}}});
  addNeedle(cab + ".train_pipe",
            {"The train pipe", "inHg", false, 0.4F, 0.12F, 2, {{15, 0, 0.7F}, {21, 0.2F, 1}}});
  addNeedle(cab + ".release_pipe",
            {"The release pipe", "inHg", false, 0.4F, 0.12F, 2, {{25, 0, 0.7F}}});
}

void ChangeWatch::watchEngines() {
  if (walking_) return;
  const std::string here(unit::placeInfo(place_).name);
  for (int line = 0; line < plant::kLines; ++line) {
    const std::string n = std::to_string(line + 1), engine = "engine" + n;
    // Who is out of hearing may have a tachometer.
    const bool hears = unit::contains(unit::hearingOfEngine(line), place_);
    std::string note = hears ? "heard." : here;
    note += hears ? engine : ".rpm" + n;
    addEdge(engine + ".fire", 0.5F, 0.5F, "Fire at engine " + n + ".", "The fire is out.");
    addEdge(note, 50, 20, "Engine " + n + " turns.", "Engine " + n + " stops.");
    addEdge(note, 330, 200, "Engine " + n + " runs.", "");
    addEdge(engine + ".smoke", 0.4F, 0.1F, "", "The white smoke of engine " + n + " clears.");
    addNeedle(engine + ".oil_gauge",
              {"The oil pressure of engine " + n, "psi", true, 1e9F, 0, 0, {{10, 0, 2}}});
  }
}

void ChangeWatch::say(const std::string& sentence) {
  if (sentence.empty() || ++count_ > kMostSentences) return;
  if (!said_.empty()) said_ += ' ';
  said_ += sentence;
}

std::optional<std::string> ChangeWatch::see(const unit::Unit& unit) {
  const unit::Frame& frame = unit.frame();
  seeWords(frame);
  seeFeetAndEyes(unit);
  const unit::TraineeState& t = unit.world().trainee;
  const bool moved = t.walking != walking_ || t.place != place_;
  if (moved || unit::hasLight(unit.world()) != light_) {
    settle(unit);  // from here other things are seen: they are as they are
  } else {
    seeSignal(unit);
    for (Edge& edge : edges_) seeEdge(edge, frame);
    for (Needle& needle : needles_) seeNeedle(needle, frame);
  }
  if (said_.empty()) return std::nullopt;
  count_ = 0;
  return std::exchange(said_, {});
}

// What is new has an age that went back.
void ChangeWatch::seeWords(const unit::Frame& frame) {
  const float words_age = frame[Signal::kHeardWordsAge], bell_age = frame[Signal::kHeardBellAge];
  const auto reply = static_cast<unit::Reply>(static_cast<int>(frame[Signal::kHeardWords]));
  if (words_age < words_age_ && reply != unit::Reply::kNone) {
    std::string words(unit::wordsOf(reply));
    if (reply == unit::Reply::kRearReading)
      words += fmt::format(": {:.1f} inHg", frame[Signal::kRearRead]);
    say("Somebody answers: " + words + ".");
  }
  if (bell_age < bell_age_) say("The guard gives " + codeText(frame[Signal::kHeardBell]) + ".");
  words_age_ = words_age;
  bell_age_ = bell_age;
}

void ChangeWatch::seeFeetAndEyes(const unit::Unit& unit) {
  const unit::Frame& frame = unit.frame();
  if (walking_ && !unit.world().trainee.walking) say("You are there.");
  const float item = frame[Signal::kLookItem];
  const bool done = frame[Signal::kLookSeconds] >= frame[Signal::kLookNeeded];
  if (item > 0 && done && (item != look_item_ || !look_done_)) say("You have looked long enough.");
  look_item_ = item;
  look_done_ = done;
}

void ChangeWatch::seeSignal(const unit::Unit& unit) {
  const int cab = unit::cabOf(place_);
  if (walking_ || cab < 0) return;
  const float shown = unit.frame()[cab == 0 ? Signal::kCab1Signal : Signal::kCab2Signal];
  std::size_t index = 0;
  const unit::RouteSignal* ahead =
      unit::findSignalAhead(unit.route(), unit::calcFront(unit.readings(), cab), cab, index);
  const std::string name = ahead != nullptr && shown >= 0 ? ahead->name : "";
  if (!name.empty() && (name != signal_name_ || shown != signal_)) {
    const char* says = shown > 0.5F ? "clear" : "danger";
    say(name == signal_name_ ? fmt::format("Signal {} shows {}.", name, says)
                             : fmt::format("Signal {} is in sight and shows {}.", name, says));
  }
  signal_ = shown;
  signal_name_ = name;
}

void ChangeWatch::seeEdge(Edge& edge, const unit::Frame& frame) {
  const float value = frame[edge.signal];
  if (!edge.on && value >= edge.on_from) {
    edge.on = true;
    say(edge.begins);
  } else if (edge.on && value < edge.off_below) {
    edge.on = false;
    say(edge.ends);
  }
}

void ChangeWatch::seeNeedle(Needle& needle, const unit::Frame& frame) {
  const float value = frame[needle.signal];
  for (Figure& figure : needle.figures) {
    const bool reached = figure.from < 0 && value >= figure.at - figure.short_of;
    const bool fallen = figure.from > 0 && value <= figure.at;
    if (reached || fallen) {
      say(fmt::format("{} {} {:g} {}.", needle.name, reached ? "reaches" : "falls to", figure.at,
                      needle.unit));
      needle.said_at = figure.at;
      figure.from = 0;
    }
    if (value < figure.at - figure.band) figure.from = -1;
    if (value > figure.at + figure.band) figure.from = 1;
  }
  seeRest(needle, value);
}

// Against the value five seconds ago.
void ChangeWatch::seeRest(Needle& needle, float value) {
  float& oldest = needle.past[needle.seen % kRestSamples];
  const float change = needle.seen < kRestSamples ? 0 : value - oldest;
  const float moved = change < 0 ? -change : change;
  oldest = value;
  ++needle.seen;
  const float before = value - change;
  if (moved > needle.moves && !needle.moving) {
    needle.moving = true;
    needle.moved_from = before;
  } else if (needle.moving && moved < needle.rests) {
    needle.moving = false;
    // A figure just said is not said twice.
    const float near = needle.whole ? 1.5F : 0.6F;
    const float far = value - needle.moved_from;
    const bool little = far < needle.least && far > -needle.least;
    const bool told =
        needle.said_at && value - *needle.said_at < near && *needle.said_at - value < near;
    needle.said_at.reset();
    if (!told && !little)
      say(fmt::format("{} stands at {}.", needle.name,
                      readingText(value, needle.whole, needle.unit)));
  }
}

PassResult passUntilChange(LiveRun& live, ChangeWatch& watch, std::int64_t most_ticks) {
  PassResult result;
  while (result.ticks < most_ticks && live.advance(1) == 1) {
    ++result.ticks;
    if (live.tick() % kFrameTicks != 0) continue;
    if ((result.what = watch.see(live.unit()))) break;
  }
  return result;
}

}  // namespace cabwright::session
