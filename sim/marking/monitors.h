// SPDX-License-Identifier: GPL-3.0-or-later
// One monitor for each family of rules. All are values with the same three calls:
//   passTime  deadlines before a tick, told before anything of that tick arrives
//   advance   something arrives: a Frame or an act
//   finish    the run is over
// and isPendingBad: it would be broken if the run ended now; and look: what it waits for, nothing
// when it is done with (monitors_outlook.cpp).
#pragma once

#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "marking/ledger.h"
#include "marking/outlook.h"
#include "marking/window.h"

namespace cabwright::marking {

/// Occasions of an event, as far as a window back from now can still reach them: the latest that is
/// at least lo ticks old, and all younger ones.
class RecentTimes {
 public:
  void push(std::int64_t tick) { ticks_.push_back(tick); }
  void clear() { ticks_.clear(); }
  /// Forgets what a younger one has replaced.
  void ripen(std::int64_t latest);
  [[nodiscard]] std::optional<std::int64_t> oldest() const {
    return ticks_.empty() ? std::nullopt : std::optional(ticks_.front());
  }
  [[nodiscard]] std::optional<std::int64_t> youngest() const {
    return ticks_.empty() ? std::nullopt : std::optional(ticks_.back());
  }
  /// The one nearest to `latest` from below, or else the one next above it.
  [[nodiscard]] std::optional<std::int64_t> above(std::int64_t latest) const;

 private:
  std::deque<std::int64_t> ticks_;
};

/// precedence, alternate_precedence, chain_precedence: judged at b.
class BeforeMonitor {
 public:
  explicit BeforeMonitor(const CompiledRule&) {}
  void passTime(const CompiledRule&, const Scene&, Ledger&, std::int64_t) {}
  void advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void finish(const CompiledRule&, const Scene&, Ledger&) {}
  [[nodiscard]] bool isPendingBad() const { return false; }
  [[nodiscard]] std::optional<Outlook> look(const CompiledRule& rule, const Scene& scene) const;

