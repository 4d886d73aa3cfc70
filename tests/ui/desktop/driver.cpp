// SPDX-License-Identifier: GPL-3.0-or-later
#include "driver.h"

#include <fmt/format.h>

#include "cab/names.h"

namespace cabwright::tests {
namespace {

constexpr double kStep_s = 0.1;

std::optional<double> positionOf(unit::Control c, const std::string& word) {
  if (word.empty()) return std::nullopt;
  for (const unit::ControlPosition& p : unit::controlInfo(c).positions)
    if (p.name == word) return p.value;
  return std::stod(word);
}

unit::Verdict verdictOf(const std::string& words) {
  const std::string first = words.substr(0, words.find(' '));
  for (unit::Verdict v : {unit::Verdict::kGood, unit::Verdict::kDefect, unit::Verdict::kUnsure})
    if (unit::wordOf(v) == first) return v;
  return unit::Verdict::kNone;
}

unit::DefectClass classOf(const std::string& words) {
  const std::size_t space = words.find(' ');
  const auto said = space == std::string::npos
                        ? std::nullopt
                        : unit::findDefectClass(std::string_view(words).substr(space + 1));
  return said.value_or(unit::DefectClass::kNone);
}

}  // namespace

QString Hand::wordsOf(const std::string& verb, unit::Object object) {
  const QString thing = cab::nameOf(object);
  if (verb == "take") return QStringLiteral("Take: ") + thing;
  if (verb == "insert") return QStringLiteral("Put in: ") + thing;
  return QStringLiteral("Lay down here: ") + thing;
}

int Hand::rowOf(const QListWidget& list, const QString& words) {
  for (int k = 0; k < list.count(); ++k)
    if (list.item(k)->text() == words) return k;
  return -1;
}

bool Hand::performHands(const unit::Action& a) {
  const auto control = unit::findControl(a.object);
  if (!control) return false;
  if (a.verb == "release") return release(*control);
  if (a.verb == "ring") return ring(*control, a.argument);
  const auto value = positionOf(*control, a.argument);
  if (a.verb == "hold") return hold(*control, value);
  return a.verb == "set" && value && set(*control, *value);
}

std::optional<std::string> Hand::perform(const unit::Action& a) {
  bool done = false;
  if (a.verb == "look") {
    done = look(*unit::findItem(a.object));
  } else if (a.verb == "judge") {
    done = judge(*unit::findItem(a.object), verdictOf(a.argument), classOf(a.argument));
  } else if (a.verb == "go") {
    done = walk(*unit::findPlace(a.object));
  } else if (a.verb == "say") {
    done = say(*unit::findPhrase(a.object, unit::PhraseVerb::kSay));
  } else if (a.verb == "do") {
    done = say(*unit::findPhrase(a.object, unit::PhraseVerb::kDo));
  } else if (a.verb == "note") {
    done = note(a.object, a.argument);
  } else if (a.verb == "take" || a.verb == "insert" || a.verb == "put") {
    done = useThing(a.verb, *unit::findObject(a.object));
  } else {
    done = performHands(a);
  }
  if (done) return std::nullopt;
  return fmt::format("cannot be done here: {} (focus {}, at {})", unit::toText(a),
                     desk_.focus() ? desk_.focus()->objectName().toStdString() : "nowhere",
                     unit::placeInfo(desk_.seat().place()).name);
}

std::optional<std::string> play(Desk& desk, Hand& hand, const std::string& exercise,
                                const std::string& script) {
  const std::string path =
      std::string(CABWRIGHT_SOURCE_DIR) + "/scenarios/" + exercise + "/" + script + ".txt";
  const auto file = scenario::loadText(path);
  if (const auto* fault = std::get_if<scenario::FileFault>(&file)) return scenario::toText(*fault);
  auto parsed =
      scenario::parseScript(std::get<scenario::SourceFile>(file), {}, scenario::neighboursOf(path));
  if (const auto* faults = std::get_if<scenario::FileFaults>(&parsed))
    return scenario::toText(faults->front());
  scenario::ScriptRunner runner(std::get<scenario::Script>(std::move(parsed)));
  while (!runner.isDone()) {
    for (const auto& due : runner.advance(desk.seat().frame())) {
      if (auto fault = hand.perform(due.action))
        return fmt::format("line {}: {}", due.at.line, *fault);
      if (!desk.refused().empty())
        return fmt::format("line {}: {}", due.at.line, desk.refused().last().toStdString());
    }
    if (runner.fault()) return scenario::toText(*runner.fault());
    desk.pass(kStep_s);
  }
  return std::nullopt;
}

}  // namespace cabwright::tests
