// SPDX-License-Identifier: GPL-3.0-or-later
// What a driver sees from the cab, drawn: the line ahead in one-point perspective, what lies at
// either side, and the guard behind. Pure drawing from plain values.
//
// Heights along the line are drawn steeper than they are, and the eye stands lower, so that a
// gradient and the road can be read in a shallow strip. Distances are true.
#pragma once

#include <QCoreApplication>
#include <QRectF>
#include <QString>
#include <array>

#include "drawing/pen.h"
#include "scenario/route_file.h"

namespace cabwright::cab {

/// For words of what is outside.
class Outside {
  Q_DECLARE_TR_FUNCTIONS(Outside)
};

/// Of the weather what shows through a window.
enum class Weather : std::uint8_t { kClear, kRain, kSnow, kFog };
/// From the scenario's word for it.
[[nodiscard]] Weather weatherOf(const std::string& word);

struct OutsideScene {
  const scenario::RouteFile* line = nullptr;     ///< outlives the scene
  const plant::GradeProfile* profile = nullptr;  ///< its gradients, likewise
  int cab = 0;                                   ///< 0 looks towards growing positions, 1 back
  double front_m = 0;                            ///< the cab's end along the line
  double speed_mps = 0;                          ///< without sign
  double signal = -1, signal_m = 9999;  ///< as the Frame says: 1 clear, 0 danger, -1 none in sight
  double limit_mph = 999;               ///< in force
  double mark_m = 9999;                 ///< to the next stopping mark; 9999: none
  bool dark = false;
  bool headlit = false;  ///< white lamps burn at this end
  Weather weather = Weather::kClear;
  double wiper = -1;             ///< share of its stroke; -1: at rest
  std::array<bool, 2> person{};  ///< seen at side 1, side 2
};

/// Screen x grows to the right: +1 when side 1 lies on the right of who looks out of this cab.
[[nodiscard]] inline double rightSign(int cab) { return cab == 0 ? 1 : -1; }
/// +1 towards growing positions.
[[nodiscard]] inline double facingOf(int cab) { return cab == 0 ? 1 : -1; }

/// Where a point of the line stands in the window.
class Perspective {
 public:
  Perspective(const QRectF& window, const OutsideScene& scene);
  /// `right_m` from the middle of the track, `ahead_m` (above 0) from the front, `up_m` above rail.
  [[nodiscard]] QPointF at(double right_m, double ahead_m, double up_m = 0) const;
  /// u for a metre at that distance.
  [[nodiscard]] double scaleAt(double ahead_m) const;
  /// Whether the rails there can be seen, or a summit hides them.
  [[nodiscard]] bool isVisible(double ahead_m) const;
  /// Where a level line of sight ends.
  [[nodiscard]] double horizonY() const;
  [[nodiscard]] double nearest() const { return nearest_m_; }
  [[nodiscard]] double farthest() const { return farthest_m_; }
  [[nodiscard]] const QRectF& window() const { return window_; }

 private:
  [[nodiscard]] double calcRise(double ahead_m) const;
  QRectF window_;
  const OutsideScene& scene_;
  QPointF vanishing_;
  double slope_ = 0, nearest_m_ = 5, farthest_m_ = 1500;
};

/// The window ahead, with its words.
void paintAhead(drawing::Pen& pen, const QRectF& window, const OutsideScene& scene);
/// Signals, boards and marks, and the words beside them; part of paintAhead().
void paintThingsAhead(drawing::Pen& pen, const Perspective& view, const OutsideScene& scene);
/// What the window ahead says in words, one line each: signal, limit, mark.
[[nodiscard]] QStringList describeAhead(const OutsideScene& scene);

/// The window at one side, 1 or 2 of the unit, with a word for where that is.
void paintBeside(drawing::Pen& pen, const QRectF& window, const OutsideScene& scene, int side,
                 const QString& bearing);
/// What is at that side: "platform", "other line", "path".
[[nodiscard]] QString describeBeside(const OutsideScene& scene, int side);

struct BehindScene {
  bool guard = true;      ///< there is one
  int code = 0;           ///< last code heard from behind, groups as digits; 0 none
  double age_s = 9999;    ///< since it was complete
  bool stands = false;    ///< it still means what it said
  bool answered = false;  ///< it was repeated
  bool ringing = false;   ///< just now
};
void paintBehind(drawing::Pen& pen, const QRectF& window, const BehindScene& scene);
/// "silent", "2, answered", "3-3".
[[nodiscard]] QString describeBehind(const BehindScene& scene);

/// Tones of what stands outside, by day and in the dark.
struct OutsideTones {
  drawing::Tone ground, line, pale, word, second;
};
[[nodiscard]] OutsideTones tonesOf(bool dark);

}  // namespace cabwright::cab
