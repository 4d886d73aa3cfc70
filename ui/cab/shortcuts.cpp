// SPDX-License-Identifier: GPL-3.0-or-later
#include "cab/shortcuts.h"

#include <QGuiApplication>
#include <QInputMethod>
#include <QKeyEvent>
#include <algorithm>
#include <array>

namespace cabwright::cab {
namespace {

// Where keys lie on a keyboard, as the system counts them.
#ifdef Q_OS_WIN
constexpr quint32 kPlaceQ = 16, kPlaceW = 17, kPlaceA = 30, kPlaceS = 31, kPlaceZ = 44,
                  kPlaceX = 45;
#else
constexpr quint32 kPlaceQ = 24, kPlaceW = 25, kPlaceA = 38, kPlaceS = 39, kPlaceZ = 52,
                  kPlaceX = 53;
#endif

struct KeyPlace {
  const char* command;
  quint32 scan_code;
};
constexpr std::array kPlaces{
    KeyPlace{"cab.start1", kPlaceQ},   KeyPlace{"cab.start2", kPlaceW},
    KeyPlace{"cab.stop1", kPlaceA},    KeyPlace{"cab.stop2", kPlaceS},
    KeyPlace{"engine.start", kPlaceQ}, KeyPlace{"engine.stop", kPlaceA},
    KeyPlace{"hand.left", kPlaceZ},    KeyPlace{"hand.right", kPlaceX},
};

quint32 placeOf(const QString& command) {
  for (const KeyPlace& place : kPlaces)
    if (command == QLatin1String(place.command)) return place.scan_code;
  return 0;
}

bool isPlace(quint32 scan_code) {
  return std::ranges::any_of(kPlaces,
                             [scan_code](const KeyPlace& p) { return p.scan_code == scan_code; });
}

// What keyboards of a language mostly have there, until a key is pressed.
std::map<quint32, int> usualLetters(QLocale::Language language) {
  std::map<quint32, int> letters{{kPlaceQ, Qt::Key_Q}, {kPlaceW, Qt::Key_W}, {kPlaceA, Qt::Key_A},
                                 {kPlaceS, Qt::Key_S}, {kPlaceZ, Qt::Key_Z}, {kPlaceX, Qt::Key_X}};
  switch (language) {
    case QLocale::French:
      letters[kPlaceQ] = Qt::Key_A;
      letters[kPlaceW] = Qt::Key_Z;
      letters[kPlaceA] = Qt::Key_Q;
      letters[kPlaceZ] = Qt::Key_W;
      break;
    case QLocale::German:
    case QLocale::Czech:
    case QLocale::Hungarian:
    case QLocale::Slovak:
    case QLocale::Slovenian:
    case QLocale::Croatian:
      letters[kPlaceZ] = Qt::Key_Y;
      break;
    default:
      break;
  }
  return letters;
}

constexpr std::array<CommandInfo, 49> kCommands{{
    {"cab.key", QT_TRANSLATE_NOOP("Command", "Key switch on or off"), "K"},
    {"cab.reverser", QT_TRANSLATE_NOOP("Command", "Hand on the reversing lever"), "R"},
    {"cab.throttle", QT_TRANSLATE_NOOP("Command", "Hand on the throttle"), "T"},
    {"cab.device", QT_TRANSLATE_NOOP("Command", "Hold the safety device, or let it go"), "D"},
    {"cab.gear", QT_TRANSLATE_NOOP("Command", "Hand on the gear selector"), "G"},
    {"cab.brake", QT_TRANSLATE_NOOP("Command", "Hand on the brake"), "B"},
    {"cab.handbrake", QT_TRANSLATE_NOOP("Command", "Hand on the handbrake wheel"), "P"},
    {"cab.pawl", QT_TRANSLATE_NOOP("Command", "Pawl in or out"), "O"},
    {"cab.start1", QT_TRANSLATE_NOOP("Command", "Start engine 1 (hold)"), "Q"},
    {"cab.start2", QT_TRANSLATE_NOOP("Command", "Start engine 2 (hold)"), "W"},
    {"cab.stop1", QT_TRANSLATE_NOOP("Command", "Stop engine 1 (hold)"), "A"},
    {"cab.stop2", QT_TRANSLATE_NOOP("Command", "Stop engine 2 (hold)"), "S"},
    {"cab.horn_low", QT_TRANSLATE_NOOP("Command", "Horn, low (hold)"), "H"},
    {"cab.horn_high", QT_TRANSLATE_NOOP("Command", "Horn, high (hold)"), "J"},
    {"cab.bell", QT_TRANSLATE_NOOP("Command", "Bell to the guard (one stroke)"), "L"},
    {"cab.lamp_test", QT_TRANSLATE_NOOP("Command", "Lamp test (hold)"), "F7"},
    {"cab.fire_test", QT_TRANSLATE_NOOP("Command", "Fire bell test (hold)"), "F8"},
    {"cab.wiper", QT_TRANSLATE_NOOP("Command", "Wiper"), "F9"},
    {"engine.start", QT_TRANSLATE_NOOP("Command", "At an engine: start (hold)"), "Q"},
    {"engine.stop", QT_TRANSLATE_NOOP("Command", "At an engine: stop (hold)"), "A"},
    {"engine.throttle", QT_TRANSLATE_NOOP("Command", "At an engine: hand throttle"), "T"},
    {"engine.switch", QT_TRANSLATE_NOOP("Command", "At an engine: isolating switch"), "K"},
    {"turn", QT_TRANSLATE_NOOP("Command", "In a cab: turn round"), "."},
    {"hand.left", QT_TRANSLATE_NOOP("Command", "Left hand lets go"), "Z"},
    {"hand.right", QT_TRANSLATE_NOOP("Command", "Right hand lets go"), "X"},
    {"lamp", QT_TRANSLATE_NOOP("Command", "Hand lamp on or off"), "F6"},
    {"say", QT_TRANSLATE_NOOP("Command", "Say or do something"), "U"},
    {"note", QT_TRANSLATE_NOOP("Command", "Enter a reading"), "N"},
    {"book", QT_TRANSLATE_NOOP("Command", "Write in the repair book"), "E"},
    {"decide", QT_TRANSLATE_NOOP("Command", "Say what you decide"), "M"},
    {"things", QT_TRANSLATE_NOOP("Command", "Take, put in or lay down a thing"), "C"},
    {"hint", QT_TRANSLATE_NOOP("Command", "What comes next"), "I"},
    {"why", QT_TRANSLATE_NOOP("Command", "Why it is dark, or does not move"), "F"},
    {"pass", QT_TRANSLATE_NOOP("Command", "Let time pass until something changes"), "V"},
    {"go.end1", QT_TRANSLATE_NOOP("Command", "Walk to end 1"), "1"},
    {"go.cab1", QT_TRANSLATE_NOOP("Command", "Walk to cab 1"), "2"},
    {"go.side1", QT_TRANSLATE_NOOP("Command", "Walk to the motor car, side 1"), "3"},
    {"go.engine1", QT_TRANSLATE_NOOP("Command", "Walk to engine 1"), "4"},
    {"go.side2", QT_TRANSLATE_NOOP("Command", "Walk to the motor car, side 2"), "5"},
    {"go.engine2", QT_TRANSLATE_NOOP("Command", "Walk to engine 2"), "6"},
    {"go.between", QT_TRANSLATE_NOOP("Command", "Walk between the cars"), "7"},
    {"go.trailer1", QT_TRANSLATE_NOOP("Command", "Walk to the trailer, side 1"), "8"},
    {"go.trailer2", QT_TRANSLATE_NOOP("Command", "Walk to the trailer, side 2"), "9"},
    {"go.cab2", QT_TRANSLATE_NOOP("Command", "Walk to cab 2"), "0"},
    {"go.end2", QT_TRANSLATE_NOOP("Command", "Walk to end 2"), "-"},
    {"go.cupboard", QT_TRANSLATE_NOOP("Command", "Walk to the electric cupboard"), "F2"},
    {"go.saloon", QT_TRANSLATE_NOOP("Command", "Walk to the saloon"), "F3"},
    {"go.lineside", QT_TRANSLATE_NOOP("Command", "Walk to the walkway by the line"), "F4"},
    {"go.booking", QT_TRANSLATE_NOOP("Command", "Walk to the booking-on point"), "F5"},
}};

// Commands of the cab and of the engines may share a key: they never act at the same place.
QString roomOf(const QString& command) { return command.section(QLatin1Char('.'), 0, 0); }

bool canClash(const QString& a, const QString& b) {
  const QString ra = roomOf(a), rb = roomOf(b);
  const bool apart = (ra == QLatin1String("cab") && rb == QLatin1String("engine")) ||
                     (ra == QLatin1String("engine") && rb == QLatin1String("cab"));
  return !apart;
}

}  // namespace

std::span<const CommandInfo> commandTable() { return kCommands; }

Shortcuts::Shortcuts(QObject* parent) : QObject(parent), letters_(usualLetters(QLocale::English)) {
  if (auto* app = qobject_cast<QGuiApplication*>(QCoreApplication::instance())) {
    letters_ = usualLetters(QGuiApplication::inputMethod()->locale().language());
    app->installEventFilter(this);
  }
  reset();
}

// Learns what letters lie where the keys do that go by place.
bool Shortcuts::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool letter = key->key() >= Qt::Key_A && key->key() <= Qt::Key_Z;
    if (letter && isPlace(key->nativeScanCode()) && letters_[key->nativeScanCode()] != key->key()) {
      letters_[key->nativeScanCode()] = key->key();
      Q_EMIT changed();
    }
  }
  return QObject::eventFilter(watched, event);
}

