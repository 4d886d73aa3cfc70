// SPDX-License-Identifier: GPL-3.0-or-later
// An underfloor engine with its drive line, as the plate of an engine shows it: hung from the
// solebar, cylinders lying, forward to the right. Pure drawing: a pen and plain state.
//
// Coordinates are u from the upper left corner of the plate; whoever draws engine 2 mirrors the
// pen. Words are not drawn here, so that they stay readable when it does.
#pragma once

#include <QPolygonF>
#include <QRectF>
#include <optional>

#include "drawing/pen.h"

namespace cabwright::cab {

/// Where things stand; `stretch` is the width over 1180 u, which the propeller shaft takes up.
struct EngineGeometry {
  double width = 1180;
  double stretch = 0;
  double lower = 0;  ///< how much the lower band lies deeper than drawn, u

  static constexpr double kSolebar = 36, kAxis = 188, kRail = 330, kGround = 346;
  static constexpr double kEngineFrom = 196, kEngineTo = 566;
  static constexpr QPointF kFan{69, 204};
  [[nodiscard]] QPointF wheel() const { return {1072 + stretch, 230}; }
  /// Crank in the view on the free end.
  [[nodiscard]] QPointF freeEnd() const { return {132, 590 + lower}; }
};

/// How far the machine has turned, as it is to be seen: degrees.
struct EngineTurn {
  double crank = 0, fan = 0, compressor = 0, exhauster = 0, generator = 0, shaft = 0, wheel = 0;
};

struct BeltsLook {
  bool compressor = true, exhauster = true, generator = true;
  bool guard = true;
};

struct FinalDriveLook {
  bool pin_in_sleeve = false;
  bool air_open = true;
  bool sleeve_drawn = false;  ///< by hand, to the middle
  double axle_deg = 0;
};

/// Body side, solebar with its hangers, rail and ground.
void paintUnderframe(drawing::Pen& pen, const EngineGeometry& g);
/// Casing cut along the crank centre line: bulkheads, bores, sump; and what stands on it.
void paintEngineCasing(drawing::Pen& pen);
/// Crankshaft, rods and pistons.
void paintCrankTrain(drawing::Pen& pen, double crank_deg);
void paintRadiator(drawing::Pen& pen);
void paintFan(drawing::Pen& pen, double fan_deg, bool belt);
/// Header tank; `level` is the water in its glass, 0 to 1, and nothing while nobody looks.
void paintHeaderTank(drawing::Pen& pen, std::optional<double> level);
void paintFilterAndExhaust(drawing::Pen& pen);
void paintCoupling(drawing::Pen& pen);
void paintGearbox(drawing::Pen& pen);
void paintCardanShaft(drawing::Pen& pen, const EngineGeometry& g, double shaft_deg);
void paintFinalDrive(drawing::Pen& pen, const EngineGeometry& g, const FinalDriveLook& look);
void paintFireBottle(drawing::Pen& pen, const EngineGeometry& g, bool pulled);

/// Engine behind the belts, seen on its free end.
void paintFreeEnd(drawing::Pen& pen, const EngineGeometry& g);
void paintBelts(drawing::Pen& pen, const EngineGeometry& g, const EngineTurn& turn,
                const BeltsLook& look);
/// Centres of compressor, exhauster and generator in that view.
[[nodiscard]] QPointF compressorAt(const EngineGeometry& g);
[[nodiscard]] QPointF exhausterAt(const EngineGeometry& g);
[[nodiscard]] QPointF generatorAt(const EngineGeometry& g);
/// Radii of the pulleys there: crank, compressor, exhauster, generator, u.
inline constexpr double kCrankPulleyR = 38, kCompressorPulleyR = 32, kExhausterPulleyR = 34,
                        kGeneratorPulleyR = 19;

/// Fuel tank with its bowl, and the pipe to and from the cock at that height; `box` is the tank.
void paintFuelTank(drawing::Pen& pen, const QRectF& box, double cock_y);
/// Hasp beside the isolating switch, with or without the padlock.
void paintHasp(drawing::Pen& pen, QPointF centre, bool padlock);
/// The dipstick laid out, ring at the right end: MIN stands at x + 34 and MAX at x + 184 of it.
/// `level`: wet length in those marks, 0 at MIN and 1 at MAX; nothing: not read yet.
void paintDipstick(drawing::Pen& pen, QPointF left, std::optional<double> level);
/// White smoke at the tail pipe: how thick, 0 to 1, and the phase of its drift, any number.
void paintSmoke(drawing::Pen& pen, double smoke, double phase);
void paintFlames(drawing::Pen& pen, QPointF foot, double width, double phase);
enum class PoolKind : std::uint8_t { kNone, kStain, kPool };
void paintPool(drawing::Pen& pen, PoolKind kind);
/// Somebody kneels at the engine; with his arms in it or not.
void paintPerson(drawing::Pen& pen, QPointF foot, bool arms_in);

/// Outline around circles (x, y, r), `pad` u away: a belt, a guard.
struct Round {
  QPointF centre;
  double r;
};
[[nodiscard]] QPolygonF hullAround(std::initializer_list<Round> rounds, double pad);

}  // namespace cabwright::cab
