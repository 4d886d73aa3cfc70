// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/spots.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

#include "wording/sentences.h"

namespace cabwright::desk {
namespace {

QString text(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

// Where a name begins so, with '#' for the number of its thing: there it lives. The longest counts.
struct Lives {
  std::string_view begins, spot;
};
constexpr std::array kLives{
    Lives{"final_drive#", "final_drive#"},
    Lives{"coupling#", "coupling#"},
    Lives{"freewheel#", "coupling#"},
    Lives{"gearbox#", "gearbox#"},
    Lives{"engine#", "engine#"},
    Lives{"engine#.air_in_fuel", "fuel#"},
    Lives{"engine#.water_in_fuel", "fuel#"},
    Lives{"engine#.fuel_", "fuel#"},
    Lives{"engine#.coolant_", "cooling#"},
    Lives{"engine#.thermostat", "cooling#"},
    Lives{"engine#.fan_", "cooling#"},
    Lives{"engine#.radiator", "cooling#"},
    Lives{"engine#.switch_off", "panel#"},
    Lives{"engine#.hand_throttle", "panel#"},
    Lives{"engine#.trips_falsely", "panel#"},
    Lives{"engine#.fire_bottle", "panel#"},
    Lives{"engine#.fire_line", "panel#"},
    Lives{"engine#.oil_gauge", "panel#"},
    Lives{"engine#.oil_switch", "panel#"},
    Lives{"starter#", "starter#"},
    Lives{"generator#", "generator#"},
    Lives{"compressor#", "compressor#"},
    Lives{"exhauster#", "exhauster#"},
    Lives{"throttle_motor#", "throttle_motor#"},
    Lives{"desk#", "controls#"},
    Lives{"safety_device#", "device#"},
    Lives{"drivers_valve#", "valve#"},
    Lives{"handbrake#", "handbrake#"},
    Lives{"cab#", "controls#"},
    Lives{"cab#.guards_valve", "valve#"},
    Lives{"cab#.lamp_", "lamps#"},
    Lives{"cab#.air_", "gauges#"},
    Lives{"cab#.train_pipe_", "gauges#"},
    Lives{"cab#.release_pipe_", "gauges#"},
    Lives{"cab#.guards_gauge_", "gauges#"},
    Lives{"cab#.speed_", "gauges#"},
    Lives{"cab#.rpm", "gauges#"},
    Lives{"cab#.detonators", "equipment#"},
    Lives{"cab#.extinguisher", "equipment#"},
    Lives{"cab#.seal", "equipment#"},
    Lives{"end#", "end#"},
    Lives{"side#", "side#"},
    Lives{"door#", "door#"},
    Lives{"brake_cylinder#", "brake_cylinder#"},
    Lives{"air.main", "main_reservoir"},
    Lives{"air.safety_valve", "main_reservoir"},
    Lives{"air.unloading", "main_reservoir"},
    Lives{"air.check_valve", "main_reservoir"},
    Lives{"air.control", "control_reservoir"},
    Lives{"air.switch", "control_reservoir"},
    Lives{"air.horn", "horn"},
    Lives{"battery", "battery"},
    Lives{"battery.earth_fault", "cupboard"},
    Lives{"battery.load_left_on", "cupboard"},
    Lives{"circuits", "cupboard"},
    Lives{"circuits.jumper", "jumper"},
    Lives{"cupboard", "cupboard"},
    Lives{"vacuum.train_pipe", "train_pipe"},
    Lives{"vacuum.guards_valves", "train_pipe"},
    Lives{"vacuum.hose", "hoses"},
    Lives{"vacuum.release_pipe", "release_reservoir"},
    Lives{"vacuum.alarm", "alarm"},
    Lives{"brake.poor_friction", "blocks"},
    Lives{"axlebox", "blocks"},
    Lives{"wheels#", "brake_cylinder#"},
    Lives{"cardan#", "gearbox#"},
};

// "gearbox2.band3_worn": '2', and "gearbox#.band3_worn".
char takeNumber(std::string& name) {
  const std::size_t dot = std::min(name.find('.'), name.size());
  if (dot == 0 || name[dot - 1] < '1' || name[dot - 1] > '9') return '0';
  const char number = name[dot - 1];
  name[dot - 1] = '#';
  return number;
}

QString capital(QString words) {
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

// "gearbox 2, band of gear 3" is translated as "gearbox %1, band of gear %2".
QString numberedWords(std::string_view english) {
  QString pattern;
  QStringList numbers;
  for (const QChar c : text(english)) {
    if (c.isDigit()) {
      numbers << QString(c);
      pattern += QLatin1Char('%') + QString::number(numbers.size());
    } else {
      pattern += c;
    }
  }
  QString words = wording::translateEntry("Fault", pattern);
  for (const QString& number : numbers) words = words.arg(number);
  return words;
}

}  // namespace

std::size_t findSpot(std::string_view id) {
  const auto& spots = spotTable();
  std::size_t k = 0;
  while (k < spots.size() && spots[k].id != id) ++k;
  return k;
}

QString nameOf(const Spot& spot) {
  const QString name = QCoreApplication::translate("Spot", spot.name);
  return spot.number > 0 ? name.arg(spot.number) : name;
}

std::size_t spotOf(const fault::FaultSpec& spec) {
  std::string name = spec.name;
  const char number = takeNumber(name);
  const Lives* best = nullptr;
  for (const Lives& row : kLives)
    if (name.starts_with(row.begins) &&
        (best == nullptr || row.begins.size() > best->begins.size()))
      best = &row;
  if (best == nullptr) return spotTable().size();
  std::string spot(best->spot);
  if (spot.back() == '#') spot.back() = number;
  return findSpot(spot);
}

std::vector<const fault::FaultSpec*> faultsAt(std::size_t spot) {
  std::vector<const fault::FaultSpec*> found;
  for (const fault::FaultSpec& spec : fault::faultCatalogue())
    if (spotOf(spec) == spot) found.push_back(&spec);
  return found;
}

std::vector<const fault::FaultSpec*> findFaults(const QString& words) {
  const QStringList wanted = words.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  std::vector<const fault::FaultSpec*> called, shown;
  if (wanted.isEmpty()) return called;
  const auto has = [&wanted](const QString& hay) {
    return std::ranges::all_of(
        wanted, [&hay](const QString& word) { return hay.contains(word, Qt::CaseInsensitive); });
  };
  for (const fault::FaultSpec& spec : fault::faultCatalogue()) {
    const std::size_t spot = spotOf(spec);
    QStringList all{text(spec.name), whereText(spec), textOf(spec)};
    if (spot < spotTable().size()) all << nameOf(spotTable()[spot]);
    const QString names = all.join(QLatin1Char(' '));
    if (has(names)) {
      called.push_back(&spec);
    } else if (has(names + QLatin1Char(' ') + faultWords(spec.symptom))) {
      shown.push_back(&spec);
    }
  }
  called.insert(called.end(), shown.begin(), shown.end());
  return called;
}

QString faultWords(std::string_view english) {
  return wording::translateSentence("Fault", text(english));
}

QString whereText(const fault::FaultSpec& spec) {
  // Of an instrument only its name stands there: "cab1.train_pipe".
  if (spec.system != "instruments") return capital(numberedWords(spec.where));
  const QString name = text(spec.where);
  const qsizetype dot = name.indexOf(QLatin1Char('.'));
  QString what = name.mid(dot + 1).replace(QLatin1Char('_'), QLatin1Char(' '));
  const QString of = name.left(dot);
  const bool numbered = of.back().isDigit();
  const QString place = numbered ? of.left(of.size() - 1) : of;
  what = wording::translateSentence("Fault", what);
  const QString where = wording::translateSentence("Fault", place);
  return capital(
      numbered ? QCoreApplication::translate("Spot", "%1 %2, %3").arg(where, of.right(1), what)
               : QCoreApplication::translate("Spot", "%1, %2").arg(where, what));
}

QString textOf(const fault::FaultSpec& spec) { return capital(faultWords(spec.text)); }

QString sizeText(const fault::FaultSpec& spec, double size) {
  if (!spec.size.exists()) return {};
  QString words = QString::number(size, 'g', 4);
  if (!spec.size.unit.empty()) words += QLatin1Char(' ') + faultWords(spec.size.unit);
  if (!spec.size.of.empty()) words += QLatin1Char(' ') + faultWords(spec.size.of);
  return words;
}

}  // namespace cabwright::desk
