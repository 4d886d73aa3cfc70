// SPDX-License-Identifier: GPL-3.0-or-later
// What changes around the trainee, in plain sentences: for who lets time pass until something
// happens. Only what can be seen and heard from where the trainee is counts, as it is shown there.
//
// Said are: lamps and bells, words, arrivals, looks that have been long enough, engines that turn,
// run and stop, thumps and fires, signals, blocks and handbrakes; figures that matter on a needle
// as it passes them, and needles that have been moving and come to rest.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "unit/unit.h"

namespace cabwright::session {

class LiveRun;

class ChangeWatch {
 public:
  /// From now on: what is so already is no change.
  explicit ChangeWatch(const unit::Unit& unit);

  /// To be called every tenth tick. What has changed since the last call: a sentence, or those of
  /// the same moment one after the other; empty if nothing that matters did.
  [[nodiscard]] std::optional<std::string> see(const unit::Unit& unit);

 private:
  static constexpr std::size_t kRestSamples = 50;  // 5 s of every tenth tick

  /// Something that is on or off, with a level for each so that it does not flutter.
  struct Edge {
    unit::Signal signal;
    float on_from, off_below;
    std::string begins, ends;  ///< empty: not said
    bool on = false;
  };
  /// A figure of a needle. It is passed when the needle comes to it from further away than `band`.
  struct Figure {
    float at, short_of;  ///< a rising needle is taken to be there that little before
    float band;
    int from = 0;  ///< -1: it was below, 1: above, 0: near it
  };
  struct Needle {
    std::string name, unit;
    bool whole;          ///< read to one psi; else to half an inch
    float moves, rests;  ///< change in 5 s that counts as moving, as rest
    float least;         ///< way of a movement worth a word when it ends
    std::vector<Figure> figures;
    unit::Signal signal{};
    std::array<float, kRestSamples> past{};
    std::size_t seen = 0;
    bool moving = false;
    float moved_from = 0;
    std::optional<float> said_at = std::nullopt;  ///< figure said during this movement
  };

  void settle(const unit::Unit& unit);
  void watchCab();
  void watchEngines();
  void watchOutside();
  void addEdge(const std::string& name, float on_from, float off_below, std::string begins,
               std::string ends);
  void addNeedle(const std::string& name, Needle needle);
  void seeWords(const unit::Frame& frame);
  void seeFeetAndEyes(const unit::Unit& unit);
  void seeSignal(const unit::Unit& unit);
  void seeEdge(Edge& edge, const unit::Frame& frame);
  void seeNeedle(Needle& needle, const unit::Frame& frame);
  void seeRest(Needle& needle, float value);
  void say(const std::string& sentence);

  std::vector<Edge> edges_;
  std::vector<Needle> needles_;
  std::vector<unit::Signal> perceivable_;
  unit::Place place_ = unit::Place::kBooking;
  bool walking_ = false, light_ = true;
  float words_age_ = 0, bell_age_ = 0;
  float look_item_ = 0;
  bool look_done_ = false;
  float signal_ = -1;
  std::string signal_name_;
  std::string said_;
  int count_ = 0;  ///< sentences of this moment
};

struct PassResult {
  std::int64_t ticks = 0;  ///< that passed
  /// What happened; empty: nothing in that time, or the run could not go on.
  std::optional<std::string> what;
};

/// Lets time pass until something changes, `most_ticks` at most, so that a caller may show how far
/// it is and go on with the same watch. Looks every tenth of a second and never goes past a change.
[[nodiscard]] PassResult passUntilChange(LiveRun& live, ChangeWatch& watch,
                                         std::int64_t most_ticks);

}  // namespace cabwright::session