void Shortcuts::load(QSettings& settings) {
  settings.beginGroup(QStringLiteral("keys"));
  for (const CommandInfo& info : kCommands) {
    const QString id = QString::fromLatin1(info.id);
    if (!settings.contains(id)) continue;
    const QString written = settings.value(id).toString();
    const QKeySequence keys = QKeySequence::fromString(written, QKeySequence::PortableText);
    if (written.isEmpty() || keys.count() == 1) keys_[id] = keys;
  }
  settings.endGroup();
  Q_EMIT changed();
}

void Shortcuts::save(QSettings& settings) const {
  settings.beginGroup(QStringLiteral("keys"));
  settings.remove(QString());
  for (const CommandInfo& info : kCommands) {
    const QString id = QString::fromLatin1(info.id);
    const QString keys = keys_.at(id).toString(QKeySequence::PortableText);
    if (keys != QString::fromLatin1(info.keys)) settings.setValue(id, keys);
  }
  settings.endGroup();
}

QKeySequence Shortcuts::keys(const QString& command) const {
  const auto found = keys_.find(command);
  return found == keys_.end() ? QKeySequence() : found->second;
}

bool Shortcuts::isByPlace(const QString& command) const {
  if (placeOf(command) == 0) return false;
  const auto info = std::ranges::find_if(
      kCommands, [&](const CommandInfo& i) { return command == QLatin1String(i.id); });
  return keys(command).toString(QKeySequence::PortableText) == QLatin1String(info->keys);
}

