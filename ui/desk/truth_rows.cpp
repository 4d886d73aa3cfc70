// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/truth_rows.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "desk/strip_groups.h"
#include "desk/truth_table.h"

namespace cabwright::desk {

using unit::Instrument;
using unit::InstrumentCondition;

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(TruthView)
};

const unit::InstrumentInfo& infoOf(Instrument instrument) {
  return unit::instrumentTable()[unit::indexOf(instrument)];
}

QString brokenText(InstrumentCondition condition) {
  switch (condition) {
    case InstrumentCondition::kStuck:
      return Words::tr("stuck");
    case InstrumentCondition::kOffset:
      return Words::tr("offset");
    case InstrumentCondition::kSlow:
      return Words::tr("slow");
    case InstrumentCondition::kDead:
      return Words::tr("dead");
    case InstrumentCondition::kBlown:
      return Words::tr("blown");
    case InstrumentCondition::kLit:
      return Words::tr("always lit");
    case InstrumentCondition::kSound:
      break;
  }
  return {};
}

QString columnText(GaugeColumn column) {
  return column == GaugeColumn::kCab1   ? Words::tr("cab 1")
         : column == GaugeColumn::kCab2 ? Words::tr("cab 2")
                                        : Words::tr("on the spot");
}

QString numberText(double value, int decimals) {
  const QString text = QString::number(std::abs(value), 'f', decimals);
  return value < 0 && text.toDouble() != 0 ? QChar(0x2212) + text : text;
}

// As many as the unit is worth; large numbers need none.
int decimalsOf(const QString& unit, double value) {
  if (unit == QLatin1String("rpm") || std::abs(value) >= 1000) return 0;
  return unit == QLatin1String("m/s2") || unit == QLatin1String("kJ") ? 2 : 1;
}

constexpr double kStepS = 0.05, kLongS = 0.2;

QString litText(double value) { return value > 0.5 ? Words::tr("lit") : Words::tr("dark"); }

}  // namespace

QString nameOf(System system) {
  switch (system) {
    case System::kAir:
      return Words::tr("Air");
    case System::kVacuum:
      return Words::tr("Vacuum");
    case System::kEngines:
      return Words::tr("Engines");
    case System::kDrive:
      return Words::tr("Gearbox and drive");
    case System::kBrake:
      return Words::tr("Brake");
    case System::kElectrics:
      return Words::tr("Electrics");
    case System::kCab:
      return Words::tr("Cab");
    case System::kTrain:
    case System::kCount:
      break;
  }
  return Words::tr("Train");
}

double readingAccuracy(std::string_view unit) {
  struct Accuracy {
    std::string_view unit;
    double value;
  };
  // Half of the smallest division of the dial, and what a needle of that kind may be off (CP).
  constexpr std::array<Accuracy, 7> kAccuracies{{{"psi", 3.0},
                                                 {"inHg", 1.0},
                                                 {"mph", 1.5},
                                                 {"rpm", 50.0},
                                                 {"%", 4.0},
                                                 {"C", 3.0},
                                                 {"V", 0.8}}};
  const auto found = std::ranges::find(kAccuracies, unit, &Accuracy::unit);
  return found == kAccuracies.end() ? 0.5 : found->value;
}

QString TruthRow::valueText() const {
  if (!signal && unit.isEmpty()) return litText(value);
  if (value >= static_cast<double>(kNever) - 0.5) return QStringLiteral("\u2013");
  if (signal && unit.isEmpty()) return stateText(*signal, value);
  return numberText(value, decimalsOf(unit, value));
}

QString TruthRow::shownText(GaugeColumn column) const {
  const auto& says = gauges[static_cast<std::size_t>(column)];
  if (!says) return {};
  const double shown = static_cast<double>(says->shown);
  return infoOf(says->instrument).lamp ? litText(shown)
                                       : numberText(shown, decimalsOf(unit, shown));
}

Agreement TruthRow::agreement() const {
  Agreement worst = Agreement::kAgrees;
  for (const auto& says : gauges)
    if (says) worst = std::max(worst, says->agreement);
  return worst;
}

