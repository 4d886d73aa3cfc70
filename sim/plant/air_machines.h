// SPDX-License-Identifier: GPL-3.0-or-later
// The machines that move air: reciprocating compressor and rotary exhauster, each driven by a belt.
#pragma once

#include "plant/parameters.h"

namespace cabwright::plant {

struct AirMachineFlow {
  double mass_kg_s = 0;
  double torque_nm = 0;  ///< on the engine's crank, opposing it
};

/// Powers of the pressure ratio that a compressor needs: r^(1/n) and r^((n-1)/n).
struct CompressionPowers {
  double ratio = 1, volume = 1, work = 1;
};
[[nodiscard]] CompressionPowers calcCompressionPowers(double polytropic, double inlet_pa,
                                                      double delivery_pa);

/// Volumetric efficiency of a reciprocating compressor, 1 + c - c (p2/p1)^(1/n), not below zero.
[[nodiscard]] double calcVolumetricEfficiency(double clearance, const CompressionPowers& powers);

/// Indicated work of one cycle, J: n/(n-1) p1 V (r^((n-1)/n) - 1) with V the volume drawn in.
[[nodiscard]] double calcCompressionWork(double polytropic, double inlet_pa, double drawn_m3,
                                         const CompressionPowers& powers);

/// Compressor at crank speed (rad/s, sign ignored), delivering against delivery_pa.
[[nodiscard]] AirMachineFlow calcCompressor(const CompressorParameters& p, double crank_rad_per_s,
                                            bool loaded, double inlet_pa,
                                            const CompressionPowers& powers, double gas_k);

/// Exhauster drawing from inlet_pa: S (1 - p_ult/p) at inlet density; isothermal work over its
/// efficiency as torque. log_ratio = ln(atmosphere / inlet), not below zero.
[[nodiscard]] AirMachineFlow calcExhauster(const ExhausterParameters& p, double crank_rad_per_s,
                                           double inlet_pa, double log_ratio, double gas_k);

}  // namespace cabwright::plant
