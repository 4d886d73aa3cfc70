// SPDX-License-Identifier: GPL-3.0-or-later
// Signals in strips: those of one unit together, each with a tone and a dash of its own.
#pragma once

#include <QString>
#include <span>
#include <string_view>
#include <vector>

#include "after/strip_model.h"
#include "desk/signal_tape.h"

namespace cabwright::desk {

/// That many at once; more cannot be told apart.
inline constexpr std::size_t kMostSignals = 12;

/// Some signals that are looked at together, chosen at once.
struct Preset {
  const char* name;  ///< English; translated in the context Preset
  std::vector<unit::Signal> signals;
};
[[nodiscard]] const std::vector<Preset>& presets();
[[nodiscard]] QString nameOf(const Preset& preset);

/// What is measured in a unit: "psi" is "Pressure".
[[nodiscard]] QString quantityName(std::string_view unit);
/// What a signal is, in the reader's language: "Control air gauge, cab 1".
[[nodiscard]] QString signalText(unit::Signal signal);
/// "shown", "true", "done".
[[nodiscard]] QString layerName(unit::Layer layer);

/// Plots in the order in which their first signals were chosen; scales as of nothing measured yet.
[[nodiscard]] std::vector<after::Plot> groupSignals(std::span<const unit::Signal> signals);
/// Widens the scale so that all that was measured lies in it, in whole steps of 1, 2 or 5. True:
/// it is another now.
bool fitScale(after::Plot& plot, const SignalTape& tape);

/// A value beside a curve, without its unit: "21.0", "lap", "yes".
[[nodiscard]] QString curveValueText(const after::Plot& plot, unit::Signal signal, double value);

}  // namespace cabwright::desk
