// SPDX-License-Identifier: GPL-3.0-or-later
// Fluid coupling and epicyclic gearbox: torque law, kinematics from the teeth, band torques.
#pragma once

#include <array>

#include "plant/parameters.h"

namespace cabwright::plant {

/// Hydrodynamic coupling, all quadrants: T = lambda(s) rho w^2 D^5 with w the faster of the two
/// halves (absolute) and s = (w_pump - w_turbine)/w in [-2, 2], lambda odd:
/// lambda = a s/(|s| + b). Positive from pump to turbine, N m.
[[nodiscard]] double calcCouplingTorque(const CouplingParameters& p, double pump_rad_per_s,
                                        double turbine_rad_per_s);
[[nodiscard]] double calcCouplingLambda(const CouplingParameters& p, double slip);

/// Willis for one simple set, w_sun + k w_annulus = (1 + k) w_carrier with k = Z_annulus/Z_sun.
struct SimpleSet {
  double sun_teeth = 0, annulus_teeth = 0;
  [[nodiscard]] constexpr double k() const { return annulus_teeth / sun_teeth; }
  /// Annulus speed as a mix of sun and carrier speed: {of the sun, of the carrier}; sums to 1.
  [[nodiscard]] constexpr std::array<double, 2> annulusMix() const {
    return {-1.0 / k(), (1.0 + k()) / k()};
  }
};

/// Drum speeds of the box as in * input + out * output; in + out = 1 (all locked turns as one).
struct DrumMix {
  double in = 0, out = 0;
  [[nodiscard]] constexpr double calcSpeed(double input, double output) const {
    return in * input + out * output;
  }
  /// Input turns per output turn with this drum held.
  [[nodiscard]] constexpr double calcRatio() const { return -out / in; }
  /// Torque on the drum that holds it, per unit of input torque.
  [[nodiscard]] constexpr double calcHolding() const { return -1.0 / in; }
};

/// The three drums from the three sets: set 1's carrier is the output, set 2's carrier is set 1's
/// annulus, set 3's carrier is set 2's annulus; every sun is the input.
[[nodiscard]] std::array<DrumMix, kBands> calcDrumMixes(const std::array<SimpleSet, 3>& sets);
[[nodiscard]] std::array<DrumMix, kBands> calcDrumMixes(const GearboxParameters& p);

/// Band torque per newton at the actuated end, N m/N, by Euler-Eytelwein: r (exp(mu theta) - 1)
/// where the drum's rotation pulls the band on (energising), r (1 - exp(-mu theta)) against it.
struct BandGain {
  double energising = 0, opposing = 0;
};
[[nodiscard]] BandGain calcBandGain(double friction, double wrap_rad, double drum_radius_m);
/// Ratio of band tensions exp(mu theta).
[[nodiscard]] double calcTensionRatio(double friction, double wrap_rad);

/// Share of a lining's grip left at this temperature: 1 up to fade_c, one half at fade_c + span.
[[nodiscard]] double calcFade(double temperature_c, double fade_c, double fade_span_k);

/// How far a gearbox runs dry, 0..1: nothing down to the level whose splash still reaches
/// everything, bone dry without oil, in step between (house law: common practice knows the trend,
/// no published source for the figures).
[[nodiscard]] double calcDryness(const GearboxParameters& p);

/// Volumes of the two ends of the shift cylinder with its sleeve here (+ towards forward), m3.
struct ShiftVolumes {
  double forward_m3 = 0, reverse_m3 = 0;
};
[[nodiscard]] ShiftVolumes calcShiftVolumes(const FinalDriveParameters& p, double sleeve_m);

/// Dog clutch: greatest relative speed at which the sleeve gets far enough into a gap of
/// window_rad while it passes: window u / overlap, rad/s.
[[nodiscard]] double calcDogSpeedLimit(const FinalDriveParameters& p);
/// Chance that teeth at a random phase let the dog in at this relative speed:
/// max(0, window - w h/u)/pitch.
[[nodiscard]] double calcDogChance(const FinalDriveParameters& p, double relative_rad_per_s);

}  // namespace cabwright::plant