QString TruthRow::finding() const {
  QStringList parts;
  for (std::size_t k = 0; k < kGaugeColumns; ++k) {
    const auto& says = gauges[k];
    if (!says || says->agreement == Agreement::kAgrees) continue;
    const QString where = columnText(static_cast<GaugeColumn>(k));
    if (says->agreement == Agreement::kSuspect) {
      parts << Words::tr("%1 agrees now, but is %2").arg(where, says->broken);
      continue;
    }
    QString how;
    if (infoOf(says->instrument).lamp) {
      how = Words::tr("%1 is %2").arg(where, litText(static_cast<double>(says->shown)));
    } else {
      const double by = static_cast<double>(says->shown) - value;
      const QString much = numberText(std::abs(by), decimalsOf(unit, by)) + QLatin1Char(' ') + unit;
      how =
          (by > 0 ? Words::tr("%1 reads %2 high") : Words::tr("%1 reads %2 low")).arg(where, much);
    }
    parts << (says->broken.isEmpty() ? how : Words::tr("%1: %2").arg(how, says->broken));
  }
  return parts.join(QLatin1String("; "));
}

TruthRows::TruthRows() {
  for (const TruthSource& source : truthTable()) {
    TruthRow row;
    row.system = source.system;
    row.signal = source.signal;
    if (source.signal) {
      const unit::SignalInfo& info = unit::signalInfo(*source.signal);
      row.name = signalText(*source.signal);
      row.unit = QString::fromUtf8(info.unit.data(), static_cast<qsizetype>(info.unit.size()));
    }
    if (source.name != nullptr) row.name = Words::tr(source.name);
    if (source.unit != nullptr) row.unit = QString::fromLatin1(source.unit);
    for (std::size_t c = 0; c < kGaugeColumns; ++c)
      if (source.gauges[c]) row.gauges[c] = GaugeSays{*source.gauges[c], 0, {}, {}};
    rows_.push_back(std::move(row));
  }
}

void TruthRows::clear() {
  sound_ = {};
  tick_ = -1;
}

void TruthRows::readGauge(const session::LiveRun& run, TruthRow& row, GaugeSays& says,
                          double dt_s) {
  const unit::InstrumentInfo& info = infoOf(says.instrument);
  says.shown = run.frame()[info.signal];
  const InstrumentCondition condition =
      run.unit().world().instrument[unit::indexOf(says.instrument)].condition;
  says.broken = brokenText(condition);
  const double truth = std::clamp(row.value, info.lowest, info.highest);
  std::optional<Sound>& sound = sound_[unit::indexOf(says.instrument)];
  if (!sound) {
    sound = Sound{};
    sound->state.needle = sound->state.shown = truth;
  } else if (dt_s > kLongS) {
    // Nobody knows which way the truth took meanwhile: a needle begins where it stands.
    sound->state.needle = sound->state.shown = static_cast<double>(says.shown);
  } else if (dt_s > 0) {
    const int steps = static_cast<int>(std::clamp(std::ceil(dt_s / kStepS), 1.0, 50.0));
    for (int k = 1; k <= steps; ++k)
      sound->state = unit::calcInstrument(
          info, sound->state, sound->truth + (row.value - sound->truth) * k / steps, dt_s / steps);
  }
  sound->truth = row.value;
  const double accuracy = readingAccuracy(info.unit);
  const double shown = static_cast<double>(says.shown);
  const bool strays = std::abs(shown - sound->state.shown) > accuracy;
  const bool differs = std::abs(shown - truth) > accuracy && (strays || !says.broken.isEmpty());
  says.agreement = differs                 ? Agreement::kDiffers
                   : says.broken.isEmpty() ? Agreement::kAgrees
                                           : Agreement::kSuspect;
}

void TruthRows::update(const session::LiveRun& run) {
  const std::int64_t tick = run.tick();
  if (tick < tick_) clear();
  const double dt_s = tick_ < 0 ? 0 : static_cast<double>(tick - tick_) / 100.0;
  tick_ = tick;
  const std::span<const TruthSource> table = truthTable();
  for (std::size_t k = 0; k < rows_.size(); ++k) {
    TruthRow& row = rows_[k];
    row.value = readTruth(table[k], run);
    for (auto& says : row.gauges)
      if (says) readGauge(run, row, *says, dt_s);
  }
}

}  // namespace cabwright::desk
