// SPDX-License-Identifier: GPL-3.0-or-later
// What the tests measure sound with.
#pragma once

#include <functional>
#include <span>
#include <vector>

#include "hearing/scene.h"
#include "hearing/synth.h"

namespace cabwright::hearing::testing {

inline constexpr int kRate = 48000;
using Mono = std::vector<double>;

/// Amplitude of the part at this frequency, by Goertzel's recurrence over Hann-windowed samples;
/// what is 2 / duration away or further does not show.
[[nodiscard]] double calcAmplitude(std::span<const double> samples, double frequency_hz,
                                   double sample_rate = kRate);
/// The strongest of low, low + step, .. high.
[[nodiscard]] double findStrongest(std::span<const double> samples, double low_hz, double high_hz,
                                   double step_hz, double sample_rate = kRate);
[[nodiscard]] double calcRms(std::span<const double> samples);
[[nodiscard]] double calcPeak(std::span<const double> samples);
/// The largest difference of two samples that follow each other.
[[nodiscard]] double calcLargestStep(std::span<const double> samples);
/// Root mean square of each stretch of this length.
[[nodiscard]] Mono calcEnvelope(std::span<const double> samples, double stretch_s);
/// Times the envelope rises above `on` after having been below `off`.
[[nodiscard]] int countRises(std::span<const double> envelope, double on, double off);
/// Power above a frequency, share of all, by two high passes of first order in a row.
[[nodiscard]] double calcShareAbove(std::span<const double> samples, double frequency_hz);

/// Renders a scene for some seconds, one of the two sides.
[[nodiscard]] Mono render(Synth& synth, double seconds, int side = 0);
/// The same with the scene of each hundredth of a second.
[[nodiscard]] Mono renderScenes(Synth& synth, double seconds,
                                const std::function<HeardScene(double)>& scene_at);
/// A scene rendered by a fresh synthesiser, without its first second.
[[nodiscard]] Mono renderSteady(const HeardScene& scene, double seconds, int side = 0);

/// Engine 1 alone, straight ahead and in the open.
[[nodiscard]] HeardScene oneEngine(double rpm, double evenness = 1.0, double load = 0.3);
[[nodiscard]] HeardScene loudest();

}  // namespace cabwright::hearing::testing
