// SPDX-License-Identifier: GPL-3.0-or-later
#include "after/words.h"

#include <QCoreApplication>
#include <cmath>

#include "marking/verdict.h"
#include "session/desk_actions.h"
#include "unit/action.h"
#include "unit/condition.h"
#include "unit/controls.h"
#include "unit/items.h"
#include "unit/objects.h"
#include "unit/places.h"
#include "wording/sentences.h"

namespace cabwright::after {
namespace {

QString toQt(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

QString translated(const char* context, const QString& english) {
  return QCoreApplication::translate(context, english.toUtf8().constData());
}

QString capital(QString words) {
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

// "cab1" is "Cab 1", "tail_lamp" is "tail lamp".
QString spaced(std::string_view name) {
  QString words = toQt(name).replace(QLatin1Char('_'), QLatin1Char(' '));
  if (words.size() > 1 && words.back().isDigit() && words[words.size() - 2].isLetter())
    words.insert(words.size() - 1, QLatin1Char(' '));
  return words;
}

std::string_view afterDot(std::string_view name) {
  const std::size_t dot = name.find('.');
  return dot == std::string_view::npos ? name : name.substr(dot + 1);
}

// "drive 2" of "true.drive2.meshed"; empty if no part of the name is numbered.
QString numberedPart(std::string_view name) {
  while (!name.empty()) {
    const std::size_t dot = std::min(name.find('.'), name.size());
    const std::string_view part = name.substr(0, dot);
    name.remove_prefix(std::min(dot + 1, name.size()));
    if (part == "cab1" || part == "cab2" || part.empty()) continue;
    if (part.back() == '1' || part.back() == '2') return spaced(part);
  }
  return {};
}

const unit::ControlInfo* findControlOf(unit::Signal signal) {
  for (const unit::ControlInfo& info : unit::controlTable())
    if (info.signal == signal) return &info;
  return nullptr;
}

// Whether 1 and 0 of it say yes and no; others count something.
bool isYesOrNo(const unit::SignalInfo& info) {
  if (!info.unit.empty()) return false;
  for (const std::string_view start : {"times", "how", "number", "last", "signals"})
    if (info.text.starts_with(start)) return false;
  return true;
}

QString numberText(double value, int decimals) {
  QString text = QString::number(std::abs(value), 'f', decimals);
  if (text.contains(QLatin1Char('.'))) {
    while (text.endsWith(QLatin1Char('0'))) text.chop(1);
    if (text.endsWith(QLatin1Char('.'))) text.chop(1);
  }
  return value < 0 && text != QLatin1String("0") ? QChar(0x2212) + text : text;
}

// A place, a loose thing, a phrase, or what is decided.
QString objectText(std::string_view name) {
  const QString words = spaced(name);
  const char* context = unit::findPlace(name)    ? "Place"
                        : unit::findObject(name) ? "Thing"
                        : unit::findPhrase(name, unit::PhraseVerb::kSay) ||
                                unit::findPhrase(name, unit::PhraseVerb::kDo)
                            ? "Phrase"
                            : "Position";
  return translated(context, words);
}

}  // namespace

QString sheetWords(std::string_view english) {
  return wording::translateSentence("Sheet", toQt(english));
}

// The catalogue has it as the exercise says it, with its full stop.
QString aimWords(std::string_view aim) {
  const std::string said = std::string(aim) + '.';
  QString words = sheetWords(said);
  if (words == toQt(said)) return sheetWords(aim);
  if (words.endsWith(QLatin1Char('.'))) words.chop(1);
  return words;
}

QString exerciseWords(std::string_view english) { return translated("Scenario", toQt(english)); }

QString truthText(std::string_view item, std::string_view truth) {
  const auto known = unit::findItem(item);
  if (!known) return sheetWords(truth);
  for (const unit::ItemCondition& condition : unit::itemInfo(*known).conditions)
    if (condition.name == truth) return wording::translateSentence("Seen", toQt(condition.seen));
  return sheetWords(truth);
}

QString timeText(std::int64_t tick, bool tenths) {
  const std::string clock = marking::clockText(tick);
  return toQt(std::string_view(clock).substr(0, clock.size() - (tenths ? 1 : 3)));
}

QString placeName(int number) {
  if (number < 1 || number > static_cast<int>(unit::kPlaceCount))
    return QCoreApplication::translate("Place", "on the way");
  return translated("Place",
                    capital(spaced(unit::placeTable()[static_cast<std::size_t>(number - 1)].name)));
}

QString controlName(int number) {
  if (number < 1 || number > static_cast<int>(unit::kControlCount)) return {};
  const std::string_view name = unit::controlTable()[static_cast<std::size_t>(number - 1)].name;
  return translated("Control", capital(spaced(afterDot(name))));
}

QString itemName(std::string_view item) {
  const std::size_t dot = item.find('.');
  if (dot == std::string_view::npos) return translated("Item", capital(spaced(item)));
  return QCoreApplication::translate("Item", "%1, %2")
      .arg(translated("Place", capital(spaced(item.substr(0, dot)))),
           translated("Item", spaced(item.substr(dot + 1))));
}

QString signalName(unit::Signal signal) {
  if (const unit::ControlInfo* control = findControlOf(signal)) {
    const QString name = translated("Control", capital(spaced(afterDot(control->name))));
    const std::size_t dot = control->name.find('.');
    if (dot == std::string_view::npos) return name;
    return QCoreApplication::translate("Signal", "%1, %2")
        .arg(name, translated("Place", spaced(control->name.substr(0, dot))));
  }
  const unit::SignalInfo& info = unit::signalInfo(signal);
  for (const std::string_view act : {"judged.", "looked.", "booked."})
    if (info.name.starts_with(act) && info.layer == unit::Layer::kDone)
      return QCoreApplication::translate("Signal", "%1: %2")
          .arg(itemName(info.name.substr(act.size())),
               translated("Signal", toQt(act.substr(0, act.size() - 1))));
  const QString words =
      capital(translated("Signal", toQt(info.text.substr(0, info.text.find_first_of(",:;")))));
  const QString part = numberedPart(info.name);
  if (part.isEmpty() || words.contains(part, Qt::CaseInsensitive)) return words;
  return QCoreApplication::translate("Signal", "%1, %2").arg(words, translated("Signal", part));
}

QString valueText(unit::Signal signal, double value) {
  const unit::SignalInfo& info = unit::signalInfo(signal);
  if (info.name.starts_with("judged.") && value == 0)
    return QCoreApplication::translate("Signal", "no");
  const std::string_view word = unit::findWordOfValue(signal, static_cast<float>(value));
  if (!word.empty()) return translated("Position", spaced(word));
  if (signal == unit::Signal::kPlace) return placeName(static_cast<int>(value));
  const unit::ControlInfo* control = findControlOf(signal);
  if (control != nullptr && control->continuous && !control->whole)
    return QCoreApplication::translate("Position", "%1 %").arg(numberText(value * 100, 0));
  if (isYesOrNo(info) && (value == 0 || value == 1))
    return value > 0 ? QCoreApplication::translate("Signal", "yes")
                     : QCoreApplication::translate("Signal", "no");
  const bool large = std::abs(value) >= 100;
  const QString number = numberText(value, large ? 0 : 1);
  return info.unit.empty() ? number : number + QLatin1Char(' ') + toQt(info.unit);
}

QString faultName(const fault::FaultSpec& spec) {
  return capital(wording::translateEntry("Fault", toQt(spec.where))) + QLatin1String(": ") +
         wording::translateEntry("Fault", toQt(spec.text));
}

namespace {

// What is done at the desk and has no thing of the unit in it.
QString deskText(const unit::Action& action, std::string_view act) {
  const auto say = [](const char* words) { return QCoreApplication::translate("Sheet", words); };
  if (action.verb == "mark") {
    const QString name = toQt(action.object) + QLatin1Char(' ') + toQt(action.argument);
    return say(QT_TRANSLATE_NOOP("Sheet", "mark set: %1")).arg(name.trimmed());
  }
  if (const auto remark = session::findRemark(action))
    return say(QT_TRANSLATE_NOOP("Sheet", "remark: %1")).arg(toQt(*remark));
  if (action.verb == "intervene")
    return say(QT_TRANSLATE_NOOP("Sheet", "the instructor stepped in"));
  if (action.verb == "pace" && action.object == "frozen")
    return say(QT_TRANSLATE_NOOP("Sheet", "the clock stands still"));
  if (action.verb == "pace")
    return say(QT_TRANSLATE_NOOP("Sheet", "the clock goes at \u00d7%1")).arg(toQt(action.object));
  return toQt(act);
}

}  // namespace

QString actText(std::string_view act) {
  const auto parsed = unit::parseAction(act);
  const auto* action = std::get_if<unit::Action>(&parsed);
  if (action != nullptr) {
    if (const fault::FaultSpec* spec = fault::findFault(action->object)) {
      const bool gone = action->verb == "clear";
      return (gone ? QCoreApplication::translate("Sheet", "put right: %1")
                   : QCoreApplication::translate("Sheet", "put in: %1"))
          .arg(insideSentence(faultName(*spec)));
    }
  }
  if (action == nullptr) return toQt(act);
  if (action->actor != unit::Actor::kTrainee) return deskText(*action, act);
  const auto control = unit::findControl(action->object);
  const QString object = control ? signalName(unit::controlInfo(*control).signal)
                         : unit::findItem(action->object) ? itemName(action->object)
                                                          : objectText(action->object);
  const QString done = translated("Verb", toQt(action->verb)) + QLatin1Char(' ') + object;
  if (action->argument.empty()) return done;
  return QCoreApplication::translate("Verb", "%1: %2")
      .arg(done, translated("Position", spaced(action->argument)));
}

QString className(marking::RuleClass c) { return sheetWords(marking::wordOf(c)); }

drawing::Tone toneOf(marking::RuleClass c) {
  return c == marking::RuleClass::kCritical ? drawing::Tone::kBad : drawing::Tone::kDoubt;
}

QString linesText(int count) {
  if (count == 1) return QCoreApplication::translate("Sheet", "one line");
  return QCoreApplication::translate("Sheet", "%n lines", nullptr, count);
}

QString pointsText(double points) { return numberText(points, 1); }

QString insideSentence(QString words) {
  if (words.endsWith(QLatin1Char('.'))) words.chop(1);
  return wording::insideSentence(std::move(words));
}

}  // namespace cabwright::after
