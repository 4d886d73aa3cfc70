// SPDX-License-Identifier: GPL-3.0-or-later
// A trainee with a keyboard and no mouse.
#include <QListWidget>
#include <QPushButton>

#include "cab/names.h"
#include "driver.h"

namespace cabwright::tests {
namespace {

constexpr double kBetweenStrokes_s = 0.4;

Qt::Key keyOf(const QString& command) {
  for (const cab::CommandInfo& info : cab::commandTable())
    if (command == QLatin1String(info.id))
      return QKeySequence::fromString(QString::fromLatin1(info.keys))[0].key();
  return Qt::Key_unknown;
}

class Keys final : public Hand {
 public:
  using Hand::Hand;

 private:
  bool look(unit::Item item) override {
    if (!desk().tabTo(partOf<cab::ItemPart>(unit::itemInfo(item).name))) return false;
    desk().key(Qt::Key_Space);
    return desk().seat().unit().world().trainee.looking == item;
  }

  bool judge(unit::Item item, unit::Verdict verdict, unit::DefectClass rank) override {
    if (!desk().tabTo(partOf<cab::ItemPart>(unit::itemInfo(item).name))) return false;
    desk().key(verdict == unit::Verdict::kGood     ? Qt::Key_G
               : verdict == unit::Verdict::kDefect ? Qt::Key_D
                                                   : Qt::Key_U);
    if (rank != unit::DefectClass::kNone) {
      desk().settle();
      desk().key(static_cast<Qt::Key>(unit::letterOf(rank).front()));
    }
    return desk().seat().unit().world().item[unit::indexOf(item)].verdict == verdict;
  }

  bool walk(unit::Place place) override {
    press(QStringLiteral("go.") + QString::fromStdString(std::string(unit::placeInfo(place).name)));
    return desk().seat().isWalking();
  }

  bool say(unit::Phrase phrase) override {
    for (const unit::PhraseInfo& info : unit::phraseTable()) {
      if (info.id != phrase) continue;
      const char* verb = info.verb == unit::PhraseVerb::kSay ? "Say: " : "Do: ";
      return choose(QStringLiteral("say"), QLatin1String(verb) + cab::nameOf(phrase));
    }
    return false;
  }

  bool ring(unit::Control, const std::string& code) override {
    for (int k = 0; k < std::stoi(code); ++k) {
      press(QStringLiteral("cab.bell"));
      desk().pass(kBetweenStrokes_s);
    }
    return true;
  }

  bool useThing(const std::string& verb, unit::Object object) override {
    return choose(QStringLiteral("things"), wordsOf(verb, object));
  }

  bool note(const std::string& what, const std::string& figure) override {
    press(QStringLiteral("note"));
    if (desk().view().panel() == nullptr) return false;
    auto* kind = desk().view().panel()->findChild<QComboBox*>();
    for (int k = 0; k < kind->count() && kind->currentData().toString().toStdString() != what; ++k)
      desk().key(Qt::Key_Down);
    desk().key(Qt::Key_Tab);
    desk().key(Qt::Key_A, Qt::ControlModifier);
    desk().type(QString::fromStdString(figure));
    desk().key(Qt::Key_Return);
    return desk().view().panel() == nullptr;
  }

  bool set(unit::Control control, double value) override {
    auto* part = partOf<cab::ControlPart>(unit::controlInfo(control).name);
    if (part == nullptr) return false;
    const unit::ControlInfo& info = unit::controlInfo(control);
    const double before = desk().seat().value(control);
    if (info.positions.size() == 2 && !info.continuous) {
      if (before == value) return true;
      if (part->command().isEmpty()) {
        if (!desk().tabTo(part)) return false;
        desk().key(Qt::Key_Space);
      } else {
        press(part->command());
      }
      return desk().seat().value(control) == value;
    }
    if (!reach(part)) return false;
    if (control == unit::Control::kCab1Handbrake || control == unit::Control::kCab2Handbrake) {
      desk().key(value < 0.5 ? Qt::Key_Down : Qt::Key_Up);
      return true;  // it takes its time
    }
    if (value == info.lowest) desk().key(Qt::Key_Home);
    if (value == info.highest) desk().key(Qt::Key_End);
    for (int k = 0; k < 60 && std::abs(desk().seat().value(control) - value) > 0.015; ++k)
      desk().key(desk().seat().value(control) < value ? Qt::Key_Up : Qt::Key_Down);
    return std::abs(desk().seat().value(control) - value) < 0.015;
  }

  bool hold(unit::Control control, std::optional<double> value) override {
    const QString command = commandOf(control, value);
    if (command.endsWith(QLatin1String("device"))) {
      press(command);
      return desk().seat().value(control) > 0.5;
    }
    leaveThing(keyOf(command));
    desk().pressKey(keyOf(command));
    held_ = keyOf(command);
    return desk().seat().value(control) == value.value_or(1.0);
  }

  bool release(unit::Control control) override {
    const QString command = commandOf(control, {});
    if (command.endsWith(QLatin1String("device"))) {
      press(command);
    } else {
      desk().releaseKey(held_);
    }
    return desk().seat().value(control) == 0;
  }

  void turnRound() override { press(QStringLiteral("turn")); }

  QString commandOf(unit::Control control, std::optional<double> value) {
    if (control == unit::Control::kCab1Horn)
      return value == 2.0 ? QStringLiteral("cab.horn_high") : QStringLiteral("cab.horn_low");
    auto* part = partOf<cab::ControlPart>(unit::controlInfo(control).name);
    return part != nullptr ? part->command() : QString();
  }

  // On a thing that was looked at these keys judge; Escape goes off it.
  void leaveThing(Qt::Key key) {
    const bool judges = key == Qt::Key_G || key == Qt::Key_D || key == Qt::Key_U;
    if (judges && qobject_cast<cab::ItemPart*>(desk().focus()) != nullptr)
      desk().key(Qt::Key_Escape);
  }

  void press(const QString& command) {
    leaveThing(keyOf(command));
    desk().key(keyOf(command));
  }

  bool reach(cab::ControlPart* part) {
    if (part->command().isEmpty()) return desk().tabTo(part);
    if (desk().focus() != part) press(part->command());
    return desk().focus() == part;
  }

  bool choose(const QString& command, const QString& words) {
    press(command);
    if (desk().view().panel() == nullptr) return false;
    auto* list = desk().view().panel()->findChild<QListWidget*>();
    const int row = rowOf(*list, words);
    if (row < 0 || desk().focus() != list) return false;
    for (int k = 0; k < list->count() && list->currentRow() != row; ++k)
      desk().key(list->currentRow() < row ? Qt::Key_Down : Qt::Key_Up);
    desk().key(Qt::Key_Return);
    return desk().view().panel() == nullptr;
  }

  Qt::Key held_ = Qt::Key_unknown;
};

}  // namespace

std::unique_ptr<Hand> makeKeys(Desk& desk) { return std::make_unique<Keys>(desk); }

}  // namespace cabwright::tests
