// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/evidence.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <optional>

#include "after/finished_run.h"
#include "after/words.h"

namespace cabwright::after {

using drawing::DialScale;
using drawing::LampColor;
using drawing::NeedleKind;
using unit::Signal;

namespace {

constexpr std::size_t kMostDials = 3, kMostLamps = 4, kMostValues = 5;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Evidence)
};

DialScale airScale() { return {0, 120, 20, 5, 10, Words::tr("psi"), 1, {{75, {}}, {95, {}}}, {}}; }
DialScale vacuumScale() { return {0, 30, 5, 1, 0, Words::tr("inHg"), 1, {{15, {}}, {21, {}}}, {}}; }
DialScale engineScale() { return {0, 2000, 500, 100, 0, Words::tr("rev/min"), 100, {}, {}}; }
DialScale speedScale() { return {0, 80, 10, 2, 0, Words::tr("mph"), 1, {}, {}}; }

// A gauge with what its needles are of; of_cab1 stands for both cabs.
struct GaugeKind {
  const char* name;
  DialScale (*scale)();
  std::vector<Signal> of_cab1;
};
const std::vector<GaugeKind>& gaugeKinds() {
  using enum Signal;
  static const std::vector<GaugeKind> kinds{
      {QT_TRANSLATE_NOOP("Evidence", "Control air"), airScale, {kCab1Air}},
      {QT_TRANSLATE_NOOP("Evidence", "Vacuum"), vacuumScale, {kCab1TrainPipe, kCab1ReleasePipe}},
      {QT_TRANSLATE_NOOP("Evidence", "Guard's gauge"), vacuumScale, {kCab1GuardsGauge}},
      {QT_TRANSLATE_NOOP("Evidence", "Engine 1"), engineScale, {kCab1Rpm1}},
      {QT_TRANSLATE_NOOP("Evidence", "Engine 2"), engineScale, {kCab1Rpm2}},
      {QT_TRANSLATE_NOOP("Evidence", "Speed"), speedScale, {kCab1Speed}},
  };
  return kinds;
}

struct LampKind {
  const char* word;
  LampColor color;
  Signal of_cab1;
};
const std::vector<LampKind>& lampKinds() {
  using enum Signal;
  static const std::vector<LampKind> kinds{
      {QT_TRANSLATE_NOOP("Evidence", "AIR"), LampColor::kGreen, kCab1LampAir},
      {QT_TRANSLATE_NOOP("Evidence", "SAFETY"), LampColor::kGreen, kCab1LampDevice},
      {QT_TRANSLATE_NOOP("Evidence", "ENGINE 1"), LampColor::kGreen, kCab1LampEngine1},
      {QT_TRANSLATE_NOOP("Evidence", "ENGINE 2"), LampColor::kGreen, kCab1LampEngine2},
      {QT_TRANSLATE_NOOP("Evidence", "CHARGE"), LampColor::kYellow, kCab1LampCharge},
      {QT_TRANSLATE_NOOP("Evidence", "FIRE"), LampColor::kRed, kCab1LampFire},
  };
  return kinds;
}

// 1 or 2 when the signal is this one of that cab.
std::optional<int> cabWhere(Signal signal, Signal of_cab1) {
  for (const int cab : {1, 2})
    if (ofCab(of_cab1, cab) == signal) return cab;
  return std::nullopt;
}

class Gatherer {
 public:
  Gatherer(const marking::Verdict& verdict, const unit::Frame& frame) : frame_(frame) {
    // What the rule judged by counts, even where an action of the same moment came in between.
    for (const marking::Reading& reading : verdict.readings) frame_[reading.signal] = reading.value;
  }

  bool addDial(Signal signal) {
    for (const GaugeKind& kind : gaugeKinds()) {
      for (const Signal needle : kind.of_cab1) {
        const auto cab = cabWhere(signal, needle);
        if (cab) return addGauge(kind, *cab);
      }
    }
    return false;
  }