 private:
  [[nodiscard]] Ruling judge(const CompiledRule& rule, const Scene& scene);
  RecentTimes a_;
  std::optional<std::int64_t> last_b_;
  std::string last_a_way_;
  bool judged_ = false;
};

/// response, alternate_response.
class ResponseMonitor {
 public:
  explicit ResponseMonitor(const CompiledRule&) {}
  void passTime(const CompiledRule& rule, const Scene& scene, Ledger& ledger, std::int64_t tick);
  void advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void finish(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  [[nodiscard]] bool isPendingBad() const { return !open_.empty(); }
  [[nodiscard]] std::optional<Outlook> look(const CompiledRule& rule, const Scene& scene) const;

 private:
  struct Open {
    std::int64_t tick;
    std::string act;
    bool early;  ///< b came too early, by no more than the slack
  };
  void close(const CompiledRule& rule, const Scene& scene, Ledger& ledger, std::size_t way);
  std::deque<Open> open_;
};

/// absence, existence.
class CountMonitor {
 public:
  explicit CountMonitor(const CompiledRule& rule) : active_(!rule.during) {}
  void passTime(const CompiledRule& rule, const Scene& scene, Ledger& ledger, std::int64_t tick);
  void advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void finish(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  [[nodiscard]] bool isPendingBad() const { return pending_bad_; }
  [[nodiscard]] std::optional<Outlook> look(const CompiledRule& rule, const Scene& scene) const;

 private:
  void countAbsence(const CompiledRule& rule, const Scene& scene, Ledger& ledger, std::size_t way);
  void countExistence(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                      std::size_t way);
  void missExistence(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                     std::int64_t tick);
  bool active_;
  bool done_ = false, pending_bad_ = false;
  std::optional<std::int64_t> start_;
  int count_ = 0;
};

/// co_existence, not_co_existence, not_succession.
class PairMonitor {
 public:
  explicit PairMonitor(const CompiledRule&) {}
  void passTime(const CompiledRule&, const Scene&, Ledger&, std::int64_t) {}
  void advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void finish(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  [[nodiscard]] bool isPendingBad() const { return pending_bad_; }
  [[nodiscard]] std::optional<Outlook> look(const CompiledRule& rule, const Scene& scene) const;

 private:
  void seeCoExistence(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void seeSuccession(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                     std::optional<std::size_t> way);
  std::optional<std::int64_t> first_a_, first_b_;
  bool pending_bad_ = false;
  RecentTimes a_;
};

/// order.
class OrderMonitor {
 public:
  explicit OrderMonitor(const CompiledRule& rule)
      : done_(rule.steps.size()), named_(rule.steps.size(), false) {}
  void passTime(const CompiledRule&, const Scene&, Ledger&, std::int64_t) {}
  void advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void finish(const CompiledRule&, const Scene&, Ledger&) {}
  [[nodiscard]] bool isPendingBad() const { return false; }
  [[nodiscard]] std::optional<Outlook> look(const CompiledRule& rule, const Scene& scene) const;
  /// Each step out of its place.
  [[nodiscard]] std::vector<std::string> makeDetails(const CompiledRule& rule, bool finished) const;

 private:
  void seeStep(const CompiledRule& rule, const Scene& scene, Ledger& ledger, std::size_t step,
               std::size_t way);
  std::vector<std::optional<std::int64_t>> done_;
  std::vector<bool> named_;  ///< already said to be missing
  std::vector<std::string> details_;
};

/// sequence: judged at b.
class SequenceMonitor {
 public:
  explicit SequenceMonitor(const CompiledRule&) {}
  void passTime(const CompiledRule&, const Scene&, Ledger&, std::int64_t) {}
  void advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void finish(const CompiledRule&, const Scene&, Ledger&) {}
  [[nodiscard]] bool isPendingBad() const { return false; }
  [[nodiscard]] std::optional<Outlook> look(const CompiledRule& rule, const Scene& scene) const;

 private:
  [[nodiscard]] Ruling judge(const CompiledRule& rule, const Scene& scene) const;
  void follow(const CompiledRule& rule, const Scene& scene);
  std::size_t next_ = 0;                     ///< the step that is waited for
  std::size_t furthest_ = 0;                 ///< steps done in the best try
  std::optional<std::int64_t> complete_at_;  ///< the last time the last step came
  bool judged_ = false;
};

/// all_before: judged at b.
class AllBeforeMonitor {
 public:
  explicit AllBeforeMonitor(const CompiledRule& rule) : done_(rule.steps.size()) {}
  void passTime(const CompiledRule&, const Scene&, Ledger&, std::int64_t) {}
  void advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void finish(const CompiledRule&, const Scene&, Ledger&) {}
  [[nodiscard]] bool isPendingBad() const { return false; }
  [[nodiscard]] std::optional<Outlook> look(const CompiledRule& rule, const Scene& scene) const;

 private:
  [[nodiscard]] Ruling judge(const CompiledRule& rule, const Scene& scene);
  std::vector<RecentTimes> done_;
  bool judged_ = false;
};

/// never_while, limit: over signals, with a least duration.
class SustainMonitor {
 public:
  explicit SustainMonitor(const CompiledRule& rule);
  void passTime(const CompiledRule&, const Scene&, Ledger&, std::int64_t) {}
  void advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void finish(const CompiledRule&, const Scene&, Ledger&) {}
  [[nodiscard]] bool isPendingBad() const { return false; }
  [[nodiscard]] std::optional<Outlook> look(const CompiledRule& rule, const Scene& scene) const;
  /// The most robust breach so far, lasting or not: its negative is the margin of the line.
  [[nodiscard]] const Robust& worst() const { return worst_; }
  [[nodiscard]] std::optional<double> correctedAfterSeconds() const;

 private:
  void note(const CompiledRule& rule, const Scene& scene, Ledger& ledger, bool inside);
  void judge(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void endBreach(std::int64_t tick);
  void follow(std::int64_t tick, const Robust& bad);
  [[nodiscard]] std::optional<std::int64_t> expectBreach(std::int64_t tick, double room) const;
  /// How far it was from a breach, once a second, to see where that is going.
  struct Sample {
    std::int64_t tick;
    double room;
  };
  static constexpr std::int64_t kTrendTicks = 100;
  std::optional<Sample> older_, newer_;
  PastWindow breach_, beyond_;  ///< of the limit; of the tolerance as well
  Robust worst_ = Robust::never();
  std::optional<std::int64_t> since_;  ///< when the present breach began
  bool noted_breach_ = false, noted_beyond_ = false;
  std::optional<std::int64_t> corrected_after_;
};

/// hold_for, once_within, held_since: judged at b, on what signals did before.
class SignalBeforeMonitor {
 public:
  explicit SignalBeforeMonitor(const CompiledRule& rule);
  void passTime(const CompiledRule&, const Scene&, Ledger&, std::int64_t) {}
  void advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void finish(const CompiledRule&, const Scene&, Ledger&) {}
  [[nodiscard]] bool isPendingBad() const { return false; }
  [[nodiscard]] std::optional<Outlook> look(const CompiledRule& rule, const Scene& scene) const;

 private:
  using Past = std::variant<PastWindow, Since>;
  [[nodiscard]] static Past makePast(const CompiledRule& rule, std::int64_t slack);
  [[nodiscard]] static Robust calc(Past& past, std::int64_t tick, bool whole);
  void push(const CompiledRule& rule, const Scene& scene, bool a_comes);
  [[nodiscard]] Ruling judge(const CompiledRule& rule, const Scene& scene);
  void judgeHoldFor(const CompiledRule& rule, const Scene& scene, Ruling& ruling) const;
  Past strict_, loose_;
  std::optional<std::int64_t> holds_since_;  ///< c without a break up to now
  std::optional<std::int64_t> last_a_;
  bool judged_ = false;
};

/// hold_after, reach_within: judged on what signals do after a.
class SignalAfterMonitor {
 public:
  explicit SignalAfterMonitor(const CompiledRule& rule);
  void passTime(const CompiledRule& rule, const Scene& scene, Ledger& ledger, std::int64_t tick);
  void advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void finish(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  [[nodiscard]] bool isPendingBad() const { return reach_ && next_ < open_.size(); }
  [[nodiscard]] std::optional<Outlook> look(const CompiledRule& rule, const Scene& scene) const;

 private:
  struct Open {
    std::int64_t tick;
    std::string act, way;
    bool from_next;  ///< what holds at its own tick does not count
    bool closed;     ///< ruled before its window has passed
  };
  void ask(const CompiledRule& rule, const Scene& scene, std::size_t way);
  void closeReached(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void closeFailed(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void pairAnswers(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
                   const FutureWindow::Answer& loose);
  bool reach_;
  FutureWindow strict_, loose_;
  std::deque<FutureWindow::Answer> strict_answers_;
  std::deque<Open> open_;  ///< as many as `loose_` has still to answer
  std::size_t next_ = 0;   ///< the first of them that can still be closed early
};

/// hold_until. While one a is open another opens nothing new.
class HoldUntilMonitor {
 public:
  explicit HoldUntilMonitor(const CompiledRule&) {}
  void passTime(const CompiledRule& rule, const Scene& scene, Ledger& ledger, std::int64_t tick);
  void advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void finish(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  [[nodiscard]] bool isPendingBad() const { return strict_.has_value(); }
  [[nodiscard]] std::optional<Outlook> look(const CompiledRule& rule, const Scene& scene) const;

 private:
  void close(const CompiledRule& rule, const Scene& scene, Ledger& ledger, Ruling ruling);
  void seeStep(const CompiledRule& rule, const Scene& scene, Ledger& ledger,
               std::optional<std::size_t> b_way);
  std::optional<Until> strict_, loose_;
  std::string act_;
  bool by_act_ = false;
};

/// fall_told: judged at b, on how far a signal has fallen since c began to hold.
class FallToldMonitor {
 public:
  explicit FallToldMonitor(const CompiledRule&) {}
  void passTime(const CompiledRule&, const Scene&, Ledger&, std::int64_t) {}
  void advance(const CompiledRule& rule, const Scene& scene, Ledger& ledger);
  void finish(const CompiledRule&, const Scene&, Ledger&) {}
  [[nodiscard]] bool isPendingBad() const { return false; }
  [[nodiscard]] std::optional<Outlook> look(const CompiledRule& rule, const Scene& scene) const;

 private:
  struct Start {
    std::int64_t tick;
    double value;
  };
  [[nodiscard]] Ruling judge(const CompiledRule& rule, const Scene& scene) const;
  std::optional<Start> start_;  ///< of the stretch in which c has held without a break
  bool judged_ = false;
};

using Monitor =
    std::variant<BeforeMonitor, ResponseMonitor, CountMonitor, PairMonitor, OrderMonitor,
                 SequenceMonitor, AllBeforeMonitor, SustainMonitor, SignalBeforeMonitor,
                 SignalAfterMonitor, HoldUntilMonitor, FallToldMonitor>;

[[nodiscard]] Monitor makeMonitor(const CompiledRule& rule);

}  // namespace cabwright::marking
