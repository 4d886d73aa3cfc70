// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/names.h"

#include <QCoreApplication>
#include <cmath>
#include <map>

#include "wording/sentences.h"

namespace cabwright::cab {
namespace {

QString translated(const char* context, const QString& english) {
  return QCoreApplication::translate(context, english.toUtf8().constData());
}

QString text(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

// "tail_lamp" -> "Tail lamp".
QString readable(std::string_view name) {
  const std::size_t dot = name.find('.');
  if (dot != std::string_view::npos) name.remove_prefix(dot + 1);
  QString words = text(name).replace(QLatin1Char('_'), QLatin1Char(' '));
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

std::string_view withoutPlace(std::string_view name) {
  const std::size_t dot = name.find('.');
  return dot == std::string_view::npos ? name : name.substr(dot + 1);
}

// Names of controls that do not read well as they are.
const std::map<std::string_view, const char*, std::less<>>& ownControlNames() {
  static const std::map<std::string_view, const char*, std::less<>> names{
      {"key", QT_TRANSLATE_NOOP("Control", "Key switch")},
      {"reverser", QT_TRANSLATE_NOOP("Control", "Reversing lever")},
      {"device", QT_TRANSLATE_NOOP("Control", "Safety device")},
      {"gear", QT_TRANSLATE_NOOP("Control", "Gear selector")},
      {"start1", QT_TRANSLATE_NOOP("Control", "Start engine 1")},
      {"start2", QT_TRANSLATE_NOOP("Control", "Start engine 2")},
      {"stop1", QT_TRANSLATE_NOOP("Control", "Stop engine 1")},
      {"stop2", QT_TRANSLATE_NOOP("Control", "Stop engine 2")},
      {"pawl", QT_TRANSLATE_NOOP("Control", "Pawl")},
      {"guards_valve", QT_TRANSLATE_NOOP("Control", "Guard's valve")},
      {"device_cock", QT_TRANSLATE_NOOP("Control", "Device cock")},
      {"lock", QT_TRANSLATE_NOOP("Control", "Door lock")},
      {"switch", QT_TRANSLATE_NOOP("Control", "Isolating switch")},
      {"sleeve", QT_TRANSLATE_NOOP("Control", "Dog sleeve")},
      {"pin", QT_TRANSLATE_NOOP("Control", "Locking pin")},
      {"air_cock", QT_TRANSLATE_NOOP("Control", "Air cock")},
      {"alarm", QT_TRANSLATE_NOOP("Control", "Passenger alarm")},
      {"cord1", QT_TRANSLATE_NOOP("Control", "Release cord")},
      {"cord2", QT_TRANSLATE_NOOP("Control", "Release cord")},
      {"cord3", QT_TRANSLATE_NOOP("Control", "Release cord")},
      {"cord4", QT_TRANSLATE_NOOP("Control", "Release cord")},
      {"drain_main", QT_TRANSLATE_NOOP("Control", "Drain, main reservoir")},
      {"drain_control", QT_TRANSLATE_NOOP("Control", "Drain, control reservoir")},
      {"hose", QT_TRANSLATE_NOOP("Control", "Hoses on their dummies")},
      {"scotch1", QT_TRANSLATE_NOOP("Control", "Scotch")},
      {"scotch2", QT_TRANSLATE_NOOP("Control", "Scotch")},
      {"door1", QT_TRANSLATE_NOOP("Control", "Doors")},
      {"door2", QT_TRANSLATE_NOOP("Control", "Doors")},
      {"lamp", QT_TRANSLATE_NOOP("Control", "Hand lamp")},
      {"breaker_control", QT_TRANSLATE_NOOP("Control", "Breaker: control")},
      {"breaker_start", QT_TRANSLATE_NOOP("Control", "Breaker: start")},
      {"breaker_lamps", QT_TRANSLATE_NOOP("Control", "Breaker: lamps")},
      {"breaker_lights", QT_TRANSLATE_NOOP("Control", "Breaker: lights")},
  };
  return names;
}

const std::map<std::string_view, const char*, std::less<>>& ownItemNames() {
  static const std::map<std::string_view, const char*, std::less<>> names{
      {"protection", QT_TRANSLATE_NOOP("Item", "Board, flag or lamp")},
      {"cock", QT_TRANSLATE_NOOP("Item", "Fuel cock")},
      {"tray", QT_TRANSLATE_NOOP("Item", "Tray and ground")},
      {"throttle", QT_TRANSLATE_NOOP("Item", "Hand throttle")},
      {"seal", QT_TRANSLATE_NOOP("Item", "Device cock and seal")},
      {"handbrake_chain", QT_TRANSLATE_NOOP("Item", "Handbrake and chain")},
      {"controls_neutral", QT_TRANSLATE_NOOP("Item", "Controls at rest")},
      {"valve", QT_TRANSLATE_NOOP("Item", "Guard's valve")},
      {"rear_gauge", QT_TRANSLATE_NOOP("Item", "Guard's gauge")},
      {"book", QT_TRANSLATE_NOOP("Item", "Book and plates")},
      {"door", QT_TRANSLATE_NOOP("Item", "Door and lock")},
      {"volts_read", QT_TRANSLATE_NOOP("Item", "Battery volts")},
      {"cord", QT_TRANSLATE_NOOP("Item", "Release cord")},
      {"cardan", QT_TRANSLATE_NOOP("Item", "Cardan shaft and guard")},
      {"roster", QT_TRANSLATE_NOOP("Item", "The working")},
      {"bottle", QT_TRANSLATE_NOOP("Item", "Fire bottle")},
      {"alarm_telltale", QT_TRANSLATE_NOOP("Item", "Alarm tell-tale")},
      {"first_aid", QT_TRANSLATE_NOOP("Item", "First-aid box")},
  };
  return names;
}

template <class Map>
QString ownOr(const Map& own, const char* context, std::string_view name) {
  const auto found = own.find(withoutPlace(name));
  if (found != own.end()) return QCoreApplication::translate(context, found->second);
  return translated(context, readable(name));
}

}  // namespace

QString nameOf(unit::Control c) {
  return ownOr(ownControlNames(), "Control", unit::controlInfo(c).name);
}

QString textOf(unit::Control c) { return translated("Control", text(unit::controlInfo(c).text)); }

QString positionText(unit::Control c, double value) {
  const unit::ControlInfo& info = unit::controlInfo(c);
  for (const unit::ControlPosition& p : info.positions) {
    if (std::abs(p.value - value) < 1e-6)  // a Frame holds it in single precision
      return translated("Position", text(p.name).replace(QLatin1Char('_'), QLatin1Char(' ')));
  }
  if (info.whole) return QString::number(value, 'f', 0);
  return QCoreApplication::translate("Position", "%1 %").arg(value * 100, 0, 'f', 0);
}

QString nameOf(unit::Item i) { return ownOr(ownItemNames(), "Item", unit::itemInfo(i).name); }

QString nameOf(unit::Place p) {
  switch (p) {
    case unit::Place::kBooking:
      return QCoreApplication::translate("Place", "Booking-on point");
    case unit::Place::kLineside:
      return QCoreApplication::translate("Place", "Walkway by the line");
    case unit::Place::kEnd1:
      return QCoreApplication::translate("Place", "End 1");
    case unit::Place::kEnd2:
      return QCoreApplication::translate("Place", "End 2");
    case unit::Place::kSide1:
      return QCoreApplication::translate("Place", "Motor car, side 1");
    case unit::Place::kSide2:
      return QCoreApplication::translate("Place", "Motor car, side 2");
    case unit::Place::kTrailer1:
      return QCoreApplication::translate("Place", "Trailer, side 1");
    case unit::Place::kTrailer2:
      return QCoreApplication::translate("Place", "Trailer, side 2");
    case unit::Place::kEngine1:
      return QCoreApplication::translate("Place", "Engine 1");
    case unit::Place::kEngine2:
      return QCoreApplication::translate("Place", "Engine 2");
    case unit::Place::kBetween:
      return QCoreApplication::translate("Place", "Between the cars");
    case unit::Place::kCab1:
      return QCoreApplication::translate("Place", "Cab 1");
    case unit::Place::kCab2:
      return QCoreApplication::translate("Place", "Cab 2");
    case unit::Place::kCupboard:
      return QCoreApplication::translate("Place", "Electric cupboard");
    case unit::Place::kSaloon:
      return QCoreApplication::translate("Place", "Saloon");
    case unit::Place::kCount:
      break;
  }
  return {};
}

QString textOf(unit::Place p) {
  QString words = translated("Place", text(unit::placeInfo(p).text));
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

QString nameOf(unit::Object o) { return translated("Thing", readable(unit::objectInfo(o).name)); }

QString textOf(unit::Object o) { return translated("Thing", text(unit::objectInfo(o).text)); }

QString textOf(unit::Signal s) { return translated("Signal", text(unit::signalInfo(s).text)); }

QString textOf(const unit::PhraseInfo& phrase) { return translated("Phrase", text(phrase.text)); }

QString exerciseWords(std::string_view english) { return translated("Scenario", text(english)); }

QString nameOf(unit::Phrase p) {
  for (const unit::PhraseInfo& info : unit::phraseTable()) {
    if (info.id == p) return translated("Phrase", readable(info.name));
  }
  return {};
}

QString nameOf(unit::DefectClass c) {
  switch (c) {
    case unit::DefectClass::kCritical:
      return QCoreApplication::translate("DefectClass", "critical");
    case unit::DefectClass::kSerious:
      return QCoreApplication::translate("DefectClass", "serious");
    case unit::DefectClass::kTechnical:
      return QCoreApplication::translate("DefectClass", "technical");
    case unit::DefectClass::kNone:
      break;
  }
  return {};
}

QString translateSeen(const QString& words) {
  // What is seen may be a condition and what else shows, joined by a semicolon.
  QStringList parts;
  const QString whole = wording::translateSentence("Seen", words);
  if (whole != words) return whole;
  for (const QString& part : words.split(QLatin1String("; ")))
    parts << wording::translateSentence("Seen", part);
  return parts.join(QLatin1String("; "));
}

}  // namespace cabwright::cab