  bool addLamp(Signal signal) {
    for (const LampKind& kind : lampKinds()) {
      if (!cabWhere(signal, kind.of_cab1)) continue;
      if (found_.lamps.size() < kMostLamps && isNew(signal))
        found_.lamps.push_back({Words::tr(kind.word), kind.color, frame_[signal] > 0.5F});
      return true;
    }
    return false;
  }

  void addValue(const marking::Reading& reading) {
    if (found_.values.size() >= kMostValues || !isNew(reading.signal)) return;
    const auto value = static_cast<double>(reading.value);
    found_.values.push_back({signalName(reading.signal), valueText(reading.signal, value)});
  }

  // A gauge that told something else than was so.
  void addTruth(const marking::Reading& reading) {
    if (!reading.counterpart || found_.values.size() >= kMostValues) return;
    const double off =
        std::abs(static_cast<double>(reading.value) - static_cast<double>(reading.true_value));
    if (off <= std::max(1.0, 0.05 * std::abs(static_cast<double>(reading.true_value)))) return;
    found_.values.push_back(
        {Words::tr("Truly: %1").arg(signalName(*reading.counterpart)),
         valueText(*reading.counterpart, static_cast<double>(reading.true_value))});
  }

  [[nodiscard]] bool showsNothing() const { return found_.dials.empty() && found_.lamps.empty(); }
  Evidence& found() { return found_; }

 private:
  bool isNew(Signal signal) {
    if (std::ranges::find(taken_, signal) != taken_.end()) return false;
    taken_.push_back(signal);
    return true;
  }

  bool addGauge(const GaugeKind& kind, int cab) {
    const Signal first = ofCab(kind.of_cab1.front(), cab);
    if (found_.dials.size() >= kMostDials || !isNew(first)) return true;
    found_.cab = cab;
    EvidenceDial dial{Words::tr(kind.name), {}, kind.scale(), {}};
    QStringList values;
    for (std::size_t k = 0; k < kind.of_cab1.size(); ++k) {
      const auto value = static_cast<double>(frame_[ofCab(kind.of_cab1[k], cab)]);
      dial.needles.insert(dial.needles.begin(),
                          {value, k == 0 ? NeedleKind::kSolid : NeedleKind::kHollow});
      values << QString::number(value, 'f', 0);
    }
    dial.value = values.join(QLatin1String(", ")) + QLatin1Char(' ') + dial.scale.unit;
    found_.dials.push_back(std::move(dial));
    return true;
  }

  unit::Frame frame_;
  Evidence found_;
  std::vector<Signal> taken_;
};

}  // namespace

Evidence gatherEvidence(const marking::Verdict& verdict, const unit::Frame& frame,
                        int leading_cab) {
  using enum Signal;
  Gatherer gatherer(verdict, frame);
  gatherer.found().cab = leading_cab;
  for (const marking::Reading& reading : verdict.readings) {
    if (!gatherer.addDial(reading.signal) && !gatherer.addLamp(reading.signal))
      gatherer.addValue(reading);
    gatherer.addTruth(reading);
  }
  if (!gatherer.showsNothing()) return std::move(gatherer.found());
  for (const Signal s : {kCab1Air, kCab1TrainPipe}) gatherer.addDial(ofCab(s, leading_cab));
  for (const Signal s : {kCab1LampAir, kCab1LampDevice, kCab1LampEngine1, kCab1LampEngine2})
    gatherer.addLamp(ofCab(s, leading_cab));
  return std::move(gatherer.found());
}

QString toWords(const Evidence& evidence) {
  QStringList parts;
  for (const EvidenceDial& dial : evidence.dials)
    parts << dial.name + QLatin1Char(' ') + dial.value;
  for (const EvidenceLamp& lamp : evidence.lamps)
    parts << lamp.word + QLatin1Char(' ') + (lamp.lit ? Words::tr("lit") : Words::tr("dark"));
  for (const EvidenceValue& value : evidence.values)
    parts << value.name + QLatin1Char(' ') + value.value;
  return parts.join(QLatin1String(", "));
}

}  // namespace cabwright::after