QKeySequence Shortcuts::shown(const QString& command) const {
  return isByPlace(command) ? QKeySequence(letters_.at(placeOf(command))) : keys(command);
}

QString Shortcuts::text(const QString& command) const {
  return shown(command).toString(QKeySequence::NativeText);
}

QString Shortcuts::setKeys(const QString& command, const QKeySequence& keys) {
  QString loser;
  if (!keys.isEmpty()) {
    for (auto& [other, theirs] : keys_) {
      if (other == command || shown(other) != keys || !canClash(command, other)) continue;
      theirs = QKeySequence();
      loser = other;
    }
  }
  keys_[command] = keys;
  Q_EMIT changed();
  return loser;
}

void Shortcuts::reset() {
  for (const CommandInfo& info : kCommands)
    keys_[QString::fromLatin1(info.id)] =
        QKeySequence::fromString(QString::fromLatin1(info.keys), QKeySequence::PortableText);
  Q_EMIT changed();
}

QStringList Shortcuts::findCommands(int key, Qt::KeyboardModifiers modifiers,
                                    quint32 scan_code) const {
  const Qt::KeyboardModifiers kept = modifiers & ~Qt::KeypadModifier;
  const QKeySequence wanted(static_cast<int>(kept) | key);
  QStringList found;
  if (scan_code != 0 && kept == Qt::NoModifier) {
    for (const KeyPlace& place : kPlaces) {
      const QString id = QString::fromLatin1(place.command);
      if (place.scan_code == scan_code && isByPlace(id)) found << id;
    }
  }
  for (const CommandInfo& info : kCommands) {
    const QString id = QString::fromLatin1(info.id);
    if (scan_code != 0 && isByPlace(id)) continue;
    const QKeySequence mine = shown(id);
    if (mine.isEmpty() || mine != wanted) continue;
    // Of a key that goes by place the letter means nothing else beside it.
    if (std::ranges::none_of(found, [&](const QString& by_place) {
          return isByPlace(by_place) && scan_code != 0 && canClash(id, by_place);
        }))
      found << id;
  }
  return found;
}

}  // namespace cabwright::cab
