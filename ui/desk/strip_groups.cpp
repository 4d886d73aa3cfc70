// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/strip_groups.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

#include "after/words.h"
#include "unit/controls.h"
#include "unit/items.h"

namespace cabwright::desk {

using drawing::Tone;
using unit::Signal;

namespace {

QString toQt(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

// How the list of signals says that 1 is all of it.
constexpr const char* kShare = ", 0..1";

struct Quantity {
  std::string_view unit;
  const char* name;
  double low, high;  ///< what a strip spans at least
};
constexpr std::array<Quantity, 21> kQuantities{{
    {"psi", QT_TRANSLATE_NOOP("Quantity", "Pressure"), 0, 100},
    {"inHg", QT_TRANSLATE_NOOP("Quantity", "Vacuum"), 0, 30},
    {"rpm", QT_TRANSLATE_NOOP("Quantity", "Turning"), 0, 1000},
    {"mph", QT_TRANSLATE_NOOP("Quantity", "Speed"), 0, 20},
    {"C", QT_TRANSLATE_NOOP("Quantity", "Temperature"), 0, 100},
    {"V", QT_TRANSLATE_NOOP("Quantity", "Voltage"), 0, 30},
    {"A", QT_TRANSLATE_NOOP("Quantity", "Current"), 0, 50},
    {"%", QT_TRANSLATE_NOOP("Quantity", "Share"), 0, 1},
    {"kN", QT_TRANSLATE_NOOP("Quantity", "Force"), 0, 10},
    {"N m", QT_TRANSLATE_NOOP("Quantity", "Torque"), 0, 100},
    {"m/s2", QT_TRANSLATE_NOOP("Quantity", "Acceleration"), -0.5, 0.5},
    {"m", QT_TRANSLATE_NOOP("Quantity", "Distance"), 0, 1},
    {"s", QT_TRANSLATE_NOOP("Quantity", "Time"), 0, 10},
    {"kg", QT_TRANSLATE_NOOP("Quantity", "Mass"), 0, 1},
    {"kJ", QT_TRANSLATE_NOOP("Quantity", "Work"), 0, 1},
    {"J", QT_TRANSLATE_NOOP("Quantity", "Work"), 0, 1},
    {"rev", QT_TRANSLATE_NOOP("Quantity", "Turns"), 0, 1},
    {"rad", QT_TRANSLATE_NOOP("Quantity", "Angle"), 0, 1},
    {"K s", QT_TRANSLATE_NOOP("Quantity", "Heat over time"), 0, 1},
    {"", QT_TRANSLATE_NOOP("Quantity", "State"), 0, 1},
    {"lever", QT_TRANSLATE_NOOP("Quantity", "Levers"), 0, 1},
}};

const Quantity* findQuantity(std::string_view unit) {
  const auto found = std::ranges::find(kQuantities, unit, &Quantity::unit);
  return found == kQuantities.end() ? nullptr : &*found;
}

bool isControl(Signal signal) {
  return std::ranges::any_of(unit::controlTable(), [signal](const unit::ControlInfo& info) {
    return info.signal == signal;
  });
}

// "engine 2" of "true.engine2.rpm"; empty if it is of none.
QString partOf(std::string_view name) {
  for (const char* part : {"engine", "drive"}) {
    const std::size_t at = name.find(part);
    if (at == std::string_view::npos) continue;
    const std::size_t digit = at + std::string_view(part).size();
    if (digit >= name.size() || (name[digit] != '1' && name[digit] != '2')) continue;
    const QString words = QString::fromLatin1(part) + QLatin1Char(' ') + QLatin1Char(name[digit]);
    return QCoreApplication::translate("Signal", words.toUtf8().constData());
  }
  return {};
}

// What belongs into one strip: one unit. Levers have none and are not what lamps are.
std::string_view groupOf(Signal signal) {
  return isControl(signal) ? "lever" : unit::signalInfo(signal).unit;
}

const std::array<Tone, 4> kTones{Tone::kCurve1, Tone::kCurve2, Tone::kCurve3, Tone::kCurve4};
const std::array<std::vector<double>, 4> kDashes{{{}, {10, 5}, {2.5, 4}, {12, 4, 2.5, 4}}};

// Twelve curves of one strip differ in tone or dash, any two neighbours in both.
after::Curve makeCurve(Signal signal, std::size_t which) {
  return {signal, signalText(signal), kTones[which % 4], kDashes[(which + which / 4) % 4]};
}

// The largest of 1, 2, 5 and their tenfolds that makes two steps or more.
double niceStep(double range) {
  const double power = std::pow(10.0, std::floor(std::log10(range / 2)));
  for (const double step : {5.0, 2.0, 1.0})
    if (step * power <= range / 2 + 1e-9) return step * power;
  return power;
}

void setRange(after::Plot& plot, double low, double high) {
  if (high - low < 1e-6) high = low + 1;
  plot.step = niceStep(high - low);
  plot.low = std::floor(low / plot.step + 1e-6) * plot.step;
  plot.high = std::ceil(high / plot.step - 1e-6) * plot.step;
  plot.decimals = plot.high - plot.low >= 300 ? 0 : plot.high - plot.low >= 5 ? 1 : 2;
}

void addLimits(after::Plot& plot, Signal signal) {
  const auto is = [signal](std::initializer_list<Signal> some) {
    return std::ranges::find(some, signal) != some.end();
  };
  std::vector<double> limits;
  if (is({Signal::kTrueAir, Signal::kCab1Air, Signal::kCab2Air})) limits = {75, 95};
  if (is({Signal::kTrueTrainPipe, Signal::kCab1TrainPipe, Signal::kCab2TrainPipe})) limits = {21};
  for (const double limit : limits)
    if (std::ranges::find(plot.limits, limit) == plot.limits.end()) plot.limits.push_back(limit);
}

}  // namespace

const std::vector<Preset>& presets() {
  using enum unit::Signal;
  static const std::vector<Preset> kPresets{
      {QT_TRANSLATE_NOOP("Preset", "The run"),
       {kTrueAir, kCab1Air, kTrueTrainPipe, kTrueReleasePipe, kTrueRpm1, kTrueRpm2, kTrueAbsSpeed,
        kCab1Throttle, kCab1Gear}},
      {QT_TRANSLATE_NOOP("Preset", "Air"),
       {kTrueAir, kTrueMain, kCab1Air, kCab2Air, kTrueDevice1, kTrueDevice2, kHeardHiss,
        kTrueCompressor1, kTrueCompressor2}},
      {QT_TRANSLATE_NOOP("Preset", "Vacuum"),
       {kTrueTrainPipe, kTrueReleasePipe, kCab1TrainPipe, kCab2TrainPipe, kTrueChamber1,
        kTrueChamber2, kTrueChamber3, kTrueChamber4, kEngine1Hum, kEngine2Hum}},
      {QT_TRANSLATE_NOOP("Preset", "Engines"),
       {kTrueRpm1, kTrueRpm2, kCab1Rpm1, kCab1Rpm2, kTrueRack1, kTrueRack2, kTrueOilPressure1,
        kTrueOilPressure2, kTrueCoolant1, kTrueCoolant2}},
      {QT_TRANSLATE_NOOP("Preset", "Gearbox"),
       {kTrueInput1, kTrueInput2, kTrueOutput1, kTrueOutput2, kTrueEngaged1, kTrueEngaged2,
        kTrueMeshed1, kTrueMeshed2, kTrueCoupling1, kTrueCoupling2, kTrueDrumC1, kTrueDrumC2}},
      {QT_TRANSLATE_NOOP("Preset", "Brake"),
       {kTrueTrainPipe, kTrueDifference, kTrueBlocks1, kTrueBlocks2, kTrueBlocks3, kTrueBlocks4,
        kTrueBrake, kTrueAbsSpeed, kCab1Brake, kCab2Brake}},
      {QT_TRANSLATE_NOOP("Preset", "Electrics"),
       {kTrueBusV, kCupboardVolts, kTrueBatteryA, kTrueGenerator1, kTrueGenerator2, kTrueStarterA1,
        kTrueStarterA2, kTrueCharge, kTrueRelay}},
  };
  return kPresets;
}

QString nameOf(const Preset& preset) { return QCoreApplication::translate("Preset", preset.name); }

QString quantityName(std::string_view unit) {
  const Quantity* quantity = findQuantity(unit);
  return quantity == nullptr ? QString() : QCoreApplication::translate("Quantity", quantity->name);
}

QString signalText(Signal signal) {
  const unit::SignalInfo& info = unit::signalInfo(signal);
  for (const std::string_view act : {"judged.", "looked.", "booked."})
    if (info.name.starts_with(act)) return after::signalName(signal);
  if (isControl(signal)) return after::signalName(signal);
  const std::size_t dot = info.name.find('.');
  if (dot != std::string_view::npos && unit::findItem(info.name.substr(dot + 1))) {
    const QString item = after::itemName(info.name.substr(dot + 1));
    return info.name.starts_with("shows.")
               ? QCoreApplication::translate("Signal", "%1: what it shows").arg(item)
               : QCoreApplication::translate("Signal", "%1: defect").arg(item);
  }
  QString words = QCoreApplication::translate("Signal", toQt(info.text).toUtf8().constData());
  if (words.endsWith(QLatin1String(kShare))) words.chop(std::string_view(kShare).size());
  QString part = partOf(info.name);
  const bool first = !part.isEmpty() && !words.contains(QLatin1Char(' ') + part.back());
  // Which of the two comes first: the end of long words is cut off.
  if (first) {
    part[0] = part[0].toUpper();
    return QCoreApplication::translate("Signal", "%1, %2").arg(part, words);
  }
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

QString layerName(unit::Layer layer) {
  switch (layer) {
    case unit::Layer::kShown:
      return QCoreApplication::translate("Layer", "shown");
    case unit::Layer::kTrue:
      return QCoreApplication::translate("Layer", "true");
    case unit::Layer::kDone:
      break;
  }
  return QCoreApplication::translate("Layer", "done");
}

std::vector<after::Plot> groupSignals(std::span<const Signal> signals) {
  std::vector<after::Plot> plots;
  std::vector<std::string_view> groups;
  for (const Signal signal : signals) {
    const std::string_view group = groupOf(signal);
    const auto found = std::ranges::find(groups, group);
    const auto which = static_cast<std::size_t>(found - groups.begin());
    if (found == groups.end()) {
      groups.push_back(group);
      after::Plot plot;
      plot.name = quantityName(group);
      plot.unit = toQt(unit::signalInfo(signal).unit);
      const Quantity* quantity = findQuantity(group);
      setRange(plot, quantity ? quantity->low : 0, quantity ? quantity->high : 1);
      plots.push_back(std::move(plot));
    }
    plots[which].curves.push_back(makeCurve(signal, plots[which].curves.size()));
    addLimits(plots[which], signal);
  }
  return plots;
}

bool fitScale(after::Plot& plot, const SignalTape& tape) {
  double low = plot.low, high = plot.high;
  for (const after::Curve& curve : plot.curves) {
    const auto range = tape.range(curve.signal);
    if (!range) continue;
    low = std::min(low, static_cast<double>(range->low));
    high = std::max(high, static_cast<double>(range->high));
  }
  // What is less than a line's width outside is no reason for another scale.
  const double near = 0.01 * (plot.high - plot.low);
  if (low >= plot.low - near && high <= plot.high + near) return false;
  setRange(plot, low, high);
  return true;
}

QString stateText(Signal signal, double value) {
  const unit::SignalInfo& info = unit::signalInfo(signal);
  const auto says = [&info](std::string_view words) {
    return info.text.find(words) != std::string_view::npos;
  };
  if (!isControl(signal) && info.unit.empty() && (says(kShare) || says("share")))
    return QCoreApplication::translate("Position", "%1 %").arg(value * 100, 0, 'f', 0);
  return after::valueText(signal, value);
}

QString curveValueText(const after::Plot& plot, Signal signal, double value) {
  if (static_cast<float>(value) >= kNever) return QStringLiteral("\u2013");
  if (plot.unit.isEmpty()) return stateText(signal, value);
  const QString text = QString::number(std::abs(value), 'f', plot.decimals);
  const bool zero = text.toDouble() == 0;
  return value < 0 && !zero ? QChar(0x2212) + text : text;
}

}  // namespace cabwright::desk
