// SPDX-License-Identifier: GPL-3.0-or-later
#include "plant/drive.h"

#include <algorithm>
#include <cmath>

#include "quantity/elementary.h"
#include "quantity/units.h"

namespace cabwright::plant {

namespace q = cabwright::quantity;

double calcCouplingLambda(const CouplingParameters& p, double slip) {
  return p.lambda_flat * slip / (std::abs(slip) + p.lambda_knee);
}

double calcCouplingTorque(const CouplingParameters& p, double pump, double turbine) {
  const double faster = std::max(std::abs(pump), std::abs(turbine));
  if (faster == 0.0) return 0.0;
  const double d2 = p.diameter_m * p.diameter_m;
  const double d5 = d2 * d2 * p.diameter_m;
  return p.fill * calcCouplingLambda(p, (pump - turbine) / faster) * p.density_kg_m3 * d5 * faster *
         faster;
}

std::array<DrumMix, kBands> calcDrumMixes(const std::array<SimpleSet, 3>& sets) {
  std::array<DrumMix, kBands> drums;
  DrumMix carrier{0.0, 1.0};  // of set 1: the output
  for (std::size_t n = 0; n < drums.size(); ++n) {
    const auto [of_sun, of_carrier] = sets[n].annulusMix();
    drums[n] = {of_sun + of_carrier * carrier.in, of_carrier * carrier.out};
    carrier = drums[n];
  }
  return drums;
}

std::array<DrumMix, kBands> calcDrumMixes(const GearboxParameters& p) {
  return calcDrumMixes({SimpleSet{p.sun_1, p.annulus_1}, SimpleSet{p.sun_2, p.annulus_2},
                        SimpleSet{p.sun_3, p.annulus_3}});
}

double calcTensionRatio(double friction, double wrap_rad) { return q::detExp(friction * wrap_rad); }

BandGain calcBandGain(double friction, double wrap_rad, double drum_radius_m) {
  const double ratio = calcTensionRatio(friction, wrap_rad);
  return {drum_radius_m * (ratio - 1.0), drum_radius_m * (1.0 - 1.0 / ratio)};
}

double calcFade(double temperature_c, double fade_c, double fade_span_k) {
  if (temperature_c <= fade_c) return 1.0;
  return fade_span_k / (fade_span_k + temperature_c - fade_c);
}

double calcDryness(const GearboxParameters& p) {
  return std::clamp(1.0 - p.oil_level / p.oil_enough, 0.0, 1.0);
}

ShiftVolumes calcShiftVolumes(const FinalDriveParameters& p, double sleeve_m) {
  const double moved = std::clamp(sleeve_m, -p.travel_m, p.travel_m);
  return {p.dead_m3 + p.piston_m2 * (p.travel_m + moved),
          p.dead_m3 + p.piston_m2 * (p.travel_m - moved)};
}

double calcDogSpeedLimit(const FinalDriveParameters& p) {
  return q::degToRad(p.window_deg) * p.sleeve_mps / p.overlap_m;
}

double calcDogChance(const FinalDriveParameters& p, double relative_rad_per_s) {
  const double pitch = 2.0 * q::kPi / p.teeth;
  const double usable =
      q::degToRad(p.window_deg) - std::abs(relative_rad_per_s) * p.overlap_m / p.sleeve_mps;
  return std::max(0.0, usable / pitch);
}

}  // namespace cabwright::plant
